import type { Oxide } from "./oxides.ts";

/** A partial expansion of the Appen set. */
export interface AppenFactor {
  /** Linear, mean of 20 to 400 °C [10⁻⁷/K per mole fraction]; a start value where a rule varies it. */
  readonly factor: number;
  /** Largest share for which it was given [mol %]. */
  readonly mostMolPercent: number;
  /** Whether the number was seen in a copy of the table, or its rule is from memory. */
  readonly attested: "seen" | "rule from memory";
}

/**
 * Appen's partial expansions as printed [10⁻⁷/K per mole fraction], by oxide.
 * Iron counts per atom of iron (FeO, or half an Fe2O3). The factors of SiO2, TiO2, B2O3 and PbO
 * vary with the composition, by rules that `appenExpansion` applies. Silica is meant from 45 mol %.
 *
 * @see SOURCES["appen-1974"]
 */
export const APPEN_FACTORS: Readonly<Partial<Record<Oxide, AppenFactor>>> = {
  SiO2: { factor: 38, mostMolPercent: 100, attested: "rule from memory" },
  TiO2: { factor: 30, mostMolPercent: 25, attested: "rule from memory" },
  ZrO2: { factor: -60, mostMolPercent: 15, attested: "seen" },
  SnO2: { factor: -45, mostMolPercent: 10, attested: "seen" },
  Al2O3: { factor: -30, mostMolPercent: 20, attested: "seen" },
  B2O3: { factor: -50, mostMolPercent: 30, attested: "rule from memory" },
  Sb2O3: { factor: 75, mostMolPercent: 5, attested: "seen" },
  BeO: { factor: 45, mostMolPercent: 30, attested: "seen" },
  MgO: { factor: 60, mostMolPercent: 25, attested: "seen" },
  CaO: { factor: 130, mostMolPercent: 25, attested: "seen" },
  SrO: { factor: 160, mostMolPercent: 30, attested: "seen" },
  BaO: { factor: 200, mostMolPercent: 40, attested: "seen" },
  ZnO: { factor: 50, mostMolPercent: 20, attested: "seen" },
  CdO: { factor: 115, mostMolPercent: 20, attested: "seen" },
  PbO: { factor: 130, mostMolPercent: 50, attested: "rule from memory" },
  MnO: { factor: 105, mostMolPercent: 25, attested: "seen" },
  FeO: { factor: 55, mostMolPercent: 20, attested: "seen" },
  CoO: { factor: 50, mostMolPercent: 20, attested: "seen" },
  NiO: { factor: 50, mostMolPercent: 15, attested: "seen" },
  CuO: { factor: 30, mostMolPercent: 10, attested: "seen" },
  Li2O: { factor: 270, mostMolPercent: 30, attested: "seen" },
  Na2O: { factor: 395, mostMolPercent: 25, attested: "seen" },
  K2O: { factor: 465, mostMolPercent: 20, attested: "seen" },
  P2O5: { factor: 140, mostMolPercent: 8, attested: "seen" },
};

/** Least silica for which the Appen set was given [mol %]. */
export const APPEN_LEAST_SILICA = 45;
