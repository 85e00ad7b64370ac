import type { Curve } from "../curve/Curve.ts";
import { lastAtOrBefore } from "../curve/temperatureAt.ts";
import type { RecentRate } from "./WatchState.ts";

/** The rate that is shown goes over this long [s]. */
const RATE_WINDOW_SECONDS = 600;

/** Windows that are tried for a rate to go on with, shortest first [s]. */
const STEADY_WINDOWS_SECONDS = [600, 1200, 1800, 2700, 3600];

/** A longer window is as good as a shorter one while it scatters no more than so much more … */
const STILL_STRAIGHT = 1.25;
/** … or by less than this [K]: the steps of a coarse logger, the cycling of a controller. */
const STILL_STRAIGHT_K = 0.3;

const LEAST_READINGS = 3;

/** Windows hold at least this many usual steps between readings. */
const LEAST_STEPS = 3;

/** A line through the last readings. */
interface Line extends RecentRate {
  /** Scatter of the readings about it [K]. */
  readonly scatterK: number;
}

/**
 * Rate at the end of a Curve: least squares on its last readings, over 10 min or three usual steps.
 * Nothing is taken from before a gap.
 * @param stepSeconds The usual step between readings.
 * @returns null when fewer than three readings, or less than half of the window, are there.
 */
export function recentRate(curve: Curve, stepSeconds: number): RecentRate | null {
  const line = lineOver(curve, Math.max(RATE_WINDOW_SECONDS, LEAST_STEPS * stepSeconds));
  return line && rateOf(line);
}

/**
 * The rate at the end of a Curve that may be thought to go on: over the longest of 10, 20, 30, 45
 * and 60 min in which the readings lie as well on one line as in the last ten.
 */
export function steadyRate(curve: Curve, stepSeconds: number): RecentRate | null {
  let best: Line | null = null;
  for (const window of STEADY_WINDOWS_SECONDS) {
    const line = lineOver(curve, Math.max(window, LEAST_STEPS * stepSeconds));
    if (line === null) continue;
    if (best !== null && !goesOn(best, line)) break;
    best = line;
  }
  return best && rateOf(best);
}

function goesOn(shorter: Line, longer: Line): boolean {
  const apart = Math.abs(longer.rateCPerHour - shorter.rateCPerHour);
  const isStraight =
    longer.scatterK <= STILL_STRAIGHT * shorter.scatterK ||
    longer.scatterK <= shorter.scatterK + STILL_STRAIGHT_K;
  return isStraight && apart <= 2 * Math.hypot(longer.sigmaCPerHour, shorter.sigmaCPerHour) + 1;
}

function rateOf({ rateCPerHour, sigmaCPerHour, overSeconds, readings }: Line): RecentRate {
  return { rateCPerHour, sigmaCPerHour, overSeconds, readings };
}

function lineOver(curve: Curve, windowSeconds: number): Line | null {
  const { timesSeconds, tempsC, gaps } = curve;
  const end = timesSeconds.length - 1;
  const now = timesSeconds[end]!;
  const from = Math.max(now - windowSeconds, gaps.at(-1)?.toSeconds ?? Number.NEGATIVE_INFINITY);
  const first = lastAtOrBefore(timesSeconds, from - 1e-6) + 1;
  const readings = end - first + 1;
  const overSeconds = now - timesSeconds[first]!;
  if (readings < LEAST_READINGS || overSeconds < windowSeconds / 2) return null;
  const times = timesSeconds.subarray(first).map((time) => (time - now) / 3600);
  const temps = tempsC.subarray(first);
  const meanTime = mean(times);
  const meanC = mean(temps);
  let tt = 0;
  let ty = 0;
  for (let i = 0; i < readings; i++) {
    const t = times[i]! - meanTime;
    tt += t * t;
    ty += t * (temps[i]! - meanC);
  }
  const rateCPerHour = ty / tt;
  let left = 0;
  for (let i = 0; i < readings; i++)
    left += (temps[i]! - meanC - rateCPerHour * (times[i]! - meanTime)) ** 2;
  const scatterK = Math.sqrt(left / (readings - 2));
  return { rateCPerHour, sigmaCPerHour: scatterK / Math.sqrt(tt), overSeconds, readings, scatterK };
}

function mean(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
