import { addMilliseconds } from "date-fns/addMilliseconds";
import { isValid } from "date-fns/isValid";
import { parseISO } from "date-fns/parseISO";
import { failed, ok, type Result } from "../problem.ts";

const START = /^(\d{4}-\d{2}-\d{2})(?:[T ]+(\d{1,2}):(\d{2})(?::(\d{2}))?)?$/;

/**
 * A start as wall time without a zone, `2026-12-01T18:00:00`, from what a person wrote:
 * `2026-12-01 18:00`, with a T, with seconds. Read as it stands; no zone ever enters.
 *
 * @returns `schedule/not-a-start` for another form or a day that the calendar does not have.
 */
export function parseStart(text: string, where: string): Result<string> {
  const parts = START.exec(text.trim());
  const [, day, hours, minutes, seconds = "00"] = parts ?? [];
  const problem = {
    code: "schedule/not-a-start",
    what: `"${text.trim().slice(0, 40)}" is not a day and a time`,
    where,
    expected: 'a start like "2026-12-01 18:00"',
    fix: "write year, month and day with hyphens, then hours and minutes",
  } as const;
  if (parts && hours === undefined)
    return failed({
      ...problem,
      what: `"${day}" has no time of day`,
      fix: `write "${day} 18:00"`,
    });
  const wall = `${day}T${(hours ?? "").padStart(2, "0")}:${minutes}:${seconds}`;
  if (!parts || Number(hours) > 23) return failed(problem);
  if (!isValid(parseISO(`${wall}Z`)))
    return failed({ ...problem, what: `"${text.trim()}" is not on the calendar or the clock` });
  return ok(wall);
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
