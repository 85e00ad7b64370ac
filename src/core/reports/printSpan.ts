import { printRate, printTemperature } from "../units/print.ts";
import { fahrenheitDeltaFromCelsiusDelta, type TemperatureUnit } from "../units/temperature.ts";

/** Two temperatures in the order of travel, the unit said once: `620 → 520 °C`. */
export function printSpan(fromC: number, toC: number, unit: TemperatureUnit): string {
  return `${printTemperature(fromC, unit).split(" ")[0]} → ${printTemperature(toC, unit)}`;
}

/** A signed rate [°C/h] with its direction in words: `up 150 °C/h`, `down 60 °C/h`. */
export function printTravel(rateCPerHour: number, unit: TemperatureUnit): string {
  return `${rateCPerHour < 0 ? "down" : "up"} ${printRate(rateCPerHour, unit)}`;
}

/**
 * A rate that somebody set [°C/h], without its sign: as it was written in the unit of its file
 * (`72.5 °F/h`), to a whole degree in the other.
 */
export function printSetRate(
  rateCPerHour: number,
  { unit, own }: { readonly unit: TemperatureUnit; readonly own: TemperatureUnit },
): string {
  const rate = Math.abs(rateCPerHour);
  const tenths = Math.round((unit === "C" ? rate : fahrenheitDeltaFromCelsiusDelta(rate)) * 10);
  if (unit !== own || tenths % 10 === 0) return printRate(rateCPerHour, unit);
  return `${(tenths / 10).toFixed(1)} °${unit}/h`;
}
