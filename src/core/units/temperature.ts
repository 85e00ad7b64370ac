import { ok, type Result } from "../problem.ts";
import { bareNumber, notThatQuantity, type QuantityForm, writtenQuantity } from "./quantity.ts";

/** The two scales that a potter reads. */
export type TemperatureUnit = "C" | "F";

/** A reading [°C] from a reading [°F]: offset and scale. */
export function celsiusFromFahrenheit(tempF: number): number {
  return (tempF - 32) / 1.8;
}

/** A reading [°F] from a reading [°C]: offset and scale. */
export function fahrenheitFromCelsius(tempC: number): number {
  return tempC * 1.8 + 32;
}

/** A difference or a rate [°C or °C/h] from one in Fahrenheit degrees: scale only. */
export function celsiusDeltaFromFahrenheitDelta(deltaF: number): number {
  return deltaF / 1.8;
}

/** A difference or a rate [°F or °F/h] from one in Celsius degrees: scale only. */
export function fahrenheitDeltaFromCelsiusDelta(deltaC: number): number {
  return deltaC * 1.8;
}

/** 0 °C on the kelvin scale, exact by definition of the Celsius scale. */
export const ZERO_CELSIUS_K = 273.15;

/** A reading [°C] from a thermodynamic temperature [K]. */
export function celsiusFromKelvin(tempK: number): number {
  return tempK - ZERO_CELSIUS_K;
}

/** A thermodynamic temperature [K] from a reading [°C]. */
export function kelvinFromCelsius(tempC: number): number {
  return tempC + ZERO_CELSIUS_K;
}

const TEMPERATURE_FORM: QuantityForm = {
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
    const bare = bareNumber(value, TEMPERATURE_FORM, context.where);
    return bare.ok ? ok(inCelsius(bare.value, context.unit)) : bare;
  }
  const written = writtenQuantity(value, "thousands");
  if (!written) return notThatQuantity(value, TEMPERATURE_FORM, context.where);
  const bare = written.unit === "" || written.unit === "°";
  const unit = bare ? context.unit : UNITS.get(written.unit);
  if (!unit) return notThatQuantity(value, TEMPERATURE_FORM, context.where);
  return ok(inCelsius(written.value, unit));
}

function inCelsius(value: number, unit: TemperatureUnit | "K"): number {
  if (unit === "K") return celsiusFromKelvin(value);
  return unit === "C" ? value : celsiusFromFahrenheit(value);
}

const RATE_FORM: QuantityForm = {
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
    const bare = bareNumber(value, RATE_FORM, context.where);
    return bare.ok ? ok(rateInCelsius(bare.value, context.unit)) : bare;
  }
  const written = writtenQuantity(value, "thousands");
  const parts = written && RATE_UNIT.exec(written.unit);
  if (!(written && parts)) return notThatQuantity(value, RATE_FORM, context.where);
  const [, scale, time] = parts;
  if (written.unit !== "" && time === undefined)
    return notThatQuantity(value, RATE_FORM, context.where);
  const perHour = time?.startsWith("m") ? written.value * 60 : written.value;
  const unit = scale === undefined ? context.unit : scale.startsWith("c") ? "C" : "F";
  return ok(rateInCelsius(perHour, unit));
}

function rateInCelsius(rate: number, unit: TemperatureUnit): number {
  return unit === "C" ? rate : celsiusDeltaFromFahrenheitDelta(rate);
}

const DURATION_FORM: QuantityForm = {
  code: "units/not-a-duration",
  kind: "a span of time",
  expected: '"45 min", "1 h 30 min", "1:30" (hours and minutes), or a bare number of minutes',
};

const CLOCK = /^(\d{1,4}):([0-5]\d)(?::([0-5]\d))?$/;
const PARTS =
  /^(?:(\d+(?:\.\d+)?) ?(?:h|hr|hrs|hour|hours))? ?(?:(\d+(?:\.\d+)?)(?![\d.]) ?(m|min|mins|minute|minutes)?)? ?(?:(\d+(?:\.\d+)?) ?(?:s|sec|secs|second|seconds))?$/;

const SECONDS = { s: 1, min: 60, h: 3600 } as const;

/**
 * A span of time [s], 0 or more, from what a person wrote: `45`, `"45 min"`, `"1 h 30 min"`,
 * `"1h30"`, `"1:30"`. With a colon it is hours and minutes, then seconds if there is a third part.
 * A bare number is in minutes unless told otherwise.
 *
 * @returns `units/not-a-duration` for anything else, a negative number included.
 */
export function parseDuration(
  value: number | string,
  context: { readonly bareUnit?: "s" | "min" | "h"; readonly where: string },
): Result<number> {
  const bareSeconds = SECONDS[context.bareUnit ?? "min"];
  const seconds =
    typeof value === "number" ? value * bareSeconds : secondsWritten(value, bareSeconds);
  if (seconds === null || seconds < 0) return notThatQuantity(value, DURATION_FORM, context.where);
  return bareNumber(seconds, DURATION_FORM, context.where);
}

function secondsWritten(text: string, bareSeconds: number): number | null {
  const flat = text.trim().toLowerCase().replaceAll(/\s+/g, " ");
  const clock = CLOCK.exec(flat);
  if (clock) return Number(clock[1]) * 3600 + Number(clock[2]) * 60 + Number(clock[3] ?? 0);
  const bare = writtenQuantity(flat);
  if (bare?.unit === "") return bare.value * bareSeconds;
  const parts = flat === "" ? null : PARTS.exec(flat);
  if (!parts) return null;
  const [, hours, minutes, minuteUnit, seconds] = parts;
  const minutesAreNamed =
    minuteUnit !== undefined || (hours !== undefined && seconds === undefined);
  if (minutes !== undefined && !minutesAreNamed) return null;
  return Number(hours ?? 0) * 3600 + Number(minutes ?? 0) * 60 + Number(seconds ?? 0);
}

const TIME = /^(\d{1,2})(?::(\d{2})(?::(\d{2}))?)?(?:\s*([ap])\.?m\.?)?$/i;

/**
 * Seconds after midnight of a time of day as a person writes it: `18:00`, `3:40pm`, `6 pm`,
 * `07:05:30`; null for anything else, a lone number included.
 */
export function parseTimeOfDay(text: string): number | null {
  const [, hour, minutes, seconds = "0", half] = TIME.exec(text.trim()) ?? [];
  if (hour === undefined || (minutes === undefined && half === undefined)) return null;
  const hours = Number(hour);
  if (Number(minutes ?? 0) > 59 || Number(seconds) > 59) return null;
  if (half === undefined ? hours > 23 : hours < 1 || hours > 12) return null;
  const ofDay = half === undefined ? hours : (hours % 12) + (half.toLowerCase() === "p" ? 12 : 0);
  return ofDay * 3600 + Number(minutes ?? 0) * 60 + Number(seconds);
}
