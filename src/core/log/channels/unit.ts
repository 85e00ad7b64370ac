import { selected, steadyValues } from "../../math/statistics.ts";
import { failed, ok, type Problem, type Result } from "../../problem.ts";
import { celsiusFromFahrenheit, celsiusFromKelvin } from "../../units/temperature.ts";
import { type Decision, decision, type LogOptions } from "../reading/LogReading.ts";
import { temperatureUnitIn } from "../text/headerCells.ts";
import type { Column } from "../text/logTable.ts";
import { wildStretch } from "./wildRows.ts";

/** A scale that a log may be written in. */
export type LogUnit = "C" | "F" | "K";

/** The scale of the log, and of each temperature column where they differ. */
export interface UnitChoice {
  readonly unit: LogUnit;
  /** Scale of a column: its own label, else the log's. */
  readonly of: (column: Column) => LogUnit;
  readonly decision: Decision;
}

/**
 * Above this no studio kiln goes [°C], so that a higher number is not in °C: common practice.
 */
const HOTTEST_KILN_C = 1420;
/** Room temperatures at which a firing begins [°C]: common practice. */
const ROOM_C = { from: 8, to: 40 };
/** No shed that a kiln is fired in is colder [°C]: common practice, wide on purpose. */
const COLDEST_SHED_C = -5;
/** A log whose numbers stay below this is of no firing in °C or °F, and nothing about kilns tells its unit. */
const NO_FIRING = 40;

const SIGN: Readonly<Record<LogUnit, string>> = { C: "°C", F: "°F", K: "K" };

/** A temperature of the log [°C]. */
export function celsiusFrom(value: number, unit: LogUnit): number {
  if (unit === "C") return value;
  return unit === "F" ? celsiusFromFahrenheit(value) : celsiusFromKelvin(value);
}

/**
 * The unit of the temperatures: told, labelled, named above the table, or the only one under which
 * start and peak are possible.
 * @returns the unit, or `log/unit-unknown` when two are possible.
 */
export function decideUnit(
  temperatures: readonly Column[],
  preambleUnit: LogUnit | null,
  options: LogOptions,
): Result<UnitChoice> {
  const option = "--log-unit C, F or K";
  if (options.unit !== undefined) {
    const told = options.unit;
    return ok({
      unit: told,
      of: () => told,
      decision: decision("unit", SIGN[told], {
        confidence: "told",
        because: "it was given as an option",
        option,
        says: { unit: told },
      }),
    });
  }
  const problem = unitProblem(temperatures, options.name);
  if (problem !== null) return failed(problem);
  const labelled = temperatures.map(columnUnit).find((unit) => unit !== null) ?? null;
  const stated = labelled ?? preambleUnit;
  const isOne = temperatures.every((column) => (columnUnit(column) ?? stated) === stated);
  if (stated === null) return likelyUnit(temperatures, options);
  const because =
    labelled !== null
      ? "it is written beside the column's name or numbers"
      : "it is named above the table";
  return ok({
    unit: stated,
    of: (column) => columnUnit(column) ?? stated,
    decision: decision("unit", SIGN[stated], {
      confidence: "certain",
      because,
      option,
      // What is told holds for every column, so it cannot say that they differ.
      ...(isOne && { says: { unit: stated } }),
    }),
  });
}

function likelyUnit(temperatures: readonly Column[], options: LogOptions): Result<UnitChoice> {
  const calm = calmColumns(temperatures);
  const range = rangeOf(calm);
  const grid = gridUnit(calm);
  const possible = possibleUnits(range);
  const [unit] = grid !== null && possible.includes(grid.unit) ? [grid.unit] : possible;
  const isSettled = possible.length === 1 || (grid !== null && possible.includes(grid.unit));
  const { start, least, peak } = range;
  const fall = least < start - 5 ? `, fall to ${shown(least)}` : "";
  const seen = `start at ${shown(start)}${fall} and peak at ${shown(peak)}`;
  if (!isSettled || unit === undefined)
    return failed({
      code: "log/unit-unknown",
      what: `the temperatures ${seen}, which could be ${asUnits(possible.length > 0 ? possible : ["C", "F", "K"])}`,
      where: options.name,
      expected: "a unit in the header, in a row under it, in the cells, or above the table",
      fix: "say it with --log-unit C or --log-unit F (or K)",
    });
  const isByGrid = possible.length > 1 && grid !== null;
  return ok({
    unit,
    of: () => unit,
    decision: decision("unit", SIGN[unit], {
      confidence: isByGrid ? "guessed" : "likely",
      because: isByGrid
        ? `no unit is written; ${grid.because}`
        : `no unit is written; temperatures that ${seen} are possible only in ${SIGN[unit]}`,
      runnerUp: isByGrid ? asUnits(possible.filter((each) => each !== unit)) : null,
      option: "--log-unit C, F or K",
      says: { unit },
    }),
  });
}

function asUnits(list: readonly LogUnit[]): string {
  return list.map((each) => SIGN[each]).join(" or ");
}

function shown(value: number): string {
  return Number.isFinite(value) ? String(Math.round(value * 10) / 10) : "nothing";
}

/** Readings without those that no kiln gives, and without columns that jump wildly. */
function calmColumns(temperatures: readonly Column[]): readonly Float64Array[] {
  const every = temperatures.map(({ numbers }) => numbers);
  // What stays at one number beside others that move is a programme that is off, or stuck.
  const moving = every.filter((numbers) => !isOneNumber(numbers));
  const all = moving.length > 0 ? moving : every;
  const calm = all.filter(
    (numbers) =>
      wildStretch(
        numbers,
        all.filter((other) => other !== numbers),
      ) === null,
  );
  return (calm.length > 0 ? calm : all).map(steadyValues).filter((values) => values.length > 0);
}

function isOneNumber(numbers: Float64Array): boolean {
  const first = numbers.find((value) => !Number.isNaN(value));
  return numbers.every((value) => value === first || Number.isNaN(value));
}

interface Range {
  readonly start: number;
  readonly least: number;
  readonly peak: number;
}

function rangeOf(columns: readonly Float64Array[]): Range {
  let least = Number.NaN;
  let peak = Number.NaN;
  for (const values of columns) {
    const copy = values.slice();
    const spare = Math.min(3, Math.floor(copy.length / 200));
    const [low, high] = [selected(copy, spare), selected(copy, copy.length - 1 - spare)];
    if (!(low >= least)) least = low;
    if (!(high <= peak)) peak = high;
  }
  return { start: columns[0]?.[0] ?? Number.NaN, least, peak };
}

/**
 * Units that the numbers leave open: none in which the kiln would be hotter than any, or colder than
 * any shed, at any time. A start at room temperature in °C settles it, since no firing begins in frost.
 */
export function possibleUnits({ start, least, peak }: Range): readonly LogUnit[] {
  if (peak < NO_FIRING) return ["C", "F"];
  const units: readonly LogUnit[] = ["C", "F", "K"];
  const fits = units.filter((unit) => celsiusFrom(peak, unit) <= HOTTEST_KILN_C);
  const cold = Math.min(start, least);
  if (fits.includes("C") && cold >= ROOM_C.from && cold <= ROOM_C.to) return ["C"];
  return fits.filter((unit) => celsiusFrom(cold, unit) >= COLDEST_SHED_C);
}

/** Readings from which a grid can be seen. */
const GRID_READINGS = 20;

/**
 * A log of whole degrees that was converted to the other scale shows it: 68.0, 69.8, 71.6 °F are
 * 20, 21, 22 °C, and 20.0, 20.6, 21.1 °C are 68, 69, 70 °F.
 */
function gridUnit(
  columns: readonly Float64Array[],
): { readonly unit: LogUnit; readonly because: string } | null {
  const values = columns.flatMap((column) => Array.from(column.subarray(0, 2000)));
  const fractions = new Set(values.map((value) => Math.round((value % 1) * 10)));
  if (values.length < GRID_READINGS || fractions.size < 3) return null;
  const isWhole = (value: number, slack: number) => Math.abs(value - Math.round(value)) < slack;
  if (values.every((value) => isWhole((value - 32) / 1.8, 0.01)))
    return { unit: "F", because: "all numbers are whole degrees Celsius turned into °F" };
  // Each number, rounded to a tenth, stands for one whole degree Fahrenheit: 5 of 9 tenths occur.
  if (values.every((value) => isTenthOfFahrenheit(value)))
    return { unit: "C", because: "all numbers are whole degrees Fahrenheit turned into °C" };
  return null;
}

function isTenthOfFahrenheit(value: number): boolean {
  const back = (Math.round(value * 1.8 + 32) - 32) / 1.8;
  return Math.abs(Math.round(back * 10) / 10 - value) < 0.001;
}

const FIX = "export the log again in whole degrees of one unit";

/** Why the numbers of temperature columns are in no one unit: two scales in one column, or parts of a degree. */
function unitProblem(temperatures: readonly Column[], name: string): Problem | null {
  const mixed = temperatures.find(({ otherSuffix }) => otherSuffix !== null);
  if (mixed !== undefined)
    return {
      code: "log/unit-mixed",
      what: `the cells of "${mixed.name}" are partly in ${sign(mixed.suffix)} and partly in ${sign(mixed.otherSuffix)}`,
      where: name,
      expected: "one unit in the whole column",
      fix: `${FIX}; --log-unit reads all numbers in one, whatever stands beside them`,
    };
  const scaled = temperatures.find((column) => SCALED.test(`${column.name} ${column.unitText}`));
  if (scaled === undefined) return null;
  return {
    code: "log/unit-scaled",
    what: `"${scaled.name}" counts parts of a degree, not degrees`,
    where: name,
    expected: "temperatures in °C, °F or K",
    fix: `${FIX}; --log-unit C, F or K reads the numbers as degrees all the same`,
  };
}

function sign(unit: Column["suffix"]): string {
  return unit === "K" ? "K" : `°${unit}`;
}

/** `0.1 °C`, `1/10 °F`, `°C x 10`, `tenths`. */
const SCALED =
  /(?:0[.,]0?1|1\/100?)\s*(?:[°º˚]|deg|[CFK]\b)|\btenths?\b|[°º˚]\s?[CFK]\s?[x×*]\s?100?\b/i;

/** The scale that a column itself names, in its unit row, its cells or its name; null when none. */
export function columnUnit(column: Column): "C" | "F" | "K" | null {
  return (
    scaleOf(column.unitText) ??
    column.suffix ??
    temperatureUnitIn(column.name) ??
    bareUnit(column.name)
  );
}

function scaleOf(unitText: string): "C" | "F" | "K" | null {
  const text = unitText.trim().replace(/^[([]\s*|\s*[)\]]$/g, "");
  if (/^(?:[°º˚�Â]{0,2}\s?C|℃|deg\.? ?C|celsius)$/i.test(text)) return "C";
  if (/^(?:[°º˚�Â]{0,2}\s?F|℉|deg\.? ?F|fahrenheit)$/i.test(text)) return "F";
  return /^(?:[°º˚]?\s?K|kelvin|deg\.? ?K)$/i.test(text) ? "K" : null;
}

/** A name that ends in a bare letter after a temperature word or a digit: `TempC`, `Zone 1 F`; not `Zone C`. */
function bareUnit(name: string): "C" | "F" | "K" | null {
  const match = /(?:temp(?:erature)?\d*[ _.,-]*|\d[ _.,-]?)([CFK])$/i.exec(name);
  return match === null ? null : (match[1]?.toUpperCase() as "C" | "F" | "K");
}

/** Numbers of a column as temperatures [°C]; the same array when they are in °C, so not to be written to. */
export function celsiusColumn(numbers: Float64Array, unit: LogUnit): Float64Array {
  return unit === "C" ? numbers : numbers.map((value) => celsiusFrom(value, unit));
}

/** The same of some rows in their order; the array itself when these are all rows as they stand. */
export function celsiusInRows(
  numbers: Float64Array,
  rows: Int32Array,
  unit: LogUnit,
): Float64Array {
  const areAll = rows.length === numbers.length && rows.every((row, i) => row === i);
  if (areAll) return celsiusColumn(numbers, unit);
  const picked = new Float64Array(rows.length);
  for (let i = 0; i < picked.length; i++)
    picked[i] = celsiusFrom(numbers[rows[i]!] as number, unit);
  return picked;
}
