/** What the witness cones of one firing allow a thermocouple to be out by [K]; null = no bound on that side. */
interface OffsetBounds {
  readonly lowK: number | null;
  readonly highK: number | null;
}

/** How a thermocouple's offset moved over a row of firings. */
export interface OffsetTrend {
  /** Of the straight line from the first pinned firing to the last [K]; above 0 it reads lower than it did. */
  readonly driftK: number;
  /** One sigma of it [K]. */
  readonly sigmaK: number;
  /** Firings whose cones pin the offset from both sides. */
  readonly firings: number;
  /** It stands out from what the cones leave open. */
  readonly isPlain: boolean;
}

/** Fewer firings make no row. */
export const FEWEST_PINNED = 4;
/** A cone bends a little otherwise in each firing and place, beside what it allows [K]; our own estimate. */
const FIRING_SIGMA_K = 5;
/** A drift is plain from so many sigmas on, and from so much on [K]. */
const PLAIN_SIGMAS = 3;
const PLAIN_K = 8;

/**
 * The drift of a thermocouple over firings in their order, one of equal weight after the other: a line
 * through the middles of what their cones allow, each as sure as its interval is narrow. Many firings
 * together tell what no two of them can.
 *
 * @returns null when fewer than four firings pin the offset from both sides.
 */
export function offsetTrend(bounds: readonly OffsetBounds[]): OffsetTrend | null {
  const pinned = bounds.flatMap(({ lowK, highK }, at) =>
    lowK === null || highK === null
      ? []
      : [
          {
            at,
            middleK: (lowK + highK) / 2,
            // Anywhere in the interval is equally likely.
            sigmaK: Math.hypot((highK - lowK) / Math.sqrt(12), FIRING_SIGMA_K),
          },
        ],
  );
  const [first, last] = [pinned[0], pinned.at(-1)];
  if (pinned.length < FEWEST_PINNED || first === undefined || last === undefined) return null;
  const sum = (of: (point: (typeof pinned)[number]) => number) =>
    pinned.reduce((all, point) => all + of(point) / point.sigmaK ** 2, 0);
  const weight = sum(() => 1);
  const meanAt = sum(({ at }) => at) / weight;
  const meanK = sum(({ middleK }) => middleK) / weight;
  const spread = sum(({ at }) => (at - meanAt) ** 2);
  const slope = sum(({ at, middleK }) => (at - meanAt) * (middleK - meanK)) / spread;
  const scatter = sum(({ at, middleK }) => (middleK - meanK - slope * (at - meanAt)) ** 2);
  // Firings that scatter more than their intervals say are believed, not the intervals.
  const excess = Math.max(1, Math.sqrt(scatter / (pinned.length - 2)));
  const driftK = slope * (last.at - first.at);
  const sigmaK = (excess * (last.at - first.at)) / Math.sqrt(spread);
  const isPlain = Math.abs(driftK) > Math.max(PLAIN_K, PLAIN_SIGMAS * sigmaK);
  return { driftK, sigmaK, firings: pinned.length, isPlain };
}
