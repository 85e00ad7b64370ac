/** What is known of the effects before any tile: standard deviation of ln spacing, so wide that it says nothing. */
const BEFOREHAND = 10;

/** Covariance of the effects of a design, brought up to date tile by tile. */
export interface Knowledge {
  /** Row by row. */
  readonly covariance: readonly (readonly number[])[];
}

/** Nothing known of so many effects. */
export function knowingNothing(effects: number): Knowledge {
  return {
    covariance: Array.from({ length: effects }, (_, i) =>
      Array.from({ length: effects }, (__, j) => (i === j ? BEFOREHAND ** 2 : 0)),
    ),
  };
}

/** The knowledge with one more tile of this design row, at this scatter of ln spacing. */
export function withTile(
  { covariance }: Knowledge,
  row: readonly number[],
  scatter: number,
): Knowledge {
  const along = covariance.map((each) => product(each, row));
  const weight = scatter ** 2 + product(along, row);
  return {
    covariance: covariance.map((each, i) =>
      each.map((value, j) => value - ((along[i] as number) * (along[j] as number)) / weight),
    ),
  };
}

/** Variance of a combination of effects. */
export function varianceOf({ covariance }: Knowledge, contrast: readonly number[]): number {
  const variance = product(
    covariance.map((row) => product(row, contrast)),
    contrast,
  );
  // Rounding can take a variance of nothing below it.
  return Math.max(0, variance);
}

/** A variance above this is as good as nothing known. */
export function isUnknown(variance: number): boolean {
  return variance > (BEFOREHAND / 4) ** 2;
}

function product(one: readonly number[], other: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < one.length; i++) sum += (one[i] as number) * (other[i] as number);
  return sum;
}
