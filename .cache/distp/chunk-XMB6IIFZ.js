import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  cautionsPiece,
  findingsPiece
} from "./chunk-DQZAGW2O.js";
import {
  cautionShape,
  findingShape,
  opening
} from "./chunk-RLEK6R44.js";
import {
  OXIDES,
  leachSheet,
  mapAmounts,
  oxideMass
} from "./chunk-GBSLUOFQ.js";
import {
  external_exports
} from "./chunk-2Y6UMGL7.js";

// src/core/glaze/compareGlazes.ts
var CLOSE_MOL_PERCENT = 5;
function compareGlazes(glazes) {
  const [first, ...others] = glazes;
  if (first === void 0) return [];
  return others.map((other) => {
    const [a, b] = [first.expansion, other.expansion];
    const isMixed = a.from !== b.from || a.fromC !== b.fromC || a.toC !== b.toC;
    const areRelatives = areClose(first, other);
    const isRelative = areRelatives && !isMixed && a.from === "computed";
    return {
      name: other.name,
      differencePerK: b.meanPerK - a.meanPerK,
      sigmaPerK: isRelative ? Math.max(a.relativeSigmaPerK, b.relativeSigmaPerK) : Math.hypot(a.sigmaPerK, b.sigmaPerK),
      areRelatives,
      isMixed
    };
  });
}
function areClose(a, b) {
  return OXIDES.every(
    (oxide) => 100 * Math.abs((a.oxides[oxide] ?? 0) - (b.oxides[oxide] ?? 0)) <= CLOSE_MOL_PERCENT
  );
}

// src/core/reports/documents/glazeFitShape.ts
var share = external_exports.number().describe("share of draws, 0 to 1");
var number = external_exports.number();
var standing = external_exports.enum(["speaks for", "open", "speaks against"]);
var spread = external_exports.strictObject({ low: number, median: number, high: number });
var orNone = spread.nullable().describe("null where too few draws have one");
var strain = spread.describe("length over length; over 0 pulls the glaze");
var glazeFitShape = external_exports.strictObject({
  piece: external_exports.strictObject({
    wallMm: number,
    coatMm: number,
    coatSigma: number.describe("one standard deviation as a share of the coat"),
    glazing: external_exports.enum(["both faces", "one face, wall held", "one face, free to bend"]),
    absorptionPercent: number.nullable()
  }),
  roomC: number,
  runs: number,
  seed: number,
  mismatch: external_exports.strictObject({
    setC: spread,
    strain,
    perK: spread,
    glazePerK: spread,
    bodyPerK: spread,
    silicaStrain: spread,
    bodyTo500PerK: number,
    strainByMeanTo500: number,
    greatest: external_exports.strictObject({ strain, tempC: spread }),
    knownFromC: number,
    knownToC: number
  }),
  stress: external_exports.strictObject({
    glazeMPa: spread,
    thickBodyMPa: spread,
    underGlazeMPa: spread,
    bareFaceMPa: spread.nullable().describe("null with both faces glazed"),
    bowMm: spread.nullable().describe("over 100 mm; null where the wall cannot bend")
  }),
  crazing: external_exports.strictObject({
    share,
    standing,
    thresholdMPa: spread,
    overThreshold: spread,
    coatShare: share,
    leastCoatMm: orNone,
    firstPingC: orNone
  }),
  spacing: external_exports.strictObject({
    leastMm: spread,
    meanMm: spread,
    widestMm: spread,
    alongLinesMm: spread,
    lateMeanMm: orNone,
    thickerCoat: external_exports.enum(["closer", "hardly changes", "wider"]).nullable(),
    fineShare: share,
    wideShare: share
  }).nullable().describe("over the draws that crack; null where too few do"),
  through: external_exports.strictObject({
    pullMPaRootM: spread,
    bodyToughnessMPaRootM: spread,
    toughnessSource: external_exports.string(),
    overToughness: spread,
    share,
    standing: standing.describe("a ranking, never a verdict"),
    stopsAtMm: orNone,
    reasons: external_exports.array(external_exports.strictObject({ direction: external_exports.enum(["for", "against"]), text: external_exports.string() })),
    bodyPullMPa: spread,
    bodyPullOverRupture: spread,
    rimPullMPa: spread,
    rimPullOverRupture: spread
  }),
  delayed: external_exports.strictObject({
    growth: spread,
    growthSource: external_exports.string(),
    addedMPa: spread,
    moistureShare: share,
    moistureYears: orNone,
    slowShare: share,
    slowFromMm: orNone
  }),
  measured: external_exports.strictObject({
    fits: external_exports.array(
      external_exports.strictObject({
        from: external_exports.enum(["crack spacing", "cracks seen", "no cracks", "first ping"]),
        coatMm: number,
        holds: external_exports.enum(["about", "at least", "at most"]),
        mismatch: strain,
        mismatchPerK: spread,
        glazePerK: spread,
        agrees: external_exports.boolean(),
        overComputed: share,
        impossible: share,
        pitchOverCoat: number.nullable(),
        ping: external_exports.strictObject({
          onsetC: number,
          use: external_exports.enum([
            "usable",
            "near the quartz inversion",
            "near the cristobalite inversion",
            "kiln was opened"
          ])
        }).nullable()
      })
    ),
    leftOut: external_exports.array(
      external_exports.strictObject({
        onsetC: number,
        why: external_exports.enum(["kiln was opened", "not between room and set point"])
      })
    )
  }),
  twoCoats: external_exports.array(
    external_exports.strictObject({
      coatsMm: external_exports.tuple([number, number]),
      ratio: spread,
      agree: external_exports.boolean()
    })
  ),
  limits: external_exports.array(external_exports.string())
});
function glazeFitPiece(fit) {
  return {
    ...fit,
    through: { ...fit.through, reasons: fit.through.reasons.map((each) => ({ ...each })) },
    measured: {
      fits: fit.measured.fits.map((each) => ({ ...each })),
      leftOut: fit.measured.leftOut.map((each) => ({ ...each }))
    },
    twoCoats: fit.twoCoats.map((each) => ({ ...each, coatsMm: [...each.coatsMm] })),
    limits: [...fit.limits]
  };
}

// src/core/reports/documents/glazeDocument.ts
var amounts = (of) => external_exports.partialRecord(external_exports.enum(OXIDES), external_exports.number()).describe(`by oxide, ${of}`);
var number2 = external_exports.number();
var perK = external_exports.number().describe("1/K");
var propertyShape = external_exports.strictObject({
  value: number2,
  low: number2.describe("10 % point"),
  high: number2.describe("90 % point"),
  source: external_exports.string()
});
var outsideShape = external_exports.array(
  external_exports.strictObject({ oxide: external_exports.string(), molPercent: number2, least: number2, most: number2 })
);
var batchShape = external_exports.strictObject({
  wantedG: number2.nullable(),
  baseSum: number2.describe("parts as written; meant to be 100"),
  additionsSum: number2,
  totalForBaseG: number2.nullable(),
  rows: external_exports.array(
    external_exports.strictObject({
      name: external_exports.string(),
      part: external_exports.enum(["base", "addition"]),
      calcined: external_exports.boolean(),
      formula: external_exports.string().nullable().describe("ideal mineral it is counted as; null for your own"),
      lossFraction: number2.describe("of the raw material, in the fire"),
      parts: number2,
      percentOfBase: number2,
      percentOfTotal: number2,
      gramsForBase: number2.nullable(),
      gramsForTotal: number2.nullable(),
      swappedParts: number2.nullable().describe("parts of the other form, raw or calcined")
    })
  )
});
var slipShape = external_exports.strictObject({
  solidGPerCm3: number2,
  solidFrom: external_exports.enum(["yours", "worked out", "assumed"]),
  unknownMaterials: external_exports.array(external_exports.string()),
  dryG: external_exports.array(number2).describe("dry masses that waterG answers, in order"),
  rows: external_exports.array(
    external_exports.strictObject({
      slipGPerCm3: number2,
      dryGPerLitre: number2,
      waterGPerLitre: number2,
      waterG: external_exports.array(number2)
    })
  ),
  bucket: external_exports.strictObject({ litres: number2, dryG: number2, waterG: number2 }).nullable()
});
var coatShape = external_exports.strictObject({
  lossFraction: number2.nullable().describe("null without a recipe; 0 was counted"),
  firedGPerCm3: number2,
  weighed: external_exports.strictObject({ dryGPerCm2: number2, firedMm: number2, lowMm: number2, highMm: number2 }).nullable(),
  wanted: external_exports.strictObject({ firedMm: number2, dryGPerCm2: number2 }).nullable()
});
var leachShape = external_exports.strictObject({
  ware: external_exports.strictObject({
    use: external_exports.enum(["cup", "dish", "cooking"]),
    depthMm: number2,
    litres: number2
  }),
  source: external_exports.string(),
  rows: external_exports.array(
    external_exports.strictObject({
      law: external_exports.enum(["EU", "US"]),
      metal: external_exports.enum(["lead", "cadmium"]),
      most: number2,
      mostUnit: external_exports.enum(["mg/L", "mg/dm\xB2"]),
      kind: external_exports.string().describe("the law's own kind of ware"),
      found: number2,
      foundUnit: external_exports.enum(["mg/L", "mg/dm\xB2"]),
      isBelow: external_exports.boolean().describe("less than found"),
      stands: external_exports.enum(["under", "over", "open"]).describe("of this piece only")
    })
  )
});
var glazeShape = external_exports.strictObject({
  name: external_exports.string(),
  invented: external_exports.boolean(),
  cone: external_exports.string().nullable(),
  crackle: external_exports.boolean(),
  molPercent: amounts("mol %"),
  wtPercent: amounts("wt %"),
  molarMasses: amounts("g/mol as used"),
  unity: external_exports.strictObject({
    moles: amounts("moles for one mole of flux"),
    alkaliShare: number2,
    silicaToAlumina: number2.nullable()
  }).nullable(),
  lossFraction: number2.nullable().describe("of the dry batch; null without a recipe"),
  expansion: external_exports.strictObject({
    meanPerK: perK,
    sigmaPerK: perK,
    relativeSigmaPerK: perK,
    fromC: number2,
    toC: number2,
    from: external_exports.enum(["measured", "computed"]),
    source: external_exports.string()
  }),
  computedPerK: number2.nullable().describe("by the Appen set, also where a measured value rules"),
  leftOutMolPercent: amounts("mol % left out of the computed expansion"),
  secondOpinions: external_exports.array(
    external_exports.strictObject({
      name: external_exports.string(),
      meanPerK: perK,
      range: external_exports.string(),
      leftWtPercent: amounts("wt % without a factor")
    })
  ).describe("comparable only with values of the same set"),
  setPoint: external_exports.strictObject({
    valueC: number2,
    sigmaK: number2,
    from: external_exports.enum(["given", "computed", "assumed"]),
    source: external_exports.string()
  }),
  stiffC: number2.describe("temperature at 10^12 Pa\xB7s by the model"),
  stiffOutside: outsideShape.describe("oxides outside that model's range; most 0: not known to it"),
  youngGPa: propertyShape,
  poisson: propertyShape,
  toughnessMPaRootM: propertyShape,
  firedDensityKgPerM3: propertyShape,
  batch: batchShape.nullable(),
  slip: slipShape.nullable(),
  coat: coatShape.nullable(),
  fit: glazeFitShape.nullable().describe("null when fitMissing names keys"),
  fitMissing: external_exports.array(external_exports.string()).describe("keys of the file that the fit on a body needs"),
  leachTests: external_exports.array(leachShape).describe("tests of single pieces beside two laws' limits"),
  findings: external_exports.array(findingShape),
  cautions: external_exports.array(cautionShape)
});
var glazeDocumentSchema = external_exports.strictObject({
  ...opening("glaze"),
  glazes: external_exports.array(glazeShape),
  againstFirst: external_exports.array(
    external_exports.strictObject({
      name: external_exports.string(),
      differencePerK: perK,
      sigmaPerK: perK,
      areRelatives: external_exports.boolean(),
      isMixed: external_exports.boolean()
    })
  )
});
function glazeDocument(works) {
  return {
    schemaVersion: 1,
    ok: true,
    command: "glaze",
    glazes: works.map(glazePiece),
    againstFirst: compareGlazes(works.map(({ sheet }) => sheet.glaze)).map((each) => ({ ...each }))
  };
}
function glazePiece({
  sheet,
  batch,
  slip,
  coat,
  onBody,
  cautions
}) {
  const { parsed, glaze, unity, computed, stiff } = sheet;
  return {
    name: glaze.name,
    invented: parsed.invented,
    cone: parsed.cone,
    crackle: parsed.crackle,
    molPercent: plainAmounts(sheet.molPercent),
    wtPercent: plainAmounts(sheet.wtPercent),
    molarMasses: massesOf(sheet.molPercent),
    unity: unity === null ? null : { ...unity, moles: plainAmounts(unity.moles) },
    lossFraction: parsed.givenAs.kind === "recipe" ? parsed.givenAs.lossFraction : null,
    expansion: { ...glaze.expansion },
    computedPerK: computed?.meanPerK ?? null,
    leftOutMolPercent: plainAmounts(computed?.left ?? {}),
    secondOpinions: sheet.opinions.map(({ name, meanPerK, range, leftWtPercent }) => ({
      name,
      meanPerK,
      range,
      leftWtPercent: plainAmounts(leftWtPercent)
    })),
    setPoint: { ...glaze.setPoint },
    stiffC: stiff.tempC,
    stiffOutside: stiff.outside.map((each) => ({ ...each })),
    youngGPa: plainProperty(glaze.youngGPa),
    poisson: plainProperty(glaze.poisson),
    toughnessMPaRootM: plainProperty(glaze.toughnessMPaRootM),
    firedDensityKgPerM3: plainProperty(glaze.firedDensityKgPerM3),
    batch: batch === null ? null : { ...batch, rows: batch.rows.map((row) => ({ ...row })) },
    slip: slip === null ? null : slipPiece(slip),
    coat: coat === null ? null : {
      ...coat,
      weighed: coat.weighed && { ...coat.weighed },
      wanted: coat.wanted && { ...coat.wanted }
    },
    fit: "fit" in onBody ? glazeFitPiece(onBody.fit) : null,
    fitMissing: "missing" in onBody ? [...onBody.missing] : [],
    leachTests: parsed.leachTests.map(leachPiece),
    findings: findingsPiece(sheet.findings),
    cautions: cautionsPiece(cautions)
  };
}
function leachPiece(test) {
  return {
    ware: { ...test.ware },
    source: test.source,
    rows: leachSheet(test).map(({ limit, found, stands }) => ({
      law: limit.law,
      metal: limit.metal,
      most: limit.most,
      mostUnit: limit.unit,
      kind: limit.kind,
      found: found.value,
      foundUnit: found.unit,
      isBelow: found.isBelow,
      stands
    }))
  };
}
function slipPiece(slip) {
  return {
    ...slip,
    unknownMaterials: [...slip.unknownMaterials],
    dryG: [...slip.dryG],
    rows: slip.rows.map((row) => ({ ...row, waterG: [...row.waterG] })),
    bucket: slip.bucket && { ...slip.bucket }
  };
}
function plainAmounts(given) {
  return mapAmounts(given, (amount) => amount);
}
function massesOf(given) {
  return mapAmounts(given, (_, oxide) => oxideMass(oxide));
}
function plainProperty({ value, low, high, source }) {
  return { value, low, high, source };
}

export {
  compareGlazes,
  glazeDocumentSchema,
  glazeDocument
};
