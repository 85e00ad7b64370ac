import { strainIn } from "../ware/bodyExpansion.ts";

/** A glaze that shrinks evenly on a body that shrinks by its own curve. */
export interface ShrinkingPair {
  /** Mean linear expansion of the glaze [1/K]. */
  readonly glazePerK: number;
  /** Free strain of the body, as `fillStrainTable` writes it. */
  readonly body: Float64Array;
  /** Where the glaze begins to carry stress [°C]. */
  readonly setC: number;
}

/**
 * How much more than its body a glaze would have shrunk from the set point down [length over length].
 * Positive pulls the glaze (crackle), negative squeezes it. The steps of quartz and cristobalite
 * below the set point are in it, since the body's real curve is.
 */
export function mismatchAt({ glazePerK, body, setC }: ShrinkingPair, tempC: number): number {
  return glazePerK * (setC - tempC) - (strainIn(body, setC) - strainIn(body, tempC));
}

/** Expansion that a glaze must have to make a mismatch at a temperature [1/K]. */
export function expansionForMismatch(
  pair: Omit<ShrinkingPair, "glazePerK">,
  mismatch: number,
  tempC: number,
): number {
  const { body, setC } = pair;
  return (mismatch + strainIn(body, setC) - strainIn(body, tempC)) / (setC - tempC);
}

/**
 * The most that a glaze is pulled on its way down, and where.
 * It may lie over the room's temperature: cristobalite squeezes a glaze at 200 to 250 °C that was
 * pulled before. 0 at the set point when it is never pulled. To a kelvin.
 */
export function greatestMismatch(
  pair: ShrinkingPair,
  coolestC: number,
): { readonly mismatch: number; readonly tempC: number } {
  let greatest = { mismatch: 0, tempC: pair.setC };
  const see = (tempC: number) => {
    const mismatch = mismatchAt(pair, tempC);
    if (mismatch > greatest.mismatch) greatest = { mismatch, tempC };
  };
  for (let tempC = pair.setC; tempC > coolestC; tempC--) see(tempC);
  see(coolestC);
  return greatest;
}
