import type { Problem } from "../../problem.ts";

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
export function looseCommas(
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
