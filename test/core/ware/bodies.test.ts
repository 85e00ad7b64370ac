import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { problemText } from "../../../src/core/problem.ts";
import { BODIES, bodyNamed } from "../../../src/core/ware/bodies.ts";
import { type GivenBody, userBody } from "../../../src/core/ware/ownBody.ts";

const nameOf = (words: string) => {
  const found = bodyNamed(words, "ware.yaml: body");
  return found.ok ? found.value.name : found.problems.map(problemText).join("\n");
};

const placeOf = (start: string) => (inside: readonly string[]) => [start, ...inside].join(".");

const codesOf = (given: GivenBody) => {
  const made = userBody(given, placeOf("ware.yaml: body"));
  return made.ok ? [] : made.problems.map(({ code }) => code);
};

describe("bodyNamed", () => {
  it.each([
    ["stoneware", "stoneware cone 6"],
    ["Porcelain", "porcelain cone 6"],
    ["Stoneware, cone 6", "stoneware cone 6"],
    ["porcelain 10", "porcelain cone 10"],
    ["Δ10 stoneware", "stoneware cone 10"],
    ["stoneware ^5", "stoneware cone 6"],
    ["earthenware 06", "earthenware cone 04"],
    ["terracotta", "earthenware cone 04"],
    ["cristobalitic stoneware cone 10", "stoneware cone 10 cristobalitic"],
    ["unknown", "unknown body"],
  ])("reads %s as %s", (words, name) => {
    expect(nameOf(words)).toBe(name);
  });

  it("reads back the name of every listed body", () => {
    for (const { name } of BODIES) expect(nameOf(name)).toBe(name);
  });

  it("suggests the nearest for a mistyped word", () => {
    expect(nameOf("porclain")).toMatchInlineSnapshot(`
      "ware.yaml: body: "porclain" is not a body of the list
        expected  one of earthenware cone 04, stoneware cone 6, porcelain cone 6, stoneware cone 10, stoneware cone 10 cristobalitic, porcelain cone 10, unknown body
        try       write "porcelain cone 6" or "porcelain cone 10"     (ware/unknown-body)"
    `);
  });

  it.each([
    "stoneware cone 04",
    "earthenware 6",
    "stoneware porcelain",
    "stoneware 6 10",
    "raku",
    "",
  ])("does not guess at %j", (words) => {
    expect(nameOf(words)).toContain("ware/unknown-body");
  });
});

describe("BODIES", () => {
  it("has every value between its low and its high, with a source", () => {
    for (const { name, ...properties } of BODIES)
      for (const [property, { value, low, high, source }] of Object.entries(properties)) {
        expect([low <= value, value <= high, source !== ""], `${name}: ${property}`).toEqual([
          true,
          true,
          true,
        ]);
      }
  });
});

describe("userBody", () => {
  it("replaces what is given, keeps the relative spread, and says that it is yours", () => {
    const made = userBody({ base: "stoneware", ruptureMPa: 19 }, placeOf("x"));
    if (!made.ok) throw new Error("refused");
    expect(made.value.ruptureMPa).toEqual({ value: 19, low: 12.5, high: 27.5, source: "yours" });
    expect(made.value.youngGPa.value).toBe(45);
    expect(made.value.name).toBe("stoneware cone 6, altered");
  });

  it("starts from the unknown body when nothing is said", () => {
    const made = userBody({}, placeOf("x"));
    expect(made.ok && made.value.name).toBe("unknown body");
  });

  it("refuses a negative strength, a wrong order, and more than 100 % of silica, all at once", () => {
    expect(
      codesOf({
        ruptureMPa: -5,
        youngGPa: { value: 50, low: 60, high: 70 },
        quartzFraction: 0.7,
        cristobaliteFraction: 0.4,
      }),
    ).toEqual(["ware/property-order", "ware/property-range", "ware/silica-over-100"]);
  });

  it("says what is wrong with a strength", () => {
    const made = userBody({ ruptureMPa: -5 }, placeOf("ware.yaml: body"));
    expect(made.ok ? "" : made.problems.map(problemText).join("\n")).toMatchInlineSnapshot(`
      "ware.yaml: body.ruptureMPa: ruptureMPa is −5
        expected  a number from 0.5 to 500 MPa
        try       give it in this unit, or leave it out to take that of the base body     (ware/property-range)"
    `);
  });

  it("takes or refuses, and never throws, for any strength", () => {
    fc.assert(
      fc.property(fc.double(), (ruptureMPa) => {
        const refused = codesOf({ ruptureMPa }).length > 0;
        expect(refused).toBe(!(ruptureMPa >= 0.5 && ruptureMPa <= 500));
      }),
    );
  });
});
