import { describe, expect, it } from "vitest";
import { compareGlazes, workOutGlaze } from "../../../src/core/glaze/glazeSheet.ts";
import { glazeFile, parsed, workedOut } from "./glazeFiles.ts";

const topicsOf = (...lines: readonly string[]) =>
  workedOut(glazeFile(...lines)).findings.map(({ topic, severity }) => `${severity}: ${topic}`);
const textOf = (topic: string, ...lines: readonly string[]) =>
  workedOut(glazeFile(...lines)).findings.find((finding) => finding.topic === topic)?.statement;

/** A clear lime glaze inside every range. */
const CLEAR = ["basis: moles", "oxides: { K2O: 0.3, CaO: 0.7, Al2O3: 0.5, SiO2: 3.5 }"];

describe("a clear glaze inside every range", () => {
  it("has nothing to be said", () => {
    expect(topicsOf(...CLEAR)).toEqual([]);
  });

  it("has a band of 0.5, and 0.2 among relatives, in millionths", () => {
    const { expansion } = workedOut(glazeFile(...CLEAR)).glaze;
    expect(expansion).toMatchObject({
      from: "computed",
      sigmaPerK: 0.5e-6,
      relativeSigmaPerK: 0.2e-6,
      fromC: 20,
      toC: 400,
    });
  });

  it("sets 20 K below 10^12 Pa·s, its spread that of step and model: √(20² + 13²) = 24 K", () => {
    const { glaze, stiff } = workedOut(glazeFile(...CLEAR));
    expect(glaze.setPoint.valueC).toBeCloseTo(stiff.tempC - 20, 9);
    expect(glaze.setPoint.sigmaK).toBeCloseTo(23.85, 2);
  });
});

describe("what is to be said of a glaze", () => {
  it("names lead as a warning", () => {
    expect(topicsOf("basis: wt %", "oxides: { PbO: 45, SiO2: 45, K2O: 10 }")).toContain(
      "warning: poisonous metals",
    );
  });

  it("names what lies outside the range of expansion, and doubles the band", () => {
    const lines = ["basis: mol %", "oxides: { CaO: 60, SiO2: 40 }"];
    expect(textOf("outside the range of expansion", ...lines)).toContain(
      "SiO2 40.0 (45 to 100) and CaO 60.0 (0 to 25)",
    );
    const text = textOf("outside the range of expansion", ...lines);
    expect(text).toMatch(/band is doubled/);
    expect(workedOut(glazeFile(...lines)).glaze.expansion.sigmaPerK).toBe(1e-6);
  });

  it("warns of alkalis above 25 mol %, and not at 25", () => {
    const text = textOf("much alkali", "basis: mol %", "oxides: { Na2O: 15, K2O: 11, SiO2: 74 }");
    expect(text).toMatch(/26\.0 mol %.*worth little/);
    expect(topicsOf("basis: mol %", "oxides: { Na2O: 15, K2O: 10, SiO2: 75 }")).not.toContain(
      "caution: much alkali",
    );
  });

  it("counts what the expansion leaves out", () => {
    const text = textOf(
      "left out of the expansion",
      "basis: mol %",
      "oxides: { CaO: 20, SiO2: 79.5, SO3: 0.5 }",
    );
    expect(text).toContain("SO3 0.50");
  });

  it("warns of crystals with an opacifier, and of an alumina matte", () => {
    const opaque = "oxides: { K2O: 0.3, CaO: 0.7, Al2O3: 0.5, SiO2: 3.5, SnO2: 0.2 }";
    expect(topicsOf("basis: moles", opaque)).toContain("caution: crystals");
    const matte = "oxides: { K2O: 0.3, CaO: 0.7, Al2O3: 0.5, SiO2: 2 }";
    expect(topicsOf("basis: moles", matte)).toContain("caution: matte");
  });

  it("names what the model of the set point does not know", () => {
    const text = textOf(
      "outside the range of the set point",
      "basis: mol %",
      "oxides: { CaO: 20, SiO2: 74, ZnO: 5, MnO: 1 }",
    );
    expect(text).toContain("ZnO 5.0 (0 to 2.8) and MnO 1.0 (not known to it)");
  });

  it("says a base that is not 100 ± 0.5, and not one of 100.4", () => {
    const text = textOf("base of the recipe", "recipe: { quartz: 60, whiting: 39 }");
    expect(text).toContain("99.00 parts");
    expect(topicsOf("recipe: { quartz: 60, whiting: 40.4 }").join()).not.toContain("base");
  });

  it("says which salts dissolve, and which materials are ideal", () => {
    const lines = ["recipe: { borax: 30, quartz: 70 }"];
    expect(textOf("soluble salts", ...lines)).toMatch(/: borax\.$/);
    expect(textOf("ideal minerals", ...lines)).toContain("borax and quartz");
  });

  it("says that oxides of 99 were scaled", () => {
    expect(textOf("sum", "basis: wt %", "oxides: { SiO2: 60, CaO: 39 }")).toContain("99.00 wt %");
  });

  it("says which materials stand in the file unused", () => {
    const text = textOf(
      "how the file was read",
      "recipe: { quartz: 100 }",
      "materials: { clay: { oxides: { SiO2: 60, Al2O3: 40 }, source: x } }",
    );
    expect(text).toContain("clay stands under materials and is not in the recipe");
  });
});

describe("a measured expansion", () => {
  const measured = (value: string) =>
    workedOut(
      glazeFile(...CLEAR, `expansion: { value: ${value}, to: 500, how: "dilatometer, rod" }`),
    );

  it("rules over the computed one, with half of ± 5 % as its spread", () => {
    const { glaze, computed } = measured("7.0e-6");
    expect(glaze.expansion).toMatchObject({ from: "measured", meanPerK: 7e-6, toC: 500 });
    expect(glaze.expansion.sigmaPerK).toBeCloseTo(0.175e-6, 12);
    expect(computed?.meanPerK).not.toBe(7e-6);
  });

  it("far from the computed one is said", () => {
    expect(measured("10e-6").findings.map(({ topic }) => topic)).toContain(
      "measured against computed",
    );
    expect(measured("7.0e-6").findings).toEqual([]);
  });

  it("makes a composition without any factor workable, which is refused without it", () => {
    const odd = ["basis: moles", "oxides: { Cl: 1 }"];
    expect(workOutGlaze(parsed(glazeFile(...odd)), "g.yaml")).toMatchObject({
      ok: false,
      problems: [{ code: "glaze/no-expansion", where: "g.yaml" }],
    });
    const given = workedOut(glazeFile(...odd, "expansion: { value: 9e-6, to: 400, how: test }"));
    expect(given.glaze.expansion.meanPerK).toBe(9e-6);
  });
});

describe("properties of one's own", () => {
  it("rule over the usual ones", () => {
    const { glaze } = workedOut(
      glazeFile(
        ...CLEAR,
        "setPoint: { value: 1112 F, plusMinus: 15, how: beam }",
        "youngGPa: 70",
        "firedDensity: { value: 2.6, low: 2.5, high: 2.7 }",
      ),
    );
    expect(glaze.setPoint).toMatchObject({ valueC: 600, sigmaK: 15, from: "given" });
    expect(glaze.youngGPa).toMatchObject({ value: 70, source: "yours" });
    expect(glaze.firedDensityKgPerM3).toMatchObject({ value: 2600, low: 2500, high: 2700 });
  });

  it("left out are the usual ones, with where they come from", () => {
    const { glaze } = workedOut(glazeFile(...CLEAR));
    expect(glaze.toughnessMPaRootM).toMatchObject({ value: 0.7, low: 0.6, high: 0.8 });
    expect(glaze.youngGPa.source).toContain("from memory");
  });
});

describe("a set point where the model fails", () => {
  it("is assumed, and said to be", () => {
    const sheet = workedOut(glazeFile("basis: mol %", "oxides: { Al2O3: 90, SiO2: 10 }"));
    expect(sheet.glaze.setPoint.from).toBe("assumed");
    expect(sheet.findings.map(({ topic }) => topic)).toContain("set point");
  });
});

describe("glazes set against the first", () => {
  const glaze = (silica: number, ...more: readonly string[]) =>
    workedOut(
      glazeFile(
        "basis: moles",
        `oxides: { K2O: 0.3, CaO: 0.7, Al2O3: 0.5, SiO2: ${silica} }`,
        ...more,
      ),
    ).glaze;

  it("are close relatives with ± 0.2 when no oxide differs by more than 5 mol %", () => {
    const [near] = compareGlazes([glaze(3.5), glaze(3.8)]);
    expect(near).toMatchObject({ areRelatives: true, isMixed: false, sigmaPerK: 0.2e-6 });
    expect(near?.differencePerK).toBeLessThan(0);
  });

  it("are strangers with ± 0.5 · √2 when one does", () => {
    const [far] = compareGlazes([glaze(3.5), glaze(6)]);
    expect(far?.areRelatives).toBe(false);
    expect(far?.sigmaPerK).toBeCloseTo(0.7071e-6, 9);
  });

  it("are mixed when one was measured", () => {
    const [mixed] = compareGlazes([
      glaze(3.5),
      glaze(3.5, "expansion: { value: 7e-6, to: 500, how: test }"),
    ]);
    expect(mixed?.isMixed).toBe(true);
  });
});
