import { WORDS } from "../channels/words.ts";
import { parseStamp } from "../time/stamp.ts";
import { preambleFacts } from "./preamble.ts";

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
