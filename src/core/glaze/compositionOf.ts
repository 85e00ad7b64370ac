import { failed, ok, type Problem, type Result } from "../problem.ts";
import { firedRecipe } from "./firedRecipe.ts";
import type { GlazeFile } from "./glazeFormat.ts";
import { namedOxides } from "./namedOxides.ts";
import { entriesOf, molesOf, type OxideAmounts, scaledTo, totalOf } from "./oxides.ts";
import type { ParsedGlaze } from "./ParsedGlaze.ts";
import { recipeOf } from "./recipeOf.ts";

/** How far percentages of a glaze may be from 100. */
const TOLERANCE = 1.5;

type Place = (path: readonly PropertyKey[]) => string;
type Composition = Pick<ParsedGlaze, "moles" | "givenAs" | "remarks">;

/**
 * The composition that a glaze file gives, by oxides or by recipe.
 *
 * @returns All problems: `glaze/no-composition`, `glaze/two-compositions`, `glaze/missing-basis`,
 * `glaze/additions-without-recipe`, `glaze/sum`, `glaze/nothing-stays`, and those of its parts.
 */
export function compositionOf(file: GlazeFile, at: Place): Result<Composition> {
  const confusions = confusionsOf(file, at);
  if (confusions.length > 0) return failed(...confusions);
  return file.oxides === undefined ? ofRecipe(file, at) : ofOxides(file, file.oxides, at);
}

function confusionsOf(file: GlazeFile, at: Place): readonly Problem[] {
  if (file.oxides !== undefined && file.recipe !== undefined)
    return [
      {
        code: "glaze/two-compositions",
        what: "there are oxides and a recipe",
        where: at(["recipe"]),
        expected: "one of the two: the other follows from it, or contradicts it",
        fix: "keep the recipe, or the oxides if they were analysed, and put the other in notes",
      },
    ];
  if (file.oxides === undefined && file.recipe === undefined)
    return [
      {
        code: "glaze/no-composition",
        what: "there are neither oxides nor a recipe",
        where: at([]),
        expected: "recipe: with materials and parts, or oxides: with their basis",
        fix: "add one of the two",
      },
    ];
  if (file.oxides !== undefined && file.additions !== undefined)
    return [
      {
        code: "glaze/additions-without-recipe",
        what: "there are additions to oxides",
        where: at(["additions"]),
        expected: "additions on top of a recipe; an analysis holds them already",
        fix: "put them among the oxides, or give the recipe",
      },
    ];
  return [];
}

function ofRecipe(file: GlazeFile, at: Place): Result<Composition> {
  const found = recipeOf(file, at);
  if (!found.ok) return found;
  const { recipe, remarks } = found.value;
  if (recipe.base.length === 0) return failed(nothingStays(at(["recipe"])));
  if ([...recipe.base, ...recipe.additions].every(({ material }) => isNothing(material.oxides)))
    return failed(nothingStays(at(["recipe"])));
  const { weights, lossFraction } = firedRecipe(recipe);
  return ok({
    moles: scaledTo(1, molesOf(weights)),
    givenAs: { kind: "recipe", recipe, lossFraction },
    remarks,
  });
}

function ofOxides(
  file: GlazeFile,
  oxides: Readonly<Record<string, number>>,
  at: Place,
): Result<Composition> {
  const { basis } = file;
  if (basis === undefined) return failed(missingBasis(at(["oxides"])));
  const named = namedOxides(oxides, {
    by: basis === "wt %" ? "weight" : "moles",
    placeOf: (key) => at(["oxides", key]),
  });
  if (!named.ok) return named;
  const { amounts, sum } = named.value;
  if (isNothing(amounts)) return failed(nothingStays(at(["oxides"])));
  if (basis !== "moles" && Math.abs(sum - 100) > TOLERANCE)
    return failed(sumProblem(amounts, { sum, basis, where: at(["oxides"]) }));
  return ok({
    moles: scaledTo(1, basis === "wt %" ? molesOf(amounts) : amounts),
    givenAs: { kind: "oxides", basis, sum },
    remarks: [
      ...named.value.remarks,
      ...(file.materials === undefined ? [] : ["materials are given and no recipe uses them"]),
    ],
  });
}

function isNothing(amounts: OxideAmounts): boolean {
  return entriesOf(amounts).length === 0;
}

function nothingStays(where: string): Problem {
  return {
    code: "glaze/nothing-stays",
    what: "nothing stays after firing",
    where,
    expected: "at least one oxide with an amount above 0",
    fix: "give the amounts",
  };
}

function missingBasis(where: string): Problem {
  return {
    code: "glaze/missing-basis",
    what: "the oxides have no basis",
    where,
    expected: 'basis: "wt %" for weight, "mol %" for moles in a hundred, moles for a unity formula',
    fix: "look it up where the numbers come from; the two differ by far",
  };
}

function sumProblem(
  amounts: OxideAmounts,
  given: { readonly sum: number; readonly basis: string; readonly where: string },
): Problem {
  const fluxes = totalOf(amounts) < 15;
  return {
    code: "glaze/sum",
    what: `the oxides add up to ${given.sum.toFixed(2)} ${given.basis}, which is ${Math.abs(given.sum - 100).toFixed(2)} ${given.sum < 100 ? "short of" : "over"} 100`,
    where: given.where,
    expected: `100 ± ${TOLERANCE}, without loss on ignition`,
    fix: fluxes
      ? "if this is a unity formula, write basis: moles"
      : "look for the oxide that is missing or mistyped; leave loss on ignition out and scale to 100",
  };
}
