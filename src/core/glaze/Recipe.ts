import type { Material } from "./Material.ts";

/** A line of a recipe. */
export interface RecipeLine {
  /** As the file writes it. */
  readonly name: string;
  readonly material: Material;
  /** Parts by weight, above 0; of calcined material when it is weighed so. */
  readonly parts: number;
  /** Weighed after its loss has been fired off. */
  readonly calcined: boolean;
}

/** A glaze as one weighs it: the base, meant to be 100 parts, and what is added on top. */
export interface Recipe {
  readonly base: readonly RecipeLine[];
  readonly additions: readonly RecipeLine[];
}
