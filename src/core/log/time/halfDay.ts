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
