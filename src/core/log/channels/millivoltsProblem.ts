import type { Problem, Result } from "../../problem.ts";
import { compensated } from "../../thermocouple/compensated.ts";
import { emfMillivolts, emfRangeC } from "../../thermocouple/emf.ts";
import { THERMOCOUPLE_TYPES, type ThermocoupleType } from "../../thermocouple/ThermocoupleType.ts";
import type { LogOptions } from "../LogReading.ts";
import type { Column } from "../text/table.ts";
import type { ColdJunction } from "./millivoltsColdJunction.ts";
import { greatestMillivolts } from "./millivoltsColumns.ts";

/** Peaks that a firing in a pottery kiln may have [°C]: common practice, set wide. */
const FIRING_PEAK_C = { least: 500, most: 1420 };
/** Terminals taken for the examples when nothing says how warm they were [°C]. */
const ROOM_C = 25;

/** Asks for the type of a thermocouple whose millivolts were logged, with what each type would make of them. */
export function typeUnknown(
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
export function typeTooSmall(
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
