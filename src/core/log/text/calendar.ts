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

/**
 * Words for the two halves of the day as spreadsheets and loggers write them beside a clock, each
 * as morning and afternoon: Chinese, Japanese, Korean, Greek, Swedish, Hungarian, Arabic, Hindi,
 * Vietnamese, Albanian, Turkish; from memory. AM, a.m. and a. m. are read without this list.
 */
const HALVES: readonly (readonly [morning: string, afternoon: string])[] = [
  ["上午", "下午"],
  ["午前", "午後"],
  ["오전", "오후"],
  ["πμ", "μμ"],
  ["π.μ.", "μ.μ."],
  ["fm", "em"],
  ["f.m.", "e.m."],
  ["de.", "du."],
  ["ص", "م"],
  ["पूर्वाह्न", "अपराह्न"],
  ["SA", "CH"],
  ["paradite", "pasdite"],
  ["ÖÖ", "ÖS"],
];

const MEANING = new Map(
  HALVES.flatMap(([morning, afternoon]) => [
    [morning.toLowerCase(), "AM"] as const,
    [afternoon.toLowerCase(), "PM"] as const,
  ]),
);
const WORDS = [...MEANING.keys()]
  .sort((a, b) => b.length - a.length)
  .map((word) => word.replaceAll(".", "\\."))
  .join("|");
const BEFORE = new RegExp(
  `(?:^|\\s)(${WORDS})\\s?(\\d{1,2}:\\d{2}(?::\\d{2}(?:[.,]\\d+)?)?)$`,
  "i",
);
const AFTER = new RegExp(`(\\d:\\d{2}(?::\\d{2}(?:[.,]\\d+)?)?)\\s?(${WORDS})$`, "i");
const SPACED = /([ap])\.\s([m])\.$/i;

/**
 * A written time with its half of the day as AM or PM behind it, whatever the language; other texts
 * as they are.
 */
export function plainHalfDay(text: string): string {
  const last = text.charCodeAt(text.length - 1);
  const endsInDigit = last >= 48 && last <= 57;
  const hasOther = /[^\x21-\x7e]/.test(text);
  if (endsInDigit && !hasOther) return text;
  const spaced = text.replace(/[\u00a0\u2009\u202f]/g, " ").replace(SPACED, "$1$2");
  if (endsInDigit)
    return spaced.replace(BEFORE, (_, word: string, clock: string) => ` ${clock} ${halfOf(word)}`);
  return spaced.replace(AFTER, (_, clock: string, word: string) => `${clock} ${halfOf(word)}`);
}

function halfOf(word: string): string {
  return MEANING.get(word.toLowerCase()) ?? "";
}

/** Beginnings of month names in the languages that loggers and spreadsheets are set to. */
const MONTHS: readonly (readonly string[])[] = [
  ["jan", "ene", "gen", "janv", "sty", "tammi"],
  ["feb", "fev", "lut", "helmi"],
  ["mar", "mrz", "maa", "mrt"],
  ["apr", "avr", "abr", "kwi", "huhti"],
  ["may", "mai", "mei", "mag", "maj", "touko"],
  ["jun", "juin", "giu", "cze", "kesa"],
  ["jul", "juil", "lug", "lip", "heina"],
  ["aug", "aou", "ago", "sie", "elo"],
  ["sep", "set", "wrz", "syys"],
  ["oct", "okt", "ott", "out", "paz", "loka"],
  ["nov", "lis", "marras"],
  ["dec", "dez", "dic", "gru", "joulu"],
];

/** Month 1…12 of a name or its beginning, in several languages; 0 when it is none. */
export function monthOf(name: string): number {
  const plain = name
    .normalize("NFD")
    .replace(/[^a-zA-Z]/g, "")
    .toLowerCase();
  let month = 0;
  let longest = 0;
  // The longest beginning counts: `marraskuu` is the Finnish November, and begins as March does elsewhere.
  MONTHS.forEach((starts, at) => {
    for (const start of starts)
      if (start.length > longest && plain.startsWith(start)) {
        month = at + 1;
        longest = start.length;
      }
  });
  return month;
}
