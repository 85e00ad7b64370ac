import { cellKind } from "./cellKind.ts";

/** Where a column of a table in fixed width stands: first character and the one behind its last. */
export interface FixedColumn {
  readonly from: number;
  readonly to: number;
}

/** Rows looked at in each of two places: from the beginning, and from the middle of the file. */
const WINDOW = 400;
/** Share of rows that may have a character where the others are blank between columns. */
const FEW = 0.01;
/** Share of rows whose cells must each stand under one column. */
const MOST = 0.95;

/**
 * The columns of a table that is written in fixed width: places at which all its rows are blank, at
 * least two characters wide, stand between them. Null when rows are not written so.
 * @param records All lines of the file, with what stands above and below the table.
 */
export function fixedColumns(records: readonly string[]): readonly FixedColumn[] | null {
  const middle = Math.max(WINDOW, Math.floor(records.length / 2));
  const looked = [...records.slice(0, WINDOW), ...records.slice(middle, middle + WINDOW)];
  const rows = looked.filter(isRow);
  if (rows.length < 2) return null;
  // A column may be filled in very few rows, as a date that is only written where it changes.
  for (const few of [0, FEW]) {
    const columns = columnsOf(rows, few);
    const fitting = rows.filter((row) => cellsUnder(row, columns).isFitting);
    if (columns.length > 1 && fitting.length >= MOST * rows.length) return columns;
  }
  return null;
}

/** The cells of a row by the columns they stand under; a line that runs across columns is left whole. */
export function fixedCells(record: string, columns: readonly FixedColumn[]): readonly string[] {
  const { cells, isFitting } = cellsUnder(record, columns);
  return isFitting ? cells : wideTexts(record).map(({ text }) => text);
}

interface Text extends FixedColumn {
  readonly text: string;
}

/** What stands between runs of two or more blanks. */
function wideTexts(record: string): readonly Text[] {
  return Array.from(record.matchAll(/[^ ]+(?: [^ ]+)*/g), (match) => ({
    text: match[0],
    from: match.index,
    to: match.index + match[0].length,
  }));
}

/**
 * A row of a table has several cells, at least half of them numbers, times or words for a missing
 * one. Where it begins as a row does, single blanks stand between its cells as well.
 */
function isRow(record: string): boolean {
  const texts = wideTexts(record).map(({ text }) => text);
  if (texts.length > 1) return 2 * texts.filter(isTyped).length >= texts.length;
  const words = record.trim().split(/ +/);
  return /^"?\d/.test(words[0] ?? "") && words.filter(isTyped).length > 1;
}

function isTyped(text: string): boolean {
  return cellKind(text, ".") !== "text" || cellKind(text, ",") !== "text";
}

function columnsOf(rows: readonly string[], few: number): readonly FixedColumn[] {
  const width = rows.reduce((most, row) => Math.max(most, row.length), 0);
  const filled = new Int32Array(width);
  for (const row of rows)
    for (let at = 0; at < row.length; at++) if (row[at] !== " ") filled[at] = (filled[at] ?? 0) + 1;
  const most = Math.floor(few * rows.length);
  const columns: FixedColumn[] = [];
  for (let at = 0; at < width; at++) {
    if ((filled[at] as number) <= most) continue;
    const last = columns.at(-1);
    // One blank at the same place in all rows stands inside cells, as between a date and a time.
    if (last !== undefined && at - last.to <= 1)
      columns[columns.length - 1] = { ...last, to: at + 1 };
    else columns.push({ from: at, to: at + 1 });
  }
  return columns;
}

function cellsUnder(
  record: string,
  columns: readonly FixedColumn[],
): { readonly cells: readonly string[]; readonly isFitting: boolean } {
  const cells = columns.map(() => "");
  let isFitting = true;
  for (const text of wideTexts(record)) {
    const under = columns.filter(({ from, to }) => text.from < to && text.to > from);
    const at = columns.indexOf(under[0] ?? nearest(columns, text));
    if (under.length > 1 || cells[at] !== "") isFitting = false;
    cells[at] = text.text;
  }
  return { cells, isFitting };
}

function nearest(columns: readonly FixedColumn[], text: Text): FixedColumn {
  const off = (column: FixedColumn) =>
    Math.min(Math.abs(column.from - text.from), Math.abs(column.to - text.to));
  return columns.reduce((a, b) => (off(b) < off(a) ? b : a));
}
