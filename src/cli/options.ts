import type { LogOptions } from "../core/log/LogReading.ts";
import { failed, ok, type Result } from "../core/problem.ts";
import { parseDuration } from "../core/units/parseDuration.ts";
import { writtenQuantity } from "../core/units/parseQuantity.ts";
import { celsiusDeltaFromFahrenheitDelta } from "../core/units/temperature.ts";

/** What the command line says about how to read a log. */
export interface LogCommandOptions {
  readonly column?: readonly string[];
  readonly timeColumn?: string;
  readonly logUnit?: "C" | "F" | "K";
  readonly timeUnit?: "s" | "min" | "h";
  readonly dayFirst?: boolean;
  readonly monthFirst?: boolean;
  readonly delimiter?: string;
  readonly decimal?: "." | ",";
  readonly encoding?: string;
  readonly interval?: string;
}

/** Marks that are awkward to type, by name. */
const NAMED_DELIMITERS: Readonly<Record<string, string>> = { tab: "\t", "\\t": "\t", blanks: " " };

/** The reader's options from those of the command line. */
export function logOptionsFrom(given: LogCommandOptions): Result<Omit<LogOptions, "name">> {
  if (given.dayFirst && given.monthFirst)
    return failed({
      code: "command/contradiction",
      where: "command line",
      what: "both --day-first and --month-first are given",
      expected: "one of them, or neither",
      fix: "drop one",
    });
  const interval = given.interval
    ? parseDuration(given.interval, { bareUnit: "s", where: "--interval" })
    : ok(undefined);
  if (!interval.ok) return interval;
  const dayFirst = given.dayFirst ? true : given.monthFirst ? false : undefined;
  return ok({
    ...(given.column && { columns: given.column }),
    ...(given.timeColumn && { timeColumn: given.timeColumn }),
    ...(given.logUnit && { unit: given.logUnit }),
    ...(given.timeUnit && { timeUnit: given.timeUnit }),
    ...(dayFirst !== undefined && { dayFirst }),
    ...(given.delimiter && { delimiter: NAMED_DELIMITERS[given.delimiter] ?? given.delimiter }),
    ...(given.decimal && { decimal: given.decimal }),
    ...(given.encoding && { encoding: given.encoding }),
    ...(interval.value !== undefined && { intervalSeconds: interval.value }),
  });
}

const OFFSET = /^([+−-]?\d+(?:\.\d+)?)\s*°?\s*([CF])?$/i;

/** Largest offset that is taken for a thermocouple's [K]; more is a typing mistake. */
const LARGEST_OFFSET_K = 100;

/** A thermocouple's offset [K] from `8C`, `-12F`, `5`. */
export function offsetFrom(text: string | undefined): Result<number> {
  if (text === undefined) return ok(0);
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
