import { decision } from "../decision.ts";
import type { Decision } from "../LogReading.ts";
import { type CellKind, cellKind, type DecimalMark } from "./cellKind.ts";
import type { SplitCells } from "./cells.ts";

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
  readonly decision: Decision;
}

const COMMENT = /^\s*(?:#|\/\/|!|%|;(?=\s*[A-Za-z]))+\s*/;
const UNIT_CELL =
  /^\s*[([]?\s*(?:[°º˚�Â]{0,2}\s?[CFK]|℃|℉|deg\.? ?[CFK]?|celsius|fahrenheit|kelvin|s|secs?|seconds?|ms|min|mins|minutes?|h|hr|hrs|hours?|%|mV|V|A|W|kW|kW\/m2|kW\/m²|mW\/mg|mW|kWh|Pa|hPa|kPa|mbar|bar|ppm|rpm|g|mg|kg|mm|m\/s|-|–|hh?:mm(?::ss)?|mm:ss)\s*[)\]]?\s*$/i;

/** How a time is written, as unit rows say it: `yyyy-mm-dd hh:mm:ss`, `dd.mm.yyyy`. */
const TIME_SHAPE = /^\s*[([]?(?=.*(?:yy|mm|dd|hh|ss))[ymdhsT\s.:/_-]+[)\]]?\s*$/i;

/** Where the body begins, which rows above it are names and units. */
export function findLayout(
  records: readonly string[],
  split: SplitCells,
  decimal: DecimalMark,
): Layout | null {
  const body = findBody(records, split, decimal);
  if (body === null) return null;
  const above = textRowsAbove(records, body.start, split);
  const nearest = above[0];
  const unitRow = nearest !== undefined && isUnitRow(nearest.cells) ? nearest : undefined;
  const header = unitRow === undefined ? nearest : (above[1] ?? unitRow);
  const width = body.kinds.length;
  const cells = header === undefined ? null : headerCells(header, width);
  const firstUsed = Math.min(header?.at ?? body.start, unitRow?.at ?? body.start);
  const isHeader = cells !== null && header !== unitRow;
  return {
    bodyStart: body.start,
    names: uniqueNames(isHeader ? cells : [], width),
    units: unitRow === undefined ? [] : unitRow.cells.map((cell) => cell.trim()),
    hasHeader: isHeader,
    kinds: body.kinds,
    preamble: records.slice(0, isHeader || unitRow !== undefined ? firstUsed : body.start),
    headerText: header?.text ?? "",
    decision: headerDecision(isHeader, unitRow !== undefined, body.start),
  };
}

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
    kinds: split(records[at] as string).map((cell) => cellKind(cell, decimal)),
  }));
  const typed = sample.filter((row) => row.kinds.some(isValue) && !isMostlyWords(row.kinds));
  if (typed.length === 0) return null;
  const kinds = columnKinds(typed.map((row) => row.kinds));
  if (!kinds.some(isValue)) return null;
  const agrees = (at: number) =>
    agreesWith(
      split(records[at] ?? "").map((cell) => cellKind(cell, decimal)),
      kinds,
    );
  for (let at = 0; at < records.length; at++)
    if (agrees(at) && nextFilledAgrees(records, at, agrees)) return { start: at, kinds };
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
  return Array.from({ length: width }, (_, c) => {
    const counts: Record<CellKind, number> = {
      number: 0,
      grouped: 0,
      stamp: 0,
      text: 0,
      missing: 0,
      empty: 0,
    };
    for (const row of rows) if (row.length === width) counts[row[c] ?? "empty"]++;
    const numbers = counts.number + counts.grouped;
    if (numbers + counts.stamp + counts.text === 0) return counts.missing > 0 ? "missing" : "empty";
    if (counts.stamp >= numbers && counts.stamp >= counts.text) return "stamp";
    return numbers >= counts.text ? "number" : "text";
  });
}

/** A row belongs to the body when its cells are of their columns' kinds, with at least one value. */
function agreesWith(row: readonly CellKind[], kinds: readonly CellKind[]): boolean {
  if (row.length < Math.min(2, kinds.length)) return false;
  let same = 0;
  let other = 0;
  for (let c = 0; c < Math.min(row.length, kinds.length); c++) {
    const kind = row[c] === "grouped" ? "number" : (row[c] as CellKind);
    const expected = kinds[c] as CellKind;
    if (kind === "empty" || kind === "missing" || expected === "text") continue;
    if (kind === expected) same++;
    else other++;
  }
  return same > 0 && same > other;
}

function nextFilledAgrees(
  records: readonly string[],
  at: number,
  agrees: (at: number) => boolean,
): boolean {
  let next = at + 1;
  while (next < records.length && (records[next] as string).trim() === "") next++;
  return next >= records.length || agrees(next);
}

interface TextRow {
  readonly at: number;
  readonly text: string;
  readonly cells: readonly string[];
}

/** The two nearest filled rows above the body that hold several words. */
function textRowsAbove(
  records: readonly string[],
  bodyStart: number,
  split: SplitCells,
): readonly TextRow[] {
  const rows: TextRow[] = [];
  for (let at = bodyStart - 1; at >= 0 && rows.length < 2; at--) {
    const text = records[at] as string;
    if (text.trim() === "") continue;
    const cells = split(text.replace(COMMENT, ""));
    if (!/[^\d\s.,;:|"'-]/.test(text)) break;
    rows.push({ at, text, cells });
  }
  return rows;
}

function isUnitRow(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell.trim() !== "");
  return filled.length > 0 && filled.every((cell) => UNIT_CELL.test(cell) || TIME_SHAPE.test(cell));
}

/** The header's cells when they match the table's width; names with blanks in them are cut wider apart. */
function headerCells(header: TextRow, width: number): readonly string[] | null {
  const filled = header.cells.filter((cell) => cell.trim() !== "").length;
  const words = header.cells.filter((cell) => /[^\d\s.,:+-]/.test(cell)).length;
  if (words === 0 || words < filled / 2 || header.cells.some(isProse)) return null;
  const isClose = header.cells.length >= width - 1 && header.cells.length <= width + 1;
  if (header.cells.length === width || (isClose && filled >= Math.min(2, width)))
    return header.cells;
  const wide = header.text
    .replace(COMMENT, "")
    .trim()
    .split(/\t|\s{2,}/);
  return wide.length === width ? wide : null;
}

/** A remark above a table without a header is not its header: it tells something, or goes on and on. */
function isProse(cell: string): boolean {
  return /[a-z]:\s+\S/i.test(cell) || cell.trim().split(/\s+/).length > 6;
}

function uniqueNames(cells: readonly string[], width: number): readonly string[] {
  const seen = new Map<string, number>();
  return Array.from({ length: width }, (_, c) => {
    const name =
      (cells[c] ?? "").trim().replace(/^"|"$/g, "").replace(/\s+/g, " ") || `column ${c + 1}`;
    const times = (seen.get(name) ?? 0) + 1;
    seen.set(name, times);
    return times === 1 ? name : `${name} (${times})`;
  });
}
