import { type Curve, lastAtOrBefore, makeCurve } from "./Curve.ts";

/** Answers for the slope of one Curve at many moments. */
export interface SlopeMeter {
  /** Slope [°C/h] over a window centred on a moment; null where the window leaves the Curve or meets a gap. */
  readonly slopeAt: (seconds: number, windowSeconds: number) => number | null;
}

/**
 * Least-squares slope of a Curve over windows, exact for its straight pieces.
 * The line is fitted to the Curve itself, not to its points, so that uneven sampling has no weight:
 * slope = 12/w³ · ∫ (t − m)·T dt over a window of width w about m, from running integrals.
 */
export function slopeMeter(curve: Curve): SlopeMeter {
  const { timesSeconds: times, tempsC: temps } = curve;
  const origin = times[0]!;
  const areas = new Float64Array(times.length);
  const moments = new Float64Array(times.length);
  for (let i = 1; i < times.length; i++) {
    const from = times[i - 1]! - origin;
    const to = times[i]! - origin;
    const piece = integrals(from, to, temps[i - 1]!, temps[i]!);
    areas[i] = areas[i - 1]! + piece.area;
    moments[i] = moments[i - 1]! + piece.moment;
  }

  /** Integrals of T and t·T from the origin to a moment [s from the origin]. */
  function upTo(moment: number): {
    readonly area: number;
    readonly moment: number;
  } {
    const left = Math.min(lastAtOrBefore(times, moment + origin), times.length - 2);
    const from = times[left]! - origin;
    const to = times[left + 1]! - origin;
    const here = temps[left]!;
    const there = here + ((temps[left + 1]! - here) * (moment - from)) / (to - from);
    const piece = integrals(from, moment, here, there);
    return {
      area: areas[left]! + piece.area,
      moment: moments[left]! + piece.moment,
    };
  }

  return {
    slopeAt(seconds, windowSeconds) {
      const from = seconds - windowSeconds / 2;
      const to = seconds + windowSeconds / 2;
      const end = times[times.length - 1]!;
      if (!(windowSeconds > 0) || from < origin || to > end) return null;
      if (curve.gaps.some((gap) => gap.fromSeconds < to && gap.toSeconds > from)) return null;
      const low = upTo(from - origin);
      const high = upTo(to - origin);
      const middle = seconds - origin;
      const moment = high.moment - low.moment - middle * (high.area - low.area);
      return (12 * 3600 * moment) / (windowSeconds * windowSeconds * windowSeconds);
    },
  };
}

/** Local slopes [°C/h] at every point of a Curve over a window [s]; NaN where not measured. */
export function localSlopes(curve: Curve, windowSeconds: number): Float64Array {
  const meter = slopeMeter(curve);
  return curve.timesSeconds.map((seconds) => meter.slopeAt(seconds, windowSeconds) ?? Number.NaN);
}

function integrals(from: number, to: number, here: number, there: number) {
  const width = to - from;
  return {
    area: (width * (here + there)) / 2,
    moment: (width * (here * (2 * from + to) + there * (from + 2 * to))) / 6,
  };
}

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
