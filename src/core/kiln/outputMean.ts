import { lastAtOrBefore } from "../curve/temperatureAt.ts";
import type { OutputSeries } from "./LearnedKiln.ts";

/** Longest pause between readings of the output that is still counted as known [s]. */
const LONGEST_PAUSE_SECONDS = 900;

/**
 * Mean output between two moments [s]: share of full power, 0–1, straight between readings.
 * @returns null where the log does not say.
 */
export function outputMean(
  output: OutputSeries,
  fromSeconds: number,
  toSeconds: number,
): number | null {
  const { timesSeconds, fraction } = output;
  const first = lastAtOrBefore(timesSeconds, fromSeconds);
  if (first < 0 || !(toSeconds > fromSeconds)) return null;
  let sum = 0;
  let now = fromSeconds;
  for (let i = first; now < toSeconds; i++) {
    const from = timesSeconds[i]!;
    const next = timesSeconds[i + 1];
    if (next === undefined || next - from > LONGEST_PAUSE_SECONDS) return null;
    const until = Math.min(toSeconds, next);
    const share = ((now + until) / 2 - from) / (next - from);
    sum += (fraction[i]! * (1 - share) + fraction[i + 1]! * share) * (until - now);
    now = until;
  }
  return sum / (toSeconds - fromSeconds);
}
