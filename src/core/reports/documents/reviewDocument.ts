import { z } from "zod";
import type { LogReading } from "../../log/reading/LogReading.ts";
import type { FiringReview } from "../../review/FiringReview.ts";
import { nextTimePiece, nextTimeShape } from "./nextTimePiece.ts";
import {
  bodiesPiece,
  cautionsPiece,
  crossingsPiece,
  diagnosisPiece,
  findingsPiece,
  heatworkPiece,
  strainsPiece,
} from "./pieces.ts";
import {
  bodyShape,
  cautionShape,
  crossingShape,
  diagnosisShape,
  findingShape,
  heatworkShape,
  opening,
  openingInLogShape,
  strainShape,
} from "./shapes.ts";

const gapShape = z.strictObject({ fromSeconds: z.number(), toSeconds: z.number() });

const logShape = z.strictObject({
  name: z.string().describe("file name without its folder"),
  rows: z.int(),
  accepted: z.int(),
  rejected: z.array(z.strictObject({ reason: z.string(), count: z.int() })),
  unit: z.enum(["C", "F", "K"]).describe("unit of the file; this document is in °C"),
  columns: z.array(
    z.strictObject({
      name: z.string(),
      role: z.enum(["temperature", "set-point", "output", "cold-junction", "other"]),
      readings: z.int(),
      dropped: z.int(),
    }),
  ),
  start: z.string().nullable().describe("wall time of the first reading, without a zone"),
  startOfDaySeconds: z.number().nullable(),
  intervalSeconds: z.number(),
  gaps: z.array(gapShape),
  faults: z.array(
    z.strictObject({
      kind: z.enum(["spike", "stuck", "open", "gap", "clock", "coarse"]),
      channel: z.string().nullable(),
      fromSeconds: z.number(),
      toSeconds: z.number(),
      count: z.int(),
      what: z.string(),
    }),
  ),
  decisions: z.array(
    z.strictObject({
      about: z.string(),
      choice: z.string(),
      confidence: z.enum(["told", "certain", "likely", "guessed"]),
      because: z.string(),
      runnerUp: z.string().nullable(),
      option: z.string().nullable(),
    }),
  ),
});

const zoneShape = z.strictObject({
  name: z.string(),
  peakC: z.number(),
  peakAtSeconds: z.number(),
  secondsWithinFiveOfPeak: z.number(),
  lastReadingC: z.number(),
  lastReadingAtSeconds: z.number(),
  heatwork: heatworkShape,
  segments: z.array(
    z.strictObject({
      kind: z.enum(["ramp", "hold"]),
      startSeconds: z.number(),
      endSeconds: z.number(),
      fromC: z.number(),
      toC: z.number(),
      rateCPerHour: z.number(),
      stable: z.boolean(),
    }),
  ),
  crossings: z.array(crossingShape),
});

/** The document of `review`: one firing, in canonical units, unrounded. */
export const reviewDocumentSchema = z.strictObject({
  ...opening("review"),
  title: z.string(),
  log: logShape,
  zones: z.array(zoneShape),
  strains: z
    .array(strainShape)
    .describe(
      "of the hottest thermocouple while the kiln was shut, weakest piece first; an ordinary mug where no ware is known",
    ),
  spread: z
    .strictObject({ largestK: z.number(), largestAtSeconds: z.number(), atPeakK: z.number() })
    .nullable()
    .describe("difference between thermocouples; null with one"),
  witnessOffset: z
    .strictObject({
      series: z.string(),
      offsetK: z.number(),
      sigmaK: z.number().describe("one standard deviation"),
      usualK: z.number().describe("what was expected without witness cones"),
      usualSigmaK: z.number(),
      lowK: z.number().nullable(),
      highK: z.number().nullable(),
      witnesses: z.array(
        z.strictObject({ cone: z.string(), said: z.string(), impliedK: z.number().nullable() }),
      ),
    })
    .nullable(),
  plan: z
    .strictObject({
      title: z.string(),
      zone: z.string(),
      shiftSeconds: z.number(),
      largestDeviationK: z.number(),
      largestDeviationAtSeconds: z.number(),
      areaDeviationRatio: z.number(),
      peakDeviationK: z.number(),
      peakDelaySeconds: z.number(),
    })
    .nullable(),
  heard: z.array(
    z.strictObject({
      what: z.string(),
      atSeconds: z.number().nullable(),
      tempC: z.number().nullable(),
      note: z.string().nullable(),
    }),
  ),
  openingInLog: openingInLogShape
    .nullable()
    .describe("where the log shows cold air coming in; null when the kiln only slowed down"),
  diagnosis: diagnosisShape.nullable().describe("null when nothing was heard or found"),
  nextTime: nextTimeShape.nullable().describe("null where it was not asked for"),
  record: z.array(z.strictObject({ label: z.string(), text: z.string() })),
  bodies: z.array(bodyShape).describe("clay bodies that stress was computed with, each once"),
  findings: z.array(findingShape),
  cautions: z.array(cautionShape),
});

/** What `review --json` prints. */
export type ReviewDocument = z.infer<typeof reviewDocumentSchema>;

/** A reviewed firing as its JSON document. */
export function reviewDocument(review: FiringReview): ReviewDocument {
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
          stable,
        }),
      ),
      crossings: crossingsPiece(zone.crossings),
    })),
    strains: strainsPiece(review.strains),
    ...differencePieces(review),
    heard: review.heard.map(({ what, atSeconds, tempC, note }) => ({
      what,
      atSeconds,
      tempC,
      note,
    })),
    openingInLog: review.openingInLog && { ...review.openingInLog },
    diagnosis: diagnosisPiece(review.diagnosis, review.diagnosedPieces),
    nextTime: nextTimePiece(review.nextTime),
    record: review.recordLines.map(({ label, text }) => ({ label, text })),
    bodies: bodiesPiece(review.pieces.map(({ ware }) => ware)),
    findings: findingsPiece(review.findings),
    cautions: cautionsPiece(review.cautions),
  };
}

function differencePieces(
  review: FiringReview,
): Pick<ReviewDocument, "spread" | "witnessOffset" | "plan"> {
  const { spread, offset, comparison } = review;
  return {
    spread: spread && {
      largestK: spread.largestC,
      largestAtSeconds: spread.largestAtSeconds,
      atPeakK: spread.atPeakC,
    },
    witnessOffset: offset && {
      series: offset.series,
      offsetK: offset.offsetK,
      sigmaK: offset.sigmaK,
      usualK: offset.usual.offsetK,
      usualSigmaK: offset.usual.sigmaK,
      lowK: offset.lowK,
      highK: offset.highK,
      witnesses: offset.witnesses.map(({ cone, said, impliedK }) => ({ cone, said, impliedK })),
    },
    plan: comparison && {
      title: comparison.title,
      zone: comparison.zone,
      shiftSeconds: comparison.shiftSeconds,
      largestDeviationK: comparison.largestDeviationC,
      largestDeviationAtSeconds: comparison.largestDeviationAtSeconds,
      areaDeviationRatio: comparison.areaDeviation,
      peakDeviationK: comparison.peakDeviationC,
      peakDelaySeconds: comparison.peakDelaySeconds,
    },
  };
}

function logPiece(reading: LogReading): z.infer<typeof logShape> {
  const counts = new Map<string, number>();
  const add = (reason: string, count: number) =>
    counts.set(reason, (counts.get(reason) ?? 0) + count);
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
      dropped,
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
      what,
    })),
    decisions: reading.decisions.map(
      ({ about, choice, confidence, because, runnerUp, option }) => ({
        about,
        choice,
        confidence,
        because,
        runnerUp,
        option,
      }),
    ),
  };
}
