import type { Table } from "../text/table.ts";

/** Share of the rows that blank lines may be and still stand for readings; more are mere spacing. Own choice. */
const MOST_BLANK = 0.2;

/**
 * Number of blank lines between the first row and each row of a log with one column of numbers, where
 * a reading that is lacking leaves nothing on its line; null when there are none, or so many that
 * they only space the rows.
 */
export function blankLinesBefore({
  columns,
  rowCount,
  lineOf,
  rejected,
}: Table): Int32Array | null {
  const measured = columns.filter(({ kind, numbers }) => kind === "number" && !isEmpty(numbers));
  if (measured.length !== 1 || rowCount < 2 || rejected.unlisted.size > 0) return null;
  // A note may stand behind the reading that is lacking: `,lid`.
  const others = rejected.listed.filter(({ text }) => !/^\s*[,;\t|]/.test(text));
  const used = new Set(others.map(({ line }) => line));
  const before = new Int32Array(rowCount);
  for (let row = 1; row < rowCount; row++) {
    let blank = 0;
    for (let line = lineOf(row - 1) + 1; line < lineOf(row); line++) if (!used.has(line)) blank++;
    before[row] = (before[row - 1] as number) + blank;
  }
  const all = before[rowCount - 1] as number;
  return all > 0 && all <= MOST_BLANK * rowCount ? before : null;
}

function isEmpty(numbers: Float64Array): boolean {
  return numbers.every(Number.isNaN);
}
