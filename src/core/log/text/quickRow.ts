import type { DecimalMark } from "./cellKind.ts";
import type { ColumnStore, StampForm, StampStore, TextStore } from "./columnStores.ts";
import {
  type Cursor,
  type FastStamp,
  fastNumber,
  fastStamp,
  noFastStamp,
  type StampQuery,
} from "./fastCells.ts";
import { LONGEST_ROW_BYTES } from "./recordScanner.ts";

/**
 * Reads one row from bytes into a slot of the columns' blocks.
 * @returns the place of its line end; −1 when the row holds anything but plain cells, and must be
 * read as text. Its slots may then have been written; nothing else has.
 */
export type QuickRow = (bytes: Uint8Array, from: number, slot: number) => number;

/** Bytes that may be part of a number, a time or a remark: as a delimiter they need the patient way. */
const IN_CELLS = /[-+.:/\w"#%]/;
const TAB = 9;
const LINE_FEED = 10;
const RETURN = 13;
const BLANK = 32;
const QUOTE = 34;
/** Bytes of a word that is kept in passing; a longer one is read as text. */
const LONGEST_WORD = 1024;

/** What all cells of the row share. */
interface Row {
  readonly delimiter: number;
  readonly mark: number;
  readonly cursor: Cursor;
  readonly stamp: StampQuery;
  readonly mayQuote: boolean;
  slot: number;
  /** Cells of the row that held a number or a time. */
  values: number;
}

/** One column, and the last form or word in it, so that the same one is not looked up again. */
interface QuickColumn {
  readonly store: ColumnStore;
  readonly row: Row;
  readonly last: FastStamp;
  form: number;
  word: Uint8Array;
  code: number;
  /** Where the row's word stands. */
  from: number;
  to: number;
}

/**
 * The quick way through rows of plain numbers, times by position and words, perhaps in quotes.
 * @param dialect.headerText The header, whose repetition is no row.
 * @param dialect.openers Characters after which a quote opens a cell.
 * @returns null for a delimiter with which the quick way could go wrong.
 */
export function quickRow(
  stores: readonly ColumnStore[],
  dialect: {
    readonly delimiter: string;
    readonly decimal: DecimalMark;
    readonly headerText: string;
    readonly openers: string;
  },
): QuickRow | null {
  const { delimiter, decimal, headerText, openers } = dialect;
  if (!isSafe(delimiter)) return null;
  const code = delimiter.charCodeAt(0);
  const row: Row = {
    delimiter: code,
    mark: decimal === delimiter ? 0 : decimal.charCodeAt(0),
    cursor: { at: 0 },
    stamp: { into: noFastStamp(), delimiter: code },
    mayQuote: code !== BLANK && openers.includes(delimiter),
    slot: 0,
    values: 0,
  };
  const columns = stores.map((store) => quickColumn(store, row));
  const wordColumns = columns.filter(({ store }) => store.kind === "text");
  const query: RowQuery = { columns, code };
  return (bytes, from, slot) => {
    row.slot = slot;
    row.values = 0;
    const end = rowEnd(bytes, from, query);
    const isLong = end - from > LONGEST_ROW_BYTES;
    if (end < 0 || isLong || row.values === 0 || isText(bytes, [from, end], headerText)) return -1;
    for (const column of wordColumns) keepWord(bytes, column);
    return end;
  };
}

interface RowQuery {
  readonly columns: readonly QuickColumn[];
  /** The delimiter's byte. */
  readonly code: number;
}

/** Reads the cells of a row; the place of its line end, or −1. */
function rowEnd(bytes: Uint8Array, from: number, query: RowQuery): number {
  const { columns, code } = query;
  let at = code === BLANK ? pastBlanks(bytes, from) : from;
  const first = bytes[at]!;
  if (!mayBegin(first) && !(first === code && first > BLANK)) return -1;
  for (let c = 0; c < columns.length; c++) {
    at = cell(bytes, at, columns[c]!);
    if (at >= 0) at = code === BLANK ? pastGap(bytes, at) : pastDelimiter(bytes, at, code);
    if (at < 0) return -1;
  }
  return lineEnd(bytes, at);
}

/** Whether a delimiter can be told from all that belongs to cells. */
function isSafe(delimiter: string): boolean {
  const isPrintable = delimiter.length === 1 && delimiter >= " " && delimiter <= "~";
  return (isPrintable || delimiter === "\t") && !IN_CELLS.test(delimiter);
}

function quickColumn(store: ColumnStore, row: Row): QuickColumn {
  const nothing = { form: -1, word: new Uint8Array(0), code: -1, from: 0, to: 0 };
  return { store, row, last: { ...noFastStamp(), order: -1 }, ...nothing };
}

/** A digit, a sign, a point, a quote or a letter: no comment and no blank row begins so. */
function mayBegin(byte: number): boolean {
  if (byte >= 48 && byte <= 57) return true;
  const letter = byte | 32;
  const isLetter = letter >= 97 && letter <= 122 && byte < 128;
  return isLetter || byte === 45 || byte === 43 || byte === 46 || byte === QUOTE;
}

function pastBlanks(bytes: Uint8Array, from: number): number {
  let at = from;
  while (bytes[at] === BLANK || bytes[at] === TAB) at++;
  return at;
}

/** Reads a cell; the place after it, or −1. */
function cell(bytes: Uint8Array, from: number, column: QuickColumn): number {
  const { row } = column;
  if (bytes[from] === QUOTE) return row.mayQuote ? quoted(bytes, from, column) : -1;
  if (column.store.kind === "text") return word(bytes, from, { column, end: row.delimiter });
  let at = from;
  if (row.delimiter !== BLANK) while (bytes[at] === BLANK) at++;
  const byte = bytes[at]!;
  if (byte !== row.delimiter && byte !== LINE_FEED && byte !== RETURN)
    return value(bytes, at, column);
  empty(column);
  return at;
}

/** A cell in quotes that holds no quote; the place after its last quote, or −1. */
function quoted(bytes: Uint8Array, from: number, column: QuickColumn): number {
  const start = from + 1;
  let end = start;
  if (column.store.kind === "text") end = word(bytes, start, { column, end: QUOTE });
  else if (bytes[start] === QUOTE) empty(column);
  else end = value(bytes, start, column);
  if (end < 0 || bytes[end] !== QUOTE) return -1;
  const next = bytes[end + 1]!;
  const isClosed = next === column.row.delimiter || next === LINE_FEED || next === RETURN;
  return isClosed ? end + 1 : -1;
}

function empty({ store, row }: QuickColumn): void {
  if (store.kind === "number") store.values.block[row.slot] = Number.NaN;
  else if (store.kind === "stamp") {
    store.seconds.block[row.slot] = Number.NaN;
    store.formOf.block[row.slot] = -1;
  }
}

function value(bytes: Uint8Array, from: number, column: QuickColumn): number {
  const { store, row } = column;
  row.values++;
  if (store.kind === "number") {
    row.cursor.at = from;
    store.values.block[row.slot] = fastNumber(bytes, row.cursor, row.mark);
    return row.cursor.at;
  }
  const end = fastStamp(bytes, from, row.stamp);
  if (end < 0) return -1;
  const stamps = store as StampStore;
  stamps.seconds.block[row.slot] = row.stamp.into.seconds;
  stamps.formOf.block[row.slot] = formOf(column, stamps);
  return end;
}

/** Number of a stamp's form; mostly that of the row before. */
function formOf(column: QuickColumn, store: StampStore): number {
  const { last } = column;
  const stamp = column.row.stamp.into;
  const isSameDate =
    stamp.order === 0 ||
    (last.third === stamp.third && last.second === stamp.second && last.first === stamp.first);
  const isSame =
    isSameDate &&
    last.order === stamp.order &&
    last.separator === stamp.separator &&
    last.clockFields === stamp.clockFields &&
    last.half === stamp.half &&
    Object.is(last.offsetMinutes, stamp.offsetMinutes);
  if (isSame) return column.form;
  Object.assign(last, stamp);
  column.form = store.known.numberOf(formed(stamp));
  return column.form;
}

const ORDERS: readonly StampForm["order"][] = ["none", "open", "year-first"];
const HALVES: readonly StampForm["half"][] = [null, "am", "pm"];

function formed({ seconds: _, separator, order, half, ...rest }: FastStamp): StampForm {
  return {
    ...rest,
    order: ORDERS[order]!,
    separator: separator === 0 ? "" : String.fromCharCode(separator),
    half: HALVES[half] as StampForm["half"],
    isSpan: false,
  };
}

/** A cell of printable ASCII without quotes, up to its end byte or the line's; −1 for any other. */
function word(
  bytes: Uint8Array,
  from: number,
  { column, end }: { readonly column: QuickColumn; readonly end: number },
): number {
  let at = from;
  let byte = bytes[at]!;
  while (byte !== end && byte !== LINE_FEED && byte !== RETURN) {
    const isBlank = byte === TAB && column.row.delimiter === BLANK;
    if (isBlank) break;
    if (byte === QUOTE || byte > 126 || (byte < BLANK && byte !== TAB)) return -1;
    byte = bytes[++at]!;
  }
  column.from = from;
  column.to = at;
  return at - from <= LONGEST_WORD ? at : -1;
}

/** Puts the word of an accepted row into its column. */
function keepWord(bytes: Uint8Array, column: QuickColumn): void {
  const { from, to, row } = column;
  const { words } = column.store as TextStore;
  if (column.code < 0 || !isSameWord(bytes, column)) {
    column.word = bytes.slice(from, to);
    column.code = words.codeOf(String.fromCharCode(...column.word));
  }
  words.codes.block[row.slot] = column.code;
}

function isSameWord(bytes: Uint8Array, { word, from, to }: QuickColumn): boolean {
  if (to - from !== word.length) return false;
  for (let i = 0; i < word.length; i++) if (bytes[from + i] !== word[i]) return false;
  return true;
}

/** Past the delimiter to the next cell, staying at a line end; −1 when something else stands there. */
function pastDelimiter(bytes: Uint8Array, from: number, delimiter: number): number {
  let at = from;
  while (bytes[at] === BLANK) at++;
  const byte = bytes[at]!;
  if (byte === delimiter) return at + 1;
  return byte === LINE_FEED || byte === RETURN ? at : -1;
}

/** Past a run of blanks to the next cell, staying at a line end; −1 when there is no blank. */
function pastGap(bytes: Uint8Array, from: number): number {
  const at = pastBlanks(bytes, from);
  const byte = bytes[at]!;
  if (byte === LINE_FEED || byte === RETURN) return at;
  const letter = byte | 32;
  // AM and PM may belong to the clock before them.
  const mayBeHalf = letter === 97 || letter === 112;
  return at > from && !mayBeHalf ? at : -1;
}

/** The line's end, over cells beyond the last column; −1 when one of them needs a closer look. */
function lineEnd(bytes: Uint8Array, from: number): number {
  let at = from;
  let byte = bytes[at]!;
  while (byte !== LINE_FEED && byte !== RETURN) {
    if (byte === QUOTE || byte > 126) return -1;
    byte = bytes[++at]!;
  }
  return at;
}

function isText(bytes: Uint8Array, [from, to]: readonly [number, number], text: string): boolean {
  if (to - from !== text.length) return false;
  for (let i = 0; i < text.length; i++) if (bytes[from + i] !== text.charCodeAt(i)) return false;
  return true;
}
