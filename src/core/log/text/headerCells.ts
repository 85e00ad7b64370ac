import { parseStamp } from "./stamp.ts";

/** What marks a line as a comment, with the blanks behind it; a tab behind it may stand between cells. */
export const COMMENT = /^\s*(?:#|\/\/|!|%|;(?=\s*[A-Za-z]))+ */;
const UNIT_CELL =
  /^\s*[([]?\s*(?:[°º˚�Â]{0,2}\s?[CFK]|℃|℉|deg\.? ?[CFK]?|celsius|fahrenheit|kelvin|s|secs?|seconds?|ms|min|mins|minutes?|h|hr|hrs|hours?|%|mV|V|A|W|kW|kW\/m2|kW\/m²|mW\/mg|mW|kWh|Pa|hPa|kPa|mbar|bar|ppm|rpm|g|mg|kg|mm|m\/s|-|–|hh?:mm(?::ss)?|mm:ss)\s*[)\]]?\s*$/i;

/** How a time is written, as unit rows say it: `yyyy-mm-dd hh:mm:ss`, `dd.mm.yyyy`. */
const TIME_SHAPE = /^\s*[([]?(?=.*(?:yy|mm|dd|hh|ss))[ymdhsT\s.:/_-]+[)\]]?\s*$/i;

/** A line above the table, cut into cells. */
export interface TextRow {
  readonly at: number;
  readonly text: string;
  readonly cells: readonly string[];
}

/** Whether all filled cells of a row are units. */
export function isUnitRow(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell.trim() !== "");
  return filled.length > 0 && filled.every((cell) => UNIT_CELL.test(cell) || TIME_SHAPE.test(cell));
}

/** What the columns of the table ask of a row of names. */
export interface Width {
  readonly width: number;
  /** Columns that hold times or numbers; the others come of remarks or delimiters at the ends of rows. */
  readonly filled: number;
  /** Column of a date that the next column goes on with the clock time of; -1 without. */
  readonly pair: number;
  /** Whether cells are cut at single blanks. */
  readonly isAtBlanks: boolean;
}

/** The header's cells when they match the table's width; names with blanks in them are cut wider apart. */
export function headerCells(header: TextRow, table: Width): readonly string[] | null {
  const { width } = table;
  const least = Math.min(2, table.filled);
  const filled = header.cells.filter((cell) => cell.trim() !== "").length;
  const words = header.cells.filter((cell) => /[^\d\s.,:+-]/.test(cell)).length;
  if (words === 0 || words < filled / 2 || header.cells.some(isProse)) return null;
  // A remark padded with delimiters is one cell and many empty ones.
  if (filled < least) return null;
  // One word above one column with a delimiter behind it may be a remark: it must name a column of a log.
  if (least < width && least < 2 && !header.cells.some(isKnownName)) return null;
  if (header.cells.some(isTimeOrList)) return null;
  if (header.cells.some(isBareNumber) && saysInterval(header.text)) return null;
  if (header.cells.some(isNumber) && !header.cells.some(isKnownName)) return null;
  if (/^\s*(?:#|\/\/|!|%|;\s)/.test(header.text) && !header.cells.some(isKnownName)) return null;
  for (const cells of cutsOf(header, table.isAtBlanks)) {
    const joined = paired(cells, table);
    if (joined !== null) return joined;
  }
  const isClose = header.cells.length >= width - 1 && header.cells.length <= width + 1;
  return isClose && filled >= least ? header.cells : null;
}

/** Ways to cut a row of names: at single blanks, names with blanks in them fall apart, and then may fit by chance. */
export function cutsOf(
  { text, cells }: Omit<TextRow, "at">,
  isAtBlanks: boolean,
): readonly (readonly string[])[] {
  const wide = text
    .replace(COMMENT, "")
    .trim()
    .split(/\t|\s{2,}/);
  return isAtBlanks && wide.length > 1 ? [wide, cells] : [cells];
}

/** Names of a column of clock times beside a column of dates. */
const CLOCK_NAME = /^\W*(?:time|zeit|uhr|heure|hora|ora|tijd|clock)/i;

/** Cells of a row that fits a width, or has one name above a date and a time cut apart: the name stands for both. */
export function paired(
  cells: readonly string[],
  { width, pair }: Pick<Width, "width" | "pair">,
): readonly string[] | null {
  if (cells.length === width) return cells;
  if (pair < 0 || cells.length !== width - 1 || CLOCK_NAME.test(cells[pair + 1] ?? "")) return null;
  return [...cells.slice(0, pair + 1), cells[pair] ?? "", ...cells.slice(pair + 1)];
}

/** Units by column; between blanks the first may be missing, and they stand where their names stand. */
export function unitsUnder(
  unitRow: TextRow,
  header: TextRow | undefined,
  table: Width,
): readonly string[] {
  const isShort = header !== undefined && unitRow.cells.length < header.cells.length;
  const cells =
    isShort && /^\s/.test(unitRow.text) ? underNames(unitRow.text, header.text) : unitRow.cells;
  return paired(cells, table) ?? cells;
}

/** Words of a line, each under the nearest name of the line above it. */
function underNames(text: string, names: string): readonly string[] {
  const places = Array.from(names.matchAll(/\S+(?: \S+)*/g), (match) => match.index);
  const cells = places.map(() => "");
  for (const match of text.matchAll(/\S+(?: \S+)*/g)) {
    const off = places.map((place) => Math.abs(place - match.index));
    cells[off.indexOf(Math.min(...off))] = match[0];
  }
  return cells;
}

/** Where a date without a time is followed by a time without a date, as when both were cut at a blank. */
export function datePair(cells: readonly string[]): number {
  return cells.findIndex((cell, c) => {
    const date = parseStamp(cell);
    const clock = parseStamp(cells[c + 1] ?? "");
    return date?.clockFields === 0 && clock !== null && clock.order === "none";
  });
}

/** A clock time, or words and numbers with commas between them: what a remark says, and no name. */
function isTimeOrList(cell: string): boolean {
  return (
    /^\s*\d{1,2}:\d\d(?::\d\d)?\s*$/.test(cell) ||
    /[a-z],\d|\d,[a-z]|[a-z],\s?[a-z]+,\d/i.test(cell)
  );
}

/** A number, a version, or a number with a unit that no name ends in: such a line says something else. */
function isNumber(cell: string): boolean {
  return (
    /(?:^|\s)[\d.,]+(?:\s?(?:kW|V|W|A|kg|g|Hz|L|l))?$/.test(cell.trim()) &&
    !/^[A-Za-z]+[ _.-]?\d+$/.test(cell.trim())
  );
}

function isBareNumber(cell: string): boolean {
  return /^\s*"?\d+(?:[.,]\d+)?"?\s*$/.test(cell);
}

/** `Period 5 min` has as many words as a table has columns, but says how often it was sampled. */
function saysInterval(text: string): boolean {
  return preambleFacts([text]).intervalSeconds !== null;
}

/** A line marked as a comment is only a header when one of its words names a column of a log. */
function isKnownName(cell: string): boolean {
  return (
    /time|date|zeit|datum|stamp|elapsed|heure|hora|\bsec|\bmin\b|°|\bno\b/i.test(cell) ||
    WORDS.temperature.test(cell)
  );
}

/** A remark above a table without a header is not its header: it tells something, or goes on and on. */
function isProse(cell: string): boolean {
  return (
    /[a-z]:\s+\S|[:,]\s*$|^(?:in|of|the|and|is|are|by|at|from|with)$/i.test(cell) ||
    cell.trim().split(/\s+/).length > 6
  );
}

/** Words in names and unit rows that tell what a column is. */
export const WORDS = {
  setPoint:
    /set[ _-]?(?:point|temp|value|val|t)\b|setpoint|\bset\b|\bsp\d?\b|_sp\b|\bsv\b|target|soll|sollwert|consigne|programm?ed|\bprogram\b|\bprog\b/i,
  output:
    /output|\bout\b|\bpower\b|\bduty\b|leistung|\bpwr\b|\brelays?\d?\b|\bssr\b|\bheat(?:er|ing)? ?(?:on|%)|\bmv ?%|\bpid\b/i,
  coldJunction:
    /cold.?j|\bcj[ct]?\b|ambient|internal|\bboard\b|junction|\bcase\b|\broom\b|raum|umgebung|enclosure|electronics/i,
  temperature:
    /temp|thermo|\btc[ _-]?\d*|tc\d|\bt[ _-]?\d+\b|zone|kiln|oven|furnace|chamber|\bprobe|sensor|pyro|\b(?:top|middle|mid|bottom|upper|lower|front|back|shelf|lid|floor)\b|\bpv\b|\bch(?:annel)?[ _.-]?\d+|ofen|\bist\b|actual|measured|process/i,
  nothing:
    /volt|batter|\bvbat|humid|\brh\b|pressure|press\b|flux|\bhrr|wind|rain|precip|mass|weight|\bgas\b|\bco2?\b|oxygen|\bo2\b|current|\bamps?\b|energy|kwh|cone|count|status|state|alarm|error|mode|segment|\bseg\b|\bstep\b|flag|signal|rssi|\bfan\b|rate|slope|heat ?flow/i,
} as const;

/** A unit that is none of temperature. */
export const OTHER_UNIT =
  /^[([]?\s*(?:%|mV|µV|V|A|mA|W|kW|kWh?|kW\/m[2²]|W\/m[2²]|mW|mW\/mg|W\/g|Pa|hPa|kPa|mbar|bar|ppm|rpm|mg|g|kg|mm|m\/s|l\/min|s|min|h|Hz|pH|lx)\s*[)\]]?$/i;

/** Such a unit inside a name: `Heat flux (kW/m2)`. */
export const OTHER_UNIT_IN_NAME =
  /[([]\s*(?:%|mV|µV|V|A|mA|W|kW|kWh?|kW\/m[2²]|W\/m[2²]|mW|mW\/mg|Pa|hPa|kPa|mbar|bar|ppm|rpm|mg|g|kg|mm|m\/s|Hz|%\s?RH)\s*[)\]]|_(?:mv|kw|pct|percent|hpa|rpm)\b/i;

/** Longest name that is kept whole [characters]. */
const LONGEST = 100;

/** A name from a log without its middle when nobody could read it; a unit stands at the end. */
export function shortName(name: string): string {
  return name.length > LONGEST ? `${name.slice(0, 60)}…${name.slice(-39)}` : name;
}

/** What the lines above the table say about it. */
export interface PreambleFacts {
  /** Sampling step [s], or null. */
  readonly intervalSeconds: number | null;
  /** Scale of temperature that is named, when only one is. */
  readonly unit: "C" | "F" | "K" | null;
  readonly text: string;
}

const SECONDS_PER: Readonly<Record<string, number>> = { ms: 0.001, s: 1, m: 60, h: 3600 };

/** Facts from the lines above the table, whatever their form. */
export function preambleFacts(lines: readonly string[]): PreambleFacts {
  const text = lines.join("\n");
  return { intervalSeconds: intervalIn(text), unit: temperatureUnitIn(text), text };
}

function intervalIn(text: string): number | null {
  const clock =
    /(?:interval|period|sampl\w*|logg\w*|record\w*|step|cycle)\W{0,20}?(\d{1,2}):(\d{2}):(\d{2})(?!\d)/i.exec(
      text.replace(/\d{4}-\d{2}-\d{2}[ T]\d{2}:\d{2}(:\d{2})?/g, ""),
    );
  if (clock !== null) {
    const seconds = Number(clock[1]) * 3600 + Number(clock[2]) * 60 + Number(clock[3]);
    if (seconds > 0) return seconds;
  }
  const unitBefore =
    /(?:interval|period|rate|cycle|step|every)\w*\W{0,4}[([]?(ms|s|secs?|seconds?|m|mins?|minutes?|h|hours?)[)\]]?\W{1,6}(\d+(?:[.,]\d+)?)[\s,;|"]*$/im.exec(
      text,
    );
  if (unitBefore !== null) return spanOf(unitBefore[2]!, unitBefore[1]!);
  const unitAfter =
    /(?:interval|period|rate|cycle|step|every|sampl\w*)[^\d\n]{0,24}(\d+(?:[.,]\d+)?)[\s;,"\t|]*(ms|s|secs?|seconds?|m|mins?|minutes?|h|hrs?|hours?|hz)\b/i.exec(
      text,
    );
  return unitAfter === null ? null : spanOf(unitAfter[1]!, unitAfter[2]!);
}

function spanOf(amount: string, unit: string): number | null {
  const value = Number(amount.replace(",", "."));
  const word = unit.toLowerCase();
  if (!(value > 0)) return null;
  if (word === "hz") return 1 / value;
  const factor = SECONDS_PER[word === "ms" ? "ms" : word[0]!];
  return factor === undefined ? null : value * factor;
}

/** The one scale of temperature that a text names, or null when it names none or several. */
export function temperatureUnitIn(text: string): "C" | "F" | "K" | null {
  const found = new Set<"C" | "F" | "K">();
  if (/[°º˚�]\s?C\b|℃|\bdeg\.?\s?C\b|celsius|centigrade|[([]\s?C\s?[)\]]|\b_?degC\b/i.test(text))
    found.add("C");
  if (/[°º˚�]\s?F\b|℉|\bdeg\.?\s?F\b|fahrenheit|[([]\s?F\s?[)\]]|\b_?degF\b/i.test(text))
    found.add("F");
  if (/\bkelvin\b|[([]\s?K\s?[)\]]/i.test(text)) found.add("K");
  if (/\bunits?\W{1,4}C\b|\btemp\w*\W{1,6}C\b/i.test(text)) found.add("C");
  if (/\bunits?\W{1,4}F\b|\btemp\w*\W{1,6}F\b/i.test(text)) found.add("F");
  return found.size === 1 ? [...found][0]! : null;
}
