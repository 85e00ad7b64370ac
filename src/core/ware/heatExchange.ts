import { ZERO_CELSIUS_K } from "../units/temperature.ts";

/** Stefan–Boltzmann constant [W/m²K⁴]. */
export const STEFAN = 5.670374e-8;

/** Emissivity of fired clay and shelves between 600 and 1200 °C; 0.7 to 0.92, from memory. */
export const EMISSIVITY = 0.85;

/** Heat carried by the air in a closed kiln [W/m²K]; our own estimate. */
export const CONVECTION_W_PER_M2K = 5;

/**
 * Share of the kiln that is seen across a layer, by the underside of a shelf and by what looks up
 * at it: the rest is the neighbouring layer, as hot as itself; our own estimate.
 */
export const LAYER_SHARE = 0.7;

/** Two grey faces looking at each other across the foot gap. */
export const GAP_EMISSIVITY = 1 / (2 / EMISSIVITY - 1);

/** Conductivity of still air [W/mK] as a straight line in kelvin, within 7 % from 27 to 1200 °C; from memory. */
const AIR_CONDUCTIVITY = 0.0107;
const AIR_CONDUCTIVITY_PER_K = 5.78e-5;

/** Cordierite: density [kg/m³] from a sheet of kiln furniture, heat capacity at 573 °C [J/kgK] from memory. */
export const SHELF_DENSITY = 2000;
export const SHELF_HEAT_CAPACITY = 1050;

/** Heat that the load holds at 573 °C, shelves and all [J/m³K]; our own estimate. */
const LOAD_HEAT_J_PER_M3K = 0.39e6;

/** Heat capacity of fired clay at 226 °C over that at 573 °C; from memory. */
const CAPACITY_AT_226C = 0.88;

/**
 * Heat capacity at a temperature over that at 573 °C: a straight line, level above 1000 °C.
 */
export function capacityFactor(tempC: number): number {
  const upTo = Math.min(tempC, 1000);
  return 1 + ((1 - CAPACITY_AT_226C) / 347) * (upTo - 573);
}

/** Radiation between faces nearly alike in temperature [W/m²K], 4 ε σ T³. */
export function radiationWPerM2K(tempC: number): number {
  return 4 * EMISSIVITY * STEFAN * thirdPowerK(tempC);
}

/** Conductivity of air at a temperature [W/mK]. */
export function airConductivity(tempC: number): number {
  return AIR_CONDUCTIVITY + AIR_CONDUCTIVITY_PER_K * (tempC + ZERO_CELSIUS_K);
}

/**
 * Time by which the middle of a piece lags its edge under a steady ramp, because the load around it
 * does [s].
 *
 * @param share Of the piece in its stack of shelves.
 */
export function loadLagSeconds(share: number, tempC: number): number {
  const layer = (LOAD_HEAT_J_PER_M3K * SHELF_SPACING_MM) / 1000;
  return (share * layer * capacityFactor(tempC)) / (2 * 4 * STEFAN * thirdPowerK(tempC));
}

/** Fourth power of a temperature on the kelvin scale [K⁴], multiplied out: powers are slow. */
export function fourthPowerK(tempC: number): number {
  const tempK = tempC + ZERO_CELSIUS_K;
  return tempK * tempK * (tempK * tempK);
}

/** Third power of a temperature on the kelvin scale [K³]. */
export function thirdPowerK(tempC: number): number {
  const tempK = tempC + ZERO_CELSIUS_K;
  return tempK * tempK * tempK;
}

/** Places between the middle and the edge of a shelf at which its lag is worked out. */
const RINGS = 24;

/** Gap between stacked shelves [mm]; our own estimate. */
const SHELF_SPACING_MM = 100;

/** Radius of the shelves of a studio kiln, or of their half where they are halved [mm]; our own estimate. */
const SHELF_RADIUS_MM = 230;

/**
 * How far the middle of a piece lags behind its edge because it stands in a stack of shelves, as
 * a share of the lag that a shelf would have if it saw nothing but the kiln.
 * Discs of one size and one temperature profile above each other, each gap closed at its mouth by
 * the kiln's temperature: a layer loses as much as it sees of what is cooler, by the exact view
 * factors from an element to a disc. All of a layer gives off the same heat, so the difference is
 * that of black discs, whatever their emissivity. Solved by rings; within 1 % of twice as many.
 * A piece sees only its own part of the profile, and a stack is at least as wide as the piece.
 */
export function stackShare(pieceRadiusMm: number, shelfRadiusMm: number = SHELF_RADIUS_MM): number {
  const radius = Math.max(pieceRadiusMm, shelfRadiusMm) / SHELF_SPACING_MM;
  const profile = stackProfile(radius);
  const at = (pieceRadiusMm / SHELF_SPACING_MM / radius) * (RINGS - 0.5);
  // Within the innermost ring the profile is a parabola.
  if (at < 1) return (profile[0]! - profile[1]!) * at * at;
  const ring = Math.min(RINGS - 2, Math.floor(at));
  return profile[0]! - profile[ring]! - (profile[ring + 1]! - profile[ring]!) * (at - ring);
}

const known = new Map<number, Float64Array>();

/**
 * Lag from the middle to the edge of a shelf in a stack, over that of a shelf which sees the kiln
 * alone with both its faces.
 *
 * @param radius Of the shelves, over the gap between them.
 */
export function stackProfile(radius: number): Float64Array {
  const found = known.get(radius);
  if (found !== undefined) return found;
  const width = radius / (RINGS - 0.5);
  const edge = (ring: number) => (ring + 0.5) * width;
  const rows = Array.from({ length: RINGS }, (_, ring) => {
    const row = new Float64Array(RINGS + 1);
    for (let other = 0; other < RINGS; other++)
      row[other] =
        (other === ring ? 1 : 0) -
        (discSeen(ring * width, edge(other)) -
          (other === 0 ? 0 : discSeen(ring * width, edge(other - 1))));
    row[RINGS] = 1;
    return row;
  });
  const profile = solved(rows);
  if (known.size > 50) known.clear();
  known.set(radius, profile);
  return profile;
}

/** Share of what an element sees that is a parallel disc at distance 1, its axis `off` away. */
function discSeen(off: number, discRadius: number): number {
  const sum = 1 + off * off + discRadius * discRadius;
  const under = sum * sum - 4 * off * off * discRadius * discRadius;
  return (1 - (1 + off * off - discRadius * discRadius) / Math.sqrt(under)) / 2;
}

/** Solution of linear equations, each with its right side last; the diagonal is the largest. */
function solved(rows: readonly Float64Array[]): Float64Array {
  const count = rows.length;
  for (let i = 0; i < count; i++)
    for (let k = i + 1; k < count; k++) {
      const times = rows[k]![i]! / rows[i]![i]!;
      for (let j = i; j <= count; j++) rows[k]![j]! -= times * rows[i]![j]!;
    }
  const result = new Float64Array(count);
  for (let i = count - 1; i >= 0; i--) {
    let sum = rows[i]![count]!;
    for (let j = i + 1; j < count; j++) sum -= rows[i]![j]! * result[j]!;
    result[i] = sum / rows[i]![i]!;
  }
  return result;
}
