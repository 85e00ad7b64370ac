import { medianStep } from "../math/statistics.ts";
import { failed, ok, type Result } from "../problem.ts";
import {
  cleanChannel,
  findGaps,
  type NamedCurve,
  outputFraction,
  stuckFaults,
} from "./channels/cleanChannel.ts";
import type { Roles } from "./channels/roles.ts";
import { celsiusColumn, celsiusInRows, type UnitChoice } from "./channels/unit.ts";
import { type CalmedColumn, withoutWild } from "./channels/wildRows.ts";
import type { OpenedLog } from "./openLog.ts";
import type { Channel, Decision, LogFault, LogOptions, LogReading } from "./reading/LogReading.ts";
import { wallTime } from "./text/calendar.ts";
import { type Column, mergedRejections, type Rejections, rejectionList } from "./text/logTable.ts";
import { type OrderedRows, orderRows } from "./time/clockDefects.ts";
import { type RowTimes, timeOfDay } from "./time/rowTimes.ts";
import { measuredRows, onlyMeasured, usableRows } from "./usableRows.ts";

/** All that was decided, ready to be turned into a reading. */
export interface Decided {
  readonly log: OpenedLog;
  readonly roles: Roles;
  readonly unit: UnitChoice;
  readonly times: RowTimes;
  /** The temperature that moves most. */
  readonly primary: Column;
  readonly decisions: readonly Decision[];
  readonly options: LogOptions;
}

/**
 * The reading of a log whose columns and times are decided.
 * @returns the reading, or `log/clock-reset`, `log/no-readings`.
 */
export function assemble(decided: Decided): Result<LogReading> {
  const { log, times, options } = decided;
  const scale = decided.unit.of(decided.primary);
  const temperatures = decided.roles.columns.filter(({ role }) => role === "temperature");
  const { lineOf, textOf } = log.table;
  const place = (row: number) => () => ({ line: lineOf(row), text: textOf(row) });
  const late = rejectionList();
  const measured = measuredRows(
    log.table,
    temperatures.map(({ column }) => column),
  );
  const moments = usableRows(times.seconds, measured, (row, reason) =>
    late.add(row === log.table.cutRow ? "the file is cut off in it" : reason, place(row)),
  );
  const inOrder = orderRows(moments, {
    name: options.name,
    clock: times.clock,
    tempsC: celsiusColumn(decided.primary.numbers, scale),
    lineOf,
    isSameRow: (a, b) => textOf(a) === textOf(b) && hasSameCells(log.table.columns, a, b),
  });
  if (!inOrder.ok) return inOrder;
  const ordered = onlyMeasured(inOrder.value, measured);
  if (ordered.rows.length < 2)
    return failed({
      code: "log/no-readings",
      what: `only ${ordered.rows.length} of ${log.table.rowCount} rows has both a time and a temperature`,
      where: options.name,
      expected: "at least two rows with a time and a temperature",
      fix: "look at the time column, and name it with --time-column when another was taken",
    });
  for (const { row, reason } of ordered.rejected) late.add(reason, place(row));
  return ok(reading(decided, ordered, mergedRejections([log.table.rejected, late])));
}

/** Whether two rows have the same values, for rows that are longer than their kept beginnings. */
function hasSameCells(columns: readonly Column[], a: number, b: number): boolean {
  return columns.every(
    ({ numbers, stamps, words }) =>
      Object.is(numbers[a], numbers[b]) &&
      Object.is(stamps.seconds[a], stamps.seconds[b]) &&
      stamps.formOf[a] === stamps.formOf[b] &&
      words.wordOf[a] === words.wordOf[b],
  );
}

/** What is said of rows: all of them accounted for. */
function rowsOf({ table }: OpenedLog, accepted: number, rejected: Rejections): LogReading["rows"] {
  const unlisted = [...rejected.unlisted].map(([reason, count]) => ({ reason, count }));
  return {
    total: table.rowCount + table.rejectedCount,
    accepted,
    rejected: rejected.listed,
    ...(unlisted.length > 0 && { unlisted }),
  };
}

function reading(decided: Decided, ordered: OrderedRows, rejected: Rejections): LogReading {
  const { log, times, unit, options } = decided;
  const first = ordered.seconds[0]!;
  const seconds = ordered.seconds.map((time) => time - first);
  const channels = channelsOf(decided, ordered.rows, seconds);
  const step = medianStep(seconds);
  const gaps = findGaps(seconds, step);
  const clockFaults = ordered.faults.map((fault) => ({
    ...fault,
    fromSeconds: fault.fromSeconds - first,
    toSeconds: fault.toSeconds - first,
  }));
  return {
    name: options.name,
    decisions: withMending(decided.decisions, ordered.mended),
    rows: rowsOf(log, ordered.rows.length, rejected),
    unit: unit.unit,
    ...(options.thermocouple && { thermocouple: options.thermocouple }),
    channels: channels.map(({ channel }) => channel),
    start: times.clock === "date" ? wallTime(first) : null,
    startOfDaySeconds: times.clock === "none" ? null : timeOfDay(first),
    intervalSeconds: step,
    gaps,
    faults: [
      ...clockFaults,
      ...doubtFaults(times, seconds),
      ...gaps.map(gapFault),
      ...coarseFaults(seconds, step),
      ...channels.flatMap(({ faults }) => faults),
      ...stuckFaults(curvesOf(channels, "temperature"), curvesOf(channels, "set-point")),
    ],
  };
}

/** Cells with and without a number, in the rows that were kept. */
function numbersIn(
  column: Column,
  rows: Int32Array,
): { readonly readings: number; readonly dropped: number } {
  let readings = 0;
  for (const row of rows) if (Number.isFinite(column.numbers[row])) readings++;
  return { readings, dropped: rows.length - readings };
}

/** Above this step a window of 15 min holds fewer than three readings [s]. */
const COARSE_STEP_SECONDS = 300;

/** Readings so far apart that rates over short times are rough. */
function coarseFaults(seconds: Float64Array, step: number): readonly LogFault[] {
  if (step <= COARSE_STEP_SECONDS) return [];
  return [
    {
      kind: "coarse",
      channel: null,
      fromSeconds: 0,
      toSeconds: seconds[seconds.length - 1]!,
      count: seconds.length,
      what: `There is one reading in ${Number((step / 60).toFixed(1))} min, so the fastest rates are rough and short turns are not seen.`,
    },
  ];
}

interface ReadChannel {
  readonly channel: Channel;
  readonly faults: readonly LogFault[];
}

function channelsOf(
  { roles, unit }: Decided,
  rows: Int32Array,
  seconds: Float64Array,
): readonly ReadChannel[] {
  const calmed = calmedColumns({ roles, unit }, rows, seconds);
  return roles.columns.map(({ column, role }): ReadChannel => {
    const isTemperature =
      role === "temperature" || role === "set-point" || role === "cold-junction";
    if (!isTemperature || column.kind !== "number") {
      const fraction =
        role === "output" ? { outputFraction: outputFraction(column, rows, seconds) } : {};
      const channel = { name: column.name, role, curve: null, ...numbersIn(column, rows) };
      return { channel: { ...channel, ...fraction }, faults: [] };
    }
    const calm = calmed.get(column) ?? {
      tempsC: celsiusInRows(column.numbers, rows, unit.of(column)),
      fault: null,
    };
    const clean = cleanChannel(column.name, seconds, calm.tempsC);
    const { curve, readings, dropped } = clean;
    const wild = calm.fault === null ? [] : [calm.fault];
    const faults =
      role === "temperature"
        ? [...wild, ...clean.faults, ...wordFaults(column, rows, seconds)]
        : [];
    return { channel: { name: column.name, role, curve, readings, dropped }, faults };
  });
}

/** The measured temperatures in °C, without stretches in which one jumps wildly. */
function calmedColumns(
  { roles, unit }: Pick<Decided, "roles" | "unit">,
  rows: Int32Array,
  seconds: Float64Array,
): ReadonlyMap<Column, CalmedColumn> {
  const measured = roles.columns
    .filter(({ column, role }) => role === "temperature" && column.kind === "number")
    .map(({ column }) => column);
  const calmed = withoutWild(
    measured.map((column) => ({
      name: column.name,
      tempsC: celsiusInRows(column.numbers, rows, unit.of(column)),
    })),
    seconds,
  );
  return new Map(measured.map((column, c) => [column, calmed[c]!]));
}

/** Words in the cells of a temperature column that stood where a number should. */
function wordFaults(column: Column, rows: Int32Array, seconds: Float64Array): readonly LogFault[] {
  if (column.missingWords.size === 0) return [];
  const { first, last } = column.missingRows;
  const among = seconds.filter((_, i) => rows[i]! >= first && rows[i]! <= last);
  const spanned = among.length > 0 ? among : seconds;
  const count = [...column.missingWords.values()].reduce((sum, each) => sum + each, 0);
  const words = [...column.missingWords.keys()].slice(0, 4).join(", ");
  return [
    {
      kind: "open",
      channel: column.name,
      fromSeconds: spanned[0]!,
      toSeconds: spanned[spanned.length - 1]!,
      count,
      what: `${column.name} has ${count} ${count === 1 ? "cell" : "cells"} without a number (${words}).`,
    },
  ];
}

function curvesOf(channels: readonly ReadChannel[], role: Channel["role"]): readonly NamedCurve[] {
  return channels.flatMap(({ channel }) =>
    channel.role === role && channel.curve !== null
      ? [{ name: channel.name, curve: channel.curve }]
      : [],
  );
}

function gapFault({
  fromSeconds,
  toSeconds,
}: {
  fromSeconds: number;
  toSeconds: number;
}): LogFault {
  const minutes = Math.round((toSeconds - fromSeconds) / 60);
  return {
    kind: "gap",
    channel: null,
    fromSeconds,
    toSeconds,
    count: 1,
    what: `Nothing was measured for ${minutes} min; nothing is assumed about it.`,
  };
}

function doubtFaults(times: RowTimes, seconds: Float64Array): readonly LogFault[] {
  if (times.doubt === null) return [];
  return [
    {
      kind: "clock",
      channel: null,
      fromSeconds: 0,
      toSeconds: seconds[seconds.length - 1]!,
      count: 1,
      what: times.doubt,
    },
  ];
}

/** What was done to the order of rows belongs to the time format. */
function withMending(
  decisions: readonly Decision[],
  mended: readonly string[],
): readonly Decision[] {
  if (mended.length === 0) return decisions;
  return decisions.map((each) =>
    each.about === "time format"
      ? { ...each, because: [each.because, ...mended].join("; ") }
      : each,
  );
}
