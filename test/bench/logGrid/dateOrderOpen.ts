import { dayNumber } from "../../../src/core/log/text/calendar.ts";
import type { GridLog } from "./gridLog.ts";
import { TIME_STYLES } from "./timeStyles.ts";

const ORDERS = [
  [2, 1, 0],
  [2, 0, 1],
  [0, 1, 2],
] as const;

/**
 * Start days of a log under each order of day, month and year in which its dates exist, lie between
 * 2000 and 2035, and follow each other by a day.
 */
export function possibleStarts(log: GridLog): ReadonlySet<number> {
  const style = TIME_STYLES[log.levels.time];
  const starts = new Set<number>();
  if (style.order === undefined) return starts;
  const dates = datesOf(log);
  for (const order of ORDERS) {
    const days = dates.map((fields) => dayUnder(fields, order));
    const follow = days.every((day, i) => i === 0 || Math.abs(day - (days[i - 1] as number)) <= 1);
    if (days.every((day) => !Number.isNaN(day)) && follow) starts.add(Math.min(...days));
  }
  return starts;
}

/** Whether the dates of a log leave open what day it began on. */
export function dateOrderOpen(log: GridLog): boolean {
  return possibleStarts(log).size > 1;
}

type Fields = readonly [number, number, number];

/** All-digit dates in the rows of a log, where they change. */
function datesOf(log: GridLog): readonly Fields[] {
  const found = new Map<string, Fields>();
  for (const line of log.text.split(/[\r\n]+/)) {
    const match = /(?<!\d)(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})(?=[ ;,|\t"])/.exec(line);
    if (match !== null) found.set(match[0], [Number(match[1]), Number(match[3]), Number(match[4])]);
  }
  return [...found.values()];
}

function dayUnder(fields: Fields, [y, m, d]: readonly [number, number, number]): number {
  const year = fields[y] as number;
  const full = year < 100 ? 2000 + year : year;
  return full >= 2000 && full <= 2035
    ? dayNumber(full, fields[m] as number, fields[d] as number)
    : Number.NaN;
}
