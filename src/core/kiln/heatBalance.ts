import { kelvinFromCelsius } from "../units/temperature.ts";

/** Stefan–Boltzmann constant [W/m²K⁴], CODATA 2018. */
export const STEFAN_BOLTZMANN = 5.670374419e-8;

/** The two ways in which a kiln loses heat, each over its heat capacity. */
export interface CoolingConstants {
  /** Conduction through the brick over heat capacity [1/s]. */
  readonly conductionPerSecond: number;
  /** Radiating area over heat capacity [m²·K/J]. */
  readonly radiationM2KPerJ: number;
}

/** What a black square metre at one temperature radiates to the room [W/m²]. */
export function radiatedWattPerM2(tempC: number, roomC: number): number {
  return (
    STEFAN_BOLTZMANN *
    (fourthPower(kelvinFromCelsius(tempC)) - fourthPower(kelvinFromCelsius(roomC)))
  );
}

/** By multiplying: `** 4` is not the same to the last digit in every engine. */
function fourthPower(value: number): number {
  const square = value * value;
  return square * square;
}

/** Fall by itself at a temperature [K/s, positive], by conduction and radiation to a room [°C]. */
export function lossKPerSecond(constants: CoolingConstants, tempC: number, roomC: number): number {
  return (
    constants.conductionPerSecond * (tempC - roomC) +
    constants.radiationM2KPerJ * radiatedWattPerM2(tempC, roomC)
  );
}

/** Bricks are still soaking up heat above this [°C], which one temperature cannot say … */
const SOAKING_FROM_C = 1000;

/** … so that a kiln climbs there at only this share of what the balance gives. */
const SOAKING_FACTOR = 0.85;

/** Share of the climb that the balance gives which a kiln really makes at a temperature [°C]. */
export function climbShare(tempC: number): number {
  return tempC > SOAKING_FROM_C ? SOAKING_FACTOR : 1;
}
