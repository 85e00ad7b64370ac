import { kelvinFromCelsius } from "../units/temperature.ts";
import { interpolated } from "./interpolated.ts";
import { CARPENTER_C_AXIS, CARPENTER_MEAN } from "./quartzTables.ts";

/** Direction in a quartz crystal: the mean of all, or along c, which is what a body feels. */
export type QuartzAxis = "mean" | "c";

/**
 * Linear expansion of quartz from 20 °C [%], straight between measured points.
 * A pure crystal: in a body the step at 573 °C is smeared by some 6 K and scaled by the free
 * quartz. Above 900 °C the last value is kept; quartz hardly moves there.
 *
 * @see SOURCES["carpenter-1998"]
 */
export function quartzExpansionPercent(tempC: number, axis: QuartzAxis): number {
  const table = axis === "c" ? CARPENTER_C_AXIS : CARPENTER_MEAN;
  return interpolated(table.rows, tempC);
}

/** Molar volume of quartz at 25 °C [cm³/mol]. */
const VOLUME_25C = 22.69;
/** Size of the volume that the order parameter takes up [cm³/mol]. */
const VOLUME_MAX = 1.188;
/** Temperature at which the order is gone [K]. */
const CRITICAL_K = 847;

/**
 * Molar volume of quartz [cm³/mol] by the closed form of a Landau transition, flat above 847 K.
 * Its mean expansion stays within 0.09 % of length of the measured table up to 700 °C; it has no
 * jump at the inversion, only a vertical tangent, so use the table where the step matters.
 *
 * @see SOURCES["holland-powell-2011"]
 */
export function quartzMolarVolume(tempC: number): number {
  return VOLUME_25C + VOLUME_MAX * (order(25) - order(tempC));
}

/** Mean linear expansion of quartz from 20 °C [%] by the closed form. */
export function quartzExpansionByFormulaPercent(tempC: number): number {
  return (Math.cbrt(quartzMolarVolume(tempC) / quartzMolarVolume(20)) - 1) * 100;
}

function order(tempC: number): number {
  return Math.sqrt(Math.max(0, 1 - kelvinFromCelsius(tempC) / CRITICAL_K));
}
