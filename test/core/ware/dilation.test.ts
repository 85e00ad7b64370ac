import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  CRISTOBALITE_INVERSION_C,
  cristobaliteExpansionPercent,
  interpolated,
  quartzExpansionByFormulaPercent,
  quartzExpansionPercent,
} from "../../../src/core/ware/bodyExpansion.ts";

describe("interpolated", () => {
  const rows = [
    [0, 0],
    [10, 20],
    [20, 20],
  ] as const;

  it("is straight between rows and exact on them", () => {
    expect(interpolated(rows, 5)).toBe(10);
    expect(interpolated(rows, 10)).toBe(20);
  });

  it("goes on with the first slope below the table and stays level above it", () => {
    expect(interpolated(rows, -5)).toBe(-10);
    expect(interpolated(rows, 99)).toBe(20);
  });

  it("refuses a table of one row", () => {
    expect(() => interpolated([[0, 0]], 5)).toThrow(RangeError);
  });
});

describe("expansion of quartz", () => {
  it("never shrinks on the way up to 578 °C, for any two temperatures and either axis", () => {
    const tempC = fc.double({ min: 20, max: 578, noNaN: true });
    fc.assert(
      fc.property(tempC, tempC, (a, b) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        for (const axis of ["mean", "c"] as const)
          expect(quartzExpansionPercent(high, axis)).toBeGreaterThanOrEqual(
            quartzExpansionPercent(low, axis),
          );
      }),
    );
  });

  it("is smaller along c than on average, for any temperature above 20 °C", () => {
    fc.assert(
      fc.property(fc.double({ min: 21, max: 1300, noNaN: true }), (tempC) => {
        expect(quartzExpansionPercent(tempC, "c")).toBeLessThan(
          quartzExpansionPercent(tempC, "mean"),
        );
      }),
    );
  });

  it("agrees between table and closed form within 0.1 % of length, for any temperature up to 900 °C", () => {
    fc.assert(
      fc.property(fc.double({ min: 20, max: 900, noNaN: true }), (tempC) => {
        const gap = quartzExpansionPercent(tempC, "mean") - quartzExpansionByFormulaPercent(tempC);
        expect(Math.abs(gap)).toBeLessThan(0.1);
      }),
    );
  });
});

describe("expansion of cristobalite in a body", () => {
  it("is the cold form at 100 °C and the hot form at 400 °C", () => {
    expect(cristobaliteExpansionPercent(100)).toBeCloseTo(0.245, 6);
    expect(cristobaliteExpansionPercent(400)).toBeCloseTo(2.053, 6);
  });

  it("is half way through its step at the inversion: (0.627 + 2.017) / 2", () => {
    expect(cristobaliteExpansionPercent(CRISTOBALITE_INVERSION_C)).toBeCloseTo(1.322, 6);
  });

  it("never shrinks on the way up, for any two temperatures", () => {
    const tempC = fc.double({ min: 20, max: 1000, noNaN: true });
    fc.assert(
      fc.property(tempC, tempC, (a, b) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(cristobaliteExpansionPercent(high)).toBeGreaterThanOrEqual(
          cristobaliteExpansionPercent(low),
        );
      }),
    );
  });
});
