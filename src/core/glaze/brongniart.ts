/** A slip: how heavy it is, and how heavy the solid in it. */
export interface Slip {
  /** Mass of a millilitre of slip [g/cm³]: above 1, below the solid's. */
  readonly slipGPerCm3: number;
  /** Density of the dry solid [g/cm³]. */
  readonly solidGPerCm3: number;
}

/** Density of water [g/cm³]. */
const WATER = 1;

/**
 * Dry content of a slip [g/L], by Brongniart's formula: (D − 1000) · G / (G − 1).
 *
 * @see SOURCES["brongniart-1854"]
 */
export function dryGPerLitre({ slipGPerCm3, solidGPerCm3 }: Slip): number {
  return (1000 * (slipGPerCm3 - WATER) * solidGPerCm3) / (solidGPerCm3 - WATER);
}

/** Water in a slip [g/L]: what the dry content leaves of its mass. */
export function waterGPerLitre(slip: Slip): number {
  return 1000 * slip.slipGPerCm3 - dryGPerLitre(slip);
}

/** Water for a dry mass to make a slip of this density [g]. */
export function waterForDryG(dryG: number, { slipGPerCm3, solidGPerCm3 }: Slip): number {
  return (dryG * (1 - slipGPerCm3 / solidGPerCm3)) / (slipGPerCm3 - WATER);
}
