import { logGamma, normalTail, tQuantile } from "../math/distributions.ts";
import type { Problem } from "../problem.ts";
import type { SpacingFit } from "./FiringStudy.ts";
import { type FactorName, levelOf } from "./spacingFactors.ts";
import type { Tile } from "./Tile.ts";

/** Scatter between like tiles when too few tiles measure it. @see SOURCES["trial-planning"] */
const USUAL_SCATTER = 0.25;

/** Ratios of pitch that tiles are counted for. */
const RATIOS = [1.25, 1.5, 2];

/** Chance of seeing a ratio that is there. */
const POWER = 0.8;

/** Scatter below this is luck; it would promise too much. */
const LEAST_SCATTER = 0.05;

/** Coats within such a step are alike, in logarithms; our own choice. */
const ALIKE_COATS = 0.2;

/** Repeats over and above the first of each kind from which their scatter is told. */
const FREEDOM_FOR_SCATTER = 3;

/** Tiles of one group for a test of labels that can come out below 5 in 100. */
const FOR_LABELS = 4;

const SIDES: Readonly<Record<string, string>> = { one: "one side", both: "both sides" };

const FACTORS: readonly FactorName[] = ["clay", "sides", "shape"];

/** What so many tiles can tell. */
export interface SampleSizes {
  /** Tiles that each of two groups needs for a ratio of pitches, with a chance of 8 in 10. */
  readonly needed: readonly { readonly ratio: number; readonly tiles: number }[];
  /** Scatter between like tiles that this goes by, in logarithms of the pitch. */
  readonly scatter: number;
  readonly scatterIs: "measured" | "assumed";
  /** Standard error of the exponent that these coats promise, by that scatter; null for one coat. */
  readonly exponentError: number | null;
  /** Under this it tells 1/2 from 1 in eight of ten studies. */
  readonly exponentErrorToTell: number;
  /** Groups of one tile, of which nothing can be said, with how many are needed. */
  readonly problems: readonly Problem[];
}

/** What the tiles of one glaze can tell by their number, by their own scatter when it is known. */
export function sampleSizes(tiles: readonly Tile[], fit: SpacingFit | null): SampleSizes {
  const known = scatterOfLike(tiles, fit);
  const scatter = known ?? USUAL_SCATTER;
  const coats = tiles.map(({ coat }) => coat.firedMm);
  return {
    needed: RATIOS.map((ratio) => ({ ratio, tiles: neededFor(ratio, scatter) })),
    scatter,
    scatterIs: known === null ? "assumed" : "measured",
    exponentError: new Set(coats).size > 1 ? exponentError(coats, scatter) : null,
    exponentErrorToTell: ERROR_TO_TELL,
    problems: FACTORS.flatMap((factor) => lonelyGroups(tiles, factor, neededFor(1.5, scatter))),
  };
}

/**
 * How like tiles scatter, by the tiles themselves: about the fit, without coats too thin to crack,
 * whose distance from the line is no scatter; without a fit between tiles alike in all but luck.
 * Null when they do not tell.
 */
function scatterOfLike(tiles: readonly Tile[], fit: SpacingFit | null): number | null {
  const sigma =
    fit === null
      ? scatterOfRepeats(tiles)
      : fit.thinUncracked > 0
        ? fit.tileSigmaWithoutThin
        : fit.tileSigma;
  return sigma === null ? null : Math.max(LEAST_SCATTER, sigma);
}

/** Pooled over tiles of one clay, sides, shape and firing whose coats are within a fifth of each other. */
function scatterOfRepeats(tiles: readonly Tile[]): number | null {
  const groups = new Map<string, number[]>();
  for (const { clay, glazedSides, shape, firing, coat, spacing } of tiles) {
    if (spacing.kind !== "measured") continue;
    const coatStep = Math.round(Math.log(coat.firedMm) / ALIKE_COATS);
    const key = JSON.stringify([clay, glazedSides, shape, firing, coatStep]);
    groups.set(key, [...(groups.get(key) ?? []), Math.log(spacing.pitchMm)]);
  }
  const repeated = [...groups.values()].filter((logs) => logs.length > 1);
  const freedom = repeated.reduce((sum, logs) => sum + logs.length - 1, 0);
  if (freedom < FREEDOM_FOR_SCATTER) return null;
  const squares = repeated.flatMap((logs) => {
    const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
    return logs.map((log) => (log - mean) ** 2);
  });
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / freedom);
}

function neededFor(ratio: number, tileSigma: number): number {
  return tilesPerGroup({ ratio, tileSigma, power: POWER });
}

/** One tile's luck cannot be told from its group. */
function lonelyGroups(
  tiles: readonly Tile[],
  factor: FactorName,
  enough: number,
): readonly Problem[] {
  const levels = tiles.flatMap((tile) => levelOf(tile, factor) ?? []);
  const kinds = [...new Set(levels)];
  if (kinds.length < 2) return [];
  return kinds
    .filter((kind) => levels.filter((each) => each === kind).length === 1)
    .map((kind) => ({
      code: "trials/group-of-one" as const,
      what:
        factor === "sides"
          ? `one tile glazed on ${SIDES[kind]}`
          : `one tile with ${factor} ${kind}`,
      where: `tiles of ${tiles[0]?.glaze ?? "no glaze"}`,
      expected: `2 tiles to compare at all, ${FOR_LABELS} for a test of labels, ${enough} to see a ratio of 1.5`,
      fix: `make ${Math.max(FOR_LABELS, enough) - 1} more tiles like it, in one firing with the others`,
    }));
}

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

/** Chance of 8 in 10 to see a difference at 5 in 100, two-sided: so many standard errors. */
const ERRORS_TO_SEE = 1.959964 + 0.841621;

/** Standard error that tells an exponent of 1/2 from 1 in eight of ten studies. */
export const ERROR_TO_TELL = 0.5 / ERRORS_TO_SEE;

/**
 * Standard error of the exponent that a set of coats will give: scatter between tiles over the
 * spread of ln coat. 0.14 for three tiles each of 0.3, 0.48, 0.76 and 1.2 mm and a scatter of 0.25,
 * 0.10 for six each.
 *
 * @param coatsMm One for each tile; at least two that differ.
 * @see SOURCES["trial-planning"]
 */
export function exponentError(coatsMm: readonly number[], tileSigma: number): number {
  const logs = coatsMm.map(Math.log);
  const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
  const squares = logs.reduce((sum, log) => sum + (log - mean) ** 2, 0);
  if (!(squares > 0)) throw new RangeError("exponentError: coats are alike");
  return tileSigma / Math.sqrt(squares);
}
