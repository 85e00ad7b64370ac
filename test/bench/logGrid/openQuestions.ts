import type { Levels } from "./axes.ts";
import type { GridColumn } from "./gridColumns.ts";
import type { SampledTimes } from "./sampledTimes.ts";
import { TIME_STYLES, type TimeStyle } from "./timeStyles.ts";
import { inUnit } from "./writtenNumber.ts";

/** What a log leaves open: `must` be asked, `may` be asked, or settled by the data. */
type Openness = "must" | "may" | "settled";

/** The questions that a log can leave open, worked out from the truth and not by the reader. */
export interface OpenQuestions {
  readonly unit: Openness;
  readonly timeUnit: Openness;
  readonly interval: Openness;
  readonly reset: Openness;
  readonly decimal: Openness;
  readonly columns: Openness;
}

/** What is needed to know what a log leaves open. */
export interface Evidence {
  readonly levels: Levels;
  readonly times: SampledTimes;
  readonly columns: readonly GridColumn[];
  readonly saysInterval: boolean;
}

/** Which questions a log leaves open. */
export function openQuestions(evidence: Evidence): OpenQuestions {
  const { levels } = evidence;
  const isCommas =
    levels.delimiter === "comma" && levels.decimal === "comma" && levels.quotes === "none";
  return {
    unit: unitOpenness(evidence),
    timeUnit: timeUnitOpenness(evidence),
    interval: intervalOpenness(evidence),
    reset: resetOpenness(levels),
    decimal: isCommas ? "may" : "settled",
    columns: levels.header === "none" ? columnsOpenness(evidence) : "settled",
  };
}

/** A dial of twelve hours that falls back across a gap may have been set back as well. */
function resetOpenness({ clock, time }: Levels): Openness {
  if (clock === "reset") return "must";
  return clock === "gap" && time === "12-hour unmarked" ? "may" : "settled";
}

function rangeOf(values: readonly number[]): readonly [number, number] {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (value < least) least = value;
    if (value > most) most = value;
  }
  return [least, most];
}

function measured(columns: readonly GridColumn[]): readonly number[] {
  return columns
    .filter(({ role }) => role === "temperature")
    .flatMap(({ tempsC }) => Array.from(tempsC).filter((tempC) => !Number.isNaN(tempC)));
}

/** A kiln is never colder than its shed nor hotter than any studio kiln [°C]. */
const COLDEST_C = { surely: 5, perhaps: -12 };
const HOTTEST_C = { surely: 1380, perhaps: 1440 };
/** Numbers of cold kilns in °C that nobody takes for the start of a log in °F. */
const COLD_NUMBER = 40;

/** In which other units the numbers of the log would still be a firing. */
function unitOpenness({ levels, columns }: Evidence): Openness {
  if (levels.unitPlace !== "none" || levels.digits.includes(" in "))
    return levels.unitPlace !== "none" ? "settled" : "may";
  const [leastC, mostC] = rangeOf(measured(columns));
  const least = inUnit(leastC, levels.unit);
  const most = inUnit(mostC, levels.unit);
  const others = (["C", "F", "K"] as const).filter((unit) => unit !== levels.unit);
  const fits = others.map((unit) => fitOf(celsiusIn(least, unit), celsiusIn(most, unit)));
  if (fits.includes("surely")) return least <= COLD_NUMBER + 10 ? "may" : "must";
  return fits.includes("perhaps") ? "may" : "settled";
}

function fitOf(leastC: number, mostC: number): "surely" | "perhaps" | "no" {
  if (leastC >= COLDEST_C.surely && mostC <= HOTTEST_C.surely) return "surely";
  return leastC >= COLDEST_C.perhaps && mostC <= HOTTEST_C.perhaps ? "perhaps" : "no";
}

function celsiusIn(value: number, unit: Levels["unit"]): number {
  if (unit === "C") return value;
  return unit === "F" ? (value - 32) / 1.8 : value - 273.15;
}

/** The published bounds: heating at 5 to 1 500 °C/h, half an hour to 200 hours long. */
const BOUNDS = { leastRate: 5, mostRate: 1500, leastHours: 0.5, mostHours: 200 };

function timeUnitOpenness(evidence: Evidence): Openness {
  const style = TIME_STYLES[evidence.levels.time];
  const true_ = style.bareScale;
  if (style.twoFields !== true && true_ === undefined) return "settled";
  const factors =
    style.twoFields === true
      ? twoFieldFactors(style)
      : [1, 60, 3600].map((s) => s / (true_ as number));
  const hours = spanHours(evidence.times);
  const rate = medianRate(evidence);
  const fits = (factor: number, slack: number) =>
    isLikely({ hours: hours * factor, rate: rate / factor }, slack);
  const wrong = factors.filter((factor) => factor !== 1);
  const isTrueLikely = fits(1, 0.75);
  // A range that is hardly a firing's shows no rate to everybody.
  if (wrong.some((factor) => fits(factor, 0.75)))
    return Number.isNaN(rate) && hasSmallRate(evidence) ? "may" : "must";
  if (!isTrueLikely || wrong.some((factor) => fits(factor, 1.4)) || unsettledUnit(evidence))
    return "may";
  return "settled";
}

/** The other reading of two fields is sixty times as long or as short. */
function twoFieldFactors(style: TimeStyle): readonly number[] {
  return style.quantum === 60 ? [1, 1 / 60] : [1, 60];
}

function unsettledUnit(evidence: Evidence): boolean {
  return unitOpenness(evidence) !== "settled";
}

function spanHours({ samples }: SampledTimes): number {
  return (samples.at(-1)?.elapsed ?? 0) / 3600;
}

/** Whether a length and a rate are those of a firing; slack above 1 widens the bounds. */
function isLikely(
  { hours, rate }: { readonly hours: number; readonly rate: number },
  slack: number,
): boolean {
  const isLength = hours > BOUNDS.leastHours / slack && hours < BOUNDS.mostHours * slack;
  const isRate =
    Number.isNaN(rate) || (rate > BOUNDS.leastRate / slack && rate < BOUNDS.mostRate * slack);
  return isLength && isRate;
}

/** Middle slope over parts of the log that clearly heat or cool [°C/h]; NaN when it holds. */
function medianRate({ times, columns }: Evidence): number {
  const temps = columns.find(({ role }) => role === "temperature")?.tempsC ?? [];
  const { samples } = times;
  const known = Array.from(temps).filter((tempC) => !Number.isNaN(tempC));
  const [least, most] = rangeOf(known);
  if (most - least < 60) return Number.NaN;
  for (const parts of [20, 10, 5, 3]) {
    const slopes = slopesOver(samples, temps, Math.max(1, Math.floor(samples.length / parts)));
    if (slopes.length > 1) return slopes[slopes.length >> 1] as number;
  }
  return Number.NaN;
}

/** Whether the rate shows to those who ask for a smaller change of temperature. */
function hasSmallRate({ columns }: Evidence): boolean {
  const temps = columns.find(({ role }) => role === "temperature")?.tempsC ?? [];
  const [least, most] = rangeOf(Array.from(temps).filter((tempC) => !Number.isNaN(tempC)));
  return most - least > 30;
}

function slopesOver(
  samples: SampledTimes["samples"],
  temps: ArrayLike<number>,
  stride: number,
): readonly number[] {
  const slopes: number[] = [];
  for (let i = stride; i < samples.length; i += stride) {
    const change = Math.abs((temps[i] as number) - (temps[i - stride] as number));
    const span = (samples[i]?.elapsed as number) - (samples[i - stride]?.elapsed as number);
    if (change > 8) slopes.push((change * 3600) / span);
  }
  return slopes.sort((a, b) => a - b);
}

/** Without a name, a column of whole numbers that counts by one may be a count or a time. */
function intervalOpenness({ levels, times, saysInterval }: Evidence): Openness {
  const style = TIME_STYLES[levels.time];
  if (style.kind === "counted") return saysInterval ? "settled" : "must";
  // Times that jitter have fractions, and count nothing.
  const countsByOne =
    style.bareScale !== undefined &&
    times.stepSeconds === style.bareScale &&
    levels.clock !== "jitter";
  return levels.header === "none" && countsByOne ? "must" : "settled";
}

/** Columns without names that hardly move cannot be told from others. */
function columnsOpenness({ columns }: Evidence): Openness {
  const moves = columns
    .filter(({ role }) => role === "temperature")
    .some((column) => {
      const [least, most] = rangeOf(measured([column]));
      return most - least > 60;
    });
  return !moves || columns.some(({ role }) => role === "cold-junction") ? "may" : "settled";
}
