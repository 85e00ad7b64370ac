/** The fields of a written time that was read from bytes; meanings as in `Stamp`. */
export interface FastStamp {
  first: number;
  second: number;
  third: number;
  /** 0 none, 1 open, 2 year first. */
  order: number;
  /** The byte between the fields of the date; 0 without one. */
  separator: number;
  seconds: number;
  clockFields: number;
  /** 0 none, 1 AM, 2 PM. */
  half: number;
  offsetMinutes: number;
}

/** No date and no time yet. */
export function noFastStamp(): FastStamp {
  return {
    first: Number.NaN,
    second: Number.NaN,
    third: Number.NaN,
    order: 0,
    separator: 0,
    seconds: Number.NaN,
    clockFields: 0,
    half: 0,
    offsetMinutes: Number.NaN,
  };
}

const BLANK = 32;
const PLUS = 43;
const COMMA = 44;
const DASH = 45;
const POINT = 46;
const SLASH = 47;
const COLON = 58;
const BIG_T = 84;
const BIG_Z = 90;

/** Where a time is read into, and the byte between cells, which never belongs to a time. */
export interface StampQuery {
  readonly into: FastStamp;
  readonly delimiter: number;
}

/** How much of a byte that is no digit `digitOf` gives. */
const NO_DIGIT = 10;
const FRACTION_POWERS = Float64Array.from({ length: 10 }, (_, i) => 10 ** i);

/**
 * Reads a date in digits, a clock time, or both with one blank or T between, by position.
 * @returns the place after it; −1 for any other writing, which `parseStamp` must look at.
 */
export function fastStamp(bytes: Uint8Array, from: number, query: StampQuery): number {
  const { into, delimiter } = query;
  const usual = usualStamp(bytes, from, query);
  if (usual >= 0) return usual;
  const length = digitRun(bytes, from, 4);
  const next = bytes[from + length]!;
  if (length === 0) return -1;
  if (next === COLON) {
    into.order = 0;
    into.separator = 0;
    into.first = into.second = into.third = Number.NaN;
    return clock(bytes, from, query);
  }
  const after = date(bytes, from, into);
  if (after < 0) return -1;
  const between = bytes[after]!;
  const goesOn = (between === BLANK || between === BIG_T) && between !== delimiter;
  if (goesOn && digitOf(bytes, after + 1) < NO_DIGIT) return clock(bytes, after + 1, query);
  into.seconds = Number.NaN;
  into.clockFields = 0;
  into.half = 0;
  into.offsetMinutes = Number.NaN;
  return after;
}

/** `2026-03-14 17:05:00` and its like, the way in which most logs are written; −1 for any other. */
function usualStamp(bytes: Uint8Array, from: number, query: StampQuery): number {
  const separator = bytes[from + 4]!;
  const between = bytes[from + 10]!;
  const isShape =
    bytes[from + 7] === separator && bytes[from + 13] === COLON && bytes[from + 16] === COLON;
  if (!isShape || (between !== BLANK && between !== BIG_T) || between === query.delimiter)
    return -1;
  if (separator !== DASH && separator !== SLASH && separator !== POINT) return -1;
  const year = two(bytes, from) * 100 + two(bytes, from + 2);
  const month = two(bytes, from + 5);
  const day = two(bytes, from + 8);
  const hour = two(bytes, from + 11);
  const minute = two(bytes, from + 14);
  const second = two(bytes, from + 17);
  if (year + month + day + hour + minute + second >= NO_DIGITS || minute >= 60 || second >= 61)
    return -1;
  const { into } = query;
  into.first = year;
  into.second = month;
  into.third = day;
  into.order = 2;
  into.separator = separator;
  into.clockFields = 3;
  into.seconds = hour * 3600 + minute * 60 + second;
  return afterClock(bytes, from + 19, query);
}

/** More than all fields of a time together: the sign of a byte that is no digit. */
const NO_DIGITS = 100_000;

/** The value of two digits. */
function two(bytes: Uint8Array, at: number): number {
  const tens = bytes[at]! - 48;
  const ones = bytes[at + 1]! - 48;
  const areDigits = tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9;
  return areDigits ? tens * 10 + ones : NO_DIGITS;
}

function date(bytes: Uint8Array, from: number, into: FastStamp): number {
  const length = digitRun(bytes, from, 4);
  const separator = bytes[from + length]!;
  if (length === 3 || (separator !== DASH && separator !== SLASH && separator !== POINT)) return -1;
  const secondAt = from + length + 1;
  const secondLength = digitRun(bytes, secondAt, 2);
  if (secondLength === 0 || bytes[secondAt + secondLength] !== separator) return -1;
  const thirdAt = secondAt + secondLength + 1;
  const thirdLength = digitRun(bytes, thirdAt, 4);
  const isYearFirst = length === 4;
  if (thirdLength === 0 || thirdLength === 3 || (isYearFirst && thirdLength > 2)) return -1;
  into.first = whole(bytes, from, length);
  into.second = whole(bytes, secondAt, secondLength);
  into.third = whole(bytes, thirdAt, thirdLength);
  into.order = isYearFirst ? 2 : 1;
  into.separator = separator;
  return thirdAt + thirdLength;
}

function clock(bytes: Uint8Array, from: number, query: StampQuery): number {
  const { into } = query;
  const hourLength = digitRun(bytes, from, 4);
  const minuteAt = from + hourLength + 1;
  const minuteLength = digitRun(bytes, minuteAt, 2);
  if (hourLength === 0 || bytes[minuteAt - 1] !== COLON || minuteLength === 0) return -1;
  const minute = whole(bytes, minuteAt, minuteLength);
  let at = minuteAt + minuteLength;
  let second = 0;
  into.clockFields = 2;
  if (bytes[at] === COLON) {
    const secondLength = digitRun(bytes, ++at, 2);
    if (secondLength === 0) return -1;
    second = whole(bytes, at, secondLength);
    at += secondLength;
    into.clockFields = 3;
  }
  if (minute >= 60 || second >= 61) return -1;
  into.seconds = whole(bytes, from, hourLength) * 3600 + minute * 60 + second;
  return afterClock(bytes, at, query);
}

/** A fraction of the second, a half of the day, an offset: each if it is there. */
function afterClock(bytes: Uint8Array, from: number, query: StampQuery): number {
  const { into, delimiter } = query;
  into.half = 0;
  into.offsetMinutes = Number.NaN;
  const next = bytes[from]!;
  if (next === delimiter || next < BLANK) return from;
  let at = from;
  let fraction = 0;
  if (next === POINT || next === COMMA) {
    const length = digitRun(bytes, ++at, 9);
    if (length === 0 || into.clockFields === 2) return -1;
    fraction = whole(bytes, at, length) / FRACTION_POWERS[length]!;
    at += length;
  }
  at = halfOfDay(bytes, at, query);
  if (at < 0) return -1;
  into.seconds += fraction;
  return offset(bytes, at, into);
}

/** AM or PM, with or without a blank before it; 12 AM is midnight and 12 PM is noon. */
function halfOfDay(bytes: Uint8Array, from: number, query: StampQuery): number {
  const { into, delimiter } = query;
  const at = bytes[from] === BLANK && delimiter !== BLANK ? from + 1 : from;
  const letter = bytes[at]! | 32;
  if ((letter !== 97 && letter !== 112) || (bytes[at + 1]! | 32) !== 109) return from;
  if (into.seconds >= 13 * 3600) return -1;
  into.half = letter === 97 ? 1 : 2;
  const onDial = into.seconds >= 12 * 3600 ? into.seconds - 12 * 3600 : into.seconds;
  into.seconds = into.half === 2 ? onDial + 12 * 3600 : onDial;
  return at + 2;
}

/** Z, or a sign with hours and perhaps minutes. */
function offset(bytes: Uint8Array, from: number, into: FastStamp): number {
  const sign = bytes[from]!;
  if (sign === BIG_Z) {
    into.offsetMinutes = 0;
    return from + 1;
  }
  if (sign !== PLUS && sign !== DASH) return from;
  if (digitRun(bytes, from + 1, 2) !== 2) return -1;
  let at = from + 3;
  let minutes = whole(bytes, from + 1, 2) * 60;
  const minuteAt = bytes[at] === COLON ? at + 1 : at;
  const length = digitRun(bytes, minuteAt, 2);
  if (length === 1 || (length === 0 && minuteAt !== at)) return -1;
  if (length === 2) {
    minutes += whole(bytes, minuteAt, 2);
    at = minuteAt + 2;
  }
  into.offsetMinutes = sign === DASH ? -minutes : minutes;
  return at;
}

function digitOf(bytes: Uint8Array, at: number): number {
  const digit = bytes[at]! - 48;
  return digit >= 0 && digit <= 9 ? digit : NO_DIGIT;
}

/** Digits from a place on, up to a number of them. */
function digitRun(bytes: Uint8Array, from: number, most: number): number {
  let length = 0;
  while (length < most && digitOf(bytes, from + length) < NO_DIGIT) length++;
  return length;
}

function whole(bytes: Uint8Array, from: number, length: number): number {
  let value = 0;
  for (let i = 0; i < length; i++) value = value * 10 + bytes[from + i]! - 48;
  return value;
}

/** A place in bytes that a reader moves on; −1 when what stands there is not written plainly. */
export interface Cursor {
  at: number;
}

/** Most digits whose value a floating-point number holds exactly, whatever they are. */
const EXACT_DIGITS = 15;
/** Powers of ten by which one division of such a value is rounded as the decimal itself would be. */
const NUMBER_POWERS = Float64Array.from({ length: EXACT_DIGITS + 1 }, (_, i) => Number(`1e${i}`));

/**
 * The number at the cursor if it is written as digits, perhaps with a sign and a fraction, bit for
 * bit what `Number` gives. The cursor is left after it, or at −1 for any other writing.
 */
export function fastNumber(bytes: Uint8Array, cursor: Cursor, mark: number): number {
  let at = cursor.at;
  const sign = bytes[at]!;
  if (sign === 45 || sign === 43) at++;
  const start = at;
  let value = 0;
  let digit = bytes[at]! - 48;
  while (digit >= 0 && digit <= 9) {
    value = value * 10 + digit;
    digit = bytes[++at]! - 48;
  }
  let count = at - start;
  if (count > 0 && digit === mark - 48) {
    const first = ++at;
    digit = bytes[at]! - 48;
    while (digit >= 0 && digit <= 9) {
      value = value * 10 + digit;
      digit = bytes[++at]! - 48;
    }
    const places = at - first;
    count = places === 0 ? 0 : count + places;
    if (count <= EXACT_DIGITS) value /= NUMBER_POWERS[places]!;
  }
  cursor.at = count > 0 && count <= EXACT_DIGITS ? at : -1;
  return sign === 45 ? -value : value;
}
