import { type Curve, lastAtOrBefore } from "../curve/Curve.ts";
import { medianInPlace } from "../math/statistics.ts";

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

/** A moment of a kiln: how hot it is, and how much its elements are asked for. */
export interface Row {
  readonly seconds: number;
  /** Mean of the readings within two and a half minutes either way. */
  readonly tempC: number;
  /** As read, by median of half a minute. */
  readonly rawC: number;
  /** Share of full power up to here, 0–1; null where the log does not say. */
  readonly output: number | null;
}

/** Readings so near to a moment are taken together [s]. */
const NEAR_SECONDS = 150;

/** A Curve as moments; nothing is smoothed across its gaps. */
export function rowsOf(
  curve: Curve,
  outputAt: (fromSeconds: number, toSeconds: number) => number | null,
): readonly Row[] {
  return timeBins(curve).flatMap(({ timesSeconds, tempsC, widthSeconds }) => {
    const sums = [0];
    for (const tempC of tempsC) sums.push(sums.at(-1)! + tempC);
    return Array.from(timesSeconds, (seconds, i): Row => {
      const first = lastAtOrBefore(timesSeconds, seconds - NEAR_SECONDS - 1e-6) + 1;
      const last = lastAtOrBefore(timesSeconds, seconds + NEAR_SECONDS);
      // As many readings to each side: else the ends of a climb would be pulled towards its middle.
      const reach = Math.min(i - first, last - i);
      const [from, until] = [i - reach, i + reach + 1];
      return {
        seconds,
        tempC: (sums[until]! - sums[from]!) / (until - from),
        rawC: tempsC[i]!,
        output: outputAt(seconds - widthSeconds, seconds),
      };
    });
  });
}

/** How fast a kiln went over the time before a row, with one sigma, and over its earlier and later half [°C/h]. */
interface RowRate {
  readonly rateCPerHour: number;
  readonly sigmaCPerHour: number;
  readonly earlyCPerHour: number;
  readonly lateCPerHour: number;
}

/** Fewest rows that give a rate with a sigma. */
const FEWEST_ROWS = 3;

/** Least squares over the time up to a row; over more time where that holds under three rows, null where there are none. */
export function rateOver(rows: readonly Row[], at: number, seconds: number): RowRate | null {
  const end = rows[at]!.seconds;
  let first = at;
  while (first > 0 && (end - rows[first - 1]!.seconds <= seconds || at - first + 1 < FEWEST_ROWS))
    first--;
  const used = rows.slice(first, at + 1);
  const line = lineThrough(used);
  if (line === null) return null;
  const middle = used.length >> 1;
  return {
    ...line,
    earlyCPerHour: between(used[0]!, used[middle]!),
    lateCPerHour: between(used[middle]!, used.at(-1)!),
  };
}

function between(from: Row, to: Row): number {
  return (3600 * (to.tempC - from.tempC)) / Math.max(1, to.seconds - from.seconds);
}

function lineThrough(rows: readonly Row[]): Pick<RowRate, "rateCPerHour" | "sigmaCPerHour"> | null {
  const n = rows.length;
  if (n < FEWEST_ROWS) return null;
  const meanT = rows.reduce((sum, row) => sum + row.seconds, 0) / n;
  const meanC = rows.reduce((sum, row) => sum + row.rawC, 0) / n;
  let tt = 0;
  let tc = 0;
  let cc = 0;
  for (const { seconds, rawC } of rows) {
    tt += (seconds - meanT) ** 2;
    tc += (seconds - meanT) * (rawC - meanC);
    cc += (rawC - meanC) ** 2;
  }
  if (!(tt > 0)) return null;
  const slope = tc / tt;
  const residual = Math.max(0, cc - slope * tc) / (n - 2);
  return { rateCPerHour: 3600 * slope, sigmaCPerHour: 3600 * Math.sqrt(residual / tt) };
}
