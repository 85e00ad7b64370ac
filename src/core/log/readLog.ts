import { failed, type Result } from "../problem.ts";
import { assemble } from "./assemble.ts";
import { decideRoles, type Roles } from "./channels/roles.ts";
import { celsiusFrom, decideUnit, type UnitChoice } from "./channels/unit.ts";
import { checkOptions } from "./checkOptions.ts";
import type { Decision, LogOptions, LogReading, SplitQuoted } from "./LogReading.ts";
import { type OpenedLog, openLog } from "./openLog.ts";
import { shapeOf } from "./statistics.ts";
import { columnList } from "./text/columnNames.ts";
import type { Column } from "./text/table.ts";
import { type RowTimes, rowTimes } from "./time/rowTimes.ts";
import { pickTime, type TimeChoice } from "./time/timeColumn.ts";

/**
 * A log of any make, read: text → table → time and columns → clean Curves in °C. Whatever is decided
 * on the way is told with its reason; what two readings are possible for is asked, never assumed.
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
  const problems = checkOptions(options);
  if (problems.length > 0) return failed(...problems);
  const opened = openLog(bytes, options, splitQuoted);
  if (!opened.ok) return opened;
  const choice = pickTime(opened.value.table, { name: options.name, told: options.timeColumn });
  if (!choice.ok) return choice;
  const roles = decideRoles(opened.value.table, choice.value.place, options);
  if (!roles.ok) return roles;
  return readColumns(opened.value, { choice: choice.value, roles: roles.value }, options);
}

/** Unit and times: both are asked for at once when both are open. */
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
  const widest = widestColumn(temperatures);
  const scale = assumed(widest);
  const times = rowTimes(choice, {
    options,
    preamble: log.preamble,
    tempsC: widest.numbers.map((value) => celsiusFrom(value, scale)),
    rowCount: log.table.rowCount,
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
  return [...log.decisions, ...times.decisions, roles.decision, unit.decision];
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

/** The column that moves most: the best one to judge rates by. */
function widestColumn(temperatures: readonly Column[]): Column {
  let widest = temperatures[0] as Column;
  let range = Number.NEGATIVE_INFINITY;
  for (const column of temperatures) {
    const shape = shapeOf(column.numbers);
    const here = shape.greatest > 3300 || shape.count < 2 ? -1 : shape.greatest - shape.least;
    if (here > range) {
      widest = column;
      range = here;
    }
  }
  return widest;
}
