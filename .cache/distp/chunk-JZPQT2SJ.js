import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  strainsPiece
} from "./chunk-YDD56ZKU.js";
import {
  bodiesPiece,
  cautionsPiece,
  crossingsPiece,
  diagnosisPiece,
  evidencePiece,
  findingsPiece,
  heatworkPiece
} from "./chunk-DQZAGW2O.js";
import {
  bodyShape,
  cautionShape,
  crossingShape,
  diagnosisShape,
  evidenceShape,
  findingShape,
  heatworkShape,
  opening,
  openingInLogShape,
  strainShape
} from "./chunk-RLEK6R44.js";
import {
  statementText
} from "./chunk-GU4RVAU5.js";
import {
  external_exports
} from "./chunk-2Y6UMGL7.js";

// src/core/reports/documents/nextTimePiece.ts
var nextTimeShape = external_exports.strictObject({
  changes: external_exports.array(
    external_exports.strictObject({
      about: external_exports.enum([
        "lid",
        "cooling",
        "cone",
        "climb",
        "glaze",
        "clay",
        "drying",
        "bisque",
        "elements",
        "thermocouple",
        "hold",
        "power",
        "log",
        "record"
      ]),
      change: external_exports.string(),
      because: external_exports.string(),
      evidence: external_exports.array(evidenceShape),
      standing: external_exports.enum(["firm", "worth trying", "too close to tell"]).describe("too close to tell: the reason is within its own uncertainty"),
      inSchedule: external_exports.boolean().describe("the command carries it out"),
      ask: external_exports.union([
        external_exports.strictObject({
          kind: external_exports.literal("pace"),
          fromC: external_exports.number(),
          toC: external_exports.number(),
          mostCPerHour: external_exports.number()
        }),
        external_exports.strictObject({ kind: external_exports.literal("cone"), cone: external_exports.string() }),
        external_exports.strictObject({ kind: external_exports.literal("climb") })
      ]).nullable().describe("what the next schedule keeps to, in numbers; null where it stays as it is")
    })
  ).describe("most needed first"),
  advice: external_exports.array(external_exports.string()),
  command: external_exports.string().nullable().describe(
    "one line for a POSIX shell, from the folder in which review ran; null when none runs"
  ),
  commandSays: external_exports.string().describe("what the command does, or why there is none")
});
function nextTimePiece(nextTime) {
  if (nextTime === null) return null;
  const { changes, advice, command, commandSays } = nextTime;
  return {
    changes: changes.map((change) => {
      const placed = (statement) => statementText({ topic: change.about, statement, evidence: change.evidence }, "C");
      return {
        about: change.about,
        change: placed(change.change),
        because: placed(change.because),
        evidence: evidencePiece(change.evidence),
        standing: change.standing,
        inSchedule: change.inSchedule,
        ask: change.ask
      };
    }),
    advice: [...advice],
    command,
    commandSays
  };
}

// src/core/reports/documents/reviewDocument.ts
var gapShape = external_exports.strictObject({ fromSeconds: external_exports.number(), toSeconds: external_exports.number() });
var logShape = external_exports.strictObject({
  name: external_exports.string().describe("file name without its folder"),
  rows: external_exports.int(),
  accepted: external_exports.int(),
  rejected: external_exports.array(external_exports.strictObject({ reason: external_exports.string(), count: external_exports.int() })),
  unit: external_exports.enum(["C", "F", "K"]).describe("unit of the file; this document is in \xB0C"),
  columns: external_exports.array(
    external_exports.strictObject({
      name: external_exports.string(),
      role: external_exports.enum(["temperature", "set-point", "output", "cold-junction", "other"]),
      readings: external_exports.int(),
      dropped: external_exports.int()
    })
  ),
  start: external_exports.string().nullable().describe("wall time of the first reading, without a zone"),
  startOfDaySeconds: external_exports.number().nullable(),
  intervalSeconds: external_exports.number(),
  gaps: external_exports.array(gapShape),
  faults: external_exports.array(
    external_exports.strictObject({
      kind: external_exports.enum(["spike", "stuck", "open", "gap", "clock", "coarse"]),
      channel: external_exports.string().nullable(),
      fromSeconds: external_exports.number(),
      toSeconds: external_exports.number(),
      count: external_exports.int(),
      what: external_exports.string()
    })
  ),
  decisions: external_exports.array(
    external_exports.strictObject({
      about: external_exports.string(),
      choice: external_exports.string(),
      confidence: external_exports.enum(["told", "certain", "likely", "guessed"]),
      because: external_exports.string(),
      runnerUp: external_exports.string().nullable(),
      option: external_exports.string().nullable()
    })
  )
});
var zoneShape = external_exports.strictObject({
  name: external_exports.string(),
  peakC: external_exports.number(),
  peakAtSeconds: external_exports.number(),
  secondsWithinFiveOfPeak: external_exports.number(),
  lastReadingC: external_exports.number(),
  lastReadingAtSeconds: external_exports.number(),
  heatwork: heatworkShape,
  segments: external_exports.array(
    external_exports.strictObject({
      kind: external_exports.enum(["ramp", "hold"]),
      startSeconds: external_exports.number(),
      endSeconds: external_exports.number(),
      fromC: external_exports.number(),
      toC: external_exports.number(),
      rateCPerHour: external_exports.number(),
      stable: external_exports.boolean()
    })
  ),
  crossings: external_exports.array(crossingShape)
});
var reviewDocumentSchema = external_exports.strictObject({
  ...opening("review"),
  title: external_exports.string(),
  log: logShape,
  zones: external_exports.array(zoneShape),
  strains: external_exports.array(strainShape).describe(
    "of the hottest thermocouple while the kiln was shut, weakest piece first; an ordinary mug where no ware is known"
  ),
  spread: external_exports.strictObject({ largestK: external_exports.number(), largestAtSeconds: external_exports.number(), atPeakK: external_exports.number() }).nullable().describe("difference between thermocouples; null with one"),
  witnessOffset: external_exports.strictObject({
    series: external_exports.string(),
    offsetK: external_exports.number(),
    sigmaK: external_exports.number().describe("one standard deviation"),
    usualK: external_exports.number().describe("what was expected without witness cones"),
    usualSigmaK: external_exports.number(),
    lowK: external_exports.number().nullable(),
    highK: external_exports.number().nullable(),
    witnesses: external_exports.array(
      external_exports.strictObject({ cone: external_exports.string(), said: external_exports.string(), impliedK: external_exports.number().nullable() })
    )
  }).nullable(),
  plan: external_exports.strictObject({
    title: external_exports.string(),
    zone: external_exports.string(),
    shiftSeconds: external_exports.number(),
    largestDeviationK: external_exports.number(),
    largestDeviationAtSeconds: external_exports.number(),
    areaDeviationRatio: external_exports.number(),
    peakDeviationK: external_exports.number(),
    peakDelaySeconds: external_exports.number()
  }).nullable(),
  heard: external_exports.array(
    external_exports.strictObject({
      what: external_exports.string(),
      atSeconds: external_exports.number().nullable(),
      tempC: external_exports.number().nullable(),
      note: external_exports.string().nullable()
    })
  ),
  openingInLog: openingInLogShape.nullable().describe("where the log shows cold air coming in; null when the kiln only slowed down"),
  diagnosis: diagnosisShape.nullable().describe("null when nothing was heard or found"),
  nextTime: nextTimeShape.nullable().describe("null where it was not asked for"),
  record: external_exports.array(external_exports.strictObject({ label: external_exports.string(), text: external_exports.string() })),
  bodies: external_exports.array(bodyShape).describe("clay bodies that stress was computed with, each once"),
  findings: external_exports.array(findingShape),
  cautions: external_exports.array(cautionShape)
});
function reviewDocument(review) {
  return {
    schemaVersion: 1,
    ok: true,
    command: "review",
    title: review.title,
    log: logPiece(review.reading),
    zones: review.zones.map((zone) => ({
      name: zone.name,
      peakC: zone.peakC,
      peakAtSeconds: zone.peakAtSeconds,
      secondsWithinFiveOfPeak: zone.secondsWithinFiveOfPeak,
      lastReadingC: zone.lastReadingC,
      lastReadingAtSeconds: zone.lastReadingAtSeconds,
      heatwork: heatworkPiece(zone.heatwork),
      segments: zone.segments.map(
        ({ kind, startSeconds, endSeconds, fromC, toC, rateCPerHour, stable }) => ({
          kind,
          startSeconds,
          endSeconds,
          fromC,
          toC,
          rateCPerHour,
          stable
        })
      ),
      crossings: crossingsPiece(zone.crossings)
    })),
    strains: strainsPiece(review.strains),
    ...differencePieces(review),
    heard: review.heard.map(({ what, atSeconds, tempC, note }) => ({
      what,
      atSeconds,
      tempC,
      note
    })),
    openingInLog: review.openingInLog && { ...review.openingInLog },
    diagnosis: diagnosisPiece(review.diagnosis, review.diagnosedPieces),
    nextTime: nextTimePiece(review.nextTime),
    record: review.recordLines.map(({ label, text }) => ({ label, text })),
    bodies: bodiesPiece(review.pieces.map(({ ware }) => ware)),
    findings: findingsPiece(review.findings),
    cautions: cautionsPiece(review.cautions)
  };
}
function differencePieces(review) {
  const { spread, offset, comparison } = review;
  return {
    spread: spread && {
      largestK: spread.largestC,
      largestAtSeconds: spread.largestAtSeconds,
      atPeakK: spread.atPeakC
    },
    witnessOffset: offset && {
      series: offset.series,
      offsetK: offset.offsetK,
      sigmaK: offset.sigmaK,
      usualK: offset.usual.offsetK,
      usualSigmaK: offset.usual.sigmaK,
      lowK: offset.lowK,
      highK: offset.highK,
      witnesses: offset.witnesses.map(({ cone, said, impliedK }) => ({ cone, said, impliedK }))
    },
    plan: comparison && {
      title: comparison.title,
      zone: comparison.zone,
      shiftSeconds: comparison.shiftSeconds,
      largestDeviationK: comparison.largestDeviationC,
      largestDeviationAtSeconds: comparison.largestDeviationAtSeconds,
      areaDeviationRatio: comparison.areaDeviation,
      peakDeviationK: comparison.peakDeviationC,
      peakDelaySeconds: comparison.peakDelaySeconds
    }
  };
}
function logPiece(reading) {
  const counts = /* @__PURE__ */ new Map();
  const add = (reason, count) => counts.set(reason, (counts.get(reason) ?? 0) + count);
  for (const { reason } of reading.rows.rejected) add(reason, 1);
  for (const { reason, count } of reading.rows.unlisted ?? []) add(reason, count);
  return {
    name: reading.name,
    rows: reading.rows.total,
    accepted: reading.rows.accepted,
    rejected: [...counts].map(([reason, count]) => ({ reason, count })),
    unit: reading.unit,
    columns: reading.channels.map(({ name, role, readings, dropped }) => ({
      name,
      role,
      readings,
      dropped
    })),
    start: reading.start,
    startOfDaySeconds: reading.startOfDaySeconds,
    intervalSeconds: reading.intervalSeconds,
    gaps: reading.gaps.map(({ fromSeconds, toSeconds }) => ({ fromSeconds, toSeconds })),
    faults: reading.faults.map(({ kind, channel, fromSeconds, toSeconds, count, what }) => ({
      kind,
      channel,
      fromSeconds,
      toSeconds,
      count,
      what
    })),
    decisions: reading.decisions.map(
      ({ about, choice, confidence, because, runnerUp, option }) => ({
        about,
        choice,
        confidence,
        because,
        runnerUp,
        option
      })
    )
  };
}

export {
  reviewDocumentSchema,
  reviewDocument
};
