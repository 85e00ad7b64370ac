import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pieceOf } from "../../../src/core/schedule/coolingLimits.ts";
import { parseSchedule, scheduleYaml } from "../../../src/core/schedule/scheduleFile.ts";
import { bodyNamed } from "../../../src/core/ware/bodies.ts";
import type { Property } from "../../../src/core/ware/Ware.ts";
import { schedule, valued } from "../../support/schedules.ts";

const HEAD = "formatVersion: 1\ntitle: t\nunit: C\nsegments: [{ to: 1000, rate: 100 }]\n";
const withWare = (ware: string) => parseSchedule(`${HEAD}ware: ${ware}\n`, "a.yaml");
const problemsOf = (ware: string) => {
  const read = withWare(ware);
  return read.ok ? [] : read.problems.map(({ code, where }) => [code, where]);
};

const anyShare: fc.Arbitrary<Property> = fc
  .record({
    three: fc.array(fc.double({ min: 0, max: 0.5, noNaN: true }), { minLength: 3, maxLength: 3 }),
    source: fc.string({ minLength: 1, maxLength: 60 }),
  })
  .map(({ three, source }) => {
    const [low, value, high] = three.toSorted((a, b) => a - b) as [number, number, number];
    return { value, low, high, source };
  });

const anyWare = fc
  .record({
    name: fc.string({ minLength: 1, maxLength: 40 }),
    quartzFraction: anyShare,
    cristobaliteFraction: fc.option(anyShare, { nil: undefined }),
    shelfMm: fc.option(fc.integer({ min: 1, max: 100 }), { nil: undefined }),
    footGapMm: fc.option(fc.integer({ min: 1, max: 100 }), { nil: undefined }),
    glazedSides: fc.constantFrom(undefined, "none" as const, "one" as const, "both" as const),
  })
  .map(({ name, quartzFraction, cristobaliteFraction, ...geometry }) => ({
    ...schedule().ware,
    ...geometry,
    body: {
      ...valued(bodyNamed("porcelain", "a test")),
      name,
      quartzFraction,
      ...(cristobaliteFraction && { cristobaliteFraction }),
    },
  }));

describe("the ware of a schedule", () => {
  it("comes back from its file the same, for any body and what it stands on", () => {
    fc.assert(
      fc.property(anyWare, (ware) => {
        const text = scheduleYaml(schedule({ ware: ware as ReturnType<typeof schedule>["ware"] }));
        expect(valued(parseSchedule(text, "a.yaml")).ware).toEqual(ware);
      }),
    );
  });

  it("is written with the base and what is different, one property a line", () => {
    const text = scheduleYaml(
      valued(withWare("{ body: { base: stoneware, name: mine, ruptureMPa: 38 }, wall: 6 }")),
    );
    expect(text).toContain(
      [
        "ware:",
        "  body:",
        "    base: stoneware cone 6",
        "    name: mine",
        "    ruptureMPa: { value: 38, low: 25, high: 55, source: yours }",
        "  wall: 6",
        "",
      ].join("\n"),
    );
  });

  it("is written on one line with its words when the body is of the list", () => {
    const text = scheduleYaml(valued(withWare("{ body: stoneware, shelf: 20, footGap: 1 }")));
    expect(text).toContain("ware: { body: stoneware cone 6, shelf: 20, footGap: 1 }\n");
  });

  it("says that the thickest part stands in for wall and base", () => {
    const { ware } = valued(withWare("{ body: stoneware, thickest: 8, widest: 90 }"));
    expect(pieceOf(ware)?.assumed[0]).toBe(
      "wall and base taken to be as thick as the thickest part",
    );
  });

  it("is computed with the shelf and the gap that it names", () => {
    const { ware } = valued(
      withWare("{ body: stoneware, shelf: 1 in, footGap: 0.1, glazedSides: one }"),
    );
    expect(pieceOf(ware)?.ware.geometry).toMatchObject({
      shelfMm: 25.4,
      footGapMm: 0.1,
      glazedSides: "one",
    });
  });

  it.each([
    ["{ body: { ruptureMPa: -5 } }", "body.ruptureMPa", "ware/property-range"],
    ["{ body: { quartzFraction: 1.5 } }", "body.quartzFraction", "ware/property-range"],
    [
      "{ body: { youngGPa: { value: 5, low: 6, high: 7 } } }",
      "body.youngGPa",
      "ware/property-order",
    ],
    ["{ body: { base: stonware } }", "body.base", "ware/unknown-body"],
    ["{ body: { base: 6 } }", "body.base", "schedule/wrong-value"],
    ["{ body: { yungGPa: 6 } }", "body.yungGPa", "schedule/unknown-key"],
    ["{ wall: 0.5 }", "wall", "ware/thickness"],
    ["{ base: 150 }", "base", "ware/thickness"],
    ["{ thickest: 101 }", "thickest", "ware/thickness"],
    ["{ shelf: 101 }", "shelf", "ware/thickness"],
    ["{ footGap: 0 }", "footGap", "ware/foot-gap"],
    ["{ widest: 4000 }", "widest", "ware/width"],
    ["{ glazedSides: 2 }", "glazedSides", "schedule/wrong-value"],
  ])("says where it is wrong: %s", (ware, place, code) => {
    expect(problemsOf(ware)).toEqual([[code, `a.yaml: ware.${place}, line 5`]]);
  });
});
