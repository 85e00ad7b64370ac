import { cited } from "../sources/bibliography.ts";
import { strainIn } from "../ware/bodyExpansion.ts";
import type { Body, Property } from "../ware/Ware.ts";

/** How a wall is glazed, and whether it can bend. */
export type Glazing = "both faces" | "one face, wall held" | "one face, free to bend";

/** A coat on a wall, elastic. */
export interface Layers {
  readonly glazeGPa: number;
  readonly glazePoisson: number;
  readonly bodyGPa: number;
  readonly bodyPoisson: number;
  /** Fired coat on a face [mm]. */
  readonly coatMm: number;
  /** Wall without glaze [mm]. */
  readonly wallMm: number;
}

/** Stress in a glazed wall away from its edges; pull is positive, squeeze negative. */
export interface LayerStress {
  /** Mean over the coat. */
  readonly glazeMPa: number;
  /** In the body right under the glaze. */
  readonly underGlazeMPa: number;
  /** In the body at its bare face; null when no face is bare. */
  readonly bareFaceMPa: number | null;
  /** Positive when the glazed face is hollow [1/m]; 0 where the wall cannot bend. */
  readonly curvaturePerM: number;
}

/**
 * Stress that a mismatch makes, equal in both directions of the wall.
 * Forces in the wall sum to 0; a wall that is free to bend also has no moment left. Exact for a flat
 * elastic wall away from its edges; a closed wall (ring, mug below the rim) is one that is held.
 *
 * @param mismatch How much more than the body the glaze would have shrunk, length over length.
 * @throws RangeError when a thickness or stiffness is not above 0.
 */
export function layerStress(layers: Layers, glazing: Glazing, mismatch: number): LayerStress {
  const { coatMm: coat, wallMm: wall } = layers;
  const glaze = (1000 * layers.glazeGPa) / (1 - layers.glazePoisson);
  const body = (1000 * layers.bodyGPa) / (1 - layers.bodyPoisson);
  for (const size of [coat, wall, glaze, body])
    if (!(size > 0 && Number.isFinite(size))) throw new RangeError(`layerStress: ${size}`);
  if (glazing === "one face, free to bend")
    return freeStress({ glaze, body, coat, wall }, mismatch);
  const coats = glazing === "both faces" ? 2 : 1;
  const glazeMPa = (glaze * mismatch) / (1 + (coats * glaze * coat) / (body * wall));
  const bodyMPa = (-coats * glazeMPa * coat) / wall;
  return {
    glazeMPa,
    underGlazeMPa: bodyMPa,
    bareFaceMPa: coats === 2 ? null : bodyMPa,
    curvaturePerM: 0,
  };
}

/** Stiffness in two directions at once [MPa] and thickness [mm] of both. */
interface Plies {
  readonly glaze: number;
  readonly body: number;
  readonly coat: number;
  readonly wall: number;
}

/** Middle strain `m` and bend `k` of the body from no force and no moment: two equations. */
function freeStress({ glaze, body, coat, wall }: Plies, mismatch: number): LayerStress {
  const area = coat;
  const lever = (coat * (wall + coat)) / 2;
  const inertia = ((wall / 2 + coat) ** 3 - (wall / 2) ** 3) / 3;
  const a11 = body * wall + glaze * area;
  const a12 = glaze * lever;
  const a22 = (body * wall ** 3) / 12 + glaze * inertia;
  const force = -glaze * area * mismatch;
  const moment = -glaze * lever * mismatch;
  const determinant = a11 * a22 - a12 * a12;
  const m = (force * a22 - moment * a12) / determinant;
  const k = (moment * a11 - force * a12) / determinant;
  return {
    glazeMPa: glaze * (m + mismatch + (k * (wall + coat)) / 2),
    underGlazeMPa: body * (m + (k * wall) / 2),
    bareFaceMPa: body * (m - (k * wall) / 2),
    curvaturePerM: -1000 * k,
  };
}

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

const MEMORY = cited("ceramics-toughness");

/** Poisson's ratio of a fired body: the 0.20 that the crack tables were made with. */
export const BODY_POISSON: Property = { value: 0.2, low: 0.16, high: 0.25, source: MEMORY };

/** Words in a body's name, and its resistance against a running crack [MPa·√m]. */
const TOUGHNESS: readonly (readonly [words: RegExp, toughness: Property])[] = [
  [/earthenware|terracotta|red clay|majolica|raku/, toughness(0.6, 0.4, 0.9)],
  [/porcelain/, toughness(1.2, 1.0, 1.4)],
  [/cristobalit/, toughness(1.0, 0.7, 1.4, "our own estimate")],
  [/stoneware/, toughness(1.1, 0.9, 1.4)],
];

const UNKNOWN = toughness(0.9, 0.5, 1.4, "our own estimate");

/**
 * Resistance of a body against a running crack [MPa·√m], by the kind that its name says.
 * From memory and wide; a name that says no kind gets the range of all of them.
 */
export function toughnessOf(body: Body): Property {
  const name = body.name.toLowerCase();
  return TOUGHNESS.find(([words]) => words.test(name))?.[1] ?? UNKNOWN;
}

function toughness(value: number, low: number, high: number, source = MEMORY): Property {
  return { value, low, high, source };
}
