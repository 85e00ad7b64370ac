import { describe, expect, it } from "vitest";
import { type GlazeWishes, glazeWorkOf } from "../../../src/core/glaze/glazeWork.ts";
import { problemText } from "../../../src/core/problem.ts";
import { glazeHtml, glazeText } from "../../support/reportTexts.ts";

import { glazeFile } from "../glaze/glazeFiles.ts";

const NOTHING: GlazeWishes = {
  batchG: null,
  slipGPerCm3: null,
  bucketLitres: null,
  dryCoatGPerCm2: null,
};

function work(text: string, wishes: Partial<GlazeWishes> = {}) {
  const result = glazeWorkOf(text, "g.yaml", { ...NOTHING, ...wishes });
  if (!result.ok) throw new Error(result.problems.map(problemText).join("\n"));
  return result.value;
}

const plain = (_: unknown, text: string) => text;
const view = { unit: "C", weights: "g", title: "Test glaze", paint: plain } as const;
const shown = (text: string, wishes: Partial<GlazeWishes> = {}) =>
  glazeText([work(text, wishes)], view);

const RECIPE = glazeFile(
  "recipe: { soda feldspar: 50, whiting: 20, quartz: 30 }",
  "additions: { red iron oxide: 2 }",
);

/** A glaze with every metal that has a caution of its own. */
const POISONOUS = glazeFile(
  "crackle: true",
  "basis: wt %",
  "oxides:",
  "  { SiO2: 40, PbO: 20, CdO: 2, BaO: 10, MnO: 5, Li2O: 5, Cr2O3: 3, CuO: 5, CoO: 2, V2O5: 2, As2O3: 2, F: 2, Na2O: 2 }",
);

describe("a report of a glaze", () => {
  it("keeps to 80 columns, also with everything asked for", () => {
    const everything = {
      batchG: 12_345,
      slipGPerCm3: 1.45,
      bucketLitres: 5,
      dryCoatGPerCm2: 0.1,
    };
    for (const weights of ["g", "oz"] as const)
      for (const line of glazeText([work(RECIPE, everything), work(RECIPE, everything)], {
        ...view,
        weights,
      }).split("\n"))
        expect(line.length, line).toBeLessThanOrEqual(80);
  });

  it("says the same on paper as in the terminal", () => {
    const html = glazeHtml([work(RECIPE)], view).replaceAll(/<[^>]+>/g, " ");
    for (const words of ["soda feldspar", "Second opinions", "Set point", "Take care"])
      expect(html).toContain(words);
  });

  it("shows both readings of 1000 g: base, and all of 102 parts", () => {
    const text = shown(RECIPE, { batchG: 1000 });
    // 1000 · 50 / 102 = 490.2; 1000 · 2 / 102 = 19.6
    expect(text).toMatch(/soda feldspar +50\.00 +49\.02 +500\.0 g +490\.2 g/);
    expect(text).toMatch(/\+ red iron oxide +2\.00 +1\.96 +20\.0 g +19\.6 g/);
    expect(text).toMatch(/together +102\.00 +100\.00 +1020\.0 g +1000\.0 g/);
  });

  it("offers the base scaled to 100 when it is not", () => {
    const text = shown(glazeFile("recipe: { quartz: 60, whiting: 20 }"));
    expect(text).toMatch(/Caution +The base adds up to 80\.00 parts, not 100/);
    expect(text).toMatch(/base as 100/);
    expect(text).toMatch(/quartz +60\.00 +75\.00/);
  });

  it("names the pint in ounces", () => {
    const text = glazeText([work(RECIPE, { slipGPerCm3: 1.5 })], { ...view, weights: "oz" });
    expect(text).toMatch(/imperial pint/);
    expect(text).toMatch(/US pint/);
    // 1.5 · 568.26 / 28.3495 = 30.07; 1.5 · 473.18 / 28.3495 = 25.04
    expect(text).toMatch(/imperial pint \(20 fl oz\) 30\.1 oz/);
    expect(text).toMatch(/US pint \(16 US fl oz\)\s+25\.0 oz/);
  });

  it("in °F has coefficients per °F: a value over 1.8", () => {
    const { sheet } = work(RECIPE);
    const perF = (sheet.glaze.expansion.meanPerK / 1.8) * 1e6;
    const text = glazeText([work(RECIPE)], { ...view, unit: "F" });
    expect(text).toContain(`${perF.toFixed(2)} ± 0.28 · 10⁻⁶/°F`);
  });

  it("says what a fit on a body would need", () => {
    expect(shown(glazeFile("recipe: { quartz: 100 }", "coat: 0.5 mm"))).toMatch(
      /gives no body, wall and glazedSides/,
    );
  });

  it("works the fit out where the file names body, wall, coat and sides", () => {
    const text = shown(`${RECIPE}body: stoneware\nwall: 6 mm\ncoat: 0.5 mm\nglazedSides: both\n`);
    expect(text).toMatch(/0\.5 mm of glaze on 6 mm of wall, both faces glazed/);
  });

  it("carries nothing from a file that could command a terminal or a page", () => {
    const evil = JSON.stringify({
      formatVersion: 1,
      title: "\u001b[31m<script>x</script>",
      basis: "moles",
      oxides: { SiO2: 3, CaO: 1 },
      notes: "\u001b]0;x\u0007<img>",
    });
    const title = "\u001b[31m<script>x</script>";
    expect(glazeText([work(evil)], { ...view, title })).not.toContain("\u001b");
    expect(glazeHtml([work(evil)], { ...view, title })).not.toMatch(/<script>|<img>/);
  });
});

describe("cautions of a glaze", () => {
  const topics = (text: string) => work(text).cautions.map(({ topic }) => topic);

  it("name every metal that hurts, once", () => {
    expect(topics(POISONOUS)).toEqual([
      "crackle and food",
      "lead",
      "cadmium",
      "arsenic, antimony, beryllium, selenium, mercury, thallium",
      "barium",
      "manganese",
      "lithium",
      "chromium",
      "copper",
      "cobalt and nickel",
      "vanadium",
      "fluorine and chlorine",
      "use with food",
      "estimate",
    ]);
  });

  it("name dust where powders are weighed, and no metal that is not there", () => {
    expect(topics(RECIPE)).toEqual(["powders", "silica dust", "use with food", "estimate"]);
  });

  it("name crackle wherever a fit speaks of it, for or against, though nobody asked for it", () => {
    const onBody = "body: stoneware\nwall: 6\ncoat: 0.6 mm\nglazedSides: one\n";
    for (const recipe of [
      "{ nepheline: 60, soda ash: 10, quartz: 30 }",
      "{ talc: 40, quartz: 60 }",
    ])
      expect(topics(glazeFile(`recipe: ${recipe}`) + onBody)).toContain("crackle and food");
  });

  it("give a limit only with its date or its law, and tell to check the law", () => {
    for (const { text } of work(POISONOUS).cautions.filter(({ text }) => /mg\//.test(text)))
      expect(text).toMatch(/(2026|European Communities, 1984).*check current law/s);
  });

  it.each([
    ["a plain recipe", RECIPE],
    ["every poison", POISONOUS],
  ])("never call anything food safe, nor lead free, with %s", (_, file) => {
    const one = work(file);
    const all = [glazeText([one, one], view), glazeHtml([one], view), JSON.stringify(one)].join(
      "\n",
    );
    expect(all).not.toMatch(/food[\s-]*safe|safe for food|safe to (eat|use)|lead[\s-]*free/i);
  });
});
