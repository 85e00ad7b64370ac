import type { Problem } from "../../problem.ts";
import {
  type Decision,
  decision,
  type LogOptions,
  type SplitQuoted,
} from "../reading/LogReading.ts";
import type { DecimalMark } from "./cellKind.ts";
import { cellSplitter, delimiterName, type FixedColumn, fixedColumns } from "./cells.ts";
import { commaProblem, isGroupMark } from "./commaMarks.ts";
import {
  areBlanksUneven,
  beginsAsRow,
  dialectScore,
  isBeforeNotes,
  isLoneDecimals,
} from "./dialectScore.ts";

/** How rows are cut into cells and cells into numbers. */
export interface Dialect {
  readonly delimiter: string;
  readonly decimal: DecimalMark;
  /** Where the columns of a table in fixed width stand; null in any other. */
  readonly columns: readonly FixedColumn[] | null;
  readonly decisions: readonly Decision[];
  /** Why the cells cannot be told apart, or null. */
  readonly problem: Problem | null;
}

interface Candidate {
  readonly delimiter: string;
  readonly decimal: DecimalMark;
  readonly score: number;
  /** The other mark stands between thousands. */
  readonly isGrouped: boolean;
}

const DELIMITERS = [",", ";", "\t", "|", "  ", " "] as const;
const MARKS: readonly DecimalMark[] = [".", ","];
/** Share of rows that must have as many cells at wide blanks; blank cells and remarks break some. */
const MOST_WIDE_ROWS = 0.8;
/** Rows looked at in each of the windows: near the beginning and in the middle. */
const WINDOW_ROWS = 120;
/** Rows from all over the file in which the marks of numbers are looked at. */
const MARK_ROWS = 1500;
/** How close the score of single blanks may come to that of wider ones and still lose. */
const FIXED_WIDTH_LEAD = 0.25;

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
  const columns = tabbed || (told ?? "  ") !== "  " ? null : fixedColumns(records);
  const delimiters =
    told === null
      ? DELIMITERS.filter((each) =>
          each === "  " && columns !== null ? true : isPossible(each, windows.flat(), tabbed),
        )
      : [told];
  const spread = spreadRows(records);
  const isUneven = columns === null && areBlanksUneven(windows.flat());
  const scoresOf = (delimiter: string) => {
    const split = cellSplitter(delimiter, splitQuoted, columns);
    const rows = windows.map((window) => window.map(split));
    const cells = rowsOfOneLength(spread.map(split));
    const isLoose = LOOSE.includes(delimiter) && haveOtherMark(windows.flat(), delimiter);
    const grouped = { ".": isGroupMark(cells, "."), ",": isGroupMark(cells, ",") };
    return marks.map((decimal) => {
      const isGrouped = grouped[decimal === "." ? "," : "."];
      const isWrong = options.decimal === undefined && grouped[decimal];
      const doubt = (isWrong ? 0.3 : 1) * (isLoose ? LOOSE_WEIGHT : 1);
      return { decimal, isGrouped, score: doubt * dialectScore(rows, { decimal, isGrouped }) };
    });
  };
  // Marks that stand nowhere cut nothing, one like the other.
  let uncut: ReturnType<typeof scoresOf> | null = null;
  const isNowhere = (delimiter: string) =>
    delimiter.trim() !== "" && ![...windows, spread].flat().some((row) => row.includes(delimiter));
  const candidates = delimiters.flatMap((delimiter): readonly Candidate[] => {
    const lead = isUneven ? 0 : leadOf(delimiter, columns !== null);
    const isUncut = isNowhere(delimiter);
    const scores = (isUncut ? uncut : null) ?? scoresOf(delimiter);
    if (isUncut) uncut = scores;
    return scores.map((each) => ({ ...each, delimiter, score: each.score + lead }));
  });
  candidates.sort((a, b) => b.score - a.score);
  const best = bestOf(candidates, records, options);
  const split = cellSplitter(best.delimiter, splitQuoted, columns);
  return {
    delimiter: best.delimiter,
    decimal: best.decimal,
    columns,
    decisions: [
      delimiterDecision(best, candidates, { told, byOption: options.delimiter !== undefined }),
      decimalDecision(best, candidates, options),
    ],
    problem:
      best.delimiter === "," && told === null
        ? commaProblem(records, split, { name: options.name, spread, rows: 2 * WINDOW_ROWS })
        : null,
  };
}

/** A row that begins with a number, and not with a word as a remark does. */
const BEGINS_NUMBER = /^\s*"?[+-]?\d/;

/**
 * The candidate with the best score; where each row is one number with a decimal comma, one that cuts
 * nothing, and where only a note stands behind some lone numbers, the one that cuts it off.
 */
function bestOf(
  candidates: readonly Candidate[],
  records: readonly string[],
  options: LogOptions,
): Candidate {
  const first = candidates[0]!;
  if (options.delimiter !== undefined || options.decimal !== undefined) return first;
  const isLone = first.delimiter === "," && isLoneDecimals(records);
  const isCut = (record: string) => BEGINS_NUMBER.test(record) && record.includes(first.delimiter);
  const cutsNothing = isLone || !records.some(isCut);
  if (!cutsNothing) return first;
  const decimal = isLone ? "," : first.decimal;
  const others = candidates.filter(
    (each) => each.decimal === decimal && each.delimiter !== decimal,
  );
  const noted = others.find(({ delimiter }) => isBeforeNotes(delimiter, records));
  return noted ?? (isLone ? others[0] : undefined) ?? first;
}

/** Wider blanks only stand between cells where nearly every row with a digit has some. */
function isPossible(delimiter: string, rows: readonly string[], tabbed: boolean): boolean {
  if (!delimiter.startsWith(" ")) return true;
  if (delimiter === " " || tabbed) return !tabbed;
  const counted = rows.filter((row) => /\d/.test(row));
  const lengths = counted.map((row) => row.trim().split(/\s{2,}/).length);
  const usual = Math.max(
    ...lengths.map((length) => lengths.filter((each) => each === length).length),
  );
  return lengths.length > 0 && usual >= MOST_WIDE_ROWS * lengths.length && Math.max(...lengths) > 1;
}

/** Columns of fixed width are also cut by single blanks, but then names and dates fall apart. */
function leadOf(delimiter: string, isFixed: boolean): number {
  if (delimiter !== "  ") return 0;
  return isFixed ? 2 * FIXED_WIDTH_LEAD : FIXED_WIDTH_LEAD;
}

/** Rows spread evenly over the file, for what only some of them show. */
function spreadRows(records: readonly string[]): readonly string[] {
  const stride = Math.max(1, Math.floor(records.length / MARK_ROWS));
  const rows: string[] = [];
  for (let at = 0; at < records.length; at += stride) rows.push(records[at]!);
  return rows;
}

/** Marks that stand inside cells as well, and by what they count less where other marks stand between cells. */
const LOOSE: readonly string[] = [",", " ", "  "];
const LOOSE_WEIGHT = 0.6;

/** Whether nearly all rows that hold a delimiter hold a semicolon, a tab or a bar as well. */
function haveOtherMark(rows: readonly string[], delimiter: string): boolean {
  const begun = rows.filter((row) => /^\s*"?\d|\d:\d\d/.test(row) && row.includes(delimiter));
  return [";", "\t", "|"].some(
    (mark) => begun.filter((row) => row.includes(mark)).length > 0.8 * begun.length,
  );
}

/** Rows of the length that most have, which begin as a time or a number does. */
function rowsOfOneLength(rows: readonly (readonly string[])[]): readonly (readonly string[])[] {
  const begun = rows.filter((cells) => beginsAsRow(cells.find((cell) => cell.trim() !== "") ?? ""));
  const counts = new Map<number, number>();
  for (const { length } of begun) counts.set(length, (counts.get(length) ?? 0) + 1);
  const usual = [...counts].reduce((a, b) => (b[1] > a[1] ? b : a), [0, 0])[0];
  return begun.filter(({ length }) => length === usual);
}

/** Rows in a row with a tab, as a share of all, from which tabs stand between cells. */
const TABBED_SHARE = 0.2;

function hasTabs(rows: readonly string[]): boolean {
  let longest = 0;
  let run = 0;
  for (const row of rows) {
    run = row.includes("\t") ? run + 1 : 0;
    if (run > longest) longest = run;
  }
  return longest > 2 && longest > TABBED_SHARE * rows.length;
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
  const says = { delimiter: best.delimiter };
  if (told !== null)
    return decision("delimiter", delimiterName(best.delimiter), {
      confidence: byOption ? "told" : "certain",
      because: byOption ? "it was given as an option" : 'the first line says "sep="',
      option,
      says,
    });
  const next = candidates.find((other) => other.delimiter !== best.delimiter);
  return decision("delimiter", delimiterName(best.delimiter), {
    ...confidenceOf(best, next),
    because: "cut there, the rows have one length and their cells read as times and numbers",
    runnerUp: next !== undefined && next.score > 0.3 ? delimiterName(next.delimiter) : null,
    option,
    says,
  });
}

function decimalDecision(
  best: Candidate,
  candidates: readonly Candidate[],
  options: LogOptions,
): Decision {
  const choice = nameOf(best.decimal);
  const option = "--decimal . or ,";
  const says = { decimal: best.decimal };
  if (options.decimal !== undefined)
    return decision("decimal mark", choice, {
      confidence: "told",
      because: "it was given as an option; the other mark may stand between thousands",
      option,
      says,
    });
  const next = candidates.find(
    (other) => other.delimiter === best.delimiter && other.decimal !== best.decimal,
  );
  const isOpen = next !== undefined && next.score > best.score - 1e-9;
  return decision("decimal mark", choice, {
    confidence: isOpen ? "certain" : confidenceOf(best, next).confidence,
    because: isOpen
      ? "no number of the body depends on it"
      : best.isGrouped
        ? `the ${best.decimal === "." ? "comma" : "point"} only stands before groups of three digits, between thousands`
        : `numbers of the body are written with a decimal ${choice}`,
    runnerUp: isOpen || next === undefined || next.score < 0.3 ? null : nameOf(next.decimal),
    option,
    says,
  });
}

function nameOf(mark: DecimalMark): string {
  return mark === "." ? "point" : "comma";
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
