import type { Situation } from "../cautions/cautionsFor.ts";
import { atomsIn } from "./chemicalFormula.ts";
import type { Oxide } from "./oxides.ts";
import type { ParsedGlaze } from "./ParsedGlaze.ts";
import { chromatesIn } from "./toxicFindings.ts";

/** What can hurt about weighing, firing and using this glaze. */
export function glazeHazards(parsed: ParsedGlaze): Situation {
  const { moles, givenAs } = parsed;
  const holds = (...oxides: readonly Oxide[]) => oxides.some((oxide) => (moles[oxide] ?? 0) > 0);
  const brings = (...elements: readonly string[]) =>
    elements.some((each) => broughtBy(parsed, each));
  return {
    powders: givenAs.kind === "recipe",
    silicaDust: givenAs.kind === "recipe" && holds("SiO2"),
    lead: holds("PbO"),
    cadmium: holds("CdO"),
    otherPoisons: holds("As2O3", "Sb2O3", "BeO", "SeO2", "HgO", "Tl2O"),
    radioactive: holds("U3O8", "ThO2"),
    chromates: chromatesIn(parsed).length > 0,
    barium: holds("BaO"),
    manganese: holds("MnO"),
    lithium: holds("Li2O"),
    chromium: holds("Cr2O3"),
    copper: holds("CuO"),
    cobaltOrNickel: holds("CoO", "NiO"),
    vanadium: holds("V2O5"),
    fluorine: holds("F", "Cl", "Br", "I") || brings("F", "Cl", "Br", "I"),
    sulphur: brings("S", "N"),
    glazeSurface: true,
    glazeEstimate: true,
  };
}

/** Whether a material of the recipe brings an element that leaves in the kiln. */
function broughtBy({ givenAs }: ParsedGlaze, element: string): boolean {
  if (givenAs.kind !== "recipe") return false;
  return [...givenAs.recipe.base, ...givenAs.recipe.additions].some(
    ({ material, parts }) =>
      parts > 0 && material.formula !== null && atomsIn(material.formula).has(element),
  );
}
