import { failed, ok, type Problem, type Result } from "../problem.ts";
import { shown } from "../units/quantity.ts";
import { type AtomCounts, atomsIn, atomsInWords, elementIn, molarMass } from "./elements.ts";
import { OXIDES, type Oxide, type OxideAmounts, oxideMass, totalOf, weightsOf } from "./oxides.ts";

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
function otherOxideOf(atoms: AtomCounts): readonly [oxide: Oxide, moles: number] | null {
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

/** Oxides of another make that chemistry knows; each is counted as the oxide of its element in the list. */
const OTHER_OXIDES =
  "MnO2 Mn2O3 Mn3O4 Mn2O7 Co3O4 Co2O3 CoO2 Cu2O Fe3O4 PbO2 Pb3O4 Pb2O3 CrO CrO2 CrO3 VO VO2 V2O3 V2O4 Sb2O4 Sb2O5 As2O5 As4O6 SeO3 TeO3 UO2 UO3 Hg2O Tl2O3 Ni2O3 NiO2 BaO2 SrO2 CaO2 MgO2 Li2O2 Na2O2 ZnO2 TiO Ti2O3 SnO Bi2O5 Ce2O3 PrO2 Pr6O11 TbO2 Tb4O7 MoO2 WO2 NbO NbO2 GeO P2O3 P4O10 In2O Ga2O AgO Au2O3 PtO2 PtO Cd2O ReO3 OsO4 RuO4 SO2".split(
    " ",
  );

/** Formula, the oxide that it is counted as, and moles of that for one mole. */
const COUNTED_AS: ReadonlyMap<string, readonly [oxide: Oxide, moles: number]> = new Map(
  OTHER_OXIDES.map((formula) => {
    const counted = otherOxideOf(atomsIn(formula));
    if (counted === null) throw new RangeError(`namedOxides: ${formula}`);
    return [formula, counted] as const;
  }),
);

const KNOWN: readonly string[] = [...OXIDES, ...COUNTED_AS.keys()];
const BY_LOWER_CASE = new Map(KNOWN.map((name) => [name.toLowerCase(), name]));
const SUBSCRIPTS = "₀₁₂₃₄₅₆₇₈₉";

/** Oxides read from a file. */
interface NamedOxides {
  readonly amounts: OxideAmounts;
  /** Sum of the numbers as they stand in the file. */
  readonly sum: number;
  /** What was counted as something else, in words. */
  readonly remarks: readonly string[];
}

/**
 * Amounts by oxide from what a file has under `oxides`; `sio2` and `SiO₂` are SiO2.
 *
 * @param context.by Whether the numbers are weights or moles, for oxides counted as another.
 * @param context.placeOf Place of a key, for problems.
 * @returns All of `glaze/unknown-oxide`, `glaze/oxide-twice`.
 */
export function namedOxides(
  given: Readonly<Record<string, number>>,
  context: { readonly by: "weight" | "moles"; readonly placeOf: (key: string) => string },
): Result<NamedOxides> {
  const amounts: Partial<Record<Oxide, number>> = {};
  const seen = new Map<string, string>();
  const problems: Problem[] = [];
  const remarks: string[] = [];
  let sum = 0;
  for (const [key, amount] of Object.entries(given)) {
    const name = BY_LOWER_CASE.get(plain(key));
    const earlier = seen.get(name ?? "");
    if (name === undefined) problems.push(unknownOxide(key, context.placeOf(key)));
    else if (earlier !== undefined) problems.push(twice(key, earlier, context.placeOf(key)));
    else {
      seen.set(name, key);
      sum += amount;
      const { oxide, counted } = countedAs(name, amount, context.by);
      amounts[oxide] = (amounts[oxide] ?? 0) + counted;
      if (oxide !== name && amount > 0) remarks.push(`${name} is counted as ${oxide}`);
    }
  }
  return problems.length > 0 ? failed(...problems) : ok({ amounts, sum, remarks });
}

function countedAs(name: string, amount: number, by: "weight" | "moles") {
  const other = COUNTED_AS.get(name);
  if (other === undefined) return { oxide: name as Oxide, counted: amount };
  const [oxide, moles] = other;
  const weight = (moles * oxideMass(oxide)) / molarMass(name);
  return { oxide, counted: amount * (by === "moles" ? moles : weight) };
}

function plain(key: string): string {
  return key
    .trim()
    .toLowerCase()
    .replaceAll(/[₀-₉]/g, (digit) => String(SUBSCRIPTS.indexOf(digit)));
}

function unknownOxide(key: string, where: string): Problem {
  const meant = meantOxide(key);
  return {
    code: "glaze/unknown-oxide",
    what: `${shown(key)} is not an oxide that is known here`,
    where,
    expected: "an oxide by its formula, such as SiO2, Al2O3 or PbO",
    fix:
      meant === null
        ? "look at its spelling; do not leave it out, for what is missing here no warning can see"
        : `write ${meant}, if you mean it`,
  };
}

/**
 * The oxide that a key may stand for. Only one of the very same element is ever offered: a poison is
 * never read as its harmless neighbour.
 */
function meantOxide(key: string): string | null {
  const written = plain(key);
  const sameLetters = KNOWN.find((name) => lettersOf(name.toLowerCase()) === lettersOf(written));
  if (sameLetters !== undefined) return sameLetters;
  const atoms = atomsInWords(key.trim()) ?? atomsInWords(capitalised(written));
  const staying = atoms === null ? [] : stayingElements(atoms);
  const element = staying.length === 1 ? staying[0]! : elementIn(written);
  return element === null ? null : firedOxideOf(element);
}

/** The letters of a formula; a nought between them is an O that was mistyped. */
function lettersOf(text: string): string {
  return text.replaceAll("0", "o").replaceAll(/[^a-z]/g, "");
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function twice(key: string, earlier: string, where: string): Problem {
  return {
    code: "glaze/oxide-twice",
    what: `${shown(key)} and ${shown(earlier)} are the same oxide`,
    where,
    expected: "each oxide once",
    fix: "add the two up, or remove one",
  };
}
