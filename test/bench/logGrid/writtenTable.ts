import { type Seeded, seeded } from "../../support/demo/seeded.ts";
import type { Levels } from "./axes.ts";
import type { GridColumn } from "./gridColumns.ts";
import { remarksAbove, remarksBelow } from "./remarks.ts";
import { TIME_STYLES } from "./timeStyles.ts";

/** A log as text, with what its lines count to. */
export interface WrittenTable {
  readonly text: string;
  /** Lines from the first row of readings on that are not blank. */
  readonly bodyLines: number;
  /** Rows whose last cell was cut off, by their place in the file; -1 without. */
  readonly cutRow: number;
  /** Columns (of those given) that have no cell in a short row, by row. */
  readonly shortRows: ReadonlyMap<number, number>;
}

/** What stands in the rows of a log, in the order of the file. */
export interface TableContent {
  readonly levels: Levels;
  readonly timeCells: readonly (readonly string[])[];
  /** Row of the columns that stands in each row of the file. */
  readonly rowOf: readonly number[];
  readonly columns: readonly GridColumn[];
  readonly stepSeconds: number;
  readonly seed: number;
}

const DELIMITERS: Readonly<Record<Levels["delimiter"], string>> = {
  comma: ",",
  semicolon: ";",
  tab: "\t",
  bar: "|",
  blanks: " ",
  "fixed width": " ",
};

/** Writes the log: what stands above, the header, the rows, and what stands below. */
export function writtenTable(content: TableContent): WrittenTable {
  const { levels } = content;
  const random = seeded(content.seed);
  const headers = headerRows(content);
  const shortRows = new Map<number, number>();
  const rows = bodyRows(content, shortRows, random);
  const format = rowFormat(levels, [...headers, ...rows], random);
  const hash =
    levels.comments === "# above" && levels.delimiter !== "fixed width" && random.even() < 0.4;
  const headerLines = headers.map((cells) => (hash ? "# " : "") + format(cells, "header"));
  const above = remarksAbove(content, DELIMITERS[levels.delimiter]);
  const body = rows.map((cells) => format(cells, "row"));
  const middle = Math.floor(body.length / 2);
  const inside = insideLines(levels, headerLines);
  const below = remarksBelow(content, DELIMITERS[levels.delimiter]);
  const cut = cutLast(levels, body, random);
  const lines = [...body.slice(0, middle), ...inside, ...body.slice(middle), ...(cut ? [] : below)];
  return {
    text: joined(levels, [...above, ...headerLines, ...lines], random),
    bodyLines: lines.filter((line) => line.trim() !== "").length,
    cutRow: cut ? content.rowOf.length - 1 : -1,
    shortRows,
  };
}

function insideLines(levels: Levels, headerLines: readonly string[]): readonly string[] {
  return [
    ...(levels.header === "again in the middle" ? headerLines : []),
    ...(levels.comments === "# inside" ? ["# vents closed", "# lid down"] : []),
  ];
}

function headerRows({ levels, columns }: TableContent): readonly (readonly string[])[] {
  if (levels.header === "none") return [];
  const style = TIME_STYLES[levels.time];
  const tight = levels.delimiter === "blanks";
  const inHeader = levels.unitPlace === "header";
  const name = (text: string) => (tight ? text.replaceAll(" ", "_") : text);
  const isLong = levels.layout === "long";
  const named = isLong ? [{ name: "Value", unitText: columns[0]?.unitText ?? "" }] : columns;
  const names = named.map((column) => {
    const keepsUnit = inHeader || !isOfTemperature(column.unitText);
    const withUnit = levels.unitPlace !== "unit row" && keepsUnit && column.unitText !== "";
    return name(withUnit ? `${column.name} (${column.unitText})` : column.name);
  });
  const timeNames = timeNamesOf(levels, style.names);
  const row = [...timeNames.map(name), ...(isLong ? ["Channel"] : []), ...names];
  const groups = row.map((_, i) => (i < timeNames.length ? "Clock" : "Shed"));
  const units = [
    ...timeNames.map((_, i) => style.units?.[i] ?? (tight ? "-" : "")),
    ...(isLong ? [tight ? "-" : ""] : []),
    ...named.map(({ unitText }) => (unitText === "" && tight ? "-" : unitText)),
  ];
  return [
    ...(levels.header === "two rows" ? [groups] : []),
    row,
    ...(levels.unitPlace === "unit row" ? [units] : []),
  ];
}

function isOfTemperature(unitText: string): boolean {
  return /^(?:°?[CFK]|deg[CF]|celsius|fahrenheit|kelvin)$/i.test(unitText);
}

function timeNamesOf(levels: Levels, names: readonly string[]): readonly string[] {
  const isLabelled = levels.time.endsWith("labelled");
  return isLabelled && levels.unitPlace === "unit row" ? ["Time"] : names;
}

function bodyRows(
  content: TableContent,
  shortRows: Map<number, number>,
  random: Seeded,
): readonly (readonly string[])[] {
  const { levels, columns, timeCells, rowOf } = content;
  if (levels.layout === "long")
    return rowOf.flatMap((row, at) =>
      columns.map((column) => [
        ...(timeCells[at] as readonly string[]),
        column.name.replaceAll(" ", levels.delimiter === "blanks" ? "_" : " "),
        column.cells[row] as string,
      ]),
    );
  return rowOf.map((row, at) => {
    const cells = [
      ...(timeCells[at] as readonly string[]),
      ...columns.map((c) => c.cells[row] as string),
    ];
    if (levels.edge !== "ragged" || at === 0 || random.even() > 0.03) return cells;
    if (random.even() < 0.5 || columns.length === 1) return [...cells, "lid"];
    // Nobody could tell a row whose only cell is blank from an empty line.
    if (cells.slice(0, -1).every((cell) => cell === "")) return cells;
    shortRows.set(row, columns.length - 1);
    return cells.slice(0, -1);
  });
}

type RowFormat = (cells: readonly string[], what: "header" | "row") => string;

function rowFormat(
  levels: Levels,
  rows: readonly (readonly string[])[],
  random: Seeded,
): RowFormat {
  const delimiter = DELIMITERS[levels.delimiter];
  if (levels.delimiter === "fixed width") return fixedWidth(rows);
  const end = levels.edge === "trailing delimiter" ? delimiter : "";
  const blanks = () => " ".repeat(1 + Math.floor(random.even() * 3));
  const isOpenComma =
    levels.delimiter === "comma" && levels.decimal === "comma" && levels.quotes === "none";
  const quoted = (cell: string, what: "header" | "row") => {
    const isDecimal =
      isOpenComma && what === "row" && /^[\d.,' \u00a0\u202f-]+(?:\s?°?[CFK])?$/.test(cell);
    const needs =
      cell.includes(delimiter) && !isDecimal && !(delimiter === " " && !/["]/.test(cell));
    return levels.quotes === "all" || needs ? `"${cell}"` : cell;
  };
  return (cells, what) => {
    const texts = cells.map((cell) => quoted(cell, what));
    return delimiter === " " ? texts.join(blanks()) : texts.join(delimiter) + end;
  };
}

function fixedWidth(rows: readonly (readonly string[])[]): RowFormat {
  const widths = rows.reduce<number[]>((most, cells) => {
    cells.forEach((cell, c) => {
      most[c] = Math.max(most[c] ?? 0, cell.length);
    });
    return most;
  }, []);
  return (cells) =>
    cells
      .map((cell, c) => cell.padEnd((widths[c] ?? 0) + 2))
      .join("")
      .trimEnd();
}

/** Cuts the last line off, as a power cut does. Says whether it did. */
function cutLast(levels: Levels, body: string[], random: Seeded): boolean {
  if (levels.lastLine !== "cut in the value" && levels.lastLine !== "cut in the time") return false;
  const last = body.at(-1) ?? "";
  const length = last.trimEnd().length;
  const kept =
    levels.lastLine === "cut in the time"
      ? 2 + Math.floor(random.even() * 3)
      : Math.max(2, length - 1 - Math.floor(random.even() * 5));
  body[body.length - 1] = last.slice(0, Math.min(kept, length));
  return true;
}

const ENDS: Readonly<Record<Levels["lineEnd"], readonly string[]>> = {
  crlf: ["\r\n"],
  lf: ["\n"],
  cr: ["\r"],
  mixed: ["\r\n", "\n"],
};

function joined(levels: Levels, lines: readonly string[], random: Seeded): string {
  const ends = ENDS[levels.lineEnd];
  const parts = lines.map((line, i) => {
    const zero = levels.zeros === "inside" && random.even() < 3 / lines.length ? "\0" : "";
    const isLast = i === lines.length - 1 && levels.lastLine !== "whole";
    return line + zero + (isLast ? "" : (ends[Math.floor(random.even() * ends.length)] as string));
  });
  return parts.join("") + (levels.zeros === "at the end" ? "\0".repeat(64) : "");
}
