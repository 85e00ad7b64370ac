import { tQuantile } from "../math/distributions.ts";
import type { Confounding } from "./Confounding.ts";
import {
  type ChosenTiles,
  chooseTiles,
  isUnknown,
  kindOf,
  type TileCause,
  type TileDesign,
  type TileKind,
  tileDesign,
  varianceOf,
  type WantedDirection,
} from "./chooseTiles.ts";
import { coatBins } from "./firingCauses.ts";
import type { NextTile, NextTiles, WantedContrast } from "./NextTest.ts";
import type { Tile } from "./Tile.ts";

/** Half as wide again is taken to be worth knowing; our own choice. */
const WANTED_RATIO = 1.5;

/** Scatter from tile to tile of ln spacing while none is measured; our own estimate. */
const USUAL_SCATTER = 0.25;

/** Tiles that are added at most: about what a shelf or two hold. */
const MOST_TILES = 40;

/** The exponents that are to be told apart lie this far from each other: ½ and 1. */
const BETWEEN_EXPONENTS = 0.5;

/** A pair that shares as much as this is worth telling apart. */
const MIXED = 0.5;

const TILE_CAUSES: readonly TileCause[] = ["clay", "glaze", "coat", "sides", "shape"];

/**
 * The fewest next tiles found that tell apart what the tiles so far cannot, all in one firing, which
 * is given a level of its own so that nothing hangs on its being like an earlier one.
 * First come causes that changed together; only when there are none, those with too few tiles.
 *
 * @param scatter Measured tile-to-tile standard deviation of ln spacing, or null.
 * @returns null when no measured tile is there, or nothing is wanted.
 */
export function nextTiles(given: {
  readonly tiles: readonly Tile[];
  readonly confounding: Confounding;
  readonly scatter: number | null;
}): NextTiles | null {
  const tiles = shapesEvened(given.tiles.filter(({ spacing }) => spacing.kind === "measured"));
  if (tiles.length === 0) return null;
  const scatter = given.scatter ?? USUAL_SCATTER;
  const mixed = TILE_CAUSES.filter((cause) => isMixed(cause, given.confounding));
  const wanted = mixed.length > 0 ? mixed : tooFew(tiles, given.confounding, scatter);
  if (wanted.length === 0) return null;
  const candidates = candidatesOf(tiles, wanted);
  const design = tileDesign(tiles, candidates);
  const contrasts = wanted.flatMap((cause) =>
    design.contrastsOf(cause).map((contrast) => ({ cause, ...contrast })),
  );
  const freedom = effectsOf(design, tiles);
  const chosen = chooseTiles({
    rows: tiles.map((tile) => design.rowOf(kindOf(tile), tile.firing)),
    candidates: candidates.map((kind) => design.rowOf(kind, "next")),
    wanted: contrasts.map(
      ({ cause, direction }): WantedDirection => ({
        direction,
        needed: (count) => neededError(differenceOf(cause), count - freedom),
      }),
    ),
    scatter,
    most: MOST_TILES,
  });
  const added = chosen.counts.reduce((sum, count) => sum + count, 0);
  return {
    tiles: inOrder(
      candidates.map((kind, at): NextTile => ({ ...kind, count: chosen.counts[at] ?? 0 })),
    ),
    total: added,
    wanted: contrasts.map(({ cause, words, direction }) =>
      wantedContrast(
        {
          cause,
          contrast: words,
          direction,
          needed: neededError(differenceOf(cause), tiles.length + added - freedom),
        },
        chosen,
      ),
    ),
    isEnough: chosen.isEnough,
    fewest: chosen.fewest ?? added,
    scatter,
    scatterIs: given.scatter === null ? "assumed" : "measured",
    ratio: WANTED_RATIO,
    reason:
      mixed.length > 0
        ? `These tiles part what changed together: ${listed(mixed)}.`
        : `There are too few tiles yet to see the effect of ${listed(wanted)}.`,
  };
}

/** Tiles without their shapes when some shapes are not noted, since those tiles fit in nowhere. */
function shapesEvened(tiles: readonly Tile[]): readonly Tile[] {
  return tiles.every(({ shape }) => shape !== null)
    ? tiles
    : tiles.map((tile) => ({ ...tile, shape: null }));
}

function listed(words: readonly string[]): string {
  return words.length < 2
    ? (words[0] ?? "")
    : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

function isMixed(cause: TileCause, { pairs, jointly }: Confounding): boolean {
  return (
    jointly.some((each) => each.cause === cause) ||
    pairs.some(
      ({ first, second, telling, shared }) =>
        (first === cause || second === cause) &&
        // The place in the kiln is no cause that tiles can be made for.
        first !== "place" &&
        second !== "place" &&
        (telling === "cannot" || (telling === "partly" && shared > MIXED)),
    )
  );
}

/** Causes that varied, or the coat if it did not, whose comparisons are not known well enough. */
function tooFew(
  tiles: readonly Tile[],
  { causes }: Confounding,
  scatter: number,
): readonly TileCause[] {
  const design = tileDesign(tiles, []);
  const freedom = effectsOf(design, tiles);
  const { after } = chooseTiles({
    rows: tiles.map((tile) => design.rowOf(kindOf(tile), tile.firing)),
    candidates: [],
    wanted: design.contrastsOf("coat").map(({ direction }) => ({ direction, needed: () => 1 })),
    scatter,
    most: 0,
  });
  return TILE_CAUSES.filter((cause) => {
    if (cause !== "coat" && !causes.some(({ name }) => name === cause)) return false;
    const needed = neededError(differenceOf(cause), tiles.length - freedom);
    return design
      .contrastsOf(cause)
      .some(({ direction }) => Math.sqrt(varianceOf(after, direction)) > needed);
  });
}

function differenceOf(cause: TileCause): number {
  return cause === "coat" ? BETWEEN_EXPONENTS : Math.log(WANTED_RATIO);
}

/** How many effects are worked out from the tiles, one for the next firing included. */
function effectsOf(design: TileDesign, tiles: readonly Tile[]): number {
  const [tile] = tiles;
  return tile === undefined ? 0 : design.rowOf(kindOf(tile), tile.firing).length;
}

/** Every mix of the levels of the wanted causes; of all else what most tiles had. */
function candidatesOf(tiles: readonly Tile[], wanted: readonly TileCause[]): readonly TileKind[] {
  const of = <Level>(cause: TileCause, levelOf: (tile: Tile) => Level): readonly Level[] => {
    const levels = tiles.map(levelOf);
    return wanted.includes(cause) ? [...new Set(levels)] : [mostCommon(levels)];
  };
  return of("clay", ({ clay }) => clay).flatMap((clay) =>
    of("glaze", ({ glaze }) => glaze).flatMap((glaze) =>
      of("sides", ({ glazedSides }) => glazedSides).flatMap((glazedSides) =>
        of("shape", ({ shape }) => shape).flatMap((shape) =>
          coatsOf(tiles, wanted).map((coatMm) => ({ clay, glaze, coatMm, glazedSides, shape })),
        ),
      ),
    ),
  );
}

/** The thinnest and the thickest coat when coats are wanted, a doubled one if there is but one; else the usual. */
function coatsOf(tiles: readonly Tile[], wanted: readonly TileCause[]): readonly number[] {
  const { amounts } = coatBins(tiles.map(({ coat }) => coat.firedMm));
  const rounded = (amount: number) => Number(Math.exp(amount).toPrecision(2));
  if (!wanted.includes("coat")) return [rounded(mostCommon(amounts))];
  const [least, most] = [Math.min(...amounts), Math.max(...amounts)];
  return least === most
    ? [rounded(least), rounded(least + Math.LN2)]
    : [rounded(least), rounded(most)];
}

function mostCommon<Level>(levels: readonly Level[]): Level {
  const counts = new Map<Level, number>();
  for (const level of levels) counts.set(level, (counts.get(level) ?? 0) + 1);
  return [...counts].reduce((best, each) => (each[1] > best[1] ? each : best))[0];
}

function inOrder(tiles: readonly NextTile[]): readonly NextTile[] {
  return tiles.filter(({ count }) => count > 0);
}

function wantedContrast(
  of: {
    readonly cause: TileCause;
    readonly contrast: string;
    readonly direction: readonly number[];
    readonly needed: number;
  },
  { before, after }: ChosenTiles,
): WantedContrast {
  const known = varianceOf(before, of.direction);
  return {
    cause: of.cause,
    contrast: of.contrast,
    before: isUnknown(known) ? null : Math.sqrt(known),
    after: Math.sqrt(varianceOf(after, of.direction)),
    needed: of.needed,
  };
}

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
