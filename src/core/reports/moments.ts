import { DAY_SECONDS, dateOf, dayNumber, weekday } from "../log/text/calendar.ts";
import { printDuration, printElapsed } from "../text/quantities.ts";
import type { Column } from "./Block.ts";

/**
 * The clock time of a moment: `05:54`, and on another day than the start `05:54, day 2`.
 * @param startOfDaySeconds Time of day at the start [s after midnight], null when no clock is known.
 * @returns null when no clock is known.
 */
export function clockText(startOfDaySeconds: number | null, atSeconds: number): string | null {
  if (startOfDaySeconds === null) return null;
  const minutes = Math.round((startOfDaySeconds + atSeconds) / 60);
  const day = Math.floor(minutes / (DAY_SECONDS / 60)) + 1;
  const inDay = minutes - (day - 1) * (DAY_SECONDS / 60);
  const clock = `${two(Math.floor(inDay / 60))}:${two(inDay % 60)}`;
  if (day === 1) return clock;
  return day > 1 ? `${clock}, day ${day}` : `${clock}, the day before`;
}

/** A moment in a sentence: `12:49 after the start (05:54, day 2)`. */
export function momentText(startOfDaySeconds: number | null, atSeconds: number): string {
  const clock = clockText(startOfDaySeconds, atSeconds);
  const elapsed =
    atSeconds < 0
      ? `${printElapsed(-atSeconds)} before the start`
      : `${printElapsed(atSeconds)} after the start`;
  return clock === null ? elapsed : `${elapsed} (${clock})`;
}

/** A moment in a table: hours and minutes since the start, and the clock below when it is known. */
export function momentLines(
  startOfDaySeconds: number | null,
  atSeconds: number,
): readonly string[] {
  const clock = clockText(startOfDaySeconds, atSeconds);
  return clock === null ? [printElapsed(atSeconds)] : [printElapsed(atSeconds), clock];
}

/** Columns for the lines of `momentLines`, set beside each other instead. */
export function momentColumns(what: string, startOfDaySeconds: number | null): readonly Column[] {
  const elapsed: Column = { head: { lines: [what, "after", "h:min"] }, align: "right" };
  return startOfDaySeconds === null
    ? [elapsed]
    : [elapsed, { head: { lines: [what, "by the", "clock"] }, align: "right" }];
}

/** A stretch of time in a sentence: `from 12:10 to 14:05 after the start (05:15 to 07:10, day 2)`. */
export function stretchText(
  startOfDaySeconds: number | null,
  span: { readonly fromSeconds: number; readonly toSeconds: number },
): string {
  const { fromSeconds, toSeconds } = span;
  if (toSeconds - fromSeconds < 60 || fromSeconds < 0)
    return momentText(startOfDaySeconds, fromSeconds);
  const elapsed = `from ${printElapsed(fromSeconds)} to ${printElapsed(toSeconds)} after the start`;
  const from = clockText(startOfDaySeconds, fromSeconds);
  const to = clockText(startOfDaySeconds, toSeconds);
  return from === null || to === null ? elapsed : `${elapsed} (${betweenClocks(from, to)})`;
}

/** Time of day [s after midnight] of a wall time such as `2026-12-01T18:00:00`; null when it has none. */
export function startOfDayOf(wallTime: string | null): number | null {
  const match = /T(\d{2}):(\d{2})(?::(\d{2}))?/.exec(wallTime ?? "");
  if (!match) return null;
  return Number(match[1]) * 3600 + Number(match[2]) * 60 + Number(match[3] ?? 0);
}

function betweenClocks(from: string, to: string): string {
  const [clock = from, day] = from.split(", ");
  return day !== undefined && to.endsWith(`, ${day}`) ? `${clock} to ${to}` : `${from} to ${to}`;
}

function two(value: number): string {
  return String(value).padStart(2, "0");
}

/** A clock by which moments of a firing are told. */
export interface FiringClock {
  /** Wall time of the start, `2026-05-23T18:00:00`; null where no date is known. */
  readonly start: string | null;
  /** Time of day at the start [s after midnight]; null where no clock is known. */
  readonly startOfDaySeconds: number | null;
}

const WEEKDAYS = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"] as const;
const MONTHS = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split(" ");

/**
 * A moment as people say it: `Sun 04:06` where the date is known, `04:06` where only the clock is and
 * it is the day of the start, else how long it had gone on: `10 h 06 min in`.
 */
export function saidMoment(clock: FiringClock, atSeconds: number): string {
  const start = startDay(clock.start);
  const { startOfDaySeconds } = clock;
  if (startOfDaySeconds === null) return elapsedText(atSeconds);
  const minutes = Math.round((startOfDaySeconds + atSeconds) / 60);
  const day = Math.floor(minutes / (DAY_SECONDS / 60));
  const inDay = minutes - day * (DAY_SECONDS / 60);
  const time = `${two(Math.floor(inDay / 60))}:${two(inDay % 60)}`;
  if (start !== null) return `${WEEKDAYS[weekday(start + day)]} ${time}`;
  return day === 0 ? time : `${time}, ${elapsedText(atSeconds)}`;
}

function elapsedText(seconds: number): string {
  const text = printDuration(Math.abs(seconds));
  return seconds < 0 ? `${text} before the start` : `${text} in`;
}

/** The date of a moment with its clock: `Sat 23 May 18:00`; null where no date is known. */
export function saidDate(clock: FiringClock, atSeconds = 0): string | null {
  const start = startDay(clock.start);
  const { startOfDaySeconds } = clock;
  if (start === null || startOfDaySeconds === null) return null;
  const days = Math.floor((Math.round((startOfDaySeconds + atSeconds) / 60) * 60) / DAY_SECONDS);
  const { month, day } = dateOf(start + days);
  const [name = "", time = ""] = saidMoment(clock, atSeconds).split(" ");
  return `${name} ${day} ${MONTHS[month - 1]} ${time}`;
}

/** Day number of a wall time; null without a date. */
function startDay(start: string | null): number | null {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})/.exec(start ?? "") ?? [];
  return year === undefined ? null : dayNumber(Number(year), Number(month), Number(day));
}
