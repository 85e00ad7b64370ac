import type { Body } from "./Ware.ts";

/** The properties of a body by name. */
export type BodyProperty = Exclude<keyof Body, "name">;

/** Every property of a body, in the order in which they are shown and written. */
export const BODY_PROPERTIES: readonly BodyProperty[] = [
  "densityKgPerM3",
  "heatCapacityJPerKgK",
  "conductivityWPerMK",
  "youngGPa",
  "ruptureMPa",
  "quartzFraction",
  "cristobaliteFraction",
  "matrixExpansionPerK",
];
