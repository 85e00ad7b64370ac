import { basisOf } from "./columnSpace.ts";
import { dot, normalMatrix, solved } from "./linearSystem.ts";
import type { Tile } from "./Tile.ts";

/** What tiles are grouped by beside their coat. */
export type FactorName = "glaze" | "clay" | "sides" | "shape" | "firing";

/** A level of a factor against the factor's most frequent level. */
export interface FactorColumn {
  readonly factor: FactorName;
  readonly level: string;
  readonly against: string;
  /** 1 for tiles of this level, 0 for others. */
  readonly values: readonly number[];
}

/** Columns of all factors that differ between some tiles. */
export interface SpacingFactors {
  readonly columns: readonly FactorColumn[];
  /** Levels that changed together with others and have no column of their own. */
  readonly untold: readonly Pick<FactorColumn, "factor" | "level" | "against">[];
  /** Indices into `columns` of those that carry the difference of an untold level as well. */
  readonly carrying: readonly number[];
}

/** In this order: what stands later gives way when two changed together. */
const LEVEL_OF: readonly (readonly [FactorName, (tile: Tile) => string | null])[] = [
  ["glaze", ({ glaze }) => glaze],
  ["clay", ({ clay }) => clay],
  ["sides", ({ glazedSides }) => glazedSides],
  ["shape", ({ shape }) => shape],
  ["firing", ({ firing }) => firing],
];

/** The level of a tile; null when it is not noted. */
export function levelOf(tile: Tile, factor: FactorName): string | null {
  const entry = LEVEL_OF.find(([name]) => name === factor);
  return entry === undefined ? null : entry[1](tile);
}

/**
 * Columns for glaze, clay, sides, shape and firing where the tiles differ in them, additive in the
 * logarithm. Tiles of which the shape is not noted count as the most frequent shape.
 */
export function spacingFactors(
  tiles: readonly Tile[],
  logCoats: readonly number[],
): SpacingFactors {
  const columns: FactorColumn[] = [];
  const untold: FactorColumn[] = [];
  const fixed = [tiles.map(() => 1), logCoats];
  for (const [factor, of] of LEVEL_OF)
    for (const column of columnsOf(factor, tiles.map(of))) {
      const before = [...fixed, ...columns.map(({ values }) => values)];
      const rank = basisOf(before).length;
      (basisOf([...before, column.values]).length > rank ? columns : untold).push(column);
    }
  return { columns, untold, carrying: carryingOf(columns, untold, fixed) };
}

function columnsOf(
  factor: FactorName,
  levels: readonly (string | null)[],
): readonly FactorColumn[] {
  const counts = new Map<string, number>();
  for (const level of levels) if (level !== null) counts.set(level, (counts.get(level) ?? 0) + 1);
  const sorted = [...counts].toSorted(([, a], [, b]) => b - a).map(([level]) => level);
  const [against = "", ...others] = sorted;
  return others.map((level) => ({
    factor,
    level,
    against,
    values: levels.map((each) => (each === level ? 1 : 0)),
  }));
}

function carryingOf(
  columns: readonly FactorColumn[],
  untold: readonly FactorColumn[],
  fixed: readonly (readonly number[])[],
): readonly number[] {
  const all = [...fixed, ...columns.map(({ values }) => values)];
  const rows = (all[0] ?? []).map((_, n) => all.map((column) => column[n] as number));
  const matrix = normalMatrix(
    rows,
    rows.map(() => 1),
  );
  const shares = untold.map(({ values }) =>
    solved(
      matrix,
      all.map((column) => dot(column, values)),
    ),
  );
  return columns.flatMap((_, i) =>
    shares.some((share) => Math.abs(share?.[fixed.length + i] ?? 0) > 1e-6) ? [i] : [],
  );
}
