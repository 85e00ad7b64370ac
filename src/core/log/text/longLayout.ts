import { decision } from "../decision.ts";
import type { Decision } from "../LogReading.ts";
import { temperatureUnitIn } from "./preamble.ts";
import type { Column, Table } from "./table.ts";

/** A table that had one row per channel and time, now with one column per channel. */
export interface WidenedTable {
  readonly table: Table;
  readonly decision: Decision;
}

/** Most channels that a column of words may name. */
const MOST_CHANNELS = 24;
/** Share of rows whose time another row has as well, from which the rows are one channel each. */
const REPEATED_SHARE = 0.3;

/**
 * Turns a long log (time, channel, value) into a wide one; null when the log is not long.
 * A row of the result stands for all rows of one time, and is listed by the first of them.
 */
export function widened(table: Table): WidenedTable | null {
  const channel = table.columns.find((column) => namesChannels(column));
  const values = table.columns.filter((column) => column.kind === "number");
  if (channel === undefined || values.length === 0) return null;
  const stamps = table.columns.filter((column) => column.kind === "stamp");
  const times = stamps.length > 0 ? stamps : values.slice(0, 1);
  const measured = values.filter((column) => !times.includes(column));
  const groups = groupRows(times, table.rowCount);
  const isRepeated = groups.first.length < (1 - REPEATED_SHARE) * table.rowCount;
  if (measured.length === 0 || !isRepeated) return null;
  const names = [...new Set(channel.texts)].filter((name) => name.trim() !== "");
  const columns = [
    ...times.map((column) => shortened(column, groups.first)),
    ...names.flatMap((name) =>
      measured.map((column) => channelColumn(column, { name, channel, groups, measured })),
    ),
  ];
  return {
    table: {
      columns: columns.map((column, index) => ({ ...column, index })),
      rowCount: groups.first.length,
      recordOf: Int32Array.from(groups.first, (row) => table.recordOf[row] as number),
      rejected: table.rejected,
    },
    decision: decision("layout", `one row per channel and time, by "${channel.name}"`, {
      confidence: "likely",
      because: `times repeat and "${channel.name}" names ${names.length} channels (${names.slice(0, 6).join(", ")}); rows of one time are counted as one`,
    }),
  };
}

function namesChannels(column: Column): boolean {
  if (column.kind !== "text") return false;
  const names = new Set<string>();
  for (const text of column.texts) {
    names.add(text);
    if (names.size > MOST_CHANNELS) return false;
  }
  return names.size >= 2;
}

interface Groups {
  /** First row of each group. */
  readonly first: readonly number[];
  /** Group of each row. */
  readonly of: Int32Array;
}

function groupRows(times: readonly Column[], rowCount: number): Groups {
  const byTime = new Map<string, number>();
  const first: number[] = [];
  const of = new Int32Array(rowCount);
  for (let row = 0; row < rowCount; row++) {
    const key = times.map((column) => timeKey(column, row)).join(" ");
    const known = byTime.get(key);
    of[row] = known ?? first.length;
    if (known !== undefined) continue;
    byTime.set(key, first.length);
    first.push(row);
  }
  return { first, of };
}

function timeKey(column: Column, row: number): string {
  if (column.kind === "number") return String(column.numbers[row]);
  const stamp = column.stamps[row];
  if (stamp === null || stamp === undefined) return "";
  return [stamp.first, stamp.second, stamp.third, stamp.seconds].join("/");
}

function shortened(column: Column, rows: readonly number[]): Column {
  return {
    ...column,
    numbers: Float64Array.from(
      column.kind === "number" ? rows : [],
      (row) => column.numbers[row] as number,
    ),
    stamps: column.kind === "stamp" ? rows.map((row) => column.stamps[row] ?? null) : [],
  };
}

function channelColumn(
  column: Column,
  query: {
    readonly name: string;
    readonly channel: Column;
    readonly groups: Groups;
    readonly measured: readonly Column[];
  },
): Column {
  const { name, channel, groups, measured } = query;
  const numbers = new Float64Array(groups.first.length).fill(Number.NaN);
  for (let row = 0; row < groups.of.length; row++)
    if (channel.texts[row] === name)
      numbers[groups.of[row] as number] = column.numbers[row] as number;
  return {
    ...column,
    name: measured.length === 1 ? name : `${name} ${column.name}`,
    unitText: column.unitText !== "" ? column.unitText : (temperatureUnitIn(column.name) ?? ""),
    numbers,
    missingWords: new Map(),
  };
}
