import {
  fahrenheitDeltaFromCelsiusDelta,
  fahrenheitFromCelsius,
  type TemperatureUnit,
} from "../units/temperature.ts";

/** A quantity as a chart shows it: field, title with its unit, and the reader's value of it. */
export interface Quantity {
  readonly field: string;
  readonly title: string;
  /** The reader's value from the canonical one. */
  readonly shown: (value: number) => number;
}

/** Temperature in the reader's unit. */
export function temperature(unit: TemperatureUnit): Quantity {
  return unit === "C"
    ? { field: "tempC", title: "Temperature (°C)", shown: (tempC) => tempC }
    : { field: "tempF", title: "Temperature (°F)", shown: fahrenheitFromCelsius };
}

/** Cooling rate in the reader's unit, falling positive, from a signed rate [°C/h]. */
export function coolingRate(unit: TemperatureUnit): Quantity {
  return unit === "C"
    ? { field: "coolingCPerHour", title: "Cooling rate (°C/h)", shown: (rate) => 0 - rate }
    : {
        field: "coolingFPerHour",
        title: "Cooling rate (°F/h)",
        shown: (rate) => 0 - fahrenheitDeltaFromCelsiusDelta(rate),
      };
}

/** A band's edges in the reader's unit: `560–590 °C`. */
export function bandRange(
  band: { readonly lowC: number; readonly highC: number },
  unit: TemperatureUnit,
): string {
  const { shown } = temperature(unit);
  return `${Math.round(shown(band.lowC))}–${Math.round(shown(band.highC))} °${unit}`;
}

/** Time of day, `02:05`, from seconds after some midnight. */
export function clockText(secondsOfDay: number): string {
  const minutes = Math.round((((secondsOfDay % 86400) + 86400) % 86400) / 60) % 1440;
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}

/** Even ticks from a bottom value up, each a multiple of the first step that gives at most so many. */
export function evenTicks(bottom: number, top: number, most: number): readonly number[] {
  const power = 10 ** Math.floor(Math.log10((top - bottom) / most));
  const step =
    power * ([1, 2, 2.5, 5, 10].find((lead) => (top - bottom) / (lead * power) <= most) ?? 10);
  const first = Math.ceil(bottom / step - 1e-9);
  return Array.from(
    { length: Math.floor(top / step + 1e-9) - first + 1 },
    (_, i) => (first + i) * step,
  );
}

/** Ticks of a temperature axis; in °F the freezing point at its foot is one of them. */
export function temperatureTicks(
  bottom: number,
  top: number,
  unit: TemperatureUnit,
): readonly number[] {
  const ticks = evenTicks(bottom, top, 8);
  return unit === "F" && bottom === 32 ? [32, ...ticks] : ticks;
}

/** Even ticks on whole, half or many hours, about a dozen at most. */
export function hourTicks(fromHours: number, toHours: number): readonly number[] {
  const span = toHours - fromHours;
  const step =
    [0.25, 0.5, 1, 2, 3, 4, 6, 12, 24, 48, 96].find((hours) => span / hours <= 13) ?? span;
  const first = Math.ceil(fromHours / step - 1e-9);
  const last = Math.floor(toHours / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step);
}

/** A round value at or above another, for the top of an axis: 1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6 or 8 times a power of ten. */
export function roundUp(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value));
  const lead = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10].find(
    (step) => step * power >= value * (1 - 1e-9),
  );
  return (lead ?? 10) * power;
}
