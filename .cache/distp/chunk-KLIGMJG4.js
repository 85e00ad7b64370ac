import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  lengthFigure
} from "./chunk-N2GCBHTS.js";
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
  grainSizeNumber
} from "./chunk-VURM777N.js";
import {
  external_exports
} from "./chunk-2Y6UMGL7.js";

// src/core/photo/trialEntry.ts
function trialEntry(measured) {
  const { cracks, leastVisibleMm, name, corrected } = measured;
  if (cracks === null)
    return {
      cracked: "none",
      note: `no cracks in ${name}; inked ones would be seen from about ${lengthFigure(leastVisibleMm)} mm of width`
    };
  const { pitchMm, pitchIntervalMm, crossings, pattern } = cracks;
  const { low, high } = pitchIntervalMm;
  const byHand = corrected === null ? "" : `, ${correctedWords(corrected)}`;
  return {
    crackSpacing: mm(pitchMm),
    spacingRange: [mm(low), mm(high)],
    spacingFrom: "photo",
    ...pattern === "parallel" && { pattern },
    cracked: "crackle",
    note: `${crossings} crossings in ${name}, taken as ${pattern === "net" ? "a net" : "parallel cracks"}${byHand}`
  };
}
function correctedWords({ takenAway, added, areas, leftOutShare }) {
  const some = (count, what) => `${count} ${what}${count === 1 ? "" : "s"}`;
  const away = takenAway > 0 ? `${some(takenAway, "crossing")} taken away` : "";
  const more = takenAway > 0 ? `${added} added` : `${some(added, "crossing")} added`;
  const counts = [away, added > 0 ? more : ""].filter((words) => words !== "").join(" and ");
  const percent = (100 * leftOutShare).toFixed(leftOutShare < 0.1 ? 1 : 0);
  const left = areas === 0 ? "" : `${some(areas, "area")} left out, ${percent} % of the line`;
  const byHand = counts === "" ? "" : `${counts} by hand`;
  return [byHand, left].filter((words) => words !== "").join("; ") || "nothing changed";
}
function mm(lengthMm) {
  return `${lengthFigure(lengthMm)} mm`;
}

// src/core/photo/trialLines.ts
function trialLines(measured) {
  return Object.entries(trialEntry(measured)).map(
    ([key, value]) => `${key}: ${written(key, value)}`
  );
}
function written(key, value) {
  if (typeof value !== "string") return `[${value.join(", ")}]`;
  return key === "note" ? JSON.stringify(value) : value;
}

// src/core/reports/documents/measureDocument.ts
var interval = external_exports.strictObject({ low: external_exports.number(), high: external_exports.number() }).describe("95 %");
var measureDocumentSchema = external_exports.strictObject({
  ...opening("measure"),
  name: external_exports.string(),
  widthMm: external_exports.number(),
  heightMm: external_exports.number(),
  mmPerPx: external_exports.number(),
  scaleFrom: external_exports.string(),
  choices: external_exports.array(external_exports.strictObject({ what: external_exports.string(), value: external_exports.string(), because: external_exports.string() })),
  cracks: external_exports.strictObject({
    pitchMm: external_exports.number().describe("distance from crack to crack, square across"),
    pitchIntervalMm: interval,
    pattern: external_exports.enum(["net", "parallel"]).describe("what the pitch is worked out for"),
    interceptMm: external_exports.number().describe("mean length of line from crack to crack, hidden ones allowed for"),
    intervalMm: interval,
    relativeAccuracy: external_exports.number().describe("half the interval over the intercept"),
    grainSizeNumber: external_exports.number().describe("ASTM E112 number of the intercept"),
    crossings: external_exports.int(),
    lengthMm: external_exports.number().describe("of all test lines"),
    testLines: external_exports.int(),
    hiddenShare: external_exports.number().describe("share of cracks likely hidden behind a near neighbour"),
    direction: external_exports.strictObject({
      alongDeg: external_exports.number().describe("from the level, clockwise in the picture"),
      alongMm: external_exports.number(),
      acrossMm: external_exports.number(),
      ratio: external_exports.number(),
      isDirectional: external_exports.boolean()
    }).nullable(),
    cellsAcross: external_exports.number(),
    lineWidthPx: external_exports.number(),
    lineWidthMm: external_exports.number(),
    contrast: external_exports.number().describe("how much darker than the ground, as a share"),
    softness: external_exports.number().describe("10 to 90 % edge over the width"),
    checkLines: external_exports.array(
      external_exports.strictObject({
        name: external_exports.enum(["A", "B"]),
        lengthMm: external_exports.number(),
        crossings: external_exports.int(),
        ownCount: external_exports.int().nullable()
      })
    )
  }).nullable().describe("null when no crack was found"),
  leastVisibleMm: external_exports.number().describe("narrowest inked crack that would have been seen"),
  linesToRecord: external_exports.array(external_exports.string()).describe("lines of YAML for the trial in the firing record"),
  findings: external_exports.array(findingShape),
  cautions: external_exports.array(cautionShape)
});
function measureDocument(measured) {
  const { cracks, mmPerPx } = measured;
  return {
    schemaVersion: 1,
    ok: true,
    command: "measure",
    name: measured.name,
    widthMm: measured.widthMm,
    heightMm: measured.heightMm,
    mmPerPx,
    scaleFrom: measured.scaleFrom,
    choices: measured.choices.map((choice) => ({ ...choice })),
    cracks: cracks === null ? null : cracksPiece(cracks, mmPerPx),
    leastVisibleMm: measured.leastVisibleMm,
    linesToRecord: [...trialLines(measured)],
    findings: findingsPiece(measured.findings),
    cautions: cautionsPiece(measured.cautions)
  };
}
function cracksPiece(cracks, mmPerPx) {
  const { profile, direction, interceptMm } = cracks;
  return {
    pitchMm: cracks.pitchMm,
    pitchIntervalMm: { ...cracks.pitchIntervalMm },
    pattern: cracks.pattern,
    interceptMm,
    intervalMm: { ...cracks.intervalMm },
    relativeAccuracy: cracks.relativeAccuracy,
    grainSizeNumber: grainSizeNumber(interceptMm),
    crossings: cracks.crossings,
    lengthMm: cracks.lengthMm,
    testLines: cracks.testLines,
    hiddenShare: cracks.hiddenShare,
    direction: direction === null ? null : { ...direction },
    cellsAcross: cracks.cellsAcross,
    lineWidthPx: profile.width,
    lineWidthMm: profile.width * mmPerPx,
    contrast: profile.contrast,
    softness: profile.softness,
    checkLines: cracks.checkLines.map(({ name, lengthMm, crossings, ownCount }) => ({
      name,
      lengthMm,
      crossings: crossings.places.length,
      ownCount
    }))
  };
}

export {
  correctedWords,
  trialLines,
  measureDocumentSchema,
  measureDocument
};
