import { failed, ok, type Result } from "../../problem.ts";
import { emfMillivolts } from "../../thermocouple/emf.ts";
import type { ThermocoupleType } from "../../thermocouple/ThermocoupleType.ts";
import { temperatureFromEmf } from "../../thermocouple/temperatureFromEmf.ts";
import { decision } from "../decision.ts";
import type { Decision, LogOptions } from "../LogReading.ts";
import type { OpenedLog } from "../openLog.ts";
import { findColumn } from "../text/columnNames.ts";
import type { Column } from "../text/table.ts";
import { type ColdJunction, decideColdJunction } from "./millivoltsColdJunction.ts";
import { isMillivolts, isOtherTemperature, nameWithoutMillivolts } from "./millivoltsColumns.ts";
import { typeTooSmall, typeUnknown } from "./millivoltsProblem.ts";

/** A log whose millivolts have become degrees, and the options that still hold for it. */
export interface WithoutMillivolts {
  readonly log: OpenedLog;
  readonly options: LogOptions;
}

/**
 * A log with its columns of thermocouple millivolts as °C, by the type told and the temperature of
 * the terminals beside each reading. Columns in degrees stay as they are; where a log has such,
 * millivolts are only turned when they are named. Emf of the cold junction is added, never degrees.
 *
 * @returns the log, or `log/thermocouple-unknown` and `log/cold-junction-unknown`, both that apply,
 * or `log/thermocouple-wrong` when a tenth of the cells is outside the range of the type.
 */
export function withoutMillivolts(log: OpenedLog, options: LogOptions): Result<WithoutMillivolts> {
  const found = wanted(log, options);
  if (found.length === 0) return ok({ log, options });
  const cold = decideColdJunction(log, options);
  const type = options.thermocouple;
  if (type === undefined || !cold.ok)
    return failed(
      ...(type === undefined ? [typeUnknown(found, cold, options)] : []),
      ...(cold.ok ? [] : cold.problems),
    );
  const turned = new Map(
    found.map((column) => [column, inDegrees(column, { type, cold: cold.value, options })]),
  );
  const beyond = found.filter(
    (column) => (turned.get(column)?.outside ?? 0) > MOST_OUTSIDE * column.numbers.length,
  );
  if (beyond.length > 0) return failed(typeTooSmall(beyond, type, options));
  const { column: coldColumn, scale } = cold.value;
  const columns = log.table.columns.map((column) => {
    if (column === coldColumn && scale !== null) return { ...column, unitText: `°${scale}` };
    return turned.get(column)?.column ?? column;
  });
  const { unit: _, ...others } = options;
  return ok({
    log: {
      ...log,
      table: { ...log.table, columns },
      decisions: [...log.decisions, typeDecision(type, [...turned.values()]), cold.value.decision],
    },
    options: others,
  });
}

/** Columns of millivolts to turn: those named, else all when nothing else is a temperature. */
function wanted({ table }: OpenedLog, options: LogOptions): readonly Column[] {
  const found = table.columns.filter(isMillivolts);
  const told = options.columns ?? [];
  if (told.length > 0) {
    const named = told.map((name) => findColumn(table.columns, name));
    const short = told.map((name) => name.trim().toLowerCase());
    return found.filter(
      (column) =>
        named.includes(column) || short.includes(nameWithoutMillivolts(column.name).toLowerCase()),
    );
  }
  return table.columns.some(isOtherTemperature) ? [] : found;
}

/** Share of the cells outside the range of the type from which on it is not that type; own choice. */
const MOST_OUTSIDE = 0.1;

interface Turned {
  readonly column: Column;
  /** Cells outside the range of the type. */
  readonly outside: number;
  /** Cells of type B that were too small to give one temperature. */
  readonly ambiguous: number;
}

function inDegrees(
  column: Column,
  given: {
    readonly type: ThermocoupleType;
    readonly cold: ColdJunction;
    readonly options: LogOptions;
  },
): Turned {
  const { type, cold, options } = given;
  let ambiguous = 0;
  let outside = 0;
  let coldC = Number.NaN;
  let coldMv = 0;
  const numbers = column.numbers.map((measuredMv, row) => {
    if (Number.isNaN(measuredMv)) return Number.NaN;
    const here = cold.tempC(row);
    if (here !== coldC) coldMv = emfMillivolts(type, here) as number;
    coldC = here;
    const read = temperatureFromEmf(type, measuredMv + coldMv);
    if (read.kind === "temperature") return read.tempC;
    if (read.kind === "ambiguous") ambiguous++;
    else outside++;
    return Number.NaN;
  });
  const missingWords =
    outside === 0
      ? column.missingWords
      : new Map([
          ...column.missingWords,
          [`millivolts outside the range of type ${type}`, outside],
        ]);
  const isNamed = [...(options.columns ?? []), ...Object.keys(options.roles ?? {})].some(
    (told) => told.trim().toLowerCase() === column.name.toLowerCase(),
  );
  const name = isNamed ? column.name : nameWithoutMillivolts(column.name);
  return {
    column: { ...column, name, numbers, missingWords, unitText: "°C", suffix: null },
    outside,
    ambiguous,
  };
}

function typeDecision(type: ThermocoupleType, turned: readonly Turned[]): Decision {
  const count = turned.reduce((sum, each) => sum + each.ambiguous, 0);
  const few =
    count === 0
      ? ""
      : `; ${count} ${count === 1 ? "cell" : "cells"} below 250 °C left out, where type B gives no single temperature`;
  return decision("unit", `mV of type ${type}`, {
    confidence: "told",
    because: `the heading says mV and the type was given; turned into °C by the reference function of the ITS-90${few}`,
    option: "--thermocouple K, N, S, R, B, J or T",
    says: { thermocouple: type },
  });
}
