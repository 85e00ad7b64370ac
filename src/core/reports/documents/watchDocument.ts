import { z } from "zod";
import { cautionsFor } from "../../cautions/cautions.ts";
import type { WatchView } from "../watchWords.ts";
import { cautionsPiece, findingsPiece, heatworkPiece } from "./pieces.ts";
import { cautionShape, findingShape, heatworkShape, opening } from "./shapes.ts";

const number = z.number();
const seconds = number.describe("seconds after the first reading");

const momentShape = {
  atSeconds: seconds,
  earliestSeconds: seconds.describe("two of three such moments lie from here …"),
  latestSeconds: seconds.nullable().describe("… to here; null when it may not come at all"),
};

const rateShape = z.strictObject({
  rateCPerHour: number.describe("falling is negative"),
  sigmaCPerHour: number.describe("one standard deviation"),
  overSeconds: number,
  readings: z.int().positive(),
});

const phaseShape = z.enum(["climbing", "holding", "falling"]);

const wantedShape = z.strictObject({
  cone: z.string(),
  series: z.string(),
  heatwork: number.describe("share of the budget of the cone; 1 is down"),
  bend: z.enum([
    "upright",
    "starting to bend",
    "half down",
    "nearly down",
    "down",
    "well past down",
  ]),
  downAtSeconds: seconds.nullable(),
  expected: z.strictObject({ ...momentShape, atC: number }).nullable(),
  whyNot: z.string().nullable().describe("why nothing is expected; null when it is, or is down"),
  by: z.enum(["plan", "present rate"]).nullable(),
  goingOn: rateShape.nullable(),
});

const planShape = z.strictObject({
  title: z.string(),
  lateSeconds: number.describe("behind the plan; negative when ahead"),
  doing: phaseShape,
  toC: number,
  asked: z.union([number, z.literal("free")]).describe("°C/h, signed; 0 on a hold"),
  leftSeconds: number.describe("of this ramp or hold, by the plan"),
  peakAtSeconds: seconds.nullable().describe("null when the peak is over"),
  peakC: number,
  endSeconds: seconds,
  finalCone: z.string().describe("what the whole plan would leave, as it is going"),
  finalIndex: number.nullable().describe("0n is −n, n is n − 1; for differences only"),
  finalSigmaCones: number.nullable(),
});

const coolingShape = z.strictObject({
  cooledBy: z.array(z.strictObject({ tempC: number, ...momentShape, isMeasured: z.boolean() })),
  from: z.enum(["now", "end of the plan", "cone down"]),
  kiln: z.enum(["learned", "reference"]),
  ownShare: number.nullable().describe("speed of the fall in this log over that of the kiln"),
  openedAtSeconds: seconds.nullable().describe("first sign that the lid or a vent was opened"),
  factor: number.describe("one standard deviation of the time of the fall, as a factor"),
  basis: z.string(),
});

const firingShape = z.strictObject({
  start: z.string().nullable(),
  readings: z.int().nonnegative(),
  rejectedRows: z.int().nonnegative(),
  nowSeconds: seconds.describe("last reading, seconds after the first"),
  zone: z.string().describe("hottest thermocouple, which all the rest is about"),
  zones: z.array(
    z.strictObject({
      name: z.string(),
      tempC: number,
      atSeconds: seconds,
      rateCPerHour: number.nullable(),
    }),
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
  findings: z.array(findingShape),
});

/** The document of one look of `watch`, one line each: a firing that is still going, in canonical units. */
export const watchDocumentSchema = z.strictObject({
  ...opening("watch"),
  log: z.string(),
  status: z.enum(["waiting", "watching"]),
  why: z.string().nullable().describe("what is waited for, or why the log cannot be read now"),
  isLast: z.boolean().describe("the file has been still for long enough, and the watch ends"),
  file: z.strictObject({
    change: z.enum(["grown", "same", "anew", "missing"]),
    restarts: z.int().nonnegative(),
    stillSeconds: number,
    hasHalfLine: z.boolean(),
  }),
  firing: firingShape.nullable(),
  cautions: z.array(cautionShape),
});

/** What `watch --json-lines` prints at every look. */
export type WatchDocument = z.infer<typeof watchDocumentSchema>;

/** One look as its JSON document. */
export function watchDocument(view: WatchView): WatchDocument {
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
      hasHalfLine: file.hasHalfLine,
    },
    firing: state && firingPiece(state),
    cautions: cautionsPiece(cautionsFor({ kiln: true, opening: true, estimate: true })),
  };
}

function firingPiece(state: NonNullable<WatchView["state"]>): z.infer<typeof firingShape> {
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
    findings: findingsPiece(state.findings),
  };
}
