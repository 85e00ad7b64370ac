import { failed, ok, type Problem, type Result } from "../../problem.ts";
import { decision } from "../decision.ts";
import type { Decision, LogOptions, LogSaid } from "../LogReading.ts";
import type { PreambleFacts } from "../text/preamble.ts";
import type { Column } from "../text/table.ts";
import { DAY_SECONDS } from "./calendar.ts";
import { numberTimes } from "./numberTimes.ts";
import { placeName, type TimeChoice, type TimePlace } from "./timeColumn.ts";
import { asTold, TIME_KIND_OPTION } from "./timeKinds.ts";
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
    column === null
      ? (i + (blanks?.[i] ?? 0)) * interval
      : ((column.numbers[i] as number) - first) * interval,
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
  const count = blanks[blanks.length - 1] as number;
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
