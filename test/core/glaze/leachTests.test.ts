import { describe, expect, it } from "vitest";
import { glazeWorkOf } from "../../../src/core/glaze/glazeWork.ts";
import { plainPaint } from "../../../src/core/reports/Block.ts";
import { parseLeachAmount } from "../../../src/core/units/amounts.ts";
import { glazeText } from "../../support/reportTexts.ts";

const NO_WISHES = { batchG: null, slipGPerCm3: null, bucketLitres: null, dryCoatGPerCm2: null };
const file = (test: string) =>
  `formatVersion: 1\ntitle: Tested\nbasis: mol %\noxides: { SiO2: 70, Al2O3: 10, CaO: 12, Na2O: 8 }\nleachTests:\n  - ${test}\n`;
const worked = (test: string) => glazeWorkOf(file(test), "tested.yaml", NO_WISHES);

describe("an amount from a report of a leach test", () => {
  it.each([
    ["3.5 mg/L", { value: 3.5, unit: "mg/L", isBelow: false }],
    ["0.2 ug/mL", { value: 0.2, unit: "mg/L", isBelow: false }],
    ["0.2 ppm", { value: 0.2, unit: "mg/L", isBelow: false }],
    ["<0.02 mg/l", { value: 0.02, unit: "mg/L", isBelow: true }],
    ["0.05mg/dm2", { value: 0.05, unit: "mg/dm²", isBelow: false }],
  ])("%s", (text, value) => {
    expect(parseLeachAmount(text, { where: "lead" })).toEqual({ ok: true, value });
  });

  it.each(["3.5", "-1 mg/L", "some mg/L", "3,5 mg/L", "3.5 mg", ""])("refuses %j", (text) => {
    expect(parseLeachAmount(text, { where: "lead" })).toMatchObject({
      ok: false,
      problems: [{ code: "units/not-a-leach-amount", where: "lead" }],
    });
  });
});

describe("leach tests of a glaze file", () => {
  const cup = "{ ware: cup, depth: 90 mm, holds: 300 mL, lead: 3.5 mg/L, source: a laboratory }";

  it("stand beside the limits, warn where one is passed, and promise nothing", () => {
    const work = worked(cup);
    if (!work.ok) throw new Error(work.problems[0]?.what);
    const text = glazeText([work.value], {
      unit: "C",
      weights: "g",
      title: "Tested",
      paint: plainPaint,
    });
    const flat = text.replaceAll(/\s+/g, " ");
    expect(flat).toContain("gave off too much: lead 3.5 mg/L over the 0.5 of the US");
    expect(flat).toContain("A tested piece speaks for itself only");
    expect(flat).toContain("check current law");
    expect(flat).toContain("A crackled surface is not for food or drink");
    expect(Math.max(...text.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  it.each([
    ["{ ware: cup, depth: 0 mm, holds: 0.3, lead: 1 mg/L, source: x }", "units/not-a-length"],
    ["{ ware: cup, depth: 90, holds: 2 gal, lead: 1 mg/L, source: x }", "units/not-a-volume"],
    ["{ ware: cup, depth: 90, holds: 0.3, lead: much, source: x }", "units/not-a-leach-amount"],
    ["{ ware: cup, depth: 90, holds: 0.3, source: x }", "glaze/leach-nothing"],
    ["{ ware: cup, depth: 90, holds: 0.3, lead: 1 mg/L }", "glaze/missing-key"],
  ])("refuses %s", (test, code) => {
    const work = worked(test);
    expect(work.ok ? [] : work.problems.map((problem) => problem.code)).toContain(code);
  });
});
