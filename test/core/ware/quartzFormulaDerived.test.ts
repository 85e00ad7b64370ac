import { describe, expect, it } from "vitest";
import {
  quartzExpansionByFormulaPercent,
  quartzMolarVolume,
} from "../../../src/core/ware/bodyExpansion.ts";
import { CARPENTER_MEAN } from "../../../src/core/ware/quartzTables.ts";

const PRINTED_FORMULA = [
  [100, 0.106],
  [200, 0.251],
  [300, 0.417],
  [400, 0.617],
  [500, 0.888],
  [540, 1.051],
  [560, 1.174],
  [570, 1.277],
  [575, 1.392],
  [900, 1.392],
] as const;

describe("derived: the closed form of Holland & Powell 2011", () => {
  it.each(PRINTED_FORMULA)(
    "gives at %s °C %s % within 0.0006 (printed to 0.001)",
    (tempC, percent) => {
      const found = quartzExpansionByFormulaPercent(tempC);
      expect(Math.abs(found - percent)).toBeLessThanOrEqual(0.0006);
    },
  );

  it("is 23.646 cm³/mol above 574 °C, and Raz 2002 has 23.713 at 580 °C, within 0.3 %", () => {
    expect(quartzMolarVolume(580)).toBeCloseTo(23.646, 3);
    expect(Math.abs(quartzMolarVolume(580) / 23.713 - 1)).toBeLessThan(0.003);
  });

  it("stays within 0.09 % of length of every row of Carpenter 1998 up to 608 °C", () => {
    for (const [tempC, percent] of CARPENTER_MEAN.rows) {
      if (tempC > 608) continue;
      const found = quartzExpansionByFormulaPercent(tempC);
      expect(Math.abs(found - percent), `${tempC} °C`).toBeLessThanOrEqual(0.09);
    }
  });
});
