import { tQuantile } from "../math/distributions.ts";
import { basisOf, type DesignColumn, dot, normalMatrix, solved } from "../math/linearSystem.ts";
import type { MeasuredSpacing } from "../record/FiringRecord.ts";
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
  const rows = (all[0] ?? []).map((_, n) => all.map((column) => column[n]!));
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

/** A coat as read: its logarithm and the standard error of that. */
export interface ReadCoat {
  readonly logMm: number;
  readonly sigma: number;
}

/** Coats as they are expected to be, given how they were read. */
export interface CalibratedCoats {
  /** Logarithm of the expected coat, one for each. */
  readonly logMm: readonly number[];
  /** Variance left in each. */
  readonly variances: readonly number[];
  /**
   * Share of the scatter of read coats that is scatter of coats, the mean over tiles: an exponent
   * fitted to coats as read comes out too small by about this factor. 0 when all may be error.
   */
  readonly reliability: number;
}

/**
 * Takes reading error out of coats, so that it does not flatten the exponent (regression
 * calibration): each coat is drawn towards the mean of its group by the share of the scatter that
 * is error. Needs the reading error; right to first order whatever the coats' distribution, and
 * exact for normal ones.
 *
 * @param groups Columns of the groups, one number for each coat; the mean is taken out besides.
 * @see SOURCES["fuller-1987"]
 */
export function calibratedCoats(
  coats: readonly ReadCoat[],
  groups: readonly DesignColumn[],
): CalibratedCoats {
  const read = coats.map(({ logMm }) => logMm);
  const basis = basisOf([coats.map(() => 1), ...groups]);
  const means = read.map((_, i) =>
    basis.reduce((sum, unit) => sum + dot(unit, read) * unit[i]!, 0),
  );
  const freedom = Math.max(1, coats.length - basis.length);
  const scatter = read.reduce((sum, log, i) => sum + (log - means[i]!) ** 2, 0);
  const error = coats.reduce((sum, { sigma }) => sum + sigma ** 2, 0) / coats.length;
  const variance = Math.max(0, scatter / freedom - error);
  const shares = coats.map(({ sigma }) =>
    variance + sigma ** 2 === 0 ? 0 : variance / (variance + sigma ** 2),
  );
  return {
    logMm: read.map((log, i) => means[i]! + shares[i]! * (log - means[i]!)),
    variances: shares.map((share) => variance * (1 - share)),
    reliability: shares.reduce((sum, share) => sum + share, 0) / coats.length,
  };
}

/** Normal sigmas that 95 of 100 lie within. */
const SIGMAS_95 = 1.96;

/** How well the spacings of some tiles were counted. */
export interface CountingError {
  /** Variance of ln pitch of each tile from counting, in their order; 0 where it is not known. */
  readonly variances: readonly number[];
  /** Tiles with a spacing and no range: their error is counted as scatter between tiles. */
  readonly unknown: number;
  /** Variance of ln spacing of one line, over the tiles counted along lines; null without any. */
  readonly perLine: number | null;
}

/**
 * Counting error of measured spacings.
 * Lines of one tile are too few to give its own weight, so that how much lines scatter, for a given
 * number of cracks crossed, is pooled over all tiles with two lines and more; without any such tile
 * cracks count as fallen at random, which is the widest.
 */
export function countingError(spacings: readonly MeasuredSpacing[]): CountingError {
  const counted = spacings.filter(({ from }) => from === "lines");
  const scatter = scatterOverCount(counted);
  const lines = counted.reduce((sum, each) => sum + each.lines, 0);
  const crossings = counted.reduce((sum, each) => sum + each.crossings, 0);
  const variances = spacings.map((spacing) =>
    spacing.from === "lines" ? scatter / spacing.crossings : rangeVariance(spacing),
  );
  return {
    variances: variances.map((variance) => variance ?? 0),
    unknown: variances.filter((variance) => variance === null).length,
    perLine: counted.length === 0 ? null : (scatter * lines) / crossings,
  };
}

function rangeVariance({ lowMm, highMm }: MeasuredSpacing): number | null {
  if (lowMm === null || highMm === null) return null;
  return (Math.log(highMm / lowMm) / (2 * SIGMAS_95)) ** 2;
}

/** Variance of a count over the count: 1 for cracks at random, a third for even cells. */
function scatterOverCount(counted: readonly MeasuredSpacing[]): number {
  let [weighted, freedoms] = [0, 0];
  for (const { lowMm, highMm, lines, crossings, directions } of counted) {
    const freedom = lines - Math.max(1, directions.length);
    if (freedom < 1 || lowMm === null || highMm === null) continue;
    const error = Math.log(highMm / lowMm) / (2 * tQuantile(0.95, freedom));
    weighted += freedom * error ** 2 * crossings;
    freedoms += freedom;
  }
  return freedoms === 0 ? 1 : weighted / freedoms;
}
