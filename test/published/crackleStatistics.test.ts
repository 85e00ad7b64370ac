import { describe, expect, it } from "vitest";
import { logNormalTail, normalTail, shareInterval } from "../../src/core/math/distributions.ts";
import { fisherExact } from "../../src/core/trials/permutationTest.ts";
import { tilesPerGroup } from "../../src/core/trials/sampleSizes.ts";

describe("the normal tail", () => {
  it.each([
    // Printed in every table of the normal distribution.
    [0, 0.5],
    [1, 0.158655],
    [1.644854, 0.05],
    [1.959964, 0.025],
    [2.575829, 0.005],
    [3.090232, 0.001],
    [-1, 0.841345],
  ])("is at %d what tables print", (z, tail) => {
    expect(normalTail(z)).toBeCloseTo(tail, 6);
  });

  it("keeps its digits far out: ln of the tail at 10 is -53.23128515", () => {
    // 7.619853e-24, Abramowitz & Stegun, table 26.2.
    expect(logNormalTail(10)).toBeCloseTo(Math.log(7.619853e-24), 6);
  });
});

describe("tiles that a group needs", () => {
  it.each([
    // Cohen's table for two groups, power 0.8 at 5 in 100: d 0.5, 0.8 and 1.
    [0.5, 64],
    [0.8, 26],
    [1, 17],
  ])("for means %d of a scatter apart are %d", (apart, tiles) => {
    expect(tilesPerGroup({ ratio: Math.exp(apart), tileSigma: 1, power: 0.8 })).toBe(tiles);
  });
});

describe("a share", () => {
  it("of 4 of 10 lies between 12.2 and 73.8 %, as tables of exact limits print", () => {
    const { low, high, ends } = shareInterval(4, 10);
    expect([low, high].map((end) => end.toFixed(3))).toEqual(["0.122", "0.738"]);
    expect(ends).toBe("two");
  });
});

describe("Fisher's exact test", () => {
  it("gives 0.486 for the lady who tastes 3 of 4 right", () => {
    // Fisher 1935: 1, 16, 36, 16, 1 of 70 ways; two-sided (16 + 1) × 2 / 70.
    expect(fisherExact({ yes: 3, of: 4 }, { yes: 1, of: 4 })).toBeCloseTo(34 / 70, 10);
    expect(fisherExact({ yes: 4, of: 4 }, { yes: 0, of: 4 })).toBeCloseTo(2 / 70, 10);
  });
});
