import { describe, expect, it } from "vitest";
import { omoriShare, slowCrackExponent } from "../../../src/core/pings/omoriLaw.ts";
import { misfitOfOnset } from "../../../src/core/pings/pingTemperatureFindings.ts";

describe("derived: clicks of slow crack growth", () => {
  it.each([
    // p = 1 − m/(n − 2), worked by hand: 1 − 5/16, 1 − 8/16, 1 − 10/16.
    [5, 18, 0.6875],
    [8, 18, 0.5],
    [10, 18, 0.375],
  ])("thin out, for m %i and n %i, with p %d", (m, n, p) => {
    expect(slowCrackExponent(m, n)).toBe(p);
  });

  it("have no exponent where the power of crack speed is 2 or less", () => {
    expect(() => slowCrackExponent(5, 2)).toThrow(RangeError);
  });
});

describe("derived: shares of a day of pings, p 0.75 and c 2 min", () => {
  // The law integrated by hand: ((t + c)^¼ − c^¼)/((24 h + c)^¼ − c^¼), in per cent to the half.
  const law = { p: 0.75, c: 120 };
  const share = (hours: number) => 100 * omoriShare(law, hours * 3600, 86_400);
  it.each([
    ["first 10 min", 0, 1 / 6, 13.5],
    ["10 min to 1 h", 1 / 6, 1, 19],
    ["1 to 4 h", 1, 4, 23],
    ["4 to 24 h", 4, 24, 45],
  ])("%s", (_, from, to, percent) => {
    expect(Math.abs(share(to) - share(from) - percent)).toBeLessThan(0.5);
  });
});

describe("derived: first ping against misfit, 0.70 MPa√m, 65 GPa, Poisson 0.20, Z 1.976 (a second program)", () => {
  it.each([
    [0.4, 0.5, 613],
    [0.4, 0.75, 409],
    [0.4, 1, 306],
    [0.4, 1.5, 204],
    [0.4, 2, 153],
    [0.2, 1, 433],
    [0.8, 1, 217],
  ])(
    "%d mm, %d millionths per kelvin: %i K below the set point, within 1 K",
    (coat, millionths, fallK) => {
      // The fall that gives this misfit; misfit × fall is the same for all falls of one coat.
      const fall = misfitOfOnset(1, coat) / (millionths * 1e-6);
      expect(Math.abs(fall - fallK)).toBeLessThan(1);
      expect(misfitOfOnset(fall, coat) * 1e6).toBeCloseTo(millionths, 9);
    },
  );

  it("by hand: 0.7/√(1.976 × 0.0004) = 24.90 MPa, × 0.8/65000 = 0.0003065 over 306.5 K", () => {
    expect(misfitOfOnset(306.5, 0.4) * 1e6).toBeCloseTo(1, 3);
  });
});
