import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CONE_TABLES, coneIndex, parseCone, wholeCones } from "../../../src/core/cones/cone.ts";
import { problemText } from "../../../src/core/problem.ts";

const at = { series: "self-supporting", where: "--cone" } as const;

describe("parseCone", () => {
  it.each([
    ["05", "05"],
    ["5", "5"],
    [" 5.5 ", "5.5"],
    ["cone 5", "5"],
    ["Cone 05", "05"],
    ["Δ5", "5"],
    ["^6", "6"],
    ["5½", "5.5"],
    ["cone 5 1/2", "5.5"],
    ["05½", "05.5"],
    ["5,5", "5.5"],
  ])("reads %j as cone %s", (text, cone) => {
    expect(parseCone(text, at)).toEqual({ ok: true, value: cone });
  });

  it("reads every name of every table as itself", () => {
    for (const { series, rows } of Object.values(CONE_TABLES))
      for (const { cone } of rows)
        expect(parseCone(cone, { series, where: "cone" })).toEqual({ ok: true, value: cone });
  });

  it("suggests the neighbours of a cone that is not there", () => {
    const result = parseCone("2", { series: "self-supporting-iron-free", where: "a.yaml: cone" });
    expect(result.ok ? "" : result.problems.map(problemText).join("\n")).toBe(
      [
        'a.yaml: cone: "2" is not a cone of the self-supporting-iron-free series',
        "  expected  a cone from 010 to 3, with its leading zero: 05 is not 5",
        '  try       write "1" or "3"     (cones/unknown-cone)',
      ].join("\n"),
    );
  });

  it("never throws, for any text", () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(typeof parseCone(text, at).ok).toBe("boolean");
      }),
    );
  });
});

describe("coneIndex", () => {
  it("puts 01 and 1 next to each other and half cones half-way", () => {
    expect(["022", "05.5", "01", "1", "5.5", "14"].map(coneIndex)).toEqual([
      -22, -5.5, -1, 0, 4.5, 13,
    ]);
  });

  it("refuses what is not a cone", () => {
    expect(() => coneIndex("hot")).toThrow(RangeError);
  });
});

describe("wholeCones", () => {
  it("leaves out the half cones", () => {
    expect(wholeCones("self-supporting")).not.toContain("5.5");
    expect(wholeCones("self-supporting")).toHaveLength(36);
    expect(wholeCones("self-supporting-iron-free")).not.toContain("2");
  });
});
