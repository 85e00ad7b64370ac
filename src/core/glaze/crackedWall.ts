import { crackingLoad, releaseNumber, stressAtLoad } from "./channelCracking.ts";
import { leastSpacing, spacingLine } from "./crackSpacing.ts";
import { type Glazing, type LayerStress, type Layers, layerStress } from "./laminate.ts";

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
