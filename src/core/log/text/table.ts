import type { Stamps } from "../time/stamps.ts";
import type { Rejections } from "./rejections.ts";
import type { Words } from "./words.ts";

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
