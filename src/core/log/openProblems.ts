import { failed, ok, type Problem, type Result } from "../problem.ts";
import type { Decision, LogOptions } from "./reading/LogReading.ts";
import { type DecimalMark, parseNumber } from "./text/cellKind.ts";
import type { SplitCells } from "./text/cells.ts";
import { type Column, columnList, type Table } from "./text/logTable.ts";
import type { RowCounts } from "./text/tableBuilder.ts";

/** The line that was told to hold the header has no cells. */
export function noSuchLine({ name, header }: LogOptions, lines: Int32Array): Problem {
  return {
    code: "log/wrong-option",
    what: `--header is ${header}, and no line with cells begins there`,
    where: name,
    expected: `the line with the names of the columns, 1 to ${lines.at(-1) ?? 1}, or none`,
    fix: "count the lines of the file from 1, those above the table among them",
  };
}

/** A log that was told to be long names no channels. */
export function notLong(name: string, table: Table): Problem {
  return {
    code: "log/wrong-option",
    what: "--layout is long, but no column of words names a channel in each row",
    where: name,
    expected: `a column with the names of the channels, out of: ${columnList(table.columns)}`,
    fix: "leave out --layout, or check --delimiter",
  };
}

/** A file without rows of numbers. */
export function noTable(name: string, lines: number, delimiter: string): Problem {
  return {
    code: "log/no-table",
    what: `holds no rows of numbers (${lines} lines, cut at the ${delimiter})`,
    where: name,
    expected: "rows with a time and at least one temperature",
    fix: "check that this is the log and not its description, or say --delimiter and --decimal",
  };
}

/** A log that begins anew in other units. */
export function otherUnits(name: string, line: number): Problem {
  return {
    code: "log/unit-changes",
    what: "begins anew with another unit of temperature in its header",
    where: `${name}: line ${line}`,
    expected: "one unit in the whole log",
    fix: `cut the file before line ${line}, and review each part by itself`,
  };
}

/** A log without two rows. */
export function oneRow(name: string, count: number): Problem {
  return {
    code: "log/one-row",
    what: `holds ${count === 1 ? "one row" : "no row"} of readings`,
    where: name,
    expected: "at least two rows, at two times",
    fix: "export the whole firing, not its last reading",
  };
}

/** A table too wide to be the log of a kiln. */
export function tooManyColumns(name: string, most: number): Problem {
  return {
    code: "log/too-many-columns",
    what: `holds more than ${most} columns`,
    where: name,
    expected: `the log of one kiln, of at most ${most} columns`,
    fix: "check that each reading has a line of its own, and say --delimiter when another was taken",
  };
}

/** A log too long to be of one firing. */
export function tooManyRows(name: string, most: number): Problem {
  return {
    code: "log/too-many-rows",
    what: `holds more than ${most / 1e6} million rows`,
    where: name,
    expected: "the log of one firing; a day at one reading a second has 86 400 rows",
    fix: "cut the log into single firings",
  };
}

/** Rows by which more of the later rows may fail to fit than of the first, in shares of them. */
const DOUBT_SHARE = 0.01;
const PROBLEM_SHARE = 0.5;

/**
 * Whether the rows after the first bytes still read as was decided on these.
 * Up to 1 % more rows that do not fit is the usual rubbish, and they are listed as left out. Beyond
 * that the decision about the delimiter is called a guess, with where to look. When the greater part
 * of the later rows does not fit, nothing that was decided holds for them.
 *
 * @param head The rows of the first bytes; null when these were the whole file.
 * @returns how to put the decision about the delimiter, or `log/changes-midway`.
 */
export function bodyDoubt({
  name,
  head,
  all,
}: {
  readonly name: string;
  readonly head: RowCounts | null;
  /** All rows, with the misfits after the head only. */
  readonly all: RowCounts;
}): Result<(decision: Decision) => Decision> {
  const rest = head === null ? 0 : all.rows + all.rejected - head.rows - head.rejected;
  if (head === null || rest === 0) return ok((decision) => decision);
  const usual = head.misfits / Math.max(1, head.rows + head.rejected);
  const more = all.misfits / rest - usual;
  if (more <= DOUBT_SHARE) return ok((decision) => decision);
  const what = `${all.misfits} of the ${rest} rows after the first 4 MB do not read as the rows before them`;
  if (more <= PROBLEM_SHARE)
    return ok((decision) => ({
      ...decision,
      confidence: "guessed",
      because: `${decision.because}; but ${what}, most of them in a row from line ${all.misfitLine}`,
    }));
  return failed({
    code: "log/changes-midway",
    what,
    where: `${name}: line ${all.misfitLine}`,
    expected: "rows written in one way from the first to the last",
    fix: `look at line ${all.misfitLine}, cut the file before it, and review each part by itself`,
  });
}

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
  if (column?.kind === "stamp" && isCutTime(cells[at]!, table, { at, split: form.split }))
    return withCutColumn(table, withoutStamp(column, last));
  if (column?.kind !== "number" || Number.isNaN(column.numbers[last])) return table;
  const before = Array.from({ length: ROWS_BEFORE }, (_, back) => {
    const row = form.split(table.textOf(last - 1 - back));
    return row[at] ?? "";
  }).filter((cell) => !Number.isNaN(parseNumber(cell, form.decimal)));
  if (!isCut(cells[at]!, before, form.decimal)) return table;
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
