import type { RejectedRow } from "../reading/LogReading.ts";
import type { Stamps, Words } from "./columnStores.ts";

/** A column as typed values, one per table row. */
export interface Column {
  readonly index: number;
  readonly name: string;
  /** From the unit row, or empty. */
  readonly unitText: string;
  readonly kind: "number" | "stamp" | "text";
  /** NaN where there is none; empty for other kinds. */
  readonly numbers: Float64Array;
  /** For stamp columns: the fields of each cell. */
  readonly stamps: Stamps;
  /** For text columns: the cells. */
  readonly words: Words;
  /** Scale written in the cells themselves. */
  readonly suffix: "C" | "F" | "K" | null;
  /** Words that stood for missing readings, with their number. */
  readonly missingWords: ReadonlyMap<string, number>;
  /** First and last row with such a word; −1 of none. */
  readonly missingRows: { readonly first: number; readonly last: number };
  /** Another scale that many cells of the column are written in; null when there is none. */
  readonly otherSuffix: "C" | "F" | "K" | null;
}

/** The body of a log: columns of values, and where each row stands in the file. */
export interface Table {
  readonly columns: readonly Column[];
  readonly rowCount: number;
  /** Line of the file [from 1] on which a row begins. */
  readonly lineOf: (row: number) => number;
  /** The beginning of a row as it stood in the file; empty when it stood beyond the bytes that are kept. */
  readonly textOf: (row: number) => string;
  /** Body rows that hold no value at all: comments, footers, repeated headers. */
  readonly rejected: Rejections;
  /** How many those are. */
  readonly rejectedCount: number;
  /** Row that was cut off with the file, of which the last cell is not kept; −1 of none. */
  readonly cutRow: number;
}

/** Rows that are listed one by one; more are counted by reason. Own choice: far more than anyone reads. */
const MOST_LISTED = 10_000;

/** Characters of a row that are shown. */
const SHOWN_CHARACTERS = 60;

/** Rows that gave no reading: the first ones listed, all of them counted. */
export interface Rejections {
  readonly listed: readonly RejectedRow[];
  /** Number of rows by reason that are not listed. */
  readonly unlisted: ReadonlyMap<string, number>;
}

/** Gathers rejected rows in bounded memory. */
export interface RejectionList extends Rejections {
  readonly add: (reason: string, where: () => Omit<RejectedRow, "reason">) => void;
}

/** An empty list of rejected rows. */
export function rejectionList(): RejectionList {
  const listed: RejectedRow[] = [];
  const unlisted = new Map<string, number>();
  return {
    listed,
    unlisted,
    add: (reason, where) => {
      if (listed.length >= MOST_LISTED) return count(unlisted, reason, 1);
      const { line, text } = where();
      listed.push({ line, reason, text: text.slice(0, SHOWN_CHARACTERS) });
    },
  };
}

/** Several lists as one, by line; what is then too much is counted. */
export function mergedRejections(lists: readonly Rejections[]): Rejections {
  const all = lists.flatMap(({ listed }) => listed).sort((a, b) => a.line - b.line);
  const unlisted = new Map<string, number>();
  for (const list of lists)
    for (const [reason, rows] of list.unlisted) count(unlisted, reason, rows);
  for (const { reason } of all.slice(MOST_LISTED)) count(unlisted, reason, 1);
  return { listed: all.slice(0, MOST_LISTED), unlisted };
}

function count(counts: Map<string, number>, reason: string, rows: number): void {
  counts.set(reason, (counts.get(reason) ?? 0) + rows);
}

/** A column by its name, without regard to case, or by its number from 1; null when there is none. */
export function findColumn(columns: readonly Column[], told: string): Column | null {
  const wanted = told.trim().toLowerCase();
  const named = columns.find((column) => column.name.toLowerCase() === wanted);
  if (named !== undefined) return named;
  return /^\d+$/.test(wanted) ? (columns[Number(wanted) - 1] ?? null) : null;
}

/** The columns with their numbers, for a message: `1 "Time", 2 "Temp"`. */
export function columnList(columns: readonly Column[]): string {
  const shown = columns.slice(0, 12).map((column) => `${column.index + 1} "${column.name}"`);
  const more = columns.length - shown.length;
  return shown.join(", ") + (more > 0 ? ` and ${more} more` : "");
}
