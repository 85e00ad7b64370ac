import { ALKALIS, FLUXES, mapAmounts, type OxideAmounts, totalOf } from "./oxides.ts";

/** A glaze counted in moles for one mole of fluxes. */
export interface UnityFormula {
  /** Moles of each oxide for R₂O + RO = 1; colouring oxides stand beside and are not counted to 1. */
  readonly moles: OxideAmounts;
  /** Share of alkalis in the fluxes, 0 to 1. */
  readonly alkaliShare: number;
  /** Silica to alumina by moles; null without alumina. */
  readonly silicaToAlumina: number | null;
}

/** The unity formula (R₂O + RO = 1) of a glaze by moles; null when it holds no flux. */
export function unityFormula(moles: OxideAmounts): UnityFormula | null {
  const fluxes = totalOf(moles, FLUXES);
  if (!(fluxes > 0)) return null;
  const alumina = moles.Al2O3 ?? 0;
  return {
    moles: mapAmounts(moles, (amount) => amount / fluxes),
    alkaliShare: totalOf(moles, ALKALIS) / fluxes,
    silicaToAlumina: alumina > 0 ? (moles.SiO2 ?? 0) / alumina : null,
  };
}
