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
  clockText
} from "./chunk-4ME6ZCIX.js";
import {
  printDuration,
  printElapsed
} from "./chunk-IOGTIVWI.js";
import {
  external_exports
} from "./chunk-2Y6UMGL7.js";

// src/core/reports/pingRecordLines.ts
function pingRecordLines(review) {
  const { pings, spans, heard, started, burst } = review;
  const [first] = pings;
  if (!first) return [];
  const early = spans[0];
  const out = review.temperatures?.unloading ?? null;
  const counts = [
    `${pings.length} pings in ${printDuration(heard.seconds)} of recording (a lower bound)`,
    ...spans.length > 1 && early ? [`${early.count} of them in the first 10 min`] : [],
    ...out === null || out.count === 0 || out.atSeconds <= 0 ? [] : [`${out.count} of them after unloading`],
    ...review.law === null ? [] : [
      `exponent ${review.law.p.toFixed(2)} (${review.law.pLow.toFixed(2)} to ${review.law.pHigh.toFixed(2)})`
    ]
  ];
  return [
    "heard:",
    "  - what: pinging",
    `    at: ${atText(started, first.atSeconds)}`,
    "    note: >-",
    ...counts.map((text, i) => `      ${text}${i < counts.length - 1 ? ";" : ""}`),
    ...burst === null ? [] : [
      "  - what: pinging, a second burst",
      `    at: ${atText(started, burst.fromSeconds)}`,
      "    note: >-",
      `      ${burst.count} pings in ${printDuration(burst.toSeconds - burst.fromSeconds)}, about ${Math.round(burst.expected)} expected`
    ]
  ];
}
function atText({ secondsOfDay, elapsedSeconds }, atSeconds) {
  if (elapsedSeconds !== null) {
    const at = elapsedSeconds + atSeconds;
    if (at >= 0) return `"+${printElapsed(at)}"`;
  }
  const clock = clockText(secondsOfDay, atSeconds);
  return clock === null ? `"00:00"   # put in when the recording began, plus ${printElapsed(atSeconds)}` : `"${clock.slice(0, 5)}"`;
}

// src/core/reports/documents/pingsDocument.ts
var count = external_exports.int().nonnegative();
var nullable = external_exports.number().nullable();
var bandShape = external_exports.strictObject({
  name: external_exports.string().nullable(),
  lowC: external_exports.number(),
  highC: external_exports.number(),
  count,
  seconds: external_exports.number().describe("time for which the recording heard it"),
  perHour: external_exports.number()
});
var pingsDocumentSchema = external_exports.strictObject({
  ...opening("pings"),
  recording: external_exports.strictObject({
    name: external_exports.string(),
    format: external_exports.string(),
    seconds: external_exports.number(),
    sampleRateHz: external_exports.number(),
    notes: external_exports.array(external_exports.string()),
    startedSecondsOfDay: nullable.describe("by the clock, seconds after midnight"),
    startedElapsedSeconds: nullable.describe("since the start of the log or the firing"),
    fullScaleShare: external_exports.number(),
    zeroShare: external_exports.number(),
    noisySeconds: external_exports.number()
  }),
  settings: external_exports.strictObject({
    thresholdDb: nullable.describe("null: from the scatter of the quiet level, see the bands"),
    apartSeconds: external_exports.number(),
    attackDb: external_exports.number(),
    floorSeconds: external_exports.number()
  }),
  bands: external_exports.array(
    external_exports.strictObject({
      lowHz: external_exports.number(),
      highHz: external_exports.number(),
      floorDbfs: external_exports.number().describe("quiet level, median over the recording"),
      thresholdDb: external_exports.number().describe("over the quiet level, median over the recording")
    })
  ),
  others: external_exports.strictObject({ slow: count, lasting: count, thuds: count, amongNoise: count }).describe("sounds that stood out and were not taken for pings"),
  pings: external_exports.array(
    external_exports.strictObject({
      atSeconds: external_exports.number().describe("from the start of the recording"),
      overFloorDb: external_exports.number(),
      levelDbfs: external_exports.number(),
      pitchHz: external_exports.number(),
      decayMs: nullable.describe("time to die away by 20 dB"),
      isClipped: external_exports.boolean(),
      tempC: nullable
    })
  ).describe("a lower bound"),
  spans: external_exports.array(
    external_exports.strictObject({
      fromSeconds: external_exports.number(),
      toSeconds: external_exports.number(),
      count,
      share: external_exports.number(),
      perHour: external_exports.number()
    })
  ),
  law: external_exports.strictObject({
    p: external_exports.number(),
    pLow: external_exports.number().describe("95 %"),
    pHigh: external_exports.number(),
    pSigma: external_exports.number(),
    pBias: external_exports.number(),
    cSeconds: external_exports.number()
  }).nullable().describe("rate in proportion to 1/(t + c)^p; null up to 50 pings"),
  earliness: nullable.describe("sigmas by which the pings lie early in the recording"),
  burst: external_exports.strictObject({ fromSeconds: external_exports.number(), toSeconds: external_exports.number(), count, expected: external_exports.number() }).nullable(),
  kinds: external_exports.strictObject({
    kinds: external_exports.array(
      external_exports.strictObject({
        count,
        members: external_exports.array(external_exports.number()).describe("places of these pings in the list, from 0"),
        pitchHz: external_exports.number(),
        pitchFactor: external_exports.number(),
        overFloorDb: external_exports.number()
      })
    ),
    evidence: nullable,
    separation: nullable,
    mixedShare: nullable
  }),
  temperatures: external_exports.strictObject({
    logName: external_exports.string(),
    channel: external_exports.string(),
    startedSeconds: external_exports.number(),
    knownShare: external_exports.number(),
    coldestC: nullable,
    unloading: external_exports.strictObject({
      atSeconds: external_exports.number().describe("of the recording; under 0: before it began"),
      tempC: nullable,
      count: count.describe("pings from then on, which have no temperature"),
      seconds: external_exports.number()
    }).nullable().describe("when the ware was taken out; null when no record says"),
    rangeK: external_exports.number(),
    steps: external_exports.array(bandShape),
    inversions: external_exports.array(bandShape),
    firstC: nullable,
    thirdC: nullable,
    steady: external_exports.strictObject({ count, seconds: external_exports.number() })
  }).nullable(),
  linesToRecord: external_exports.array(external_exports.string()).describe("lines of YAML for the firing record"),
  findings: external_exports.array(findingShape),
  cautions: external_exports.array(cautionShape)
});
function pingsDocument(review) {
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
      noisySeconds: heard.noisySeconds
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
      cSeconds: law.c
    },
    earliness: review.earliness,
    burst: burst && { ...burst },
    kinds: {
      ...review.kinds,
      kinds: review.kinds.kinds.map((kind) => ({ ...kind, members: [...kind.members] }))
    },
    temperatures: temperatures && {
      ...temperatures,
      unloading: temperatures.unloading && { ...temperatures.unloading },
      steps: temperatures.steps.map(bandPiece),
      inversions: temperatures.inversions.map(bandPiece),
      steady: { ...temperatures.steady }
    },
    linesToRecord: [...pingRecordLines(review)],
    findings: findingsPiece(review.findings),
    cautions: cautionsPiece(review.cautions)
  };
}
function bandPiece(band) {
  return { ...band };
}

export {
  pingRecordLines,
  pingsDocumentSchema,
  pingsDocument
};
