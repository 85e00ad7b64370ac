import { printDuration } from "../../core/units/print.ts";
import {
  fahrenheitDeltaFromCelsiusDelta,
  fahrenheitFromCelsius,
  type TemperatureUnit,
} from "../../core/units/temperature.ts";

/** A temperature as a person would type it: a number, at most two decimals, unit left out. */
export function typedTemperature(tempC: number, unit: TemperatureUnit): string {
  return short(unit === "C" ? tempC : fahrenheitFromCelsius(tempC));
}

/** A rate as a person would type it, without a sign; `free` as it is. */
export function typedRate(rateCPerHour: number | "free", unit: TemperatureUnit): string {
  if (rateCPerHour === "free") return "free";
  const rate = Math.abs(rateCPerHour);
  return short(unit === "C" ? rate : fahrenheitDeltaFromCelsiusDelta(rate));
}

/** A hold as a person would type it; empty for none. */
export function typedHold(seconds: number): string {
  if (seconds === 0) return "";
  return seconds % 60 === 0 ? printDuration(seconds) : `${short(seconds / 60)} min`;
}

/** A length as a person would type it; empty where it is not known. */
export function typedLength(mm: number | null | undefined): string {
  return typeof mm === "number" ? `${short(mm)} mm` : "";
}

function short(value: number): string {
  return String(Number(value.toFixed(2))).replace("-", "−");
}
