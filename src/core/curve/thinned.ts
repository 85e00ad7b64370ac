import { type Curve, makeCurve } from "./Curve.ts";

/**
 * A Curve with at most about so many points, for drawing.
 * Keeps the ends, both sides of every gap, and the highest and lowest point of each stretch of time,
 * so that no peak, spike or dip is lost.
 * @throws RangeError when fewer than 8 points are asked for.
 */
export function thinned(curve: Curve, points: number): Curve {
  if (!(points >= 8)) throw new RangeError(`thinned: ${points} points are too few`);
  const { timesSeconds: times, tempsC: temps } = curve;
  if (times.length <= points) return curve;
  const stretches = Math.floor(points / 2) - 1;
  const start = times[0]!;
  const span = times[times.length - 1]! - start;
  const kept = new Set<number>([0, times.length - 1]);
  let first = 0;
  for (let s = 0; s < stretches; s++) {
    const end = start + (span * (s + 1)) / stretches;
    let low = first;
    let high = first;
    let i = first;
    for (; i < times.length && (times[i]! < end || s === stretches - 1); i++) {
      if (temps[i]! < temps[low]!) low = i;
      if (temps[i]! > temps[high]!) high = i;
    }
    if (i > first) kept.add(low).add(high);
    first = i;
  }
  for (const gap of curve.gaps) {
    const at = times.indexOf(gap.fromSeconds);
    kept.add(at).add(at + 1);
  }
  const indices = [...kept].sort((a, b) => a - b);
  return makeCurve(
    indices.map((i) => times[i]!),
    indices.map((i) => temps[i]!),
    curve.gaps,
  );
}
