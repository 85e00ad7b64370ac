import { logGamma } from "../crackle/logGamma.ts";
import { tQuantile } from "../crackle/tQuantile.ts";
import { normalTail } from "./normalTail.ts";

/** What is to be seen between two groups. */
export interface WantedRatio {
  /** Pitch of one group over the other's, above 1. */
  readonly ratio: number;
  /** One standard deviation between like tiles, in logarithms of the pitch. */
  readonly tileSigma: number;
  /** Chance of seeing it that is wanted, 0–1. */
  readonly power: number;
}

/** More tiles than this nobody makes for one group. */
const MOST = 2000;

/** Steps of Simpson's rule. */
const STEPS = 400;

/**
 * Tiles that each of two groups needs so that their ratio of pitches is seen (two-sided t test, 5 in
 * 100) with a wanted chance: 21 for a ratio of 1.25, 8 for 1.5 and 4 for 2, with tiles that scatter
 * by 0.25 and a chance of 8 in 10.
 *
 * @throws RangeError for a ratio of 1 and less, no scatter, or more than 2000 tiles.
 * @see SOURCES["trial-planning"]
 */
export function tilesPerGroup({ ratio, tileSigma, power }: WantedRatio): number {
  const distance = Math.log(ratio) / tileSigma;
  for (let tiles = 2; tiles <= MOST; tiles++)
    if (chanceOfSeeing(distance * Math.sqrt(tiles / 2), 2 * (tiles - 1)) >= power) return tiles;
  throw new RangeError(`tilesPerGroup: a ratio of ${ratio} at a scatter of ${tileSigma}`);
}

/** Chance that a t so far off 0, in standard errors, comes out beyond the 5 % limit. */
function chanceOfSeeing(offset: number, freedom: number): number {
  const limit = tQuantile(0.95, freedom);
  const front = Math.log(2) + (freedom / 2) * Math.log(freedom / 2) - logGamma(freedom / 2);
  const density = (share: number) =>
    share === 0
      ? 0
      : Math.exp(front + (freedom - 1) * Math.log(share) - (freedom * share * share) / 2);
  const most = 1 + 8 / Math.sqrt(freedom);
  const width = most / STEPS;
  let sum = 0;
  for (let i = 0; i <= STEPS; i++) {
    const share = i * width;
    const weight = i === 0 || i === STEPS ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * density(share) * normalTail(limit * share - offset);
  }
  return (sum * width) / 3;
}
