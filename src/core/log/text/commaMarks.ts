import type { Problem } from "../../problem.ts";
import { cellKind, type DecimalMark } from "./cellKind.ts";
import type { SplitCells } from "./cells.ts";
import { commonLength, isBodyLike } from "./dialectScore.ts";

/**
 * The problem of commas between cells and in numbers alike, seen in the rows of the beginning and, for
 * decimals that change slowly, in rows from all over the file; null when there is none.
 */
export function commaProblem(
  records: readonly string[],
  split: SplitCells,
  {
    name,
    spread,
    rows,
  }: { readonly name: string; readonly spread: readonly string[]; readonly rows: number },
): Problem | null {
  const looked = records.slice(0, rows).map(split);
  const kinds = looked.map(kindsOf);
  const length = commonLength(kinds.filter(isBodyLike));
  const isRow = (at: number) => looked[at]?.length === length && isBodyLike(kinds[at] ?? []);
  const first = looked.findIndex((_, at) => isRow(at) && isRow(at + 1));
  if (first < 0) return null;
  const above = looked.slice(Math.max(0, first - 4), first).filter(mayBeNames);
  const filled = (cells: readonly string[]) => cells.filter((cell) => cell.trim() !== "").length;
  const header = above.reduce<readonly string[] | null>(
    (most, cells) => (most === null || filled(cells) > filled(most) ? cells : most),
    null,
  );
  const near = looked.filter((_, at) => at >= first && isRow(at));
  // What is only seen further down: that decimals are more than one digit.
  const far = spread
    .map(split)
    .filter((cells) => cells.length === length && isBodyLike(kindsOf(cells)));
  return looseCommas([...near, ...far], header, name);
}

function kindsOf(cells: readonly string[]): ReturnType<typeof cellKind>[] {
  return cells.map((cell) => cellKind(cell, "."));
}

/** Whether the cells of a line above the readings may be names: several, none of them a number. */
function mayBeNames(cells: readonly string[]): boolean {
  const kinds = kindsOf(cells);
  return cells.length > 1 && !kinds.includes("number") && !isBodyLike(kinds);
}

/** Different rows from which the use of commas can be judged: without names above them, times the pairs of columns; and with names. */
const LEAST_ROWS = { bare: 10, named: 4 };
/** Most digits behind a comma that a logger writes. */
const MOST_DIGITS = 8;
/** Different digits behind the commas from which they look like decimals rather than a switch. */
const LEAST_DIGITS = 5;

/**
 * The problem of commas that stand both between cells and inside numbers, without quotes: then the
 * cells cannot be told apart. It shows in rows that have more cells than the header has names, or,
 * without a header, in whole numbers each followed by a column of as many digits in every row.
 * @param all Cells of the body's rows of one length, cut at the commas.
 * @param header Cells of the line above them; null without names.
 */
function looseCommas(
  all: readonly (readonly string[])[],
  header: readonly string[] | null,
  name: string,
): Problem | null {
  const rows = differentRows(all);
  if (rows.length < LEAST_ROWS.named) return null;
  const width = filledWidth(rows);
  const above = header === null ? 0 : header.findLastIndex((cell) => cell.trim() !== "") + 1;
  if (above >= width) return null;
  // A line above that has too few names even so is none of the names.
  const isHeader = above > 1 && pairsOf(rows, width, false) >= width - above;
  const names = isHeader ? above : 0;
  const pairs = pairsOf(rows, width, !isHeader);
  if (pairs === 0 || (!isHeader && pairs * rows.length < LEAST_ROWS.bare)) return null;
  const shown = (rows[0] ?? []).slice(0, width).join(",");
  const count = names === 0 ? "" : ` under ${names} names`;
  return {
    code: "log/decimal-unknown",
    what: `commas stand between the cells and, it seems, inside the numbers too: ${width} cells${count} in "${shown}"`,
    where: name,
    expected: "another mark between cells, decimal points, or numbers in quotes",
    fix: "export the log again with semicolons between the cells; or say --delimiter , when no comma is a decimal one",
  };
}

/** Rows without those that repeat another one, or only its cells behind the time, as ends of scale do. */
function differentRows(rows: readonly (readonly string[])[]): readonly (readonly string[])[] {
  const isTimed = (rows[0]?.[0] ?? "").includes(":");
  const seen = new Map(rows.map((row) => [row.slice(isTimed ? 1 : 0).join(","), row]));
  return [...seen.values()];
}

function filledWidth(rows: readonly (readonly string[])[]): number {
  return rows.reduce(
    (most, row) => Math.max(most, row.findLastIndex((cell) => cell.trim() !== "") + 1),
    0,
  );
}

/** Columns of whole numbers that the next column could be the decimals of. */
function pairsOf(rows: readonly (readonly string[])[], width: number, isStrict: boolean): number {
  let pairs = 0;
  for (let c = 0; c + 1 < width; c++) {
    const whole = rows.map((row) => (row[c] ?? "").trim()).filter((cell) => cell !== "");
    const isWhole = isMostly(whole, (cell) =>
      /^[+-]?\d{1,3}(?:[.' \u00a0\u2009\u202f]?\d{3})?$/.test(cell),
    );
    if (!isWhole || !areDecimals(cellsOf(rows, c + 1), isStrict)) continue;
    pairs++;
    c++;
  }
  return pairs;
}

/** Share of cells that must be of one kind; words for missing readings shift a few rows. */
const MOSTLY = 0.9;

function isMostly(cells: readonly string[], test: (cell: string) => boolean): boolean {
  return cells.length > 0 && cells.filter(test).length >= MOSTLY * cells.length;
}

function cellsOf(rows: readonly (readonly string[])[], column: number): readonly string[] {
  return rows
    .map((row) => (row[column] ?? "").trim().replace(/\s?[°º]?[CFK]$/, ""))
    .filter((cell) => cell !== "");
}

function areDecimals(digits: readonly string[], isStrict: boolean): boolean {
  const lengths = digits.map((cell) => cell.length).sort((a, b) => a - b);
  const length = lengths[lengths.length >> 1] ?? 0;
  if (length < 1 || length > MOST_DIGITS) return false;
  const even = digits.filter((cell) => cell.length === length && /^\d+$/.test(cell));
  if (even.length < MOSTLY * digits.length) return false;
  if (!isStrict || (length > 1 && even.every((cell) => /^0+$/.test(cell)))) return true;
  if (length > 2 && !even.some((cell) => cell.startsWith("0"))) return false;
  const different = new Set(even);
  // Ends of scale among halves have other digits.
  const halves = even.filter((cell) => cell === "0" || cell === "5");
  const isHalves =
    halves.length >= MOSTLY * even.length && different.has("0") && different.has("5");
  return different.size >= LEAST_DIGITS || isHalves;
}

/** How the cells of one column use a mark. */
interface MarkUse {
  /** Cells in which it can only be a decimal mark. */
  decimal: number;
  /** Cells in which it stands before groups of three digits, and the other mark after them. */
  surelyGrouped: number;
  /** Cells in which it stands before groups of exactly three digits. */
  grouped: number;
  /** Numbers without it, below and from 1000. */
  below: number;
  above: number;
  least: number;
  greatest: number;
}

/** What a number of a kiln may be once its groups are joined, in any unit of temperature. */
const KILN_NUMBERS = { least: 1000, most: 3000 };
/** Share of numbers from 1000 without the mark that may be no readings, as 9999. */
const MOST_UNMARKED = 0.1;
/** Grouped numbers in a column from which one that is not is taken for a cell cut off. */
const FEW = 5;
/** `28.03.2021` is no number. */
const DATE = /^\d{1,4}([.,])\d{1,2}\1\d{1,4}$/;
const NUMERIC = /^[+-]?\d[\d.,]*(?:\s?[°º˚]?\s?[CFK])?$/;

/**
 * Whether a mark stands between thousands throughout a file, so that it cannot be the decimal mark:
 * always before exactly three digits, in columns whose numbers below 1000 go without it. A cell alone
 * cannot tell: `1.234` may be either.
 * @param rows Cells of rows from all over the body.
 */
export function isGroupMark(rows: readonly (readonly string[])[], mark: DecimalMark): boolean {
  if (!rows.some((row) => row.some((cell) => cell.includes(mark)))) return false;
  const width = rows.reduce((most, row) => Math.max(most, row.length), 0);
  const uses = Array.from({ length: width }, (_, c) => useIn(rows, c, mark));
  // One cell may have been cut off within its digits.
  if (uses.some(({ decimal, grouped }) => decimal > (grouped > FEW ? 1 : 0))) return false;
  return uses.some(isGrouped);
}

function isGrouped(use: MarkUse): boolean {
  if (use.surelyGrouped > 0) return true;
  if (use.grouped === 0 || use.above > MOST_UNMARKED * use.grouped) return false;
  return use.below > 0 || (use.least >= KILN_NUMBERS.least && use.greatest <= KILN_NUMBERS.most);
}

function useIn(rows: readonly (readonly string[])[], column: number, mark: DecimalMark): MarkUse {
  const use: MarkUse = {
    decimal: 0,
    surelyGrouped: 0,
    grouped: 0,
    below: 0,
    above: 0,
    least: Number.POSITIVE_INFINITY,
    greatest: Number.NEGATIVE_INFINITY,
  };
  for (const row of rows) {
    const cell = row[column]?.trim() ?? "";
    if (NUMERIC.test(cell) && !DATE.test(cell))
      countCell(use, cell.replace(/\s?[°º˚]?\s?[CFK]$/, ""), mark);
  }
  return use;
}

const SHAPES: Readonly<Record<DecimalMark, { grouped: RegExp; sure: RegExp }>> = {
  ".": { grouped: /^[+-]?[1-9]\d{0,2}(?:\.\d{3})+$/, sure: /^[+-]?[1-9]\d{0,2}(?:\.\d{3})+,\d*$/ },
  ",": { grouped: /^[+-]?[1-9]\d{0,2}(?:,\d{3})+$/, sure: /^[+-]?[1-9]\d{0,2}(?:,\d{3})+\.\d*$/ },
};

/** No thousands begin with a nought: `0.000` is a decimal, and no cell that was cut off. */
const LEADING_ZERO = /^[+-]?0[.,]/;
/** Counts as more than the one cell that may have been cut off. */
const SURELY = 2;

function countCell(use: MarkUse, cell: string, mark: DecimalMark): void {
  if (!cell.includes(mark)) {
    const whole = cell.replace(/^[+-]/, "").split(/[.,]/)[0] ?? "";
    if (whole.length > 3 && Number(whole) <= KILN_NUMBERS.most) use.above++;
    else use.below++;
    return;
  }
  const { grouped, sure } = SHAPES[mark];
  if (sure.test(cell)) use.surelyGrouped++;
  else if (grouped.test(cell)) {
    use.grouped++;
    const value = Number(cell.replaceAll(mark, ""));
    use.least = Math.min(use.least, value);
    use.greatest = Math.max(use.greatest, value);
  } else use.decimal += LEADING_ZERO.test(cell) ? SURELY : 1;
}
