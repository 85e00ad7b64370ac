import {
  airConductivity,
  CONVECTION_W_PER_M2K,
  capacityFactor,
  EMISSIVITY,
  fourthPowerK,
  GAP_EMISSIVITY,
  LAYER_SHARE,
  loadLagSeconds,
  STEFAN,
  thirdPowerK,
} from "./heatExchange.ts";
import type { StrainNumbers } from "./strainNumbers.ts";

/** Places through the wall and through the base at which the temperature is followed. */
export const DEEP = 5;

/**
 * Temperatures of a piece in one chain, as heat passes: wall from its outside to its inside, base
 * from its upper face to its underside, shelf [°C]. Then the lag of the piece's middle behind its
 * edge within the load [K], and what the base would come to if it hung free: the kiln's temperature
 * while that is shut [°C].
 */
export const WALL = 0;
export const BASE = WALL + DEEP;
export const SHELF = 2 * DEEP;
const CHAIN = SHELF + 1;
export const LOAD = CHAIN;
export const AROUND = LOAD + 1;

/** Number of temperatures in the state. */
export const STATE_SIZE = AROUND + 1;

/** What the piece exchanges heat with; written anew for every step. */
export interface Surroundings {
  airC: number;
  /** Fourth power of the temperature that it sees [K⁴]. */
  radiantK4: number;
  /** Heat carried by the air [W/m²K]. */
  airWPerM2K: number;
  /** Share of the surroundings that is seen upwards out of the piece, 0–1. */
  upShare: number;
}

/** A kiln that is shut; temperatures to be written. */
export function shutKiln(): Surroundings {
  return { airC: 0, radiantK4: 0, airWPerM2K: CONVECTION_W_PER_M2K, upShare: LAYER_SHARE };
}

/** Cells of the places: half at the faces. */
const CELL = Float64Array.of(0.125, 0.25, 0.25, 0.25, 0.125);

/** Rows of the step: what heats a place, per its own area, and what couples it to the next. */
const heat = new Float64Array(CHAIN);
const diagonal = new Float64Array(CHAIN);
const toNext = new Float64Array(CHAIN);
const toLast = new Float64Array(CHAIN);

/**
 * Moves all temperatures on by one step.
 * Implicit and linear in the change (backward Euler with one Newton step), so stable for any step
 * and exact in the lag under a steady ramp; radiation is exact in T⁴.
 */
export function advanceWare(
  state: Float64Array,
  numbers: StrainNumbers,
  by: { readonly around: Surroundings; seconds: number },
): void {
  const { around, seconds } = by;
  putCapacities(state, numbers, seconds);
  putConduction(state, numbers);
  putFaces(state, numbers, around);
  putGap(state, numbers);
  stepChain(state);
  const baseC = meanC(state, BASE);
  const perK = 4 * EMISSIVITY * STEFAN * thirdPowerK(baseC) + around.airWPerM2K;
  state[AROUND] = baseC + takesUp(around, baseC) / perK;
  const lag = loadLagSeconds(numbers.stackShare, state[WALL]!) / seconds;
  // What the edge moved by, the middle has yet to.
  state[LOAD] = ((state[LOAD]! - heat[WALL]!) * lag) / (lag + 1);
}

function putCapacities(state: Float64Array, numbers: StrainNumbers, seconds: number): void {
  for (let i = 0; i < CHAIN; i++) {
    const metres = i < BASE ? numbers.wallM : numbers.baseM;
    const held = i === SHELF ? numbers.shelfHeat : numbers.heatPerM3 * metres * CELL[i % DEEP]!;
    diagonal[i] = (held * capacityFactor(state[i]!)) / seconds;
    heat[i] = 0;
    toNext[i] = 0;
    toLast[i] = 0;
  }
}

function putConduction(state: Float64Array, numbers: StrainNumbers): void {
  for (let i = 0; i < SHELF; i++) {
    if (i % DEEP === DEEP - 1) continue;
    const metres = i < BASE ? numbers.wallM : numbers.baseM;
    couple(i, (numbers.conductivity * (DEEP - 1)) / metres, state[i + 1]! - state[i]!, 1);
  }
}

/** Lets heat pass from a place to the next; `wider` is the next one's area over this one's. */
function couple(i: number, perK: number, differenceK: number, wider: number): void {
  heat[i]! += perK * differenceK;
  diagonal[i]! += perK;
  toNext[i] = perK;
  heat[i + 1]! -= (perK * differenceK) / wider;
  diagonal[i + 1]! += perK / wider;
  toLast[i + 1] = perK / wider;
}

/** What the faces take up from the kiln, and inside a pot from each other. */
function putFaces(state: Float64Array, numbers: StrainNumbers, around: Surroundings): void {
  const up = around.upShare;
  face(state, WALL, 1, around);
  face(state, BASE - 1, numbers.wallSeesOut * up, around);
  face(state, BASE, numbers.baseSeesOut * up, around);
  face(state, SHELF, LAYER_SHARE, around);
  if (numbers.onEdge) face(state, SHELF - 1, up, around);
  if (numbers.baseOverWall > 0) {
    const wallC = state[BASE - 1]!;
    const baseC = state[BASE]!;
    const seen = EMISSIVITY * STEFAN * (1 - numbers.baseSeesOut) * numbers.baseOverWall;
    const middleC = (wallC + baseC) / 2;
    const perK = 4 * seen * thirdPowerK(middleC);
    const flow = seen * (fourthPowerK(baseC) - fourthPowerK(wallC));
    couple(BASE - 1, perK, flow / perK, numbers.baseOverWall);
  }
}

function face(state: Float64Array, i: number, share: number, around: Surroundings): void {
  const faceC = state[i]!;
  heat[i]! += share * takesUp(around, faceC);
  diagonal[i]! += share * (4 * EMISSIVITY * STEFAN * thirdPowerK(faceC) + around.airWPerM2K);
}

/** Heat that a face takes up, seen whole [W/m²]. */
function takesUp(around: Surroundings, faceC: number): number {
  return (
    EMISSIVITY * STEFAN * (around.radiantK4 - fourthPowerK(faceC)) +
    around.airWPerM2K * (around.airC - faceC)
  );
}

/** Across the foot gap: radiation between two grey faces, and still air. */
function putGap(state: Float64Array, numbers: StrainNumbers): void {
  if (numbers.onEdge) return;
  const baseC = state[SHELF - 1]!;
  const shelfC = state[SHELF]!;
  const middleC = (baseC + shelfC) / 2;
  const perK = gapWPerM2K(numbers, middleC);
  const radiated = GAP_EMISSIVITY * STEFAN * (fourthPowerK(shelfC) - fourthPowerK(baseC));
  const flow = radiated + (airConductivity(middleC) / numbers.footGapM) * (shelfC - baseC);
  couple(SHELF - 1, perK, flow / perK, 1);
}

/** Heat that passes the foot gap [W/m²K]. */
export function gapWPerM2K(numbers: StrainNumbers, tempC: number): number {
  return (
    4 * GAP_EMISSIVITY * STEFAN * thirdPowerK(tempC) + airConductivity(tempC) / numbers.footGapM
  );
}

/** Solves the chain for the change of every temperature, and adds it; the changes are left in `heat`. */
function stepChain(state: Float64Array): void {
  for (let i = 1; i < CHAIN; i++) {
    const times = toLast[i]! / diagonal[i - 1]!;
    diagonal[i]! -= times * toNext[i - 1]!;
    heat[i]! += times * heat[i - 1]!;
  }
  for (let i = CHAIN - 1; i >= 0; i--) {
    const next = i === CHAIN - 1 ? 0 : toNext[i]! * heat[i + 1]!;
    heat[i] = (heat[i]! + next) / diagonal[i]!;
    state[i]! += heat[i]!;
  }
}

/** Mean through the wall, or through the base [°C]. */
export function meanC(state: Float64Array, part: number): number {
  let sum = 0;
  for (let i = 0; i < DEEP; i++) sum += CELL[i]! * state[part + i]!;
  return sum;
}
