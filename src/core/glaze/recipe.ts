import { failed, ok, type Problem, type Result } from "../problem.ts";
import { nearWord } from "../text/nearWord.ts";
import { shown } from "../units/quantity.ts";
import { elementIn, elementName } from "./elements.ts";
import type { Material, Recipe, RecipeLine } from "./Glaze.ts";
import type { GlazeFile } from "./glazeFormat.ts";
import { MINERAL_WORDS, MINERALS, materialOfFormula, ownMaterial } from "./minerals.ts";

/** A recipe with its materials found. */
interface FoundRecipe {
  readonly recipe: Recipe;
  /** What was read otherwise than written, and what was not used, in words. */
  readonly remarks: readonly string[];
}

type Place = (path: readonly PropertyKey[]) => string;
type Shelf = ReadonlyMap<string, Material>;

/**
 * The recipe of a glaze file, each name looked up among its own materials first, then among the
 * built-in minerals.
 *
 * @returns All of `glaze/unknown-material`, and the problems of the file's own materials.
 */
export function recipeOf(file: GlazeFile, placeOf: Place): Result<FoundRecipe> {
  const own = ownMaterials(file, placeOf);
  if (!own.ok) return own;
  const { shelf, remarks } = own.value;
  const base = linesOf(file.recipe ?? {}, { shelf, placeOf, key: "recipe" });
  const additions = linesOf(file.additions ?? {}, { shelf, placeOf, key: "additions" });
  if (!base.ok || !additions.ok)
    return failed(
      ...listedOnce([base, additions].flatMap((part) => (part.ok ? [] : part.problems))),
    );
  const recipe = { base: base.value, additions: additions.value };
  return ok({ recipe, remarks: [...remarks, ...unusedRemarks(shelf, recipe)] });
}

function ownMaterials(
  file: GlazeFile,
  placeOf: Place,
): Result<{ readonly shelf: Shelf; readonly remarks: readonly string[] }> {
  const shelf = new Map<string, Material>();
  const problems: Problem[] = [];
  const remarks: string[] = [];
  for (const [name, given] of Object.entries(file.materials ?? {})) {
    const found = ownMaterial(name, given, (path) => placeOf(["materials", name, ...path]));
    if (!found.ok) {
      problems.push(...found.problems);
      continue;
    }
    shelf.set(plain(name), found.value.material);
    remarks.push(...found.value.remarks);
    if (MINERAL_WORDS.has(plain(name)))
      remarks.push(`${name}: your own analysis is used in place of the ideal mineral`);
  }
  return problems.length > 0 ? failed(...problems) : ok({ shelf, remarks });
}

function linesOf(
  given: NonNullable<GlazeFile["recipe"]>,
  context: { readonly shelf: Shelf; readonly placeOf: Place; readonly key: string },
): Result<readonly RecipeLine[]> {
  const { shelf, placeOf, key } = context;
  const problems: Problem[] = [];
  const lines: RecipeLine[] = [];
  for (const [name, amount] of Object.entries(given)) {
    const material =
      shelf.get(plain(name)) ?? MINERAL_WORDS.get(plain(name)) ?? materialOfFormula(name);
    if (material === null) problems.push(unknownMaterial(name, shelf, placeOf([key, name])));
    else
      lines.push(
        typeof amount === "number"
          ? { name, material, parts: amount, calcined: false }
          : { name, material, parts: amount.parts, calcined: amount.calcined ?? false },
      );
  }
  return problems.length > 0 ? failed(...problems) : ok(lines);
}

function plain(name: string): string {
  return name.trim().toLowerCase().replaceAll(/\s+/g, " ");
}

function unknownMaterial(name: string, shelf: Shelf, where: string): Problem {
  const own = [...shelf.values()].map((material) => material.name);
  // A poison is never offered as its harmless neighbour, only as what holds the same element.
  const element = elementIn(name);
  const known = [...own, ...MINERAL_WORDS.keys()];
  const offered = element === null ? known : known.filter((word) => elementIn(word) === element);
  const near = nearWord(plain(name), offered) ?? wordInside(plain(name), offered);
  const named =
    element === null ? "" : ` and do not leave it out: it names ${elementName(element)}`;
  return {
    code: "glaze/unknown-material",
    what: `${shown(name)} is neither under materials nor a built-in mineral`,
    where,
    expected: `one of ${[...own, ...MINERALS.map((mineral) => mineral.name)].join(", ")}`,
    fix:
      near === null
        ? `put its analysis under materials, with oxides, loi and source${named}`
        : `write ${near}, if you mean it, or put its analysis under materials${named}`,
  };
}

/** The longest known name that stands as a word in another: nepheline in nepheline syenite. */
function wordInside(name: string, known: readonly string[]): string | null {
  const inside = known.filter((word) => ` ${name} `.includes(` ${word} `));
  return inside.toSorted((a, b) => b.length - a.length)[0] ?? null;
}

/** The list of all materials is long: the first problem has it, the others say so. */
function listedOnce(problems: readonly Problem[]): readonly Problem[] {
  const [first] = problems.filter(({ code }) => code === "glaze/unknown-material");
  return problems.map((problem) =>
    problem.code === "glaze/unknown-material" && problem !== first
      ? { ...problem, expected: "a name of that list, or one under materials" }
      : problem,
  );
}

function unusedRemarks(shelf: Shelf, { base, additions }: Recipe): readonly string[] {
  const used = new Set([...base, ...additions].map(({ material }) => material));
  return [...shelf.values()]
    .filter((material) => !used.has(material))
    .map(({ name }) => `${name} stands under materials and is not in the recipe`);
}
