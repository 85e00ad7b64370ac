import type { FiringReview, ZoneReview } from "../firing/FiringReview.ts";
import { hottestZone } from "../firing/hottestZone.ts";
import { printDifference, printDuration, printRate, printTemperature } from "../units/print.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import type { Block, ChartPair } from "./Block.ts";
import { capitalised } from "./capitalised.ts";
import { chartBlocks } from "./chartBlocks.ts";
import { momentText } from "./moments.ts";
import { section } from "./section.ts";
import { alarmBlocks } from "./sections/alarmBlocks.ts";
import { basisBlocks } from "./sections/basisBlocks.ts";
import { bodyBlocks } from "./sections/bodyBlocks.ts";
import { cautionBlocks } from "./sections/cautionBlocks.ts";
import { coneTableBlocks } from "./sections/coneTableBlocks.ts";
import { coneLabel, plusMinusSentence, positionSentence } from "./sections/coneWords.ts";
import { crossingBlocks } from "./sections/crossingBlocks.ts";
import { diagnosisBases, diagnosisBlocks } from "./sections/diagnosisBlocks.ts";
import { findingBlocks } from "./sections/findingBlocks.ts";
import { logBlocks } from "./sections/logBlocks.ts";
import { nextTimeBlocks } from "./sections/nextTimeBlocks.ts";
import { planBlocks } from "./sections/planBlocks.ts";
import { recordBlocks } from "./sections/recordBlocks.ts";
import { segmentBlocks } from "./sections/segmentBlocks.ts";
import { strainBlocks } from "./sections/strainBlocks.ts";
import { zoneBlocks } from "./sections/zoneBlocks.ts";

/** Charts that a page of one firing or one schedule may carry. */
interface ReportCharts {
  readonly firing?: ChartPair;
  readonly cooling?: ChartPair;
  readonly cones?: ChartPair;
  /** Only where the body of a piece is known. */
  readonly strain?: ChartPair;
}

/** What every report needs to know beside its object. */
export interface ReportContext {
  readonly unit: TemperatureUnit;
  /** Sources to list at the end, one line each. */
  readonly sources?: readonly string[];
  readonly charts?: ReportCharts;
}

/** A reviewed firing as blocks, in the order in which a potter asks. */
export function reviewBlocks(review: FiringReview, context: ReportContext): readonly Block[] {
  const { unit, charts = {}, sources = [] } = context;
  const { zones, reading, findings } = review;
  const { startOfDaySeconds } = reading;
  const when = { unit, startOfDaySeconds };
  const hottest = zones.length === 0 ? null : hottestZone(zones);
  const nameOf = (zone: ZoneReview) => (zones.length > 1 ? `, thermocouple ${zone.name}` : "");
  return [
    ...alarmBlocks(findings, unit),
    ...headlineBlocks(review, hottest, unit),
    ...chartBlocks("Temperature against time, whole firing", charts.firing),
    ...findingBlocks(findings, when),
    ...diagnosisBlocks(review.diagnosis, unit, review.diagnosedPieces),
    ...nextTimeBlocks(review.nextTime, unit),
    ...section("Through the inversions", [
      ...zones.flatMap((zone) =>
        crossingBlocks(zone.crossings, { caption: `How fast it went${nameOf(zone)}`, ...when }),
      ),
      ...chartBlocks("Cooling through the inversions", charts.cooling),
    ]),
    ...section("Stress in the ware", [
      ...strainBlocks(review.strains, { tense: "was", ...when }),
      ...chartBlocks("Computed stress over strength against time", charts.strain),
    ]),
    ...section("Cones", [
      ...(hottest === null ? [] : coneTableBlocks(hottest.heatwork, { tense: "was", ...when })),
      ...chartBlocks("Cones going down during the firing", charts.cones),
    ]),
    ...section(
      "Ramps and holds",
      zones.flatMap((zone) =>
        segmentBlocks(zone.segments, { caption: `Found in the log${nameOf(zone)}`, ...when }),
      ),
    ),
    ...zoneBlocks(review, unit),
    ...planBlocks(review.comparison, when),
    ...recordBlocks(review, unit),
    ...logBlocks(reading),
    ...bodyBlocks(review.pieces, { unit, ownIn: "the firing record under ware, body" }),
    ...basisBlocks(
      {
        heatwork: hottest?.heatwork ?? null,
        crossings: zones.flatMap((zone) => zone.crossings),
        findings,
        sources: [...diagnosisBases(review.diagnosis), ...sources],
      },
      unit,
    ),
    ...cautionBlocks(review.cautions),
  ];
}

function headlineBlocks(
  review: FiringReview,
  hottest: ZoneReview | null,
  unit: TemperatureUnit,
): readonly Block[] {
  if (hottest === null)
    return [{ kind: "lead", text: "The log holds no temperature that could be read." }];
  const { heatwork } = hottest;
  return [
    {
      kind: "lead",
      text: `${capitalised(coneLabel(heatwork))}, peak ${printTemperature(hottest.peakC, unit)}`,
    },
    {
      kind: "sentence",
      text: `${positionSentence(heatwork, "was")} ${plusMinusSentence(heatwork, unit)}`,
    },
    { kind: "facts", facts: headlineFacts(review, hottest, unit) },
  ];
}

function headlineFacts(review: FiringReview, hottest: ZoneReview, unit: TemperatureUnit) {
  const { startOfDaySeconds, start } = review.reading;
  const { lastHundredCPerHour, effectiveRateCPerHour } = hottest.heatwork;
  const which = review.zones.length > 1 ? `; thermocouple ${hottest.name}, the hottest` : "";
  const nearPeak = printDuration(hottest.secondsWithinFiveOfPeak);
  const measured =
    lastHundredCPerHour === null
      ? "not measured"
      : `${printRate(lastHundredCPerHour, unit)} over the last ${printDifference(100, unit)} to the peak`;
  const same =
    effectiveRateCPerHour === null
      ? ""
      : `; for the cones, the same as a plain ramp at ${printRate(effectiveRateCPerHour, unit)}`;
  return [
    {
      label: "peak",
      text: `${momentText(startOfDaySeconds, hottest.peakAtSeconds)}${which}; ${nearPeak} within ${printDifference(5, unit)} of it`,
    },
    { label: "climb", text: `${measured}${same}` },
    {
      label: "log",
      text: `${start === null ? "" : `starts ${start.replace("T", " ").slice(0, 16)}, `}lasts ${printDuration(hottest.lastReadingAtSeconds)}, ends at ${printTemperature(hottest.lastReadingC, unit)}`,
    },
  ];
}
