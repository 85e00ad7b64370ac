import type { SplitQuoted } from "../reading/LogReading.ts";
import { cellKind } from "./cellKind.ts";
import { recordsOf } from "./records.ts";

/** Splits a record into cells; one blank stands for any run of blanks, two for runs of at least two. */
export type SplitCells = (record: string) => readonly string[];

/**
 * The splitter for a delimiter; records that hold quotes go through `splitQuoted`.
 * @param columns Where the columns of a table in fixed width stand, for two blanks as the delimiter.
 */
export function cellSplitter(
  delimiter: string,
  splitQuoted: SplitQuoted,
  columns: readonly FixedColumn[] | null = null,
): SplitCells {
  if (delimiter === " ") return splitAtBlanks;
  if (delimiter === "  ")
    return columns === null ? wideSplitter() : (record) => fixedCells(record, columns);
  return (record) => {
    if (!record.includes('"')) return record.split(delimiter);
    const plain = plainlyQuoted(record, delimiter);
    if (plain !== null || !record.includes(delimiter)) return plain ?? [record];
    return splitQuoted(record, delimiter) ?? record.split(delimiter);
  };
}

/** Cells of a record in which each quote opens or closes a whole cell; null of any other, which needs more care. */
function plainlyQuoted(record: string, delimiter: string): readonly string[] | null {
  const cells: string[] = [];
  let from = 0;
  for (;;) {
    const isQuoted = record.charCodeAt(from) === QUOTE;
    const end = isQuoted ? record.indexOf('"', from + 1) + 1 : record.indexOf(delimiter, from);
    const to = end < 0 ? record.length : end;
    if (isQuoted && end === 0) return null;
    const cell = isQuoted ? record.slice(from + 1, to - 1) : record.slice(from, to);
    if (!isQuoted && cell.includes('"')) return null;
    cells.push(cell);
    if (to === record.length) return cells;
    if (!record.startsWith(delimiter, to)) return null;
    from = to + delimiter.length;
  }
}

const QUOTE = 34;

/** All records of a text as cells, as they stand: no trimming, no typing. */
export function cellRows(
  text: string,
  delimiter: string,
  splitQuoted: SplitQuoted,
): readonly (readonly string[])[] {
  return recordsOf(text, delimiter).texts.map(cellSplitter(delimiter, splitQuoted));
}

/** Rows in a row of one shorter length after which the columns are taken to have changed. */
const CHANGED_ROWS = 8;

/**
 * Cuts at two or more blanks, and puts the cells of a row that lacks some under the columns of the
 * rows before it, by where they stand.
 */
function wideSplitter(): SplitCells {
  let places: readonly number[] = [];
  let shorter = 0;
  return (record) => {
    const found = Array.from(record.matchAll(/\S+(?:\s\S+)*/g));
    const starts = found.map((match) => match.index);
    const texts = found.map((match) => match[0]);
    const isShorter = texts.length > 1 && texts.length < places.length;
    const isUnder = starts.every((start) => places.some((place) => Math.abs(place - start) <= 1));
    shorter = isShorter && !isUnder ? shorter + 1 : 0;
    if (texts.length >= places.length || shorter >= CHANGED_ROWS) places = starts;
    else if (texts.length > 1) return underPlaces(texts, starts, places);
    return texts.length === 0 ? [""] : texts;
  };
}

function underPlaces(
  texts: readonly string[],
  starts: readonly number[],
  places: readonly number[],
): readonly string[] {
  const cells = places.map(() => "");
  texts.forEach((text, i) => {
    const off = places.map((place) => Math.abs(place - starts[i]!));
    const column = off.indexOf(Math.min(...off));
    cells[column] = cells[column] === "" ? text : `${cells[column]} ${text}`;
  });
  return cells;
}

/** Blanks, but not those between a clock and its AM or PM. */
const BETWEEN_CELLS = /[ \t]+(?![ap]\.?m\.?(?:\s|$))/i;

function splitAtBlanks(record: string): readonly string[] {
  const trimmed = record.trim();
  if (trimmed === "") return [""];
  if (!trimmed.includes('"')) return trimmed.split(BETWEEN_CELLS);
  return (trimmed.match(/(?:"[^"]*"|[^ \t])+/g) ?? [""]).map((cell) => cell.replaceAll('"', ""));
}

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
function fixedCells(record: string, columns: readonly FixedColumn[]): readonly string[] {
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
    if (filled[at]! <= most) continue;
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

/** Runs of two or more blanks, which stand between columns of fixed width. */
export const WIDE_BLANKS = "  ";

/** Marks between cells that are awkward to type or to see, by name. */
const BY_NAME: Readonly<Record<string, string>> = {
  tab: "\t",
  "\\t": "\t",
  blanks: " ",
  "wide blanks": WIDE_BLANKS,
  "wide-blanks": WIDE_BLANKS,
};

/** The mark that a person names, or the mark itself. */
export function delimiterNamed(told: string): string {
  return Object.hasOwn(BY_NAME, told) ? BY_NAME[told]! : told;
}

/** What a person writes for a mark: its name where it has one. */
export function delimiterTold(delimiter: string): string {
  return Object.keys(BY_NAME).find((name) => BY_NAME[name] === delimiter) ?? delimiter;
}

/** What a delimiter is called in front of a person. */
export function delimiterName(delimiter: string): string {
  const names: Readonly<Record<string, string>> = {
    ",": "comma",
    ";": "semicolon",
    "\t": "tab",
    "|": "bar",
    " ": "runs of blanks",
    "  ": "runs of two or more blanks",
  };
  return Object.hasOwn(names, delimiter) ? names[delimiter]! : `"${delimiter}"`;
}
