import { median } from "../statistics.ts";

/** A scale that numbers of time may have. */
export interface TimeScale {
  readonly name: string;
  /** Seconds in one. */
  readonly seconds: number;
}

/** Heating rates of real firings, median over the rise [°C/h]: common practice, wide on purpose. */
const RATES_C_PER_HOUR = { least: 5, most: 1500 };
/** Lengths of real logs [h]: common practice, wide on purpose. */
const LENGTH_HOURS = { least: 0.5, most: 200 };

const SCALES: readonly TimeScale[] = [
  { name: "s", seconds: 1 },
  { name: "min", seconds: 60 },
  { name: "h", seconds: 3600 },
];

/** Seconds, minutes and hours, as `--time-unit` names them. */
export function timeScale(unit: "s" | "min" | "h"): TimeScale {
  return SCALES.find((scale) => scale.name === unit) as TimeScale;
}

/** The scale that a column's name or unit names, or null. */
export function labelledScale(label: string): TimeScale | null {
  const words = label.toLowerCase().split(/[^a-zµ]+/);
  const has = (...names: readonly string[]) => names.some((name) => words.includes(name));
  if (has("ms", "msec", "millis", "milliseconds")) return { name: "ms", seconds: 0.001 };
  if (has("s", "sec", "secs", "second", "seconds", "sek", "sekunden")) return timeScale("s");
  if (has("min", "mins", "minute", "minutes", "minuten")) return timeScale("min");
  if (has("h", "hr", "hrs", "hour", "hours", "stunden", "std")) return timeScale("h");
  return has("d", "day", "days", "tage") ? { name: "days", seconds: 86_400 } : null;
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
  const rate = heatingRate(times, tempsC);
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

/** Median of the slopes that rise, between readings a hundredth of the log apart [°C per unit of time]. */
function heatingRate(times: Float64Array, tempsC: Float64Array): number {
  const stride = Math.max(1, Math.floor(times.length / 100));
  const slopes: number[] = [];
  for (let i = stride; i < times.length; i += stride) {
    const rise = (tempsC[i] as number) - (tempsC[i - stride] as number);
    const span = (times[i] as number) - (times[i - stride] as number);
    if (rise > 0 && span > 0) slopes.push(rise / span);
  }
  return median(slopes);
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
