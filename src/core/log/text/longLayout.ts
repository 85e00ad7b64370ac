import { type Decision, decision } from "../reading/LogReading.ts";
import { stampAt } from "./columnStores.ts";
import { shortName, temperatureUnitIn } from "./headerCells.ts";
import type { Column, Table } from "./logTable.ts";

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
 * @param told Whether it is known to be long, so that times need not show it.
 * A row of the result stands for all rows of one time, and is listed by the first of them.
 */
export function widened(table: Table, told: boolean): WidenedTable | null {
  const channel = table.columns.find((column) => namesChannels(column));
  const values = table.columns.filter((column) => column.kind === "number");
  if (channel === undefined || values.length === 0) return null;
  const stamps = table.columns.filter((column) => column.kind === "stamp");
  const times = stamps.length > 0 ? stamps : values.slice(0, 1);
  const measured = values.filter((column) => !times.includes(column) && isFilled(column));
  const fewest = (1 - REPEATED_SHARE) * table.rowCount;
  if (measured.length === 0) return null;
  if (!told && differentTimes(times, table.rowCount) >= fewest) return null;
  const groups = groupRows(times, table.rowCount, (row) => channel.words.wordOf[row]);
  if (!told && groups.first.length >= fewest) return null;
  const names = namesBeside(channel, times);
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
      lineOf: (row) => table.lineOf(groups.first[row]!),
      textOf: (row) => table.textOf(groups.first[row]!),
      rejected: table.rejected,
      rejectedCount: table.rejectedCount,
      cutRow: -1,
    },
    decision: decision("layout", `one row per channel and time, by "${channel.name}"`, {
      confidence: told ? "told" : "likely",
      option: "--layout long or wide",
      says: { layout: "long" },
      because: `times repeat and "${channel.name}" names ${names.length} channels (${names.slice(0, 6).map(shortName).join(", ")}); rows of one time are counted as one`,
    }),
  };
}

/** A column of values has some in many rows; behind a last delimiter only a line of statistics has. */
function isFilled({ numbers }: Column): boolean {
  return numbers.filter((value) => !Number.isNaN(value)).length > 0.3 * numbers.length;
}

function namesChannels(column: Column): boolean {
  const names = column.words.known?.length ?? 0;
  return column.kind === "text" && names >= 2 && names <= MOST_CHANNELS;
}

/** Names that stand beside a time: a line of statistics under the table has none. */
function namesBeside({ words }: Column, times: readonly Column[]): readonly string[] {
  const seen = new Set<number>();
  words.wordOf.forEach((word, row) => {
    if (!seen.has(word) && times.some((column) => isReadable(column, row))) seen.add(word);
  });
  return (words.known ?? []).filter((name, word) => name.trim() !== "" && seen.has(word));
}

function isReadable({ kind, stamps, numbers }: Column, row: number): boolean {
  return kind === "stamp" ? stamps.formOf[row]! >= 0 : !Number.isNaN(numbers[row]);
}

/** A lower bound of the number of different times, soon found: as many as have different hashes. */
function differentTimes(times: readonly Column[], rowCount: number): number {
  const seen = new Uint8Array(HASHES);
  let count = 0;
  for (let row = 0; row < rowCount; row++) {
    const hash = times.reduce((sum, column) => mixed(sum, timeHash(column, row)), 0) & (HASHES - 1);
    if (seen[hash] === 0) count++;
    seen[hash] = 1;
  }
  return count;
}

/** Different hashes; a power of two, several times the rows of a long log. */
const HASHES = 1 << 22;
const SCRATCH = new Float64Array(1);
const SCRATCH_WORDS = new Int32Array(SCRATCH.buffer);

/** Depends on nothing but what two rows of one time have in common. */
function timeHash({ kind, numbers, stamps }: Column, row: number): number {
  const form = stamps.forms[stamps.formOf[row] ?? -1];
  // Plus 0, since −0 is the same time.
  SCRATCH[0] = ((kind === "number" ? numbers[row] : stamps.seconds[row]) as number) + 0;
  const date = form === undefined ? 0 : (form.first * 31 + form.second) * 31 + form.third;
  return mixed(mixed(SCRATCH_WORDS[0]!, SCRATCH_WORDS[1]!), date | 0);
}

function mixed(a: number, b: number): number {
  const sum = Math.imul(a ^ b, 0x9e37_79b1);
  return sum ^ (sum >>> 15);
}

interface Groups {
  /** First row of each group. */
  readonly first: readonly number[];
  /** Group of each row. */
  readonly of: Int32Array;
}

/**
 * Rows of one time, each channel once: where a clock goes back or stamps are coarse, a time comes
 * again, and so does the channel, which begins another group.
 */
function groupRows(
  times: readonly Column[],
  rowCount: number,
  channelOf: (row: number) => unknown,
): Groups {
  const keys = Array.from({ length: rowCount }, (_, row) =>
    times.map((column) => timeKey(column, row)).join(" "),
  );
  const repeats = keys.filter((key, row) => row > 0 && key === keys[row - 1]).length;
  // Rows of one time stand together, or all rows of one channel do.
  return repeats > REPEATED_SHARE * rowCount
    ? neighbourGroups(keys, channelOf)
    : scatteredGroups(keys, channelOf);
}

function neighbourGroups(keys: readonly string[], channelOf: (row: number) => unknown): Groups {
  const first: number[] = [];
  const seen = new Set<unknown>();
  const of = Int32Array.from(keys, (key, row) => {
    const channel = channelOf(row);
    if (row === 0 || key !== keys[row - 1] || seen.has(channel)) {
      first.push(row);
      seen.clear();
    }
    seen.add(channel);
    return first.length - 1;
  });
  return { first, of };
}

function scatteredGroups(keys: readonly string[], channelOf: (row: number) => unknown): Groups {
  const first: number[] = [];
  const times = new Map<string, number>();
  const groups = new Map<string, number>();
  const of = Int32Array.from(keys, (key, row) => {
    const place = `${key}\n${String(channelOf(row))}`;
    const time = times.get(place) ?? 0;
    times.set(place, time + 1);
    const group = groups.get(`${key}\n${time}`) ?? first.length;
    if (group === first.length) first.push(row);
    groups.set(`${key}\n${time}`, group);
    return group;
  });
  return { first, of };
}

function timeKey(column: Column, row: number): string {
  if (column.kind === "number") return String(column.numbers[row]);
  const stamp = stampAt(column.stamps, row);
  if (stamp === null) return "";
  return [stamp.first, stamp.second, stamp.third, stamp.seconds].join("/");
}

function shortened(column: Column, rows: readonly number[]): Column {
  return {
    ...column,
    numbers: Float64Array.from(column.kind === "number" ? rows : [], (row) => column.numbers[row]!),
    stamps: {
      seconds: Float64Array.from(
        column.kind === "stamp" ? rows : [],
        (row) => column.stamps.seconds[row]!,
      ),
      formOf: Int32Array.from(
        column.kind === "stamp" ? rows : [],
        (row) => column.stamps.formOf[row]!,
      ),
      forms: column.stamps.forms,
    },
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
  const { wordOf, known } = channel.words;
  const word = (known ?? []).indexOf(name);
  for (let row = 0; row < groups.of.length; row++)
    if (wordOf[row] === word) numbers[groups.of[row]!] = column.numbers[row]!;
  return {
    ...column,
    name: shortName(measured.length === 1 ? name : `${name} ${column.name}`),
    unitText: column.unitText !== "" ? column.unitText : (temperatureUnitIn(column.name) ?? ""),
    numbers,
    missingWords: new Map(),
  };
}
