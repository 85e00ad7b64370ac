import type { WitnessOffset } from "../cones/witnessOffset.ts";
import type { FoundSegment, ZoneReview } from "../firing/FiringFacts.ts";
import { type FallByItself, fellByItself } from "../firing/powerLoss.ts";
import type { FiringReview } from "../review/FiringReview.ts";
import {
  printDifference,
  printDuration,
  printRate,
  printSpan,
  printTemperature,
  printTravel,
} from "../text/quantities.ts";
import { capitalised, stopped } from "../text/wrap.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type { Block, Cell } from "./Block.ts";
import { plusMinus, seriesName } from "./coneBlocks.ts";
import { momentColumns, momentLines, momentText } from "./moments.ts";

/** The thermocouples side by side, and how far apart they were; empty with one. */
export function zoneBlocks(review: FiringReview, unit: TemperatureUnit): readonly Block[] {
  const { zones, spread, reading } = review;
  if (zones.length < 2) return [];
  const { startOfDaySeconds } = reading;
  return [
    { kind: "heading", text: "Where in the kiln" },
    {
      kind: "table",
      caption: "The thermocouples side by side",
      columns: [
        { head: "thermocouple", align: "left" },
        { head: "peak", align: "right" },
        { head: "when (h:min after start)", align: "right" },
        { head: `within ${printDifference(5, unit)} of peak`, align: "right" },
        { head: "heat reached", align: "right" },
        { head: "last reading", align: "right" },
      ],
      rows: zones.map((zone) => zoneRow(zone, { unit, startOfDaySeconds })),
    },
    ...(spread === null
      ? []
      : [
          {
            kind: "sentence",
            text: `They were farthest apart, ${printDifference(spread.largestC, unit)}, at ${momentText(startOfDaySeconds, spread.largestAtSeconds)}, and ${printDifference(spread.atPeakC, unit)} apart at the peak of the hottest.`,
          } as const,
        ]),
  ];
}

function zoneRow(
  zone: ZoneReview,
  context: { readonly unit: TemperatureUnit; readonly startOfDaySeconds: number | null },
): readonly Cell[] {
  const { unit, startOfDaySeconds } = context;
  const { sigmaCones, position } = zone.heatwork;
  return [
    zone.name,
    printTemperature(zone.peakC, unit),
    { lines: momentLines(startOfDaySeconds, zone.peakAtSeconds) },
    printDuration(zone.secondsWithinFiveOfPeak),
    {
      lines: [position.label, ...(sigmaCones === null ? [] : [`± ${plusMinus(sigmaCones)} cones`])],
    },
    printTemperature(zone.lastReadingC, unit),
  ];
}

const LEAST_DRIFT_CPERHOUR = 1;

/** Ramps and holds that were found in a measured Curve. */
export function segmentBlocks(
  segments: readonly FoundSegment[],
  context: {
    readonly caption: string;
    readonly unit: TemperatureUnit;
    readonly startOfDaySeconds: number | null;
  },
): readonly Block[] {
  const { caption, unit, startOfDaySeconds } = context;
  if (segments.length === 0) return [];
  return [
    {
      kind: "table",
      caption,
      columns: [
        { head: "", align: "left" },
        { head: "from → to", align: "right" },
        { head: "rate", align: "right" },
        { head: "lasted", align: "right" },
        ...momentColumns("ended", startOfDaySeconds),
      ],
      rows: fellByItself(segments).map((segment): readonly Cell[] => [
        segment.kind === "hold" && segment.stable ? "steady hold" : segment.kind,
        spanCell(segment, unit),
        rateCell(segment, unit),
        printDuration(segment.endSeconds - segment.startSeconds),
        ...momentLines(startOfDaySeconds, segment.endSeconds),
      ]),
    },
  ];
}

function spanCell(segment: FoundSegment | FallByItself, unit: TemperatureUnit): string {
  const from = printTemperature(segment.fromC, unit);
  const to = printTemperature(segment.toC, unit);
  return segment.kind === "hold" && from === to ? to : printSpan(segment.fromC, segment.toC, unit);
}

function rateCell(segment: FoundSegment | FallByItself, unit: TemperatureUnit): string {
  if (segment.kind === "fell by itself")
    return `${printTravel(segment.firstCPerHour, unit)}, in the end ${printRate(-segment.lastCPerHour, unit)}`;
  if (segment.kind === "ramp") return printTravel(segment.rateCPerHour, unit);
  if (Math.abs(segment.rateCPerHour) < LEAST_DRIFT_CPERHOUR) return "held";
  const direction = segment.rateCPerHour < 0 ? "drifting down" : "drifting up";
  return `${direction} ${printRate(segment.rateCPerHour, unit)}`;
}

/** What was heard, what the witness cones said, and the lines of the record; each only if given. */
export function recordBlocks(review: FiringReview, unit: TemperatureUnit): readonly Block[] {
  return [
    ...heardBlocks(review, unit),
    ...witnessBlocks(review.offset, unit),
    ...(review.recordLines.length === 0
      ? []
      : ([
          { kind: "heading", text: "From the firing record" },
          { kind: "facts", facts: review.recordLines },
        ] as const)),
  ];
}

function heardBlocks(review: FiringReview, unit: TemperatureUnit): readonly Block[] {
  if (review.heard.length === 0) return [];
  const { startOfDaySeconds } = review.reading;
  return [
    { kind: "heading", text: "What was heard" },
    {
      kind: "list",
      items: review.heard.map(({ what, atSeconds, tempC, note }) => {
        const when =
          atSeconds === null
            ? ", at a time the log does not cover"
            : `: ${momentText(startOfDaySeconds, atSeconds)}`;
        const hot = tempC === null ? "" : `, at ${printTemperature(tempC, unit)}`;
        return `${stopped(`${capitalised(what)}${when}${hot}`)}${note === null ? "" : ` ${stopped(capitalised(note))}`}`;
      }),
    },
  ];
}

function witnessBlocks(offset: WitnessOffset | null, unit: TemperatureUnit): readonly Block[] {
  if (offset === null) return [];
  return [
    { kind: "heading", text: "What the witness cones say" },
    { kind: "sentence", text: offsetSentence(offset, unit) },
    {
      kind: "table",
      caption: `Witness cones: ${seriesName(offset.series)}`,
      columns: [
        { head: "cone", align: "left" },
        { head: "was seen", align: "left" },
        { head: "asks for", align: "right" },
      ],
      rows: offset.witnesses.map((witness): readonly Cell[] => [
        witness.cone,
        witness.said,
        witness.impliedK === null ? "no exact value" : signed(witness.impliedK, unit),
      ]),
    },
  ];
}

function offsetSentence(offset: WitnessOffset, unit: TemperatureUnit): string {
  const size = printDifference(Math.abs(offset.offsetK), unit);
  const reads = size.startsWith("0 ")
    ? "The thermocouple agrees with the witness cones to the degree"
    : `Judged by the witness cones the thermocouple reads about ${size} too ${offset.offsetK < 0 ? "high" : "low"}, give or take ${printDifference(offset.sigmaK, unit)}`;
  const { lowK, highK } = offset;
  if (lowK !== null && highK !== null)
    return `${reads}; anything from ${signed(lowK, unit)} to ${signed(highK, unit)} would fit what was seen.`;
  if (lowK !== null) return `${reads}; what was seen asks for at least ${signed(lowK, unit)}.`;
  if (highK !== null) return `${reads}; what was seen asks for at most ${signed(highK, unit)}.`;
  return `${reads}.`;
}

function signed(deltaK: number, unit: TemperatureUnit): string {
  return `${deltaK < 0 ? "−" : "+"}${printDifference(Math.abs(deltaK), unit)}`;
}
