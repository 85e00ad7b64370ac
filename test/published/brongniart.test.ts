import { describe, expect, it } from "vitest";
import { dryGPerLitre } from "../../src/core/glaze/brongniart.ts";
import { cited } from "../../src/core/sources/basedOn.ts";

describe(`dry content of a slip, solids of 2.6 (${cited("brongniart-1854")})`, () => {
  it.each([
    [1.4, 650],
    [1.5, 812],
    [1.6, 975],
    [1.7, 1137],
  ])("a density of %d holds %d g/L within 1 (printed to a gram, cut off)", (slip, printed) => {
    const dry = dryGPerLitre({ slipGPerCm3: slip, solidGPerCm3: 2.6 });
    expect(Math.abs(dry - printed)).toBeLessThan(1);
  });
});

describe("dry content of a slip by hand, D − 1000 times G over G − 1", () => {
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
