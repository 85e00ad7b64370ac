import { type Shape, shapeOf, steadyValues } from "../../math/statistics.ts";
import { failed, ok, type Result } from "../../problem.ts";
import type { ChannelRole, LogOptions } from "../reading/LogReading.ts";
import { OTHER_UNIT, OTHER_UNIT_IN_NAME, WORDS } from "../text/headerCells.ts";
import { type Column, columnList, findColumn, type Table } from "../text/logTable.ts";
import { jumpsOnce } from "./setPoints.ts";
import { celsiusFrom, columnUnit, type LogUnit, possibleUnits } from "./unit.ts";

/** What a column was taken for by itself, before it is looked at beside the others. */
export interface Judged {
  readonly column: Column;
  readonly role: ChannelRole;
  readonly because: string;
  readonly shape: Shape;
  /** Named or labelled a temperature, told apart from merely looking like one. */
  readonly isSure: boolean;
}

/** Why a column that jumps about is no temperature. */
export const JUMPS = "it jumps about";
/** Why a column that stays nearly the same is no temperature by itself. */
export const HARDLY = "it hardly changes";
/** Why a column is a set point by its numbers alone. */
export const STRAIGHT = "it runs in exact lines and steps, as no kiln does";

/** What a column is by its name, its unit, or else its numbers. */
export function judge(column: Column): Judged {
  const shape = shapeOf(column.numbers);
  const say = (role: ChannelRole, because: string, isSure = true): Judged => ({
    column,
    role,
    because,
    isSure,
    shape,
  });
  if (column.kind === "stamp") return say("other", "times");
  if (column.kind === "text") return say("other", "words");
  if (shape.count === 0)
    return say(hasTemperatureWord(column) ? "temperature" : "other", "no number in it", false);
  return judgeNumbers(column, say);
}

function hasTemperatureWord(column: Column): boolean {
  return columnUnit(column) !== null || WORDS.temperature.test(column.name);
}

function judgeNumbers(
  column: Column,
  say: (role: ChannelRole, because: string, isSure?: boolean) => Judged,
): Judged {
  const { name, unitText } = column;
  const plain = name.replace(/_/g, " ");
  const unit = columnUnit(column);
  const isOther = unit === null && (OTHER_UNIT.test(unitText) || OTHER_UNIT_IN_NAME.test(name));
  if (WORDS.coldJunction.test(plain)) return say("cold-junction", "its name says so");
  if (WORDS.output.test(plain) && unit === null) return say("output", "its name says so");
  if (/^[([]?%[)\]]?$/.test(unitText.trim()) || /%/.test(name))
    return say("output", "its unit is %");
  if (WORDS.setPoint.test(plain) && !isOther) return say("set-point", "its name says so");
  if (isOther) return say("other", "its unit is none of temperature");
  if (unit !== null) return say("temperature", "its unit is one of temperature");
  if (WORDS.nothing.test(plain)) return say("other", "its name says so");
  if (WORDS.temperature.test(plain)) return say("temperature", "its name says so");
  return judgeByShape(column, say);
}

/** Share of numbers beside their like from which the rest are no readings, as 9999. */
const MOSTLY_STEADY = 0.75;

function judgeByShape(
  column: Column,
  say: (role: ChannelRole, because: string, isSure?: boolean) => Judged,
): Judged {
  const steady = steadyValues(column.numbers);
  const known = column.numbers.filter((value) => !Number.isNaN(value));
  const values = steady.length < MOSTLY_STEADY * known.length ? known : steady;
  const shape = shapeOf(values);
  const range = shape.greatest - shape.least;
  const wavers = wavering(values) > 0.12 * range;
  if (countsByOne(shape)) return say("other", "it counts the rows by one");
  if (shape.greatest <= 60 && shape.least >= 5 && range < 30)
    return say("other", "it stays near room temperature", false);
  if (shape.greatest <= 100.5 && shape.least >= -0.5 && (range <= 1 || wavers))
    return say("output", "it jumps about between 0 and 100", false);
  if (range < 30) return say("other", HARDLY, false);
  if (jumpsOnce(column.numbers)) return say("set-point", STRAIGHT, false);
  if (shape.greatest > 3300 || shape.least < -480)
    return say("other", "too large for a kiln", false);
  if (wavers) return say("other", JUMPS, false);
  return say("temperature", "it changes smoothly, as a kiln does", false);
}

/** Whether numbers count the rows, from the first or, in a log with the newest row first, from the last. */
function countsByOne({ isWhole, medianStep, risingShare, steadyShare }: Shape): boolean {
  return isWhole && Math.abs(medianStep) === 1 && (risingShare > 0.97 || steadyShare < 0.03);
}

/** Size by which a quarter of the numbers are off the line of their two neighbours. */
function wavering(values: Float64Array): number {
  const bends = new Float64Array(Math.max(0, values.length - 2));
  for (let i = 0; i < bends.length; i++)
    bends[i] = Math.abs(values[i + 1]! - (values[i]! + values[i + 2]!) / 2);
  return bends.sort()[Math.floor(0.75 * bends.length)] ?? 0;
}

/** Change of a kiln, or lead of it, beside which a column near room temperature is none of its zones [in its unit]. */
const KILN_RANGE = 60;
/** Change of a kiln that is enough when it is so many times that of the column. */
const MUCH_MORE = { range: 30, times: 10 };

/** Whether a column without a name stays near room temperature while a kiln beside it moves. */
export function isIndoors({ shape, column, role }: Judged, all: readonly Judged[]): boolean {
  if (role !== "temperature" || !/^column \d+$/.test(column.name)) return false;
  const unit = columnUnit(column);
  const others = all.filter((other) => other.column !== column && other.role === "temperature");
  const units = unit === null ? unitsOf(others) : [unit];
  const isNear = units.some((each) => {
    const least = celsiusFrom(shape.least, each);
    const most = celsiusFrom(shape.greatest, each);
    return least > 5 && most < 60 && most - least < 25;
  });
  const own = MUCH_MORE.times * (shape.greatest - shape.least);
  const isKiln = (other: Judged) =>
    other.role === "temperature" &&
    (other.shape.greatest - other.shape.least >
      Math.min(KILN_RANGE, Math.max(MUCH_MORE.range, own)) ||
      other.shape.least - shape.greatest > KILN_RANGE);
  return isNear && others.some(isKiln);
}

/** Scales under which all of some columns could be kilns. */
function unitsOf(columns: readonly Judged[]): readonly LogUnit[] {
  return (["C", "F", "K"] as const).filter((unit) =>
    columns.every(({ shape: { first, least, greatest } }) =>
      possibleUnits({ start: first, least, peak: greatest }).includes(unit),
    ),
  );
}

export function asIndoors(judged: Judged): Judged {
  const because = "it stays near room temperature while another column does not";
  return { ...judged, role: "cold-junction", because, isSure: false };
}

/** Why a column is what it was told to be. */
export const GIVEN = "given as an option";

/** Roles that are told, by column; a column cannot be measured without numbers, or be the time as well. */
export function rolesToldOf(
  table: Table,
  others: readonly Column[],
  options: LogOptions,
): Result<ReadonlyMap<Column, ChannelRole>> {
  const told = Object.entries(options.roles ?? {}).map(([name, role]) => ({
    name,
    role,
    column: findColumn(table.columns, name),
  }));
  const problems = told
    .filter(
      ({ column, role }) =>
        column === null ||
        !others.includes(column) ||
        (role !== "other" && column.kind !== "number"),
    )
    .map(({ name, role, column }) => ({
      code: "log/unknown-column" as const,
      what: `there is no column "${name}" that could be ${role}${column === null ? "" : `: it holds ${others.includes(column) ? "no numbers" : "the time"}`}`,
      where: options.name,
      expected: `a column, out of: ${columnList(table.columns)}`,
      fix: `give --role one of these names, or its number from 1: --role "${others[0]?.name ?? "1"}=${role}"`,
    }));
  if (problems.length > 0) return failed(...problems);
  return ok(new Map(told.map(({ column, role }) => [column as Column, role])));
}

/** Columns with the roles that were told in place of those found. */
export function asTold<
  Found extends {
    readonly column: Column;
    readonly role: ChannelRole;
    readonly because: string;
    readonly isSure: boolean;
  },
>(found: readonly Found[], roles: ReadonlyMap<Column, ChannelRole>): readonly Found[] {
  return found.map((each) => {
    const role = roles.get(each.column);
    return role === undefined ? each : { ...each, role, because: GIVEN, isSure: true };
  });
}
