import type { Curve } from "../curve/Curve.ts";
import { medianInPlace } from "../curve/median.ts";

/** Times [s] and temperatures [°C] of equal length, reduced. */
export interface Bins {
  readonly timesSeconds: Float64Array;
  readonly tempsC: Float64Array;
  /** First and last reading of the stretch [s]. */
  readonly fromSeconds: number;
  readonly toSeconds: number;
  /** Time that one bin stands for [s]. */
  readonly widthSeconds: number;
}

/** Most bins of a Curve. */
const MOST_BINS = 2000;

/** Narrowest bin [s]: half a minute shows every corner that a kiln can make. */
const NARROWEST_SECONDS = 30;

/**
 * A Curve reduced to at most about 2000 bins by median, one list for each stretch without a gap.
 * A median is robust to spikes and indifferent to how often was read; empty bins are left out.
 */
export function timeBins(curve: Curve): readonly Bins[] {
  const known = KNOWN.get(curve);
  if (known !== undefined) return known;
  const bins = binnedStretches(curve);
  KNOWN.set(curve, bins);
  return bins;
}

/** Bins of Curves that were asked for before: segments and losses of power both need them. */
const KNOWN = new WeakMap<Curve, readonly Bins[]>();

function binnedStretches(curve: Curve): readonly Bins[] {
  const { timesSeconds: times } = curve;
  const span = times[times.length - 1]! - times[0]!;
  const width = Math.max(NARROWEST_SECONDS, span / MOST_BINS);
  const gapStarts = new Set(curve.gaps.map((gap) => gap.fromSeconds));
  const stretches: Bins[] = [];
  let first = 0;
  for (let i = 0; i < times.length; i++) {
    if (i < times.length - 1 && !gapStarts.has(times[i]!)) continue;
    stretches.push(binned(curve, first, i, width));
    first = i + 1;
  }
  return stretches;
}

function binned(curve: Curve, first: number, last: number, width: number): Bins {
  const start = curve.timesSeconds[first]!;
  const times: number[] = [];
  const temps: number[] = [];
  let from = first;
  let bin = 0;
  for (let i = first; i <= last; i++) {
    const next = i < last ? Math.floor((curve.timesSeconds[i + 1]! - start) / width) : -1;
    if (next === bin) continue;
    times.push(middleTime(curve.timesSeconds, from, i + 1));
    temps.push(medianInPlace(curve.tempsC.slice(from, i + 1)));
    from = i + 1;
    bin = next;
  }
  const step = times.length > 1 ? (times.at(-1)! - times[0]!) / (times.length - 1) : width;
  return {
    timesSeconds: Float64Array.from(times),
    tempsC: Float64Array.from(temps),
    fromSeconds: start,
    toSeconds: curve.timesSeconds[last]!,
    widthSeconds: step,
  };
}

/** Median of times that rise, from one place to before another [s]. */
function middleTime(times: Float64Array, from: number, to: number): number {
  const high = times[(from + to) >> 1]!;
  return (to - from) % 2 === 1 ? high : (times[((from + to) >> 1) - 1]! + high) / 2;
}
