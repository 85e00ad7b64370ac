import type { MeasuredSpacing } from "../firing/TrialMeasurements.ts";
import { type CalibratedCoats, calibratedCoats } from "./calibratedCoats.ts";
import type { CensoredRow } from "./censoredModel.ts";
import { type CountingError, countingError } from "./countingError.ts";
import { type SpacingFactors, spacingFactors } from "./spacingFactors.ts";
import type { Tile } from "./Tile.ts";

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
  const counted = new Map(measured.map((each, i) => [each, counting.variances[i] as number]));
  const rowsOf = (logCoats: readonly number[], extra: (i: number) => number) =>
    tiles.map((tile, i): CensoredRow => {
      const { value, isBound, variance } = foundOn(tile, counted);
      return {
        value,
        isBound,
        variance: variance + extra(i),
        columns: [1, logCoats[i] as number, ...columns.map((column) => column[i] as number)],
      };
    });
  return {
    tiles,
    factors,
    coats,
    counting,
    asRead: rowsOf(asRead, () => 0),
    calibrated: (exponent) =>
      rowsOf(coats.logMm, (i) => exponent ** 2 * (coats.variances[i] as number)),
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
