import type { Recipe } from "./Recipe.ts";

/** Taken for a material whose density is not known [g/cm³]: feldspar, clays and most glazes. */
const USUAL = 2.6;

/**
 * Density of the dry solids of a recipe [g/cm³]: their mass over the sum of their volumes.
 *
 * @see SOURCES["batch-practice"], SOURCES["powder-densities"]
 */
export function solidsDensity(recipe: Recipe): {
  readonly gPerCm3: number;
  /** Materials whose density is not known, for which 2.6 was taken. */
  readonly unknown: readonly string[];
} {
  const lines = [...recipe.base, ...recipe.additions];
  const mass = lines.reduce((sum, { parts }) => sum + parts, 0);
  const volume = lines.reduce(
    (sum, { parts, material }) => sum + parts / (material.densityGPerCm3 ?? USUAL),
    0,
  );
  return {
    gPerCm3: mass / volume,
    unknown: lines
      .filter(({ material }) => material.densityGPerCm3 === null)
      .map(({ name }) => name),
  };
}
