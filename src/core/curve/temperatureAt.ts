import type { Curve } from "./Curve.ts";

/**
 * Temperature [°C] at a time [s], on the straight line between the neighbouring points.
 * @returns null before the first point, after the last, and inside a gap.
 */
export function temperatureAt(curve: Curve, seconds: number): number | null {
  const { timesSeconds, tempsC } = curve;
  const last = timesSeconds.length - 1;
  if (!(seconds >= timesSeconds[0]! && seconds <= timesSeconds[last]!)) return null;
  const left = lastAtOrBefore(timesSeconds, seconds);
  const from = timesSeconds[left]!;
  if (from === seconds) return tempsC[left]!;
  if (curve.gaps.some((gap) => gap.fromSeconds === from)) return null;
  const to = timesSeconds[left + 1]!;
  const share = (seconds - from) / (to - from);
  return tempsC[left]! * (1 - share) + tempsC[left + 1]! * share;
}

/** Index of the last time at or before a moment; −1 when all are later. Times must rise. */
export function lastAtOrBefore(timesSeconds: Float64Array, seconds: number): number {
  let low = 0;
  let high = timesSeconds.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (timesSeconds[middle]! <= seconds) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
