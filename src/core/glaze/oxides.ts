import { molarMass } from "./elements.ts";

/**
 * Oxides of a fired glaze in the order in which they are shown: fluxes, then alumina and its like,
 * then glass formers, then colours, opacifiers, poisons and rare metals, and what burns away in part.
 * Every element that a glaze can hold has one; a model that does not know it leaves it out and says so.
 */
export const OXIDES = [
  "Li2O",
  "Na2O",
  "K2O",
  "MgO",
  "CaO",
  "SrO",
  "BaO",
  "ZnO",
  "PbO",
  "Al2O3",
  "B2O3",
  "SiO2",
  "P2O5",
  "TiO2",
  "ZrO2",
  "SnO2",
  "FeO",
  "Fe2O3",
  "MnO",
  "CoO",
  "NiO",
  "CuO",
  "Cr2O3",
  "V2O5",
  "CeO2",
  "Bi2O3",
  "Sb2O3",
  "As2O3",
  "CdO",
  "BeO",
  "SeO2",
  "HgO",
  "Tl2O",
  "U3O8",
  "ThO2",
  "Rb2O",
  "Cs2O",
  "Ag2O",
  "Ga2O3",
  "In2O3",
  "Sc2O3",
  "Y2O3",
  "La2O3",
  "Pr2O3",
  "Nd2O3",
  "Sm2O3",
  "Eu2O3",
  "Gd2O3",
  "Tb2O3",
  "Dy2O3",
  "Ho2O3",
  "Er2O3",
  "Tm2O3",
  "Yb2O3",
  "Lu2O3",
  "GeO2",
  "HfO2",
  "Nb2O5",
  "Ta2O5",
  "MoO3",
  "WO3",
  "Re2O7",
  "TeO2",
  "RuO2",
  "Rh2O3",
  "PdO",
  "OsO2",
  "IrO2",
  "Pt",
  "Au",
  "SO3",
  "F",
  "Cl",
  "Br",
  "I",
] as const;

/** An oxide of the list, fluorine and chlorine counted as themselves. */
export type Oxide = (typeof OXIDES)[number];

/** Amounts by oxide, in moles or by weight as the holder says; what is not there is 0. */
export type OxideAmounts = Readonly<Partial<Record<Oxide, number>>>;

/** Fluxes that are counted to 1 in a unity formula; colouring oxides are not. */
export const FLUXES: readonly Oxide[] = [
  "Li2O",
  "Na2O",
  "K2O",
  "MgO",
  "CaO",
  "SrO",
  "BaO",
  "ZnO",
  "PbO",
];

/** Alkali oxides, R₂O. */
export const ALKALIS: readonly Oxide[] = ["Li2O", "Na2O", "K2O"];

const MASSES = Object.fromEntries(OXIDES.map((oxide) => [oxide, molarMass(oxide)])) as Readonly<
  Record<Oxide, number>
>;

/** Mass of a mole of an oxide [g]. */
export function oxideMass(oxide: Oxide): number {
  return MASSES[oxide];
}

/** The oxides that are there, in the order of the list, with their amounts. */
export function entriesOf(amounts: OxideAmounts): readonly (readonly [Oxide, number])[] {
  return OXIDES.flatMap((oxide) => {
    const amount = amounts[oxide] ?? 0;
    return amount === 0 ? [] : [[oxide, amount] as const];
  });
}

/** Amounts made anew, oxide by oxide; what becomes 0 is left out. */
export function mapAmounts(
  amounts: OxideAmounts,
  change: (amount: number, oxide: Oxide) => number,
): OxideAmounts {
  return Object.fromEntries(
    entriesOf(amounts).flatMap(([oxide, amount]) => {
      const changed = change(amount, oxide);
      return changed === 0 ? [] : [[oxide, changed]];
    }),
  );
}

/** Sum of amounts, of all oxides or of some. */
export function totalOf(amounts: OxideAmounts, of: readonly Oxide[] = OXIDES): number {
  return of.reduce((sum, oxide) => sum + (amounts[oxide] ?? 0), 0);
}

/** Amounts scaled so that they add up to a total; RangeError when there are none. */
export function scaledTo(total: number, amounts: OxideAmounts): OxideAmounts {
  const sum = totalOf(amounts);
  if (!(sum > 0)) throw new RangeError(`scaledTo: amounts add up to ${sum}`);
  return mapAmounts(amounts, (amount) => (amount * total) / sum);
}

/** Moles from weights [g → mol]; not normalised. */
export function molesOf(weights: OxideAmounts): OxideAmounts {
  return mapAmounts(weights, (weight, oxide) => weight / oxideMass(oxide));
}

/** Weights from moles [mol → g]; not normalised. */
export function weightsOf(moles: OxideAmounts): OxideAmounts {
  return mapAmounts(moles, (amount, oxide) => amount * oxideMass(oxide));
}
