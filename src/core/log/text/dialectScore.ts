import { type CellKind, cellKind, type DecimalMark, parseNumber } from "./cellKind.ts";

/** From 0 to about 2: typed cells × rows of one length, and the two signs of a log. */
export function dialectScore(
  windows: readonly (readonly (readonly string[])[])[],
  { decimal, isGrouped }: { readonly decimal: DecimalMark; readonly isGrouped: boolean },
): number {
  const kinds = windows.map((rows) => rows.map((cells) => cells.map((c) => cellKind(c, decimal))));
  const all = kinds.flat();
  const body = all.filter(isBodyLike);
  if (body.length === 0) return 0;
  const length = commonLength(body);
  const even = body.filter((row) => row.length === length);
  const typed = typedShare(even, isGrouped ? 1 : WEIGHT.grouped);
  const columns = windows.flatMap((rows, w) =>
    columnSigns(
      rows.filter((_, r) => kinds[w]?.[r]?.length === length && isBodyLike(kinds[w][r] ?? [])),
      decimal,
    ),
  );
  const count = (wanted: ColumnSign) => columns.filter((sign) => sign === wanted).length;
  const timeLike = count("stamp") + count("rising");
  const hasTime = timeLike > 0;
  // A temperature may only rise in the window, as the time does; then there are two such columns.
  const hasSmooth = count("smooth") > 0 || (count("rising") > 0 && timeLike > windows.length);
  const lone = length === 1 ? 0.5 : 1;
  return (
    lone * (typed * (even.length / body.length) * Math.sqrt(body.length / all.length)) +
    (hasTime ? 0.4 : 0) +
    (hasSmooth ? 0.4 : 0)
  );
}

/** A row of a log's body has a number or a time in it and is not mostly words. */
export function isBodyLike(kinds: readonly CellKind[]): boolean {
  const typed = kinds.filter((k) => k === "number" || k === "stamp" || k === "grouped").length;
  const words = kinds.filter((k) => k === "text").length;
  return typed > 0 && typed >= words;
}

/** The length that most rows have; 0 of none. */
export function commonLength(rows: readonly (readonly CellKind[])[]): number {
  const counts = new Map<number, number>();
  for (const row of rows) counts.set(row.length, (counts.get(row.length) ?? 0) + 1);
  return [...counts].reduce((a, b) => (b[1] > a[1] ? b : a), [0, 0])[0];
}

const WEIGHT: Readonly<Record<CellKind, number>> = {
  number: 1,
  stamp: 1,
  empty: 0.8,
  missing: 0.9,
  grouped: 0.6,
  text: 0,
};

function typedShare(rows: readonly (readonly CellKind[])[], grouped: number): number {
  let sum = 0;
  let count = 0;
  for (const row of rows)
    for (const kind of row) {
      sum += kind === "grouped" ? grouped : WEIGHT[kind];
      count++;
    }
  return count === 0 ? 0 : sum / count;
}

type ColumnSign = "stamp" | "rising" | "smooth" | "none";

function columnSigns(
  rows: readonly (readonly string[])[],
  decimal: DecimalMark,
): readonly ColumnSign[] {
  const length = rows[0]?.length ?? 0;
  return Array.from({ length }, (_, c) =>
    columnSign(
      rows.map((row) => row[c] ?? ""),
      decimal,
    ),
  );
}

function columnSign(cells: readonly string[], decimal: DecimalMark): ColumnSign {
  if (cells.length < 3) return "none";
  const stamps = cells.filter((cell) => cellKind(cell, decimal) === "stamp").length;
  if (stamps > 0.8 * cells.length) return "stamp";
  const numbers = cells.map((cell) => parseNumber(cell, decimal)).filter((v) => !Number.isNaN(v));
  if (numbers.length < 0.7 * cells.length) return "none";
  const steps = numbers.slice(1).map((value, i) => value - numbers[i]!);
  const rising = steps.filter((step) => step > 0).length;
  if (rising === steps.length) return "rising";
  const sizes = steps.map(Math.abs).sort((a, b) => a - b);
  const range = Math.max(...numbers) - Math.min(...numbers);
  const median = sizes[Math.floor(sizes.length / 2)]!;
  return median <= 0.12 * range || range === 0 ? "smooth" : "none";
}

/** Share of rows by which cutting at single blanks must make more of one length than at wide ones. */
const UNEVEN_SHARE = 0.05;

/** Whether rows differ in how many blanks stand between the same cells, so that single ones must be cut as well. */
export function areBlanksUneven(rows: readonly string[]): boolean {
  const begun = rows.filter(beginsAsRow).map((row) => row.trim());
  const shareOf = (blanks: RegExp) => {
    const kinds = begun.map((row) => row.split(blanks).map((cell) => cellKind(cell, ".")));
    const length = commonLength(kinds);
    return kinds.filter((row) => row.length === length).length / Math.max(1, kinds.length);
  };
  return shareOf(/\s+/) > shareOf(/\s{2,}/) + UNEVEN_SHARE;
}

/** How a row begins: with a digit, with the name of a day or a month before one, or with a span as `PT2H`. */
const BEGINNING = /^\s*(?:[a-zà-ÿ]{2,10}[.,]?\s+|pt?)?[\d+-]/i;

/** Whether a text begins as a row of readings does. */
export function beginsAsRow(text: string): boolean {
  return BEGINNING.test(text);
}

/** A row with one number and a word behind a delimiter: `511.2,lid`. */
const NOTED = /^\s*"?[+-]?\d[\d.,' \u00a0\u2009\u202f]*(?:\s?[°º]?[CFK])?"?([,;\t|])\s*"?[a-z]{2}/i;

/** Whether a delimiter stands between lone numbers and notes. */
export function isBeforeNotes(delimiter: string, records: readonly string[]): boolean {
  return records.some((record) => NOTED.exec(record)?.[1] === delimiter);
}

/** A line with one number, its fraction behind a comma, perhaps with a unit and a last delimiter. */
const LONE = /^\s*"?[+-]?\d[\d.' \u00a0\u2009\u202f]*,\d+(?:\s?[°º]?[CFK])?"?\s*[;|]?\s*$/;
/** Rows from which commas can be judged. */
const LEAST_ROWS = 10;
/** Share of the lines that begin with a digit and hold a comma which must be such. */
const MOSTLY = 0.9;
/** Share of steps between the whole numbers that are alike, from which these count a time. */
const EVEN_SHARE = 0.8;

/**
 * Whether a log has one column of numbers with decimal commas, and none beside it: each row is one
 * such number, and its whole part does not count evenly as a time would.
 */
export function isLoneDecimals(records: readonly string[]): boolean {
  const begun = records.filter((record) => /^\s*"?[+-]?\d/.test(record) && record.includes(","));
  const rows = begun.filter((record) => LONE.test(record));
  if (rows.length < LEAST_ROWS || rows.length < MOSTLY * begun.length) return false;
  const whole = rows.map((row) => Number((row.split(",")[0] ?? "").replace(/[^\d-]/g, "")));
  const steps = whole.slice(1).map((value, i) => value - whole[i]!);
  const usual = [...steps].sort((a, b) => a - b)[steps.length >> 1]!;
  const even = steps.filter((step) => step === usual && step !== 0);
  return even.length < EVEN_SHARE * steps.length;
}
