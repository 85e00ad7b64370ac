import { kilnFiringOf } from "../core/firing/kilnFiring.ts";
import type { AssumedKiln } from "../core/kiln/LearnedKiln.ts";
import { learnKiln } from "../core/kiln/learnKiln.ts";
import { asAssumedKiln } from "../core/kiln/reach.ts";
import type {
  ChannelRole,
  LogOptions,
  LogSaid,
  TimeKind,
  TimeUnit,
} from "../core/log/reading/LogReading.ts";
import { delimiterNamed } from "../core/log/text/cells.ts";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";
import { reviewFiring } from "../core/review/reviewFiring.ts";
import { type PastOffset, pastOffset } from "../core/schedule/coneAim.ts";
import type { ThermocoupleType } from "../core/thermocouple/emf.ts";
import { writtenQuantity } from "../core/units/quantity.ts";
import {
  celsiusDeltaFromFahrenheitDelta,
  parseDuration,
  parseTemperature,
} from "../core/units/temperature.ts";
import { readFiring } from "../node/readFiring.ts";

/** What the command line says about how to read a log. */
export interface LogCommandOptions {
  readonly column?: readonly string[];
  readonly timeColumn?: string;
  readonly logUnit?: "C" | "F" | "K";
  readonly timeKind?: TimeKind;
  readonly timeUnit?: TimeUnit;
  readonly dayFirst?: boolean;
  readonly monthFirst?: boolean;
  readonly yearFirst?: boolean;
  readonly role?: readonly string[];
  readonly header?: string;
  readonly layout?: "wide" | "long";
  readonly delimiter?: string;
  readonly decimal?: "." | ",";
  readonly encoding?: string;
  readonly interval?: string;
  readonly thermocouple?: ThermocoupleType;
  readonly coldJunction?: string;
}

/** The reader's options from those of the command line. */
export function logOptionsFrom(given: LogCommandOptions): Result<Omit<LogOptions, "name">> {
  const orders = dateOrders(given);
  if (orders.length > 1)
    return failed({
      code: "command/contradiction",
      where: "command line",
      what: `both ${orders.join(" and ")} are given`,
      expected: "one of them, or none",
      fix: "drop one",
    });
  const interval = given.interval
    ? parseDuration(given.interval, { bareUnit: "s", where: "--interval" })
    : ok(undefined);
  if (!interval.ok) return interval;
  const thermocouple = thermocoupleFrom(given);
  if (!thermocouple.ok) return thermocouple;
  const table = tableFrom(given);
  if (!table.ok) return table;
  const dayFirst = given.dayFirst ? true : given.monthFirst ? false : undefined;
  return ok({
    ...(given.column && { columns: given.column }),
    ...(given.timeColumn && { timeColumn: given.timeColumn }),
    ...(given.logUnit && { unit: given.logUnit }),
    ...(given.timeKind && { timeKind: given.timeKind }),
    ...(given.timeUnit && { timeUnit: given.timeUnit }),
    // Goes before a record that says another order.
    ...(dayFirst !== undefined && { dayFirst, yearFirst: false }),
    ...(given.yearFirst && { yearFirst: true }),
    ...(given.delimiter && { delimiter: delimiterNamed(given.delimiter) }),
    ...(given.decimal && { decimal: given.decimal }),
    ...(given.encoding && { encoding: given.encoding }),
    ...(interval.value !== undefined && { intervalSeconds: interval.value }),
    ...(given.layout && { layout: given.layout }),
    ...table.value,
    ...thermocouple.value,
  });
}

function dateOrders(given: LogCommandOptions): readonly string[] {
  return [
    ...(given.dayFirst ? ["--day-first"] : []),
    ...(given.monthFirst ? ["--month-first"] : []),
    ...(given.yearFirst ? ["--year-first"] : []),
  ];
}

/** What is said of the columns and their names. */
function tableFrom({ header, role }: LogCommandOptions): Result<Pick<LogSaid, "header" | "roles">> {
  const roles = role === undefined ? ok(undefined) : rolesFrom(role);
  if (!roles.ok) return roles;
  const line = header === undefined || header === "none" ? header : Number(header);
  if (typeof line === "number" && !(Number.isInteger(line) && line > 0))
    return failed({
      code: "command/header",
      where: "--header",
      what: `"${header}" is no line of a file`,
      expected: "the line that holds the names of the columns, counted from 1, or none",
      fix: "--header 3, or --header none",
    });
  return ok({
    ...(line !== undefined && { header: line }),
    ...(roles.value && { roles: roles.value }),
  });
}

/** Roles by column, from `"SP 1=set-point" 4=output`. */
function rolesFrom(given: readonly string[]): Result<NonNullable<LogSaid["roles"]>> {
  const pairs = given.map((text) => {
    const at = text.lastIndexOf("=");
    return { text, name: text.slice(0, at).trim(), role: text.slice(at + 1).trim() };
  });
  const odd = pairs.filter(({ name, role }) => name === "" || !isRole(role));
  if (odd.length > 0)
    return failed(
      ...odd.map(({ text }) => ({
        code: "command/role" as const,
        where: "--role",
        what: `"${text}" does not say what a column is`,
        expected: `a column and its role, ${ROLES.join(", ")}`,
        fix: '--role "SP 1=set-point"',
      })),
    );
  return ok(Object.fromEntries(pairs.map(({ name, role }) => [name, role as ChannelRole])));
}

const ROLES: readonly ChannelRole[] = [
  "temperature",
  "set-point",
  "output",
  "cold-junction",
  "other",
];

function isRole(text: string): text is ChannelRole {
  return ROLES.some((role) => role === text);
}

/** What is said of a thermocouple whose millivolts were logged. */
function thermocoupleFrom({
  thermocouple,
  coldJunction,
}: LogCommandOptions): Result<Pick<LogOptions, "thermocouple" | "coldJunctionC">> {
  const type = thermocouple === undefined ? {} : { thermocouple };
  if (coldJunction === undefined) return ok(type);
  const tempC = parseTemperature(coldJunction, { unit: "C", where: "--cold-junction" });
  return tempC.ok ? ok({ ...type, coldJunctionC: tempC.value }) : tempC;
}

const OFFSET = /^([+−-]?\d+(?:\.\d+)?)\s*°?\s*([CF])?$/i;

/** Largest offset that is taken for a thermocouple's [K]; more is a typing mistake. */
const LARGEST_OFFSET_K = 100;

/** A thermocouple's offset [K] from `8C`, `-12F`, `5`; null when none is given. */
export function offsetFrom(text: string | undefined): Result<number | null> {
  if (text === undefined) return ok(null);
  const match = OFFSET.exec(text.trim());
  const value = match ? Number(match[1]?.replace("−", "-")) : Number.NaN;
  const offsetK =
    match?.[2]?.toUpperCase() === "F" ? celsiusDeltaFromFahrenheitDelta(value) : value;
  if (Math.abs(offsetK) <= LARGEST_OFFSET_K) return ok(offsetK);
  return failed({
    code: "command/offset",
    where: "--offset",
    what: `"${text}" is not an offset of a thermocouple`,
    expected: `what to add to its readings, with its unit: 8C, -12F; at most ${LARGEST_OFFSET_K} °C (180 °F) either way`,
    fix: Number.isNaN(value)
      ? "--offset 8C"
      : "--offset 8C, the difference and not the temperature; a thermocouple further out than that wants replacing",
  });
}

const WATTS: Readonly<Record<string, number>> = { kw: 1000, w: 1 };

/** Wattage [W] from `10.5kW`, `4400 W`. */
export function wattsFrom(text: string | undefined): Result<number | null> {
  if (text === undefined) return ok(null);
  const written = writtenQuantity(text);
  const watts = written ? written.value * (WATTS[written.unit] ?? Number.NaN) : Number.NaN;
  if (watts >= 100 && watts <= 1e6) return ok(watts);
  return failed({
    code: "command/power",
    where: "--power",
    what: `"${text}" is not the wattage of a kiln`,
    expected: "a power with its unit, from the plate of the kiln: 10.5kW, 4400W",
    fix: "--power 10.5kW",
  });
}

/** Price of a kilowatt-hour from `0.30`. */
export function tariffFrom(text: string | undefined): Result<number | null> {
  if (text === undefined) return ok(null);
  const written = writtenQuantity(text);
  if (written && written.unit === "" && written.value >= 0) return ok(written.value);
  return failed({
    code: "command/tariff",
    where: "--tariff",
    what: `"${text}" is not the price of a kilowatt-hour`,
    expected: "a plain number, in whatever money: 0.30",
    fix: "--tariff 0.30",
  });
}

/** What past logs say of a kiln and its thermocouple. */
export interface OwnKiln {
  readonly kiln: AssumedKiln;
  /** Null when no record pins an offset by its witness cones. */
  readonly offset: PastOffset | null;
}

/** A kiln from its logs, and the offset of its thermocouple from the witness cones beside them. */
export async function ownKiln(
  paths: readonly string[],
  told: { readonly powerWatt: number | null; readonly tariffPerKWh: number | null },
): Promise<Result<OwnKiln>> {
  const problems: Problem[] = [];
  const firings = [];
  const offsets = [];
  for (const path of paths) {
    const files = await readFiring(path, { options: {}, recordPath: null, schedulePath: null });
    if (!files.ok) {
      problems.push(...files.problems);
      continue;
    }
    const { reading, record, plan } = files.value;
    const firing = kilnFiringOf(reading, record);
    if (firing !== null) firings.push(firing);
    const review = record === null ? null : reviewFiring({ reading, record, plan });
    if (review?.ok && review.value.offset !== null) offsets.push(review.value.offset);
  }
  if (problems.length > 0) return failed(...problems);
  const learned = learnKiln(firings, {
    ...(told.powerWatt !== null && { powerWatt: told.powerWatt }),
    ...(told.tariffPerKWh !== null && { tariffPerKWh: told.tariffPerKWh }),
  });
  if (!learned.ok) return learned;
  return ok({ kiln: asAssumedKiln(learned.value), offset: pastOffset(offsets) });
}
