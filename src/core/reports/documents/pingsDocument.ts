import { z } from "zod";
import type { PingBand, PingReview } from "../../pings/PingReview.ts";
import { pingRecordLines } from "../pingRecordLines.ts";
import { cautionsPiece, findingsPiece } from "./pieces.ts";
import { cautionShape, findingShape, opening } from "./shapes.ts";

const count = z.int().nonnegative();
const nullable = z.number().nullable();

const bandShape = z.strictObject({
  name: z.string().nullable(),
  lowC: z.number(),
  highC: z.number(),
  count,
  seconds: z.number().describe("time for which the recording heard it"),
  perHour: z.number(),
});

/** The document of `pings`: clicks in a recording, when, how loud, and what they speak for. */
export const pingsDocumentSchema = z.strictObject({
  ...opening("pings"),
  recording: z.strictObject({
    name: z.string(),
    format: z.string(),
    seconds: z.number(),
    sampleRateHz: z.number(),
    notes: z.array(z.string()),
    startedSecondsOfDay: nullable.describe("by the clock, seconds after midnight"),
    startedElapsedSeconds: nullable.describe("since the start of the log or the firing"),
    fullScaleShare: z.number(),
    zeroShare: z.number(),
    noisySeconds: z.number(),
  }),
  settings: z.strictObject({
    thresholdDb: nullable.describe("null: from the scatter of the quiet level, see the bands"),
    apartSeconds: z.number(),
    attackDb: z.number(),
    floorSeconds: z.number(),
  }),
  bands: z.array(
    z.strictObject({
      lowHz: z.number(),
      highHz: z.number(),
      floorDbfs: z.number().describe("quiet level, median over the recording"),
      thresholdDb: z.number().describe("over the quiet level, median over the recording"),
    }),
  ),
  others: z
    .strictObject({ slow: count, lasting: count, thuds: count, amongNoise: count })
    .describe("sounds that stood out and were not taken for pings"),
  pings: z
    .array(
      z.strictObject({
        atSeconds: z.number().describe("from the start of the recording"),
        overFloorDb: z.number(),
        levelDbfs: z.number(),
        pitchHz: z.number(),
        decayMs: nullable.describe("time to die away by 20 dB"),
        isClipped: z.boolean(),
        tempC: nullable,
      }),
    )
    .describe("a lower bound"),
  spans: z.array(
    z.strictObject({
      fromSeconds: z.number(),
      toSeconds: z.number(),
      count,
      share: z.number(),
      perHour: z.number(),
    }),
  ),
  law: z
    .strictObject({
      p: z.number(),
      pLow: z.number().describe("95 %"),
      pHigh: z.number(),
      pSigma: z.number(),
      pBias: z.number(),
      cSeconds: z.number(),
    })
    .nullable()
    .describe("rate in proportion to 1/(t + c)^p; null up to 50 pings"),
  earliness: nullable.describe("sigmas by which the pings lie early in the recording"),
  burst: z
    .strictObject({ fromSeconds: z.number(), toSeconds: z.number(), count, expected: z.number() })
    .nullable(),
  kinds: z.strictObject({
    kinds: z.array(
      z.strictObject({
        count,
        members: z.array(z.number()).describe("places of these pings in the list, from 0"),
        pitchHz: z.number(),
        pitchFactor: z.number(),
        overFloorDb: z.number(),
      }),
    ),
    evidence: nullable,
    separation: nullable,
    mixedShare: nullable,
  }),
  temperatures: z
    .strictObject({
      logName: z.string(),
      channel: z.string(),
      startedSeconds: z.number(),
      knownShare: z.number(),
      coldestC: nullable,
      unloading: z
        .strictObject({
          atSeconds: z.number().describe("of the recording; under 0: before it began"),
          tempC: nullable,
          count: count.describe("pings from then on, which have no temperature"),
          seconds: z.number(),
        })
        .nullable()
        .describe("when the ware was taken out; null when no record says"),
      rangeK: z.number(),
      steps: z.array(bandShape),
      inversions: z.array(bandShape),
      firstC: nullable,
      thirdC: nullable,
      steady: z.strictObject({ count, seconds: z.number() }),
    })
    .nullable(),
  linesToRecord: z.array(z.string()).describe("lines of YAML for the firing record"),
  findings: z.array(findingShape),
  cautions: z.array(cautionShape),
});

/** What `pings --json` prints. */
type PingsDocument = z.infer<typeof pingsDocumentSchema>;

/** A recording of clicks as its JSON document, unrounded. */
export function pingsDocument(review: PingReview): PingsDocument {
  const { sound, heard, started, law, burst, temperatures } = review;
  return {
    schemaVersion: 1,
    ok: true,
    command: "pings",
    recording: {
      name: sound.name,
      format: sound.format,
      seconds: heard.seconds,
      sampleRateHz: heard.sampleRateHz,
      notes: [...sound.notes],
      startedSecondsOfDay: started.secondsOfDay,
      startedElapsedSeconds: started.elapsedSeconds,
      fullScaleShare: heard.fullScaleShare,
      zeroShare: heard.zeroShare,
      noisySeconds: heard.noisySeconds,
    },
    settings: { ...heard.settings },
    bands: heard.bands.map((band) => ({ ...band })),
    others: { ...heard.others },
    pings: review.pings.map((ping) => ({ ...ping })),
    spans: review.spans.map((span) => ({ ...span })),
    law: law && {
      p: law.p,
      pLow: law.pLow,
      pHigh: law.pHigh,
      pSigma: law.pSigma,
      pBias: law.pBias,
      cSeconds: law.c,
    },
    earliness: review.earliness,
    burst: burst && { ...burst },
    kinds: {
      ...review.kinds,
      kinds: review.kinds.kinds.map((kind) => ({ ...kind, members: [...kind.members] })),
    },
    temperatures: temperatures && {
      ...temperatures,
      unloading: temperatures.unloading && { ...temperatures.unloading },
      steps: temperatures.steps.map(bandPiece),
      inversions: temperatures.inversions.map(bandPiece),
      steady: { ...temperatures.steady },
    },
    linesToRecord: [...pingRecordLines(review)],
    findings: findingsPiece(review.findings),
    cautions: cautionsPiece(review.cautions),
  };
}

function bandPiece(band: PingBand) {
  return { ...band };
}
