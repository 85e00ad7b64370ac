import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { openingRatio, openingStrains } from "../../../src/core/ware/openingStrain.ts";
import { strainRisk } from "../../../src/core/ware/strainRisk.ts";
import { sampleWare, withBody } from "./sampleWare.ts";

const MUG = sampleWare("stoneware 6", 6);
const DRAWS = { runs: 100, seed: 1 };
const way = fc.constantFrom("lid opened" as const, "lifted out" as const);

describe("openingStrains", () => {
  it("tells each temperature in the order asked, the lid before lifting out", () => {
    expect(openingStrains(MUG, [200, 100], DRAWS).map((each) => [each.tempC, each.way])).toEqual([
      [200, "lid opened"],
      [200, "lifted out"],
      [100, "lid opened"],
      [100, "lifted out"],
    ]);
    expect(openingStrains(MUG, [], DRAWS)).toEqual([]);
  });

  it("holds the ratio in its range, and the range in something like a factor of two", () => {
    for (const { ratio, low, high } of openingStrains(MUG, [250, 120], DRAWS)) {
      expect(low).toBeLessThan(ratio);
      expect(high).toBeGreaterThan(ratio);
      expect(high / low).toBeGreaterThan(2);
      expect(high / low).toBeLessThan(8);
    }
  });

  it("gives the same for the same seed and another range for another", () => {
    const first = openingStrains(MUG, [150], DRAWS);
    expect(openingStrains(MUG, [150], DRAWS)).toEqual(first);
    expect(openingStrains(MUG, [150], { ...DRAWS, seed: 2 })).not.toEqual(first);
  });
});

describe("lifting ware out", () => {
  it("is harder on it than opening the lid, for any wall and temperature", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 20 }),
        fc.integer({ min: 60, max: 350 }),
        (wallMm, tempC) => {
          const ware = sampleWare("stoneware 6", wallMm);
          expect(openingRatio(ware, tempC, "lifted out")).toBeGreaterThan(
            openingRatio(ware, tempC, "lid opened"),
          );
        },
      ),
      { numRuns: 10 },
    );
  });

  it("comes to nothing in a kiln as cold as the room", () => {
    expect(openingRatio(MUG, 20, "lifted out")).toBe(0);
  });

  it("never gets easier when the kiln is hotter or the body holds more quartz, either way of opening", () => {
    fc.assert(
      fc.property(
        way,
        fc.integer({ min: 30, max: 300 }),
        fc.integer({ min: 0, max: 100 }),
        fc.double({ min: 0, max: 0.4, noNaN: true }),
        (how, tempC, hotter, quartz) => {
          const little = withBody(MUG, { quartzFraction: quartz });
          const much = withBody(MUG, { quartzFraction: quartz + 0.1 });
          const ratio = openingRatio(little, tempC, how);
          expect(openingRatio(little, tempC + hotter, how)).toBeGreaterThanOrEqual(ratio);
          expect(openingRatio(much, tempC, how)).toBeGreaterThanOrEqual(ratio);
        },
      ),
      { numRuns: 10 },
    );
  });
});

describe("strainRisk", () => {
  it.each([
    [0, "low"],
    [0.29, "low"],
    [0.69, "low"],
    [0.7, "watch"],
    [1, "high"],
    [4, "high"],
  ] as const)("calls %d %s", (ratio, word) => {
    expect(strainRisk(ratio)).toBe(word);
  });
});
