import { shapeOf } from "../math/statistics.ts";
import { failed, type Result } from "../problem.ts";
import { assemble } from "./assemble.ts";
import { decideRoles, type Roles } from "./channels/roles.ts";
import { celsiusColumn, decideUnit, type UnitChoice } from "./channels/unit.ts";
import { wildStretch } from "./channels/wildRows.ts";
import { checkOptions } from "./checkOptions.ts";
import { withoutMillivolts } from "./millivolts.ts";
import { type LogOpener, logOpener, type OpenedLog } from "./openLog.ts";
import type {
  Decision,
  LogOptions,
  LogReading,
  ReadingSteps,
  SplitQuoted,
} from "./reading/LogReading.ts";
import { type Column, columnList } from "./text/logTable.ts";
import {
  blankLinesBefore,
  type RowTimes,
  rowTimes,
  timeColumnDecision,
  timedTable,
} from "./time/rowTimes.ts";
import { pickTime, type TimeChoice } from "./time/timeColumn.ts";

/**
 * A log whose bytes are all there, read as by `logReader`.
 *
 * @param bytes The file as it is; any bytes are allowed.
 * @param splitQuoted Splits a record that holds quotes.
 * @returns the reading, or problems `log/…` that a person can fix.
 */
export function readLog(
  bytes: Uint8Array,
  options: LogOptions,
  splitQuoted: SplitQuoted,
): Result<LogReading> {
  const reader = logReader(options, splitQuoted);
  reader.push(bytes);
  return reader.end();
}

/** Reads a log that comes in parts: from a file, a stream, or one that is still growing. */
export interface LogReader {
  /**
   * The next bytes; they are not kept.
   * @returns false when no more are needed, since the log cannot be read.
   */
  readonly push: (bytes: Uint8Array) => boolean;
  /** The reading, once all bytes were given; asked for once. */
  readonly end: () => Result<LogReading>;
  /** How far it came, also where it ended in a problem; asked for after `end`. */
  readonly steps: () => ReadingSteps;
}

/**
 * A log of any make, read as it comes: text → table → time and columns → clean Curves in °C.
 * Whatever is decided on the way is told with its reason; what two readings are possible for is
 * asked, never assumed. Memory goes with the readings, not with the text.
 *
 * @param splitQuoted Splits a record that holds quotes.
 * @returns by `end`: the reading, or problems `log/…` that a person can fix.
 */
export function logReader(options: LogOptions, splitQuoted: SplitQuoted): LogReader {
  const problems = checkOptions(options);
  let steps: ReadingSteps = { decisions: [], columns: [] };
  const note: NoteSteps = (known) => {
    steps = { ...steps, ...known };
  };
  if (problems.length > 0)
    return { push: () => false, end: () => failed(...problems), steps: () => steps };
  const opener: LogOpener = logOpener(options, splitQuoted, (decisions) =>
    note({ decisions: [...steps.decisions, ...decisions] }),
  );
  return {
    push: opener.push,
    end: () => interpreted(opener.end(), options, note),
    steps: () => steps,
  };
}

/** Takes what is known by now in place of what was known before. */
type NoteSteps = (known: Partial<ReadingSteps>) => void;

function interpreted(
  opened: Result<OpenedLog>,
  given: LogOptions,
  note: NoteSteps,
): Result<LogReading> {
  if (!opened.ok) return opened;
  note({ decisions: opened.value.decisions });
  const inDegrees = withoutMillivolts(opened.value, given);
  if (!inDegrees.ok) return inDegrees;
  const { log, options } = inDegrees.value;
  const choice = pickTime(log.table, {
    name: options.name,
    told: options.timeColumn,
    intervalSeconds: log.preamble.intervalSeconds,
  });
  if (!choice.ok) return choice;
  const table = timedTable(log.table, choice.value.place);
  const onTime = timeColumnDecision(choice.value);
  note({ decisions: [...log.decisions, onTime] });
  const roles = decideRoles(table, choice.value.place, options);
  if (!roles.ok) return roles;
  const columns = roles.value.columns.map(({ column: { name }, role, because }) => ({
    name,
    role,
    because,
  }));
  note({ decisions: [...log.decisions, onTime, roles.value.decision], columns });
  const known = { choice: choice.value, roles: roles.value };
  const reading = readColumns({ ...log, table }, known, options);
  if (reading.ok) note({ decisions: reading.value.decisions });
  return reading;
}

/**
 * The reading of a log whose time column and roles are known: unit and times, then the Curves.
 * Unit and times are both asked for at once when both are open.
 */
function readColumns(
  log: OpenedLog,
  { choice, roles }: { readonly choice: TimeChoice; readonly roles: Roles },
  options: LogOptions,
): Result<LogReading> {
  const temperatures = roles.columns
    .filter(({ role }) => role === "temperature")
    .map(({ column }) => column);
  if (!temperatures.some((column) => column.numbers.some((value) => !Number.isNaN(value))))
    return noReadings(temperatures, options);
  const unit = decideUnit(temperatures, log.preamble.unit, options);
  const assumed = unit.ok ? unit.value.of : () => "C" as const;
  const widest = widestColumn(temperatures, roles.doubtful);
  const scale = assumed(widest);
  const times = rowTimes(choice, {
    options,
    preamble: log.preamble,
    tempsC: celsiusColumn(widest.numbers, scale),
    rowCount: log.table.rowCount,
    blanksBefore: () => blankLinesBefore(log.table),
    columnText: columnList(log.table.columns),
  });
  if (!unit.ok || !times.ok)
    return failed(...(unit.ok ? [] : unit.problems), ...(times.ok ? [] : times.problems));
  return assemble({
    log,
    roles,
    unit: unit.value,
    times: times.value,
    primary: widest,
    decisions: allDecisions(log, roles, { unit: unit.value, times: times.value }),
    options,
  });
}

function allDecisions(
  log: OpenedLog,
  roles: Roles,
  { unit, times }: { readonly unit: UnitChoice; readonly times: RowTimes },
): readonly Decision[] {
  const isSaid = log.decisions.some(({ about }) => about === "unit");
  return [...log.decisions, ...times.decisions, roles.decision, ...(isSaid ? [] : [unit.decision])];
}

function noReadings(temperatures: readonly Column[], options: LogOptions): Result<LogReading> {
  const names = temperatures.map((column) => `"${column.name}"`).join(", ");
  const words = [...new Set(temperatures.flatMap((column) => [...column.missingWords.keys()]))];
  const found = words.length === 0 ? "only blanks" : `only ${words.slice(0, 4).join(", ")}`;
  return failed({
    code: "log/no-readings",
    what: `the temperature columns (${names}) hold ${found}`,
    where: options.name,
    expected: "numbers in at least one temperature column",
    fix: "check the thermocouple and its plug, or name another column with --column",
  });
}

/** The column that moves most and not wildly, and no programme, if there is one: the best one to judge rates by. */
function widestColumn(temperatures: readonly Column[], doubtful: readonly string[]): Column {
  const all = temperatures.map(({ numbers }) => numbers);
  const isCalm = ({ numbers }: Column) =>
    wildStretch(
      numbers,
      all.filter((other) => other !== numbers),
    ) === null;
  const calm = temperatures.filter(isCalm);
  const sure = calm.filter(({ name }) => !doubtful.includes(name));
  const [asked] = [sure, calm, temperatures].filter((list) => list.length > 0);
  return (asked ?? temperatures).reduce((a, b) => (movement(b) > movement(a) ? b : a));
}

function movement({ numbers }: Column): number {
  const { greatest, least, count } = shapeOf(numbers);
  return greatest > 3300 || count < 2 ? -1 : greatest - least;
}
