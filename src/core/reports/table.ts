import type { Cell, Column } from "./Block.ts";
import { inert } from "./inert.ts";
import type { Paint, PaintStyle } from "./paint.ts";
import { glued, HARD_SPACE, visibleWidth, wrap } from "./wrap.ts";

const BETWEEN = "  ";
const NARROWEST = 4;

/** A table to set in lines. */
export interface TableInput {
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
  /** Columns of the terminal that it may take, indent included. */
  readonly width: number;
  readonly indent: string;
  readonly paint: Paint;
}

/**
 * A table as aligned lines; a table that is too wide has its widest columns broken into lines.
 * Every row has one cell per column, else a RangeError.
 */
export function table(input: TableInput): readonly string[] {
  const { columns, rows, width, indent, paint } = input;
  const heads = columns.map((column) => laid(column.head, "faint"));
  const body = rows.map((row) => {
    if (row.length !== columns.length)
      throw new RangeError(`table: ${row.length} cells in ${columns.length} columns`);
    return row.map((cell) => laid(cell, null));
  });
  const room = width - visibleWidth(indent) - BETWEEN.length * (columns.length - 1);
  const widths = fitted([heads, ...body], room);
  return [heads, ...body].flatMap((row) => rowLines({ row, widths, columns, indent, paint }));
}

interface Laid {
  readonly lines: readonly string[];
  readonly style: PaintStyle | null;
}

function laid(cell: Cell, style: PaintStyle | null): Laid {
  return typeof cell === "string"
    ? { lines: [inert(cell)], style }
    : { lines: cell.lines.map(inert), style: cell.style ?? style };
}

/** Natural widths, the widest columns narrowed first until all fit into the room. */
function fitted(rows: readonly (readonly Laid[])[], room: number): readonly number[] {
  const count = rows[0]?.length ?? 0;
  const measure = (cell: Laid | undefined, of: (line: string) => number) =>
    Math.max(0, ...(cell?.lines ?? []).map(of));
  const widest = (column: number, of: (line: string) => number) =>
    Math.max(NARROWEST, ...rows.map((row) => measure(row[column], of)));
  const longestWords = Array.from({ length: count }, (_, column) => widest(column, longestWord));
  const widths = Array.from({ length: count }, (_, column) => widest(column, visibleWidth));
  for (const floors of [longestWords, longestWords.map(() => NARROWEST)])
    while (sum(widths) > room) {
      const column = widestAbove(widths, floors);
      if (column < 0) break;
      widths[column] = widths[column]! - 1;
    }
  return widths;
}

function widestAbove(widths: readonly number[], floors: readonly number[]): number {
  let found = -1;
  widths.forEach((width, column) => {
    if (width > floors[column]! && width > (widths[found] ?? 0)) found = column;
  });
  return found;
}

function longestWord(line: string): number {
  return Math.max(0, ...glued(line).split(" ").map(visibleWidth));
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function rowLines(input: {
  readonly row: readonly Laid[];
  readonly widths: readonly number[];
  readonly columns: readonly Column[];
  readonly indent: string;
  readonly paint: Paint;
}): readonly string[] {
  const { row, widths, columns, indent, paint } = input;
  const cells = row.map((cell, column) =>
    cell.lines.flatMap((line) => wrap(line, { width: widths[column]! })),
  );
  const height = Math.max(...cells.map((lines) => lines.length));
  return Array.from({ length: height }, (_, line) => {
    const pieces = cells.map((lines, column) => {
      const text = lines[line] ?? "";
      const padding = " ".repeat(Math.max(0, widths[column]! - visibleWidth(text)));
      const style = row[column]?.style ?? null;
      const painted = text === "" || style === null ? text : paint(style, text);
      return columns[column]?.align === "right" ? padding + painted : painted + padding;
    });
    return (indent + pieces.join(BETWEEN)).replaceAll(HARD_SPACE, " ").trimEnd();
  });
}
