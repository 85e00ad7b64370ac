import { describe, expect, it } from "vitest";
import { stackProfile, stackShare } from "../../../src/core/ware/heatExchange.ts";

// In a shelf that passes heat on from layer to layer by radiation between black faces, the middle
// lags its edge by rR²/4α, which is R²/2 of the gap in the unit of the profile.
const ofDiffusion = (radius: number) => {
  const profile = stackProfile(radius);
  return (profile[0]! - profile.at(-1)!) / (radius ** 2 / 2);
};

describe("a stack of shelves (derived: diffuse view factors, integral equation)", () => {
  it("lags half to three quarters as much over its width as diffusion says, from shelves as wide as the gap on", () => {
    for (const radius of [1, 1.5, 2, 2.5, 3, 4]) {
      expect(ofDiffusion(radius)).toBeGreaterThan(0.5);
      expect(ofDiffusion(radius)).toBeLessThan(0.77);
    }
  });

  it("loses as much as it makes: what leaves by the mouth is the heat of the layer, within 1 %", () => {
    const radius = 2;
    const profile = stackProfile(radius);
    const width = radius / (profile.length - 0.5);
    // Share of what each ring sees that is the mouth: all but the other disc.
    let out = 0;
    for (const [ring, lag] of profile.entries()) {
      const at = ring * width;
      const [from, to] = [Math.max(0, at - width / 2), at + width / 2];
      const sum = 1 + at * at + radius * radius;
      const disc =
        (1 -
          (1 + at * at - radius * radius) / Math.sqrt(sum * sum - 4 * at * at * radius * radius)) /
        2;
      out += lag * (1 - disc) * Math.PI * (to * to - from * from);
    }
    expect(Math.abs(out / (Math.PI * radius * radius) - 1)).toBeLessThan(0.01);
  });

  it("gives a small piece its own share only: to the square of its width, and no more than the shelf's", () => {
    expect(stackShare(80) / stackShare(40)).toBeCloseTo(4, 0);
    expect(stackShare(40)).toBeLessThan(0.06);
    for (const [narrow, wide] of [
      [10, 20],
      [60, 61],
      [200, 230],
      [230, 300],
    ] as const)
      expect(stackShare(wide)).toBeGreaterThan(stackShare(narrow));
  });
});
