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
  const widest = widestColumn(
    temperatures.filter(({ name }) => !roles.doubtful.includes(name)),
    temperatures,
  );
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

/** The column that moves most and not wildly: the best one to judge rates by. One of all when none is beyond doubt. */
function widestColumn(sure: readonly Column[], temperatures: readonly Column[]): Column {
  const asked = sure.length > 0 ? sure : temperatures;
  let widest = asked[0] as Column;
  let range = Number.NEGATIVE_INFINITY;
  const all = temperatures.map(({ numbers }) => numbers);
  for (const column of asked) {
    const others = all.filter((numbers) => numbers !== column.numbers);
    if (wildStretch(column.numbers, others) !== null) continue;
    const shape = shapeOf(column.numbers);
    const here = shape.greatest > 3300 || shape.count < 2 ? -1 : shape.greatest - shape.least;
    if (here > range) {
      widest = column;
      range = here;
    }
  }
  return widest;
}
