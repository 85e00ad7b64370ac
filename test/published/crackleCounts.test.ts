import { describe, expect, it } from "vitest";
import { grainSizeNumber } from "../../src/core/crackle/lineIntercept.ts";
import { tQuantile } from "../../src/core/math/distributions.ts";

describe("ASTM E112, grain size number", () => {
  it.each([
    [0.32, 0],
    [0.02, 8],
  ])("of an intercept of %f mm is %f, within 0.001", (interceptMm, number) => {
    expect(Math.abs(grainSizeNumber(interceptMm) - number)).toBeLessThan(1e-3);
  });
});

describe("Student's t for 95 %, as tables print it", () => {
  it.each([
    [1, 12.706],
    [2, 4.303],
    [3, 3.182],
    [4, 2.776],
    [5, 2.571],
    [7, 2.365],
    [9, 2.262],
    [19, 2.093],
    [120, 1.98],
  ])("with %i degrees of freedom is %f, within 0.0005 (the printed digits)", (freedom, t) => {
    expect(Math.abs(tQuantile(0.95, freedom) - t)).toBeLessThan(5.1e-4);
  });

  it("is the normal's 1.95996 with very many, within 0.00001", () => {
    expect(Math.abs(tQuantile(0.95, 1e6) - 1.95996)).toBeLessThan(1e-5);
  });
});
