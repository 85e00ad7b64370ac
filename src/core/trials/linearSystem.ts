/** A square matrix, row by row. */
export type Matrix = readonly (readonly number[])[];

/** Pivots below this share of their diagonal count as none. */
const NO_PIVOT = 1e-10;

/**
 * Solution of a symmetric positive definite system, by Cholesky's factors.
 *
 * @returns null when the matrix is not positive definite: some column says nothing of its own.
 */
export function solved(matrix: Matrix, right: readonly number[]): readonly number[] | null {
  const lower = factored(matrix);
  if (lower === null) return null;
  const forward: number[] = [];
  lower.forEach((row, i) => {
    forward.push(((right[i] as number) - dot(row, forward)) / (row[i] as number));
  });
  const solution = new Array<number>(right.length).fill(0);
  for (let i = right.length - 1; i >= 0; i--) {
    let rest = forward[i] as number;
    for (let j = i + 1; j < right.length; j++)
      rest -= ((lower[j] as readonly number[])[i] as number) * (solution[j] as number);
    solution[i] = rest / ((lower[i] as readonly number[])[i] as number);
  }
  return solution;
}

/** Sum of products over the shorter of two lists. */
export function dot(a: readonly number[], b: readonly number[]): number {
  const count = Math.min(a.length, b.length);
  let sum = 0;
  for (let i = 0; i < count; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

function factored(matrix: Matrix): Matrix | null {
  const lower: number[][] = [];
  for (const [i, row] of matrix.entries()) {
    const made: number[] = [];
    for (let j = 0; j < i; j++) {
      const other = lower[j] as number[];
      made.push(((row[j] as number) - dot(made, other.slice(0, j))) / (other[j] as number));
    }
    const left = (row[i] as number) - dot(made, made);
    if (!(left > NO_PIVOT * (row[i] as number))) return null;
    lower.push([...made, Math.sqrt(left)]);
  }
  return lower;
}

/** Matrix of weighted sums of products of the columns of some rows. */
export function normalMatrix(
  rows: readonly (readonly number[])[],
  weights: readonly number[],
): Matrix {
  const size = rows[0]?.length ?? 0;
  const sums = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  rows.forEach((row, n) => {
    const weight = weights[n] as number;
    for (let i = 0; i < size; i++) {
      const target = sums[i] as number[];
      const factor = weight * (row[i] as number);
      for (let j = 0; j <= i; j++) target[j] = (target[j] as number) + factor * (row[j] as number);
    }
  });
  for (let i = 0; i < size; i++)
    for (let j = 0; j < i; j++) (sums[j] as number[])[i] = (sums[i] as number[])[j] as number;
  return sums;
}
