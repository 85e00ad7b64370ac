/** A coat of glaze on a surface. */
interface Coat {
  /** Share of the dry mass that fires away, 0 to 1. */
  readonly lossFraction: number;
  /** Of the fired glaze [g/cm³]. */
  readonly firedGPerCm3: number;
}

/**
 * Thickness of the fired glaze [mm] from the dry mass on a surface: m (1 − LOI) / (A ρ).
 * Bubbles make it thicker, what soaks into the body or runs off makes it thinner.
 *
 * @param dryGPerCm2 Dry glaze on the surface [g/cm²].
 */
export function firedCoatMm(dryGPerCm2: number, { lossFraction, firedGPerCm3 }: Coat): number {
  return (10 * dryGPerCm2 * (1 - lossFraction)) / firedGPerCm3;
}

/** Dry glaze [g/cm²] for a fired coat [mm]. */
export function dryCoatGPerCm2(coatMm: number, { lossFraction, firedGPerCm3 }: Coat): number {
  return (coatMm * firedGPerCm3) / (10 * (1 - lossFraction));
}
