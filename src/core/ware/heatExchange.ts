import { ZERO_CELSIUS_K } from "../units/temperature.ts";
import { SHELF_SPACING_MM } from "./shelfStack.ts";

/** Stefan–Boltzmann constant [W/m²K⁴]. */
export const STEFAN = 5.670374e-8;

/** Emissivity of fired clay and shelves between 600 and 1200 °C; 0.7 to 0.92, from memory. */
export const EMISSIVITY = 0.85;

/** Heat carried by the air in a closed kiln [W/m²K]; our own estimate. */
export const CONVECTION_W_PER_M2K = 5;

/**
 * Share of the kiln that is seen across a layer, by the underside of a shelf and by what looks up
 * at it: the rest is the neighbouring layer, as hot as itself; our own estimate.
 */
export const LAYER_SHARE = 0.7;

/** Two grey faces looking at each other across the foot gap. */
export const GAP_EMISSIVITY = 1 / (2 / EMISSIVITY - 1);

/** Conductivity of still air [W/mK] as a straight line in kelvin, within 7 % from 27 to 1200 °C; from memory. */
const AIR_CONDUCTIVITY = 0.0107;
const AIR_CONDUCTIVITY_PER_K = 5.78e-5;

/** Cordierite: density [kg/m³] from a sheet of kiln furniture, heat capacity at 573 °C [J/kgK] from memory. */
export const SHELF_DENSITY = 2000;
export const SHELF_HEAT_CAPACITY = 1050;

/** Heat that the load holds at 573 °C, shelves and all [J/m³K]; our own estimate. */
const LOAD_HEAT_J_PER_M3K = 0.39e6;

/** Heat capacity of fired clay at 226 °C over that at 573 °C; from memory. */
const CAPACITY_AT_226C = 0.88;

/**
 * Heat capacity at a temperature over that at 573 °C: a straight line, level above 1000 °C.
 */
export function capacityFactor(tempC: number): number {
  const upTo = Math.min(tempC, 1000);
  return 1 + ((1 - CAPACITY_AT_226C) / 347) * (upTo - 573);
}

/** Radiation between faces nearly alike in temperature [W/m²K], 4 ε σ T³. */
export function radiationWPerM2K(tempC: number): number {
  return 4 * EMISSIVITY * STEFAN * thirdPowerK(tempC);
}

/** Conductivity of air at a temperature [W/mK]. */
export function airConductivity(tempC: number): number {
  return AIR_CONDUCTIVITY + AIR_CONDUCTIVITY_PER_K * (tempC + ZERO_CELSIUS_K);
}

/**
 * Time by which the middle of a piece lags its edge under a steady ramp, because the load around it
 * does [s].
 *
 * @param share Of the piece in its stack of shelves.
 */
export function loadLagSeconds(share: number, tempC: number): number {
  const layer = (LOAD_HEAT_J_PER_M3K * SHELF_SPACING_MM) / 1000;
  return (share * layer * capacityFactor(tempC)) / (2 * 4 * STEFAN * thirdPowerK(tempC));
}

/** Fourth power of a temperature on the kelvin scale [K⁴], multiplied out: powers are slow. */
export function fourthPowerK(tempC: number): number {
  const tempK = tempC + ZERO_CELSIUS_K;
  return tempK * tempK * (tempK * tempK);
}

/** Third power of a temperature on the kelvin scale [K³]. */
export function thirdPowerK(tempC: number): number {
  const tempK = tempC + ZERO_CELSIUS_K;
  return tempK * tempK * tempK;
}
