import type { TemperatureUnit } from "../units/temperature.ts";
import type { Paint } from "./paint.ts";

/** How a report is written as text. */
export interface TextOptions {
  readonly unit: TemperatureUnit;
  readonly paint: Paint;
  /** Sources to list at the end, one line each. */
  readonly sources?: readonly string[];
}
