import { describe, expect, it } from "vitest";
import { makeCurve } from "../../src/core/curve/Curve.ts";
import { lossKPerSecond } from "../../src/core/kiln/heatBalance.ts";
import { cited } from "../../src/core/sources/basedOn.ts";
import { bodyStrain, strainIn } from "../../src/core/ware/bodyExpansion.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../../src/core/ware/inversionBands.ts";
import { limitingRate } from "../../src/core/ware/limitingRate.ts";
import { quartzExpansionPercent } from "../../src/core/ware/quartz.ts";
import { steadyLags } from "../../src/core/ware/steadyLags.ts";
import { bandRatio, steadyRatio } from "../../src/core/ware/steadyRatio.ts";
import { wareNumbers } from "../../src/core/ware/strainNumbers.ts";
import { limitingRateSpread } from "../../src/core/ware/strainSpread.ts";
import { wareStrain } from "../../src/core/ware/wareStrain.ts";
import { listedBody, sampleWare, withBody } from "../core/ware/sampleWare.ts";
import { off, traced } from "../support/wareParts.ts";

// Practice first. Where a row says "second program", that was written apart from this one from the
// same formulas, and shows that the formulas are in the code, not that pots obey them.

const SANITARY = { youngGPa: 60, ruptureMPa: 50, quartzFraction: 0.2, cristobaliteFraction: 0 };
const sanitaryWare = (wallMm: number, footprintRadiusMm: number) =>
  withBody(sampleWare("stoneware", wallMm, { footprintRadiusMm }), SANITARY);

describe(`sanitary ware (${cited("fortuna-2000")}; 60 GPa, 50 MPa and 20 % of quartz are our assumption)`, () => {
  it.each([
    [10, 200, 68],
    [12, 200, 62.5],
    [10, 250, 54],
    [12, 250, 50],
  ])(
    "600 to 500 °C is practised at 60 °C/h: %d mm, %d mm from the middle, half the strength within a quarter of it, and at %d °C/h within 2 % (second program, whole °C/h)",
    (wallMm, radiusMm, expected) => {
      const rate = limitingRate(sanitaryWare(wallMm, radiusMm), { band: QUARTZ_BAND, ratio: 0.5 });
      expect(off(rate, 60)).toBeLessThan(0.25);
      expect(off(rate, expected)).toBeLessThan(0.02);
    },
  );

  it("500 to 50 °C is practised at 300 to 450 °C/h: there the index is too strict, full strength at 121 °C/h within 2 % (second program); draughts are left out, so it errs to the slow side", () => {
    const piece = sanitaryWare(10, 200);
    const whole = limitingRate(piece, { band: CRISTOBALITE_BAND, ratio: 1 });
    expect(off(whole, 121)).toBeLessThan(0.02);
    expect(off(limitingRate(piece, { band: CRISTOBALITE_BAND, ratio: 0.5 }), 65)).toBeLessThan(
      0.02,
    );
    expect(300 / whole).toBeGreaterThan(1);
    expect(450 / whole).toBeLessThan(4);
  });
});

describe(`the rule of 50 °C/h (${cited("fraser-1986")})`, () => {
  it("leaves a stoneware mug of 6 mm at 0.17 within 0.01 (second program, printed digits): well below half the strength", () => {
    const mug = sampleWare("stoneware 6", 6);
    const ratio = steadyRatio(mug, { band: QUARTZ_BAND, rateCPerHour: 50 });
    expect(Math.abs(ratio - 0.17)).toBeLessThan(0.01);
  });
});

describe("porcelain tile in a roller kiln (De Noni et al. 2008 and 2011, abstracts: whole at 600 to 3000 °C/h, flaws grow with the rate)", () => {
  // A tile on rollers has neither wall nor shelf, which a piece of ware cannot be without. What is
  // left is the tension through 8 mm cooled on both faces, so the rest is switched off here.
  const tile = {
    ...wareNumbers(sampleWare("porcelain 6", 8)),
    acrossPerStrain: 0,
    baseCoreSeconds: 0,
  };
  const steady = (rateCPerHour: number) =>
    bandRatio({ numbers: tile, lags: steadyLags(tile, 573) }, QUARTZ_BAND, rateCPerHour);

  it.each([
    [600, 0.09],
    [1200, 0.17],
    [3000, 0.4],
  ])(
    "at %d °C/h stays whole: %d within half a printed digit (second program); followed in time no more, and less by a third at most (it has yet to settle, and 20 s pass the peak by)",
    (rateCPerHour, expected) => {
      expect(steady(rateCPerHour)).toBeLessThan(0.5);
      expect(Math.abs(steady(rateCPerHour) - expected)).toBeLessThan(0.005);
      const fall = makeCurve([0, (800 / rateCPerHour) * 3600], [1000, 200]);
      const followed = Math.max(...traced(tile, fall).ratio);
      expect(followed).toBeLessThan(steady(rateCPerHour) * 1.01);
      expect(followed).toBeGreaterThan(steady(rateCPerHour) * 0.66);
    },
  );

  it("is strained more by every faster rate", () => {
    const ratios = [300, 600, 1200, 1800, 2400, 3000].map(steady);
    for (const [i, ratio] of ratios.slice(1).entries())
      expect(ratio).toBeGreaterThan(ratios[i] as number);
  });
});

/** Fall by itself of a simulated loaded 180 L kiln: 79 °C/h at 573 °C, 28 °C/h at 226 °C. */
const COOLING = { conductionPerSecond: 3.7e-5, radiationM2KPerJ: 4.2e-8 };

function naturalFall() {
  const [times, temps]: [number[], number[]] = [[], []];
  for (let [tempC, seconds] = [1000, 0]; tempC > 90; seconds += 60) {
    times.push(seconds);
    temps.push(tempC);
    for (let step = 0; step < 6; step++) tempC -= 10 * lossKPerSecond(COOLING, tempC, 25);
  }
  return makeCurve(times, temps);
}

describe("a kiln of 180 L left to cool by itself", () => {
  const curve = naturalFall();

  it.each([
    ["stoneware 6", 6, 70, 0.26, 0.12],
    ["stoneware 6", 10, 200, 0.56, 0.29],
    ["cristobalitic", 6, 70, 0.2, 0.5],
    ["cristobalitic", 10, 200, 0.44, 1.15],
  ])(
    "%s, %d mm, %d mm from the middle: %d at quartz and %d at cristobalite within 0.006 (second program, printed digits); followed in time the same within a fifth",
    (words, wallMm, footprintRadiusMm, quartz, cristobalite) => {
      const ware = sampleWare(words, wallMm, { footprintRadiusMm });
      const atQuartz = steadyRatio(ware, { band: QUARTZ_BAND, rateCPerHour: 79 });
      const atCristobalite = steadyRatio(ware, { band: CRISTOBALITE_BAND, rateCPerHour: 28 });
      expect(Math.abs(atQuartz - quartz)).toBeLessThan(0.006);
      expect(Math.abs(atCristobalite - cristobalite)).toBeLessThan(0.006);
      const ratios = wareStrain(curve, ware).worst.map(({ ratio }) => ratio);
      expect(off(ratios[0] as number, quartz)).toBeLessThan(0.2);
      expect(off(ratios[1] as number, cristobalite)).toBeLessThan(0.2);
    },
  );
});

/** Wall and base 80 K apart: more than a firing does. */
function totalMismatch(words: string, band: typeof QUARTZ_BAND): number {
  const { strain, acrossPerStrain } = wareNumbers(sampleWare(words, 6));
  let most = 0;
  for (let tempC = band.lowC - 80; tempC <= band.highC; tempC++)
    most = Math.max(most, strainIn(strain, tempC + 80) - strainIn(strain, tempC));
  return most * acrossPerStrain;
}

describe("the ceiling: wall and base 80 K apart (second program, within half a printed digit)", () => {
  it.each([
    { words: "earthenware", band: QUARTZ_BAND, expected: 2.3 },
    { words: "stoneware 6", band: QUARTZ_BAND, expected: 1.7 },
    { words: "porcelain 6", band: QUARTZ_BAND, expected: 1.5 },
    { words: "stoneware 10", band: QUARTZ_BAND, expected: 1.5 },
    { words: "cristobalitic", band: QUARTZ_BAND, expected: 1.4 },
    { words: "porcelain 10", band: QUARTZ_BAND, expected: 1.1 },
    { words: "cristobalitic", band: CRISTOBALITE_BAND, expected: 2.3 },
  ])("$words, $band.name: $expected", ({ words, band, expected }) => {
    expect(Math.abs(totalMismatch(words, band) - expected)).toBeLessThan(0.05);
  });
});

describe("rate against thickness (in inverse proportion by a sanitary-ware text, to the square by glass practice)", () => {
  const exponent = (thin: number, thick: number, shape: { readonly radiusMm?: number } = {}) => {
    const rate = (mm: number) =>
      limitingRate(sampleWare("stoneware 6", mm, { footprintRadiusMm: shape.radiusMm ?? 70 }), {
        band: QUARTZ_BAND,
        ratio: 0.5,
      });
    return Math.log(rate(thick) / rate(thin)) / Math.log(thick / thin);
  };

  it("−0.5 between 6 and 8 mm and −1.3 between 20 and 25 mm, within 0.05 (second program, one digit)", () => {
    expect(Math.abs(exponent(6, 8) + 0.5)).toBeLessThan(0.05);
    expect(Math.abs(exponent(20, 25) + 1.3)).toBeLessThan(0.05);
  });

  it("steepens with thickness and never passes the −2 of a bare slab", () => {
    const steps = [3, 6, 12, 25, 50, 100].map((mm) => exponent(mm, mm * 1.2));
    expect(steps).toEqual(steps.toSorted((a, b) => b - a));
    for (const step of steps) expect(step).toBeGreaterThan(-2);
  });
});

describe("rates of the second program that another file does not hold", () => {
  const THICKNESSES = [3, 5, 6, 8, 10, 12, 15, 20, 25];
  it.each([
    {
      words: "cristobalitic",
      band: QUARTZ_BAND,
      ratio: 0.5,
      rates: [258, 224, 208, 179, 154, 132, 107, 77, 58],
    },
    {
      words: "earthenware",
      band: CRISTOBALITE_BAND,
      ratio: 0.5,
      rates: [154, 145, 140, 131, 122, 114, 102, 85, 72],
    },
    {
      words: "stoneware 6",
      band: CRISTOBALITE_BAND,
      ratio: 0.5,
      rates: [141, 131, 126, 116, 107, 99, 88, 72, 60],
    },
    {
      words: "stoneware 10",
      band: CRISTOBALITE_BAND,
      ratio: 1,
      rates: [222, 203, 193, 175, 158, 143, 124, 98, 80],
    },
    {
      words: "cristobalitic",
      band: CRISTOBALITE_BAND,
      ratio: 0.5,
      rates: [31, 29, 28, 26, 24, 22, 20, 17, 14],
    },
    {
      words: "porcelain 10",
      band: CRISTOBALITE_BAND,
      ratio: 0.5,
      rates: [242, 225, 217, 201, 187, 174, 156, 132, 112],
    },
  ])(
    "$words: $band.name reaches $ratio, 3 to 25 mm, within 2 % and half a whole °C/h (air, places looked at)",
    ({ words, band, ratio, rates }) => {
      for (const [i, rate] of rates.entries()) {
        const ware = sampleWare(words, THICKNESSES[i] as number);
        const found = limitingRate(ware, { band, ratio });
        expect(Math.abs(found - rate)).toBeLessThan(0.02 * rate + 0.5);
      }
    },
  );

  it.each([
    { words: "stoneware 6", band: QUARTZ_BAND, low: 62, high: 193 },
    { words: "stoneware 6", band: CRISTOBALITE_BAND, low: 48, high: 169 },
    { words: "cristobalitic", band: CRISTOBALITE_BAND, low: 10, high: 46 },
  ])(
    "$words of 12 mm: half the strength at $band.name, 10 to 90 % of draws, $low to $high °C/h within a factor of two (drawn otherwise there)",
    ({ words, band, low, high }) => {
      const ware = sampleWare(words, 12);
      const spread = limitingRateSpread(ware, { band, ratio: 0.5 }, { runs: 400, seed: 11 });
      for (const [found, expected] of [
        [spread.low, low],
        [spread.high, high],
      ] as const) {
        expect(found).toBeGreaterThan(expected / 2);
        expect(found).toBeLessThan(expected * 2);
      }
    },
  );
});

describe("spread of the quartz inversion", () => {
  it("is that of grains under ± 50 MPa at 26 K/kbar (Raz 2002, rows at 2 kbar: 620 to 630 °C less 573), 13 K either way: the step of the body is rounded at its upper end and its own again 26 K away", () => {
    const perKbar = (625 - 573) / 2;
    expect(perKbar).toBeCloseTo(26, 0);
    const kelvin = 50 * (perKbar / 100);
    expect(kelvin).toBeCloseTo(13, 0);
    const pure = { value: 1, low: 1, high: 1, source: "test" };
    const none = { value: 0, low: 0, high: 0, source: "test" };
    const grains = {
      ...listedBody("stoneware"),
      quartzFraction: pure,
      cristobaliteFraction: none,
    };
    /** How far the smeared curve is from the crystal's own [%]. */
    const differs = (tempC: number) =>
      Math.abs(100 * bodyStrain(grains, tempC) - quartzExpansionPercent(tempC, "c"));
    const stepPercent = quartzExpansionPercent(578, "c") - quartzExpansionPercent(568, "c");
    expect(differs(578)).toBeGreaterThan(0.15 * stepPercent);
    for (const beyond of [-2 * kelvin, 2 * kelvin])
      expect(differs(573 + beyond)).toBeLessThan(0.05 * stepPercent);
  });
});
