import type { WitnessOffset } from "../cones/witnessOffset.ts";

/** What the witness cones of past firings say of a thermocouple, taken together. */
export interface PastOffset {
  /** Add to the readings [K]: the median of the firings. */
  readonly offsetK: number;
  /** Lowest and highest of them, or what the cones of the only one allow [K]. */
  readonly lowK: number;
  readonly highK: number;
  readonly firings: number;
}

/**
 * Median of the offsets of past firings. Firings in which cones bound the offset on one side only
 * are left out: what they give is the nearest to 0, not a measurement.
 *
 * @returns null when no firing pins an offset.
 */
export function pastOffset(offsets: readonly WitnessOffset[]): PastOffset | null {
  const pinned = offsets
    .flatMap(({ offsetK, lowK, highK }) =>
      lowK === null || highK === null ? [] : [{ offsetK, lowK, highK }],
    )
    .sort((a, b) => a.offsetK - b.offsetK);
  const first = pinned[0];
  const last = pinned.at(-1);
  if (first === undefined || last === undefined) return null;
  if (pinned.length === 1) return { ...first, firings: 1 };
  const half = pinned.length / 2;
  const upper = (pinned[Math.floor(half)] ?? last).offsetK;
  const lower = (pinned[Math.ceil(half) - 1] ?? first).offsetK;
  return {
    offsetK: (lower + upper) / 2,
    lowK: first.offsetK,
    highK: last.offsetK,
    firings: pinned.length,
  };
}
