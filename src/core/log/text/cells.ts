import type { SplitQuoted } from "../LogReading.ts";
import { type FixedColumn, fixedCells } from "./fixedColumns.ts";
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
    const off = places.map((place) => Math.abs(place - (starts[i] as number)));
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
