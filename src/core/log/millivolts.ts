import { failed, ok, type Problem, type Result } from "../problem.ts";
import {
  compensated,
  emfMillivolts,
  emfRangeC,
  THERMOCOUPLE_TYPES,
  type ThermocoupleType,
  temperatureFromEmf,
} from "../thermocouple/emf.ts";
import {
  type ColdJunction,
  decideColdJunction,
  greatestMillivolts,
  isMillivolts,
  isOtherTemperature,
  nameWithoutMillivolts,
} from "./coldJunction.ts";
import type { OpenedLog } from "./openLog.ts";
import { type Decision, decision, type LogOptions } from "./reading/LogReading.ts";
import { type Column, findColumn } from "./text/logTable.ts";

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

/** Peaks that a firing in a pottery kiln may have [°C]: common practice, set wide. */
const FIRING_PEAK_C = { least: 500, most: 1420 };
/** Terminals taken for the examples when nothing says how warm they were [°C]. */
const ROOM_C = 25;

/** Asks for the type of a thermocouple whose millivolts were logged, with what each type would make of them. */
function typeUnknown(
  columns: readonly Column[],
  cold: Result<ColdJunction>,
  options: LogOptions,
): Problem {
  const emfMv = greatestMillivolts(columns);
  const row = columns[0]?.numbers.indexOf(emfMv) ?? 0;
  const coldJunctionC = cold.ok ? cold.value.tempC(Math.max(0, row)) : ROOM_C;
  const peaks = THERMOCOUPLE_TYPES.map((type) => ({
    type,
    read: compensated(type, { emfMv, coldJunctionC }),
  }));
  const read = peaks.flatMap((each) =>
    each.read.kind === "temperature" ? [{ type: each.type, peakC: each.read.tempC }] : [],
  );
  const likely = read.filter(
    ({ peakC }) => peakC >= FIRING_PEAK_C.least && peakC <= FIRING_PEAK_C.most,
  );
  const over = peaks.filter((each) => each.read.kind === "above").map(({ type }) => type);
  const names = columns.map(({ name }) => `"${name}"`).join(", ");
  return {
    code: "log/thermocouple-unknown",
    what: `${names} ${columns.length === 1 ? "holds" : "hold"} millivolts, up to ${emfMv.toFixed(2)} mV, and nothing says of which thermocouple: ${peaksText(likely.length > 0 ? likely : read, over)}${cold.ok ? "" : `, if the terminals are at ${ROOM_C} °C`}`,
    where: options.name,
    expected: "the letter of its type, from the plug, the lead or the order",
    fix: "say it with --thermocouple K (or N, S, R, B, J, T), or as thermocouple.type in the firing record",
  };
}

/** Says that millivolts are more than the type told ever gives. */
function typeTooSmall(
  columns: readonly Column[],
  type: ThermocoupleType,
  options: LogOptions,
): Problem {
  const greatest = emfMillivolts(type, emfRangeC(type).toC) as number;
  const names = columns.map(({ name }) => `"${name}"`).join(", ");
  return {
    code: "log/thermocouple-wrong",
    what: `${names} ${columns.length === 1 ? "holds" : "hold"} up to ${greatestMillivolts(columns).toFixed(2)} mV, and over a tenth of it is outside the range of type ${type}`,
    where: options.name,
    expected: `at most ${greatest.toFixed(2)} mV, which type ${type} gives at ${Math.round(emfRangeC(type).toC)} °C`,
    fix: "check the letter on the plug or the lead, and say that with --thermocouple or in the firing record",
  };
}

function peaksText(
  read: readonly { readonly type: ThermocoupleType; readonly peakC: number }[],
  over: readonly ThermocoupleType[],
): string {
  const parts = [
    ...read.map(({ type, peakC }) => `${type} would peak at ${Math.round(peakC)} °C`),
    ...(over.length === 0 ? [] : [`it is over the range of ${over.join(", ")}`]),
  ];
  return parts.join("; ");
}
