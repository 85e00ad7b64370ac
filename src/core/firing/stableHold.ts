import type { Curve } from "../curve/Curve.ts";
import { lastAtOrBefore } from "../curve/temperatureAt.ts";

/** Shortest time over which a furnace can be called stable [s]: 10 min. */
export const STABLE_SECONDS = 600;

/** How far its mean may stand from the target [K]. */
export const MEAN_OFF_TARGET_K = 5;

/** Largest drift over 10 min, by linear regression [K]. */
export const DRIFT_K = 2;

/** How far any reading may stand from the mean [K]. */
const READING_OFF_MEAN_K = 10;

/** Rounding of the arithmetic, far below what a thermocouple resolves [K]. */
const ROUNDING_K = 1e-9;

/**
 * Whether a stretch of a Curve meets the published definition of a stable furnace.
 * For at least 10 min: mean within ± 5 °C of the target, drift by linear regression at most 2 °C in
 * 10 min, no reading more than 10 °C from the mean. Never over a gap. Without a target the stretch
 * is held to its own mean, so that only drift and readings decide.
 *
 * @see SOURCES["iso-1182-2020"], 7.2.4
 */
export function isStableHold(
  curve: Curve,
  hold: {
    readonly fromSeconds: number;
    readonly toSeconds: number;
    readonly targetC?: number;
  },
): boolean {
  if (hold.toSeconds - hold.fromSeconds < STABLE_SECONDS) return false;
  if (
    curve.gaps.some((gap) => gap.fromSeconds < hold.toSeconds && gap.toSeconds > hold.fromSeconds)
  )
    return false;
  const { timesSeconds, tempsC } = curve;
  let from = Math.max(0, lastAtOrBefore(timesSeconds, hold.fromSeconds));
  if (timesSeconds[from]! < hold.fromSeconds) from++;
  const to = lastAtOrBefore(timesSeconds, hold.toSeconds) + 1;
  const times = timesSeconds.subarray(from, to);
  const temps = tempsC.subarray(from, to);
  if (times.length < 3) return false;
  const meanC = mean(temps);
  const driftK = Math.abs(slope(times, temps)) * STABLE_SECONDS;
  let furthestK = 0;
  for (let i = 0; i < temps.length; i++)
    furthestK = Math.max(furthestK, Math.abs(temps[i]! - meanC));
  return (
    Math.abs(meanC - (hold.targetC ?? meanC)) <= MEAN_OFF_TARGET_K + ROUNDING_K &&
    driftK <= DRIFT_K + ROUNDING_K &&
    furthestK <= READING_OFF_MEAN_K + ROUNDING_K
  );
}

function mean(values: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]!;
  return sum / values.length;
}

/** Least-squares slope [K/s]. */
function slope(times: Float64Array, temps: Float64Array): number {
  const meanTime = mean(times);
  const meanTemp = mean(temps);
  let products = 0;
  let squares = 0;
  times.forEach((time, i) => {
    products += (time - meanTime) * (temps[i]! - meanTemp);
    squares += (time - meanTime) ** 2;
  });
  return products / squares;
}
