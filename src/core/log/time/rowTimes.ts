import { failed, ok, type Problem, type Result } from "../../problem.ts";
import { type Decision, decision, type LogOptions, type LogSaid } from "../reading/LogReading.ts";
import { DAY_SECONDS } from "../text/calendar.ts";
import type { PreambleFacts } from "../text/headerCells.ts";
import type { Column, Table } from "../text/logTable.ts";
import { numberTimes } from "./numberTimes.ts";
import { placeName, type TimeChoice, type TimePlace } from "./timeColumn.ts";
import { asTold, TIME_KIND_OPTION } from "./timeUnit.ts";
import { writtenTimes } from "./writtenTimes.ts";

/** A time for each row, before clock defects are mended. */
export interface RowTimes {
  /** From 1970, from midnight of the first day, or from the logger's zero; NaN where unreadable [s]. */
  readonly seconds: Float64Array;
  /** What the times are counted from. */
  readonly clock: "date" | "time of day" | "none";
  readonly decisions: readonly Decision[];
  /** Something about the times that a person should know, or null. */
  readonly doubt: string | null;
}

/** What reading the times rests on. */
export interface TimeQuery {
  readonly options: LogOptions;
  readonly preamble: PreambleFacts;
  /** Temperatures beside the times [°C], for judging rates. */
  readonly tempsC: Float64Array;
  readonly rowCount: number;
  /** Blank lines before each row that may stand for readings; null without. */
  readonly blanksBefore: () => Int32Array | null;
  /** What the columns are, for a message. */
  readonly columnText: string;
}

/**
 * A time for each row, from written times, numbers, or a count and an interval.
 * @returns the times, or `log/no-time`, `log/no-interval`, `log/time-unit-unknown`, `log/day-order`.
 */
export function rowTimes(choice: TimeChoice, query: TimeQuery): Result<RowTimes> {
  const place = asTold(choice.place, query.options);
  if (!place.ok) return place;
  const result = placeTimes(place.value, query);
  if (!result.ok) return result;
  const { decisions } = result.value;
  return ok({ ...result.value, decisions: [timeColumnDecision(choice), ...decisions] });
}

/** What was decided about the place of the time. */
export function timeColumnDecision(choice: TimeChoice): Decision {
  const runnerUp = choice.runnerUp ?? (isByRiseAlone(choice.place) ? "no time at all" : null);
  return decision("time column", placeName(choice.place), {
    confidence: choice.told ? "told" : runnerUp === null ? "certain" : "likely",
    because: choice.because,
    runnerUp: choice.told ? null : runnerUp,
    option: "--time-column NAME",
    ...saysOf(choice.place),
  });
}

/** Whether only its rise makes a column without a name the time. */
function isByRiseAlone(place: TimePlace): boolean {
  if (place.kind !== "number" || !/^column \d+$/.test(place.column.name)) return false;
  return place.form.kind === "elapsed" || place.form.kind === "index";
}

/** The column to name; of a date and a clock apart the clock, beside which the date is found again. */
function saysOf(place: TimePlace): { readonly says?: LogSaid } {
  if (place.kind === "none") return {};
  if (place.kind === "number") return { says: { timeColumn: place.column.name } };
  const column = place.clock ?? place.date;
  return column === null ? {} : { says: { timeColumn: column.name } };
}

function placeTimes(place: TimePlace, query: TimeQuery): Result<RowTimes> {
  if (place.kind === "written") return writtenTimes(place, query);
  if (place.kind === "none") return countedTimes(null, query);
  if (place.form.kind === "index") return countedTimes(place.column, query);
  return numberTimes(place.column, place.form, query);
}

/** Sample number × interval. */
function countedTimes(column: Column | null, query: TimeQuery): Result<RowTimes> {
  const interval = query.options.intervalSeconds ?? query.preamble.intervalSeconds;
  if (interval === null || interval === undefined) return uncounted(column, query);
  const first = column === null ? 0 : (column.numbers.find((value) => !Number.isNaN(value)) ?? 0);
  const blanks = column === null ? query.blanksBefore() : null;
  const seconds = Float64Array.from({ length: query.rowCount }, (_, i) =>
    column === null ? (i + (blanks?.[i] ?? 0)) * interval : (column.numbers[i]! - first) * interval,
  );
  const isTold = query.options.intervalSeconds !== undefined;
  return ok({
    seconds,
    clock: "none",
    doubt: blanks === null ? null : blankText(blanks),
    decisions: [
      decision("time format", `sample number × ${interval} s`, {
        confidence: isTold ? "told" : "certain",
        because: isTold
          ? "the interval was given as an option"
          : "the interval stands above the table",
        option: `--interval SECONDS; ${TIME_KIND_OPTION}`,
        says: { timeKind: "count", intervalSeconds: interval },
      }),
    ],
  });
}

/** That blank lines were counted, and what else they may be. */
function blankText(blanks: Int32Array): string {
  const count = blanks[blanks.length - 1]!;
  const lines = count === 1 ? "1 blank line stands" : `${count} blank lines stand`;
  return `${lines} among the readings and ${count === 1 ? "was" : "were"} counted as readings that are lacking; if they are mere spacing, take them out of the file.`;
}

function uncounted(column: Column | null, query: TimeQuery): Result<RowTimes> {
  // A nameless column that counts by one may also be seconds or minutes, which may be told.
  const { timeUnit } = query.options;
  const isNamed = column !== null && !/^column \d+$/.test(column.name);
  if (column !== null && timeUnit !== undefined && query.options.timeKind !== "count")
    return numberTimes(column, { kind: "elapsed" }, query);
  const problem: Problem =
    column === null
      ? {
          code: "log/no-time",
          what: `has no column of times; its columns are ${query.columnText}`,
          where: query.options.name,
          expected: "a column of dates, clock times or elapsed time, or a known sampling interval",
          fix: "name it with --time-column NAME, or say the step between rows with --interval SECONDS",
        }
      : {
          code: "log/no-interval",
          what: `counts its samples in "${column.name}" but does not say how long a step is`,
          where: query.options.name,
          expected: "a sampling interval above the table, or a column of times",
          fix: isNamed
            ? "say the step between samples with --interval SECONDS"
            : "say the step between samples with --interval SECONDS, or --time-unit s, min or h when the count is the time itself",
        };
  return failed(problem);
}

/** A moment's time of day [s after midnight]. */
export function timeOfDay(seconds: number): number {
  return ((seconds % DAY_SECONDS) + DAY_SECONDS) % DAY_SECONDS;
}

/**
 * The table with no numbers in the rows that have no readable time: such rows are statistics under
 * the table or were cut off, and are not to speak for what the columns are.
 */
export function timedTable(table: Table, place: TimePlace): Table {
  const isTimed = timedTest(place);
  const untimed: number[] = [];
  for (let row = 0; row < table.rowCount; row++) if (!isTimed(row)) untimed.push(row);
  if (untimed.length === 0) return table;
  return { ...table, columns: table.columns.map((column) => withoutRows(column, untimed, place)) };
}

/** Whether a row has a time; every row has where there is no column of it. */
function timedTest(place: TimePlace): (row: number) => boolean {
  if (place.kind === "none") return () => true;
  if (place.kind === "number") return (row) => !Number.isNaN(place.column.numbers[row]);
  const column = place.clock ?? (place.date as Column);
  return (row) => column.stamps.formOf[row]! >= 0;
}

function withoutRows(column: Column, rows: readonly number[], place: TimePlace): Column {
  if (column.kind !== "number" || (place.kind === "number" && place.column === column))
    return column;
  const numbers = column.numbers.slice();
  for (const row of rows) numbers[row] = Number.NaN;
  return { ...column, numbers };
}

/** Share of the rows that blank lines may be and still stand for readings; more are mere spacing. Own choice. */
const MOST_BLANK = 0.2;

/**
 * Number of blank lines between the first row and each row of a log with one column of numbers, where
 * a reading that is lacking leaves nothing on its line; null when there are none, or so many that
 * they only space the rows.
 */
export function blankLinesBefore({
  columns,
  rowCount,
  lineOf,
  rejected,
}: Table): Int32Array | null {
  const measured = columns.filter(({ kind, numbers }) => kind === "number" && !isEmpty(numbers));
  if (measured.length !== 1 || rowCount < 2 || rejected.unlisted.size > 0) return null;
  // A note may stand behind the reading that is lacking: `,lid`.
  const others = rejected.listed.filter(({ text }) => !/^\s*[,;\t|]/.test(text));
  const used = new Set(others.map(({ line }) => line));
  const before = new Int32Array(rowCount);
  for (let row = 1; row < rowCount; row++) {
    let blank = 0;
    for (let line = lineOf(row - 1) + 1; line < lineOf(row); line++) if (!used.has(line)) blank++;
    before[row] = before[row - 1]! + blank;
  }
  const all = before[rowCount - 1]!;
  return all > 0 && all <= MOST_BLANK * rowCount ? before : null;
}

function isEmpty(numbers: Float64Array): boolean {
  return numbers.every(Number.isNaN);
}
