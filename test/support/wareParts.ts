import type { Curve } from "../../src/core/curve/Curve.ts";
import { fillStrainTable, newStrainTable } from "../../src/core/ware/bodyExpansion.ts";
import {
  CONVECTION_W_PER_M2K,
  capacityFactor,
  EMISSIVITY,
  fourthPowerK,
  INSIDE_SHARE,
  radiationWPerM2K,
} from "../../src/core/ware/heatExchange.ts";
import { strainRunner } from "../../src/core/ware/integrateStrain.ts";
import { type StrainNumbers, wareNumbers } from "../../src/core/ware/strainNumbers.ts";
import { strainSteps } from "../../src/core/ware/strainSteps.ts";
import { advanceWare, STATE_SIZE } from "../../src/core/ware/wareState.ts";
import { sampleWare } from "../core/ware/sampleWare.ts";

/** 0 °C [K]. */
export const ZERO_K = 273.15;

/** How far a number is from the one expected, as a share of it. */
export const off = (found: number, expected: number) => Math.abs(found / expected - 1);

/** Faces of a wall that exchange heat, counted whole: its outside, and its inside by its share. */
export const FACES = 1 + INSIDE_SHARE;

/** A face of ware as the core has it. */
export const CORE_FACE = { emissivity: EMISSIVITY, airWPerM2K: CONVECTION_W_PER_M2K };

/** Heat taken up by such a face near one temperature [W/m²K]. */
export const faceWPerM2K = (tempC: number) => radiationWPerM2K(tempC) + CONVECTION_W_PER_M2K;

/** A stoneware mug of 6 mm with some of its numbers replaced. */
export const numbersWith = (over: Partial<StrainNumbers>): StrainNumbers => ({
  ...wareNumbers(sampleWare("stoneware", 6)),
  ...over,
});

/** Heat of a wall that comes to the kiln's temperature with one time constant near `tempC`. */
export const wallHeatFor = (seconds: number, tempC: number) =>
  (seconds * FACES * faceWPerM2K(tempC)) / capacityFactor(tempC);

/** A wall that has no heat of its own, over which the ratio is the lag of its middle [K]. */
export function middleOnly(wallCoreSeconds: number): StrainNumbers {
  const strain = newStrainTable();
  fillStrainTable(strain, { quartz: 0, cristobalite: 0, matrixPerK: 1e-6 });
  // On cooling the surface of an even body carries 2/3 of the difference.
  return numbersWith({
    wallHeat: 1e-9,
    wallCoreSeconds,
    baseCoreSeconds: 0,
    acrossPerStrain: 0,
    throughPerStrain: 1.5e6,
    strain,
  });
}

/** The state after a steady fall from rest, in equal steps. */
export function fallen(
  numbers: StrainNumbers,
  fall: {
    readonly fromC: number;
    readonly rateCPerHour: number;
    readonly seconds: number;
    readonly steps: number;
  },
): Float64Array {
  const state = new Float64Array(STATE_SIZE).fill(fall.fromC);
  const seconds = fall.seconds / fall.steps;
  for (let step = 1; step <= fall.steps; step++) {
    const airC = fall.fromC - (fall.rateCPerHour / 3600) * seconds * step;
    const around = { airC, radiantK4: fourthPowerK(airC), insideShare: INSIDE_SHARE };
    advanceWare(state, numbers, { around, seconds });
  }
  return state;
}

/** A Curve taken by the core in the steps that it chooses itself. */
export function traced(numbers: StrainNumbers, curve: Curve) {
  const steps = strainSteps(curve);
  const empty = () => new Float64Array(steps.timesSeconds.length);
  const trace = { ratio: empty(), wallC: empty(), baseC: empty(), shelfC: empty() };
  strainRunner(steps, curve.timesSeconds[0] as number).run(numbers, trace);
  return { ...trace, ...steps };
}
