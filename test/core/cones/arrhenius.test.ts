import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  arrheniusRate,
  logArrheniusIntegral,
  rampEndPointK,
  scaledArrheniusIntegral,
} from "../../../src/core/cones/kinetics.ts";

const activation = fc.double({ min: 250, max: 1600, noNaN: true });
const tempK = fc.double({ min: 750, max: 1650, noNaN: true });

describe("the Arrhenius integral", () => {
  it("grows at the Arrhenius rate, for any cone and temperature", () => {
    fc.assert(
      fc.property(activation, tempK, (e, t) => {
        const logA = e / (8.314462618e-3 * t);
        const slope =
          (scaledArrheniusIntegral(t + 0.05, e, logA) -
            scaledArrheniusIntegral(t - 0.05, e, logA)) /
          0.1;
        // The eleven terms of the series, worst for the softest cone in a stoneware firing (E/RT = 18).
        expect(Math.abs(slope / arrheniusRate(t, e, logA) - 1)).toBeLessThan(1e-4);
      }),
    );
  });

  it("agrees with Simpson's rule", () => {
    const [e, from, to, steps] = [700, 1300, 1480, 2000];
    const logA = 57;
    const h = (to - from) / steps;
    let sum = 0;
    for (let i = 0; i <= steps; i++) {
      const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
      sum += weight * arrheniusRate(from + i * h, e, logA);
    }
    const exact = scaledArrheniusIntegral(to, e, logA) - scaledArrheniusIntegral(from, e, logA);
    expect(Math.abs(exact / ((sum * h) / 3) - 1)).toBeLessThan(1e-9);
  });

  it("is undone by the end point of a ramp, for any rate", () => {
    fc.assert(
      fc.property(
        activation,
        tempK,
        fc.double({ min: 1, max: 1000, noNaN: true }),
        (e, t, rate) => {
          const end = rampEndPointK(e, t, rate);
          const ratio = logArrheniusIntegral(end, e) - logArrheniusIntegral(t, e);
          expect(ratio).toBeCloseTo(Math.log(rate / 60), 8);
        },
      ),
    );
  });
});
