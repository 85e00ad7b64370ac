import { atomsIn, molarMass } from "./chemicalFormula.ts";
import { type Oxide, type OxideAmounts, totalOf, weightsOf } from "./oxides.ts";

/** The oxide that an element ends up in, and moles of it from one atom. */
const FIRED: Readonly<Record<string, readonly [oxide: Oxide, molesPerAtom: number]>> = {
  Li: ["Li2O", 0.5],
  Na: ["Na2O", 0.5],
  K: ["K2O", 0.5],
  Mg: ["MgO", 1],
  Ca: ["CaO", 1],
  Sr: ["SrO", 1],
  Ba: ["BaO", 1],
  Zn: ["ZnO", 1],
  Al: ["Al2O3", 0.5],
  B: ["B2O3", 0.5],
  Si: ["SiO2", 1],
  P: ["P2O5", 0.5],
  Ti: ["TiO2", 1],
  Zr: ["ZrO2", 1],
  Sn: ["SnO2", 1],
  Fe: ["Fe2O3", 0.5],
  Mn: ["MnO", 1],
  Co: ["CoO", 1],
  Ni: ["NiO", 1],
  Cu: ["CuO", 1],
  Cr: ["Cr2O3", 0.5],
};

/** Elements that leave, or that every oxide brings with it. */
const LEAVES: ReadonlySet<string> = new Set(["H", "C", "O"]);

/**
 * Grams of each oxide from one gram of a substance, and the share that fires away.
 * Water, carbon dioxide and the oxygen of higher oxides leave: MnO2 stays as MnO.
 * RangeError for an element that the table does not fire to an oxide.
 */
export function oxidesOfFormula(formula: string): {
  readonly oxides: OxideAmounts;
  readonly lossFraction: number;
} {
  const mass = molarMass(formula);
  const moles: Partial<Record<Oxide, number>> = {};
  for (const [element, count] of atomsIn(formula)) {
    if (LEAVES.has(element)) continue;
    const fired = FIRED[element];
    if (fired === undefined) throw new RangeError(`oxidesOfFormula: ${element} in ${formula}`);
    const [oxide, perAtom] = fired;
    moles[oxide] = (moles[oxide] ?? 0) + (perAtom * count) / mass;
  }
  const oxides = weightsOf(moles);
  // A metal oxide that only changes in the last digits of its atomic weights loses nothing.
  const loss = 1 - totalOf(oxides);
  return { oxides, lossFraction: Math.abs(loss) < 1e-9 ? 0 : loss };
}
