import type { Problem } from "../problem.ts";
import { ERROR_TO_TELL, exponentError } from "./exponentError.ts";
import type { SpacingFit } from "./SpacingFit.ts";
import { type FactorName, levelOf } from "./spacingFactors.ts";
import type { Tile } from "./Tile.ts";
import { tilesPerGroup } from "./tilesPerGroup.ts";

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
