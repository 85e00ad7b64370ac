import { describe, expect, it } from "vitest";
import { normalHazard, shareInterval } from "../../../src/core/math/distributions.ts";
import { effectiveLines } from "../../../src/core/trials/fitSpacing.ts";
import { labelTest } from "../../../src/core/trials/permutationTest.ts";
import {
  ERROR_TO_TELL,
  exponentError,
  tilesPerGroup,
} from "../../../src/core/trials/sampleSizes.ts";

describe("derived: standard error of the exponent", () => {
  const coats = [0.3, 0.48, 0.76, 1.2];
  const of = (repeats: number) => Array.from({ length: repeats }, () => coats).flat();

  it("is 0.14 for 12 tiles of four coats and 0.10 for 24, tiles scattering by 0.25", () => {
    // By hand: ln coats spread by 1.066 in squares; 0.25/sqrt(3 × 1.066) and 0.25/sqrt(6 × 1.066).
    expect(exponentError(of(3), 0.25)).toBeCloseTo(0.14, 2);
    expect(exponentError(of(6), 0.25)).toBeCloseTo(0.1, 2);
  });

  it("has to be 0.18 or less to tell 1/2 from 1 in eight of ten studies", () => {
    // 0.5/(1.960 + 0.842)
    expect(ERROR_TO_TELL).toBeCloseTo(0.178, 3);
    expect(exponentError(of(2), 0.25)).toBeLessThan(ERROR_TO_TELL);
    expect(exponentError(of(1), 0.25)).toBeGreaterThan(ERROR_TO_TELL);
  });
});

describe("derived: dealing labels", () => {
  it.each([
    [3, 0.1, 20],
    [4, 0.0286, 70],
    [5, 0.0079, 252],
  ])("of %d and %d tiles comes to no less than p %d", (each, least, dealings) => {
    // 2 over the ways to choose: 2/20, 2/70, 2/252.
    const labels = Array.from({ length: 2 * each }, (_, i) => i < each);
    const scores = labels.map((isOne, i) => (isOne ? 100 : 0) + i);
    const test = labelTest({ scores, labels, firings: labels.map(() => "a"), columns: [] }, 1);
    expect(test).toMatchObject({ dealings, looked: dealings });
    expect(test?.leastP).toBeCloseTo(least, 4);
    expect(test?.p).toBeCloseTo(least, 4);
  });
});

describe("derived: lines on tiles", () => {
  it("are worth 9.1 independent ones for 4 tiles of 5 lines at an icc of 0.3, 5.9 at 0.6", () => {
    // 20/2.2 and 20/3.4
    expect(effectiveLines({ tiles: 4, linesPerTile: 5, icc: 0.3 })).toBeCloseTo(9.1, 1);
    expect(effectiveLines({ tiles: 4, linesPerTile: 5, icc: 0.6 })).toBeCloseTo(5.9, 1);
  });
});

describe("derived: the normal tail", () => {
  it("joins its two ways of computing without a step", () => {
    expect(normalHazard(3 - 1e-9)).toBeCloseTo(normalHazard(3 + 1e-9), 7);
  });
});

describe("derived: tiles that a group needs", () => {
  it.each([
    // Two-sided t test of two means, power 0.8, printed for effects ln(ratio)/scatter.
    [0.25, 1.25, 21],
    [0.25, 1.5, 8],
    [0.25, 2, 4],
    [0.15, 1.25, 9],
    [0.15, 1.5, 4],
    [0.15, 2, 3],
  ])("with tiles scattering by %d and a ratio of %d are %d", (tileSigma, ratio, tiles) => {
    expect(tilesPerGroup({ ratio, tileSigma, power: 0.8 })).toBe(tiles);
  });
});

describe("derived: a share", () => {
  it("of 0 of 8 leaves up to 31 %", () => {
    // 1 - 0.05^(1/8)
    expect(shareInterval(0, 8)).toMatchObject({ low: 0, ends: "one" });
    expect(shareInterval(0, 8).high).toBeCloseTo(0.3123, 4);
    expect(shareInterval(8, 8).low).toBeCloseTo(1 - 0.3123, 4);
  });
});
