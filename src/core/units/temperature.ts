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
