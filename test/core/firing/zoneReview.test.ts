import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeCurve } from "../../../src/core/curve/Curve.ts";
import { firmPeak, secondsAbove } from "../../../src/core/firing/zoneReview.ts";
import { anyCurve, corners, sampled } from "../../support/curves.ts";

describe("the peak of a zone", () => {
  it("is the top of a sharp peak that both sides lead to", () => {
    const curve = sampled(corners([0, 20], [1, 320], [2, 20]), 300);
    expect(firmPeak(curve)).toEqual({ tempC: 320, seconds: 3600 });
  });

  it("is not a lone reading that neither side leads to", () => {
    const curve = sampled(corners([0, 20], [1, 320], [2, 20]), 60);
    const temps = curve.tempsC.map((temp, i) => (i === 30 ? 900 : temp));
    expect(firmPeak(makeCurve(curve.timesSeconds, temps)).tempC).toBeGreaterThan(310);
    expect(firmPeak(makeCurve(curve.timesSeconds, temps)).tempC).toBeLessThanOrEqual(320);
  });
});

describe("the time above a temperature", () => {
  it("is measured on the straight pieces", () => {
    expect(secondsAbove(corners([0, 0], [1, 100], [2, 0]), 50)).toBeCloseTo(3600, 9);
  });

  it("leaves gaps out", () => {
    const curve = makeCurve(
      [0, 100, 200, 300],
      [80, 80, 80, 80],
      [{ fromSeconds: 100, toSeconds: 200 }],
    );
    expect(secondsAbove(curve, 50)).toBe(200);
  });

  it("never grows with the temperature, for any Curve", () => {
    fc.assert(
      fc.property(
        anyCurve,
        fc.double({ min: 0, max: 1300, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (curve, tempC, more) => {
          expect(secondsAbove(curve, tempC + more)).toBeLessThanOrEqual(
            secondsAbove(curve, tempC) + 1e-6,
          );
        },
      ),
    );
  });
});
