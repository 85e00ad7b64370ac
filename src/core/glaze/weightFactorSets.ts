import type { SourceId } from "../sources/bibliography.ts";
import { entriesOf, mapAmounts, type OxideAmounts, scaledTo, weightsOf } from "./oxides.ts";

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
