import { describe, expect, it } from "vitest";
import { dryGPerLitre } from "../../src/core/glaze/slipSheet.ts";
import { cited } from "../../src/core/sources/bibliography.ts";

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
