import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  cautionsPiece,
  findingsPiece,
  heatworkPiece
} from "./chunk-DQZAGW2O.js";
import {
  cautionShape,
  findingShape,
  heatworkShape,
  opening
} from "./chunk-RLEK6R44.js";
import {
  cautionsFor
} from "./chunk-4LHYQSW7.js";
import {
  external_exports
} from "./chunk-2Y6UMGL7.js";

// src/core/reports/documents/watchDocument.ts
var number = external_exports.number();
var seconds = number.describe("seconds after the first reading");
var momentShape = {
  atSeconds: seconds,
  earliestSeconds: seconds.describe("two of three such moments lie from here \u2026"),
  latestSeconds: seconds.nullable().describe("\u2026 to here; null when it may not come at all")
};
var rateShape = external_exports.strictObject({
  rateCPerHour: number.describe("falling is negative"),
  sigmaCPerHour: number.describe("one standard deviation"),
  overSeconds: number,
  readings: external_exports.int().positive()
});
var phaseShape = external_exports.enum(["climbing", "holding", "falling"]);
var wantedShape = external_exports.strictObject({
  cone: external_exports.string(),
  series: external_exports.string(),
  heatwork: number.describe("share of the budget of the cone; 1 is down"),
  bend: external_exports.enum([
    "upright",
    "starting to bend",
    "half down",
    "nearly down",
    "down",
    "well past down"
  ]),
  downAtSeconds: seconds.nullable(),
  expected: external_exports.strictObject({ ...momentShape, atC: number }).nullable(),
  whyNot: external_exports.string().nullable().describe("why nothing is expected; null when it is, or is down"),
  by: external_exports.enum(["plan", "present rate"]).nullable(),
  goingOn: rateShape.nullable()
});
var planShape = external_exports.strictObject({
  title: external_exports.string(),
  lateSeconds: number.describe("behind the plan; negative when ahead"),
  doing: phaseShape,
  toC: number,
  asked: external_exports.union([number, external_exports.literal("free")]).describe("\xB0C/h, signed; 0 on a hold"),
  leftSeconds: number.describe("of this ramp or hold, by the plan"),
  peakAtSeconds: seconds.nullable().describe("null when the peak is over"),
  peakC: number,
  endSeconds: seconds,
  finalCone: external_exports.string().describe("what the whole plan would leave, as it is going"),
  finalIndex: number.nullable().describe("0n is \u2212n, n is n \u2212 1; for differences only"),
  finalSigmaCones: number.nullable()
});
var coolingShape = external_exports.strictObject({
  cooledBy: external_exports.array(external_exports.strictObject({ tempC: number, ...momentShape, isMeasured: external_exports.boolean() })),
  from: external_exports.enum(["now", "end of the plan", "cone down"]),
  kiln: external_exports.enum(["learned", "reference"]),
  ownShare: number.nullable().describe("speed of the fall in this log over that of the kiln"),
  openedAtSeconds: seconds.nullable().describe("first sign that the lid or a vent was opened"),
  factor: number.describe("one standard deviation of the time of the fall, as a factor"),
  basis: external_exports.string()
});
var firingShape = external_exports.strictObject({
  start: external_exports.string().nullable(),
  readings: external_exports.int().nonnegative(),
  rejectedRows: external_exports.int().nonnegative(),
  nowSeconds: seconds.describe("last reading, seconds after the first"),
  zone: external_exports.string().describe("hottest thermocouple, which all the rest is about"),
  zones: external_exports.array(
    external_exports.strictObject({
      name: external_exports.string(),
      tempC: number,
      atSeconds: seconds,
      rateCPerHour: number.nullable()
    })
  ),
  tempC: number,
  peakC: number,
  peakAtSeconds: seconds,
  rate: rateShape.nullable(),
  phase: phaseShape.nullable(),
  heatwork: heatworkShape,
  wanted: wantedShape.nullable(),
  plan: planShape.nullable(),
  cooling: coolingShape.nullable(),
  findings: external_exports.array(findingShape)
});
var watchDocumentSchema = external_exports.strictObject({
  ...opening("watch"),
  log: external_exports.string(),
  status: external_exports.enum(["waiting", "watching"]),
  why: external_exports.string().nullable().describe("what is waited for, or why the log cannot be read now"),
  isLast: external_exports.boolean().describe("the file has been still for long enough, and the watch ends"),
  file: external_exports.strictObject({
    change: external_exports.enum(["grown", "same", "anew", "missing"]),
    restarts: external_exports.int().nonnegative(),
    stillSeconds: number,
    hasHalfLine: external_exports.boolean()
  }),
  firing: firingShape.nullable(),
  cautions: external_exports.array(cautionShape)
});
function watchDocument(view) {
  const { file, state } = view;
  return {
    schemaVersion: 1,
    ok: true,
    command: "watch",
    log: view.log,
    status: state === null ? "waiting" : "watching",
    why: view.why,
    isLast: view.isLast,
    file: {
      change: file.change,
      restarts: file.restarts,
      stillSeconds: file.stillSeconds,
      hasHalfLine: file.hasHalfLine
    },
    firing: state && firingPiece(state),
    cautions: cautionsPiece(cautionsFor({ kiln: true, opening: true, estimate: true }))
  };
}
function firingPiece(state) {
  const { wanted, plan, cooling, rate } = state;
  return {
    start: state.start,
    readings: state.readings,
    rejectedRows: state.rejectedRows,
    nowSeconds: state.nowSeconds,
    zone: state.zone,
    zones: state.zones.map((zone) => ({ ...zone })),
    tempC: state.tempC,
    peakC: state.peakC,
    peakAtSeconds: state.peakAtSeconds,
    rate: rate && { ...rate },
    phase: state.phase,
    heatwork: heatworkPiece(state.heatwork),
    wanted: wanted && { ...wanted },
    plan: plan && { ...plan },
    cooling: cooling && { ...cooling, cooledBy: cooling.cooledBy.map((each) => ({ ...each })) },
    findings: findingsPiece(state.findings)
  };
}

export {
  watchDocumentSchema,
  watchDocument
};
