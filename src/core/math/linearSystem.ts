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
    forward.push((right[i]! - dot(row, forward)) / row[i]!);
  });
  const solution = new Array<number>(right.length).fill(0);
  for (let i = right.length - 1; i >= 0; i--) {
    let rest = forward[i]!;
    for (let j = i + 1; j < right.length; j++) rest -= (lower[j]![i] as number) * solution[j]!;
    solution[i] = rest / (lower[i]![i] as number);
  }
  return solution;
}

/** Sum of products over the shorter of two lists. */
export function dot(a: readonly number[], b: readonly number[]): number {
  const count = Math.min(a.length, b.length);
  let sum = 0;
  for (let i = 0; i < count; i++) sum += a[i]! * b[i]!;
  return sum;
}

function factored(matrix: Matrix): Matrix | null {
  const lower: number[][] = [];
  for (const [i, row] of matrix.entries()) {
    const made: number[] = [];
    for (let j = 0; j < i; j++) {
      const other = lower[j]!;
      made.push((row[j]! - dot(made, other.slice(0, j))) / other[j]!);
    }
    const left = row[i]! - dot(made, made);
    if (!(left > NO_PIVOT * row[i]!)) return null;
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
    const weight = weights[n]!;
    for (let i = 0; i < size; i++) {
      const target = sums[i]!;
      const factor = weight * row[i]!;
      for (let j = 0; j <= i; j++) target[j] = target[j]! + factor * row[j]!;
    }
  });
  for (let i = 0; i < size; i++)
    for (let j = 0; j < i; j++) sums[j]![i] = (sums[i] as number[])[j]!;
  return sums;
}

/** One column of a design: a number for each tile. */
export type DesignColumn = readonly number[];

/** A direction shorter than this share of its column counts as none: rounding, not information. */
const NOTHING = 1e-7;

/** A column with its mean taken out. */
export function centred(column: DesignColumn): DesignColumn {
  const mean = column.reduce((sum, value) => sum + value, 0) / Math.max(1, column.length);
  return column.map((value) => value - mean);
}

/** Perpendicular unit columns that span the same space as those given; as many as its rank. */
export function basisOf(columns: readonly DesignColumn[]): readonly DesignColumn[] {
  const basis: DesignColumn[] = [];
  for (const column of columns) {
    // Twice, since once leaves rounding behind.
    const rest = without(without(column, basis), basis);
    const length = Math.sqrt(dot(rest, rest));
    if (length > NOTHING * Math.max(1e-300, Math.sqrt(dot(column, column))))
      basis.push(rest.map((value) => value / length));
  }
  return basis;
}

/** What of a column is left after a space of perpendicular unit columns is taken out of it. */
function without(column: DesignColumn, basis: readonly DesignColumn[]): DesignColumn {
  const left = [...column];
  for (const unit of basis) {
    const along = dot(left, unit);
    for (let i = 0; i < left.length; i++) left[i] = left[i]! - along * unit[i]!;
  }
  return left;
}

/**
 * How much of two column spaces is shared: the squared cosine of the smallest angle between them,
 * from 0 (perpendicular) to 1 (a direction of one is a direction of the other). 0 when one is empty.
 */
export function sharedShare(one: readonly DesignColumn[], other: readonly DesignColumn[]): number {
  const [a, b] = [basisOf(one), basisOf(other)];
  if (a.length === 0 || b.length === 0) return 0;
  const cosines = a.map((unit) => b.map((against) => dot(unit, against)));
  const product = cosines.map((row) => cosines.map((against) => dot(row, against)));
  return Math.min(1, largestEigenvalue(product));
}

/** By power iteration from several starts; the matrix is small, symmetric and has no negative eigenvalue. */
function largestEigenvalue(matrix: readonly (readonly number[])[]): number {
  return Math.max(
    ...matrix.map((_, start) => {
      let vector: readonly number[] = matrix.map((__, i) => (i === start ? 1 : 0.01 * (i + 1)));
      let value = 0;
      for (let step = 0; step < 500; step++) {
        const next = matrix.map((row) => dot(row, vector));
        const length = Math.sqrt(dot(next, next));
        if (length === 0) return 0;
        const previous = value;
        value = length / Math.sqrt(dot(vector, vector));
        vector = next.map((each) => each / length);
        if (step > 5 && Math.abs(value - previous) < 1e-13) break;
      }
      return value;
    }),
  );
}
