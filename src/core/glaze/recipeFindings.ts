import type { Finding } from "../findings/Finding.ts";
import { quoted } from "../findings/findingText.ts";
import { basedOn } from "../sources/basedOn.ts";
import { glazeFinding } from "./glazeFinding.ts";
import { joined } from "./glazeWords.ts";
import type { ParsedGlaze } from "./ParsedGlaze.ts";
import type { Recipe, RecipeLine } from "./Recipe.ts";

/** How far the base may be from 100 parts before that is said. */
const BASE_TOLERANCE = 0.5;

/** Built-in salts that dissolve in the water of a glaze. */
const SOLUBLE: ReadonlySet<string> = new Set([
  "borax",
  "boric acid",
  "soda ash",
  "pearl ash",
  "lithium carbonate",
]);

/** What is to be said of a recipe: its sum, ideal minerals, soluble salts, and how it was read. */
export function recipeFindings({ givenAs, remarks }: ParsedGlaze): readonly Finding[] {
  return [
    ...(givenAs.kind === "recipe" ? ofRecipe(givenAs.recipe) : ofSum(givenAs)),
    ...(remarks.length === 0
      ? []
      : [
          glazeFinding("note", "how the file was read", {
            statement: remarks.map((remark) => `${quoted(remark)}.`).join(" "),
            basis: "",
          }),
        ]),
  ];
}

function ofSum(given: { readonly basis: string; readonly sum: number }): readonly Finding[] {
  if (given.basis === "moles" || Math.abs(given.sum - 100) < 0.05) return [];
  return [
    glazeFinding("note", "sum", {
      statement: `The oxides add up to ${given.sum.toFixed(2)} ${given.basis} and were scaled to 100.`,
      basis: "",
    }),
  ];
}

function ofRecipe(recipe: Recipe): readonly Finding[] {
  const sum = recipe.base.reduce((total, { parts }) => total + parts, 0);
  const lines = [...recipe.base, ...recipe.additions];
  const ideal = lines.filter(({ material }) => material.formula !== null);
  const soluble = lines.filter(({ material }) => SOLUBLE.has(material.name));
  return [
    ...(Math.abs(sum - 100) <= BASE_TOLERANCE ? [] : [sumFinding(sum, recipe.additions)]),
    ...(ideal.length === 0
      ? []
      : [
          glazeFinding("note", "ideal minerals", {
            statement: `${ideal.length === lines.length ? "All" : "Some"} materials are ideal minerals: ${quoted(joined(ideal.map(({ name }) => name)))}. What you buy differs; feldspars hold both alkalis, clays hold quartz and some alkali.`,
            basis: basedOn("ideal formulas", "mineral-formulas"),
            advice: "Put your suppliers' analyses under materials.",
          }),
        ]),
    ...(soluble.length === 0
      ? []
      : [
          glazeFinding("note", "soluble salts", {
            statement: `Some of the recipe dissolves in the water of the glaze and moves with it, so the coat may not be what the recipe says: ${quoted(joined(soluble.map(({ name }) => name)))}.`,
            basis: basedOn("common knowledge of salts", "batch-practice"),
          }),
        ]),
  ];
}

function sumFinding(sum: number, additions: readonly RecipeLine[]): Finding {
  return glazeFinding("caution", "base of the recipe", {
    statement: `The base adds up to ${sum.toFixed(2)} parts, not 100${additions.length === 0 ? "" : ", so additions over 100 can be read in two ways"}.`,
    basis: basedOn("a base is written for 100 parts", "batch-practice"),
    advice:
      "The batch sheet below shows it scaled to 100; check first that no line is missing or mistyped.",
  });
}
