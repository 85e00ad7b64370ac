import type { Problem } from "../problem.ts";
import type { MeasuredSpacing } from "../record/FiringRecord.ts";
import {
  type CalibratedCoats,
  type CountingError,
  calibratedCoats,
  countingError,
  levelOf,
  type SpacingFactors,
  spacingFactors,
} from "./spacingFactors.ts";
import type { Tile } from "./Tile.ts";
import { type CensoredFit, type CensoredRow, censoredFit } from "./tobitFit.ts";

/** Tiles as rows of the model of spacing, before the exponent is known. */
export interface SpacingRows {
  readonly tiles: readonly Tile[];
  readonly factors: SpacingFactors;
  readonly coats: CalibratedCoats;
  readonly counting: CountingError;
  /** Rows with columns 1, ln coat, factors; with coats as read, or with their error taken out. */
  readonly asRead: readonly CensoredRow[];
  /** What an exponent makes of the error left in the coats goes into the variance. */
  readonly calibrated: (exponent: number) => readonly CensoredRow[];
}

/** Place of the exponent among the coefficients. */
export const EXPONENT_AT = 1;

/** Place of the first factor among the coefficients. */
export const FACTORS_FROM = 2;

/** Rows of tiles that were measured or had no crack; tiles without either are a broken promise. */
export function spacingRows(
  tiles: readonly Tile[],
  factorsOf: (
    tiles: readonly Tile[],
    logCoats: readonly number[],
  ) => SpacingFactors = spacingFactors,
): SpacingRows {
  const read = tiles.map(({ coat }) => ({
    logMm: Math.log(coat.firedMm),
    sigma: coat.sigmaMm / coat.firedMm,
  }));
  const asRead = read.map(({ logMm }) => logMm);
  const factors = factorsOf(tiles, asRead);
  const columns = factors.columns.map(({ values }) => values);
  const coats = calibratedCoats(read, columns);
  const measured = tiles.flatMap(({ spacing }) => (spacing.kind === "measured" ? [spacing] : []));
  const counting = countingError(measured);
  const counted = new Map(measured.map((each, i) => [each, counting.variances[i]!]));
  const rowsOf = (logCoats: readonly number[], extra: (i: number) => number) =>
    tiles.map((tile, i): CensoredRow => {
      const { value, isBound, variance } = foundOn(tile, counted);
      return {
        value,
        isBound,
        variance: variance + extra(i),
        columns: [1, logCoats[i]!, ...columns.map((column) => column[i]!)],
      };
    });
  return {
    tiles,
    factors,
    coats,
    counting,
    asRead: rowsOf(asRead, () => 0),
    calibrated: (exponent) => rowsOf(coats.logMm, (i) => exponent ** 2 * coats.variances[i]!),
  };
}

function foundOn(
  { spacing, piece }: Tile,
  counted: ReadonlyMap<MeasuredSpacing, number>,
): Pick<CensoredRow, "value" | "isBound" | "variance"> {
  if (spacing.kind === "measured")
    return {
      value: Math.log(spacing.pitchMm),
      isBound: false,
      variance: counted.get(spacing) as number,
    };
  if (spacing.kind === "uncracked")
    return { value: Math.log(spacing.atLeastMm), isBound: true, variance: 0 };
  throw new RangeError(`spacingRows: ${piece} was not measured`);
}

/** Measured tiles that have to be left over once every coefficient is fitted. */
const FREEDOM = 2;

/** Less of the scatter of coats than this is coat and not reading error: nothing to be told. */
const LEAST_RELIABILITY = 0.4;

/** Tiles for an exponent that tells 1/2 from 1: a bare minimum. @see SOURCES["trial-planning"] */
const BARE_MINIMUM = 8;

/** What keeps the spacing of these tiles from being fitted against their coats; empty when nothing. */
export function spacingProblems(tiles: readonly Tile[]): readonly Problem[] {
  const measured = tiles.filter(({ spacing }) => spacing.kind === "measured");
  const glaze = tiles[0]?.glaze ?? "no glaze";
  const where = `tiles of ${glaze}`;
  const read = tiles.map(({ coat }) => ({
    logMm: Math.log(coat.firedMm),
    sigma: coat.sigmaMm / coat.firedMm,
  }));
  const { columns } = spacingFactors(
    tiles,
    read.map(({ logMm }) => logMm),
  );
  const needed = 2 + columns.length + FREEDOM;
  if (measured.length < needed)
    return [
      {
        code: "trials/too-few-tiles",
        what: `${counted(measured.length, "measured tile")} for the power of the coat${columns.length === 0 ? "" : ` and ${counted(columns.length, "difference")} between groups`}`,
        where,
        expected: `${needed} measured tiles at least; ${Math.max(needed, BARE_MINIMUM)} for an answer worth having`,
        fix:
          columns.length === 0
            ? "make more tiles"
            : "make more tiles, or compare fewer groups at once",
      },
    ];
  const coats = calibratedCoats(
    read,
    columns.map(({ values }) => values),
  );
  if (coats.reliability < LEAST_RELIABILITY)
    return [
      {
        code: "trials/coats-alike",
        what: "the coats differ hardly more than they can be misread",
        where,
        expected: "coats that differ by a factor of two and more, in every group",
        fix: "make tiles with coats of 0.3 to 1.2 mm, or measure the coats better and note coatError",
      },
    ];
  return columns.flatMap((column) => allUncracked(tiles, column.factor, column));
}

function counted(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? "" : "s"}`;
}

/** A group in which no tile cracked has no spacing, only a bound: it cannot be put beside others. */
function allUncracked(
  tiles: readonly Tile[],
  factor: Parameters<typeof levelOf>[1],
  { level, against }: { readonly level: string; readonly against: string },
): readonly Problem[] {
  return [level, against].flatMap((each) => {
    const own = tiles.filter((tile) => levelOf(tile, factor) === each);
    if (own.some(({ spacing }) => spacing.kind === "measured")) return [];
    return [
      {
        code: "trials/group-uncracked" as const,
        what: `no tile with ${factor} ${each} cracked (${own.length} of them)`,
        where: `tiles of ${own[0]?.glaze ?? "no glaze"}`,
        expected: "a cracked tile in every group whose spacing is compared",
        fix: "compare how many cracked, or leave this group out of the spacing",
      },
    ];
  });
}

/** A fit of rows, with what it was fitted to. */
export interface FittedRows {
  readonly data: SpacingRows;
  readonly rows: readonly CensoredRow[];
  readonly fit: CensoredFit;
}

/** Fits twice, since the error left in the coats weighs by the exponent; null when columns repeat. */
export function fittedRows(data: SpacingRows): FittedRows | null {
  const first = censoredFit(data.calibrated(0));
  if (first === null) return null;
  const rows = data.calibrated(first.coefficients[EXPONENT_AT]!);
  const fit = censoredFit(rows);
  return fit === null ? null : { data, rows, fit };
}
