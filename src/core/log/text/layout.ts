import { type Decision, decision } from "../reading/LogReading.ts";
import { type CellKind, cellKind, type DecimalMark } from "./cellKind.ts";
import { atSingleBlanks, type SplitCells } from "./cells.ts";
import {
  COMMENT,
  datePair,
  headerCells,
  isUnitRow,
  shortName,
  type TextRow,
  unitsUnder,
  type Width,
} from "./headerCells.ts";

/** Where the table stands in the file and what its columns are called. */
export interface Layout {
  /** First record of the body. */
  readonly bodyStart: number;
  readonly names: readonly string[];
  /** Text of the unit row under each name; empty without one. */
  readonly units: readonly string[];
  /** Whether the names come from the file. */
  readonly hasHeader: boolean;
  /** Most frequent kind of each column. */
  readonly kinds: readonly CellKind[];
  /** Lines above the table, without its header. */
  readonly preamble: readonly string[];
  readonly headerText: string;
  /** Record that holds the names; null without. */
  readonly headerAt: number | null;
  readonly decision: Decision;
}

/** Where the body begins, which rows above it are names and units. */
export function findLayout(
  records: readonly string[],
  split: SplitCells,
  decimal: DecimalMark,
): Layout | null {
  const body = findBody(records, split, decimal);
  if (body === null) return null;
  const above = textRowsAbove(records, body, split);
  const nearest = above[0];
  const unitRow = nearest !== undefined && isUnitRow(nearest.cells) ? nearest : undefined;
  const header = unitRow === undefined ? nearest : (above[1] ?? unitRow);
  const width = body.kinds.length;
  const form: Width = {
    width,
    filled: body.kinds.filter((kind) => isValue(kind) || kind === "missing").length,
    pair: datePair(split(records[body.start]!)),
    isAtBlanks: split("a b").length > 1,
  };
  const cells = header === undefined ? null : headerCells(header, form);
  const unitCells = unitRow === undefined ? [] : unitsUnder(unitRow, header, form);
  const firstUsed = Math.min(header?.at ?? body.start, unitRow?.at ?? body.start);
  const isHeader = cells !== null && header !== unitRow;
  return {
    bodyStart: body.start,
    names: uniqueNames(isHeader ? cells : [], width),
    units: unitCells.map((cell) => cell.trim()),
    hasHeader: isHeader,
    kinds: body.kinds,
    preamble: records.slice(0, isHeader || unitRow !== undefined ? firstUsed : body.start),
    headerText: header?.text ?? "",
    headerAt: isHeader ? (header?.at ?? null) : null,
    decision: headerDecision(isHeader, unitRow !== undefined, body.start),
  };
}

/** The option that names the line of the names. */
export const HEADER_OPTION = "--header LINE or none";

function headerDecision(isHeader: boolean, hasUnits: boolean, bodyStart: number): Decision {
  const choice = isHeader
    ? hasUnits
      ? "a row of names and a row of units"
      : "a row of names"
    : hasUnits
      ? "a row of units, no names"
      : "none; columns are numbered from 1";
  return decision("header", choice, {
    confidence: isHeader ? "certain" : "likely",
    because: `the readings begin at record ${bodyStart + 1}`,
    option: HEADER_OPTION,
  });
}

interface Body {
  readonly start: number;
  readonly kinds: readonly CellKind[];
}

function findBody(
  records: readonly string[],
  split: SplitCells,
  decimal: DecimalMark,
): Body | null {
  const sample = sampleRows(records).map((at) => ({
    at,
    kinds: split(records[at]!).map((cell) => cellKind(cell, decimal)),
  }));
  const typed = sample.filter((row) => row.kinds.some(isValue) && !isMostlyWords(row.kinds));
  if (typed.length === 0) return null;
  const first = columnKinds(typed.map((row) => row.kinds));
  // Remarks are looked at as well; what is unlike the rest does not speak for the columns.
  const like = typed.filter((row) => agreesWith(row.kinds, first));
  const kinds = like.length > 0 ? columnKinds(like.map((row) => row.kinds)) : first;
  if (!kinds.some(isValue)) return null;
  const isWide = isAtWideBlanks(split);
  const kindsAt = (at: number) => {
    const text = records[at] ?? "";
    const cells = split(text);
    return (isWide ? atSingleBlanks(text, cells, kinds.length) : cells).map((cell) =>
      cellKind(cell, decimal),
    );
  };
  const agrees = (at: number) => agreesWith(kindsAt(at), kinds);
  const goesOn = (at: number) => agrees(at) || isCutShort(kindsAt(at), kinds);
  for (let at = 0; at < records.length; at++)
    if (agrees(at) && nextFilledAgrees(records, at, goesOn)) return { start: at, kinds };
  return null;
}

/** Rows near the beginning and in the middle, whose kinds speak for the columns. */
function sampleRows(records: readonly string[]): readonly number[] {
  const rows: number[] = [];
  const add = (from: number, count: number) => {
    for (let at = from; at < Math.min(from + count, records.length); at++) rows.push(at);
  };
  add(0, 150);
  if (records.length > 150) add(Math.max(150, Math.floor(records.length / 2)), 150);
  return rows;
}

function isValue(kind: CellKind): boolean {
  return kind === "number" || kind === "grouped" || kind === "stamp";
}

function isMostlyWords(kinds: readonly CellKind[]): boolean {
  const words = kinds.filter((kind) => kind === "text").length;
  return words > kinds.filter(isValue).length;
}

function columnKinds(rows: readonly (readonly CellKind[])[]): readonly CellKind[] {
  const lengths = new Map<number, number>();
  for (const row of rows) lengths.set(row.length, (lengths.get(row.length) ?? 0) + 1);
  const width = [...lengths].reduce((a, b) => (b[1] > a[1] ? b : a), [0, 0])[0];
  const full = fullRows(rows.filter((row) => row.length === width));
  return Array.from({ length: width }, (_, c) => {
    const counts: Record<CellKind, number> = {
      number: 0,
      grouped: 0,
      stamp: 0,
      text: 0,
      missing: 0,
      empty: 0,
    };
    for (const row of full) counts[row[c] ?? "empty"]++;
    const numbers = counts.number + counts.grouped;
    if (numbers + counts.stamp + counts.text === 0) return counts.missing > 0 ? "missing" : "empty";
    if (counts.stamp >= numbers && counts.stamp >= counts.text) return "stamp";
    return numbers >= counts.text ? "number" : "text";
  });
}

/** Rows that are filled at least half as much as most: a remark with a number in it is not. */
function fullRows(rows: readonly (readonly CellKind[])[]): readonly (readonly CellKind[])[] {
  const filled = rows.map(
    (row) => row.filter((kind) => isValue(kind) || kind === "missing").length,
  );
  const usual = [...filled].sort((a, b) => a - b)[filled.length >> 1] ?? 0;
  return rows.filter((_, r) => filled[r]! >= usual / 2);
}

/** A row belongs to the body when its cells are of their columns' kinds, with at least one value. */
function agreesWith(row: readonly CellKind[], kinds: readonly CellKind[]): boolean {
  if (row.length < Math.min(2, kinds.length)) return false;
  let same = 0;
  let other = 0;
  for (let c = 0; c < Math.min(row.length, kinds.length); c++) {
    const kind = row[c] === "grouped" ? "number" : row[c]!;
    const expected = kinds[c]!;
    if (kind === "empty" || kind === "missing" || expected === "text") continue;
    // `Coefficients 1.02 0.98` has numbers where the readings are, but a word where the time is.
    if (kind === "text" && (expected === "stamp" || c === 0)) return false;
    if (kind === expected) same++;
    else other++;
  }
  return same > 0 && same > other;
}

/** A row of which only the first cells were written. */
function isCutShort(row: readonly CellKind[], kinds: readonly CellKind[]): boolean {
  return (
    row.length < kinds.length && row.every((kind, c) => isValue(kind) && isOfKind(kind, kinds[c]))
  );
}

function isOfKind(kind: CellKind, expected: CellKind | undefined): boolean {
  return kind === expected || (kind === "grouped" && expected === "number");
}

function nextFilledAgrees(
  records: readonly string[],
  at: number,
  agrees: (at: number) => boolean,
): boolean {
  let next = at + 1;
  while (next < records.length && records[next]!.trim() === "") next++;
  return next >= records.length || agrees(next);
}

/** The two nearest filled rows above the body that hold several words. */
function textRowsAbove(
  records: readonly string[],
  body: Body,
  split: SplitCells,
): readonly TextRow[] {
  const rows: TextRow[] = [];
  const isWide = isAtWideBlanks(split);
  for (let at = body.start - 1; at >= 0 && rows.length < 2; at--) {
    const text = records[at]!;
    if (text.trim() === "") continue;
    const whole = split(text);
    // Where the first name is empty, a semicolon before the next one is a delimiter and no comment.
    const cells =
      whole.length === body.kinds.length && /^\s*;/.test(text)
        ? whole
        : split(text.replace(COMMENT, ""));
    if (!/[^\d\s.,;:|"'-]/.test(text)) break;
    rows.push({
      at,
      text,
      cells: isWide ? atBlanks(text, cells, body.kinds.length) : cells,
    });
  }
  return rows;
}

/** Whether cells are cut at wide blanks only. */
function isAtWideBlanks(split: SplitCells): boolean {
  return split("a  b").length > split("a b").length;
}

/** The words of a line that is not cut at wide blanks, when there is one for each column; its cells otherwise. */
function atBlanks(text: string, cells: readonly string[], width: number): readonly string[] {
  const words = text.trim().split(/\s+/);
  return cells.length === 1 && width > 2 && words.length === width ? words : cells;
}

/** Names of the columns, each once; those without are numbered. */
export function uniqueNames(cells: readonly string[], width: number): readonly string[] {
  const seen = new Map<string, number>();
  return Array.from({ length: width }, (_, c) => {
    const name = shortName(
      (cells[c] ?? "").trim().replace(/^"|"$/g, "").replace(/\s+/g, " ") || `column ${c + 1}`,
    );
    const times = (seen.get(name) ?? 0) + 1;
    seen.set(name, times);
    return times === 1 ? name : `${name} (${times})`;
  });
}
