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
  const steps = numbers.slice(1).map((value, i) => value - (numbers[i] as number));
  const rising = steps.filter((step) => step > 0).length;
  if (rising === steps.length) return "rising";
  const sizes = steps.map(Math.abs).sort((a, b) => a - b);
  const range = Math.max(...numbers) - Math.min(...numbers);
  const median = sizes[Math.floor(sizes.length / 2)] as number;
  return median <= 0.12 * range || range === 0 ? "smooth" : "none";
}
