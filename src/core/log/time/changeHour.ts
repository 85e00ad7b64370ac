import { DAY_SECONDS, weekday } from "./calendar.ts";
import type { RowTimes } from "./rowTimes.ts";

/** Hours after midnight in which clocks are changed in Europe and America: from memory. */
const LATEST_CHANGE_HOUR = 4;

/** Whether a moment falls in the small hours of a Sunday, when summer time begins and ends. */
export function isChangeHour(time: number, clock: RowTimes["clock"]): boolean {
  const ofDay = ((time % DAY_SECONDS) + DAY_SECONDS) % DAY_SECONDS;
  const isSmallHour = ofDay <= LATEST_CHANGE_HOUR * 3600;
  return isSmallHour && (clock !== "date" || weekday(Math.floor(time / DAY_SECONDS)) === 0);
}
