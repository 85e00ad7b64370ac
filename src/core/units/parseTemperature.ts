import { ok, type Result } from "../problem.ts";
import {
  bareNumber,
  notThatQuantity,
  type QuantityForm,
  writtenQuantity,
} from "./parseQuantity.ts";
import { celsiusFromFahrenheit, celsiusFromKelvin, type TemperatureUnit } from "./temperature.ts";

const FORM: QuantityForm = {
  code: "units/not-a-temperature",
  kind: "a temperature",
  expected: '"1186 C", "2167 F", or a bare number in the declared unit',
};

const UNITS: ReadonlyMap<string, TemperatureUnit | "K"> = new Map(
  Object.entries<TemperatureUnit | "K">({
    c: "C",
    "°c": "C",
    "° c": "C",
    "deg c": "C",
    celsius: "C",
    f: "F",
    "°f": "F",
    "° f": "F",
    "deg f": "F",
    fahrenheit: "F",
    k: "K",
    kelvin: "K",
  }),
);

/**
 * A temperature [°C] from what a person wrote: `1186`, `"1186 C"`, `"2165 F"`, `"2,165"`,
 * `"1459 K"`.
 * A bare number, or one with only a degree sign, is in the declared unit. No range is checked here.
 *
 * @returns `units/not-a-temperature` for anything else.
 */
export function parseTemperature(
  value: number | string,
  context: { readonly unit: TemperatureUnit; readonly where: string },
): Result<number> {
  if (typeof value === "number") {
    const bare = bareNumber(value, FORM, context.where);
    return bare.ok ? ok(inCelsius(bare.value, context.unit)) : bare;
  }
  const written = writtenQuantity(value, "thousands");
  if (!written) return notThatQuantity(value, FORM, context.where);
  const bare = written.unit === "" || written.unit === "°";
  const unit = bare ? context.unit : UNITS.get(written.unit);
  if (!unit) return notThatQuantity(value, FORM, context.where);
  return ok(inCelsius(written.value, unit));
}

function inCelsius(value: number, unit: TemperatureUnit | "K"): number {
  if (unit === "K") return celsiusFromKelvin(value);
  return unit === "C" ? value : celsiusFromFahrenheit(value);
}
