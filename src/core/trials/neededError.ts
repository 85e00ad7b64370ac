import { tQuantile } from "../crackle/tQuantile.ts";

/** Chance of seeing the wanted ratio when it is there. */
const POWER = 0.8;

/** Chance that an interval holds the truth. */
const WITHIN = 0.95;

/**
 * Largest standard error of a difference with which that difference is seen 8 times in 10, by a
 * two-sided test at 5 %: the difference over the sum of both t's. Infinite demands give 0.
 *
 * @param difference Of the logarithms, above 0: ln 1.5 for half as wide again.
 * @param freedom Degrees of freedom of the scatter; below 1 nothing is seen.
 */
export function neededError(difference: number, freedom: number): number {
  if (freedom < 1) return 0;
  // One-sided for the chance of seeing it: 8 in 10 below is 6 in 10 within.
  return difference / (tQuantile(WITHIN, freedom) + tQuantile(2 * POWER - 1, freedom));
}
