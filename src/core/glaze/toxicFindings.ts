import type { Finding } from "../findings/Finding.ts";
import { basedOn } from "../sources/bibliography.ts";
import { atomsIn, elementName } from "./elements.ts";
import type { ParsedGlaze } from "./Glaze.ts";
import { glazeFinding, joined, shareText } from "./glazeWords.ts";
import { entriesOf, type Oxide, type OxideAmounts, scaledTo, weightsOf } from "./oxides.ts";

/** Poisons for which a studio glaze is the wrong place in any amount that anybody wrote down. */
const NEVER: readonly Oxide[] = [
  "PbO",
  "CdO",
  "As2O3",
  "Sb2O3",
  "BeO",
  "HgO",
  "Tl2O",
  "SeO2",
  "U3O8",
  "ThO2",
];

/**
 * What the fired glaze may hold before it is said [% of weight]. Our own estimates, from memory of
 * what potters keep to; no limit of any law, and a glaze below may still give off the metal.
 */
const ABOVE_WEIGHT_PERCENT: Readonly<Partial<Record<Oxide, number>>> = {
  BaO: 5,
  MnO: 3,
  CuO: 3,
  CoO: 2,
  NiO: 2,
  Cr2O3: 1,
  V2O5: 1,
  Li2O: 2,
};

/** Below this an impurity of clay and feldspar is not meant [% of weight]. */
const TRACE_PERCENT = 0.01;

const OWN_AMOUNTS =
  "amounts by our own estimate, from memory of what potters keep to; none is a limit of any law";

/** Metals for which a studio glaze is the wrong place, or too much of them; chromates in its recipe; boron. */
export function toxicFindings(parsed: ParsedGlaze): readonly Finding[] {
  const molPercent = scaledTo(100, parsed.moles);
  const wtPercent = scaledTo(100, weightsOf(parsed.moles));
  return [
    ...poisons(wtPercent, molPercent),
    ...chromates(parsed),
    ...tooMuch(wtPercent),
    ...boron(wtPercent),
  ];
}

function poisons(wtPercent: OxideAmounts, molPercent: OxideAmounts): readonly Finding[] {
  const held = NEVER.filter((oxide) => (wtPercent[oxide] ?? 0) > TRACE_PERCENT);
  if (held.length === 0) return [];
  const named = held.map(
    (oxide) => `${metalOf(oxide)} (${shareText(molPercent[oxide] ?? 0)} mol %)`,
  );
  const radioactive = held.some((oxide) => oxide === "U3O8" || oxide === "ThO2");
  return [
    glazeFinding("warning", "poisonous metals", {
      statement: `The glaze holds ${joined(named)}.${radioactive ? " Uranium and thorium are radioactive as well as poisonous." : ""}`,
      basis: basedOn(
        `metals that poison in small amounts, spoken of above ${TRACE_PERCENT} % of the weight; the law limits the release of lead and cadmium from ware`,
        "eu-84-500",
      ),
      advice:
        "Do without. A piece that has it is for nobody to eat or drink from; read the cautions below before the powder is opened.",
    }),
  ];
}

/** Chromium as chromate: what it does to whoever weighs it is not seen in the fired oxide. */
function chromates(parsed: ParsedGlaze): readonly Finding[] {
  const names = chromatesIn(parsed);
  if (names.length === 0) return [];
  return [
    glazeFinding("warning", "chromates", {
      statement: `${joined(names)}: chromium in its six-valued form, which causes cancer when breathed and burns skin; many of these salts dissolve in water.`,
      basis: "chemistry textbooks, from memory",
      advice:
        "Do without: green chromium oxide gives the same colour. What is left of it is hazardous waste under your local rules.",
    }),
  ];
}

/** Materials of a recipe, or oxides of a file, that hold chromium as chromate. */
export function chromatesIn({ givenAs, remarks }: ParsedGlaze): readonly string[] {
  if (givenAs.kind === "oxides")
    return remarks.some((each) => each.startsWith("CrO3")) ? ["CrO3"] : [];
  return [...givenAs.recipe.base, ...givenAs.recipe.additions].flatMap(({ name, material }) =>
    isChromate(material.formula) || /\b(?:di|bi)?chromate|\bchromic a/i.test(name) ? [name] : [],
  );
}

/** Chromium with so much oxygen that it is six-valued; chromite is not. */
function isChromate(formula: string | null): boolean {
  if (formula === null) return false;
  const atoms = atomsIn(formula.split("·")[0]!);
  return (atoms.get("O") ?? 0) > 2.5 * (atoms.get("Cr") ?? Number.POSITIVE_INFINITY);
}

function tooMuch(wtPercent: OxideAmounts): readonly Finding[] {
  const over = entriesOf(wtPercent).flatMap(([oxide, percent]) => {
    const most = ABOVE_WEIGHT_PERCENT[oxide];
    return most !== undefined && percent > most
      ? [`${metalOf(oxide)} (${oxide} ${shareText(percent)} % of the weight, over ${most} %)`]
      : [];
  });
  if (over.length === 0) return [];
  return [
    glazeFinding("caution", "much of a harmful metal", {
      statement: `The glaze holds much ${joined(over)}: so much readily leaves a glaze into food, and its powder and fume harm whoever works with it.`,
      basis: OWN_AMOUNTS,
      advice:
        "Keep it off anything that holds food or drink until a laboratory has tested fired pieces for this metal.",
    }),
  ];
}

function boron(wtPercent: OxideAmounts): readonly Finding[] {
  const percent = wtPercent.B2O3 ?? 0;
  if (percent < 1) return [];
  return [
    glazeFinding("note", "boron", {
      statement: `The glaze holds boron (B2O3 ${shareText(percent)} % of the weight). Raw borates, borax and boric acid, harm when much of them is breathed or swallowed.`,
      basis: "chemistry textbooks, from memory",
      advice: "Wear a fitted respirator and gloves when you weigh raw borates.",
    }),
  ];
}

function metalOf(oxide: Oxide): string {
  const element = [...atomsIn(oxide).keys()].find((each) => each !== "O");
  return elementName(element ?? oxide);
}
