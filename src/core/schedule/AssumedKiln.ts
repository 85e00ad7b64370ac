import { kelvinFromCelsius } from "../units/temperature.ts";

/** How fast a kiln heats with everything on, and falls with everything off. */
export interface AssumedKiln {
  /** Fastest heating at a temperature [°C/h, positive]. */
  readonly fullHeatingCPerHour: (tempC: number) => number;
  /** Fall by itself at a temperature, lid shut [°C/h, positive]. */
  readonly naturalCoolingCPerHour: (tempC: number) => number;
  /** What kiln that is and where its numbers come from; a clause to put in a sentence. */
  readonly basis: string;
}

/** Room that the reference kiln stands in [°C]. */
const ROOM_C = 25;

/** Conduction through the brick over heat capacity [1/s], of the reference kiln. */
const CONDUCTION_PER_SECOND = 3.7e-5;

/** Radiating area over heat capacity [m²·K/J], of the reference kiln. */
const RADIATION_M2_K_PER_J = 4.2e-8;

/** Power over heat capacity [K/s]: 10.5 kW on 122 kJ/K. */
const POWER_K_PER_SECOND = 10_500 / 122_000;

/** Stefan–Boltzmann constant [W/m²K⁴], CODATA 2018. */
const STEFAN_BOLTZMANN = 5.670374419e-8;

/** Bricks are still soaking up heat near the top, which two constants cannot say. */
const SOAKING_FROM_C = 1000;
const SOAKING_FACTOR = 0.85;

/**
 * A loaded studio kiln to stand in while the user's own is unknown: 180 L, 75 mm of firebrick,
 * 10.5 kW, 40 kg of ware and 45 kg of furniture. Loss = conduction + radiation, as in
 * C·dT/dt = P − UA·(T − Ta) − σA(T⁴ − Ta⁴), each over C. The constants were fitted to a simulated
 * firing of that kiln and are simulated, not measured; studio logs differ by a factor of two.
 */
export const REFERENCE_KILN: AssumedKiln = {
  fullHeatingCPerHour: (tempC) => {
    const factor = tempC > SOAKING_FROM_C ? SOAKING_FACTOR : 1;
    return 3600 * factor * (POWER_K_PER_SECOND - lossKPerSecond(tempC));
  },
  naturalCoolingCPerHour: (tempC) => 3600 * lossKPerSecond(tempC),
  basis:
    "a loaded 180 L kiln with 75 mm of firebrick and 10.5 kW, simulated, not measured; a light kiln falls up to twice as fast",
};

function lossKPerSecond(tempC: number): number {
  const radiated =
    STEFAN_BOLTZMANN * (kelvinFromCelsius(tempC) ** 4 - kelvinFromCelsius(ROOM_C) ** 4);
  return CONDUCTION_PER_SECOND * (tempC - ROOM_C) + RADIATION_M2_K_PER_J * radiated;
}
