import { logNormalTail, normalHazard } from "../math/distributions.ts";
import { dot, type Matrix, normalMatrix, solved } from "../math/linearSystem.ts";

/** One tile: what was found, in logarithms, and what explains it. */
export interface CensoredRow {
  /** Logarithm of what was measured, or of what it is more than. */
  readonly value: number;
  /** True when only a lower bound is known. */
  readonly isBound: boolean;
  /** Variance of `value` that is known beforehand: counting, reading of the coat. */
  readonly variance: number;
  readonly columns: readonly number[];
}

/** Most likely coefficients and scatter between tiles. */
export interface CensoredFit {
  readonly coefficients: readonly number[];
  /** One standard deviation between tiles beyond the known variance, in logarithms. */
  readonly tileSigma: number;
  readonly logLikelihood: number;
}

/** A coefficient that is held at a value. */
interface Held {
  readonly index: number;
  readonly value: number;
}

/** Scatter between tiles is sought between these, in logarithms of the pitch. */
const SIGMAS = [3, 0.6, 0.15, 0.04, 0.005] as const;

/** Scatter is found to this share of itself. */
const BALANCED = 5e-4;

/**
 * Most likely coefficients of log value = columns · coefficients + scatter, where tiles scatter
 * normally with one unknown sigma on top of each row's known variance, and bounds count by the
 * share of the distribution above them (Tobin's model).
 *
 * @returns null when the rows do not fix the coefficients.
 * @see SOURCES["tobin-1958"]
 */
export function censoredFit(
  rows: readonly CensoredRow[],
  held: Held | null = null,
): CensoredFit | null {
  const free = held === null ? rows : rows.map((row) => without(row, held));
  let start: readonly number[] | null = startOf(free);
  if (start === null) return null;
  const at = (logSigma: number): AtSigma | null => {
    const fit = atSigma(free, Math.exp(logSigma), start as readonly number[]);
    if (fit !== null) start = fit.coefficients;
    return fit;
  };
  const best = balanced(at);
  return best === null || held === null ? best : { ...best, coefficients: withHeld(best, held) };
}

/** A fit for a given scatter, and how much too small that scatter is. */
interface AtSigma extends CensoredFit {
  /** Half the logarithm of scatter found over scatter taken; 0 at the most likely one. */
  readonly tooSmall: number;
}

/**
 * The scatter at which scatter found is scatter taken, by false position; without known variances
 * the difference is straight in the logarithm, so that few steps are enough.
 */
function balanced(at: (logSigma: number) => AtSigma | null): AtSigma | null {
  const sides = bracket(at);
  if (sides === null || "only" in sides) return sides?.only ?? null;
  const { atLow, atHigh } = sides;
  let [low, high] = [Math.log(atLow.tileSigma), Math.log(atHigh.tileSigma)];
  let [below, above] = [atLow.tooSmall, atHigh.tooSmall];
  let best = atHigh;
  for (let round = 0; round < 60 && Math.abs(best.tooSmall) > BALANCED; round++) {
    const middle = at(low + ((high - low) * below) / (below - above));
    if (middle === null) return null;
    // The end that stays counts half, so that it does not stay for ever.
    if (middle.tooSmall > 0)
      [low, below, above] = [Math.log(middle.tileSigma), middle.tooSmall, above / 2];
    else [high, above, below] = [Math.log(middle.tileSigma), middle.tooSmall, below / 2];
    best = middle;
  }
  return best;
}

/** Steps down from too much scatter to too little, each fit starting from the one before. */
function bracket(
  at: (logSigma: number) => AtSigma | null,
): { readonly atLow: AtSigma; readonly atHigh: AtSigma } | { readonly only: AtSigma } | null {
  let atHigh = at(Math.log(SIGMAS[0]));
  for (const sigma of SIGMAS.slice(1)) {
    const next = at(Math.log(sigma));
    if (atHigh === null || next === null) return null;
    if (next.tooSmall > 0) return { atLow: next, atHigh };
    atHigh = next;
  }
  return atHigh === null ? null : { only: atHigh };
}

function without(row: CensoredRow, { index, value }: Held): CensoredRow {
  return {
    ...row,
    value: row.value - value * row.columns[index]!,
    columns: row.columns.toSpliced(index, 1),
  };
}

function withHeld({ coefficients }: CensoredFit, { index, value }: Held): readonly number[] {
  return coefficients.toSpliced(index, 0, value);
}

function startOf(rows: readonly CensoredRow[]): readonly number[] | null {
  const columns = rows.map((row) => row.columns);
  const ones = rows.map(() => 1);
  const values = rows.map(({ value }) => value);
  return solved(normalMatrix(columns, ones), sumsOf(columns, values));
}

function sumsOf(
  columns: readonly (readonly number[])[],
  factors: readonly number[],
): readonly number[] {
  return (columns[0] ?? []).map((_, i) =>
    columns.reduce((sum, row, n) => sum + row[i]! * factors[n]!, 0),
  );
}

/** Likelihood of a row with its first and second derivative by the mean. */
interface Slopes {
  readonly log: number;
  readonly first: number;
  /** Minus the second; above 0. */
  readonly bend: number;
  /** Scatter between tiles that the row shows and that was taken, each over the row's variance. */
  readonly found: number;
  readonly taken: number;
}

function slopesOf(row: CensoredRow, sigma: number, mean: number): Slopes {
  const total = Math.sqrt(sigma * sigma + row.variance);
  const z = (row.value - mean) / total;
  const share = (sigma / total) ** 2;
  if (!row.isBound)
    return {
      found: share * z * z,
      taken: share,
      log: (-z * z) / 2 - Math.log(total) - Math.log(2 * Math.PI) / 2,
      first: z / total,
      bend: 1 / (total * total),
    };
  const hazard = normalHazard(z);
  return {
    found: share * Math.max(0, hazard * z),
    taken: share * Math.max(0, -hazard * z),
    log: logNormalTail(z),
    first: hazard / total,
    bend: Math.max(1e-12, (hazard * (hazard - z)) / (total * total)),
  };
}

/** Newton's steps, halved where they overshoot; the likelihood has one top for a given sigma. */
function atSigma(
  rows: readonly CensoredRow[],
  sigma: number,
  start: readonly number[],
): AtSigma | null {
  const slopesAt = (coefficients: readonly number[]) =>
    rows.map((row) => slopesOf(row, sigma, dot(row.columns, coefficients)));
  let coefficients = start;
  let slopes: readonly Slopes[] = slopesAt(coefficients);
  for (let step = 0; step < 60; step++) {
    const move = newtonMove(rows, slopes);
    if (move === null) return null;
    const next = betterPoint(coefficients, move, { slopesAt, now: totalOf(slopes) });
    if (next === null) break;
    ({ coefficients, slopes } = next);
    if (next.gain < 1e-9) break;
  }
  const tooSmall = Math.log(totalOf(slopes, "found") / totalOf(slopes, "taken")) / 2;
  return { coefficients, tileSigma: sigma, logLikelihood: totalOf(slopes), tooSmall };
}

function newtonMove(
  rows: readonly CensoredRow[],
  slopes: readonly Slopes[],
): readonly number[] | null {
  const columns = rows.map((row) => row.columns);
  const matrix = normalMatrix(
    columns,
    slopes.map(({ bend }) => bend),
  );
  return solved(
    matrix,
    sumsOf(
      columns,
      slopes.map(({ first }) => first),
    ),
  );
}

function betterPoint(
  from: readonly number[],
  move: readonly number[],
  {
    slopesAt,
    now,
  }: { readonly slopesAt: (point: readonly number[]) => readonly Slopes[]; readonly now: number },
) {
  for (let share = 1; share > 1e-6; share /= 2) {
    const coefficients = from.map((value, i) => value + share * move[i]!);
    const slopes = slopesAt(coefficients);
    const gain = totalOf(slopes) - now;
    if (gain >= 0) return { coefficients, slopes, gain };
  }
  return null;
}

function totalOf(slopes: readonly Slopes[], of: keyof Slopes = "log"): number {
  return slopes.reduce((sum, each) => sum + each[of], 0);
}

/** How a fit bends at its top: the inverse is the covariance of the coefficients. */
export function informationOf(rows: readonly CensoredRow[], fit: CensoredFit): Matrix {
  const bends = rows.map(
    (row) => slopesOf(row, fit.tileSigma, dot(row.columns, fit.coefficients)).bend,
  );
  return normalMatrix(
    rows.map(({ columns }) => columns),
    bends,
  );
}

/**
 * How far each row lies off the fit, in sigmas; for a bound, how far it is expected to lie off.
 * They sum to about 0 and are what labels are dealt over in a test of labels.
 */
export function scoresOf(rows: readonly CensoredRow[], fit: CensoredFit): readonly number[] {
  return rows.map((row) => {
    const total = Math.sqrt(fit.tileSigma ** 2 + row.variance);
    return slopesOf(row, fit.tileSigma, dot(row.columns, fit.coefficients)).first * total;
  });
}
