import { parseTimeOfDay } from "../units/temperature.ts";

/** A moment as a person writes it down: by the clock, with or without a date, or since the start. */
export type Moment =
  | {
      readonly kind: "clock";
      /** `2026-03-15`, or null for the first such time of day after the start of the log. */
      readonly date: string | null;
      /** Seconds after midnight. */
      readonly secondsOfDay: number;
    }
  | { readonly kind: "elapsed"; readonly seconds: number };

/** Where a log stands on the clock; a part of `LogReading`. */
export interface LogClock {
  readonly start: string | null;
  readonly startOfDaySeconds: number | null;
}

/** How a moment may be written, for problems and for help. */
export const MOMENT_FORMS =
  'a clock time such as "09:10", "3:40 pm" or "2026-03-15 09:10", or a time since the start of the log such as "+14:05" (h:mm)';

const DATE = /^(\d{4})-(\d{2})-(\d{2})(?:[T ]\s*)(?=\d)/;
const ELAPSED = /^\+\s*(\d{1,3}):(\d{2})(?::(\d{2}))?$/;
const DAY_SECONDS = 86_400;

/** A moment from its text; null when it is written in none of the {@link MOMENT_FORMS}. */
export function parseMoment(text: string): Moment | null {
  const trimmed = text.trim();
  const elapsed = ELAPSED.exec(trimmed);
  if (elapsed) {
    const [, hours, minutes, seconds = "0"] = elapsed;
    if (Number(minutes) > 59 || Number(seconds) > 59) return null;
    return { kind: "elapsed", seconds: hms(Number(hours), Number(minutes), Number(seconds)) };
  }
  const [written = "", year, month, day] = DATE.exec(trimmed) ?? [];
  const secondsOfDay = parseTimeOfDay(trimmed.slice(written.length));
  if (secondsOfDay === null) return null;
  if (year !== undefined && !isDate(Number(year), Number(month), Number(day))) return null;
  return {
    kind: "clock",
    date: year === undefined ? null : `${year}-${month}-${day}`,
    secondsOfDay,
  };
}

/**
 * Seconds from the start of a log to a moment; may lie before it or after its end.
 * A clock time without a date is the first one at or after the start, so within 24 h of it.
 *
 * @returns null when the log has no clock, or no date where the moment has one.
 */
export function placeMoment(moment: Moment, clock: LogClock): number | null {
  if (moment.kind === "elapsed") return moment.seconds;
  const startOfDay = clock.startOfDaySeconds;
  if (startOfDay === null) return null;
  if (moment.date === null)
    return (((moment.secondsOfDay - startOfDay) % DAY_SECONDS) + DAY_SECONDS) % DAY_SECONDS;
  if (clock.start === null) return null;
  const days = dayNumber(moment.date) - dayNumber(clock.start.slice(0, 10));
  return days * DAY_SECONDS + moment.secondsOfDay - startOfDay;
}

function hms(hours: number, minutes: number, seconds: number): number {
  return hours * 3600 + minutes * 60 + seconds;
}

function isDate(year: number, month: number, day: number): boolean {
  return month >= 1 && month <= 12 && day >= 1 && day <= monthLength(year, month);
}

function monthLength(year: number, month: number): number {
  if (month === 2) return isLeap(year) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

function isLeap(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
}

/** Days from an arbitrary origin, by counting years from March so that the leap day comes last. */
function dayNumber(date: string): number {
  const [year = 0, month = 1, day = 1] = date.split("-").map(Number);
  const fromMarch = (month + 9) % 12;
  const y = month <= 2 ? year - 1 : year;
  return (
    365 * y +
    Math.floor(y / 4) -
    Math.floor(y / 100) +
    Math.floor(y / 400) +
    Math.floor((153 * fromMarch + 2) / 5) +
    day
  );
}

/** Something heard, as a person says it in one breath: `a crack 14:05`. */
export interface SoundSaid {
  readonly what: string;
  /** A moment as `parseMoment` reads it. */
  readonly at: string;
  /** What was assumed; absent when nothing was. */
  readonly note?: string;
}

/** What is taken for heard where only a time is said. */
const ASSUMED = { what: "pinging", note: "no words came with the time, so pinging is assumed" };

/** Small words and marks between the words and the time, which say nothing of the sound. */
const IDLE_AT_END = /(?:^|\s)(?:at|about|around|from)$|[\s,;:–-]+$/i;
const IDLE_AT_START = /^[\s,;:–-]+/;

const MARKS_AT_END = /[,;:–-]+$/;

/** What looks like one more time or date among the words. */
const MORE_TIME = /\d:\d|\d{4}-\d/;

/**
 * What was heard and when, from one line: words, then a moment, or the moment first.
 * A moment alone is taken for pinging, and the note says so.
 *
 * @returns null when no moment stands at the end or at the start, and when the words hold another.
 */
export function soundSaid(line: string): SoundSaid | null {
  const words = line.trim().split(/\s+/);
  for (let from = 0; from < words.length; from++) {
    const at = words.slice(from).join(" ");
    if (parseMoment(at) !== null) return sound(words.slice(0, from), at);
  }
  for (let to = words.length - 1; to > 0; to--) {
    const at = words.slice(0, to).join(" ").replace(MARKS_AT_END, "");
    if (parseMoment(at) !== null) return sound(words.slice(to), at);
  }
  return null;
}

function sound(words: readonly string[], at: string): SoundSaid | null {
  let what = words.join(" ").replace(IDLE_AT_START, "");
  while (IDLE_AT_END.test(what)) what = what.replace(IDLE_AT_END, "");
  if (MORE_TIME.test(what)) return null;
  return what === "" ? { ...ASSUMED, at } : { what, at };
}

/** What kind of sound words name: a single crack or knock, glaze pinging, or neither. */
export type SoundKind = "crack" | "pinging" | "other";

const PINGING = /\b(ping|ting|tink|tick|chime|crackl|tinkl|singing)/i;
const CRACK = /\b(crack(?!l)|knock|bang|snap|split|thud|pop|burst|broke|shot)/i;

/** The kind of a sound by the words that a person wrote for it. */
export function soundKind(what: string): SoundKind {
  if (PINGING.test(what)) return "pinging";
  return CRACK.test(what) ? "crack" : "other";
}
