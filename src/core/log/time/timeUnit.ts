import { isScaleEnd, median } from "../../math/statistics.ts";
import { failed, ok, type Result } from "../../problem.ts";
import type { LogOptions, TimeKind, TimeUnit } from "../reading/LogReading.ts";
import { epochForm, type NumberForm, placeName, type TimePlace } from "./timeColumn.ts";

/** A scale that numbers of time may have. */
export interface TimeScale {
  readonly name: string;
  /** Seconds in one. */
  readonly seconds: number;
}

/** Rates of real firings, median over what heats or cools [°C/h]: common practice, wide on purpose. */
const RATES_C_PER_HOUR = { least: 5, most: 1500 };
/** Lengths of real logs [h]: common practice, wide on purpose. */
const LENGTH_HOURS = { least: 0.5, most: 200 };

/** Scales as `--time-unit` names them. */
const NAMED: Readonly<Record<TimeUnit, TimeScale>> = {
  ms: { name: "ms", seconds: 0.001 },
  s: { name: "s", seconds: 1 },
  min: { name: "min", seconds: 60 },
  h: { name: "h", seconds: 3600 },
  d: { name: "days", seconds: 86_400 },
};
/** Scales that are tried where none is named. */
const SCALES: readonly TimeScale[] = [NAMED.s, NAMED.min, NAMED.h];

/** All units of elapsed time that may be told. */
export const TIME_UNITS = Object.keys(NAMED) as readonly TimeUnit[];

/** The scale of a unit of time. */
export function timeScale(unit: TimeUnit): TimeScale {
  return NAMED[unit];
}

/** The unit that a scale is told by. */
export function unitOfScale(scale: TimeScale): TimeUnit {
  return TIME_UNITS.find((unit) => NAMED[unit].seconds === scale.seconds) as TimeUnit;
}

/** The scale that a column's name or unit names, or null. */
export function labelledScale(label: string): TimeScale | null {
  const words = label.toLowerCase().split(/[^a-zµ]+/);
  const has = (...names: readonly string[]) => names.some((name) => words.includes(name));
  if (has("ms", "msec", "millis", "milliseconds")) return timeScale("ms");
  if (has("s", "sec", "secs", "second", "seconds", "sek", "sekunden")) return timeScale("s");
  if (has("min", "mins", "minute", "minutes", "minuten")) return timeScale("min");
  if (has("h", "hr", "hrs", "hour", "hours", "stunden", "std")) return timeScale("h");
  return has("d", "day", "days", "tage") ? timeScale("d") : null;
}

/**
 * The scales under which the log is of a plausible length and heats at a plausible rate.
 * @param times Raw numbers of the time column.
 * @param tempsC Temperatures beside them [°C].
 */
export function plausibleScales(
  times: Float64Array,
  tempsC: Float64Array,
  scales: readonly TimeScale[] = SCALES,
): readonly TimeScale[] {
  const span = spanOf(times);
  const rate = usualRate(times, tempsC);
  return scales.filter((scale) => {
    const hours = (span * scale.seconds) / 3600;
    const perHour = (rate * 3600) / scale.seconds;
    const isLength = hours >= LENGTH_HOURS.least && hours <= LENGTH_HOURS.most;
    const isRate =
      Number.isNaN(perHour) ||
      (perHour >= RATES_C_PER_HOUR.least && perHour <= RATES_C_PER_HOUR.most);
    return isLength && isRate;
  });
}

/** Parts of a log over which its rate is taken, from many to few; over short ones noise would count as heating. */
const PARTS = [20, 10, 5, 3];
/** Slopes of parts that tell a rate. */
const LEAST_SLOPES = 2;
/** Step between neighbouring readings that none of a kiln makes [K]. */
const MOST_STEP_K = 90;
/** Change of the whole log below which it holds, and its rate tells nothing [K]. */
const LEAST_RANGE_K = 60;
/** Change over a part that is more than noise or a hold [K]. */
const LEAST_CHANGE_K = 8;
/** Change beyond which a number was no reading, as 9999 [K]. */
const MOST_CHANGE_K = 900;
/** What no kiln is [°C]: such a number is no reading, as −999 or 9999, in whatever unit it was written. */
const POSSIBLE_C = { least: -60, most: 1450 };

/** Median size of the slopes over twentieths of the log that heat or cool [°C per unit of time]; NaN when none does. */
function usualRate(times: Float64Array, tempsC: Float64Array): number {
  if (!(changeOf(tempsC) > LEAST_RANGE_K)) return Number.NaN;
  for (const parts of PARTS) {
    const slopes = slopesOver(times, tempsC, Math.max(1, Math.floor(times.length / parts)));
    if (slopes.length >= LEAST_SLOPES) return median(slopes);
  }
  return Number.NaN;
}

function changeOf(tempsC: Float64Array): number {
  let least = Number.POSITIVE_INFINITY;
  let greatest = Number.NEGATIVE_INFINITY;
  for (let i = 1; i < tempsC.length; i++) {
    const [before, tempC] = [possible(tempsC[i - 1]!), possible(tempsC[i]!)];
    // A number far from the one before it is no sign of a change.
    if (!(Math.abs(tempC - before) < MOST_STEP_K)) continue;
    if (tempC < least) least = tempC;
    if (tempC > greatest) greatest = tempC;
  }
  return greatest - least;
}

function slopesOver(times: Float64Array, tempsC: Float64Array, stride: number): readonly number[] {
  const slopes: number[] = [];
  for (let i = stride; i < times.length; i += stride) {
    const change = Math.abs(possible(tempsC[i]!) - possible(tempsC[i - stride]!));
    const span = Math.abs(times[i]! - times[i - stride]!);
    if (change > LEAST_CHANGE_K && change < MOST_CHANGE_K && span > 0) slopes.push(change / span);
  }
  return slopes;
}

function possible(tempC: number): number {
  const isReading = tempC > POSSIBLE_C.least && tempC < POSSIBLE_C.most && !isScaleEnd(tempC);
  return isReading ? tempC : Number.NaN;
}

function spanOf(times: Float64Array): number {
  let least = Number.POSITIVE_INFINITY;
  let greatest = Number.NEGATIVE_INFINITY;
  for (const time of times) {
    if (time < least) least = time;
    if (time > greatest) greatest = time;
  }
  return greatest - least;
}

/** What the cells of a time column may be told to be. */
export const TIME_KINDS: readonly TimeKind[] = [
  "elapsed",
  "clock-24h",
  "clock-12h",
  "epoch",
  "spreadsheet",
  "spreadsheet-1904",
  "count",
];

/** The option that tells what the cells of the time column are. */
export const TIME_KIND_OPTION = "--time-kind KIND";

/** Kinds that cells with written times may be of, and those of a lone number. */
const OF_CLOCK: readonly TimeKind[] = ["elapsed", "clock-24h", "clock-12h"];
const OF_DATE: readonly TimeKind[] = ["clock-24h", "clock-12h"];
const OF_NUMBER: readonly TimeKind[] = [
  "elapsed",
  "epoch",
  "spreadsheet",
  "spreadsheet-1904",
  "count",
];

/**
 * The place of the time, with its cells read as they were told to be.
 * @returns the place, or `log/wrong-option` when they cannot be that.
 */
export function asTold(place: TimePlace, { name, timeKind }: LogOptions): Result<TimePlace> {
  if (timeKind === undefined) return ok(place);
  const possible = possibleKinds(place);
  if (!possible.includes(timeKind))
    return failed({
      code: "log/wrong-option",
      what: `--time-kind is ${timeKind}, but the time is ${placeName(place)}, which is ${written(place)}`,
      where: name,
      expected: `what that can be: ${possible.join(", ")}`,
      fix: "leave out --time-kind, or name the column that is meant with --time-column",
    });
  if (place.kind !== "number") return ok(place);
  return ok({ ...place, form: formOf(timeKind, place) });
}

function possibleKinds(place: TimePlace): readonly TimeKind[] {
  if (place.kind === "none") return ["count"];
  if (place.kind === "number") return OF_NUMBER;
  return place.date === null ? OF_CLOCK : OF_DATE;
}

function formOf(kind: TimeKind, { column }: Extract<TimePlace, { kind: "number" }>): NumberForm {
  if (kind === "epoch") return epochForm(column);
  if (kind === "spreadsheet") return { kind: "serial", since: 1900 };
  if (kind === "spreadsheet-1904") return { kind: "serial", since: 1904 };
  return { kind: kind === "count" ? "index" : "elapsed" };
}

function written(place: TimePlace): string {
  if (place.kind === "none") return "no column";
  if (place.kind === "number") return "a column of numbers";
  return place.date === null ? "a clock" : "dates and clock times";
}
