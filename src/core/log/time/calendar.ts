/** Seconds in a day. */
export const DAY_SECONDS = 86_400;

/** Days from 1970-01-01 to a day of the Gregorian calendar; months 1…12, NaN for no such day. */
export function dayNumber(year: number, month: number, day: number): number {
  if (!(month >= 1 && month <= 12 && day >= 1 && day <= monthLength(year, month)))
    return Number.NaN;
  // Years counted from March, so that the leap day is the last of its year.
  const shifted = month <= 2 ? year - 1 : year;
  const era = Math.floor(shifted / 400);
  const yearOfEra = shifted - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra =
    yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146_097 + dayOfEra - 719_468;
}

/** Wall time `2026-03-14T17:05:00` of a count of seconds from 1970-01-01, to the second. */
export function wallTime(seconds: number): string {
  const whole = Math.floor(seconds + 1e-6);
  const { year, month, day } = dateOf(Math.floor(whole / DAY_SECONDS));
  const rest = whole - Math.floor(whole / DAY_SECONDS) * DAY_SECONDS;
  const clock = [Math.floor(rest / 3600), Math.floor((rest % 3600) / 60), rest % 60];
  return `${String(year).padStart(4, "0")}-${two(month)}-${two(day)}T${clock.map(two).join(":")}`;
}

/** Year, month and day of a day number. */
export function dateOf(days: number): { year: number; month: number; day: number } {
  const shifted = days + 719_468;
  const era = Math.floor(shifted / 146_097);
  const dayOfEra = shifted - era * 146_097;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  );
  const dayOfYear =
    dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const fromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
  const day = dayOfYear - Math.floor((153 * fromMarch + 2) / 5) + 1;
  return { year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, day };
}

/** Day of the week, 0 = Sunday. */
export function weekday(days: number): number {
  return (((days + 4) % 7) + 7) % 7;
}

function monthLength(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

function two(value: number): string {
  return String(value).padStart(2, "0");
}
