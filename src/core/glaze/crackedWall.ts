import { cited } from "../sources/bibliography.ts";
import type { Body, Property } from "../ware/Ware.ts";
import { crackingLoad, releaseNumber, stressAtLoad } from "./channelCracking.ts";
import { leastSpacing, spacingLine } from "./crackSpacing.ts";
import {
  type Glazing,
  type LayerStress,
  type Layers,
  layerStress,
  mismatchAt,
  type ShrinkingPair,
} from "./laminate.ts";

/** A coat on a wall, and what the glaze bears. */
export interface CoatedWall {
  readonly layers: Layers;
  readonly glazing: Glazing;
  /** Of the glaze [MPa·√m]. */
  readonly toughnessMPaRootM: number;
}

/** Whether a coat can crack under a mismatch, and how closely. */
export interface CrackedWall {
  readonly stress: LayerStress;
  /** Stress from which a lone crack can run [MPa]. */
  readonly thresholdMPa: number;
  /** Stress in the glaze for a mismatch of 1 [MPa]. */
  readonly stressPerStrainMPa: number;
  /** Stress over the threshold; from 1 on cracks can run. */
  readonly overThreshold: number;
  /** Load of the coat: stress² × coat / toughness²; 0 when the glaze is squeezed. */
  readonly load: number;
}

/** A coat under a mismatch, by the energy that a lone crack sets free. */
export function crackedWall(wall: CoatedWall, mismatch: number): CrackedWall {
  const { layers, glazing, toughnessMPaRootM } = wall;
  const coat = { coatMm: layers.coatMm, toughnessMPaRootM };
  const perStrain = layerStress(layers, glazing, 1);
  const stress = layerStress(layers, glazing, mismatch);
  const { z } = releaseNumber(loneBacking(layers, glazing));
  const thresholdMPa = stressAtLoad(1 / z, coat);
  return {
    stress,
    thresholdMPa,
    stressPerStrainMPa: perStrain.glazeMPa,
    overThreshold: stress.glazeMPa / thresholdMPa,
    load: stress.glazeMPa > 0 ? crackingLoad(stress.glazeMPa, coat) : 0,
  };
}

/** What stands behind a lone crack: the wall, and the other coat where there is one. */
export function loneBacking(
  { glazeGPa, bodyGPa, coatMm, wallMm }: Layers,
  glazing: Glazing,
): { readonly stiffnessRatio: number; readonly wallOverCoat: number } {
  const behind = glazing === "both faces" ? wallMm + coatMm : wallMm;
  return { stiffnessRatio: bodyGPa / glazeGPa, wallOverCoat: behind / coatMm };
}

/** Spacing line of a wall; cracks on both faces, or in a closed wall, cannot bend it. */
export function spacingLineOf({ layers, glazing }: CoatedWall): ReturnType<typeof spacingLine> {
  const { bodyGPa, glazeGPa, wallMm, coatMm } = layers;
  return spacingLine(
    { stiffnessRatio: bodyGPa / glazeGPa, wallOverCoat: wallMm / coatMm },
    glazing === "one face, free to bend",
  );
}

/** Least spacing of cracks under a load [mm], and which end of the table was passed. */
export function leastSpacingMm(
  wall: CoatedWall,
  load: number,
): { readonly mm: number; readonly past: "fine" | "wide" | null } {
  const { value, past } = leastSpacing(spacingLineOf(wall), load);
  return { mm: value * wall.layers.coatMm, past };
}

/** Thickest coat looked at, as a share of the wall. */
const THICKEST_SHARE = 0.3;

/**
 * Least coat [mm] in which cracks can run on this wall under a mismatch, the wall's give counted.
 * Null when not even a coat of three tenths of the wall would crack.
 */
export function crazingCoatMm(wall: CoatedWall, mismatch: number): number | null {
  const over = (coatMm: number) =>
    crackedWall({ ...wall, layers: { ...wall.layers, coatMm } }, mismatch).overThreshold;
  let low = Math.log(1e-4);
  let high = Math.log(THICKEST_SHARE * wall.layers.wallMm);
  if (over(Math.exp(high)) < 1) return null;
  for (let step = 0; step < 24; step++) {
    const middle = (low + high) / 2;
    if (over(Math.exp(middle)) >= 1) high = middle;
    else low = middle;
  }
  return Math.exp(high);
}

/** What a coat must bear before it cracks. */
export interface CrackingCoat {
  /** Stress from which a crack can run in the coat [MPa]. */
  readonly thresholdMPa: number;
  /** Stress in the glaze for a mismatch of 1 [MPa]. */
  readonly stressPerStrainMPa: number;
}

/** Mismatch at which a coat can crack [length over length]. */
export function crackingMismatch({ thresholdMPa, stressPerStrainMPa }: CrackingCoat): number {
  return thresholdMPa / stressPerStrainMPa;
}

/**
 * Temperature of the first ping on cooling [°C]: where the mismatch first is enough, to a kelvin.
 * Null when the coat reaches the coolest temperature whole.
 */
export function firstPingC(pair: ShrinkingPair, needed: number, coolestC: number): number | null {
  for (let tempC = pair.setC; tempC > coolestC; tempC--)
    if (mismatchAt(pair, tempC) >= needed) return tempC;
  return mismatchAt(pair, coolestC) >= needed ? coolestC : null;
}

/** Span that long-term moisture expansion is taken for [years]; our own choice. */
export const LONG_TERM_YEARS = 10;

/**
 * Linear growth of fired bodies by moisture over the long term [length over length].
 * @see SOURCES["hall-wilson-hoff-2011"]
 */
const POROUS: Property = {
  value: 0.001,
  low: 0.0005,
  high: 0.002,
  source: `${cited("hall-wilson-hoff-2011")}; ${cited("four-porous-bodies")}`,
};
const SLIGHTLY_POROUS: Property = {
  value: 0.0002,
  low: 0.00005,
  high: 0.0005,
  source: "our own estimate",
};
const DENSE: Property = { value: 0, low: 0, high: 0.00005, source: cited("morgan-1941") };

/**
 * Growth of a body by moisture over ten years [length over length].
 * By water absorption [%]: under 0.5 dense, from 6 porous; where it is not known, by the kind in
 * the body's name: porcelain dense, earthenware porous, anything else between.
 */
export function moistureGrowth(body: Body, absorptionPercent: number | null): Property {
  if (absorptionPercent !== null) {
    if (!(absorptionPercent >= 0)) throw new RangeError(`moistureGrowth: ${absorptionPercent} %`);
    if (absorptionPercent < 0.5) return DENSE;
    return absorptionPercent < 6 ? SLIGHTLY_POROUS : POROUS;
  }
  const name = body.name.toLowerCase();
  if (/porcelain/.test(name)) return DENSE;
  return /earthenware|terracotta|red clay|majolica|raku/.test(name) ? POROUS : SLIGHTLY_POROUS;
}

/**
 * Years until moisture growth reaches a strain, when it grows with the fourth root of time.
 * @see SOURCES["wilson-2003"]
 */
export function yearsUntilGrowth(needed: number, longTermGrowth: number): number {
  return LONG_TERM_YEARS * (needed / longTermGrowth) ** 4;
}

/**
 * Toughness below which a crack in wet glass stands still, over toughness: 0.25 of 0.70 MPa·√m.
 * @see SOURCES["glass-slow-growth"]
 */
export const STANDSTILL: Property = {
  value: 0.25 / 0.7,
  low: 0.2 / 0.7,
  high: 0.35 / 0.7,
  source: cited("glass-slow-growth"),
};

/** Least coat that may still craze in time [mm], from the coat that crazes at once. */
export function delayedCoatMm(thresholdMm: number, standstill: number): number {
  return thresholdMm * standstill ** 2;
}
