import type { NextChange, NextTime, Standing } from "../advice/NextFiring.ts";
import { adviceText, type Finding, runawayIn, statementText } from "../findings/Finding.ts";
import { hottestZone, type PlanComparison, type ZoneReview } from "../firing/FiringFacts.ts";
import type { FiringReview } from "../review/FiringReview.ts";
import { printDifference, printDuration, printRate, printTemperature } from "../text/quantities.ts";
import { capitalised } from "../text/wrap.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import {
  type Block,
  type ChartPair,
  cautionBlocks,
  chartBlocks,
  findingBlocks,
  section,
} from "./Block.ts";
import { basisBlocks, bodyBlocks } from "./basisBlocks.ts";
import { coneLabel, coneTableBlocks, plusMinusSentence, positionSentence } from "./coneBlocks.ts";
import { crossingBlocks } from "./crossingBlocks.ts";
import { diagnosisBases, diagnosisBlocks } from "./diagnosisBlocks.ts";
import { recordBlocks, segmentBlocks, zoneBlocks } from "./firingBlocks.ts";
import { logBlocks } from "./logBlocks.ts";
import { momentText } from "./moments.ts";
import { strainBlocks } from "./strainBlocks.ts";

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

/** A kiln that heats by itself, said before the title; empty when there is none. */
export function alarmBlocks(findings: readonly Finding[], unit: TemperatureUnit): readonly Block[] {
  const found = runawayIn(findings);
  if (found === null) return [];
  return [{ kind: "alarm", text: `${statementText(found, unit)} ${adviceText(found, unit)}` }];
}

const STANDING: Readonly<Record<Standing, string>> = {
  firm: "Firm",
  "worth trying": "Only worth trying",
  "too close to tell": "Too close to tell",
};

/** What to change in the next firing, most needed first, and the command that drafts it. */
function nextTimeBlocks(nextTime: NextTime | null, unit: TemperatureUnit): readonly Block[] {
  if (nextTime === null) return [];
  const { changes, advice, command, commandSays } = nextTime;
  return [
    { kind: "heading", text: "What to change next time" },
    ...(changes.length === 0
      ? []
      : ([
          { kind: "list", items: changes.map((change) => changeText(change, unit)) },
        ] satisfies Block[])),
    ...advice.map((text): Block => ({ kind: "sentence", text })),
    { kind: "sentence", text: commandSays },
    ...(command === null
      ? []
      : ([{ kind: "lines", lines: foldedCommand(command) }] satisfies Block[])),
  ];
}

function changeText(change: NextChange, unit: TemperatureUnit): string {
  const placed = (statement: string) =>
    statementText({ topic: change.about, statement, evidence: change.evidence }, unit);
  return `${STANDING[change.standing]}: ${placed(change.change)} ${placed(change.because)}`;
}

/** Widest line of a command [characters], the indent of a report and the mark at its end left room for. */
const WIDEST = 74;

/** A shell command on lines that fit a report, each but the last ended by the shell's own mark. */
export function foldedCommand(command: string): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of withValues(command.match(/(?:'[^']*'|\\'|[^\s'\\]+|\\)+/g) ?? [])) {
    if (line !== "" && line.length + 1 + word.length > WIDEST) {
      lines.push(`${line} \\`);
      line = `  ${word}`;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  return [...lines, line];
}

/** Each option together with its first value, so that no line ends between the two. */
function withValues(words: readonly string[]): readonly string[] {
  const kept: string[] = [];
  for (const word of words) {
    const last = kept.at(-1);
    if (last?.startsWith("-") && !last.includes(" ") && !word.startsWith("-"))
      kept[kept.length - 1] = `${last} ${word}`;
    else kept.push(word);
  }
  return kept;
}

/** How far the firing went from its plan; empty without one. */
function planBlocks(
  comparison: PlanComparison | null,
  context: { readonly unit: TemperatureUnit; readonly startOfDaySeconds: number | null },
): readonly Block[] {
  if (comparison === null) return [];
  const { unit, startOfDaySeconds } = context;
  const farthest = momentText(startOfDaySeconds, comparison.largestDeviationAtSeconds);
  return [
    { kind: "heading", text: "Against the plan" },
    {
      kind: "facts",
      facts: [
        { label: "plan", text: `${comparison.title}; measured by thermocouple ${comparison.zone}` },
        { label: "lined up by", text: shiftText(comparison.shiftSeconds) },
        {
          label: "farthest from plan",
          text: `${offBy(comparison.largestDeviationC, unit)} at ${farthest}`,
        },
        { label: "peak", text: offBy(comparison.peakDeviationC, unit) },
        { label: "time taken", text: delayText(comparison.peakDelaySeconds) },
        { label: "area between curves", text: areaText(comparison.areaDeviation) },
      ],
    },
  ];
}

function offBy(deviationC: number, unit: TemperatureUnit): string {
  const size = printDifference(Math.abs(deviationC), unit);
  if (size.startsWith("0 ")) return "as planned, to the degree";
  return `${size} ${deviationC < 0 ? "below" : "above"} the plan`;
}

function shiftText(seconds: number): string {
  if (Math.abs(seconds) < 30) return "nothing: both start together";
  return `moving the plan ${printDuration(Math.abs(seconds))} ${seconds < 0 ? "earlier" : "later"}`;
}

function delayText(seconds: number): string {
  if (Math.abs(seconds) < 30) return "as planned, over the part that both have";
  return `${printDuration(Math.abs(seconds))} ${seconds < 0 ? "shorter" : "longer"} than planned, over the part that both have`;
}

function areaText(ratio: number): string {
  const percent = (Math.abs(ratio) * 100).toFixed(1);
  if (percent === "0.0") return "under 0.1 % of the area under the plan";
  return `${percent} % of the area under the plan, on the ${ratio < 0 ? "cool" : "hot"} side`;
}
