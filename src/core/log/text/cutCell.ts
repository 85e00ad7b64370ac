import { type DecimalMark, parseNumber } from "./cellKind.ts";
import type { SplitCells } from "./cells.ts";
import type { Column, Table } from "./table.ts";

/** Rows before the last one whose cells show how it should end. */
const ROWS_BEFORE = 5;
/** A whole number cut off within its digits is less than this share of the ones before it. Own choice. */
const LESS_SHARE = 0.6;

/**
 * The table without the last number of its last row, when that was cut off: the file ends without
 * the end of a line, as after a power cut, and the number lacks decimals or a unit that all numbers
 * before it have, or some of its digits.
 * @param openLine Line with which the file ends without the end of it; 0 when it ends whole.
 */
export function withoutCutCell(
  table: Table,
  form: { readonly openLine: number; readonly split: SplitCells; readonly decimal: DecimalMark },
): Table {
  const last = table.rowCount - 1;
  if (form.openLine === 0 || last < ROWS_BEFORE || table.lineOf(last) !== form.openLine)
    return table;
  const cells = form.split(table.textOf(last));
  const at = cells.findLastIndex((cell) => cell.trim() !== "");
  const column = table.columns[at];
  if (column?.kind === "stamp" && isCutTime(cells[at] as string, table, { at, split: form.split }))
    return withCutColumn(table, withoutStamp(column, last));
  if (column?.kind !== "number" || Number.isNaN(column.numbers[last])) return table;
  const before = Array.from({ length: ROWS_BEFORE }, (_, back) => {
    const row = form.split(table.textOf(last - 1 - back));
    return row[at] ?? "";
  }).filter((cell) => !Number.isNaN(parseNumber(cell, form.decimal)));
  if (!isCut(cells[at] as string, before, form.decimal)) return table;
  return withCutColumn(table, without(column, last));
}

/** A time whose last digits are fewer than those of all times before it: `6:3` below `6:30`. */
function isCutTime(
  cell: string,
  table: Table,
  { at, split }: { readonly at: number; readonly split: SplitCells },
): boolean {
  const last = table.rowCount - 1;
  const before = Array.from(
    { length: ROWS_BEFORE },
    (_, back) => split(table.textOf(last - 1 - back))[at] ?? "",
  ).filter((each) => each.trim() !== "");
  const formOf = (text: string) => {
    const clock = /(\d+)((?::\d+)*)\D*$/.exec(text.trim());
    return clock === null ? "" : `${clock[2]?.replace(/\d/g, "0")}`;
  };
  const forms = new Set(before.map(formOf));
  return forms.size === 1 && formOf(cell).length < (forms.values().next().value ?? "").length;
}

/** The table with a column in place of the one at its index, in which the last row was cut. */
function withCutColumn(table: Table, column: Column): Table {
  return {
    ...table,
    cutRow: table.rowCount - 1,
    columns: table.columns.map((each) => (each.index === column.index ? column : each)),
  };
}

function withoutStamp(column: Column, row: number): Column {
  const seconds = column.stamps.seconds.slice();
  const formOf = column.stamps.formOf.slice();
  seconds[row] = Number.NaN;
  formOf[row] = -1;
  return { ...column, stamps: { ...column.stamps, seconds, formOf } };
}

function isCut(cell: string, before: readonly string[], decimal: DecimalMark): boolean {
  if (before.length < 2) return false;
  const tails = new Set(before.map((each) => tailOf(each, decimal)));
  if (tails.size === 1 && !tails.has(tailOf(cell, decimal))) return true;
  const least = Math.min(...before.map((each) => Math.abs(parseNumber(each, decimal))));
  const isShorter = before.every((each) => each.trim().length > cell.trim().length);
  return isShorter && Math.abs(parseNumber(cell, decimal)) < LESS_SHARE * least;
}

/** What stands from the decimal mark on, with each digit as 0: `,00 K`. */
function tailOf(cell: string, decimal: DecimalMark): string {
  const text = cell.trim().replace(/\d/g, "0");
  const mark = text.lastIndexOf(decimal);
  return mark < 0 ? text.replace(/^.*0/, "") : text.slice(mark);
}

function without(column: Column, row: number): Column {
  const numbers = column.numbers.slice();
  numbers[row] = Number.NaN;
  return { ...column, numbers };
}
