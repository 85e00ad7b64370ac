import { median } from "../statistics.ts";
import { DAY_SECONDS, dateOf, weekday } from "./calendar.ts";
import type { RowTimes } from "./rowTimes.ts";

/** Hours after midnight in which clocks are changed in Europe and America: from memory. */
const LATEST_CHANGE_HOUR = 4;

/** Whether a moment falls in the small hours of a Sunday, when summer time begins and ends. */
export function isChangeHour(time: number, clock: RowTimes["clock"]): boolean {
  const ofDay = ((time % DAY_SECONDS) + DAY_SECONDS) % DAY_SECONDS;
  const isSmallHour = ofDay <= LATEST_CHANGE_HOUR * 3600;
  return isSmallHour && (clock !== "date" || weekday(Math.floor(time / DAY_SECONDS)) === 0);
}

/**
 * Whether a day is one on which clocks change: the last Sunday of March or October in Europe, the
 * second of March or the first of November in North America. From memory.
 */
export function isChangeDay(day: number): boolean {
  if (Number.isNaN(day) || weekday(day) !== 0) return false;
  const { month, day: ofMonth } = dateOf(day);
  const isLast = ofMonth > 24;
  if (month === 3) return isLast || (ofMonth > 7 && ofMonth < 15);
  return (month === 10 && isLast) || (month === 11 && ofMonth < 8);
}

/**
 * The row before which clock times jump by an hour in the small hours, to within a step and a half; −1
 * when none does, and of steps of half an hour or more.
 * @param ofDay Seconds after midnight, row by row, from the oldest or from the newest on.
 */
export function hourJumpRow(ofDay: Float64Array): number {
  const jumps = ofDay.map((time, i) => Math.abs(time - (ofDay[i - 1] ?? time)));
  const step = median([...jumps.filter((jump) => jump > 0)]);
  if (!(step < 1800)) return -1;
  return jumps.findIndex(
    (jump, i) =>
      Math.abs(jump - 3600) <= 1.5 * step + 1 &&
      jump > 2 * step &&
      (ofDay[i] as number) <= LATEST_CHANGE_HOUR * 3600,
  );
}
