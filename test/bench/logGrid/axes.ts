import { seededEven } from "../../../src/core/math/distributions.ts";

/** The axes of the grid of logs, each with its levels. */
export const AXES = {
  encoding: [
    "utf-8",
    "utf-8 marked",
    "utf-16le marked",
    "utf-16be marked",
    "utf-16le",
    "utf-16be",
    "latin-1",
    "windows-1252",
    "code page 850",
    "code page 437",
  ],
  lineEnd: ["crlf", "lf", "cr", "mixed"],
  zeros: ["none", "inside", "at the end"],
  preamble: ["0", "1", "3", "8", "20"],
  footer: ["none", "statistics", "totals", "remark", "blank lines and words"],
  comments: ["none", "# above", "; above", "// above", "% above", "! above", "# inside"],
  header: ["none", "one row", "two rows", "unit row", "again in the middle"],
  edge: ["plain", "trailing delimiter", "ragged"],
  delimiter: ["comma", "semicolon", "tab", "bar", "blanks", "fixed width"],
  decimal: ["point", "comma"],
  thousands: ["none", "none ", "mark", "apostrophe", "thin space", "hard space"],
  quotes: ["none", "needed", "all"],
  unitPlace: ["header", "unit row", "cell", "preamble", "none"],
  unit: ["C", "F", "K"],
  layout: ["wide", "wide ", "wide  ", "long"],
  time: [
    "ISO with T",
    "ISO with blank",
    "ISO with fraction",
    "ISO with decimal comma",
    "ISO with Z",
    "ISO with offset",
    "ISO with short offset",
    "ISO to the minute",
    "compact ISO",
    "epoch s",
    "epoch ms",
    "epoch µs",
    "epoch ns",
    "serial days",
    "day first slashes",
    "day first dots",
    "day first dashes",
    "day first dots 2-digit year",
    "day first to the minute",
    "month first slashes",
    "month first 2-digit year",
    "month first AM PM",
    "year first slashes",
    "year first 2-digit",
    "English month",
    "English month first",
    "German month",
    "French month",
    "Spanish month",
    "Italian month",
    "Dutch month",
    "Portuguese month",
    "weekday and date",
    "12-hour AM PM",
    "12-hour a.m.",
    "12-hour spaced p. m.",
    "12-hour Chinese",
    "12-hour Japanese",
    "12-hour Korean",
    "12-hour Greek",
    "12-hour unmarked",
    "date and time columns",
    "date where it changes",
    "time of day",
    "time of day to the minute",
    "time of day AM PM",
    "elapsed h:mm:ss",
    "elapsed d.hh:mm:ss",
    "elapsed 1d 02:03",
    "elapsed PT",
    "elapsed mm:ss",
    "elapsed hh:mm",
    "decimal s labelled",
    "decimal min labelled",
    "decimal h labelled",
    "decimal s bare",
    "decimal min bare",
    "decimal h bare",
    "sample number",
    "no time column",
  ],
  rowOrder: ["oldest first", "oldest first ", "newest first"],
  clock: [
    "plain",
    "jitter",
    "gap",
    "repeated rows",
    "a few out of order",
    "summer time ends",
    "summer time begins",
    "reset",
  ],
  zones: ["1", "2", "3", "4", "6", "2 and a wild one"],
  extra: [
    "none",
    "set point",
    "set point unnamed",
    "output 0 to 1",
    "output 0 to 100",
    "on and off",
    "heat flux",
    "battery",
    "cold junction",
    "counter",
    "set point and output",
  ],
  missing: [
    "none",
    "blank",
    "NaN",
    "---",
    "OL",
    "9999",
    "-999",
    "32767",
    "end of scale",
    "#N/A",
    "#DIV/0!",
  ],
  lastLine: ["whole", "no line end", "cut in the value", "cut in the time"],
  shape: ["bisque", "cone 5", "cone 10", "cooling only", "hold only", "candling"],
  begin: ["cold", "warm"],
  digits: ["0.01", "0.1", "0.5", "1", "1 °F in °C", "1 °C in °F"],
  noise: ["none", "0.3 K", "1 K"],
  step: ["1 s", "5 s", "10 s", "30 s", "60 s", "120 s", "300 s", "720 s"],
  rows: ["20", "60", "200", "600", "3000"],
} as const;

/** An axis of the grid. */
export type Axis = keyof typeof AXES;

/** One level of each axis. A level repeated with blanks behind it is the same one, drawn more often. */
export type Levels = { readonly [A in Axis]: (typeof AXES)[A][number] };

/** Axes whose levels must meet in every pair that a logger could write. */
export const MAIN_AXES = [
  "encoding",
  "delimiter",
  "decimal",
  "header",
  "unitPlace",
  "unit",
  "time",
  "clock",
  "zones",
  "extra",
  "missing",
  "shape",
] as const satisfies readonly Axis[];

/**
 * Levels of so many logs: each axis deals its levels from a shuffled deck, so that every level comes
 * up equally often, and axes are dealt independently, so that every pair meets.
 */
export function dealtLevels(seed: number, count: number): readonly Levels[] {
  const decks = Object.entries(AXES).map(([axis, levels], at) => {
    const even = seededEven(seed * 1009 + at);
    return { axis, cards: dealt(levels, count, even) };
  });
  return Array.from(
    { length: count },
    (_, i) => Object.fromEntries(decks.map(({ axis, cards }) => [axis, cards[i]])) as Levels,
  );
}

function dealt(
  levels: readonly string[],
  count: number,
  even: () => number,
): readonly (string | undefined)[] {
  const cards = Array.from({ length: count }, (_, i) => levels[i % levels.length]);
  for (let i = cards.length - 1; i > 0; i--) {
    const other = Math.floor(even() * (i + 1));
    [cards[i], cards[other]] = [cards[other], cards[i]];
  }
  return cards;
}
