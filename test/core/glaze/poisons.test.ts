import { describe, expect, it } from "vitest";
import { type GlazeWork, glazeWorkOf } from "../../../src/core/glaze/glazeWork.ts";
import { problemText } from "../../../src/core/problem.ts";
import { valued } from "../../support/schedules.ts";

const WISHES = { batchG: null, slipGPerCm3: null, bucketLitres: null, dryCoatGPerCm2: null };
const HEAD = "formatVersion: 1\ntitle: Test\n";

function worked(text: string): GlazeWork {
  return valued(glazeWorkOf(`${HEAD}${text}`, "glaze.yaml", WISHES));
}

function problems(text: string): string {
  const result = glazeWorkOf(`${HEAD}${text}`, "glaze.yaml", WISHES);
  return result.ok ? "" : result.problems.map(problemText).join("\n");
}

/** Severity and sentence of every finding. */
function said(text: string): string {
  const { sheet } = worked(text);
  return sheet.findings.map(({ severity, statement }) => `${severity}: ${statement}`).join("\n");
}

const byOxide = (oxide: string, percent: number) =>
  said(
    `basis: wt %\noxides: { SiO2: ${66 - percent}, Al2O3: 14, CaO: 14, K2O: 6, ${oxide}: ${percent} }`,
  );
const byName = (name: string, parts: number) =>
  said(
    `recipe: { potash feldspar: 50, quartz: 30, whiting: 20 }\nadditions: { ${name}: ${parts} }`,
  );

describe.each([
  [
    "selenium",
    ["SeO2", "SeO3", "SeO₂"],
    ["selenium dioxide", "selenium", "sodium selenite", "CdSe", "zinc selenite"],
  ],
  ["mercury", ["HgO", "Hg2O"], ["mercury oxide", "cinnabar", "vermilion", "HgS"]],
  ["thallium", ["Tl2O", "Tl2O3"], ["thallium oxide", "thallium carbonate", "thallium sulfate"]],
  [
    "uranium",
    ["U3O8", "UO2", "uo3"],
    ["uranium oxide", "Uranium Oxide", "yellowcake", "sodium uranate", "uranyl nitrate", "U3O8"],
  ],
  ["cadmium", ["CdO"], ["cadmium oxide", "cadmium sulphide", "cadmium sulfide", "cadmium red"]],
  [
    "lead",
    ["PbO", "PbO2", "Pb3O4", "pbo"],
    [
      "red lead",
      "litharge",
      "white lead",
      "lead bisilicate",
      "galena",
      "lead oxide",
      "minium",
      "Pb3O4",
    ],
  ],
  ["arsenic", ["As2O3", "As2O5"], ["white arsenic", "arsenic trioxide", "orpiment"]],
  [
    "antimony",
    ["Sb2O3", "Sb2O5"],
    ["antimony oxide", "sodium antimonate", "naples yellow", "stibnite"],
  ],
  ["beryllium", ["BeO"], ["beryllium oxide", "beryl", "beryllia"]],
] as const)("%s", (metal, oxides, names) => {
  it.each(oxides)("is a warning as %s", (oxide) => {
    expect(byOxide(oxide, 0.5)).toMatch(new RegExp(`warning: The glaze holds .*${metal}`));
  });

  it.each(names)("is a warning as %s", (name) => {
    expect(byName(name, 1)).toMatch(new RegExp(`warning: The glaze holds .*${metal}`));
  });

  it("has a caution of its own", () => {
    const { cautions } = worked(
      `recipe: { potash feldspar: 50, quartz: 30, whiting: 20 }\nadditions: { ${names[0]}: 1 }`,
    );
    expect(cautions.map(({ topic }) => topic).join()).toMatch(new RegExp(metal));
  });
});

describe("chromium in its six-valued form", () => {
  it.each([
    "potassium dichromate",
    "potassium bichromate",
    "barium chromate",
    "lead chromate",
    "K2Cr2O7",
    "chromium trioxide",
  ])("is a warning as %s", (name) => {
    expect(byName(name, 1)).toMatch(/warning: .*: chromium in its six-valued form/);
  });

  it("is one as CrO3", () => {
    expect(byOxide("CrO3", 1)).toMatch(/warning: CrO3: chromium in its six-valued form/);
  });

  it.each(["chromium oxide", "chromite"])("is not in %s", (name) => {
    expect(byName(name, 1)).not.toContain("six-valued");
  });
});

describe.each([
  ["vanadium", "V2O5", "vanadium pentoxide", 0.5, 2],
  ["nickel", "NiO", "black nickel oxide", 1, 4],
  ["cobalt", "CoO", "cobalt oxide", 1, 4],
  ["manganese", "MnO2", "manganese dioxide", 2, 8],
  ["barium", "BaO", "barium carbonate", 3, 20],
  ["lithium", "Li2O", "lithium carbonate", 1, 12],
  ["copper", "CuO", "copper carbonate", 2, 8],
  ["chromium", "Cr2O3", "chromium oxide", 0.5, 3],
] as const)("%s", (metal, oxide, name, little, much) => {
  it("is spoken of above a stated amount, by oxide and by name, with what that rests on", () => {
    const over = new RegExp(`caution: The glaze holds much .*${metal}`);
    expect(byOxide(oxide, much / 1.5)).toMatch(over);
    expect(byName(name, much)).toMatch(over);
    expect(byOxide(oxide, little)).not.toMatch(over);
    expect(byName(name, little)).not.toMatch(over);
  });
});

describe("boron", () => {
  it("is a note only", () => {
    expect(byOxide("B2O3", 10)).toMatch(/note: The glaze holds boron/);
    expect(byName("borax", 20)).not.toMatch(/caution: .*boron|warning: .*boron/);
  });
});

describe("what is not known", () => {
  it.each(["MoO3", "WO3", "Nb2O5", "Er2O3", "Nd2O3", "Pr6O11", "GeO2", "TeO2", "Rb2O", "Ag2O"])(
    "%s is kept, and the model says that it does not know it",
    (oxide) => {
      const { sheet } = worked(
        `basis: wt %\noxides: { SiO2: 60, Al2O3: 14, CaO: 14, K2O: 6, ${oxide}: 6 }`,
      );
      expect(sheet.findings.map(({ statement }) => statement).join(" ")).toMatch(
        /(?:Left out of the computed expansion|not known to it)/,
      );
    },
  );

  it.each([
    ["Si02", /write SiO2/],
    ["Al203", /write Al2O3/],
    ["SeO4", /write SeO2/],
    ["Pb", /write PbO/],
    ["pb", /write PbO/],
    ["CdO3", /write CdO/],
    ["lead oxide", /write PbO/],
    ["Uranium", /write U3O8/],
    ["TlO", /write Tl2O/],
    ["XeO3", /do not leave it out/],
    ["PuO2", /do not leave it out/],
    ["stuff", /do not leave it out/],
  ])("%s is never read as, or offered as, another element's", (oxide, says) => {
    const told = problems(`basis: wt %\noxides: { SiO2: 60, CaO: 38, ${oxide}: 2 }`);
    expect(told).toContain("(glaze/unknown-oxide)");
    expect(told).toMatch(says);
    expect(told).not.toMatch(/or leave it out/);
  });

  it.each(["lead frit", "cadmium inclusion stain", "uranium yellow stain", "selenium red"])(
    "%s is asked for by its analysis, and nothing harmless is offered",
    (name) => {
      const told = problems(`recipe: { quartz: 99, ${name}: 1 }`);
      expect(told).toMatch(/do not leave it out: it names (?:lead|cadmium|uranium|selenium)/);
    },
  );

  it.each([
    ["cadium oxide", "cadmium oxide"],
    ["uraniun oxide", "uranium oxide"],
    ["red leed", "red lead"],
    ["manganese dioxid", "manganese dioxide"],
  ])("%s, mistyped, is offered as %s", (name, meant) => {
    expect(problems(`recipe: { quartz: 99, ${name}: 1 }`)).toContain(`write ${meant}`);
  });
});
