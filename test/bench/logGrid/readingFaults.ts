import type { Channel, LogReading } from "../../../src/core/log/reading/LogReading.ts";
import { wallTime } from "../../../src/core/log/text/calendar.ts";
import { dateOrderOpen, possibleStarts } from "./dateOrderOpen.ts";
import type { GridColumn } from "./gridColumns.ts";
import type { GridLog } from "./gridLog.ts";
import { isTellable } from "./tellableSetPoint.ts";
import { digitC } from "./writtenNumber.ts";
import { type ReadingFault, silent, zoneFaults } from "./zoneFaults.ts";

/** All differences between a reading and the truth; empty when it is right. */
export function readingFaults(log: GridLog, reading: LogReading): readonly ReadingFault[] {
  return [
    ...columnFaults(log, reading),
    ...rowFaults(log, reading),
    ...startFaults(log, reading),
    ...leastZoneFaults(log, reading),
  ];
}

/** A row cut off may be the oldest one: then the times count from it, or from the next. */
function leastZoneFaults(log: GridLog, reading: LogReading): readonly ReadingFault[] {
  const { cutRow, elapsed, rows } = log.truth;
  const origins = cutRow === 0 ? [0, rows[0] as number] : [rows[0] as number];
  const faults = origins.flatMap((row) =>
    [true, false].map((keepsCut) =>
      zoneFaults(log, reading, { origin: elapsed[row] as number, keepsCut }),
    ),
  );
  const least = faults.reduce((a, b) => (b.length < a.length ? b : a));
  return hasOpenDial(log) && saysDial(reading)
    ? least.map((fault) => ({ ...fault, isSaid: true }))
    : least;
}

/** Whether the reading says that the clock may have a dial of twelve hours, or of 24. */
function saysDial({ decisions }: LogReading): boolean {
  return decisions.some(
    ({ about, confidence, runnerUp, option }) =>
      about === "time format" && confidence !== "certain" && runnerUp !== null && option !== null,
  );
}

function said(what: string): ReadingFault {
  return { what, isSaid: true, isOpen: false };
}

function columnFaults(log: GridLog, reading: LogReading): readonly ReadingFault[] {
  const { columns } = log.truth;
  const { channels } = reading;
  if (channels.length < columns.length)
    return [silent(`${channels.length} columns beside the time, not ${columns.length}`)];
  return columns.flatMap((column, c) => {
    const channel = channels[c] as Channel;
    const nameFaults = isNamed(log, column, channel)
      ? []
      : [silent(`"${column.name}" is called "${channel.name}"`)];
    return [...roleFaults(log, reading, { column, channel }), ...nameFaults];
  });
}

/** A column taken for what it is not; a programme that looks like a kiln may be, when the reader says so. */
function roleFaults(
  log: GridLog,
  reading: LogReading,
  { column, channel }: { readonly column: GridColumn; readonly channel: Channel },
): readonly ReadingFault[] {
  const isTaken = channel.role === "temperature";
  if (column.role === "wild" || isTaken === (column.role === "temperature")) return [];
  const what = `"${channel.name}" (${column.role}) was taken for ${channel.role}`;
  if (!saysOtherwise(reading, channel.name)) return [silent(what)];
  const { columns, elapsed } = log.truth;
  const programme = columns.find(({ role }) => role === "set-point");
  const view = { elapsed, digitC: digitC(log.levels) };
  const isOpen =
    log.levels.extra === "set point unnamed" &&
    programme !== undefined &&
    !isTellable(programme, columns, view);
  return [{ what, isSaid: true, isOpen }];
}

/** Whether the reading says of a column, by its name, that it may be taken another way, and how to say so. */
function saysOtherwise({ decisions }: LogReading, name: string): boolean {
  const columns = decisions.find(({ about }) => about === "columns");
  if (columns === undefined || columns.confidence === "certain" || columns.option === null)
    return false;
  return columns.runnerUp?.split(/, | as |; |one of /).includes(name) === true;
}

function isNamed(log: GridLog, column: GridColumn, channel: Channel): boolean {
  if (log.levels.header === "none") return true;
  const plain = (text: string) => text.toLowerCase().replace(/[\s_]+/g, "");
  return plain(channel.name).startsWith(plain(column.name));
}

function rowFaults(log: GridLog, reading: LogReading): readonly ReadingFault[] {
  const { rows } = reading;
  const faults: ReadingFault[] = [];
  if (rows.accepted + rows.rejected.length !== rows.total)
    faults.push(silent(`${rows.accepted} + ${rows.rejected.length} rows are not ${rows.total}`));
  if (log.levels.layout === "wide" && rows.total !== log.truth.bodyLines)
    faults.push(silent(`${rows.total} rows in all, not ${log.truth.bodyLines}`));
  const wanted = wantedRows(log, reading);
  // Rows with a number that is no reading, as 9999, may be kept; the number is not.
  const most = new Set(log.truth.elapsed).size;
  if (rows.accepted < wanted) faults.push(said(`${rows.accepted} rows accepted, not ${wanted}`));
  if (rows.accepted > most) faults.push(silent(`${rows.accepted} rows accepted, not ${wanted}`));
  return faults;
}

/** Rows that a reading must keep: those in which a column that it took for a temperature has one. */
function wantedRows(log: GridLog, reading: LogReading): number {
  const { rows, columns, shortRows } = log.truth;
  const taken = columns.filter(
    ({ role }, c) =>
      role === "temperature" || (role === "wild" && reading.channels[c]?.role === "temperature"),
  );
  return rows.filter((row) =>
    taken.some(
      (column) =>
        !Number.isNaN(column.tempsC[row] as number) &&
        shortRows.get(row) !== columns.indexOf(column),
    ),
  ).length;
}

function startFaults(log: GridLog, reading: LogReading): readonly ReadingFault[] {
  const { start, startOfDay } = log.truth;
  if (isFromMidnight(log) && reading.start === null && reading.startOfDaySeconds === null)
    return [];
  // A cut row that is the oldest of a log with the newest first may be the first reading or not.
  if (log.truth.cutRow === 0) return [];
  if (reading.start === null || start === null)
    return [
      ...(reading.start === start ? [] : [silent(`starts ${reading.start}, not ${start}`)]),
      ...dayFaults(startOfDay, reading.startOfDaySeconds, log.truth.timeSlack),
    ];
  if (isNear(reading.start, start, log)) return [];
  if (hasOpenDial(log) && isNear(shiftedHalfDay(start), reading.start, log)) return [];
  const isGuess = reading.decisions.some(
    ({ about, confidence }) => about === "day order" && confidence === "guessed",
  );
  const isOpen = isGuess && dateOrderOpen(log) && isPossible(log, reading.start);
  return [{ what: `starts ${reading.start}, not ${start}`, isSaid: isOpen, isOpen }];
}

/** Clock times from 0:00 on that never fall are elapsed time as well. */
function isFromMidnight({ levels, truth }: GridLog): boolean {
  return levels.time.startsWith("time of day") && (truth.startOfDay as number) < 60;
}

function isNear(a: string, b: string, log: GridLog): boolean {
  return Math.abs(secondsOf(a) - secondsOf(b)) <= 1 + log.truth.timeSlack;
}

function secondsOf(wall: string): number {
  return Date.parse(`${wall}Z`) / 1000;
}

function hasOpenDial(log: GridLog): boolean {
  return log.levels.time === "12-hour unmarked";
}

function shiftedHalfDay(start: string): string {
  const seconds = secondsOf(start);
  return wallTime(seconds % 86_400 >= 43_200 ? seconds - 43_200 : seconds + 43_200);
}

function isPossible(log: GridLog, start: string): boolean {
  return possibleStarts(log).has(Math.floor(secondsOf(start) / 86_400));
}

function dayFaults(
  wanted: number | null,
  found: number | null,
  slack: number,
): readonly ReadingFault[] {
  if (wanted === null || found === null)
    return wanted === found ? [] : [silent(`time of day ${found}, not ${wanted}`)];
  return Math.abs(wanted - found) <= 1 + slack
    ? []
    : [silent(`time of day ${found}, not ${wanted}`)];
}
