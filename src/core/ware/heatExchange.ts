import { ZERO_CELSIUS_K } from "../units/temperature.ts";

/** Stefan–Boltzmann constant [W/m²K⁴]. */
export const STEFAN = 5.670374e-8;

/** Emissivity of fired clay and shelves between 600 and 1200 °C; 0.7 to 0.92, from memory. */
export const EMISSIVITY = 0.85;

/** Heat carried by the air in a closed kiln [W/m²K]; our own estimate. */
export const CONVECTION_W_PER_M2K = 5;

/** How much the inside of a pot takes part: in a closed kiln it mostly sees itself; our own estimate. */
export const INSIDE_SHARE = 0.5;

/** How much the underside of a shelf takes part: it sees the layer below it; our own estimate. */
export const UNDERSIDE_SHARE = 0.7;

/** Two grey faces looking at each other across the foot gap. */
export const GAP_EMISSIVITY = 1 / (2 / EMISSIVITY - 1);

/** Conductivity of still air [W/mK] as a straight line in kelvin, within 7 % from 27 to 1200 °C; from memory. */
const AIR_CONDUCTIVITY = 0.0107;
const AIR_CONDUCTIVITY_PER_K = 5.78e-5;

/** Cordierite: density [kg/m³] from a sheet of kiln furniture, heat capacity at 573 °C [J/kgK] from memory. */
export const SHELF_DENSITY = 2000;
export const SHELF_HEAT_CAPACITY = 1050;

/** Gap between stacked shelves [m] and heat that the load holds [J/m³K]; our own estimates. */
const SHELF_SPACING_M = 0.1;
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
 * Time by which the middle of a stacked load lags its edge under a steady ramp [s].
 * The shelves act as a porous body that passes heat on by radiation from layer to layer, so the
 * lag grows with the square of the radius and falls with the cube of kelvin.
 */
export function loadLagSeconds(radiusM: number, tempC: number): number {
  const diffusivity = (radiationWPerM2K(tempC) * SHELF_SPACING_M) / LOAD_HEAT_J_PER_M3K;
  return (radiusM * radiusM) / (4 * diffusivity);
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
