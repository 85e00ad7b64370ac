import { type LeachLimit, leachLimits } from "../cautions/leachLimits.ts";
import { type Finding, quoted } from "../findings/Finding.ts";
import { basedOn, cited } from "../sources/bibliography.ts";
import type { LeachAmount } from "../units/amounts.ts";
import type { AppenExpansion } from "./expansionModels.ts";
import type { Glaze, LeachTest, ParsedGlaze, Recipe, RecipeLine, SetPoint } from "./Glaze.ts";
import {
  expansionText,
  glazeFinding,
  joined,
  outsideText,
  sharesText,
  shareText,
} from "./glazeWords.ts";
import { entriesOf, type Oxide, type OxideAmounts } from "./oxides.ts";
import type { OutsideRange } from "./setPointModel.ts";

/** One standard deviation of a computed expansion, for the comparison with a measured one [1/K]. */
const COMPUTED_SIGMA_PER_K = 0.5e-6;

/** What is to be said of an expansion: left out, outside the ranges, measured against computed. */
export function expansionFindings(
  glaze: Glaze,
  appen: { readonly computed: AppenExpansion | null; readonly outside: readonly OutsideRange[] },
): readonly Finding[] {
  const { computed, outside } = appen;
  const basis = basedOn("partial expansions of Appen's set", "appen-1974");
  if (computed === null) return [];
  const left = entriesOf(computed.left);
  return [
    ...(left.length === 0
      ? []
      : [
          glazeFinding("note", "left out of the expansion", {
            statement: `Left out of the computed expansion, for want of a factor, in mol %: ${sharesText(left)}.`,
            basis,
          }),
        ]),
    ...(outside.length === 0
      ? []
      : [
          glazeFinding("caution", "outside the range of expansion", {
            statement: `Outside the range of the expansion factors, in mol %: ${outsideText(outside)}. The band is doubled, by our own estimate.`,
            basis,
            advice: "Trust a tile or a dilatometer more than this number.",
          }),
        ]),
    ...measuredFindings(glaze, computed),
  ];
}

function measuredFindings({ expansion }: Glaze, computed: AppenExpansion): readonly Finding[] {
  if (expansion.from !== "measured") return [];
  const difference = computed.meanPerK - expansion.meanPerK;
  const sigma = Math.hypot(expansion.sigmaPerK, COMPUTED_SIGMA_PER_K);
  if (Math.abs(difference) < 2 * sigma) return [];
  return [
    glazeFinding("caution", "measured against computed", {
      statement: `The measured expansion is ${expansionText(Math.abs(difference))} · 10⁻⁶/°C ${difference > 0 ? "lower" : "higher"} than the computed one, more than twice the spread of the two.`,
      basis: `measured: ${expansion.source}; ${basedOn("computed", "appen-1974")}`,
      advice:
        "Check the recipe against what was measured: ranges of temperature, and crystals that do not melt, also part the two.",
    }),
  ];
}

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

/** What is to be said of a set point: outside its model, or assumed. */
export function setPointFindings(
  setPoint: SetPoint,
  { outside }: { readonly outside: readonly OutsideRange[] },
): readonly Finding[] {
  if (setPoint.from === "given") return [];
  const basis = basedOn("statistical model of viscosity", "fluegel-2007");
  if (setPoint.from === "assumed")
    return [
      glazeFinding("caution", "set point", {
        statement: "The model of the set point fails for this composition: a usual one is assumed.",
        basis,
        advice: "Give setPoint with value and how, if you know it.",
      }),
    ];
  if (outside.length === 0) return [];
  return [
    glazeFinding("caution", "outside the range of the set point", {
      statement: `Outside the range of the set point's model, in mol %: ${outsideText(outside)}. Its spread is doubled, by our own estimate.`,
      basis,
    }),
  ];
}

/** Share above which crystals of an oxide, or with it, are likely [mol %]; our own estimate. */
const CRYSTALS_ABOVE: readonly (readonly [Oxide, number])[] = [
  ["SnO2", 0.7],
  ["ZrO2", 1.5],
  ["TiO2", 4],
  ["ZnO", 12],
  ["MgO", 12],
  ["CaO", 22],
  ["Fe2O3", 3],
  ["Cr2O3", 0.3],
  ["P2O5", 2],
];

/** Silica to alumina by moles below which a glaze tends to an alumina matte; from memory. */
const MATTE_BELOW = 5.5;

/** Crystals and mattes, whose expansion glass factors do not know. */
export function crystalFindings(molPercent: OxideAmounts): readonly Finding[] {
  const much = CRYSTALS_ABOVE.filter(([oxide, limit]) => (molPercent[oxide] ?? 0) > limit);
  const alumina = molPercent.Al2O3 ?? 0;
  const ratio = alumina > 0 ? (molPercent.SiO2 ?? 0) / alumina : null;
  const basis = basedOn("limits for a clear glass", "crystals-in-glaze");
  return [
    ...(much.length === 0
      ? []
      : [
          glazeFinding("caution", "crystals", {
            statement: `Crystals are likely with this much of ${joined(much.map(([oxide]) => `${oxide} (${shareText(molPercent[oxide] ?? 0)} mol %)`))}. Factors of glass do not know crystals: the expansion computed can be well off.`,
            basis,
            advice: "Take it for ranking among like glazes only.",
          }),
        ]),
    ...(ratio === null || ratio >= MATTE_BELOW
      ? []
      : [
          glazeFinding("caution", "matte", {
            statement: `Silica to alumina is ${shareText(ratio)} to 1: below about ${MATTE_BELOW} a glaze tends to a matte, with crystals that the factors do not know.`,
            basis,
          }),
        ]),
  ];
}

/** Tests that found more than a law lets ware give off. */
export function leachFindings(tests: readonly LeachTest[]): readonly Finding[] {
  return tests.flatMap((test) => {
    const over = leachSheet(test).filter(({ stands }) => stands === "over");
    if (over.length === 0) return [];
    const words = over.map(
      ({ limit, found }) =>
        `${limit.metal} ${found.value} ${found.unit} over the ${limit.most} of the ${limit.law}`,
    );
    return [
      glazeFinding("warning", "leach test over a limit", {
        statement: `A tested piece gave off too much: ${joined(words)}.`,
        basis: `limits as read in 2026; check current law (${[...new Set(over.map(({ limit }) => cited(limit.source)))].join("; ")})`,
        advice: "Keep this glaze off anything that holds food or drink.",
      }),
    ];
  });
}

/** One amount found beside one limit. */
export interface LeachRow {
  readonly limit: LeachLimit;
  readonly found: LeachAmount;
  /** `open`: found in another unit, or less than an amount that is itself over the limit. */
  readonly stands: "under" | "over" | "open";
}

/** A leach test beside the limits for its ware: rows of every metal that was tested. */
export function leachSheet(test: LeachTest): readonly LeachRow[] {
  return leachLimits(test.ware).flatMap((limit) => {
    const found = test[limit.metal];
    return found === null ? [] : [{ limit, found, stands: standsAt(found, limit) }];
  });
}

function standsAt(found: LeachAmount, limit: LeachLimit): LeachRow["stands"] {
  if (found.unit !== limit.unit) return "open";
  if (found.value <= limit.most) return "under";
  return found.isBelow ? "open" : "over";
}
