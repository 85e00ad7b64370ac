import {
  fahrenheitDeltaFromCelsiusDelta,
  fahrenheitFromCelsius,
  type TemperatureUnit,
} from "./temperature.ts";

/** A temperature in the reader's unit, to a whole degree: `1186 °C`, `2167 °F`. */
export function printTemperature(tempC: number, unit: TemperatureUnit): string {
  const value = unit === "C" ? tempC : fahrenheitFromCelsius(tempC);
  return `${whole(value)} °${unit}`;
}

/** A temperature difference in the reader's unit, to a whole degree: `12 °C`, `22 °F`. */
export function printDifference(deltaC: number, unit: TemperatureUnit): string {
  const value = unit === "C" ? deltaC : fahrenheitDeltaFromCelsiusDelta(deltaC);
  return `${whole(value)} °${unit}`;
}

/** A rate without its sign, the direction being said in words: `60 °C/h`, `108 °F/h`. */
export function printRate(rateCPerHour: number, unit: TemperatureUnit): string {
  const rate = Math.abs(rateCPerHour);
  return `${whole(unit === "C" ? rate : fahrenheitDeltaFromCelsiusDelta(rate))} °${unit}/h`;
}

/**
 * How far a quantity may be off, in the reader's unit: never a bare 0, which would promise too much.
 * @param printed As it is printed: `3 °C/h`, `0 °C/h`.
 */
export function notNought(printed: string): string {
  return printed.replace(/^[−-]?0 (?=\D)/, "under 1 ");
}

/** A length of ware in millimetres, one decimal at most, two under 2 mm: `9.5 mm`, `300 mm`. */
export function printMm(mm: number): string {
  return `${Number(mm.toFixed(mm < 2 ? 2 : mm < 100 ? 1 : 0))} mm`;
}

/** A span of time, to the minute: `45 min`, `1 h 05 min`, `12 h`. Under a minute: `20 s`. */
export function printDuration(seconds: number): string {
  const sign = seconds < 0 ? "−" : "";
  const span = Math.abs(seconds);
  if (span < 59.5) return `${sign}${Math.round(span)} s`;
  const minutes = Math.round(span / 60);
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  if (hours === 0) return `${sign}${minutes} min`;
  return rest === 0
    ? `${sign}${hours} h`
    : `${sign}${hours} h ${String(rest).padStart(2, "0")} min`;
}

/** Elapsed time as hours and minutes: `0:00`, `11:42`, `102:05`. */
export function printElapsed(seconds: number): string {
  const minutes = Math.round(Math.abs(seconds) / 60);
  const clock = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
  return seconds < 0 && minutes > 0 ? `−${clock}` : clock;
}

function whole(value: number): string {
  const rounded = Math.round(value);
  return rounded < 0 ? `−${-rounded}` : String(Math.abs(rounded));
}
