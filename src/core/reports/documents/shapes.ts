import { z } from "zod";
import { CRACK_KINDS, type CrackKind } from "../../firing/diagnosis/DiagnosedCause.ts";

const seconds = z.number().describe("seconds after the start");
const text = z.string();
const number = z.number();
const nothingOr = <T extends z.ZodType>(schema: T) => schema.nullable();
const positive = z.int().nonnegative();

/** What starts every document that is an answer to a command. */
export const opening = <C extends string>(command: C) => ({
  schemaVersion: z.literal(1),
  ok: z.literal(true),
  command: z.literal(command),
});

/** What can hurt. */
export const cautionShape = z.strictObject({ topic: text, text });

/** One number that a statement rests on. */
const evidenceShape = z.strictObject({
  name: text,
  value: number,
  kind: z.enum([
    "temperature",
    "difference",
    "rate",
    "duration",
    "elapsed",
    "ratio",
    "percent",
    "count",
    "cones",
  ]),
  unit: z.enum(["°C", "K", "°C/h", "s", "1"]),
});

/** A finding; its sentences have their numbers in °C already in place. */
export const findingShape = z.strictObject({
  topic: text,
  severity: z.enum(["note", "caution", "warning"]),
  text: text.describe("the statement, numbers in place, °C"),
  advice: text.describe("what to do next; empty when there is nothing"),
  evidence: z.array(evidenceShape),
  basis: text,
  zone: nothingOr(text),
  span: nothingOr(z.strictObject({ fromSeconds: seconds, toSeconds: seconds })),
});

const crackKind = z.enum(Object.keys(CRACK_KINDS) as [CrackKind, ...CrackKind[]]);

/** What speaks for which kind of crack: a ranking by evidence, never a probability. */
export const diagnosisShape = z.strictObject({
  causes: z.array(
    z.strictObject({
      kind: crackKind,
      name: text,
      standing: z.enum(["speaks for", "open", "speaks against"]),
      balance: z
        .int()
        .describe("weights for it minus weights against it; 1 weak, 2 fair, 3 strong"),
      evidence: z.array(
        z.strictObject({
          question: text,
          direction: z.enum(["for", "against"]),
          weight: z.enum(["weak", "fair", "strong"]),
          text: text.describe("the statement, numbers in place, °C"),
          evidence: z.array(evidenceShape),
          basis: text,
        }),
      ),
    }),
  ),
  tellApart: z
    .array(
      z.strictObject({
        ask: text,
        look: text,
        answers: z.array(
          z.strictObject({
            answer: text,
            speaksFor: nothingOr(crackKind),
            speaksAgainst: nothingOr(crackKind),
          }),
        ),
      }),
    )
    .describe("what would tell the first two apart"),
  linesToRecord: z.array(text).describe("lines of YAML for the firing record"),
});

/** The passage of one Curve through one band; rates are signed, falling negative. */
export const crossingShape = z.strictObject({
  band: text,
  direction: z.enum(["heating", "cooling"]),
  fromC: number,
  toC: number,
  measured: z.enum(["whole", "partly", "no"]),
  startSeconds: nothingOr(seconds),
  endSeconds: nothingOr(seconds),
  seconds: nothingOr(number.describe("time from first entering to last leaving")),
  meanCPerHour: nothingOr(number),
  fastestCPerHour: nothingOr(number),
  fastestAtSeconds: nothingOr(seconds),
  windowMinutes: nothingOr(number),
  recrossings: positive,
  notes: z.array(text),
  limitCPerHour: nothingOr(number.describe("fastest rate that the limit allows, positive")),
  limitBasis: nothingOr(text),
  limitMeantFor: nothingOr(text),
  strainRatio: nothingOr(number.describe("computed stress over strength")),
});

/** Where the heat stands among the cones. */
export const heatworkShape = z.strictObject({
  series: text,
  cone: nothingOr(text.describe("last cone that is down")),
  fraction: nothingOr(number.describe("share of the way to the next cone, 0 to 1")),
  next: nothingOr(text),
  label: text,
  sigmaCones: nothingOr(number.describe("one standard deviation")),
  modelSigmaCones: nothingOr(number),
  offsetK: number.describe("added to the readings first"),
  peakC: number,
  lastHundredCPerHour: nothingOr(number),
  effectiveRateCPerHour: nothingOr(number),
  extrapolations: z.array(text),
  cones: z.array(
    z.strictObject({
      cone: text,
      heatwork: number.describe("share of the budget of the cone; 1 is down"),
      marginK: number,
      marginSigmaK: number,
      bend: z.enum([
        "upright",
        "starting to bend",
        "half down",
        "nearly down",
        "down",
        "well past down",
      ]),
      downAtSeconds: nothingOr(seconds),
    }),
  ),
});
