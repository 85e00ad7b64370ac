import { addMilliseconds } from "date-fns/addMilliseconds";
import { isValid } from "date-fns/isValid";
import { parseISO } from "date-fns/parseISO";
import { failed, ok, type Result } from "../problem.ts";
import { parseTimeOfDay } from "../units/temperature.ts";

const ISO_DAY = /^(\d{4}-\d{2}-\d{2})(?:[T ]+|$)/;
const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const NAME = MONTHS.map((month) => `${month}[a-z]*`).join("|");
/** `Dec 1`, `1 December`, with a year or without. */
const MONTH_FIRST = new RegExp(
  `^(${NAME})\\.?\\s+(\\d{1,2})(?:st|nd|rd|th)?(?:,?\\s+(\\d{4}))?,?\\s+`,
  "i",
);
const DAY_FIRST = new RegExp(
  `^(\\d{1,2})(?:st|nd|rd|th)?\\.?\\s+(${NAME})\\.?(?:,?\\s+(\\d{4}))?,?\\s+`,
  "i",
);
const NEAR_DAY = /^(today|tomorrow|tonight)(?:\s+at)?\s+/i;
const DAY_SECONDS = 86_400;

/**
 * A start as wall time without a zone, `2026-12-01T18:00:00`, from what a person wrote:
 * `2026-12-01 18:00`, with a T, with seconds, `2026-12-01 6pm`. Read as it stands; no zone ever enters.
 * With the wall time of now also `Dec 1 6pm`, `1 December 18:00`, `tomorrow 18:00` and `18:00`, each
 * the next such moment.
 *
 * @returns `schedule/not-a-start` for another form or a day that the calendar does not have.
 */
export function parseStart(text: string, where: string, now: string | null = null): Result<string> {
  const said = text.trim();
  const day = dayOf(said, now);
  const problem = {
    code: "schedule/not-a-start",
    what: `"${said.slice(0, 40)}" is not a day and a time`,
    where,
    expected: 'a start like "2026-12-01 18:00"',
    fix: "write year, month and day with hyphens, then hours and minutes",
  } as const;
  if (day !== null && day.rest === "")
    return failed({
      ...problem,
      what: `"${said}" has no time of day`,
      fix: `write "${said} 18:00"`,
    });
  const seconds = day === null ? null : parseTimeOfDay(day.rest);
  if (day === null || seconds === null) {
    const isOff =
      day !== null && /^\d{1,2}:\d{2}(?::\d{2})?$/.test(day.rest) && !/^24/.test(day.rest);
    return failed(isOff ? { ...problem, what: offCalendar(said) } : problem);
  }
  const wall = clockAtDay(day, seconds, now);
  return wall === null ? failed({ ...problem, what: offCalendar(said) }) : ok(wall);
}

/** A day that was said, and the words after it. */
interface SaidDay {
  /** Years in which it may be, the first that is still to come; one where the year was said. */
  readonly dates: readonly string[];
  readonly rest: string;
}

function dayOf(said: string, now: string | null): SaidDay | null {
  const iso = ISO_DAY.exec(said);
  if (iso) return { dates: [iso[1]!], rest: said.slice(iso[0].length) };
  const monthFirst = MONTH_FIRST.exec(said);
  const named = monthFirst ?? DAY_FIRST.exec(said);
  if (named) {
    const [all, one = "", two = "", year] = named;
    const [month, date] = monthFirst ? [one, two] : [two, one];
    const number = MONTHS.indexOf(month.slice(0, 3).toLowerCase()) + 1;
    const ending = `${pad(number)}-${pad(Number(date))}`;
    const first = now === null ? null : Number(now.slice(0, 4));
    const years = year === undefined ? (first === null ? [] : [first, first + 1]) : [year];
    if (years.length === 0) return null;
    return { dates: years.map((each) => `${each}-${ending}`), rest: said.slice(all.length) };
  }
  if (now === null) return null;
  const today = now.slice(0, 10);
  const near = NEAR_DAY.exec(said);
  if (near) {
    const isNext = near[1]?.toLowerCase() === "tomorrow";
    return { dates: [isNext ? dayAfter(today) : today], rest: said.slice(near[0].length) };
  }
  return parseTimeOfDay(said) === null ? null : { dates: [today, dayAfter(today)], rest: said };
}

/** The first of the days on which the time is still to come; null for days off the calendar. */
function clockAtDay(day: SaidDay, seconds: number, now: string | null): string | null {
  const walls = day.dates
    .filter((date) => isValid(parseISO(`${date}T00:00:00Z`)))
    .map((date) => clockAt(`${date}T00:00:00`, seconds));
  const isSaid = day.dates.length === 1 || now === null;
  return (isSaid ? walls[0] : walls.find((wall) => wall >= now)) ?? null;
}

function dayAfter(date: string): string {
  return clockAt(`${date}T00:00:00`, DAY_SECONDS).slice(0, 10);
}

function offCalendar(said: string): string {
  return `"${said}" is not on the calendar or the clock`;
}

function pad(value: number): string {
  return String(value).padStart(2, "0");
}

/**
 * The wall time some seconds after a start, `2026-12-02T05:42:00`, to the nearest second.
 * Every day has 24 hours here: a change to or from summer time is not in it.
 *
 * @throws RangeError when the start is not one that `parseStart` gave, or the seconds are not finite.
 */
export function clockAt(start: string, seconds: number): string {
  const moment = addMilliseconds(parseISO(`${start}Z`), Math.round(seconds) * 1000);
  if (!isValid(moment)) throw new RangeError(`clockAt: ${start} + ${seconds} s`);
  return moment.toISOString().slice(0, 19);
}
