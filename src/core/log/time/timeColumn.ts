import { type Shape, shapeOf } from "../../math/statistics.ts";
import { failed, ok, type Result } from "../../problem.ts";
import { formShare } from "../text/columnStores.ts";
import { type Column, columnList, findColumn, type Table } from "../text/logTable.ts";
import { inOrder, isEven, isFromZero } from "./duplicates.ts";

/** Where the time of a row stands. */
export type TimePlace =
  | {
      readonly kind: "written";
      /** Column with the date; null when the log has only a clock. */
      readonly date: Column | null;
      /** Column with the time, often the same; null for a date alone. */
      readonly clock: Column | null;
    }
  | { readonly kind: "number"; readonly column: Column; readonly form: NumberForm }
  | { readonly kind: "none" };

/** What a number that stands for time is. */
export type NumberForm =
  | { readonly kind: "epoch"; readonly perSecond: number; readonly name: string }
  | { readonly kind: "serial"; readonly since: 1900 | 1904 }
  | { readonly kind: "elapsed" }
  | { readonly kind: "index" };

/** A place of the time, with how well it fits and why. */
export interface TimeChoice {
  readonly place: TimePlace;
  readonly because: string;
  readonly runnerUp: string | null;
  readonly told: boolean;
}

interface Candidate {
  readonly place: TimePlace;
  readonly score: number;
  readonly because: string;
}

/** Names that say that a column is a time, and names of a mere count. */
const TIME_NAME =
  /time|date|zeit|datum|uhr|stamp|clock|elapsed|temps|heure|hora|tempo|\b(?:sec|seconds?|min|minutes?|hours?|hrs?|t|s|h)\b/i;
const TEMPERATURE_NAME = /temp(?!o\b|s\b)|thermo|°|℃|℉|deg/i;
const INDEX_NAME =
  /^(?:index|idx|no\.?|nr\.?|num(?:ber)?|#|n|row|rec(?:ord)?|sample|scan|point|count|line|id|reading|seq)\b/i;

/** Scales of a count of seconds since 1970; the ranges of 1990…2100 do not overlap. */
const EPOCHS = [
  { perSecond: 1, name: "seconds since 1970" },
  { perSecond: 1e3, name: "milliseconds since 1970" },
  { perSecond: 1e6, name: "microseconds since 1970" },
  { perSecond: 1e9, name: "nanoseconds since 1970" },
] as const;
const EPOCH_1990 = 6.31e8;
const EPOCH_2100 = 4.1e9;
/** Numbers as a count since 1970, in the scale that their size speaks for; seconds where none does. */
export function epochForm({ numbers }: Column): NumberForm {
  const { first } = shapeOf(numbers);
  const scale = EPOCHS.find(
    ({ perSecond }) => first >= EPOCH_1990 * perSecond && first <= EPOCH_2100 * perSecond,
  );
  return { kind: "epoch", ...(scale ?? EPOCHS[0]) };
}

/** Spreadsheet day numbers of 1990…2100 in both date systems. */
const SERIAL_1990 = 31_412;
const SERIAL_2100 = 73_051;

/** What is known of the time before it is looked for. */
export interface TimeFacts {
  /** The log's. */
  readonly name: string;
  /** Column that was named, if one was. */
  readonly told: string | undefined;
  /** Sampling step that stands above the table [s]; null without. */
  readonly intervalSeconds: number | null;
}

/** How near a step must be to the one above the table, in any unit of time. Own choice. */
const STEP_SHARE = 0.05;

/** Whether a nameless column may be elapsed time in a log that says its step: in one unit it must step by it. */
function mayStepBy(place: TimePlace, intervalSeconds: number): boolean {
  if (place.kind !== "number" || place.form.kind !== "elapsed") return true;
  if (!/^column \d+$/.test(place.column.name)) return true;
  const step = Math.abs(shapeOf(place.column.numbers).medianStep);
  return [0.001, 1, 60, 3600, 86_400].some(
    (unit) => Math.abs(step * unit - intervalSeconds) <= STEP_SHARE * intervalSeconds,
  );
}

/**
 * The column, or pair of columns, that holds the time.
 * @returns the place (perhaps `none`), or `log/unknown-column` for a name that is not there.
 */
export function pickTime(
  table: Table,
  { name, told, intervalSeconds }: TimeFacts,
): Result<TimeChoice> {
  if (told !== undefined) return toldTime(table, { name, told });
  const candidates = [
    ...pairCandidates(table.columns),
    ...table.columns.flatMap((column) => columnCandidates(column, table.rowCount)),
  ]
    .filter(({ place }) => intervalSeconds === null || mayStepBy(place, intervalSeconds))
    .sort((a, b) => b.score - a.score);
  const best = candidates[0];
  if (best === undefined)
    return ok({
      place: { kind: "none" },
      because: "no column rises like time",
      runnerUp: null,
      told: false,
    });
  const next = candidates.find((other) => placeName(other.place) !== placeName(best.place));
  return ok({
    place: best.place,
    because: best.because,
    runnerUp: next === undefined ? null : placeName(next.place),
    told: false,
  });
}

/** Names of the columns of a place, for people. */
export function placeName(place: TimePlace): string {
  if (place.kind === "none") return "none";
  if (place.kind === "number") return place.column.name;
  const names = [place.date?.name, place.clock?.name].filter((each) => each !== undefined);
  return [...new Set(names)].join(" + ");
}

function toldTime(
  table: Table,
  { name, told }: { readonly name: string; readonly told: string },
): Result<TimeChoice> {
  const column = findColumn(table.columns, told);
  if (column === null)
    return failed({
      code: "log/unknown-column",
      what: `there is no column "${told}" for the time`,
      where: name,
      expected: `one of its columns: ${columnList(table.columns)}`,
      fix: "give --time-column one of these names, or its number from 1",
    });
  const best = columnCandidates(column, table.rowCount)[0];
  const isNumber = column.kind === "number";
  if (best === undefined && !isNumber)
    return failed({
      code: "log/no-time",
      what: `column "${column.name}" holds no times`,
      where: name,
      expected: "a column of dates, clock times, or numbers that rise",
      fix: `give --time-column another of: ${columnList(table.columns)}`,
    });
  const place: TimePlace = best?.place ?? { kind: "number", column, form: { kind: "elapsed" } };
  const pair =
    place.kind === "written" && place.date === null ? pairOf(table.columns, column) : null;
  return ok({
    place: pair ?? place,
    because: "it was given as an option",
    runnerUp: null,
    told: true,
  });
}

function pairOf(columns: readonly Column[], clock: Column): TimePlace | null {
  const date = columns.find((column) => hasDate(column) && !hasClock(column));
  return date === undefined ? null : { kind: "written", date, clock };
}

function pairCandidates(columns: readonly Column[]): readonly Candidate[] {
  const date = columns.find((column) => hasDate(column) && !hasClock(column));
  const clock = columns.find((column) => hasClock(column) && !hasDate(column));
  if (date === undefined || clock === undefined) return [];
  const because = "one column holds dates and another clock times";
  return [{ place: { kind: "written", date, clock }, score: 95, because }];
}

function hasDate(column: Column): boolean {
  return formShare(column.stamps, (form) => form.order !== "none") > 0;
}

function hasClock(column: Column): boolean {
  return formShare(column.stamps, (form) => form.clockFields > 0) > 0.5;
}

function columnCandidates(column: Column, rowCount: number): readonly Candidate[] {
  if (column.kind === "text") return [];
  // Times in a few rows only are no time of the log.
  if (column.kind === "stamp")
    return hasDate(column) || hasClock(column) ? [writtenCandidate(column)] : [];
  return numberCandidates(column, rowCount);
}

function writtenCandidate(column: Column): Candidate {
  const named = TIME_NAME.test(column.name) ? 3 : 0;
  const early = -column.index / 100;
  const dated = hasDate(column);
  const clocked = hasClock(column);
  const place: TimePlace = {
    kind: "written",
    date: dated ? column : null,
    clock: clocked ? column : null,
  };
  const score = (dated && clocked ? 100 : clocked ? 85 : 60) + named + early;
  const what = dated && clocked ? "dates with clock times" : clocked ? "clock times" : "dates";
  return { place, score, because: `its cells are ${what}` };
}

function numberCandidates(column: Column, rowCount: number): readonly Candidate[] {
  const first = column.numbers.find((value) => !Number.isNaN(value)) ?? Number.NaN;
  const shape = { ...shapeOf(inOrder(column.numbers)), first };
  if (shape.count < 2 || shape.count < 0.5 * rowCount) return [];
  const falls = shape.steadyShare < 0.01;
  const isSteady = shape.steadyShare >= 0.97 || falls || TIME_NAME.test(column.name);
  const number = (form: NumberForm): TimePlace => ({ kind: "number", column, form });
  const epoch = EPOCHS.find(
    ({ perSecond }) =>
      shape.first >= EPOCH_1990 * perSecond && shape.first <= EPOCH_2100 * perSecond,
  );
  // Numbers of that size are hardly anything else, even where some rows stand out of order.
  if (epoch !== undefined && (isSteady || shape.least >= EPOCH_1990))
    return [
      {
        place: number({ kind: "epoch", ...epoch }),
        score: 90,
        because: `its numbers have the size of ${epoch.name}`,
      },
    ];
  // Days of a spreadsheet are told by their size as well, even where the clock was set back.
  if (isSerial(column.numbers, shape))
    return [
      {
        place: number({ kind: "serial", since: 1900 }),
        score: 80,
        because: "its numbers are spreadsheet days of 1990 to 2100 with a fraction",
      },
    ];
  return isSteady ? elapsedCandidates(column, shape, number) : [];
}

/** Nearly all numbers are days of 1990…2100; a line cut off leaves a stray one. */
function isSerial(numbers: Float64Array, shape: Shape): boolean {
  if (shape.isWhole || !(shape.medianStep < 0.2)) return false;
  const days = numbers.filter((day) => day >= SERIAL_1990 && day <= SERIAL_2100);
  return days.length >= Math.min(0.98 * shape.count, shape.count - 1);
}

function elapsedCandidates(
  column: Column,
  shape: Shape,
  number: (form: NumberForm) => TimePlace,
): readonly Candidate[] {
  const label = `${column.name} ${column.unitText}`;
  const isTemperature = TEMPERATURE_NAME.test(label);
  if (isTemperature) return [];
  const countsByOne = shape.isWhole && shape.medianStep === 1 && shape.risingShare > 0.97;
  if (INDEX_NAME.test(column.name))
    return countsByOne
      ? [{ place: number({ kind: "index" }), score: 20, because: "it counts the samples" }]
      : [];
  if (TIME_NAME.test(label))
    return [
      { place: number({ kind: "elapsed" }), score: 70, because: "its name says so and it rises" },
    ];
  const isRising = shape.risingShare > 0.97 || shape.steadyShare < 0.01;
  if (!isRising || /^column \d+$/.test(column.name) === false) return [];
  const mayBeTime = column.index === 0 && isEven(column.numbers);
  if (!mayBeTime && !isFromZero(column.numbers)) return [];
  return [
    {
      place: number(countsByOne ? { kind: "index" } : { kind: "elapsed" }),
      score: column.index === 0 ? 50 : 30,
      because: countsByOne ? "it counts up by one" : "it rises from row to row",
    },
  ];
}
