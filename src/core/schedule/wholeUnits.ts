import {
  celsiusDeltaFromFahrenheitDelta,
  celsiusFromFahrenheit,
  fahrenheitDeltaFromCelsiusDelta,
  fahrenheitFromCelsius,
  type TemperatureUnit,
} from "../units/temperature.ts";

/** Room for what floating point leaves behind a whole number. */
const WHOLE = 1e-6;

/** The next temperature at or above [°C] that is a whole number of steps in a unit's degrees. */
export function temperatureUp(tempC: number, unit: TemperatureUnit, step: number = 1): number {
  return stepped(tempC, { unit, step, round: (value) => Math.ceil(value - WHOLE) });
}

/** The next temperature at or below [°C] that is a whole number of steps in a unit's degrees. */
export function temperatureDown(tempC: number, unit: TemperatureUnit, step: number = 1): number {
  return stepped(tempC, { unit, step, round: (value) => Math.floor(value + WHOLE) });
}

/** The next slower rate [°C/h, positive] that is a whole number of steps a unit counts; at least 1 step. */
export function rateDown(rateCPerHour: number, unit: TemperatureUnit, step: number = 1): number {
  const rate = unit === "C" ? rateCPerHour : fahrenheitDeltaFromCelsiusDelta(rateCPerHour);
  const whole = Math.max(1, Math.floor(rate / step + WHOLE)) * step;
  return unit === "C" ? whole : celsiusDeltaFromFahrenheitDelta(whole);
}

function stepped(
  tempC: number,
  by: {
    readonly unit: TemperatureUnit;
    readonly step: number;
    readonly round: (value: number) => number;
  },
): number {
  const shown = by.unit === "C" ? tempC : fahrenheitFromCelsius(tempC);
  const whole = by.round(shown / by.step) * by.step;
  return by.unit === "C" ? whole : celsiusFromFahrenheit(whole);
}

/** The nearest temperature [°C] that is a whole number of degrees of a unit. */
export function temperatureNear(tempC: number, unit: TemperatureUnit): number {
  return stepped(tempC, { unit, step: 1, round: Math.round });
}
