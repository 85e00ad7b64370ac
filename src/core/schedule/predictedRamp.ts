import type { PredictedFiring } from "../kiln/predictFiring.ts";
import type { RampPoint } from "./freeRamp.ts";

/** Least time between points of a ramp [s]. */
const APART_SECONDS = 300;

/**
 * A ramp at `free` as a predicted firing goes through it, without its first point.
 * @returns null when the kiln does not get through that segment.
 */
export function predictedRamp(
  firing: PredictedFiring,
  segment: number,
  toC: number,
): readonly RampPoint[] | null {
  const went = firing.segments[segment];
  if (went === undefined || went.rampEndSeconds <= went.startSeconds) return null;
  const { timesSeconds, tempsC } = firing.curve;
  const points: RampPoint[] = [];
  let lastSeconds = went.startSeconds;
  for (const [i, seconds] of timesSeconds.entries()) {
    if (seconds >= went.rampEndSeconds) break;
    if (seconds < lastSeconds + APART_SECONDS) continue;
    points.push({ seconds: seconds - went.startSeconds, tempC: tempsC[i] as number });
    lastSeconds = seconds;
  }
  return [...points, { seconds: went.rampEndSeconds - went.startSeconds, tempC: toC }];
}
