import type { TemperatureUnit } from "../units/temperature.ts";

/** How a report of glazes is to be shown. */
export interface GlazeView {
  readonly unit: TemperatureUnit;
  /** Unit of what goes on the scales. */
  readonly weights: "g" | "oz";
}
