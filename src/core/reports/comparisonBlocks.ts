import { type Alignment, AT_PEAK, alignmentWords, linedUp } from "../review/alignment.ts";
import type { ComparedFiring, Comparison } from "../review/compareFirings.ts";
import { printDifference, printDuration, printRate, printTemperature } from "../text/quantities.ts";
import type { FiringStudy } from "../trials/FiringStudy.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { CRISTOBALITE_BAND } from "../ware/inversions.ts";
import { type Block, type Cell, type ChartPair, cautionBlocks, chartBlocks } from "./Block.ts";
import { plusMinus } from "./coneBlocks.ts";
import type { ReportContext } from "./reviewBlocks.ts";
import { type StudyCharts, trialBasis, trialBlocks } from "./trialBlocks.ts";

const SIDE_BY_SIDE = 3;

/** What a comparison needs to know beside its object. */
export interface ComparisonContext extends Omit<ReportContext, "charts"> {
  /** The firings over each other, the firings one by one, and those of the study. */
  readonly charts?: StudyCharts & { readonly overlay?: ChartPair; readonly firings?: ChartPair };
  /** What differed between the firings, and what their tiles tell. */
  readonly study?: FiringStudy;
  /** Where the firings are lined up; at the peak when left out. */
  readonly alignment?: Alignment;
  /** Place of the firing that the others are held against; the first when left out. */
  readonly base?: number;
  /** Says how the command writes the next schedule; not where a button does it. */
  readonly hasCommands?: boolean;
}

/** What a comparison is called, in text and on a page. */
export function comparisonTitle(comparison: Comparison): string {
  const count = comparison.firings.length;
  return count === 1 ? "One firing" : `${count} firings compared`;
}

/** Several firings side by side, as blocks; in threes when there are more. */
export function comparisonBlocks(
  comparison: Comparison,
  context: ComparisonContext,
): readonly Block[] {
  const { unit, charts = {}, sources = [], study, alignment = AT_PEAK } = context;
  const { base = 0, hasCommands = true } = context;
  const { firings } = comparison;
  const apart = apartSentence(firings, study);
  return [
    ...(apart === null ? [] : [{ kind: "lead", text: apart } as const]),
    ...chartBlocks(
      `The firings laid over each other ${alignmentWords(alignment, unit).where}`,
      charts.overlay,
    ),
    ...alignmentBlocks(comparison, alignment, unit),
    ...chartBlocks("Each firing by itself, with its inversions, peak and opening", charts.firings),
    { kind: "heading", text: "Side by side" },
    ...inThrees(firings).map((group, index) => groupTable(group, index * SIDE_BY_SIDE, unit)),
    ...(study === undefined
      ? []
      : trialBlocks(study, {
          unit,
          charts,
          hasCommands,
          against: { base, cones: firings.map(({ coneLabel }) => coneLabel) },
        })),
    ...shiftBlocks(comparison, unit),
    { kind: "heading", text: "What this rests on" },
    {
      kind: "list",
      items: [
        "Every number is from the hottest thermocouple of its firing, the one named.",
        "Cones are worked out from the whole curve with a heatwork model; the ± is one standard deviation (two of three readings lie within it), thermocouple and place in the kiln included.",
        "Two firings differ where they lie more than twice the ± of their difference apart.",
        ...(study === undefined ? [] : trialBasis(study)),
        ...sources,
      ],
    },
    ...cautionBlocks([...comparison.cautions, ...(study?.cautions ?? [])]),
  ];
}

function inThrees(firings: readonly ComparedFiring[]): readonly (readonly ComparedFiring[])[] {
  return Array.from({ length: Math.ceil(firings.length / SIDE_BY_SIDE) }, (_, group) =>
    firings.slice(group * SIDE_BY_SIDE, (group + 1) * SIDE_BY_SIDE),
  );
}

function groupTable(
  firings: readonly ComparedFiring[],
  before: number,
  unit: TemperatureUnit,
): Block {
  return {
    kind: "table",
    caption:
      firings.length === 1
        ? `Firing ${before + 1}`
        : `Firings ${before + 1} to ${before + firings.length}`,
    columns: [
      { head: "", align: "left" },
      ...firings.map(({ title }) => ({ head: title, align: "right" }) as const),
    ],
    rows: measures(unit).map(({ label, of }): readonly Cell[] => [label, ...firings.map(of)]),
  };
}

interface Measure {
  readonly label: string;
  readonly of: (firing: ComparedFiring) => Cell;
}

function measures(unit: TemperatureUnit): readonly Measure[] {
  const rate = (value: number | null) => (value === null ? "not measured" : printRate(value, unit));
  return [
    { label: "thermocouple", of: (firing) => firing.zone },
    { label: "heat reached", of: heatCell },
    { label: "peak", of: (firing) => printTemperature(firing.peakC, unit) },
    {
      label: `last ${printDifference(100, unit)} to the peak`,
      of: (firing) => rate(firing.lastHundredCPerHour),
    },
    {
      label: `within ${printDifference(5, unit)} of the peak`,
      of: (firing) => printDuration(firing.secondsWithinFiveOfPeak),
    },
    {
      label: `above ${printTemperature(1100, unit)}`,
      of: (firing) => printDuration(firing.secondsAbove1100C),
    },
    {
      label: "quartz, cooling: mean",
      of: (firing) => rate(firing.quartzCooling.meanCPerHour),
    },
    {
      label: "quartz, cooling: fastest",
      of: (firing) => rate(firing.quartzCooling.fastestCPerHour),
    },
    {
      label: `${lowBand(unit)}: mean`,
      of: (firing) => rate(firing.cristobaliteCooling.meanCPerHour),
    },
    {
      label: `${lowBand(unit)}: fastest`,
      of: (firing) => rate(firing.cristobaliteCooling.fastestCPerHour),
    },
    { label: "last reading", of: (firing) => printTemperature(firing.lastReadingC, unit) },
    { label: "length of the log", of: (firing) => printDuration(firing.totalSeconds) },
    { label: "warnings", of: warningCell },
  ];
}

/** Named by where it is: most bodies have no cristobalite. */
function lowBand(unit: TemperatureUnit): string {
  return `cooling below ${printTemperature(CRISTOBALITE_BAND.highC, unit)}`;
}

function heatCell(firing: ComparedFiring): Cell {
  return firing.sigmaCones === null
    ? firing.coneLabel
    : { lines: [firing.coneLabel, `± ${plusMinus(firing.sigmaCones)} cones`] };
}

function warningCell(firing: ComparedFiring): Cell {
  return firing.warnings === 0 ? "none" : { lines: [String(firing.warnings)], style: "warning" };
}

/** How far apart in heat the firings lie; null when fewer than two can be placed. */
function apartSentence(
  firings: readonly ComparedFiring[],
  study: FiringStudy | undefined,
): string | null {
  const placed = firings
    .flatMap((firing) => (firing.coneIndex === null ? [] : [{ firing, index: firing.coneIndex }]))
    .toSorted((a, b) => a.index - b.index);
  const [least, most] = [placed[0], placed.at(-1)];
  if (least === undefined || most === undefined || least === most) return null;
  const apart = most.index - least.index;
  if (apart < 0.05) return "All got the same heat, to a twentieth of a cone.";
  const clearest = study && clearestSentence(firings, study);
  if (clearest) return clearest;
  const doubt = Math.hypot(least.firing.sigmaCones ?? 0, most.firing.sigmaCones ?? 0);
  const among = placed.length < firings.length ? "Of those that can be placed: most" : "Most";
  return `${among} heat in “${most.firing.title}”, least in “${least.firing.title}”: ${apart.toFixed(1)} ± ${plusMinus(doubt)} cones apart${isDifference(apart, doubt)}`;
}

/** The difference in heat that is known best, as the list of what differed has it. */
function clearestSentence(
  firings: readonly ComparedFiring[],
  { differences }: FiringStudy,
): string | null {
  const heat = differences.find(({ name }) => name === "cone");
  const [low, high] = [firings[heat?.low ?? -1], firings[heat?.high ?? -1]];
  if (heat === undefined || low === undefined || high === undefined) return null;
  const first = firings.length > 2 ? "The clearest difference in heat: “" : "“";
  return `${first}${high.title}” got ${heat.apart.toFixed(1)} ± ${plusMinus(heat.sigma)} cones more than “${low.title}”${isDifference(heat.apart, heat.sigma)}`;
}

/** Whether two firings differ: from twice the ± on, here as in all that is compared. */
function isDifference(apart: number, doubt: number): string {
  return apart > 2 * doubt
    ? ", which is more than twice the ±."
    : ". That is less than twice the ±, so it may be no difference at all.";
}

/** Where each firing is lined up, and which cannot be; nothing to say of the peak. */
function alignmentBlocks(
  { firings }: Comparison,
  alignment: Alignment,
  unit: TemperatureUnit,
): readonly Block[] {
  if (alignment.at === "peak") return [];
  const { where } = alignmentWords(alignment, unit);
  return [
    { kind: "sentence", text: `The firings are laid over each other ${where}:` },
    {
      kind: "list",
      items: firings.map((firing, at) => `firing ${at + 1}: ${said(firing, alignment, unit)}`),
    },
  ];
}

function said(firing: ComparedFiring, alignment: Alignment, unit: TemperatureUnit): string {
  const laid = linedUp(firing, alignment);
  if (laid === null) return `not laid over the others: ${whyNot(firing, alignment, unit)}`;
  const { secondsFromPeak, secondsFromStart } = laid;
  const fromPeak = `${printDuration(Math.abs(secondsFromPeak))} ${secondsFromPeak < 0 ? "before" : "after"} its peak`;
  return alignment.at === "start"
    ? fromPeak
    : `${fromPeak}, ${printDuration(secondsFromStart)} after the first reading`;
}

function whyNot(firing: ComparedFiring, alignment: Alignment, unit: TemperatureUnit): string {
  if (!("tempC" in alignment)) return "";
  const { peakC, lastReadingC, aligned } = firing;
  const wanted = printTemperature(alignment.tempC, unit);
  if (peakC < alignment.tempC)
    return `its peak, ${printTemperature(peakC, unit)}, is below ${wanted}`;
  const seen =
    alignment.at === "rising"
      ? `its log begins at ${printTemperature(aligned.tempsC[0]!, unit)}`
      : `its log ends at ${printTemperature(lastReadingC, unit)}`;
  return `${seen} and has no reading on either side of ${wanted}`;
}

/** A zone that stands otherwise by this much is said [K]; own choice, above what loads do. */
const SAID_K = 5;

/** How thermocouples have come to stand towards one another, first firing to last; empty when alike. */
function shiftBlocks(
  { firings, thermocoupleShifts }: Comparison,
  unit: TemperatureUnit,
): readonly Block[] {
  const said = thermocoupleShifts.filter(({ shiftK }) => Math.abs(shiftK) >= SAID_K);
  if (said.length === 0) return [];
  const [first, last] = [firings[0], firings.at(-1)];
  return [
    { kind: "heading", text: "Thermocouples towards one another" },
    {
      kind: "list",
      items: said.map(
        ({ zone, shiftK, fromC, toC }) =>
          `From “${first?.title}” to “${last?.title}” ${zone} has come to read ${printDifference(Math.abs(shiftK), unit)} ${shiftK < 0 ? "lower" : "higher"} against ${thermocoupleShifts.length === 1 ? "the other" : "the mean of the others"}, at equal heat of the kiln from ${printTemperature(fromC, unit)} to ${printTemperature(toC, unit)} on the way up.`,
      ),
    },
    {
      kind: "sentence",
      text: "Load, elements or a thermocouple has changed; a log shows the difference and not which of them is right. Witness cones beside each thermocouple would.",
    },
  ];
}
