import { type CoolingConstants, climbShare, lossKPerSecond } from "./heatBalance.ts";
import type { LearnedKiln } from "./LearnedKiln.ts";

/** How fast a kiln heats with everything on, and falls with everything off. */
export interface AssumedKiln {
  /** Fastest heating at a temperature [°C/h, positive]. */
  readonly fullHeatingCPerHour: (tempC: number) => number;
  /** Fall by itself at a temperature, lid shut [°C/h, positive]. */
  readonly naturalCoolingCPerHour: (tempC: number) => number;
  /** Heat that the loaded kiln takes up [J/K]; absent while it is not known, and energy with it. */
  readonly heatCapacityJPerK?: number;
  /** The user's own kiln, when it was learned from logs: whole firings are predicted by it. */
  readonly learned?: LearnedKiln;
  /** What kiln that is and where its numbers come from; a clause to put in a sentence. */
  readonly basis: string;
}

/** Room that the reference kiln stands in [°C]. */
const ROOM_C = 25;

/** Conduction and radiation of the reference kiln. */
const COOLING: CoolingConstants = { conductionPerSecond: 3.7e-5, radiationM2KPerJ: 4.2e-8 };

/** Heat that the loaded reference kiln takes up [J/K]. */
const HEAT_CAPACITY_J_PER_K = 122_000;

/** Power over heat capacity [K/s]: 10.5 kW on 122 kJ/K. */
const POWER_K_PER_SECOND = 10_500 / HEAT_CAPACITY_J_PER_K;

/**
 * A loaded studio kiln to stand in while the user's own is unknown: 180 L, 75 mm of firebrick,
 * 10.5 kW, 40 kg of ware and 45 kg of furniture. Loss = conduction + radiation, as in
 * C·dT/dt = P − UA·(T − Ta) − σA(T⁴ − Ta⁴), each over C. The constants were fitted to a simulated
 * firing of that kiln and are simulated, not measured; studio logs differ by a factor of two.
 */
export const REFERENCE_KILN: AssumedKiln = {
  fullHeatingCPerHour: (tempC) =>
    3600 * climbShare(tempC) * (POWER_K_PER_SECOND - lossKPerSecond(COOLING, tempC, ROOM_C)),
  naturalCoolingCPerHour: (tempC) => 3600 * lossKPerSecond(COOLING, tempC, ROOM_C),
  heatCapacityJPerK: HEAT_CAPACITY_J_PER_K,
  basis:
    "a loaded 180 L kiln with 75 mm of firebrick and 10.5 kW, simulated, not measured; a light kiln falls up to twice as fast",
};
