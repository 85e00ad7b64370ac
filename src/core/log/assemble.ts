import { failed, ok, type Result } from "../problem.ts";
import { cleanChannel, findGaps } from "./channels/cleanChannel.ts";
import { outputFraction } from "./channels/outputFraction.ts";
import type { RoledColumn, Roles } from "./channels/roles.ts";
import { type NamedCurve, stuckFaults } from "./channels/stuck.ts";
import { celsiusFrom, type UnitChoice } from "./channels/unit.ts";
import type {
  Channel,
  Decision,
  LogFault,
  LogOptions,
  LogReading,
  RejectedRow,
} from "./LogReading.ts";
import type { OpenedLog } from "./openLog.ts";
import { medianStep } from "./statistics.ts";
import { type Column, rejectedRow } from "./text/table.ts";
import { wallTime } from "./time/calendar.ts";
import { type OrderedRows, orderRows } from "./time/clockDefects.ts";
import type { Moment } from "./time/moment.ts";
import { type RowTimes, timeOfDay } from "./time/rowTimes.ts";

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
  const { moments, rejected } = usableRows(decided, temperatures);
  const ordered = orderRows(moments, {
    name: options.name,
    clock: times.clock,
    tempsC: decided.primary.numbers.map((value) => celsiusFrom(value, scale)),
    lineOf: (row) => log.records.lines[log.table.recordOf[row] as number] as number,
    textOf: (row) => log.records.texts[log.table.recordOf[row] as number] as string,
  });
  if (!ordered.ok) return ordered;
  if (ordered.value.rows.length < 2)
    return failed({
      code: "log/no-readings",
      what: `only ${ordered.value.rows.length} of ${log.table.rowCount} rows has both a time and a temperature`,
      where: options.name,
      expected: "at least two rows with a time and a temperature",
      fix: "look at the time column, and name it with --time-column when another was taken",
    });
  const late = ordered.value.rejected.map(({ row, reason }) =>
    rejectedRow(log.records, log.table.recordOf[row] as number, reason),
  );
  const all = [...log.table.rejected, ...rejected, ...late].sort((a, b) => a.line - b.line);
  return ok(reading(decided, ordered.value, all));
}

/** Rows with a time and at least one temperature; the others with what they lack. */
function usableRows(
  { log, times }: Decided,
  temperatures: readonly RoledColumn[],
): { readonly moments: readonly Moment[]; readonly rejected: readonly RejectedRow[] } {
  const moments: Moment[] = [];
  const rejected: RejectedRow[] = [];
  for (let row = 0; row < log.table.rowCount; row++) {
    const time = times.seconds[row] as number;
    const hasTemperature = temperatures.some(
      ({ column }) => !Number.isNaN(column.numbers[row] as number),
    );
    if (Number.isFinite(time) && hasTemperature) moments.push({ row, time });
    else {
      const reason = hasTemperature ? "no readable time" : "no temperature in it";
      rejected.push(rejectedRow(log.records, log.table.recordOf[row] as number, reason));
    }
  }
  return { moments, rejected };
}

function reading(
  decided: Decided,
  ordered: OrderedRows,
  rejected: readonly RejectedRow[],
): LogReading {
  const { log, times, unit, options } = decided;
  const first = ordered.seconds[0] as number;
  const seconds = ordered.seconds.map((time) => time - first);
  const channels = channelsOf(decided, ordered.rows, seconds);
  const gaps = findGaps(seconds);
  const clockFaults = ordered.faults.map((fault) => ({
    ...fault,
    fromSeconds: fault.fromSeconds - first,
    toSeconds: fault.toSeconds - first,
  }));
  return {
    name: options.name,
    decisions: withMending(decided.decisions, ordered.mended),
    rows: {
      total: log.table.rowCount + log.table.rejected.length,
      accepted: ordered.rows.length,
      rejected,
    },
    unit: unit.unit,
    channels: channels.map(({ channel }) => channel),
    start: times.clock === "date" ? wallTime(first) : null,
    startOfDaySeconds: times.clock === "none" ? null : timeOfDay(first),
    intervalSeconds: medianStep(seconds),
    gaps,
    faults: [
      ...clockFaults,
      ...doubtFaults(times, seconds),
      ...gaps.map(gapFault),
      ...coarseFaults(seconds),
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
  const readings = rows.reduce(
    (count, row) => count + (Number.isFinite(column.numbers[row]) ? 1 : 0),
    0,
  );
  return { readings, dropped: rows.length - readings };
}

/** Above this step a window of 15 min holds fewer than three readings [s]. */
const COARSE_STEP_SECONDS = 300;

/** Readings so far apart that rates over short times are rough. */
function coarseFaults(seconds: Float64Array): readonly LogFault[] {
  const step = medianStep(seconds);
  if (step <= COARSE_STEP_SECONDS) return [];
  return [
    {
      kind: "coarse",
      channel: null,
      fromSeconds: 0,
      toSeconds: seconds[seconds.length - 1] as number,
      count: seconds.length,
      what: `There is one reading in ${Math.round(step / 60)} min, so the fastest rates are rough and short turns are not seen.`,
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
  return roles.columns.map(({ column, role }): ReadChannel => {
    const isTemperature =
      role === "temperature" || role === "set-point" || role === "cold-junction";
    if (!isTemperature || column.kind !== "number") {
      const fraction =
        role === "output" ? { outputFraction: outputFraction(column, rows, seconds) } : {};
      const channel = { name: column.name, role, curve: null, ...numbersIn(column, rows) };
      return { channel: { ...channel, ...fraction }, faults: [] };
    }
    const scale = unit.of(column);
    const tempsC = Float64Array.from(rows, (row) =>
      celsiusFrom(column.numbers[row] as number, scale),
    );
    const clean = cleanChannel(column.name, seconds, tempsC);
    const { curve, readings, dropped } = clean;
    const faults = role === "temperature" ? [...clean.faults, ...wordFaults(column, seconds)] : [];
    return { channel: { name: column.name, role, curve, readings, dropped }, faults };
  });
}

/** Words in the cells of a temperature column that stood where a number should. */
function wordFaults(column: Column, seconds: Float64Array): readonly LogFault[] {
  if (column.missingWords.size === 0) return [];
  const count = [...column.missingWords.values()].reduce((sum, each) => sum + each, 0);
  const words = [...column.missingWords.keys()].slice(0, 4).join(", ");
  return [
    {
      kind: "open",
      channel: column.name,
      fromSeconds: 0,
      toSeconds: seconds[seconds.length - 1] as number,
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
      toSeconds: seconds[seconds.length - 1] as number,
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
