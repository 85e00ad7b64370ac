import { type Oxide, type OxideAmounts, totalOf } from "./oxides.ts";
import type { Recipe, RecipeLine } from "./Recipe.ts";

/** What of a recipe stays after firing. */
export interface FiredRecipe {
  /** By weight, from the whole recipe [parts]. */
  readonly weights: OxideAmounts;
  /** Share of the weighed dry batch that fires away, 0 to 1. */
  readonly lossFraction: number;
}

/** The oxides of a recipe, base and additions together, and what it loses in the fire. */
export function firedRecipe(recipe: Recipe): FiredRecipe {
  const weights: Partial<Record<Oxide, number>> = {};
  let weighed = 0;
  let lost = 0;
  for (const line of [...recipe.base, ...recipe.additions]) {
    weighed += line.parts;
    if (!line.calcined) lost += line.parts * line.material.lossFraction;
    for (const [oxide, share] of Object.entries(line.material.oxides) as [Oxide, number][])
      weights[oxide] = (weights[oxide] ?? 0) + share * rawParts(line);
  }
  if (!(totalOf(weights) > 0)) throw new RangeError("firedRecipe: nothing stays after firing");
  return { weights, lossFraction: lost / weighed };
}

/** Parts of the raw material that a line stands for. */
function rawParts({ parts, calcined, material }: RecipeLine): number {
  return calcined ? parts / (1 - material.lossFraction) : parts;
}

/** Parts to weigh instead, of the other form: calcined for raw, raw for calcined. */
export function swappedParts(line: RecipeLine): number {
  return line.calcined ? rawParts(line) : line.parts * (1 - line.material.lossFraction);
}
