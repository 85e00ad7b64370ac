import { describe, expect, it } from "vitest";
import type { Problem } from "../../../src/core/problem.ts";
import { problemLines } from "../../../src/core/reports/reportText.ts";

const PROBLEM: Problem = {
  code: "glaze/unknown-material",
  what: '"chalk" is not known',
  where: "a.yaml: recipe.chalk, line 3",
  expected: "a mineral",
  fix: "write whiting",
};

describe("a problem at a terminal", () => {
  it("takes three lines where it is short", () => {
    expect(problemLines(PROBLEM)).toEqual([
      'a.yaml: recipe.chalk, line 3: "chalk" is not known',
      "  expected  a mineral",
      "  try       write whiting     (glaze/unknown-material)",
    ]);
  });

  it("is broken between words at 80 columns and hangs under its words", () => {
    const words = Array.from({ length: 40 }, (_, i) => `mineral${i}`).join(", ");
    const lines = problemLines({ ...PROBLEM, what: words, expected: words, fix: words });
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(80);
    const under = (from: string, to: string) =>
      lines.slice(lines.findIndex((line) => line.startsWith(from)) + 1, lines.indexOf(to));
    expect(lines[1]).toMatch(/^ {4}mineral\d/);
    for (const line of under("  expected", lines.find((line) => line.startsWith("  try")) ?? ""))
      expect(line).toMatch(/^ {12}mineral\d/);
    // Nothing is lost, added or put elsewhere.
    expect(lines.join(" ").replaceAll(/\s+/g, " ").trim()).toBe(
      `a.yaml: recipe.chalk, line 3: ${words} expected ${words} try ${words} (glaze/unknown-material)`,
    );
  });

  it("puts the code on a line of its own where it has no room", () => {
    const fix = "x".repeat(60);
    expect(problemLines({ ...PROBLEM, fix }).slice(2)).toEqual([
      `  try       ${fix}`,
      "            (glaze/unknown-material)",
    ]);
  });

  it("never breaks a quotation, an option from its value, or a long name", () => {
    const option = '--scale "120,80 1320,84 50mm"';
    const place = `${"folder/".repeat(14)}a.yaml`;
    const lines = problemLines({
      ...PROBLEM,
      where: place,
      fix: `two places on a ruler, in pixels, and the distance between them: ${option}`,
    });
    expect(lines[0]).toBe(`${place}:`);
    expect(lines.some((line) => line.includes(option))).toBe(true);
  });
});
