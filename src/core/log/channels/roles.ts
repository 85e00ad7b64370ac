import { failed, ok, type Result } from "../../problem.ts";
import { decision } from "../decision.ts";
import type { ChannelRole, Decision, LogOptions } from "../LogReading.ts";
import { correlation, type Shape, shapeOf } from "../statistics.ts";
import { columnList, findColumn } from "../text/columnNames.ts";
import type { Column, Table } from "../text/table.ts";
import { placeName, type TimePlace } from "../time/timeColumn.ts";
import { columnUnit } from "./columnUnit.ts";
import { OTHER_UNIT, OTHER_UNIT_IN_NAME, WORDS } from "./words.ts";

/** A column that is not the time, and what it was taken for. */
export interface RoledColumn {
  readonly column: Column;
  readonly role: ChannelRole;
  readonly because: string;
}

/** The columns with their roles, and the decision in words. */
export interface Roles {
  readonly columns: readonly RoledColumn[];
  readonly decision: Decision;
}

interface Judged extends RoledColumn {
  readonly shape: Shape;
  /** Named or labelled a temperature, told apart from merely looking like one. */
  readonly isSure: boolean;
}

/** Correlation above which an unlabelled column beside a known temperature is another of them. */
const ALIKE = 0.98;

/**
 * Which columns are measured temperatures, and what the others are.
 * @returns the roles, or `log/unknown-column`, `log/no-temperature`.
 */
export function decideRoles(table: Table, place: TimePlace, options: LogOptions): Result<Roles> {
  const others = table.columns.filter((column) => !isOfPlace(column, place));
  if (options.columns !== undefined && options.columns.length > 0)
    return toldRoles(table, others, options);
  const judged = settle(others.map(judge));
  if (judged.some((each) => each.role === "temperature"))
    return ok({ columns: judged, decision: rolesDecision(judged, false) });
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

function toldRoles(table: Table, others: readonly Column[], options: LogOptions): Result<Roles> {
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
  const judged = settle(others.map(judge)).map((each): Judged => {
    if (chosen.has(each.column))
      return { ...each, role: "temperature", because: "given as an option" };
    return each.role === "temperature"
      ? { ...each, role: "other", because: "not among the columns given" }
      : each;
  });
  return ok({ columns: judged, decision: rolesDecision(judged, true) });
}

function rolesDecision(judged: readonly Judged[], told: boolean): Decision {
  const named = judged.map(({ column, role, because }) => ({ name: column.name, role, because }));
  const temperatures = named.filter(({ role }) => role === "temperature");
  const rest = named.filter(({ role }) => role !== "temperature");
  const restText = rest
    .slice(0, 8)
    .map(({ name, role, because }) => `${name}: ${role} (${because})`)
    .join("; ");
  const isSure = judged.every((each) => each.role !== "temperature" || each.isSure);
  return decision("columns", temperatures.map(({ name }) => name).join(", "), {
    confidence: told ? "told" : isSure ? "certain" : "likely",
    because: [
      [...new Set(temperatures.map(({ because }) => because))].join("; "),
      ...(restText === "" ? [] : [`left out: ${restText}`]),
    ].join("; "),
    option: "--column NAME",
  });
}

function judge(column: Column): Judged {
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
  return judgeNumbers(column, shape, say);
}

function hasTemperatureWord(column: Column): boolean {
  return columnUnit(column) !== null || WORDS.temperature.test(column.name);
}

function judgeNumbers(
  column: Column,
  shape: Shape,
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
  return judgeByShape(shape, say);
}

function judgeByShape(
  shape: Shape,
  say: (role: ChannelRole, because: string, isSure?: boolean) => Judged,
): Judged {
  const range = shape.greatest - shape.least;
  if (shape.isWhole && shape.medianStep === 1 && shape.risingShare > 0.97)
    return say("other", "it counts up by one");
  if (shape.greatest <= 60 && shape.least >= 5 && range < 30)
    return say("other", "it stays near room temperature", false);
  if (
    shape.greatest <= 100.5 &&
    shape.least >= -0.5 &&
    (range <= 1 || shape.medianStep > 0.12 * range)
  )
    return say("output", "it jumps about between 0 and 100", false);
  if (range < 30) return say("other", "it hardly changes", false);
  if (shape.greatest > 3300 || shape.least < -480)
    return say("other", "too large for a kiln", false);
  if (shape.medianStep > 0.12 * range) return say("other", "it jumps about", false);
  return say("temperature", "it changes smoothly, as a kiln does", false);
}

/** Looks at the columns together: labelled ones rule, alike ones follow, a set point leads in straight steps. */
function settle(judged: readonly Judged[]): readonly Judged[] {
  const sure = judged.filter((each) => each.role === "temperature" && each.isSure);
  const followed = judged.map((each): Judged => {
    if (each.role !== "temperature" || each.isSure || sure.length === 0) return each;
    const isAlike = sure.some(
      (other) => correlation(other.column.numbers, each.column.numbers) > ALIKE,
    );
    return isAlike
      ? { ...each, because: "it runs like the temperatures beside it" }
      : { ...each, role: "other", because: "it is not labelled, others are" };
  });
  const temperatures = followed.filter((each) => each.role === "temperature");
  if (temperatures.length < 2) return followed;
  const straight = temperatures.filter((each) => isStraight(each.column.numbers));
  if (straight.length !== 1 || straight[0] === undefined) return followed;
  return followed.map((each) =>
    each === straight[0]
      ? { ...each, role: "set-point", because: "it runs in exact lines and steps, as no kiln does" }
      : each,
  );
}

/** Whether nearly all second differences are zero within the last digit, and it does move. */
function isStraight(values: Float64Array): boolean {
  const shape = shapeOf(values);
  const range = shape.greatest - shape.least;
  if (!(range > 50)) return false;
  let straight = 0;
  let bends = 0;
  let moving = 0;
  for (let i = 2; i < values.length; i++) {
    const step = (values[i] as number) - (values[i - 1] as number);
    const bend = step - ((values[i - 1] as number) - (values[i - 2] as number));
    if (Number.isNaN(bend)) continue;
    bends++;
    if (step !== 0) moving++;
    if (Math.abs(bend) <= 1e-6 * range) straight++;
  }
  return bends > 20 && moving > 0.2 * bends && straight > 0.95 * bends;
}
