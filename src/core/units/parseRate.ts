import { ok, type Result } from "../problem.ts";
import {
  bareNumber,
  notThatQuantity,
  type QuantityForm,
  writtenQuantity,
} from "./parseQuantity.ts";
import { celsiusDeltaFromFahrenheitDelta, type TemperatureUnit } from "./temperature.ts";

const FORM: QuantityForm = {
  code: "units/not-a-rate",
  kind: "a rate",
  expected: '"60 C/h", "108 F/h", "2 C/min", or a bare number in the declared unit per hour',
};

const RATE_UNIT =
  /^(?:(?:°|deg)? ?(c|f|celsius|fahrenheit)?)? ?(?:(?:\/|per) ?(h|hr|hour|m|min|minute))?$/;

/**
 * A rate [°C/h] from what a person wrote: `60`, `"108 F/h"`, `"2 °C per minute"`; its sign is kept.
 * A bare number is in the declared unit per hour.
 *
 * @returns `units/not-a-rate` for anything else, a unit without its "per hour" included.
 */
export function parseRate(
  value: number | string,
  context: { readonly unit: TemperatureUnit; readonly where: string },
): Result<number> {
  if (typeof value === "number") {
    const bare = bareNumber(value, FORM, context.where);
    return bare.ok ? ok(inCelsius(bare.value, context.unit)) : bare;
  }
  const written = writtenQuantity(value, "thousands");
  const parts = written && RATE_UNIT.exec(written.unit);
  if (!(written && parts)) return notThatQuantity(value, FORM, context.where);
  const [, scale, time] = parts;
  if (written.unit !== "" && time === undefined) return notThatQuantity(value, FORM, context.where);
  const perHour = time?.startsWith("m") ? written.value * 60 : written.value;
  const unit = scale === undefined ? context.unit : scale.startsWith("c") ? "C" : "F";
  return ok(inCelsius(perHour, unit));
}

function inCelsius(rate: number, unit: TemperatureUnit): number {
  return unit === "C" ? rate : celsiusDeltaFromFahrenheitDelta(rate);
}
