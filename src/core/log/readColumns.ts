import { failed, type Result } from "../problem.ts";
import { assemble } from "./assemble.ts";
import { celsiusColumn } from "./channels/celsiusColumn.ts";
import type { Roles } from "./channels/roles.ts";
import { decideUnit, type UnitChoice } from "./channels/unit.ts";
import { wildStretch } from "./channels/wildRows.ts";
import type { Decision, LogOptions, LogReading } from "./LogReading.ts";
import type { OpenedLog } from "./openLog.ts";
import { shapeOf } from "./statistics.ts";
import { columnList } from "./text/columnNames.ts";
import type { Column } from "./text/table.ts";
import { blankLinesBefore } from "./time/blankLines.ts";
import { type RowTimes, rowTimes } from "./time/rowTimes.ts";
import type { TimeChoice } from "./time/timeColumn.ts";

/**
 * The reading of a log whose time column and roles are known: unit and times, then the Curves.
 * Unit and times are both asked for at once when both are open.
 */
export function readColumns(
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
