import { z } from "zod";
import { CRACK_KINDS, type CrackKind } from "../../diagnosis/Diagnosis.ts";

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

const propertyShape = z
  .strictObject({
    value: number,
    low: number.describe("one in ten is lower"),
    high: number.describe("one in ten is higher"),
    source: text,
  })
  .describe("what is taken, what it may be, and who says so");

/** A clay body that stress was computed with. */
export const bodyShape = z.strictObject({
  name: text,
  densityKgPerM3: propertyShape,
  heatCapacityJPerKgK: propertyShape,
  conductivityWPerMK: propertyShape,
  youngGPa: propertyShape,
  ruptureMPa: propertyShape,
  quartzFraction: propertyShape,
  cristobaliteFraction: propertyShape,
  matrixExpansionPerK: propertyShape,
});

/** What can hurt. */
export const cautionShape = z.strictObject({ topic: text, text });

/** One number that a statement rests on. */
export const evidenceShape = z.strictObject({
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

/** A moment from which a kiln fell faster than by itself; rates are positive. */
export const openingInLogShape = z.strictObject({
  how: z.enum(["opened", "let air in"]).describe("a lid opened, or less: propped, a vent, a fan"),
  atSeconds: seconds,
  plusMinusSeconds: number,
  tempC: number,
  plusMinusK: number,
  beforeCPerHour: number,
  afterCPerHour: number,
  ownCPerHour: number.describe("what the shut kiln would have fallen at"),
});

const crackKind = z.enum(Object.keys(CRACK_KINDS) as [CrackKind, ...CrackKind[]]);

const posterior = number.min(0).max(1).describe("probability; all causes together make 1");
const likelihood = z
  .enum(["likely", "possible", "unlikely"])
  .describe("from 60 %, from 15 %, below");

/** How probable every kind of crack is, for the worst pieces together and for each by itself. */
export const diagnosisShape = z.strictObject({
  canSay: z.boolean().describe("whether any cause reaches 40 %"),
  causes: z.array(
    z.strictObject({
      kind: crackKind,
      name: text,
      posterior,
      likelihood,
      standing: z
        .enum(["speaks for", "open", "speaks against"])
        .describe("likely, possible, unlikely in older words"),
      balance: z
        .int()
        .describe("weights for it minus weights against it; 1 weak, 2 fair, 3 strong"),
      evidence: z.array(
        z.strictObject({
          question: text,
          direction: z.enum(["for", "against"]),
          weight: z.enum(["weak", "fair", "strong"]),
          ratio: number.describe("how many times as probable under this kind as under all others"),
          text: text.describe("the statement, numbers in place, °C"),
          evidence: z.array(evidenceShape),
          basis: text,
        }),
      ),
    }),
  ),
  pieces: z
    .array(
      z.strictObject({
        piece: nothingOr(text),
        what: z.enum(["cracked", "flaked", "crackled", "not known"]),
        count: z.int(),
        causes: z.array(z.strictObject({ kind: crackKind, name: text, posterior, likelihood })),
      }),
    )
    .describe("each piece or kind of piece by itself"),
  tellApart: z
    .array(
      z.strictObject({
        ask: text,
        look: text,
        gainBits: number.describe("uncertainty that its answer takes away, on the whole"),
        answers: z.array(
          z.strictObject({
            answer: text,
            speaksFor: nothingOr(crackKind),
            speaksAgainst: nothingOr(crackKind),
          }),
        ),
      }),
    )
    .describe("the two questions that would move it most"),
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
  limitCPerHour: nothingOr(
    number.describe("the guide: rate at which the stress is half the strength, positive"),
  ),
  limitFromC: nothingOr(number.describe("part of the band in which the guide is to be kept")),
  limitToC: nothingOr(number),
  limitBasis: nothingOr(text),
  limitMeantFor: nothingOr(text),
  cristobalitic: z.boolean().describe("the ware's body has cristobalite, 2 % or more"),
  severity: nothingOr(
    z.enum(["note", "caution", "warning"]).describe("by the stress; null where it is not judged"),
  ),
  openedC: nothingOr(number.describe("the kiln was opened in it or before it, at this")),
  strainRatio: nothingOr(
    number.describe("computed stress over strength; good to a factor of two either way"),
  ),
  strainRatioLow: nothingOr(
    number.describe("its 10 % point by what body, strength, shape and kiln may be"),
  ),
  strainRatioHigh: nothingOr(
    number.describe("its 90 % point by what body, strength, shape and kiln may be"),
  ),
});

const risk = z
  .enum(["low", "watch", "high"])
  .describe("below 0.7, to 1, from 1 on, by the number alone: our own marks");

/** What a range comes from; null with it. */
const sharesShape = z
  .strictObject({ body: number, strength: number, shape: number, kiln: number })
  .describe("shares of the variance of the logarithm, which add up to 1");

/** What one Curve does to one piece; all ratios are good to a factor of two either way. */
export const strainShape = z.strictObject({
  piece: text,
  body: text,
  state: nothingOr(text.describe("how it went into the kiln")),
  heating: z
    .enum(["computed", "raw", "state not known"])
    .describe("whether the way up is computed, and if not why"),
  draws: z.int().describe("draws of the body behind every low and high"),
  seed: z.int(),
  passages: z.array(
    z.strictObject({
      band: text,
      direction: z.enum(["heating", "cooling"]),
      measured: z
        .enum(["whole", "partly"])
        .describe("partly: a gap or an end hides some of it, so the ratio is understated"),
      ratio: nothingOr(number.describe("worst stress over strength; null where not computed")),
      low: nothingOr(number.describe("10 % point by what body, strength, shape and kiln may be")),
      high: nothingOr(number.describe("90 % point by what body, strength, shape and kiln may be")),
      shares: nothingOr(sharesShape),
      risk: nothingOr(risk),
      atSeconds: nothingOr(seconds),
      tempC: nothingOr(number.describe("of the kiln at the worst moment")),
      fromSeconds: nothingOr(seconds),
      toSeconds: nothingOr(seconds),
    }),
  ),
  openings: z.array(
    z.strictObject({
      way: z.enum(["lid opened", "lifted out"]),
      tempC: number,
      ratio: number,
      low: number,
      high: number,
      shares: sharesShape,
      risk,
    }),
  ),
  limits: z
    .array(
      z.strictObject({
        topic: text,
        errs: z.enum(["too hard", "too soft", "either way"]),
        why: text,
      }),
    )
    .describe("what the computed stress does not know about this piece, or knows too hard"),
});

/** A segment as the user's own kiln would go through it; what is wrong with it is in the findings. */
const ownSegmentShape = z.strictObject({
  segment: z.int().describe("index of the segment, from 0"),
  fromC: number,
  toC: number,
  askedCPerHour: nothingOr(number.describe("falling negative; null where the file says free")),
  meanCPerHour: number,
  startSeconds: seconds,
  rampEndSeconds: seconds,
  endSeconds: seconds,
  behindSeconds: number.describe("longer than asked; 0 on a free ramp"),
  behindFromC: nothingOr(number.describe("where it first cannot follow")),
  rampOutput: number.describe("mean share of full power over the ramp, 0 to 1"),
  energyKWh: nothingOr(number),
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
  offsetSigmaK: number.describe("one standard deviation of that offset"),
  offsetIs: z
    .enum(["none", "usual", "known"])
    .describe("nothing allowed for, what kilns are usually out by, or from witness cones or told"),
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

/** A schedule as the user's own kiln would fire it, by simulation; every number is about right. */
export const ownKilnShape = z.strictObject({
  segments: z.array(ownSegmentShape).describe("those that it gets through"),
  stall: nothingOr(
    z.strictObject({
      segment: z.int().describe("index of the segment, from 0"),
      tempC: number.describe("as far as it gets"),
      toC: number.describe("where the segment was to go"),
      rising: z.boolean(),
      beforePeak: z.boolean(),
    }),
  ),
  endSeconds: nothingOr(seconds.describe("end of the programme; null where it stalls")),
  cooledTo: z.array(z.strictObject({ tempC: number, seconds })).describe("power off, lid shut"),
  powerFrom: z
    .enum(["output", "fastest climb"])
    .describe("fastest climb: the least that the kiln can do"),
  energyKWh: nothingOr(number.describe("up to the stall, where it stalls; null without a wattage")),
  cost: nothingOr(number.describe("in the money of the tariff; null without one")),
  heatwork: heatworkShape,
});
