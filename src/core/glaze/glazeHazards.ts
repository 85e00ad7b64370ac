import type { Situation } from "../cautions/cautionsFor.ts";
import type { Oxide } from "./oxides.ts";
import type { ParsedGlaze } from "./ParsedGlaze.ts";

/** What can hurt about weighing, firing and using this glaze. */
export function glazeHazards({ moles, givenAs }: ParsedGlaze): Situation {
  const holds = (...oxides: readonly Oxide[]) => oxides.some((oxide) => (moles[oxide] ?? 0) > 0);
  return {
    powders: givenAs.kind === "recipe",
    silicaDust: givenAs.kind === "recipe" && holds("SiO2"),
    lead: holds("PbO"),
    cadmium: holds("CdO"),
    otherPoisons: holds("As2O3", "Sb2O3", "BeO"),
    barium: holds("BaO"),
    manganese: holds("MnO"),
    lithium: holds("Li2O"),
    chromium: holds("Cr2O3"),
    copper: holds("CuO"),
    cobaltOrNickel: holds("CoO", "NiO"),
    vanadium: holds("V2O5"),
    fluorine: holds("F", "Cl"),
    glazeSurface: true,
    glazeEstimate: true,
  };
}
