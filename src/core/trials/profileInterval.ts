import { tQuantile } from "../math/distributions.ts";
import { solved } from "../math/linearSystem.ts";
import type { GroupRatio } from "./FiringStudy.ts";
import { type LabelTest, labelTest } from "./permutationTest.ts";
import { type FactorColumn, levelOf, spacingFactors } from "./spacingFactors.ts";
import {
  FACTORS_FROM,
  type FittedRows,
  fittedRows,
  type SpacingRows,
  spacingRows,
} from "./spacingRows.ts";
import {
  type CensoredFit,
  type CensoredRow,
  censoredFit,
  informationOf,
  scoresOf,
} from "./tobitFit.ts";

/** Where a coefficient lies, 95 times in 100. */
export interface CoefficientInterval {
  readonly value: number;
  /** Minus infinity where the likelihood sets no end. */
  readonly low: number;
  readonly high: number;
}

/** Steps out from the top after which a side has no end. */
const FARTHEST = 12;

/** Ends are found to this share of a step. */
const CLOSE = 0.002;

/**
 * 95 % interval of a coefficient by profile likelihood: all values at which the likelihood, the
 * rest fitted anew, stays within what Student's t allows for the measured tiles left over. For
 * measured tiles of equal variance this is the usual interval; bounds count for no freedom.
 *
 * @param index Of the coefficient.
 */
export function profileInterval(
  rows: readonly CensoredRow[],
  fit: CensoredFit,
  index: number,
): CoefficientInterval {
  const measured = rows.filter(({ isBound }) => !isBound).length;
  const freedom = Math.max(1, measured - fit.coefficients.length);
  const t = tQuantile(0.95, freedom);
  const allowed = ((freedom + fit.coefficients.length) / 2) * Math.log(1 + (t * t) / freedom);
  const value = fit.coefficients[index]!;
  const step = t * errorOf(rows, fit, index);
  const falls = (at: number) => {
    const other = censoredFit(rows, { index, value: at });
    return other === null ? Number.POSITIVE_INFINITY : fit.logLikelihood - other.logLikelihood;
  };
  const end = (sign: 1 | -1) =>
    value + sign * endOf((away) => falls(value + sign * away), step, allowed);
  return { value, low: end(-1), high: end(1) };
}

function errorOf(rows: readonly CensoredRow[], fit: CensoredFit, index: number): number {
  const unit = fit.coefficients.map((_, i) => (i === index ? 1 : 0));
  const column = solved(informationOf(rows, fit), unit);
  return column === null ? 1 : Math.sqrt(column[index]!);
}

/** The root of the fall grows about straight with the way, so that a false position finds it fast. */
function endOf(falls: (away: number) => number, step: number, allowed: number): number {
  const over = (away: number) => Math.sqrt(Math.max(0, falls(away))) - Math.sqrt(allowed);
  let [inside, below] = [0, -Math.sqrt(allowed)];
  let [outside, above] = [step, over(step)];
  while (above < 0) {
    if (outside > FARTHEST * step) return Number.POSITIVE_INFINITY;
    [inside, below] = [outside, above];
    outside *= 1.6;
    above = over(outside);
  }
  for (let round = 0; round < 30 && outside - inside > CLOSE * step; round++) {
    const straight = inside + ((outside - inside) * below) / (below - above);
    const at = Number.isFinite(above) ? straight : (inside + outside) / 2;
    const value = over(at);
    if (Math.abs(value) < CLOSE) return at;
    if (value < 0) [inside, below] = [at, value];
    else [outside, above] = [at, value];
  }
  return (inside + outside) / 2;
}

/**
 * Ratios of pitch between groups with two tiles and more, each against the most frequent group.
 * A ratio with its interval comes first; the test of labels stands beside it.
 */
export function groupRatios({ data, rows, fit }: FittedRows, seed: number): readonly GroupRatio[] {
  const { columns, carrying } = data.factors;
  return columns.flatMap((column, i) => {
    const tiles = countOf(data, column, column.level);
    const tilesAgainst = countOf(data, column, column.against);
    if (tiles < 2 || tilesAgainst < 2) return [];
    const { factor, level, against } = column;
    return [
      {
        factor,
        level,
        against,
        ratio: ratioOf(profileInterval(rows, fit, FACTORS_FROM + i)),
        tiles,
        tilesAgainst,
        isShared: carrying.includes(i),
        test: factor === "firing" ? null : testOf(data, column, seed + i),
      },
    ];
  });
}

function ratioOf({ value, low, high }: CoefficientInterval): CoefficientInterval {
  return { value: Math.exp(value), low: Math.exp(low), high: Math.exp(high) };
}

function countOf({ tiles }: SpacingRows, { factor }: FactorColumn, level: string): number {
  return tiles.filter((tile) => levelOf(tile, factor) === level).length;
}

/** Deals the labels of two groups over what is left once coats and all other groups are fitted. */
function testOf(
  { tiles }: SpacingRows,
  { factor, level, against }: FactorColumn,
  seed: number,
): LabelTest | null {
  const pair = tiles.filter((tile) => [level, against].includes(levelOf(tile, factor) ?? ""));
  const data = spacingRows(pair, (own, logCoats) => {
    const all = spacingFactors(own, logCoats);
    return { ...all, columns: all.columns.filter((column) => column.factor !== factor) };
  });
  const fitted = fittedRows(data);
  if (fitted === null) return null;
  return labelTest(
    {
      scores: scoresOf(fitted.rows, fitted.fit),
      labels: pair.map((tile) => levelOf(tile, factor) === level),
      firings: pair.map(({ firing }) => firing),
      columns: [data.coats.logMm, ...data.factors.columns.map(({ values }) => values)],
    },
    seed,
  );
}
