import { failed, ok, type Result } from "../../problem.ts";
import { celsiusFromFahrenheit, celsiusFromKelvin } from "../../units/temperature.ts";
import { decision } from "../decision.ts";
import type { Decision, LogOptions } from "../LogReading.ts";
import { shapeOf } from "../statistics.ts";
import type { Column } from "../text/table.ts";
import { columnUnit } from "./columnUnit.ts";

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
const ROOM_C = { from: 10, to: 40 };

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
      }),
    });
  }
  const labelled = temperatures.map(columnUnit).find((unit) => unit !== null) ?? null;
  const stated = labelled ?? preambleUnit;
  if (stated === null) return likelyUnit(temperatures, options);
  const because =
    labelled !== null
      ? "it is written beside the column's name or numbers"
      : "it is named above the table";
  return ok({
    unit: stated,
    of: (column) => columnUnit(column) ?? stated,
    decision: decision("unit", SIGN[stated], { confidence: "certain", because, option }),
  });
}

function likelyUnit(temperatures: readonly Column[], options: LogOptions): Result<UnitChoice> {
  const { start, peak } = startAndPeak(temperatures);
  const possible = possibleUnits(start, peak);
  const [unit] = possible;
  const asUnits = (list: readonly LogUnit[]) => list.map((each) => SIGN[each]).join(" or ");
  if (possible.length !== 1 || unit === undefined)
    return failed({
      code: "log/unit-unknown",
      what: `the temperatures start at ${shown(start)} and peak at ${shown(peak)}, which could be ${asUnits(possible.length > 0 ? possible : ["C", "F", "K"])}`,
      where: options.name,
      expected: "a unit in the header, in a row under it, in the cells, or above the table",
      fix: "say it with --log-unit C or --log-unit F (or K)",
    });
  return ok({
    unit,
    of: () => unit,
    decision: decision("unit", SIGN[unit], {
      confidence: "likely",
      because: `no unit is written; a start at ${shown(start)} and a peak at ${shown(peak)} are possible only in ${SIGN[unit]}`,
      option: "--log-unit C, F or K",
    }),
  });
}

function shown(value: number): string {
  return Number.isFinite(value) ? String(Math.round(value * 10) / 10) : "nothing";
}

function startAndPeak(temperatures: readonly Column[]): { start: number; peak: number } {
  let start = Number.NaN;
  let peak = Number.NEGATIVE_INFINITY;
  for (const column of temperatures) {
    const values = column.numbers.filter((value) => value < 3300 && value > -460);
    const shape = shapeOf(values);
    if (Number.isNaN(start)) start = shape.first;
    peak = Math.max(peak, robustPeak(values));
  }
  return { start, peak };
}

/** Greatest value that has a fellow near it, so that one wild reading does not rule. */
function robustPeak(values: Float64Array): number {
  const sorted = Float64Array.from(values).sort();
  const spare = Math.min(3, Math.floor(sorted.length / 50));
  return sorted.length === 0 ? Number.NaN : (sorted[sorted.length - 1 - spare] as number);
}

/** Units that start and peak leave open; a start at room temperature settles it unless a peak forbids. */
function possibleUnits(start: number, peak: number): readonly LogUnit[] {
  const units: readonly LogUnit[] = ["C", "F", "K"];
  const fits = units.filter((unit) => celsiusFrom(peak, unit) <= HOTTEST_KILN_C);
  const fromRoom = fits.filter((unit) => {
    const startC = celsiusFrom(start, unit);
    return startC >= ROOM_C.from && startC <= ROOM_C.to;
  });
  // A cold start in °C is far below freezing in the other scales, which no firing begins with.
  if (fromRoom.includes("C")) return ["C"];
  if (fits.includes("C"))
    return fits.includes("K") && fromRoom.includes("K") ? ["C", "K"] : ["C", "F"];
  if (fromRoom.includes("F")) return ["F"];
  if (!fits.includes("K")) return ["F"];
  return celsiusFrom(start, "K") >= ROOM_C.from - 20 ? ["F", "K"] : ["F"];
}
