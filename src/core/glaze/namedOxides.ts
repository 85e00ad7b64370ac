import { nearWord } from "../document/nearWord.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import { shown } from "../units/parseQuantity.ts";
import { molarMass } from "./chemicalFormula.ts";
import { OXIDES, type Oxide, type OxideAmounts, oxideMass } from "./oxides.ts";

/** Oxides that are counted as another one: formula, the other, moles of it for one mole. */
const COUNTED_AS: ReadonlyMap<string, readonly [oxide: Oxide, moles: number]> = new Map([
  ["MnO2", ["MnO", 1]],
  ["Mn2O3", ["MnO", 2]],
  ["Mn3O4", ["MnO", 3]],
  ["Co3O4", ["CoO", 3]],
  ["Cu2O", ["CuO", 2]],
  ["Fe3O4", ["Fe2O3", 1.5]],
]);

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
  const near = nearWord(plain(key), KNOWN);
  return {
    code: "glaze/unknown-oxide",
    what: `${shown(key)} is not an oxide of the list`,
    where,
    expected: `one of ${OXIDES.join(", ")}`,
    fix:
      near === null
        ? "write it as one of these, or leave it out and say so in notes"
        : `write ${near}, if you mean it`,
  };
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
