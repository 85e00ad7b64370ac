import { describe, expect, it } from "vitest";
import { makeCurve } from "../../src/core/curve/Curve.ts";
import { cited } from "../../src/core/sources/bibliography.ts";
import { bodyStrain, quartzExpansionPercent } from "../../src/core/ware/bodyExpansion.ts";
import { wareStrain } from "../../src/core/ware/wareStrain.ts";
import { listedBody, sampleWare, withBody } from "../core/ware/sampleWare.ts";

/** Worst ratio at quartz while a piece cools at one rate after another [°C, °C/h]. */
function atQuartz(
  ware: Parameters<typeof wareStrain>[1],
  legs: readonly (readonly [number, number])[],
) {
  const times = [0];
  const temps = [1000];
  for (const [toC, rate] of legs) {
    times.push(times.at(-1)! + ((temps.at(-1)! - toC) / rate) * 3600);
    temps.push(toC);
  }
  const { worst } = wareStrain(makeCurve(times, temps), ware);
  return worst.find(({ band }) => band === "quartz inversion")?.ratio as number;
}

describe(`sanitary ware (${cited("fortuna-2000")}; 60 GPa, 50 MPa and 20 % of quartz are our assumption)`, () => {
  it.each([10, 12])(
    "of %d mm, 400 mm wide, survives its practised 150 °C/h to 600 °C, 60 °C/h to 500 °C: less than half the strength",
    (wallMm) => {
      const piece = withBody(
        sampleWare("stoneware", wallMm, { footprintRadiusMm: 200, heightMm: 250 }),
        { youngGPa: 60, ruptureMPa: 50, quartzFraction: 0.2, cristobaliteFraction: 0 },
      );
      const ratio = atQuartz(piece, [
        [600, 150],
        [500, 60],
        [300, 60],
      ]);
      expect(ratio).toBeLessThan(0.5);
      expect(ratio).toBeGreaterThan(0.05);
    },
  );
});

describe(`the rule of 50 °C/h (${cited("fraser-1986")})`, () => {
  it.each([6, 12, 20])("leaves stoneware of %d mm below half its strength", (wallMm) => {
    const ratio = atQuartz(sampleWare("stoneware 6", wallMm), [[300, 50]]);
    expect(ratio).toBeLessThan(0.5);
  });
});

describe("porcelain tile in a roller kiln (De Noni et al. 2008 and 2011, abstracts: whole at 600 to 3000 °C/h, flaws grow with the rate)", () => {
  // On rollers a tile stands free with both faces: the half of it that is computed stands on a gap
  // so wide that its underside sees a shelf without heat of its own.
  const tile = sampleWare("porcelain 6", 8, {
    footprintRadiusMm: 150,
    heightMm: 8,
    shelfMm: 1,
    footGapMm: 30,
  });
  const ratios = [600, 1200, 3000].map((rate) => atQuartz(tile, [[200, rate]]));

  it("is strained more by every faster rate", () => {
    expect(ratios[1]).toBeGreaterThan(ratios[0] as number);
    expect(ratios[2]).toBeGreaterThan(ratios[1] as number);
  });
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
