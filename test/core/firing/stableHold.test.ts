import { describe, expect, it } from "vitest";
import { makeCurve } from "../../../src/core/curve/Curve.ts";
import { isStableHold } from "../../../src/core/firing/segments.ts";
import { corners, sampled } from "../../support/curves.ts";

describe("a stable hold", () => {
  it("is held to its own mean without a target", () => {
    const curve = sampled(corners([0, 812], [1, 812]), 60);
    expect(isStableHold(curve, { fromSeconds: 0, toSeconds: 3600 })).toBe(true);
  });

  it("is never one with a gap inside", () => {
    const curve = makeCurve(
      [0, 60, 120, 600, 660, 720],
      [700, 700, 700, 700, 700, 700],
      [{ fromSeconds: 120, toSeconds: 600 }],
    );
    expect(isStableHold(curve, { fromSeconds: 0, toSeconds: 720 })).toBe(false);
  });

  it("is not a ramp of 20 °C/h", () => {
    const curve = sampled(corners([0, 800], [1, 820]), 60);
    expect(isStableHold(curve, { fromSeconds: 0, toSeconds: 3600 })).toBe(false);
  });
});
