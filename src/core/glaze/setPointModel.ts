import { entriesOf, type Oxide, type OxideAmounts, scaledTo } from "./oxides.ts";

/** One term of the model: a coefficient for each of the oxides multiplied, with its power. */
type Term = readonly [
  coefficient: number,
  ...factors: readonly (readonly [oxide: Oxide, power: number])[],
];

/**
 * Temperature at 10^12 Pa·s [°C] of oxide and halide glasses, contents in mol %; SiO2 is what is
 * left and has no term.
 *
 * @see SOURCES["fluegel-2007"], Table 6
 */
const TERMS: readonly Term[] = [
  [624.829],
  [4.929, ["Al2O3", 1]],
  [-1.121, ["B2O3", 1]],
  [-1.11, ["BaO", 1]],
  [6.84, ["CaO", 1]],
  [-8.123, ["F", 1]],
  [-8.453, ["Fe2O3", 1]],
  [-12.46, ["K2O", 1]],
  [-11.571, ["Li2O", 1]],
  [1.141, ["MgO", 1]],
  [-12.854, ["Na2O", 1]],
  [-4.349, ["PbO", 1]],
  [1.388, ["SrO", 1]],
  [3.864, ["TiO2", 1]],
  [8.927, ["ZrO2", 1]],
  [-0.08269, ["CaO", 2]],
  [0.39706, ["K2O", 2]],
  [0.27802, ["Li2O", 2]],
  [0.35785, ["Na2O", 2]],
  [-0.005382, ["K2O", 3]],
  [-0.002576, ["Li2O", 3]],
  [-0.004179, ["Na2O", 3]],
  [0.38413, ["B2O3", 1], ["Na2O", 1]],
  [-0.20958, ["B2O3", 1], ["CaO", 1]],
  [-0.3338, ["B2O3", 1], ["Al2O3", 1]],
  [-0.13741, ["Al2O3", 1], ["CaO", 1]],
  [0.06169, ["Na2O", 1], ["K2O", 1]],
  [0.08558, ["Na2O", 1], ["Li2O", 1]],
  [-0.10283, ["Na2O", 1], ["CaO", 1]],
  [0.17538, ["K2O", 1], ["Li2O", 1]],
  [0.27425, ["K2O", 1], ["MgO", 1]],
  [0.2247, ["K2O", 1], ["CaO", 1]],
  [-0.21563, ["MgO", 1], ["CaO", 1]],
  [-0.8817, ["CaO", 1], ["Li2O", 1]],
  [0.013868, ["Al2O3", 1], ["Na2O", 1], ["CaO", 1]],
];

/** Contents for which the model was made [mol %]. */
const RANGES: Readonly<Partial<Record<Oxide, readonly [least: number, most: number]>>> = {
  SiO2: [41.4, 92],
  Al2O3: [0, 10],
  B2O3: [0, 17],
  CaO: [0, 50],
  MgO: [0, 16.6],
  K2O: [0, 34],
  Na2O: [0, 42],
  Li2O: [0, 45],
  PbO: [0, 56],
  BaO: [0, 19],
  SrO: [0, 18],
  ZnO: [0, 2.8],
  TiO2: [0, 25],
  ZrO2: [0, 1.8],
};

/** The ranges are printed to a tenth [mol %]. */
const SLACK = 0.05;

/** Share of an oxide that the model does not know, above which that is said [mol %]. */
const UNKNOWN_SHARE = 0.5;

/** An oxide outside what a model was made for. */
export interface OutsideRange {
  readonly oxide: Oxide;
  readonly molPercent: number;
  /** [mol %]; both 0 when the model does not know the oxide. */
  readonly least: number;
  readonly most: number;
}

/** Standard error of the model [K]: 9 to 17 K by the paper, the middle taken. */
export const MODEL_SIGMA_K = 13;

/**
 * Temperature at which a glass has 10^12 Pa·s, by the statistical model of Fluegel (2007).
 *
 * @param moles Composition by moles, in any total above 0.
 * @returns The temperature [°C], and every oxide outside the model's range.
 */
export function stiffTemperature(moles: OxideAmounts): {
  readonly tempC: number;
  readonly outside: readonly OutsideRange[];
} {
  const percent = scaledTo(100, moles);
  const tempC = TERMS.reduce((sum, [coefficient, ...factors]) => {
    const product = factors.reduce(
      (part, [oxide, power]) => part * (percent[oxide] ?? 0) ** power,
      coefficient,
    );
    return sum + product;
  }, 0);
  return { tempC, outside: outsideOf(percent) };
}

function outsideOf(percent: OxideAmounts): readonly OutsideRange[] {
  const known = Object.keys(RANGES) as Oxide[];
  const beyond = known.flatMap((oxide): readonly OutsideRange[] => {
    const [least, most] = RANGES[oxide] as readonly [number, number];
    const molPercent = percent[oxide] ?? 0;
    return molPercent < least - SLACK || molPercent > most + SLACK
      ? [{ oxide, molPercent, least, most }]
      : [];
  });
  const named = new Set<Oxide>([...known, "F", "Fe2O3"]);
  const strange = entriesOf(percent)
    .filter(([oxide]) => !named.has(oxide))
    .filter(([, share]) => share > UNKNOWN_SHARE)
    .map(([oxide, molPercent]) => ({ oxide, molPercent, least: 0, most: 0 }));
  return [...beyond, ...strange];
}
