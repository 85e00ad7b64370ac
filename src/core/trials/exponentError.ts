/** Chance of 8 in 10 to see a difference at 5 in 100, two-sided: so many standard errors. */
const ERRORS_TO_SEE = 1.959964 + 0.841621;

/** Standard error that tells an exponent of 1/2 from 1 in eight of ten studies. */
export const ERROR_TO_TELL = 0.5 / ERRORS_TO_SEE;

/**
 * Standard error of the exponent that a set of coats will give: scatter between tiles over the
 * spread of ln coat. 0.14 for three tiles each of 0.3, 0.48, 0.76 and 1.2 mm and a scatter of 0.25,
 * 0.10 for six each.
 *
 * @param coatsMm One for each tile; at least two that differ.
 * @see SOURCES["trial-planning"]
 */
export function exponentError(coatsMm: readonly number[], tileSigma: number): number {
  const logs = coatsMm.map(Math.log);
  const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
  const squares = logs.reduce((sum, log) => sum + (log - mean) ** 2, 0);
  if (!(squares > 0)) throw new RangeError("exponentError: coats are alike");
  return tileSigma / Math.sqrt(squares);
}
