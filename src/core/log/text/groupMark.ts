import type { DecimalMark } from "./cellKind.ts";

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
