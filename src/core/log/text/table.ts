import type { RejectedRow } from "../LogReading.ts";
import { parseStamp, type Stamp } from "../time/stamp.ts";
import { type DecimalMark, isMissingWord, patientNumber, plainNumber } from "./cellKind.ts";
import type { SplitCells } from "./cells.ts";
import type { Layout } from "./layout.ts";
import type { Records } from "./records.ts";

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
  readonly stamps: readonly (Stamp | null)[];
  /** For text columns: the cells. */
  readonly texts: readonly string[];
  /** Scale written in the cells themselves. */
  readonly suffix: "C" | "F" | "K" | null;
  /** Words that stood for missing readings, with their number. */
  readonly missingWords: ReadonlyMap<string, number>;
}

/** The body of a log: columns of values, and where each row stands in the file. */
export interface Table {
  readonly columns: readonly Column[];
  readonly rowCount: number;
  /** Record of each row. */
  readonly recordOf: Int32Array;
  /** Body rows that hold no value at all: comments, footers, repeated headers. */
  readonly rejected: readonly RejectedRow[];
}

/** A row that gives no reading, as it is listed. */
export function rejectedRow(records: Records, record: number, reason: string): RejectedRow {
  return {
    line: records.lines[record] as number,
    reason,
    text: (records.texts[record] as string).slice(0, 60),
  };
}

interface Builder {
  readonly kind: Column["kind"];
  readonly numbers: Float64Array;
  readonly stamps: (Stamp | null)[];
  readonly texts: string[];
  readonly suffixes: { C: number; F: number; K: number };
  readonly missing: Map<string, number>;
}

/** Reads every row of the body into typed columns, in one pass. */
export function readTable(
  records: Records,
  layout: Layout,
  { split, decimal }: { readonly split: SplitCells; readonly decimal: DecimalMark },
): Table {
  const most = records.texts.length - layout.bodyStart;
  const builders = layout.kinds.map((kind): Builder => newBuilder(kind, most));
  const recordOf = new Int32Array(most);
  const rejected: RejectedRow[] = [];
  let row = 0;
  for (let at = layout.bodyStart; at < records.texts.length; at++) {
    const text = records.texts[at] as string;
    if (text.trim() === "") continue;
    const reason = commentReason(text, layout);
    const values = reason === null ? fillRow(builders, split(text), { row, decimal }) : 0;
    if (values > 0) recordOf[row++] = at;
    else rejected.push(rejectedRow(records, at, reason ?? "no number and no time in it"));
  }
  return {
    columns: builders.map((builder, index) => finish(builder, index, { layout, row })),
    rowCount: row,
    recordOf: recordOf.subarray(0, row),
    rejected,
  };
}

function commentReason(text: string, layout: Layout): string | null {
  if (/^\s*(?:#|\/\/|%)/.test(text)) return "a comment";
  return layout.headerText !== "" && text === layout.headerText ? "the header again" : null;
}

function newBuilder(kind: Layout["kinds"][number], most: number): Builder {
  const columnKind =
    kind === "stamp" || kind === "text" ? kind : kind === "number" ? "number" : "number";
  return {
    kind: columnKind,
    numbers: new Float64Array(columnKind === "number" ? most : 0).fill(Number.NaN),
    stamps: [],
    texts: [],
    suffixes: { C: 0, F: 0, K: 0 },
    missing: new Map(),
  };
}

/** Puts the cells of a row into their columns; returns how many values there were. */
function fillRow(
  builders: readonly Builder[],
  cells: readonly string[],
  { row, decimal }: { readonly row: number; readonly decimal: DecimalMark },
): number {
  let values = 0;
  for (let c = 0; c < builders.length; c++) {
    const builder = builders[c] as Builder;
    const cell = cells[c] ?? "";
    if (builder.kind === "number") {
      const value = plainNumber(cell, decimal);
      const read = !Number.isNaN(value) ? value : oddNumber(builder, cell, decimal);
      builder.numbers[row] = read;
      if (!Number.isNaN(read)) values++;
    } else if (builder.kind === "stamp") {
      const stamp = parseStamp(cell);
      builder.stamps[row] = stamp;
      if (stamp !== null) values++;
    } else builder.texts[row] = cell;
  }
  return values;
}

function oddNumber(builder: Builder, cell: string, decimal: DecimalMark): number {
  const number = patientNumber(cell, decimal);
  if (number !== null) {
    if (number.suffix !== null) builder.suffixes[number.suffix]++;
    return number.value;
  }
  const word = cell.trim().slice(0, 16);
  if (word !== "") {
    const known = isMissingWord(word) ? word : "other words";
    builder.missing.set(known, (builder.missing.get(known) ?? 0) + 1);
  }
  return Number.NaN;
}

function finish(
  builder: Builder,
  index: number,
  { layout, row }: { readonly layout: Layout; readonly row: number },
): Column {
  const { C, F, K } = builder.suffixes;
  const most = Math.max(C, F, K);
  return {
    index,
    name: layout.names[index] as string,
    unitText: layout.units[index] ?? "",
    kind: builder.kind,
    numbers: builder.numbers.subarray(0, row),
    stamps: builder.stamps.slice(0, row),
    texts: builder.texts.slice(0, row),
    suffix: most === 0 ? null : most === C ? "C" : most === F ? "F" : "K",
    missingWords: builder.missing,
  };
}
