import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  scheduleYaml
} from "./chunk-R7HOELZO.js";
import {
  cautionsPiece
} from "./chunk-DQZAGW2O.js";
import {
  cautionShape,
  opening
} from "./chunk-RLEK6R44.js";
import {
  AT_PEAK,
  linedUp
} from "./chunk-6U5UKUNG.js";
import {
  statementText
} from "./chunk-GU4RVAU5.js";
import {
  external_exports
} from "./chunk-2Y6UMGL7.js";

// src/core/reports/documents/fitsPiece.ts
function fitsPiece({ pairs, fits, leftOut }) {
  return {
    pairs: pairs.map(pairPiece),
    tiles: fits.map(tilePiece),
    leftOut: leftOut.map(({ firing, piece, why }) => ({ firing, piece, why }))
  };
}
function pairPiece(pair) {
  return {
    glaze: pair.glaze,
    clay: pair.clay,
    body: pair.bodyName,
    expansionFrom: pair.expansionFrom,
    tiles: pair.tiles,
    computedPerK: { ...pair.computedPerK },
    found: pair.found.map((each) => ({ ...each, perK: { ...each.perK } })),
    foundOverExpected: pair.foundOverExpected && { ...pair.foundOverExpected },
    expectedIsFor: pair.expectedIsFor,
    expected: pair.expected.map((point) => ({ ...point }))
  };
}
function tilePiece({
  firing,
  piece,
  expected,
  crackingShare,
  measured
}) {
  return {
    firing,
    piece,
    expected: { ...expected },
    crackingShare,
    found: measured.map(({ from, holds, mismatchPerK, glazePerK, agrees, ping }) => ({
      from,
      holds,
      perK: { ...mismatchPerK },
      glazePerK: { ...glazePerK },
      agrees,
      pingC: ping?.onsetC ?? null
    }))
  };
}

// src/core/reports/documents/trialsPiece.ts
function trialsPiece(study) {
  const { firings, differences, tiles, confounding, glazes, fits, next } = study;
  return {
    facts: firings.map(({ title, record, facts }) => ({
      title,
      record,
      facts: facts.map(({ name, kind, value, sigma, sensorSigma }) => ({
        name,
        kind,
        value,
        sigma,
        sensorSigma
      }))
    })),
    differences: differences.map(({ name, low, high, apart, sigma, verdict }) => ({
      name,
      low,
      high,
      apart,
      sigma,
      verdict
    })),
    tiles: tiles.tiles.map(tilePiece2),
    leftOut: tiles.leftOut.map((each) => ({ ...each })),
    confounding: confounding && structuredCopy(confounding),
    spacing: glazes.map(spacingPiece),
    glazesCompared: study.glazesCompared && comparedPiece(study.glazesCompared),
    fits: fits && fitsPiece(fits),
    next: next && nextPiece(next)
  };
}
function structuredCopy(confounding) {
  const { causes, pairs, together, jointly, constant, everyOwn, unknown } = confounding;
  return {
    tiles: confounding.tiles,
    causes: causes.map(({ name, levels }) => ({ name, levels: [...levels] })),
    pairs: pairs.map((pair) => ({ ...pair, because: [...pair.because] })),
    together: together.map((each) => ({ causes: [...each.causes], because: [...each.because] })),
    jointly: jointly.map(({ cause, others }) => ({ cause, others: [...others] })),
    constant: constant.map((each) => ({ ...each })),
    everyOwn: [...everyOwn],
    unknown: [...unknown]
  };
}
function tilePiece2(tile) {
  const { firing, piece, clay, glaze, coat, glazedSides, shape, place, spacing, cracked } = tile;
  const measured = spacing.kind === "measured" ? spacing : null;
  return {
    firing,
    piece,
    clay,
    glaze,
    coatMm: coat.firedMm,
    coatSigmaMm: coat.sigmaMm,
    glazedSides,
    shape,
    place,
    spacing: spacing.kind,
    pitchMm: spacing.kind === "uncracked" ? spacing.atLeastMm : measured?.pitchMm ?? null,
    pitchLowMm: measured?.lowMm ?? null,
    pitchHighMm: measured?.highMm ?? null,
    interceptMm: measured?.interceptMm ?? null,
    lines: measured?.lines ?? 0,
    lengthMm: measured?.lengthMm ?? 0,
    crossings: measured?.crossings ?? 0,
    directions: measured?.directions.map((each) => ({ ...each })) ?? [],
    alongOverAcross: measured?.alongOverAcross ?? null,
    stain: tile.stain,
    pings: tile.pings?.count ?? null,
    cracked
  };
}
function spacingPiece({ glaze, spacing, problems }) {
  return {
    glaze,
    why: problems.map(({ what, expected }) => `${what}; it takes ${expected}`),
    fit: spacing && fitPiece(spacing)
  };
}
function fitPiece(value) {
  return {
    tiles: value.tiles,
    uncracked: value.uncracked,
    firings: value.firings,
    coatsMm: { ...value.coatsMm },
    exponent: intervalPiece(value.exponent),
    exponentAsRead: value.exponentAsRead,
    exponentIfExact: intervalPiece(value.exponentIfExact),
    coatErrorAssumed: value.coatErrorAssumed,
    reliability: value.reliability,
    tileSigma: value.tileSigma,
    lineSigma: value.lineSigma,
    icc: value.icc,
    effectiveLines: value.effectiveLines,
    ratios: value.ratios.map(ratioPiece),
    untold: value.untold.map(({ factor, level, against }) => ({ factor, level, against }))
  };
}
function comparedPiece(compared) {
  return {
    tiles: compared.tiles,
    ratios: compared.ratios.map(ratioPiece),
    untold: compared.untold.map(({ factor, level, against }) => ({ factor, level, against })),
    exponents: compared.slopes.map(({ level, exponent, tiles }) => ({
      glaze: level,
      exponent: intervalPiece(exponent),
      tiles
    }))
  };
}
function ratioPiece({ ratio, test, ...group }) {
  return {
    factor: group.factor,
    level: group.level,
    against: group.against,
    ratio: intervalPiece(ratio),
    tiles: group.tiles,
    tilesAgainst: group.tilesAgainst,
    isShared: group.isShared,
    p: test?.p ?? null,
    leastP: test?.leastP ?? null
  };
}
function intervalPiece({ value, low, high }) {
  const ended = (end) => Number.isFinite(end) ? end : null;
  return { value, low: ended(low), high: ended(high) };
}
function nextPiece({ firing, tiles, open }) {
  return {
    firing: firing && {
      kind: firing.kind,
      follows: firing.follows,
      change: statementText(
        { topic: firing.kind, statement: firing.change, evidence: firing.evidence },
        "C"
      ),
      reason: firing.reason,
      scheduleYaml: firing.schedule && scheduleYaml(firing.schedule),
      onKiln: firing.onKiln && {
        basis: firing.onKiln.basis,
        isEased: firing.onKiln.isEased,
        findings: firing.onKiln.findings.map((finding) => ({
          severity: finding.severity,
          statement: statementText(finding, "C")
        }))
      }
    },
    tiles: tiles && {
      ...tiles,
      tiles: tiles.tiles.map((tile) => ({ ...tile })),
      wanted: tiles.wanted.map((each) => ({ ...each }))
    },
    open: [...open]
  };
}

// src/core/reports/documents/trialsShape.ts
var intervalShape = external_exports.strictObject({
  value: external_exports.number(),
  low: external_exports.number().nullable(),
  high: external_exports.number().nullable()
}).describe("95 % interval; null for a side without end");
var spreadShape = external_exports.strictObject({ low: external_exports.number(), median: external_exports.number(), high: external_exports.number() }).describe("middle of drawn cases, and the ends between which 8 of 10 lie");
var expectedShape = external_exports.strictObject({
  lowMm: external_exports.number().nullable(),
  medianMm: external_exports.number().nullable(),
  highMm: external_exports.number().nullable()
}).describe("pitch to expect by the files of glaze and body; null where it does not crack");
var fitsShape = external_exports.strictObject({
  pairs: external_exports.array(
    external_exports.strictObject({
      glaze: external_exports.string(),
      clay: external_exports.string(),
      body: external_exports.string(),
      expansionFrom: external_exports.enum(["measured", "computed"]),
      tiles: external_exports.int(),
      computedPerK: spreadShape.describe("glaze shrinks more than the body, by their files [1/K]"),
      found: external_exports.array(
        external_exports.strictObject({
          from: external_exports.string(),
          holds: external_exports.enum(["about", "at least", "at most"]),
          tiles: external_exports.int(),
          perK: spreadShape.describe("of the tile in the middle; of bounds, the one that binds"),
          leastPerK: external_exports.number().describe("middle of the tile that says least"),
          mostPerK: external_exports.number(),
          agreeing: external_exports.int()
        })
      ),
      foundOverExpected: external_exports.strictObject({
        tiles: external_exports.int(),
        within: external_exports.int().describe("spacings inside the range that is expected"),
        least: external_exports.number(),
        median: external_exports.number(),
        most: external_exports.number()
      }).nullable(),
      expectedIsFor: external_exports.enum(["one", "both"]).describe("sides glazed"),
      expected: external_exports.array(expectedShape.extend({ coatMm: external_exports.number() }))
    })
  ),
  tiles: external_exports.array(
    external_exports.strictObject({
      firing: external_exports.string(),
      piece: external_exports.string(),
      expected: expectedShape,
      crackingShare: external_exports.number().describe("share of drawn cases in which the coat cracks"),
      found: external_exports.array(
        external_exports.strictObject({
          from: external_exports.string(),
          holds: external_exports.enum(["about", "at least", "at most"]),
          perK: spreadShape,
          glazePerK: spreadShape.describe("expansion that the glaze would have to have [1/K]"),
          agrees: external_exports.boolean(),
          pingC: external_exports.number().nullable()
        })
      )
    })
  ),
  leftOut: external_exports.array(external_exports.strictObject({ firing: external_exports.string(), piece: external_exports.string(), why: external_exports.string() }))
});
var tileShape = external_exports.strictObject({
  firing: external_exports.string().describe("file name of the firing record"),
  piece: external_exports.string(),
  clay: external_exports.string(),
  glaze: external_exports.string(),
  coatMm: external_exports.number(),
  coatSigmaMm: external_exports.number(),
  glazedSides: external_exports.enum(["one", "both"]),
  shape: external_exports.enum(["flat", "closed"]).nullable(),
  place: external_exports.string().nullable(),
  spacing: external_exports.enum(["measured", "uncracked", "not measured"]),
  pitchMm: external_exports.number().nullable().describe("for uncracked tiles the least it can be"),
  pitchLowMm: external_exports.number().nullable(),
  pitchHighMm: external_exports.number().nullable(),
  interceptMm: external_exports.number().nullable().describe("mean length of line between two cracks"),
  lines: external_exports.int().describe("lines counted; 0 when a spacing was noted"),
  lengthMm: external_exports.number(),
  crossings: external_exports.number(),
  directions: external_exports.array(
    external_exports.strictObject({
      direction: external_exports.enum(["along", "across"]),
      interceptMm: external_exports.number().nullable(),
      lines: external_exports.int(),
      crossings: external_exports.number()
    })
  ),
  alongOverAcross: external_exports.number().nullable(),
  stain: external_exports.string().nullable(),
  pings: external_exports.int().nullable().describe("heard from this tile; null when not noted"),
  cracked: external_exports.enum(["none", "crackle", "through"]).nullable()
});
var confoundingShape = external_exports.strictObject({
  tiles: external_exports.int(),
  causes: external_exports.array(external_exports.strictObject({ name: external_exports.string(), levels: external_exports.array(external_exports.string()) })),
  pairs: external_exports.array(
    external_exports.strictObject({
      first: external_exports.string(),
      second: external_exports.string(),
      telling: external_exports.enum(["cannot", "partly", "apart", "contained"]),
      shared: external_exports.number(),
      because: external_exports.array(external_exports.string()),
      tiles: external_exports.int()
    })
  ),
  together: external_exports.array(external_exports.strictObject({ causes: external_exports.array(external_exports.string()), because: external_exports.array(external_exports.string()) })),
  jointly: external_exports.array(external_exports.strictObject({ cause: external_exports.string(), others: external_exports.array(external_exports.string()) })),
  constant: external_exports.array(external_exports.strictObject({ name: external_exports.string(), level: external_exports.string() })),
  everyOwn: external_exports.array(external_exports.string()),
  unknown: external_exports.array(external_exports.string())
});
var ratioShape = external_exports.strictObject({
  factor: external_exports.string(),
  level: external_exports.string(),
  against: external_exports.string(),
  ratio: intervalShape,
  tiles: external_exports.int(),
  tilesAgainst: external_exports.int(),
  isShared: external_exports.boolean(),
  p: external_exports.number().nullable(),
  leastP: external_exports.number().nullable()
});
var untoldShape = external_exports.strictObject({ factor: external_exports.string(), level: external_exports.string(), against: external_exports.string() });
var glazesComparedShape = external_exports.strictObject({
  tiles: external_exports.int(),
  ratios: external_exports.array(ratioShape),
  untold: external_exports.array(untoldShape),
  exponents: external_exports.array(
    external_exports.strictObject({ glaze: external_exports.string(), exponent: intervalShape, tiles: external_exports.int() })
  )
}).describe("glazes against each other, coats, clays, sides and firings made equal");
var spacingShape = external_exports.strictObject({
  glaze: external_exports.string(),
  why: external_exports.array(external_exports.string()).describe("why it is not worked out, and groups too small to say anything of"),
  fit: external_exports.strictObject({
    tiles: external_exports.int(),
    uncracked: external_exports.int(),
    firings: external_exports.int(),
    coatsMm: external_exports.strictObject({ least: external_exports.number(), most: external_exports.number() }),
    exponent: intervalShape,
    exponentAsRead: external_exports.number(),
    exponentIfExact: intervalShape.describe("as if no coat were misread"),
    coatErrorAssumed: external_exports.int().describe("tiles whose gauge's error is taken to be 15 %"),
    reliability: external_exports.number(),
    tileSigma: external_exports.number(),
    lineSigma: external_exports.number().nullable(),
    icc: external_exports.number().nullable(),
    effectiveLines: external_exports.number().nullable(),
    ratios: external_exports.array(ratioShape),
    untold: external_exports.array(untoldShape)
  }).nullable()
});
var nextShape = external_exports.strictObject({
  firing: external_exports.strictObject({
    kind: external_exports.enum(["repeat", "one change", "new"]),
    follows: external_exports.string(),
    change: external_exports.string(),
    reason: external_exports.string(),
    scheduleYaml: external_exports.string().nullable(),
    onKiln: external_exports.strictObject({
      basis: external_exports.string(),
      isEased: external_exports.boolean().describe("ramps too fast for the kiln were left to full power"),
      findings: external_exports.array(external_exports.strictObject({ severity: external_exports.string(), statement: external_exports.string() }))
    }).nullable().describe("how the kiln of --kiln takes the schedule")
  }).nullable(),
  tiles: external_exports.strictObject({
    tiles: external_exports.array(
      external_exports.strictObject({
        clay: external_exports.string(),
        glaze: external_exports.string(),
        coatMm: external_exports.number(),
        glazedSides: external_exports.enum(["one", "both"]),
        shape: external_exports.enum(["flat", "closed"]).nullable(),
        count: external_exports.int()
      })
    ),
    total: external_exports.int(),
    wanted: external_exports.array(
      external_exports.strictObject({
        cause: external_exports.string(),
        contrast: external_exports.string(),
        before: external_exports.number().nullable(),
        after: external_exports.number(),
        needed: external_exports.number()
      })
    ),
    isEnough: external_exports.boolean(),
    fewest: external_exports.int(),
    scatter: external_exports.number(),
    scatterIs: external_exports.enum(["measured", "assumed"]),
    ratio: external_exports.number(),
    reason: external_exports.string()
  }).nullable(),
  open: external_exports.array(external_exports.string())
});
var trialsShape = external_exports.strictObject({
  facts: external_exports.array(
    external_exports.strictObject({
      title: external_exports.string(),
      record: external_exports.string().nullable(),
      facts: external_exports.array(
        external_exports.strictObject({
          name: external_exports.string(),
          kind: external_exports.string().describe("decides the unit: \xB0C, \xB0C/h, s, cones"),
          value: external_exports.number().nullable(),
          sigma: external_exports.number(),
          sensorSigma: external_exports.number()
        })
      )
    })
  ),
  differences: external_exports.array(
    external_exports.strictObject({
      name: external_exports.string(),
      low: external_exports.int().describe("place of the firing with the smaller value, from 0"),
      high: external_exports.int(),
      apart: external_exports.number(),
      sigma: external_exports.number(),
      verdict: external_exports.enum(["differs", "perhaps", "same"])
    })
  ).describe("of every two firings; of more than 30, of each fact's smallest and largest only"),
  tiles: external_exports.array(tileShape),
  leftOut: external_exports.array(
    external_exports.strictObject({ firing: external_exports.string(), piece: external_exports.string(), from: external_exports.string(), why: external_exports.string() })
  ),
  confounding: confoundingShape.nullable(),
  spacing: external_exports.array(spacingShape),
  glazesCompared: glazesComparedShape.nullable(),
  fits: fitsShape.nullable().describe("fit by the files of glazes and bodies; null when none were looked for"),
  next: nextShape.nullable()
});

// src/core/reports/documents/comparisonDocument.ts
var coolingShape = external_exports.strictObject({
  meanCPerHour: external_exports.number().nullable(),
  fastestCPerHour: external_exports.number().nullable()
});
var comparisonDocumentSchema = external_exports.strictObject({
  ...opening("compare"),
  firings: external_exports.array(
    external_exports.strictObject({
      title: external_exports.string(),
      zone: external_exports.string().describe("the hottest thermocouple; every number is from it"),
      peakC: external_exports.number(),
      coneLabel: external_exports.string(),
      coneIndex: external_exports.number().nullable().describe("whole cones with fraction; for differences only"),
      sigmaCones: external_exports.number().nullable(),
      lastHundredCPerHour: external_exports.number().nullable(),
      secondsWithinFiveOfPeak: external_exports.number(),
      secondsAbove1100C: external_exports.number(),
      quartzCooling: coolingShape,
      cristobaliteCooling: coolingShape,
      lastReadingC: external_exports.number(),
      totalSeconds: external_exports.number(),
      warnings: external_exports.int()
    })
  ),
  alignment: external_exports.strictObject({
    at: external_exports.enum(["peak", "start", "rising", "falling"]),
    tempC: external_exports.number().nullable(),
    secondsFromPeak: external_exports.array(external_exports.number().nullable()).describe("hour 0 of each firing; null where its log never comes there")
  }).describe("where the firings are laid over each other in charts"),
  base: external_exports.int().describe("place, from 0, of the firing that the others are held against"),
  study: trialsShape.nullable().describe("what differed and what the trial tiles tell; null when it was not looked at"),
  thermocoupleShifts: external_exports.array(
    external_exports.strictObject({
      zone: external_exports.string(),
      shiftK: external_exports.number().describe("reads more than the mean of the others, against before"),
      fromC: external_exports.number(),
      toC: external_exports.number()
    })
  ).describe("zones towards one another, from the first firing to the last; differences only"),
  cautions: external_exports.array(cautionShape)
});
function comparisonDocument(comparison, {
  study = null,
  alignment = AT_PEAK,
  base = 0
} = {}) {
  return {
    schemaVersion: 1,
    ok: true,
    command: "compare",
    firings: comparison.firings.map(comparedFiringPiece),
    thermocoupleShifts: comparison.thermocoupleShifts.map((shift) => ({ ...shift })),
    alignment: {
      at: alignment.at,
      tempC: "tempC" in alignment ? alignment.tempC : null,
      secondsFromPeak: comparison.firings.map(
        (firing) => linedUp(firing, alignment)?.secondsFromPeak ?? null
      )
    },
    base,
    study: study && trialsPiece(study),
    cautions: cautionsPiece(onceEach([...comparison.cautions, ...study?.cautions ?? []]))
  };
}
function onceEach(cautions) {
  return cautions.filter(
    ({ text }, index) => cautions.findIndex((other) => other.text === text) === index
  );
}
function comparedFiringPiece(firing) {
  return {
    title: firing.title,
    zone: firing.zone,
    peakC: firing.peakC,
    coneLabel: firing.coneLabel,
    coneIndex: firing.coneIndex,
    sigmaCones: firing.sigmaCones,
    lastHundredCPerHour: firing.lastHundredCPerHour,
    secondsWithinFiveOfPeak: firing.secondsWithinFiveOfPeak,
    secondsAbove1100C: firing.secondsAbove1100C,
    quartzCooling: { ...firing.quartzCooling },
    cristobaliteCooling: { ...firing.cristobaliteCooling },
    lastReadingC: firing.lastReadingC,
    totalSeconds: firing.totalSeconds,
    warnings: firing.warnings
  };
}

export {
  comparisonDocumentSchema,
  comparisonDocument,
  comparedFiringPiece
};
