import { monthOf, plainHalfDay } from "./calendar.ts";

/**
 * The fields of a written time, before anyone knows which is the day and which the month.
 * A date has three fields in written order; with a month name they are already day, month, year.
 */
export interface Stamp {
  /** The three fields of the date; NaN without a date. */
  readonly first: number;
  readonly second: number;
  readonly third: number;
  /** `open`: digits in an order yet unknown; `year-first`: begins with four digits; `day-first`: named month. */
  readonly order: "none" | "open" | "year-first" | "day-first";
  readonly separator: string;
  /** Seconds after midnight, or elapsed; NaN without a time. Two fields are read as hours and minutes. */
  readonly seconds: number;
  /** Fields of the time: 2 = `12:30`, 3 = `12:30:00`, 0 = none. */
  readonly clockFields: number;
  /** The marker of a 12-hour clock. */
  readonly half: "am" | "pm" | null;
  /** Offset from universal time [min]; NaN without one. */
  readonly offsetMinutes: number;
  /** Written as a span of time (`1d 02:03:00`, `PT2H`), so no time of day. */
  readonly isSpan: boolean;
}

const WEEKDAY =
  "(?:(?:mon|tue|wed|thu|fri|sat|sun|lun|mar|mer|jeu|ven|sam|dim|mo|di|mi|do|fr|sa|so)[a-zé]*\\.?,?\\s+)?";
const NUMERIC_DATE = "(\\d{1,4})([-/.])(\\d{1,2})\\2(\\d{1,4})\\.?";
const NAMED_DATE =
  "(\\d{1,4})(?:st|nd|rd|th)?\\.?[-/. ]\\s?([a-zà-ÿĀ-ſ]{3,12})\\.?[-/. ,]\\s?(\\d{1,4})";
const MONTH_DAY_DATE = "([a-zà-ÿĀ-ſ]{3,12})\\.?\\s(\\d{1,2}),?\\s(\\d{4})";
const SPAN_DAYS = "(?:(\\d{1,3})(?:\\.|\\s?d(?:ays?)?,?\\s?|\\s)(?=\\d{1,2}:))?";
const CLOCK = "(\\d{1,4}):(\\d{1,2})(?::(\\d{1,2})(?:[.,:](\\d{1,9}))?)?";
const HALF = "\\s*(?:([ap])\\.?\\s?m\\.?)?";
const ZONE = "\\s*(z|utc|gmt|[+-]\\d{2}:?\\d{2}|[+-]\\d{2})?(?:\\[[^\\]]*\\])?";

const STAMP = new RegExp(
  `^${WEEKDAY}(?:${NUMERIC_DATE}|${NAMED_DATE}|${MONTH_DAY_DATE})?(?:[T_,;]?\\s*|\\s-\\s)${SPAN_DAYS}(?:${CLOCK})?${HALF}${ZONE}$`,
  "i",
);
const COMPACT = /^(\d{4})(\d{2})(\d{2})[T _-]?(\d{2})(\d{2})(\d{2})?$/;
const DURATION = /^P(?:(\d+)D)?T(?:(\d+)H)?(?:(\d+)M)?(?:(\d+(?:[.,]\d+)?)S)?$/i;

/** The fields of a written time, or null when the text is none. Plain numbers are none. */
export function parseStamp(cell: string): Stamp | null {
  const trimmed = cell.trim();
  if (trimmed.length < 3 || trimmed.length > 48) return null;
  const quick = isoStamp(trimmed);
  if (quick !== null) return quick;
  const text = plainHalfDay(trimmed);
  return compactStamp(text) ?? durationStamp(text) ?? writtenStamp(text);
}

/** `2026-03-14 17:05:00` and its like, by position; most logs are written so. */
function isoStamp(text: string): Stamp | null {
  if (text.length !== 19 || text[13] !== ":" || text[16] !== ":") return null;
  const separator = text[4]!;
  if (text[7] !== separator || !"-/.".includes(separator)) return null;
  const between = text[10];
  if (between !== "T" && between !== " ") return null;
  const hour = digits(text, 11, 13);
  const minute = digits(text, 14, 16);
  const second = digits(text, 17, 19);
  const seconds = clockSeconds(hour, minute, second);
  const first = digits(text, 0, 4);
  const middle = digits(text, 5, 7);
  const third = digits(text, 8, 10);
  if (!(seconds + first + middle + third >= 0)) return null;
  return {
    first,
    second: middle,
    third,
    order: "year-first",
    separator,
    seconds,
    clockFields: 3,
    half: null,
    offsetMinutes: Number.NaN,
    isSpan: false,
  };
}

function digits(text: string, from: number, to: number): number {
  let value = 0;
  for (let i = from; i < to; i++) {
    const digit = text.charCodeAt(i) - 48;
    if (!(digit >= 0 && digit <= 9)) return Number.NaN;
    value = value * 10 + digit;
  }
  return value;
}

function compactStamp(text: string): Stamp | null {
  const match = COMPACT.exec(text);
  if (match === null) return null;
  const [year, month, day, hour, minute, second] = match.slice(1).map((part) => Number(part ?? 0));
  if (!(year && year >= 1980 && year < 2100 && month && month <= 12 && day && day <= 31))
    return null;
  const seconds = clockSeconds(hour as number, minute as number, second || 0);
  if (Number.isNaN(seconds)) return null;
  return {
    ...NO_STAMP,
    first: year,
    second: month,
    third: day,
    order: "year-first",
    separator: "",
    seconds,
    clockFields: 3,
  };
}

function durationStamp(text: string): Stamp | null {
  const match = text[0] === "P" ? DURATION.exec(text) : null;
  if (match === null || text.endsWith("T")) return null;
  const [days, hours, minutes] = match.slice(1, 4).map((part) => Number(part ?? 0));
  const seconds = Number((match[4] ?? "0").replace(",", "."));
  return {
    ...NO_STAMP,
    seconds:
      (days as number) * 86_400 + (hours as number) * 3600 + (minutes as number) * 60 + seconds,
    clockFields: 3,
    isSpan: true,
  };
}

const NO_STAMP: Stamp = {
  first: Number.NaN,
  second: Number.NaN,
  third: Number.NaN,
  order: "none",
  separator: "",
  seconds: Number.NaN,
  clockFields: 0,
  half: null,
  offsetMinutes: Number.NaN,
  isSpan: false,
};

function writtenStamp(text: string): Stamp | null {
  const match = STAMP.exec(text);
  if (match === null) return null;
  const date = datePart(match);
  const clock = clockPart(match);
  if (date === null || clock === null) return null;
  if (date.order === "none" && clock.clockFields === 0) return null;
  return { ...NO_STAMP, ...date, ...clock };
}

type DatePart = Pick<Stamp, "first" | "second" | "third" | "order" | "separator">;

/** The date of a match; a stamp without one has order `none`; null when it cannot be a date. */
function datePart(match: RegExpExecArray): DatePart | null {
  if (match[1] !== undefined) {
    const order = match[1].length === 4 ? "year-first" : match[1].length <= 2 ? "open" : null;
    const lastLength = match[4]!.length;
    if (order === null || lastLength === 3 || (order === "year-first" && lastLength > 2))
      return null;
    return part(match[1], match[3], match[4], order, match[2]!);
  }
  if (match[5] !== undefined) {
    const month = monthOf(match[6]!);
    if (month === 0) return null;
    return match[5].length === 4
      ? part(match[5], month, match[7], "year-first", " ")
      : part(match[5], month, match[7], "day-first", " ");
  }
  if (match[8] !== undefined) {
    const month = monthOf(match[8]);
    return month === 0 ? null : part(match[9], month, match[10], "day-first", " ");
  }
  return NO_STAMP;
}

function part(
  first: string | undefined,
  second: string | number | undefined,
  third: string | undefined,
  ...[order, separator]: readonly [Stamp["order"], string]
): DatePart {
  return { first: Number(first), second: Number(second), third: Number(third), order, separator };
}

type ClockPart = Pick<Stamp, "seconds" | "clockFields" | "half" | "offsetMinutes" | "isSpan">;

const NO_CLOCK: ClockPart = {
  seconds: Number.NaN,
  clockFields: 0,
  half: null,
  offsetMinutes: Number.NaN,
  isSpan: false,
};

function clockPart(match: RegExpExecArray): ClockPart | null {
  const offsetMinutes = offsetOf(match[17]);
  const half = match[16] === undefined ? null : match[16].toLowerCase() === "a" ? "am" : "pm";
  if (match[12] === undefined) return half === null && match[17] === undefined ? NO_CLOCK : null;
  const fraction = match[15] === undefined ? 0 : Number(`0.${match[15]}`);
  const clock = clockSeconds(Number(match[12]), Number(match[13]), Number(match[14] ?? 0));
  const seconds = halfDay(clock, half) + fraction;
  if (Number.isNaN(seconds)) return null;
  const days = match[11];
  return {
    seconds: seconds + (days === undefined ? 0 : Number(days) * 86_400),
    clockFields: match[14] === undefined ? 2 : 3,
    half,
    offsetMinutes,
    isSpan: days !== undefined,
  };
}

function clockSeconds(hour: number, minute: number, second: number): number {
  return minute < 60 && second < 61 ? hour * 3600 + minute * 60 + second : Number.NaN;
}

/** 12 AM is midnight and 12 PM is noon. */
function halfDay(seconds: number, half: "am" | "pm" | null): number {
  if (half === null) return seconds;
  if (seconds >= 13 * 3600) return Number.NaN;
  const onDial = seconds >= 12 * 3600 ? seconds - 12 * 3600 : seconds;
  return half === "pm" ? onDial + 12 * 3600 : onDial;
}

function offsetOf(zone: string | undefined): number {
  if (zone === undefined) return Number.NaN;
  if (/^[a-z]/i.test(zone)) return 0;
  const parts = /^([+-])(\d{2}):?(\d{2})?$/.exec(zone);
  if (parts === null) return Number.NaN;
  const minutes = Number(parts[2]) * 60 + Number(parts[3] ?? 0);
  return parts[1] === "-" ? -minutes : minutes;
}
