import type { Curve } from "../../src/core/curve/Curve.ts";
import {
  CONVECTION_W_PER_M2K,
  capacityFactor,
  EMISSIVITY,
  fourthPowerK,
  radiationWPerM2K,
} from "../../src/core/ware/heatExchange.ts";
import { type StrainNumbers, wareNumbers } from "../../src/core/ware/strainNumbers.ts";
import { strainRunner } from "../../src/core/ware/strainRunner.ts";
import { advanceWare, STATE_SIZE, type Surroundings } from "../../src/core/ware/wareState.ts";
import { strainSteps } from "../../src/core/ware/wareStrain.ts";
import { sampleWare } from "../core/ware/sampleWare.ts";

/** 0 °C [K]. */
export const ZERO_K = 273.15;

/** How far a number is from the one expected, as a share of it. */
export const off = (found: number, expected: number) => Math.abs(found / expected - 1);

/** A face of ware as the core has it. */
export const CORE_FACE = { emissivity: EMISSIVITY, airWPerM2K: CONVECTION_W_PER_M2K };

/** Heat taken up by such a face near one temperature [W/m²K]. */
export const faceWPerM2K = (tempC: number) => radiationWPerM2K(tempC) + CONVECTION_W_PER_M2K;

/** Surroundings of one temperature, seen whole from below too. */
export const aroundAt = (tempC: number, over: Partial<Surroundings> = {}): Surroundings => ({
  airC: tempC,
  radiantK4: fourthPowerK(tempC),
  airWPerM2K: CONVECTION_W_PER_M2K,
  upShare: 1,
  ...over,
});

/** A wall that gives up heat by its outside alone and is of one temperature throughout. */
export function lumpedWall(heatJPerM2K: number): StrainNumbers {
  return {
    ...wareNumbers(sampleWare("stoneware", 6)),
    wallM: 0.001,
    heatPerM3: heatJPerM2K * 1000,
    conductivity: 1e6,
    wallSeesOut: 0,
    baseOverWall: 0,
  };
}

/** A wall with both faces open, and nothing beside it. */
export function openWall(of: {
  readonly wallM: number;
  readonly conductivity: number;
  readonly heatPerM3: number;
}): StrainNumbers {
  return { ...lumpedWall(1), ...of, wallSeesOut: 1 };
}

/** Heat of a wall that comes to the kiln's temperature with one time constant near `tempC`. */
export const wallHeatFor = (seconds: number, tempC: number) =>
  (seconds * faceWPerM2K(tempC)) / capacityFactor(tempC);

/** The state after a steady fall from rest, in equal steps. */
export function fallen(
  numbers: StrainNumbers,
  fall: {
    readonly fromC: number;
    readonly rateCPerHour: number;
    readonly seconds: number;
    readonly steps: number;
    readonly around?: Partial<Surroundings>;
  },
): Float64Array {
  const state = new Float64Array(STATE_SIZE).fill(fall.fromC);
  const seconds = fall.seconds / fall.steps;
  for (let step = 1; step <= fall.steps; step++) {
    const tempC = fall.fromC - (fall.rateCPerHour / 3600) * seconds * step;
    advanceWare(state, numbers, { around: aroundAt(tempC, fall.around), seconds });
  }
  return state;
}

/** A Curve taken by the core in the steps that it chooses itself. */
export function traced(numbers: StrainNumbers, curve: Curve) {
  const steps = strainSteps(curve);
  const runner = strainRunner(steps, curve.timesSeconds[0] as number);
  runner.run(numbers);
  return { ...runner.trace(numbers), ...steps };
}
