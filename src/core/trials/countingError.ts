import { tQuantile } from "../crackle/tQuantile.ts";
import type { MeasuredSpacing } from "../firing/TrialMeasurements.ts";

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
