import type { Caution } from "../cautions/cautions.ts";
import {
  adviceText,
  type Finding,
  ordered,
  type Severity,
  statementText,
} from "../findings/Finding.ts";
import { inert } from "../text/escape.ts";
import { capitalised, glued, HARD_SPACE, visibleWidth, wrap } from "../text/wrap.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { stretchText } from "./moments.ts";

/** A cell of a table: one text, or lines that stand below each other. */
export type Cell = string | { readonly lines: readonly string[]; readonly style?: PaintStyle };

/** A column of a table; numbers stand to the right. */
export interface Column {
  readonly head: Cell;
  readonly align: "left" | "right";
}

/** A chart drawn for a light page and for a dark one; SVG of our own making. */
export interface ChartPair {
  readonly light: string;
  readonly dark: string;
}

/**
 * One piece of a report. Text and page are both made from the same blocks, so that they cannot
 * come to say different things. Strings are plain text, not yet made harmless or escaped.
 */
export type Block =
  /** An emergency: stands above the title, before all else. */
  | { readonly kind: "alarm"; readonly text: string }
  | { readonly kind: "heading"; readonly text: string }
  | { readonly kind: "lead"; readonly text: string }
  | { readonly kind: "sentence"; readonly text: string; readonly style?: PaintStyle }
  | { readonly kind: "list"; readonly items: readonly string[] }
  /** Lines to copy as they stand, spaces included. */
  | { readonly kind: "lines"; readonly lines: readonly string[] }
  | {
      readonly kind: "facts";
      readonly facts: readonly { readonly label: string; readonly text: string }[];
    }
  | {
      readonly kind: "finding";
      readonly severity: Severity;
      readonly statement: string;
      readonly advice: string;
      /** Thermocouple and time, or null when it holds for the whole. */
      readonly where: string | null;
    }
  | {
      readonly kind: "table";
      readonly caption: string;
      readonly columns: readonly Column[];
      readonly rows: readonly (readonly Cell[])[];
    }
  | { readonly kind: "caution"; readonly topic: string; readonly text: string }
  /** Only a page shows it; the description says in words what it draws. */
  | { readonly kind: "chart"; readonly description: string; readonly chart: ChartPair }
  /** Only a page shows it: a photograph, as a data address of our own making. */
  | { readonly kind: "picture"; readonly description: string; readonly dataUrl: string };

/** Blocks under a heading; nothing at all when there are none. */
export function section(text: string, blocks: readonly Block[]): readonly Block[] {
  return blocks.length === 0 ? [] : [{ kind: "heading", text }, ...blocks];
}

/** A chart as a block, when there is one. */
export function chartBlocks(description: string, chart: ChartPair | undefined): readonly Block[] {
  return chart === undefined ? [] : [{ kind: "chart", description, chart }];
}

/** What a piece of text is, so that a terminal may colour it. */
export type PaintStyle = "heading" | "strong" | "faint" | "warning" | "caution" | "note" | "good";

/**
 * Colours a piece of text for where it is shown, or leaves it alone.
 * It may only add escape codes; the visible text stays, because the meaning is in the words.
 */
export type Paint = (style: PaintStyle, text: string) => string;

/** Paint for a file, a pipe or a reader who wants no colour. */
export const plainPaint: Paint = (_style, text) => text;

/** What can hurt, each said once, at the end of every report. */
export function cautionBlocks(cautions: readonly Caution[]): readonly Block[] {
  const once = cautions.filter(
    (caution, index) => cautions.findIndex((other) => other.text === caution.text) === index,
  );
  if (once.length === 0) return [];
  return [
    { kind: "heading", text: "Take care" },
    ...once.map(({ topic, text }): Block => ({ kind: "caution", topic, text })),
  ];
}

const WORST_FIRST: readonly Severity[] = ["warning", "caution", "note"];

/** Findings, worst first, each with its severity as a word, its advice, and where and when it holds. */
export function findingBlocks(
  findings: readonly Finding[],
  context: { readonly unit: TemperatureUnit; readonly startOfDaySeconds: number | null },
): readonly Block[] {
  const { unit, startOfDaySeconds } = context;
  return [
    { kind: "heading", text: "Findings" },
    { kind: "sentence", text: countSentence(findings) },
    ...ordered(findings).map(
      (finding): Block => ({
        kind: "finding",
        severity: finding.severity,
        statement: statementText(finding, unit),
        advice: adviceText(finding, unit),
        where: whereText(finding, startOfDaySeconds),
      }),
    ),
  ];
}

function countSentence(findings: readonly Finding[]): string {
  if (findings.length === 0) return "Nothing stood out in what could be seen.";
  const counts = WORST_FIRST.flatMap((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    return count === 0 ? [] : [`${count} ${severity}${count === 1 ? "" : "s"}`];
  });
  return `${counts.join(", ")}.`;
}

function whereText(finding: Finding, startOfDaySeconds: number | null): string | null {
  const parts = [
    ...(finding.zone === null ? [] : [`thermocouple ${finding.zone}`]),
    ...(finding.span === null ? [] : [stretchText(startOfDaySeconds, finding.span)]),
  ];
  return parts.length === 0 ? null : `${capitalised(parts.join(", "))}.`;
}

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
