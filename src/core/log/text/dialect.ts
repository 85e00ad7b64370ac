import { decision } from "../decision.ts";
import type { Decision, LogOptions, SplitQuoted } from "../LogReading.ts";
import { type CellKind, cellKind, type DecimalMark, parseNumber } from "./cellKind.ts";
import { cellSplitter } from "./cells.ts";

/** How rows are cut into cells and cells into numbers. */
export interface Dialect {
  readonly delimiter: string;
  readonly decimal: DecimalMark;
  readonly decisions: readonly Decision[];
}

interface Candidate {
  readonly delimiter: string;
  readonly decimal: DecimalMark;
  readonly score: number;
}

const DELIMITERS = [",", ";", "\t", "|", " "] as const;
const MARKS: readonly DecimalMark[] = [".", ","];
/** Rows looked at in each of the windows: near the beginning and in the middle. */
const WINDOW_ROWS = 120;

/** What a delimiter is called in front of a person. */
export function delimiterName(delimiter: string): string {
  const names: Readonly<Record<string, string>> = {
    ",": "comma",
    ";": "semicolon",
    "\t": "tab",
    "|": "bar",
    " ": "runs of blanks",
  };
  return names[delimiter] ?? `"${delimiter}"`;
}

/**
 * Delimiter and decimal mark, decided together: the pair under which most cells of the body are
 * numbers or times, rows have one length, one column rises like time and another changes smoothly.
 */
export function decideDialect(
  records: readonly string[],
  options: LogOptions,
  splitQuoted: SplitQuoted,
): Dialect {
  const told = options.delimiter ?? declaredDelimiter(records);
  const marks = options.decimal === undefined ? MARKS : [options.decimal];
  const windows = bodyWindows(records);
  // A tab is a blank as well; where nearly every row has one, it is the delimiter of the two.
  const tabbed = hasTabs(windows.flat());
  const delimiters = told === null ? DELIMITERS.filter((each) => each !== " " || !tabbed) : [told];
  const candidates: Candidate[] = [];
  for (const delimiter of delimiters)
    for (const decimal of marks) {
      const split = cellSplitter(delimiter, splitQuoted);
      const score = scoreOf(
        windows.map((window) => window.map(split)),
        decimal,
      );
      candidates.push({ delimiter, decimal, score });
    }
  candidates.sort((a, b) => b.score - a.score);
  const best = candidates[0] as Candidate;
  return {
    delimiter: best.delimiter,
    decimal: best.decimal,
    decisions: [
      delimiterDecision(best, candidates, { told, byOption: options.delimiter !== undefined }),
      decimalDecision(best, candidates, options),
    ],
  };
}

function hasTabs(rows: readonly string[]): boolean {
  return rows.filter((row) => row.includes("\t")).length > 0.8 * rows.length;
}

function declaredDelimiter(records: readonly string[]): string | null {
  const match = /^"?sep=(.)"?$/i.exec(records[0] ?? "");
  return match?.[1] ?? null;
}

function delimiterDecision(
  best: Candidate,
  candidates: readonly Candidate[],
  { told, byOption }: { readonly told: string | null; readonly byOption: boolean },
): Decision {
  const option = "--delimiter CHARACTER";
  if (told !== null)
    return decision("delimiter", delimiterName(best.delimiter), {
      confidence: byOption ? "told" : "certain",
      because: byOption ? "it was given as an option" : 'the first line says "sep="',
      option,
    });
  const next = candidates.find((other) => other.delimiter !== best.delimiter);
  return decision("delimiter", delimiterName(best.delimiter), {
    ...confidenceOf(best, next),
    because: "cut there, the rows have one length and their cells read as times and numbers",
    runnerUp: next !== undefined && next.score > 0.3 ? delimiterName(next.delimiter) : null,
    option,
  });
}

function decimalDecision(
  best: Candidate,
  candidates: readonly Candidate[],
  options: LogOptions,
): Decision {
  const choice = best.decimal === "." ? "point" : "comma";
  const option = "--decimal . or ,";
  if (options.decimal !== undefined)
    return decision("decimal mark", choice, {
      confidence: "told",
      because: "it was given as an option",
      option,
    });
  const next = candidates.find(
    (other) => other.delimiter === best.delimiter && other.decimal !== best.decimal,
  );
  const isOpen = next !== undefined && next.score > best.score - 1e-9;
  return decision("decimal mark", choice, {
    confidence: isOpen ? "certain" : confidenceOf(best, next).confidence,
    because: isOpen
      ? "no number of the body depends on it"
      : `numbers of the body are written with a decimal ${choice}`,
    option,
  });
}

function confidenceOf(
  best: Candidate,
  next: Candidate | undefined,
): { readonly confidence: Decision["confidence"] } {
  const lead = best.score - (next?.score ?? 0);
  return { confidence: lead > 0.4 ? "certain" : lead > 0.15 ? "likely" : "guessed" };
}

/** Two runs of neighbouring rows: after the likely preamble, and in the middle of the file. */
function bodyWindows(records: readonly string[]): readonly (readonly string[])[] {
  const filled = (from: number) =>
    records.slice(from, from + 2 * WINDOW_ROWS).filter((record) => record.trim() !== "");
  const first = filled(0).slice(0, WINDOW_ROWS);
  const middle = filled(Math.floor(records.length / 2)).slice(0, WINDOW_ROWS);
  return records.length > 2 * WINDOW_ROWS ? [first, middle] : [filled(0)];
}

/** From 0 to about 2: typed cells × rows of one length, and the two signs of a log. */
function scoreOf(
  windows: readonly (readonly (readonly string[])[])[],
  decimal: DecimalMark,
): number {
  const kinds = windows.map((rows) => rows.map((cells) => cells.map((c) => cellKind(c, decimal))));
  const all = kinds.flat();
  const body = all.filter(isBodyLike);
  if (body.length === 0) return 0;
  const length = commonLength(body);
  const even = body.filter((row) => row.length === length);
  const typed = typedShare(even);
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
function isBodyLike(kinds: readonly CellKind[]): boolean {
  const typed = kinds.filter((k) => k === "number" || k === "stamp" || k === "grouped").length;
  const words = kinds.filter((k) => k === "text").length;
  return typed > 0 && typed >= words;
}

function commonLength(rows: readonly (readonly CellKind[])[]): number {
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

function typedShare(rows: readonly (readonly CellKind[])[]): number {
  let sum = 0;
  let count = 0;
  for (const row of rows)
    for (const kind of row) {
      sum += WEIGHT[kind];
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
