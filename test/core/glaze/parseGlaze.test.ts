import { describe, expect, it } from "vitest";
import { z } from "zod";
import { GlazeFile } from "../../../src/core/glaze/glazeFormat.ts";
import { glazeFile, parsed, problemsOf } from "./glazeFiles.ts";

const RECIPE = "recipe: { quartz: 60, whiting: 40 }";

describe("a glaze file", () => {
  it("is read from JSON as from YAML", () => {
    const json = JSON.stringify({
      formatVersion: 1,
      title: "Test glaze",
      recipe: { quartz: 60, whiting: 40 },
    });
    expect(parsed(json)).toEqual(parsed(glazeFile(RECIPE)));
  });

  it("reads body, wall, coat and what was measured of cracks", () => {
    const { ware } = parsed(
      glazeFile(
        RECIPE,
        "body: { base: porcelain, youngGPa: 60 }",
        "wall: 1/4 in",
        "coat: 0.4 mm",
        "glazedSides: one",
        "cracks:",
        "  cracked: true",
        "  spacing: { mean: 6, low: 5, high: 7, counted: along lines }",
        "  pings: [{ coat: 0.4 mm, at: 212 F, plusMinus: 10, kiln: shut }]",
      ),
    );
    expect(ware).toMatchObject({
      wallMm: 6.35,
      coatMm: 0.4,
      glazing: "one face, wall held",
      cracks: {
        cracked: true,
        spacing: { meanMm: 6, lowMm: 5, highMm: 7, counted: "along lines" },
        pings: [{ coatMm: 0.4, onsetC: 100, sigmaK: 10, kiln: "shut" }],
      },
    });
    expect(ware.body?.youngGPa.value).toBe(60);
  });

  it("has a JSON Schema with a description at every key", () => {
    const schema = z.toJSONSchema(GlazeFile, { io: "input" });
    for (const [key, part] of Object.entries(schema.properties ?? {}))
      expect(part, key).toHaveProperty("description");
  });
});

describe("a glaze file that cannot be right", () => {
  it.each([
    ["glaze/missing-key", "notes: hello", "formatVersion: 1\nnotes: hello\n", /title is missing/],
    ["glaze/no-composition", "", glazeFile("notes: nothing"), /neither oxides nor a recipe/],
    [
      "glaze/two-compositions",
      "",
      glazeFile(RECIPE, "basis: wt %", "oxides: { SiO2: 100 }"),
      /oxides and a recipe/,
    ],
    ["glaze/missing-basis", "", glazeFile("oxides: { SiO2: 100 }"), /"mol %" for moles/],
    [
      "glaze/additions-without-recipe",
      "",
      glazeFile("basis: wt %", "oxides: { SiO2: 100 }", "additions: { rutile: 1 }"),
      /additions to oxides/,
    ],
    [
      "glaze/sum",
      "",
      glazeFile("basis: wt %", "oxides: { SiO2: 60, CaO: 30 }"),
      /90\.00 wt %, which is 10\.00 short of 100/,
    ],
    [
      "glaze/sum",
      "",
      glazeFile("basis: mol %", "oxides: { SiO2: 3.5, CaO: 1 }"),
      /write basis: moles/,
    ],
    [
      "glaze/unknown-oxide",
      "",
      glazeFile("basis: wt %", "oxides: { Si02: 60, CaO: 40 }"),
      /write SiO2, if you mean it/,
    ],
    [
      "glaze/oxide-twice",
      "",
      glazeFile("basis: wt %", "oxides: { SiO2: 60, sio2: 40 }"),
      /the same oxide/,
    ],
    ["glaze/unknown-material", "", glazeFile("recipe: { quarz: 100 }"), /write quartz/],
    ["glaze/nothing-stays", "", glazeFile("basis: wt %", "oxides: { SiO2: 0 }"), /nothing stays/],
    [
      "glaze/loss",
      "",
      glazeFile(
        "recipe: { gum: 100 }",
        "materials: { gum: { oxides: { Na2O: 1 }, loi: 100, source: x } }",
      ),
      /below 100 per cent/,
    ],
    [
      "glaze/analysis-sum",
      "",
      glazeFile(
        "recipe: { clay: 100 }",
        "materials: { clay: { oxides: { SiO2: 60, Al2O3: 40 }, loi: 12, source: x } }",
      ),
      /add up to 100\.0 %, and with the loss on ignition to 112\.0 %[\s\S]*write basis: calcined/,
    ],
    ["glaze/wrong-value", "", glazeFile("recipe: { quartz: -5 }"), /-5|−5/],
    ["glaze/wrong-value", "", glazeFile("recipe: { quartz: 0 }"), /more than 0/],
    [
      "glaze/wrong-value",
      "",
      glazeFile("basis: wt %", "oxides: { SiO2: -2 }"),
      /a number, at least 0/,
    ],
    ["glaze/unknown-key", "", glazeFile(RECIPE, "cte: 7"), /write expansion instead/],
    [
      "glaze/unknown-key",
      "",
      glazeFile("recipe: { quartz: { parts: 3, calcinated: true } }"),
      /one of parts, calcined[\s\S]*write calcined instead/,
    ],
    [
      "glaze/unknown-key",
      "",
      glazeFile(RECIPE, "body: { base: stoneware, youngGpa: 4 }"),
      /write youngGPa instead/,
    ],
    [
      "glaze/unknown-key",
      "",
      glazeFile(RECIPE, "materials: { clay: { oxides: { SiO2: 100 }, lio: 3, source: x } }"),
      /write loi instead/,
    ],
    [
      "glaze/expansion",
      "",
      glazeFile(RECIPE, "expansion: { value: 7.2, to: 500, how: dilatometer }"),
      /write 7\.2e-6/,
    ],
    [
      "glaze/expansion-range",
      "",
      glazeFile(RECIPE, "expansion: { value: 7.2e-6, to: 10, how: dilatometer }"),
      /upper end above/,
    ],
    ["glaze/set-point", "", glazeFile(RECIPE, "setPoint: { value: 1186, how: x }"), /firing/],
    ["glaze/property-range", "", glazeFile(RECIPE, "youngGPa: 6500"), /20 to 150/],
    [
      "glaze/property-order",
      "",
      glazeFile(RECIPE, "toughness: { value: 0.7, low: 0.8, high: 0.9 }"),
      /three in order/,
    ],
    ["glaze/too-thick", "", glazeFile(RECIPE, "coat: 40 mm"), /at most 10 mm/],
    [
      "glaze/coat-without-unit",
      "",
      glazeFile(RECIPE, "coat: 0.4"),
      /write "0\.4 mm", if millimetres are meant/,
    ],
    [
      "glaze/coat-without-unit",
      "",
      glazeFile(RECIPE, "cracks: { pings: [{ coat: 1/64, at: 200 C, plusMinus: 9, kiln: shut }] }"),
      /write "1\/64 mm"/,
    ],
    ["units/not-a-length", "", glazeFile(RECIPE, "coat: -0.3 mm"), /"-0\.3 mm" is no more than 0/],
    ["units/not-a-length", "", glazeFile(RECIPE, "wall: 0"), /0 is no more than 0/],
    ["ware/unknown-body", "", glazeFile(RECIPE, "body: marble"), /not a body/],
    [
      "glaze/uncracked-with-spacing",
      "",
      glazeFile(
        RECIPE,
        "cracks: { cracked: false, spacing: { mean: 6, low: 5, high: 7, counted: pitch } }",
      ),
      /take the spacing out/,
    ],
    [
      "glaze/spacing-order",
      "",
      glazeFile(RECIPE, "cracks: { spacing: { mean: 9, low: 5, high: 7, counted: pitch } }"),
      /three in order/,
    ],
    ["units/not-a-length", "", glazeFile(RECIPE, "wall: thin"), /a length/],
  ])("is refused as %s", (code, _, text, says) => {
    const problems = problemsOf(text);
    expect(problems).toContain(`(${code})`);
    expect(problems).toMatch(says);
  });

  it("has all its problems told at once, each with its line", () => {
    const problems = problemsOf(glazeFile("recipe: { quarz: 60, wite: 40 }", "coat: 99 mm"));
    expect(problems.match(/\(\w+\/[\w-]+\)/g)).toEqual([
      "(glaze/unknown-material)",
      "(glaze/unknown-material)",
      "(glaze/too-thick)",
    ]);
    expect(problems).toContain("g.yaml: coat, line 4");
  });

  it("lists the materials once, and finds a mineral inside a longer name, but never near a poison", () => {
    const problems = problemsOf(
      glazeFile("recipe: { nepheline syenite: 40, moonstone: 40, uranium quartz: 20 }"),
    );
    expect(problems.match(/colemanite/g)).toHaveLength(1);
    expect(problems).toContain("write nepheline, if you mean it");
    expect(problems).not.toContain("write quartz");
  });
});
