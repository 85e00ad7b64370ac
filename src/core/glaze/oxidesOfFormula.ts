import { type AtomCounts, atomsIn, molarMass } from "./chemicalFormula.ts";
import { OXIDES, type Oxide, type OxideAmounts, totalOf, weightsOf } from "./oxides.ts";

/** Elements that leave the kiln, or that every oxide brings with it. */
const LEAVES: ReadonlySet<string> = new Set(["H", "C", "N", "O", "S", "F", "Cl", "Br", "I"]);

/** The oxide that an element ends up in, and moles of it from one atom: the last of the list that it makes. */
const FIRED: ReadonlyMap<string, readonly [oxide: Oxide, molesPerAtom: number]> = new Map(
  OXIDES.flatMap((oxide) =>
    [...atomsIn(oxide)]
      .filter(([element]) => element !== "O")
      .map(([element, atoms]) => [element, [oxide, 1 / atoms]] as const),
  ),
);

/** The oxide that an element ends up in; null for one that no glaze can hold. */
export function firedOxideOf(element: string): Oxide | null {
  return FIRED.get(element)?.[0] ?? null;
}

/** Elements of a formula that stay in a fired glaze. */
export function stayingElements(atoms: AtomCounts): readonly string[] {
  return [...atoms.keys()].filter((element) => !LEAVES.has(element));
}

/**
 * The oxide that an oxide of another make is counted as, and moles of it for one mole: UO2 as a third of U3O8.
 * @returns null for what is no oxide of one element.
 */
export function otherOxideOf(atoms: AtomCounts): readonly [oxide: Oxide, moles: number] | null {
  const [element, ...more] = [...atoms.keys()].filter((each) => each !== "O");
  const fired = element === undefined || more.length > 0 ? undefined : FIRED.get(element);
  if (fired === undefined || element === undefined) return null;
  return [fired[0], (atoms.get(element) ?? 0) * fired[1]];
}

/**
 * Grams of each oxide from one gram of a substance, and the share that fires away.
 * Water, carbon dioxide, nitrates, sulphur, fluorine and chlorine leave, and so does the oxygen of
 * higher oxides: MnO2 stays as MnO. What takes up oxygen has a loss below 0.
 * RangeError for an element that no glaze can hold.
 */
export function oxidesOfFormula(formula: string): {
  readonly oxides: OxideAmounts;
  readonly lossFraction: number;
} {
  const mass = molarMass(formula);
  const moles: Partial<Record<Oxide, number>> = {};
  for (const [element, count] of atomsIn(formula)) {
    if (LEAVES.has(element)) continue;
    const fired = FIRED.get(element);
    if (fired === undefined) throw new RangeError(`oxidesOfFormula: ${element} in ${formula}`);
    const [oxide, perAtom] = fired;
    moles[oxide] = (moles[oxide] ?? 0) + (perAtom * count) / mass;
  }
  const oxides = weightsOf(moles);
  // A metal oxide that only changes in the last digits of its atomic weights loses nothing.
  const loss = 1 - totalOf(oxides);
  return { oxides, lossFraction: Math.abs(loss) < 1e-9 ? 0 : loss };
}
