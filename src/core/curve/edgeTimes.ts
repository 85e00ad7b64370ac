import type { Curve } from "./Curve.ts";
import { medianInPlace } from "./median.ts";

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
  const sign = at.toC > at.fromC ? 1 : -1;
  const y = (i: number): number => sign * (curve.tempsC[i] as number);
  const [enterY, leaveY] = [sign * at.fromC, sign * at.toC];
  let enterAt = -1;
  let leaveAt = -1;
  let inside: { from: number; to: number } | null = null;
  for (let i = at.first; i <= at.last; i++) {
    const next = i < at.last;
    if (enterAt < 0 && next && y(i) < enterY && y(i + 1) >= enterY) enterAt = i;
    if (next && y(i) < leaveY && y(i + 1) >= leaveY) leaveAt = i;
    if (y(i) >= enterY && y(i) <= leaveY) {
      const time = curve.timesSeconds[i] as number;
      inside = inside ? { from: inside.from, to: time } : { from: time, to: time };
    }
  }
  return {
    enter: edge(curve, enterAt, at.fromC, inside),
    leave: edge(curve, leaveAt, at.toC, inside),
    recrossings: turnBacks(y, at, enterY, leaveY),
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
  const from = curve.timesSeconds[index] as number;
  if (curve.gaps.some((gap) => gap.fromSeconds === from))
    return { seconds: null, hidden: true, ...known };
  const to = curve.timesSeconds[index + 1] as number;
  const here = curve.tempsC[index] as number;
  const straight =
    from + ((tempC - here) / ((curve.tempsC[index + 1] as number) - here)) * (to - from);
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
  const within = (i: number): boolean =>
    Math.abs((times[i] as number) - middle) <= HALF_WIDTH_SECONDS;
  while (low > 0 && within(low - 1) && !gapEdges.includes(times[low] as number)) low--;
  while (high + 1 < times.length && within(high + 1) && !gapEdges.includes(times[high] as number))
    high++;
  const count = high - low + 1;
  if (count < FEWEST_POINTS) return null;
  const stride = Math.ceil(count / MOST_POINTS);
  const picked: number[] = [];
  for (let i = low; i <= high; i += stride) picked.push(i);
  const slopes: number[] = [];
  for (let a = 0; a < picked.length; a++)
    for (let b = a + 1; b < picked.length; b++) {
      const [i, j] = [picked[a] as number, picked[b] as number];
      slopes.push(
        ((curve.tempsC[j] as number) - (curve.tempsC[i] as number)) /
          ((times[j] as number) - (times[i] as number)),
      );
    }
  const slope = medianInPlace(slopes);
  const level = medianInPlace(
    picked.map((i) => (curve.tempsC[i] as number) - slope * ((times[i] as number) - middle)),
  );
  const crossing = middle + (tempC - level) / slope;
  return Math.abs(crossing - middle) <= HALF_WIDTH_SECONDS ? crossing : null;
}

/** Times it fell back, by more than noise, over an edge that it had passed. */
function turnBacks(
  y: (i: number) => number,
  at: { readonly first: number; readonly last: number },
  enterY: number,
  leaveY: number,
): number {
  let count = 0;
  for (const edgeY of [enterY, leaveY]) {
    let passed = false;
    for (let i = at.first; i <= at.last; i++) {
      if (!passed && y(i) >= edgeY) passed = true;
      else if (passed && y(i) < edgeY - TURN_BACK_K) {
        passed = false;
        count++;
      }
    }
  }
  return count;
}
