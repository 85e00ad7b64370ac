import { APPEN_FACTORS } from "./appenFactors.ts";
import {
  ALKALIS,
  entriesOf,
  mapAmounts,
  type Oxide,
  type OxideAmounts,
  scaledTo,
  totalOf,
} from "./oxides.ts";

/** What the Appen set makes of a composition. */
export interface AppenExpansion {
  /** Mean linear expansion, 20 to 400 °C [1/K]. */
  readonly meanPerK: number;
  /** The composition as counted: oxides with a factor only, iron by atoms, 100 in all [mol %]. */
  readonly countedMolPercent: OxideAmounts;
  /** Oxides left out for want of a factor [mol % of the whole]. */
  readonly left: OxideAmounts;
}

/**
 * Expansion of a glass by the Appen set, mean of 20 to 400 °C.
 *
 * @param moles Composition by moles, in any total.
 * @returns null when no oxide has a factor.
 * @see SOURCES["appen-1974"]
 */
export function appenExpansion(moles: OxideAmounts): AppenExpansion | null {
  if (!(totalOf(moles) > 0)) return null;
  const counted = withIronByAtoms(mapAmounts(moles, keepIf(hasFactor)));
  if (!(totalOf(counted) > 0)) return null;
  const percent = scaledTo(100, counted);
  const sum = entriesOf(percent).reduce(
    (total, [oxide, share]) => total + share * factorOf(oxide, percent),
    0,
  );
  return {
    meanPerK: (sum / 100) * 1e-7,
    countedMolPercent: percent,
    left: mapAmounts(
      scaledTo(100, moles),
      keepIf((oxide) => !hasFactor(oxide)),
    ),
  };
}

function hasFactor(oxide: Oxide): boolean {
  return oxide === "Fe2O3" || APPEN_FACTORS[oxide] !== undefined;
}

function keepIf(wanted: (oxide: Oxide) => boolean) {
  return (amount: number, oxide: Oxide) => (wanted(oxide) ? amount : 0);
}

function withIronByAtoms(moles: OxideAmounts): OxideAmounts {
  const { Fe2O3 = 0, FeO = 0, ...others } = moles;
  return Fe2O3 + FeO > 0 ? { ...others, FeO: FeO + 2 * Fe2O3 } : others;
}

/** Partial expansion of an oxide in this company [10⁻⁷/K]. */
function factorOf(oxide: Oxide, percent: OxideAmounts): number {
  const silica = percent.SiO2 ?? 0;
  switch (oxide) {
    case "SiO2":
      return silica <= 67 ? 38 : 38 - (silica - 67);
    case "TiO2":
      return held(30 - 1.5 * (silica - 50), -15, 30);
    case "B2O3":
      return boronFactor(percent);
    case "PbO": {
      const alkalis = totalOf(percent, ALKALIS);
      return alkalis < 3 ? 130 : held(115 + 5 * alkalis, 130, 190);
    }
    default:
      return APPEN_FACTORS[oxide]?.factor ?? 0;
  }
}

/** Boron in fourfold or threefold company, by the free oxygen that the fluxes bring. */
function boronFactor(percent: OxideAmounts): number {
  const of = (...oxides: readonly Oxide[]) => totalOf(percent, oxides);
  const free =
    of("Na2O", "K2O", "BaO") +
    0.7 * of("CaO", "SrO", "CdO", "PbO") +
    0.3 * of("Li2O", "MgO", "ZnO") -
    of("Al2O3");
  const psi = Math.max(0, free / (percent.B2O3 ?? 0));
  return psi > 4 ? -50 : 12.5 * (4 - psi) - 50;
}

function held(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
