import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BODIES, distinctBodies } from "../../../src/core/ware/bodies.ts";
import {
  BODY_PROPERTIES,
  type BodyProperty,
  bodyAsGiven,
  bodyGiven,
  parseBody,
} from "../../../src/core/ware/ownBody.ts";
import type { Body } from "../../../src/core/ware/Ware.ts";
import { valued } from "../../support/schedules.ts";
import { sampleWare } from "./sampleWare.ts";

const read = (...lines: readonly string[]) =>
  parseBody(["formatVersion: 1", ...lines].join("\n"), "clay.yaml");

const problemsOf = (...lines: readonly string[]) => {
  const made = read(...lines);
  return made.ok ? [] : made.problems;
};

/** Least and most of each property that any body can have, inside what is accepted. */
const SPANS: Readonly<Record<BodyProperty, readonly [number, number]>> = {
  densityKgPerM3: [500, 4000],
  heatCapacityJPerKgK: [500, 2000],
  conductivityWPerMK: [0.1, 20],
  youngGPa: [0.5, 400],
  ruptureMPa: [0.5, 500],
  quartzFraction: [0, 0.5],
  cristobaliteFraction: [0, 0.5],
  matrixExpansionPerK: [1e-7, 2e-5],
};

const anyProperty = ([min, max]: readonly [number, number]) =>
  fc
    .record({
      three: fc.tuple(
        fc.double({ min, max, noNaN: true }),
        fc.double({ min, max, noNaN: true }),
        fc.double({ min, max, noNaN: true }),
      ),
      source: fc.string({ minLength: 1, maxLength: 60 }),
    })
    .map(({ three, source }) => {
      const [low, value, high] = three.toSorted((a, b) => a - b) as [number, number, number];
      return { value, low, high, source };
    });

/** A listed body with any of its properties replaced, and any name. */
const anyBody: fc.Arbitrary<Body> = fc
  .record({
    listed: fc.constantFrom(...BODIES),
    name: fc.string({ minLength: 1, maxLength: 40 }),
    own: fc.record(
      Object.fromEntries(BODY_PROPERTIES.map((name) => [name, anyProperty(SPANS[name])])),
      { requiredKeys: [] },
    ),
  })
  .map(({ listed, name, own }) => ({ ...listed, name, ...own }));

describe("a body of one's own", () => {
  it("takes a number, or a number with its range and source, and the rest from its base", () => {
    const body = valued(
      read(
        "base: stoneware cone 6",
        "name: my grogged stoneware",
        "ruptureMPa: 30",
        'quartzFraction: { value: 0.22, low: 0.15, high: 0.3, source: "own bar tests, 2026" }',
      ),
    );
    expect(body.name).toBe("my grogged stoneware");
    expect(body.quartzFraction).toEqual({
      value: 0.22,
      low: 0.15,
      high: 0.3,
      source: "own bar tests, 2026",
    });
    // The listed 38 (25 to 55) MPa in proportion: 25 × 30/38 = 19.74, 55 × 30/38 = 43.42.
    expect(body.ruptureMPa).toEqual({ value: 30, low: 19.74, high: 43.42, source: "yours" });
    expect(body.youngGPa.value).toBe(45);
  });

  it("keeps a range that was scaled inside what a share of volume can be", () => {
    // 0.1 to 0.3 about 0.2 becomes 0.45 to 1.35 about 0.9.
    expect(valued(read("base: stoneware", "quartzFraction: 0.9")).quartzFraction).toMatchObject({
      low: 0.45,
      high: 1,
    });
  });

  it("is read back with the same numbers, sources and name, for any body", () => {
    fc.assert(
      fc.property(anyBody, (body) => {
        const given = bodyAsGiven(body);
        expect(valued(bodyGiven(given, () => "a test"))).toEqual(body);
      }),
    );
  });

  it("is written as words when it is a body of the list, and only then", () => {
    for (const body of BODIES) {
      expect(bodyAsGiven(body)).toBe(body.name);
      expect(bodyAsGiven({ ...body, name: "mine" })).toEqual({ base: body.name, name: "mine" });
    }
  });

  it("counts once when two pieces are of it", () => {
    const [mug, bowl] = [sampleWare("stoneware", 6), sampleWare("porcelain", 4)];
    const copy = { ...mug, body: structuredClone(mug.body) };
    expect(distinctBodies([mug, bowl, copy]).map(({ name }) => name)).toEqual([
      "stoneware cone 6",
      "porcelain cone 6",
    ]);
  });
});

describe("what is wrong with a body", () => {
  it.each([
    ["ruptureMPa: -5", "ruptureMPa", "ruptureMPa is −5", "ware/property-range", "from 0.5 to 500"],
    ["quartzFraction: 1.2", "quartzFraction", "is 1.2", "ware/property-range", "from 0 to 1"],
    [
      "youngGPa: { value: 40, low: -1 }",
      "youngGPa.low",
      "low of youngGPa is −1",
      "ware/property-range",
      "from 0.5 to 400",
    ],
    [
      "youngGPa: { value: 40, low: 50, high: 60 }",
      "youngGPa",
      "low 50, value 40, high 60",
      "ware/property-order",
      "between its low and its high",
    ],
    [
      "base: stonware cone 6",
      "base",
      '"stonware cone 6" is not a body',
      "ware/unknown-body",
      "stoneware cone 6",
    ],
    ["ruptureMpa: 30", "ruptureMpa", "is not a key", "body/unknown-key", "ruptureMPa"],
    [
      "ruptureMPa: { valeu: 30, value: 30 }",
      "ruptureMPa.valeu",
      '"valeu" is not a key',
      "body/unknown-key",
      "value, low, high, source",
    ],
    ["ruptureMPa: { low: 30 }", "ruptureMPa.value", "value is missing", "body/missing", "a number"],
    ["ruptureMPa: strong", "ruptureMPa", 'is "strong"', "body/wrong-value", "a number or"],
  ])("is placed exactly: %s", (line, place, what, code, expected) => {
    const [problem] = problemsOf(line);
    expect(problem?.where).toBe(`clay.yaml: ${place}, line 2`);
    expect(problem?.what).toContain(what);
    expect(problem?.code).toBe(code);
    expect(problem?.expected).toContain(expected);
    expect(problem?.fix).not.toBe("");
  });

  it.each([
    ["ruptureMpa: 30", "write ruptureMPa"],
    ["strength: 30", "write ruptureMPa"],
    ["base: stonware", 'write "stoneware cone 6"'],
  ])("comes with the nearest word: %s", (line, fix) => {
    expect(problemsOf(line)[0]?.fix).toContain(fix);
  });

  it("is more than 100 % of quartz and cristobalite", () => {
    const problems = problemsOf("quartzFraction: 0.7", "cristobaliteFraction: 0.4");
    expect(problems.map(({ code, what }) => [code, what])).toEqual([
      ["ware/silica-over-100", "quartz 70 % and cristobalite 40 % make 110 %"],
    ]);
  });

  it("is all said at once, the base included", () => {
    expect(problemsOf("base: granite", "ruptureMPa: -5").map(({ code }) => code)).toEqual([
      "ware/unknown-body",
      "ware/property-range",
    ]);
  });
});
