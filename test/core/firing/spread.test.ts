import { describe, expect, it } from "vitest";
import { makeCurve } from "../../../src/core/curve/Curve.ts";
import { zoneReview, zoneSpread } from "../../../src/core/firing/zoneReview.ts";
import { corners, sampled } from "../../support/curves.ts";

const OPTIONS = { series: "self-supporting", witnessed: null } as const;

describe("the spread of the zones", () => {
  it("is largest where they are farthest apart, at one moment", () => {
    const top = zoneReview("top", sampled(corners([0, 20], [5, 1000], [10, 200]), 60), OPTIONS);
    const bottom = zoneReview(
      "bottom",
      sampled(corners([0, 20], [5, 980], [10, 260]), 90),
      OPTIONS,
    );
    const spread = zoneSpread([top, bottom]);
    expect(spread?.atPeakC).toBeCloseTo(20, 6);
    expect(spread?.largestC).toBeCloseTo(60, 6);
    expect(spread?.largestAtSeconds).toBe(36_000);
  });

  it("is none with a single zone", () => {
    const top = zoneReview("top", sampled(corners([0, 20], [5, 1000]), 60), OPTIONS);
    expect(zoneSpread([top])).toBeNull();
  });

  it("is not taken inside a gap", () => {
    const whole = sampled(corners([0, 20], [5, 1000], [10, 200]), 60);
    const top = zoneReview("top", whole, OPTIONS);
    // Far off at one edge of the gap's inside only: nothing was read there.
    const curve = makeCurve(
      [0, 3600, 7200, 18_000, 36_000],
      [20, 216, 412, 1000, 200],
      [{ fromSeconds: 7200, toSeconds: 18_000 }],
    );
    expect(zoneSpread([top, zoneReview("bottom", curve, OPTIONS)])?.largestC).toBeCloseTo(0, 6);
  });
});
