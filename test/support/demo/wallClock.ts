/** A moment on the wall, without a zone. */
export interface WallTime {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
  readonly second: number;
}

/** Wall time so many seconds after a start such as `2026-03-14T17:05:00`. */
export function wallTimeAfter(start: string, seconds: number): WallTime {
  const at = new Date(Date.parse(`${start}Z`) + seconds * 1000);
  return {
    year: at.getUTCFullYear(),
    month: at.getUTCMonth() + 1,
    day: at.getUTCDate(),
    hour: at.getUTCHours(),
    minute: at.getUTCMinutes(),
    second: at.getUTCSeconds(),
  };
}

/** `2026-03-14`. */
export function isoDate({ year, month, day }: WallTime): string {
  return `${year}-${two(month)}-${two(day)}`;
}

/** `17:05:00`. */
export function clockTime({ hour, minute, second }: WallTime): string {
  return `${two(hour)}:${two(minute)}:${two(second)}`;
}

/** `14.03.2026 17:05:00`. */
export function dayFirstTime(at: WallTime): string {
  return `${two(at.day)}.${two(at.month)}.${at.year} ${clockTime(at)}`;
}

/** `3/14/2026 5:05:00 PM`. */
export function monthFirstTime(at: WallTime): string {
  const hour = at.hour % 12 === 0 ? 12 : at.hour % 12;
  const half = at.hour < 12 ? "AM" : "PM";
  const time = `${hour}:${two(at.minute)}:${two(at.second)} ${half}`;
  return `${at.month}/${at.day}/${at.year} ${time}`;
}

/** `26:05:00`; hours go on past 24. */
export function elapsedTime(seconds: number): string {
  const minutes = Math.floor(seconds / 60);
  return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}:${two(seconds % 60)}`;
}

function two(value: number): string {
  return String(value).padStart(2, "0");
}
