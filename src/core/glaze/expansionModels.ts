import type { SourceId } from "../sources/bibliography.ts";
import {
  ALKALIS,
  entriesOf,
  mapAmounts,
  type Oxide,
  type OxideAmounts,
  scaledTo,
  totalOf,
  weightsOf,
} from "./oxides.ts";
import type { OutsideRange } from "./setPointModel.ts";

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
const APPEN_LEAST_SILICA = 45;

/** Every oxide of a composition that lies outside the range of the Appen set. */
export function appenOutside({ countedMolPercent }: AppenExpansion): readonly OutsideRange[] {
  const silica = countedMolPercent.SiO2 ?? 0;
  const scarce: readonly OutsideRange[] =
    silica < APPEN_LEAST_SILICA
      ? [{ oxide: "SiO2", molPercent: silica, least: APPEN_LEAST_SILICA, most: 100 }]
      : [];
  const rich = entriesOf(countedMolPercent).flatMap(([oxide, molPercent]) => {
    const most = APPEN_FACTORS[oxide]?.mostMolPercent ?? 100;
    return molPercent > most ? [{ oxide, molPercent, least: 0, most }] : [];
  });
  return [...scarce, ...rich];
}

/** A set of expansion factors by weight, for a second opinion. */
interface WeightFactorSet {
  readonly name: string;
  readonly source: SourceId;
  readonly range: string;
  /** Linear [10⁻⁸/K per wt %] when the factors are divided by it. */
  readonly divisor: 1 | 3;
  readonly factors: OxideAmounts;
}

/** Cubical factors, in 10⁻⁸/K here, so a third of each is linear. */
const WINKELMANN_SCHOTT: WeightFactorSet = {
  name: "Winkelmann and Schott",
  source: "winkelmann-schott-1894",
  range: "about 20 to 100 °C, glasses",
  divisor: 3,
  factors: {
    SiO2: 8,
    B2O3: 1,
    MgO: 1,
    Na2O: 100,
    K2O: 85,
    Al2O3: 50,
    CaO: 50,
    BaO: 30,
    ZnO: 18,
    PbO: 30,
    Li2O: 20,
    P2O5: 20,
  },
};

const HALL: WeightFactorSet = {
  name: "Hall",
  source: "hall-1930",
  range: "glazes; too high for glasses rich in silica",
  divisor: 1,
  factors: {
    SiO2: 4,
    Al2O3: 5,
    B2O3: 2,
    BaO: 12,
    CaO: 15,
    K2O: 30,
    MgO: 2,
    Na2O: 38,
    PbO: 7.5,
    ZnO: 10,
  },
};

/** What another set of factors says; comparable with values of the same set only. */
export interface SecondOpinion {
  readonly name: string;
  readonly source: SourceId;
  readonly range: string;
  /** [1/K] */
  readonly meanPerK: number;
  /** Oxides without a factor in the set, counted as 0 [wt %]. */
  readonly leftWtPercent: OxideAmounts;
}

/**
 * What the weight-factor sets of Winkelmann and Schott and of Hall make of a composition.
 * Shown beside the main value, never mixed with it.
 *
 * @param moles Composition by moles, in any total above 0.
 */
export function secondOpinions(moles: OxideAmounts): readonly SecondOpinion[] {
  const percent = scaledTo(100, weightsOf(moles));
  return [WINKELMANN_SCHOTT, HALL].map(({ name, source, range, divisor, factors }) => ({
    name,
    source,
    range,
    meanPerK:
      entriesOf(percent).reduce((sum, [oxide, share]) => sum + share * (factors[oxide] ?? 0), 0) *
      (1e-8 / divisor),
    leftWtPercent: mapAmounts(percent, (share, oxide) =>
      factors[oxide] === undefined ? share : 0,
    ),
  }));
}
