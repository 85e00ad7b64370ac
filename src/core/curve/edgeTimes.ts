import { medianInPlace } from "../math/statistics.ts";
import type { Curve } from "./Curve.ts";

/** One edge of a passage. */
export interface Edge {
  /** When it was crossed [s]; null when it was not seen to be crossed. */
  readonly seconds: number | null;
  /** The step over the edge is a gap. */
  readonly hidden: boolean;
  /** First and last moment known to be inside the band, for rates when the edge itself is not known. */
  readonly insideFrom: number | null;
  readonly insideTo: number | null;
}

/** Half width of the stretch to which an edge's local line is fitted [s]. */
const HALF_WIDTH_SECONDS = 180;

/** Fewest points for a local line; with fewer the straight piece itself is used. */
const FEWEST_POINTS = 5;

/** Most points in a local line; more are thinned evenly (pairs grow with the square). */
const MOST_POINTS = 120;

/** How far back over an edge counts as turning back [K]; less is noise. */
const TURN_BACK_K = 5;

/**
 * When a stretch of a Curve first enters and last leaves an interval of temperature.
 * Each edge time is taken from a robust local line (Theil–Sen) through the points within 3 min of
 * the crossing where there are at least 5 of them, so that a single reading cannot move it.
 */
export function edgeTimes(
  curve: Curve,
  at: {
    readonly first: number;
    readonly last: number;
    readonly fromC: number;
    readonly toC: number;
  },
): {
  readonly enter: Edge;
  readonly leave: Edge;
  readonly recrossings: number;
} {
  const { timesSeconds, tempsC } = curve;
  const { first, last } = at;
  const sign = at.toC > at.fromC ? 1 : -1;
  const [enterY, leaveY] = [sign * at.fromC, sign * at.toC];
  let enterAt = -1;
  let leaveAt = -1;
  let insideFrom = -1;
  let insideTo = -1;
  let here = sign * tempsC[first]!;
  for (let i = first; i <= last; i++) {
    if (here >= enterY && here <= leaveY) {
      if (insideFrom < 0) insideFrom = i;
      insideTo = i;
    }
    if (i === last) break;
    const next = sign * tempsC[i + 1]!;
    if (here < enterY && next >= enterY && enterAt < 0) enterAt = i;
    if (here < leaveY && next >= leaveY) leaveAt = i;
    here = next;
  }
  const inside =
    insideFrom < 0 ? null : { from: timesSeconds[insideFrom]!, to: timesSeconds[insideTo]! };
  return {
    enter: edge(curve, enterAt, at.fromC, inside),
    leave: edge(curve, leaveAt, at.toC, inside),
    recrossings: turnBacks(tempsC, { first, last, sign }, [enterY, leaveY]),
  };
}

function edge(
  curve: Curve,
  index: number,
  tempC: number,
  inside: { from: number; to: number } | null,
): Edge {
  const known = {
    insideFrom: inside?.from ?? null,
    insideTo: inside?.to ?? null,
  };
  if (index < 0) return { seconds: null, hidden: false, ...known };
  const from = curve.timesSeconds[index]!;
  if (curve.gaps.some((gap) => gap.fromSeconds === from))
    return { seconds: null, hidden: true, ...known };
  const to = curve.timesSeconds[index + 1]!;
  const here = curve.tempsC[index]!;
  const straight = from + ((tempC - here) / (curve.tempsC[index + 1]! - here)) * (to - from);
  return {
    seconds: localLineCrossing(curve, index, straight, tempC) ?? straight,
    hidden: false,
    ...known,
  };
}

function localLineCrossing(
  curve: Curve,
  index: number,
  middle: number,
  tempC: number,
): number | null {
  const gapEdges = curve.gaps.flatMap((gap) => [gap.fromSeconds, gap.toSeconds]);
  const times = curve.timesSeconds;
  let low = index;
  let high = index + 1;
  const within = (i: number): boolean => Math.abs(times[i]! - middle) <= HALF_WIDTH_SECONDS;
  while (low > 0 && within(low - 1) && !gapEdges.includes(times[low]!)) low--;
  while (high + 1 < times.length && within(high + 1) && !gapEdges.includes(times[high]!)) high++;
  const count = high - low + 1;
  if (count < FEWEST_POINTS) return null;
  const stride = Math.ceil(count / MOST_POINTS);
  const picked = Math.floor((high - low) / stride) + 1;
  const x = new Float64Array(picked);
  const y = new Float64Array(picked);
  for (let p = 0; p < picked; p++) {
    x[p] = times[low + p * stride]!;
    y[p] = curve.tempsC[low + p * stride]!;
  }
  const slope = medianInPlace(slopesBetween(x, y));
  const level = medianInPlace(y.map((tempC, p) => tempC - slope * (x[p]! - middle)));
  const crossing = middle + (tempC - level) / slope;
  return Math.abs(crossing - middle) <= HALF_WIDTH_SECONDS ? crossing : null;
}

/** Slopes of the lines between every two points. */
function slopesBetween(x: Float64Array, y: Float64Array): Float64Array {
  const slopes = new Float64Array((x.length * (x.length - 1)) / 2);
  let pairs = 0;
  for (let a = 0; a < x.length; a++) {
    const fromX = x[a]!;
    const fromY = y[a]!;
    for (let b = a + 1; b < x.length; b++) slopes[pairs++] = (y[b]! - fromY) / (x[b]! - fromX);
  }
  return slopes;
}

/** Times it fell back, by more than noise, over an edge that it had passed. */
function turnBacks(
  tempsC: Float64Array,
  { first, last, sign }: { readonly first: number; readonly last: number; readonly sign: number },
  edges: readonly number[],
): number {
  let count = 0;
  for (const edgeY of edges) {
    let passed = false;
    for (let i = first; i <= last; i++) {
      const here = sign * tempsC[i]!;
      if (!passed) passed = here >= edgeY;
      else if (here < edgeY - TURN_BACK_K) {
        passed = false;
        count++;
      }
    }
  }
  return count;
}

/** A temperature interval with a reason: an inversion, water, carbon. */
export interface Band {
  /** Lower-case name that findings and JSON use: `quartz inversion`. */
  readonly name: string;
  readonly lowC: number;
  readonly highC: number;
}

/** Which way a Curve goes through a band. */
export type Direction = "heating" | "cooling";

/**
 * The passage of a Curve through a band, one direction.
 * `measured` is `whole` when both edges were crossed with no gap on the way, `partly` when a gap
 * or the end of the Curve hides some of it, `no` when the band was never entered in this direction.
 * Rates are signed [°C/h], falling negative; null where they were not measured.
 */
export interface BandPassage {
  readonly band: string;
  readonly direction: Direction;
  /** Edge where it enters and edge where it leaves [°C], in the order of travel. */
  readonly fromC: number;
  readonly toC: number;
  readonly measured: "whole" | "partly" | "no";
  readonly startSeconds: number | null;
  readonly endSeconds: number | null;
  /** Time from first entering to last leaving [s]. */
  readonly seconds: number | null;
  readonly meanCPerHour: number | null;
  /** Largest local least-squares slope over the window, in this direction. */
  readonly fastestCPerHour: number | null;
  /** Middle of the window in which it was fastest [s]. */
  readonly fastestAtSeconds: number | null;
  /** Width of that window [min]. */
  readonly windowMinutes: number | null;
  /** How often it turned back over an edge on the way; 0 for a plain passage. */
  readonly recrossings: number;
  /** What limits the numbers above, as plain sentences. */
  readonly notes: readonly string[];
}

/** A moment at which a Curve passes a temperature. */
export interface CrossingTime {
  readonly seconds: number;
  readonly direction: Direction;
}

/**
 * Every time a Curve passes a temperature [°C], in order, each on its straight piece.
 * A point exactly on the temperature counts as above it. Nothing is found inside gaps.
 */
export function crossingTimes(curve: Curve, tempC: number): readonly CrossingTime[] {
  const { timesSeconds, tempsC } = curve;
  const gapStarts = new Set(curve.gaps.map((gap) => gap.fromSeconds));
  const found: CrossingTime[] = [];
  for (let i = 0; i + 1 < tempsC.length; i++) {
    const here = tempsC[i]!;
    const there = tempsC[i + 1]!;
    if (here >= tempC === there >= tempC || gapStarts.has(timesSeconds[i]!)) continue;
    const from = timesSeconds[i]!;
    const to = timesSeconds[i + 1]!;
    found.push({
      seconds: from + ((tempC - here) / (there - here)) * (to - from),
      direction: there > here ? "heating" : "cooling",
    });
  }
  return found;
}
