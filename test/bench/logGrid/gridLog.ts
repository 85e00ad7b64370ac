import type { LogOptions } from "../../../src/core/log/reading/LogReading.ts";
import { wallTime } from "../../../src/core/log/text/calendar.ts";
import { seeded } from "../../support/demo/seeded.ts";
import type { Levels } from "./axes.ts";
import { encodedText } from "./encodedText.ts";
import { firedZones } from "./firedZones.ts";
import { type GridColumn, gridColumns } from "./gridColumns.ts";
import { type OpenQuestions, openQuestions } from "./openQuestions.ts";
import { saysInterval } from "./remarks.ts";
import { type SampledTimes, sampledTimes } from "./sampledTimes.ts";
import { settledLevels } from "./settledLevels.ts";
import { TIME_STYLES } from "./timeStyles.ts";
import { writtenTable } from "./writtenTable.ts";

/** What a log truly says. */
interface GridTruth {
  /** Rows that hold a time and a temperature, in the order of time: row of the columns. */
  readonly rows: readonly number[];
  /** True time of each sample from the first sample [s]. */
  readonly elapsed: readonly number[];
  readonly columns: readonly GridColumn[];
  /** Wall time of the first of the rows, or null. */
  readonly start: string | null;
  /** Seconds after midnight of the first of the rows, or null. */
  readonly startOfDay: number | null;
  /** How far a time may be off because stamps are coarser than samples [s]. */
  readonly timeSlack: number;
  /** Sample whose row was cut off; -1 without. */
  readonly cutRow: number;
  /** Columns left without a cell, by sample. */
  readonly shortRows: ReadonlyMap<number, number>;
  /** Lines from the first row of readings on that are not blank. */
  readonly bodyLines: number;
  readonly open: OpenQuestions;
  /** What a person would answer when asked. */
  readonly answers: Partial<LogOptions>;
  readonly changeAt: number;
}

/** A made-up log with its truth. */
export interface GridLog {
  readonly name: string;
  readonly levels: Levels;
  readonly bytes: Uint8Array;
  readonly text: string;
  readonly truth: GridTruth;
}

/** The log of some levels; the seed settles what the levels leave open. */
export function gridLog(dealt: Levels, seed: number): GridLog {
  const levels = settledLevels(dealt);
  const times = sampledTimes(levels, seed);
  const count = times.samples.length;
  const zones = levels.zones.includes("wild") ? 3 : Number(levels.zones);
  const elapsed = times.samples.map((sample) => sample.elapsed);
  const fired = firedZones(levels, elapsed, { seed: seed + 11, zones });
  const columns = gridColumns(levels, fired, seed + 23);
  const order = fileOrder(levels, count, seed);
  const style = TIME_STYLES[levels.time];
  const timeCells = order.map((row, index) => {
    const sample = times.samples[row] as SampledTimes["samples"][number];
    const cells = style.cells({ wall: sample.shown, elapsed: sample.elapsed, index });
    return style.isDecimal === true && levels.decimal === "comma"
      ? cells.map((cell) => cell.replace(".", ","))
      : cells;
  });
  const content = {
    levels,
    timeCells,
    rowOf: order,
    columns,
    stepSeconds: times.stepSeconds,
    seed: seed + 37,
  };
  const table = writtenTable(content);
  const rows = readableRows(columns, table, order);
  const first = times.samples[rows[0] ?? 0] as SampledTimes["samples"][number];
  const cutRow = table.cutRow < 0 ? -1 : (order[table.cutRow] as number);
  return {
    name: `${seed}.csv`,
    levels,
    bytes: encodedText(table.text, levels.encoding),
    text: table.text,
    truth: {
      rows,
      elapsed,
      columns,
      start: style.kind === "dated" ? wallTime(first.shown) : null,
      startOfDay:
        style.kind === "dated" || style.kind === "time of day" ? first.shown % 86_400 : null,
      timeSlack: style.quantum > times.stepSeconds ? times.stepSeconds * 1.01 : 0.07,
      cutRow,
      shortRows: table.shortRows,
      bodyLines: table.bodyLines,
      open: openQuestions({ levels, times, columns, saysInterval: saysInterval({ levels }) }),
      answers: answersTo(levels, times),
      changeAt: times.changeAt,
    },
  };
}

/** Samples in the order of the file: turned round, a few swapped, a few written twice. */
function fileOrder(levels: Levels, count: number, seed: number): readonly number[] {
  const random = seeded(seed + 5);
  const order = Array.from({ length: count }, (_, i) => i);
  const few = Math.max(1, Math.floor(count / 200));
  const places = Array.from(
    { length: few },
    () => 2 + Math.floor(random.even() * (count - 5)),
  ).sort((a, b) => b - a);
  for (const at of places) {
    if (levels.clock === "a few out of order")
      [order[at], order[at + 1]] = [order[at + 1] as number, order[at] as number];
    if (levels.clock === "repeated rows") order.splice(at, 0, order[at] as number);
  }
  return levels.rowOrder === "newest first" ? order.toReversed() : order;
}

/** Samples with at least one temperature that was written whole. */
function readableRows(
  columns: readonly GridColumn[],
  table: { readonly shortRows: ReadonlyMap<number, number>; readonly cutRow: number },
  order: readonly number[],
): readonly number[] {
  const samples = [...new Set(order)].sort((a, b) => a - b);
  const cut = table.cutRow < 0 ? -1 : order[table.cutRow];
  return samples.filter((row) => {
    if (row === cut) return false;
    const short = table.shortRows.get(row);
    return columns.some(
      ({ role, tempsC }, c) =>
        (role === "temperature" || role === "wild") &&
        !Number.isNaN(tempsC[row] as number) &&
        short !== c,
    );
  });
}

function answersTo(levels: Levels, times: SampledTimes): Partial<LogOptions> {
  const style = TIME_STYLES[levels.time];
  const bare = { 1: "s", 60: "min", 3600: "h" } as const;
  const timeUnit =
    style.twoFields === true
      ? ({ timeUnit: style.quantum === 60 ? "min" : "s" } as const)
      : style.bareScale === undefined
        ? {}
        : { timeUnit: bare[style.bareScale as 1 | 60 | 3600] };
  return {
    unit: levels.unit,
    ...timeUnit,
    ...(style.kind === "counted" ? { intervalSeconds: times.stepSeconds } : {}),
  };
}
