import { choices } from "./labelTest.ts";

/** Yes among the tiles of a group. */
export interface YesOf {
  readonly yes: number;
  readonly of: number;
}

/** Tables as likely as the one found, but for rounding. */
const SAME = 1 + 1e-9;

/**
 * Fisher's exact test of two shares, two-sided: chance of a table at most as likely as the one
 * found when the yeses fall on the tiles at random. 8 of 8 against 0 of 8 gives 2/12870.
 *
 * @see SOURCES["fisher-1934"]
 */
export function fisherExact(one: YesOf, other: YesOf): number {
  const yes = one.yes + other.yes;
  const all = choices(one.of + other.of, yes);
  const chance = (inOne: number) => (choices(one.of, inOne) * choices(other.of, yes - inOne)) / all;
  const found = chance(one.yes);
  let sum = 0;
  for (let inOne = Math.max(0, yes - other.of); inOne <= Math.min(one.of, yes); inOne++)
    if (chance(inOne) <= found * SAME) sum += chance(inOne);
  return Math.min(1, sum);
}
