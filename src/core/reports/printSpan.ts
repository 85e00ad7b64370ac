import { printRate, printTemperature } from "../units/print.ts";
import type { TemperatureUnit } from "../units/temperature.ts";

/** Two temperatures in the order of travel, the unit said once: `620 → 520 °C`. */
export function printSpan(fromC: number, toC: number, unit: TemperatureUnit): string {
  return `${printTemperature(fromC, unit).split(" ")[0]} → ${printTemperature(toC, unit)}`;
}

/** A signed rate [°C/h] with its direction in words: `up 150 °C/h`, `down 60 °C/h`. */
export function printTravel(rateCPerHour: number, unit: TemperatureUnit): string {
  return `${rateCPerHour < 0 ? "down" : "up"} ${printRate(rateCPerHour, unit)}`;
}
