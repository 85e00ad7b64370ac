import { strainIn } from "./bodyExpansion.ts";
import {
  airConductivity,
  CONVECTION_W_PER_M2K,
  capacityFactor,
  EMISSIVITY,
  fourthPowerK,
  GAP_EMISSIVITY,
  loadLagSeconds,
  STEFAN,
  thirdPowerK,
  UNDERSIDE_SHARE,
} from "./heatExchange.ts";
import type { StrainNumbers } from "./strainNumbers.ts";

/** Where each temperature [°C] stands in the state of a piece. */
export const WALL = 0;
export const BASE = 1;
export const SHELF = 2;
/** Middle of the load over the width of the piece, measured against its wall. */
const CENTRE = 3;
/** Middle of the wall, and the face of the base that looks at the shelf. */
const WALL_CORE = 4;
const BASE_CORE = 5;

/** Number of temperatures in the state. */
export const STATE_SIZE = 6;

/** What the piece exchanges heat with; written anew for every step. */
export interface Surroundings {
  airC: number;
  /** Fourth power of the temperature that it sees [K⁴]. */
  radiantK4: number;
  /** How much the inside of the pot takes part, 0–1. */
  insideShare: number;
}

/**
 * Moves the six temperatures on by one step.
 * Implicit and linear in the change (backward Euler with one Newton step), so stable for any
 * step and exact in the lag under a steady ramp; radiation is exact in T⁴.
 */
export function advanceWare(
  state: Float64Array,
  numbers: StrainNumbers,
  by: { readonly around: Surroundings; seconds: number },
): void {
  const { around, seconds } = by;
  const wallC = state[WALL] as number;
  const baseC = state[BASE] as number;
  const shelfC = state[SHELF] as number;

  const outside = 1 + around.insideShare;
  const newWallC =
    wallC +
    (outside * gain(around, wallC)) /
      ((numbers.wallHeat * capacityFactor(wallC)) / seconds + outside * gainPerK(wallC));

  const air = airConductivity((baseC + shelfC) / 2) / numbers.footGapM;
  const across =
    GAP_EMISSIVITY * STEFAN * (fourthPowerK(baseC) - fourthPowerK(shelfC)) + air * (baseC - shelfC);
  const acrossPerBaseK = 4 * GAP_EMISSIVITY * STEFAN * thirdPowerK(baseC) + air;
  const acrossPerShelfK = 4 * GAP_EMISSIVITY * STEFAN * thirdPowerK(shelfC) + air;
  const baseRow =
    (numbers.baseHeat * capacityFactor(baseC)) / seconds +
    around.insideShare * gainPerK(baseC) +
    acrossPerBaseK;
  const shelfRow =
    (numbers.shelfHeat * capacityFactor(shelfC)) / seconds +
    UNDERSIDE_SHARE * gainPerK(shelfC) +
    acrossPerShelfK;
  const toBase = around.insideShare * gain(around, baseC) - across;
  const toShelf = UNDERSIDE_SHARE * gain(around, shelfC) + across;
  const determinant = baseRow * shelfRow - acrossPerBaseK * acrossPerShelfK;
  const newBaseC = baseC + (toBase * shelfRow + acrossPerShelfK * toShelf) / determinant;
  const newShelfC = shelfC + (toShelf * baseRow + acrossPerBaseK * toBase) / determinant;

  state[WALL] = newWallC;
  state[BASE] = newBaseC;
  state[SHELF] = newShelfC;
  follow(state, CENTRE, newWallC, loadLagSeconds(numbers.footprintRadiusM, newWallC) / seconds);
  const wallLag = numbers.wallCoreSeconds * capacityFactor(newWallC);
  follow(state, WALL_CORE, newWallC, wallLag / seconds);
  const baseLag = numbers.baseCoreSeconds * capacityFactor(newBaseC);
  follow(state, BASE_CORE, newBaseC, baseLag / seconds);
}

/** Temperature of the base in the middle of the load: hotter than at the edge while cooling [°C]. */
export function baseWithLoadC(state: Float64Array): number {
  return (state[BASE] as number) + (state[CENTRE] as number) - (state[WALL] as number);
}

/**
 * Stress over strength of a piece in this state: what wall and base, at `baseC`, do to each other,
 * and on top of it the larger tension through either.
 */
export function strainRatio(state: Float64Array, numbers: StrainNumbers, baseC: number): number {
  const wallC = state[WALL] as number;
  const surfaceC = state[BASE] as number;
  const across = Math.abs(strainIn(numbers.strain, baseC) - strainIn(numbers.strain, wallC));
  const through = Math.max(
    tensileStrain(numbers.strain, wallC, (state[WALL_CORE] as number) - wallC),
    tensileStrain(numbers.strain, surfaceC, (state[BASE_CORE] as number) - surfaceC),
  );
  return across * numbers.acrossPerStrain + through * numbers.throughPerStrain;
}

/**
 * Largest tensile strain through a wall whose temperature runs as a parabola from its surface to
 * its middle: mean free strain (Gauss's rule of five places) less that of the coldest. Two thirds of the difference on
 * cooling and one third on heating, where the body expands evenly.
 *
 * @param excessK Middle less surface [K].
 */
export function tensileStrain(strain: Float64Array, surfaceC: number, excessK: number): number {
  const mean =
    0.118463442528 * strainIn(strain, surfaceC + excessK * 0.997799444673) +
    0.23931433525 * strainIn(strain, surfaceC + excessK * 0.946747355571) +
    0.284444444444 * strainIn(strain, surfaceC + excessK * 0.75) +
    0.23931433525 * strainIn(strain, surfaceC + excessK * 0.408278045466) +
    0.118463442528 * strainIn(strain, surfaceC + excessK * 0.091619598734);
  const coldest = Math.min(strainIn(strain, surfaceC), strainIn(strain, surfaceC + excessK));
  return Math.max(0, mean - coldest);
}

/** Heat that a face takes up, seen whole [W/m²]. */
function gain(around: Surroundings, faceC: number): number {
  return (
    EMISSIVITY * STEFAN * (around.radiantK4 - fourthPowerK(faceC)) +
    CONVECTION_W_PER_M2K * (around.airC - faceC)
  );
}

function gainPerK(faceC: number): number {
  return 4 * EMISSIVITY * STEFAN * thirdPowerK(faceC) + CONVECTION_W_PER_M2K;
}

/** Lets one temperature run after another; `lag` in steps. */
function follow(state: Float64Array, index: number, leaderC: number, lag: number): void {
  const own = state[index] as number;
  state[index] = own + (leaderC - own) / (lag + 1);
}
