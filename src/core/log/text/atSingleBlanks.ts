/**
 * The cells of a row in a table that is cut at wide blanks, of which this row has too few: cut at single
 * blanks from the right, so that a date and its time stay one cell. The cells themselves when that
 * does not make as many as the table has columns.
 */
export function atSingleBlanks(
  text: string,
  cells: readonly string[],
  width: number,
): readonly string[] {
  if (cells.length >= width || width < 2) return cells;
  const words = text.trim().split(/\s+/);
  if (words.length < width) return cells;
  const first = words.length - width + 1;
  return [words.slice(0, first).join(" "), ...words.slice(first)];
}
