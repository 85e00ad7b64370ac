import { describe, expect, it } from "vitest";
import { pastOffset } from "../../../src/core/schedule/coneAim.ts";

const usual = { offsetK: 8, sigmaK: 12 };

/** A firing whose cones alone say so much, give or take 4 K, and the usual offset with them. */
function firing(aloneK: number, bounds: "both" | "one" = "both") {
  const precision = 4 ** -2 + usual.sigmaK ** -2;
  return {
    series: "self-supporting" as const,
    offsetK: (aloneK * 4 ** -2 + usual.offsetK * usual.sigmaK ** -2) / precision,
    sigmaK: precision ** -0.5,
    usual,
    lowK: bounds === "one" ? null : aloneK - 4,
    highK: aloneK + 4,
    witnesses: [],
  };
}

describe("pastOffset", () => {
  it("is what a single firing says, with what its cones allow and a little more doubt", () => {
    const one = firing(20);
    expect(pastOffset([one])).toEqual({
      offsetK: expect.closeTo(one.offsetK, 9),
      sigmaK: expect.closeTo(Math.hypot(one.sigmaK, 5), 9),
      lowK: 16,
      highK: 24,
      firings: 1,
    });
  });

  it("counts the usual offset once, however many firings", () => {
    const four = pastOffset([firing(20), firing(22), firing(18), firing(20)]);
    const precision = 4 / 16 + 1 / 144;
    expect(four?.offsetK).toBeCloseTo(((4 * 20) / 16 + 8 / 144) / precision, 6);
    expect(four).toMatchObject({ firings: 4 });
    expect(four?.sigmaK ?? 0).toBeLessThan(pastOffset([firing(20)])?.sigmaK ?? 0);
  });

  it("leans little on one firing that is far from the others", () => {
    const told = pastOffset([firing(20), firing(22), firing(18), firing(21), firing(-60)]);
    expect(told?.offsetK ?? 0).toBeGreaterThan(17);
  });

  it("is the usual where cones told nothing beyond it", () => {
    const bracket = { ...firing(8), offsetK: 8, sigmaK: 12 };
    expect(pastOffset([bracket])).toMatchObject({ offsetK: 8, sigmaK: 12 });
  });

  it("leaves out firings that only bound the offset, and says nothing without any other", () => {
    expect(pastOffset([firing(9, "one")])).toBeNull();
  });
});
