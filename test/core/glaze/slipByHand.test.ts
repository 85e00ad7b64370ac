import { describe, expect, it } from "vitest";
import { dryGPerLitre } from "../../../src/core/glaze/slipSheet.ts";

describe("derived: dry content of a slip by hand, D − 1000 times G over G − 1", () => {
  it.each([
    [1.5, 2.5, 833.3],
    [1.75, 2.5, 1250],
  ])("a density of %d, solids of %d: %d g/L within 0.1 (printed digit)", (slip, solid, dry) => {
    const found = dryGPerLitre({ slipGPerCm3: slip, solidGPerCm3: solid });
    expect(Math.abs(found - dry)).toBeLessThan(0.1);
  });

  it("50 mL that weigh 65 g, solids of 2.65: 24.09 g within 0.01", () => {
    const found = 0.05 * dryGPerLitre({ slipGPerCm3: 65 / 50, solidGPerCm3: 2.65 });
    expect(Math.abs(found - 24.09)).toBeLessThan(0.01);
  });
});
