import { mismatchAt, type ShrinkingPair } from "./mismatch.ts";

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
