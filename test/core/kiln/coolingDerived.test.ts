import { describe, expect, it } from "vitest";
import { lossKPerSecond, radiatedWattPerM2 } from "../../../src/core/kiln/LearnedKiln.ts";
import { learnKiln } from "../../../src/core/kiln/learnKiln.ts";
import { fitCooling } from "../../../src/core/kiln/naturalFall.ts";
import { celsiusFromKelvin } from "../../../src/core/units/temperature.ts";
import { balancedCurve } from "../../support/kilns.ts";

/**
 * Fall by itself of a simulated loaded 180 L kiln, 75 mm of firebrick, many layers of it: °C and °C/h.
 * The cooling constants that were fitted to it elsewhere are 3.7e-5 1/s and 4.2e-8 m²K/J.
 */
const SIMULATED_180_L = [
  [1000, 153],
  [900, 133],
  [800, 116],
  [700, 99],
  [600, 83],
  [573, 79],
  [400, 53],
  [300, 38],
  [226, 28],
  [200, 24],
  [100, 10],
] as const;

describe("derived: the fall of a simulated 180 L kiln", () => {
  const fitted = fitCooling(
    SIMULATED_180_L.map(([tempC, fallCPerHour]) => ({ tempC, roomC: 25, fallCPerHour })),
  );

  it("gives the two constants fitted to it elsewhere, within 5 and 15 % (rates are whole degrees)", () => {
    expect(Math.abs(fitted.conductionPerSecond / 3.7e-5 - 1)).toBeLessThan(0.05);
    expect(Math.abs(fitted.radiationM2KPerJ / 4.2e-8 - 1)).toBeLessThan(0.15);
  });

  it.each([
    [900, 133, 0.02],
    [573, 79, 0.02],
    [300, 38, 0.02],
    [226, 28, 0.03],
    [100, 10, 0.07],
  ])(
    "is met at %i °C: %i °C/h within %f (errors of that fit, and half a printed digit)",
    (tempC, printed, share) => {
      const rate = 3600 * lossKPerSecond(fitted, tempC, 25);
      expect(Math.abs(rate / printed - 1)).toBeLessThan(share);
    },
  );
});

describe("derived: a log made from known constants, 1.5 K of noise, every two minutes", () => {
  const cooling = { conductionPerSecond: 3.7e-5, radiationM2KPerJ: 4.2e-8 };
  const curve = balancedCurve({ cooling, peakC: 1222, endC: 80, roomC: 25, noiseK: 1.5 });
  const result = learnKiln([{ name: "made", curve, output: null, start: null }]);

  it.each([
    [900, 0.01],
    [573, 0.01],
    [300, 0.02],
    [226, 0.02],
    [100, 0.06],
  ])(
    "gives back the fall at %i °C within %f (errors printed for this identification)",
    (tempC, share) => {
      if (!result.ok) throw new RangeError(result.problems[0]?.what);
      const rate = lossKPerSecond(result.value.cooling, tempC, 25);
      expect(Math.abs(rate / lossKPerSecond(cooling, tempC, 25) - 1)).toBeLessThan(share);
    },
  );
});

describe("derived: heat exchanged by radiation", () => {
  it.each([
    [300, 6.12],
    [500, 28.35],
    [846, 137.3],
    [1000, 226.8],
    [1273, 467.9],
    [1473, 724.9],
  ])("exchanges heat near %i K with 4σT³ = %f W/m²K, to the printed digits", (tempK, printed) => {
    const near = celsiusFromKelvin(tempK);
    const slope = radiatedWattPerM2(near + 0.5, near - 0.5);
    expect(Math.abs(slope / printed - 1)).toBeLessThan(1e-3);
  });
});
