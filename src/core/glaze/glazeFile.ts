import { parseCone } from "../cones/cone.ts";
import { type DocumentPath, readDocument } from "../document/readDocument.ts";
import { schemaProblems } from "../document/schemaProblems.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import { type LeachAmount, parseLeachAmount, parseVolume } from "../units/amounts.ts";
import { parseLength } from "../units/quantity.ts";
import { firedRecipe } from "./batchSheet.ts";
import type { LeachTest, ParsedGlaze } from "./Glaze.ts";
import { glazedWare } from "./glazedWare.ts";
import { GLAZE_DOCUMENT, GlazeFile } from "./glazeFormat.ts";
import { namedOxides } from "./namedOxides.ts";
import { ownProperties } from "./ownProperties.ts";
import { entriesOf, molesOf, type OxideAmounts, scaledTo, totalOf } from "./oxides.ts";
import { recipeOf } from "./recipe.ts";

/**
 * A glaze from the text of its file, YAML or JSON by content.
 *
 * @param name What to call the file in problems.
 * @returns every problem of the file at once, each with its place and line.
 */
export function parseGlaze(text: string, name: string): Result<ParsedGlaze> {
  const document = readDocument(text, name, GLAZE_DOCUMENT);
  if (!document.ok) return document;
  const shape = GlazeFile.safeParse(document.value.value);
  if (!shape.success)
    return failed(...schemaProblems(shape.error.issues, document.value, GLAZE_DOCUMENT));
  return meaningOf(shape.data, document.value.placeOf);
}

function meaningOf(file: GlazeFile, at: (path: DocumentPath) => string): Result<ParsedGlaze> {
  const composition = compositionOf(file, at);
  const own = ownProperties(file, at);
  const cone =
    file.cone === undefined
      ? ok(null)
      : parseCone(file.cone, { series: "self-supporting", where: at(["cone"]) });
  const ware = glazedWare(file, at);
  const leachTests = leachTestsOf(file, at);
  if (composition.ok && own.ok && cone.ok && ware.ok && leachTests.ok)
    return ok({
      title: file.title,
      invented: file.invented ?? false,
      cone: cone.value,
      crackle: file.crackle ?? false,
      ...composition.value,
      own: own.value,
      ware: ware.value,
      leachTests: leachTests.value,
      notes: file.notes ?? null,
    });
  const problems: Problem[] = [];
  for (const part of [composition, own, cone, ware, leachTests])
    if (!part.ok) problems.push(...part.problems);
  return failed(...problems);
}

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
function compositionOf(file: GlazeFile, at: Place): Result<Composition> {
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

type Given = NonNullable<GlazeFile["leachTests"]>[number];

/**
 * Leach tests as a glaze file gives them.
 *
 * @returns all problems of their lengths, volumes and amounts, and `glaze/leach-nothing` for a test
 * of neither metal.
 */
function leachTestsOf(
  file: GlazeFile,
  at: (path: readonly PropertyKey[]) => string,
): Result<readonly LeachTest[]> {
  const tests: LeachTest[] = [];
  const problems: Problem[] = [];
  for (const [index, given] of (file.leachTests ?? []).entries()) {
    const test = leachTestOf(given, (key) => at(["leachTests", index, ...key]));
    if (test.ok) tests.push(test.value);
    else problems.push(...test.problems);
  }
  return problems.length > 0 ? failed(...problems) : ok(tests);
}

function leachTestOf(
  given: Given,
  at: (path: readonly PropertyKey[]) => string,
): Result<LeachTest> {
  const depth = parseLength(given.depth, { where: at(["depth"]) });
  const holds = parseVolume(String(given.holds), { where: at(["holds"]) });
  const lead = amountOf(given.lead, at(["lead"]));
  const cadmium = amountOf(given.cadmium, at(["cadmium"]));
  if (!depth.ok || !holds.ok || !lead.ok || !cadmium.ok)
    return failed(
      ...[depth, holds, lead, cadmium].flatMap((part) => (part.ok ? [] : part.problems)),
    );
  if (lead.value === null && cadmium.value === null)
    return failed({
      code: "glaze/leach-nothing",
      where: at([]),
      what: "neither lead nor cadmium is given",
      expected: "what was found of one or both, under lead and cadmium",
      fix: 'write it like lead: "0.42 mg/L"',
    });
  return ok({
    ware: { use: given.ware, depthMm: depth.value, litres: holds.value },
    lead: lead.value,
    cadmium: cadmium.value,
    source: given.source,
  });
}

function amountOf(given: string | undefined, where: string): Result<LeachAmount | null> {
  return given === undefined ? ok(null) : parseLeachAmount(given, { where });
}
