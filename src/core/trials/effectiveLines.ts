/**
 * What lines on several tiles are worth as independent lines: lines of one tile share its luck.
 * Four tiles of five lines with an icc of 0.3 are worth 9.1.
 *
 * @param icc Share of the scatter of single lines that is scatter between tiles, 0–1.
 * @see SOURCES["kish-1965"]
 */
export function effectiveLines({
  tiles,
  linesPerTile,
  icc,
}: {
  readonly tiles: number;
  readonly linesPerTile: number;
  readonly icc: number;
}): number {
  return (tiles * linesPerTile) / (1 + (linesPerTile - 1) * icc);
}
