import { describe, expect, it } from "vitest";
import { crackingLoad, releaseNumber } from "../../src/core/glaze/channelCracking.ts";
import { type Glazing, type Layers, layerStress } from "../../src/core/glaze/laminate.ts";
import { cited } from "../../src/core/sources/bibliography.ts";

const off = (found: number, expected: number) => Math.abs(found - expected);
const FREE: Glazing = "one face, free to bend";

/** The worked glaze: 65 on 45 GPa, Poisson 0.20. */
const worked = (coatMm: number, wallMm: number): Layers => ({
  glazeGPa: 65,
  glazePoisson: 0.2,
  bodyGPa: 45,
  bodyPoisson: 0.2,
  coatMm,
  wallMm,
});
const THICK = { stiffnessRatio: 1, wallOverCoat: Number.POSITIVE_INFINITY };
const TOUGH = 0.7;

describe("release number Z of a channel crack", () => {
  it(`is 1.976 for equal stiffness within 0.003 (${cited("hutchinson-suo-1992")}), π/2 of 1.258 (${cited("beuth-1992")})`, () => {
    const { z } = releaseNumber(THICK);
    expect(off(z, 1.976)).toBeLessThan(0.003);
    expect(off((2 * z) / Math.PI, 1.258)).toBeLessThan(0.002);
  });
});

describe(`fit limits of four porous bodies (${cited("four-porous-bodies")}), as an order of magnitude`, () => {
  const EARTHENWARE = { stiffnessRatio: 20 / 65, wallOverCoat: 20 };
  const over = (mismatch: number, coatMm: number) => {
    const stress = layerStress({ ...worked(coatMm, 20 * coatMm), bodyGPa: 20 }, FREE, mismatch);
    const load = crackingLoad(stress.glazeMPa, { coatMm, toughnessMPaRootM: TOUGH });
    return stress.glazeMPa > 0 ? load * releaseNumber(EARTHENWARE).z : 0;
  };

  it("1.5 millionths over the body cracks on cooling, 0.2 to 0.5 mm thick", () => {
    for (const coat of [0.2, 0.3, 0.5]) expect(over(1.5e-6 * 500, coat)).toBeGreaterThan(1);
  });

  it("0.2 millionths over it stays whole, and cracks with 0.1 % of moisture growth", () => {
    for (const coat of [0.2, 0.3, 0.5]) {
      expect(over(0.2e-6 * 500, coat)).toBeLessThan(1);
      expect(over(0.2e-6 * 500 + 0.001, coat)).toBeGreaterThan(1);
    }
  });

  it("1.5 millionths under it bears 0.1 % of moisture growth", () => {
    for (const coat of [0.2, 0.3, 0.5]) expect(over(-1.5e-6 * 500 + 0.001, coat)).toBeLessThan(1);
  });
});
