import type { Problem } from "../problem.ts";
import type { LogOptions } from "./LogReading.ts";
import { columnList } from "./text/columnNames.ts";
import type { Table } from "./text/table.ts";

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
