import { scoresOf } from "./censoredModel.ts";
import { type FittedRows, fittedRows } from "./fittedRows.ts";
import { type LabelTest, labelTest } from "./labelTest.ts";
import { type CoefficientInterval, profileInterval } from "./profileInterval.ts";
import type { GroupRatio } from "./SpacingFit.ts";
import { type FactorColumn, levelOf, spacingFactors } from "./spacingFactors.ts";
import { FACTORS_FROM, type SpacingRows, spacingRows } from "./spacingRows.ts";

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
