import { correlation, shapeOf, steadyValues } from "../../math/statistics.ts";
import { failed, ok, type Result } from "../../problem.ts";
import {
  type ChannelRole,
  type Decision,
  decision,
  type LogOptions,
} from "../reading/LogReading.ts";
import { type Column, columnList, findColumn, type Table } from "../text/logTable.ts";
import { roughClock } from "../time/numberTimes.ts";
import { placeName, type TimePlace } from "../time/timeColumn.ts";
import {
  asIndoors,
  asTold,
  GIVEN,
  HARDLY,
  isIndoors,
  JUMPS,
  type Judged,
  judge,
  rolesToldOf,
  STRAIGHT,
} from "./judgedColumn.ts";
import { setPointsAmong } from "./setPoints.ts";

/** A column that is not the time, and what it was taken for. */
interface RoledColumn {
  readonly column: Column;
  readonly role: ChannelRole;
  readonly because: string;
}

/** The columns with their roles, and the decision in words. */
export interface Roles {
  readonly columns: readonly RoledColumn[];
  readonly decision: Decision;
  /** Temperatures that may as well be set points, by name. */
  readonly doubtful: readonly string[];
}

/** Correlation above which an unlabelled column beside a known temperature is another of them. */
const ALIKE = 0.98;

/**
 * Which columns are measured temperatures, and what the others are.
 * @returns the roles, or `log/unknown-column`, `log/no-temperature`.
 */
export function decideRoles(table: Table, place: TimePlace, options: LogOptions): Result<Roles> {
  const others = table.columns.filter((column) => !isOfPlace(column, place));
  const roles = rolesToldOf(table, others, options);
  if (!roles.ok) return roles;
  if (options.columns !== undefined && options.columns.length > 0)
    return toldRoles(table, others, { options, roles: roles.value });
  const settled = settle(others.map(judge), roughClock(place));
  const judged = asTold(settled.columns, roles.value);
  if (judged.some((each) => each.role === "temperature")) {
    const isTold = roles.value.size > 0;
    const decision = rolesDecision({ ...settled, columns: judged }, isTold);
    return ok({ columns: judged, decision, doubtful: isTold ? [] : settled.doubtful });
  }
  return failed({
    code: "log/no-temperature",
    what: noTemperatureText(table, place),
    where: options.name,
    expected: "a column of temperatures, named or labelled in °C, °F or K",
    fix: "name the column with --column NAME or --column NUMBER",
  });
}

function noTemperatureText(table: Table, place: TimePlace): string {
  const millivolts = table.columns.some((column) =>
    /\bmV\b/.test(`${column.name} ${column.unitText}`),
  );
  const found = `the columns are ${columnList(table.columns)}; the time is ${placeName(place)}`;
  return millivolts
    ? `has millivolts but no temperatures: ${found}`
    : `has no column of temperatures: ${found}`;
}

function isOfPlace(column: Column, place: TimePlace): boolean {
  if (place.kind === "none") return false;
  if (place.kind === "number") return place.column === column;
  return place.date === column || place.clock === column;
}

function toldRoles(
  table: Table,
  others: readonly Column[],
  {
    options,
    roles,
  }: { readonly options: LogOptions; readonly roles: ReadonlyMap<Column, ChannelRole> },
): Result<Roles> {
  const wanted = (options.columns ?? []).map((told) => ({
    told,
    column: findColumn(table.columns, told),
  }));
  const problems = wanted
    .filter(({ column }) => column === null || !others.includes(column) || column.kind !== "number")
    .map(({ told, column }) => ({
      code: "log/unknown-column" as const,
      what:
        column === null
          ? `there is no column "${told}"`
          : `column "${column.name}" holds ${others.includes(column) ? "no numbers" : "the time"}`,
      where: options.name,
      expected: `a temperature column, out of: ${columnList(table.columns)}`,
      fix: "give --column one of these names, or its number from 1",
    }));
  if (problems.length > 0) return failed(...problems);
  const chosen = new Set(wanted.map(({ column }) => column));
  const chosenOnly = settle(others.map(judge), null).columns.map((each): Judged => {
    if (chosen.has(each.column)) return { ...each, role: "temperature", because: GIVEN };
    return each.role === "temperature"
      ? { ...each, role: "other", because: "not among the columns given" }
      : each;
  });
  const columns = asTold(chosenOnly, roles);
  return ok({
    columns,
    decision: rolesDecision({ columns, runnerUp: null, doubtful: [] }, true),
    doubtful: [],
  });
}

function rolesDecision({ columns: judged, runnerUp, doubtful }: Settled, told: boolean): Decision {
  const named = judged.map(({ column, role, because }) => ({ name: column.name, role, because }));
  const temperatures = named.filter(({ role }) => role === "temperature");
  const rest = named.filter(({ role }) => role !== "temperature");
  const special = rest.filter(({ role }) => role !== "other");
  const restText = rest
    .slice(0, 8)
    .map(({ name, role, because }) => `${name}: ${role} (${because})`)
    .join("; ");
  const isSure =
    runnerUp === null && judged.every((each) => each.role !== "temperature" || each.isSure);
  return decision("columns", temperatures.map(({ name }) => name).join(", "), {
    confidence: told ? "told" : doubtful.length > 0 ? "guessed" : isSure ? "certain" : "likely",
    because: [
      [...new Set(temperatures.map(({ because }) => because))].join("; "),
      ...(restText === "" ? [] : [`left out: ${restText}`]),
    ].join("; "),
    runnerUp,
    option: "--column NAME; --role NAME=ROLE",
    says: {
      columns: temperatures.map(({ name }) => name),
      ...(special.length > 0 && {
        roles: Object.fromEntries(special.map(({ name, role }) => [name, role])),
      }),
    },
  });
}

/** Heights at which columns that hardly change are zones of a kiln that holds, and how near they are [in its unit]. */
const HOLDING = { least: 90, most: 2600, apart: 30, share: 0.08, range: 80 };

/** Columns without names that hardly change, taken for zones of a kiln that holds when several lie together. */
function withHolding(judged: readonly Judged[]): readonly Judged[] {
  if (judged.some((each) => each.role === "temperature" && each.isSure)) return judged;
  const still = judged.filter(
    ({ role, because, shape, column }) =>
      role === "other" &&
      /^column \d+$/.test(column.name) &&
      (because === HARDLY || (because === JUMPS && shape.greatest - shape.least < HOLDING.range)) &&
      shape.first > HOLDING.least &&
      shape.first < HOLDING.most,
  );
  const isNear = (a: Judged, b: Judged) =>
    Math.abs(a.shape.first - b.shape.first) < HOLDING.apart + HOLDING.share * a.shape.first;
  const isHolding = ({ role, column }: Judged) => {
    if (role !== "temperature") return false;
    const { greatest, least } = shapeOf(steadyValues(column.numbers));
    return greatest - least < HOLDING.range;
  };
  const taken = [...still, ...judged.filter(isHolding)];
  const zones = still.filter((each) =>
    taken.some((other) => other !== each && isNear(each, other)),
  );
  return judged.map((each) =>
    zones.includes(each)
      ? {
          ...each,
          role: "temperature",
          because: "it lies beside another as the zones of a kiln that holds",
        }
      : each,
  );
}

/** The columns with their roles, and the other way to take them, when there is one. */
interface Settled {
  readonly columns: readonly Judged[];
  readonly runnerUp: string | null;
  /** Columns of which the other way is as good. */
  readonly doubtful: readonly string[];
}

/** Looks at the columns together: labelled ones rule, alike ones follow, a set point leads in straight steps. */
function settle(all: readonly Judged[], clock: Float64Array | null): Settled {
  const judged = withHolding(all);
  const sure = judged.filter((each) => each.role === "temperature" && each.isSure);
  const known = sure.length > 0 ? sure : judged.filter((each) => each.role === "temperature");
  const followed = judged.map((each): Judged => {
    const isOpen = !each.isSure && each.column.kind === "number" && each.shape.count > 0;
    if (!isOpen || known.includes(each)) return each;
    const isAlike = known.some((other) => runAlike(other, each));
    if (isAlike)
      return { ...each, role: "temperature", because: "it runs like the temperatures beside it" };
    return each.role === "temperature"
      ? { ...each, role: "other", because: "it is not labelled, others are" }
      : each;
  });
  const indoors = followed.map((each) => (isIndoors(each, followed) ? asIndoors(each) : each));
  const temperatures = indoors.filter((each) => each.role === "temperature");
  const { setPoints, doubtful } = setPointsAmong(
    temperatures.map(({ column }) => ({ name: column.name, values: column.numbers })),
    clock,
  );
  const columns = indoors.map(
    (each): Judged =>
      setPoints.includes(each.column.numbers)
        ? { ...each, role: "set-point", because: STRAIGHT }
        : each,
  );
  const found = columns.filter((each) => each.because === STRAIGHT);
  return {
    columns,
    doubtful: found.length === 0 ? doubtful : [],
    runnerUp: runnerUpOf(
      found.map(({ column }) => column.name),
      doubtful,
      unnamedAmong(columns),
    ),
  };
}

/** The other way to take the columns: a set point as a kiln, a kiln as a set point, or what has no name. */
function runnerUpOf(
  setPoints: readonly string[],
  doubtful: readonly string[],
  unnamed: readonly string[],
): string | null {
  const others = unnamed.filter((name) => !setPoints.includes(name) && !doubtful.includes(name));
  const ways = [
    setPoints.length > 0 ? `${setPoints.join(", ")} as a temperature` : null,
    setPoints.length === 0 && doubtful.length > 0
      ? `${doubtful.length > 1 ? "one of " : ""}${doubtful.join(", ")} as a set point, which would look the same here`
      : null,
    others.length > 0
      ? `${others.join(", ")} as something else, since only numbers tell without a name`
      : null,
  ];
  return ways.filter((way) => way !== null).join("; ") || null;
}

/** Names that say nothing of what a column is. */
const NO_NAME = /^(?:column|col|channel|ch|input|in|analog|ai|value|data)[\s_.-]*\d*$/i;

/** Columns of numbers that were told by their numbers alone, when there is more than one. */
function unnamedAmong(columns: readonly Judged[]): readonly string[] {
  const counted = columns.filter(
    ({ column, shape }) => column.kind === "number" && shape.count > 0,
  );
  const plain = (name: string) => name.replace(/\s*[([].*$/, "");
  const unnamed = counted.filter(({ column }) => NO_NAME.test(plain(column.name)));
  return counted.length > 1 ? unnamed.map(({ column }) => column.name) : [];
}

/** Whether an unlabelled column moves with a temperature, about as far and at about the same height. */
function runAlike(known: Judged, open: Judged): boolean {
  const range = ({ shape }: Judged) => shape.greatest - shape.least;
  const isOfSize =
    range(open) > 0.5 * range(known) &&
    range(open) < 2 * range(known) &&
    Math.abs(open.shape.greatest - known.shape.greatest) < 0.5 * range(known) + 20;
  return isOfSize && correlation(known.column.numbers, open.column.numbers) > ALIKE;
}
