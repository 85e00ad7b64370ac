import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wareOf } from "../../../src/core/ware/givenWare.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../../../src/core/ware/inversions.ts";
import { openingRatio } from "../../../src/core/ware/openingStrain.ts";
import { limitingRate, limitingRateAt } from "../../../src/core/ware/strainRisk.ts";
import { strainSpread } from "../../../src/core/ware/strainSpread.ts";
import { wareStrain } from "../../../src/core/ware/wareStrain.ts";
import { sampleWare, straightFall, withBody } from "./sampleWare.ts";

const MUG = sampleWare("stoneware", 6);
const band = fc.constantFrom(QUARTZ_BAND, CRISTOBALITE_BAND);

describe("limitingRate", () => {
  it("is the rate of a fall whose worst ratio is the one asked for within 3 %, for any piece, band and ratio", () => {
    const piece = fc.record({
      body: fc.constantFrom("stoneware", "earthenware", "cristobalitic"),
      wallMm: fc.integer({ min: 3, max: 25 }),
      footprintRadiusMm: fc.integer({ min: 30, max: 200 }),
    });
    fc.assert(
      fc.property(piece, band, fc.double({ min: 0.1, max: 1, noNaN: true }), (of, at, ratio) => {
        const ware = sampleWare(of.body, of.wallMm, { footprintRadiusMm: of.footprintRadiusMm });
        const rateCPerHour = limitingRate(ware, { band: at, ratio });
        if (rateCPerHour > 600) return;
        const { worst } = wareStrain(straightFall(rateCPerHour, 20), ware);
        const found = worst.find((each) => each.band === at.name)?.ratio as number;
        expect(Math.abs(found / ratio - 1)).toBeLessThan(0.03);
      }),
      { numRuns: 12 },
    );
  });

  it("is 3000 °C/h at most, and refuses a ratio of 0", () => {
    expect(limitingRate(MUG, { band: QUARTZ_BAND, ratio: 50 })).toBe(3000);
    expect(() => limitingRate(MUG, { band: QUARTZ_BAND, ratio: 0 })).toThrow(RangeError);
  });

  it("is lower at the quartz inversion than 60 K above and 150 K below it", () => {
    const at = (tempC: number) => limitingRateAt(MUG, { tempC, ratio: 0.1 });
    expect(at(565)).toBeLessThan(at(640));
    expect(at(565)).toBeLessThan(at(420));
  });

  it("nowhere in the band goes below the rate for the whole band by more than heat transfer explains", () => {
    const whole = limitingRate(MUG, { band: QUARTZ_BAND, ratio: 0.5 });
    const lowest = Math.min(
      ...[520, 540, 555, 565, 575, 590, 620].map((tempC) =>
        limitingRateAt(MUG, { tempC, ratio: 0.5 }),
      ),
    );
    expect(lowest / whole).toBeGreaterThan(0.85);
    expect(lowest / whole).toBeLessThan(1.15);
  });
});

describe("openingRatio", () => {
  it("rises with the temperature, for any two above the room", () => {
    const tempC = fc.integer({ min: 20, max: 600 });
    fc.assert(
      fc.property(tempC, tempC, (a, b) => {
        const [cool, hot] = [Math.min(a, b), Math.max(a, b)];
        expect(openingRatio(MUG, hot)).toBeGreaterThanOrEqual(openingRatio(MUG, cool));
      }),
      { numRuns: 20 },
    );
  });

  it("never lets the ratio of a body rich in cristobalite fall behind that of 300 °C when opened hotter", () => {
    const rich = sampleWare("cristobalitic", 6);
    expect(openingRatio(rich, 380)).toBeGreaterThanOrEqual(openingRatio(rich, 300));
  });

  it("is 0 in a kiln as cold as the room", () => {
    expect(openingRatio(MUG, 20)).toBe(0);
  });
});

describe("strainSpread", () => {
  const fall = straightFall(100, 150);

  it("gives the same for the same seed and another for another", () => {
    const first = strainSpread(fall, MUG, { runs: 20, seed: 7 });
    expect(strainSpread(fall, MUG, { runs: 20, seed: 7 })).toEqual(first);
    expect(strainSpread(fall, MUG, { runs: 20, seed: 8 })).not.toEqual(first);
  });

  it("lists both passages in order, low below median below high", () => {
    const spread = strainSpread(fall, MUG, { runs: 40, seed: 1 });
    expect(spread.map(({ band: name }) => name)).toEqual([
      "quartz inversion",
      "cristobalite inversion",
    ]);
    for (const { low, median, high } of spread) {
      expect(low).toBeLessThan(median);
      expect(median).toBeLessThan(high);
    }
  });

  it("is smaller for a body known exactly, and then comes from strength, shape and kiln alone", () => {
    const { name, ...properties } = MUG.body;
    const exact = Object.fromEntries(
      Object.entries(properties).map(([key, { value }]) => [
        key,
        { value, low: value, high: value, source: "test" },
      ]),
    );
    const ware = { ...MUG, body: { ...MUG.body, ...exact, name } };
    const [known] = strainSpread(fall, ware, { runs: 400, seed: 3 });
    const [usual] = strainSpread(fall, MUG, { runs: 400, seed: 3 });
    const wide = ({ low, high }: { readonly low: number; readonly high: number }) =>
      Math.log(high / low);
    expect(wide(known!)).toBeLessThan(0.85 * wide(usual!));
    expect(known?.shares.body).toBeLessThan(1e-6);
    const { body, strength, shape, kiln } = usual!.shares;
    expect(body + strength + shape + kiln).toBeCloseTo(1, 9);
    expect(Math.min(body, strength, shape, kiln)).toBeGreaterThan(0.05);
  });

  it("draws strength and stiffness together: a body twice as strong and as stiff cracks no later", () => {
    const both = withBody(MUG, {
      youngGPa: 2 * MUG.body.youngGPa.value,
      ruptureMPa: 2 * MUG.body.ruptureMPa.value,
    });
    const ratio = (ware: typeof MUG) => wareStrain(fall, ware).worst[0]?.ratio as number;
    expect(ratio(both)).toBeCloseTo(ratio(MUG), 9);
  });

  it("refuses fewer than ten runs", () => {
    expect(() => strainSpread(fall, MUG, { runs: 5, seed: 1 })).toThrow(RangeError);
  });
});

describe("wareOf", () => {
  it("assumes nothing but the shelf when all is given", () => {
    const { ware, assumed } = wareOf({
      body: MUG.body,
      wallMm: 5,
      baseMm: 7,
      widestMm: 300,
      heightMm: 80,
    });
    expect(ware.geometry).toMatchObject({
      wallMm: 5,
      baseMm: 7,
      footprintRadiusMm: 150,
      heightMm: 80,
    });
    expect(assumed).toEqual(["cordierite shelf of 16 mm and 3 mm of air under the foot assumed"]);
  });

  it("says everything that it assumes", () => {
    const { ware, assumed } = wareOf({ wallMm: null, baseMm: null, widestMm: null });
    expect(ware.geometry).toMatchObject({ wallMm: 6, baseMm: 8, footprintRadiusMm: 42.5 });
    expect(assumed).toHaveLength(2);
    expect(wareOf({ wallMm: 7, baseMm: null, widestMm: null }).assumed).toHaveLength(5);
  });

  it("knows a plate, a bowl, a tile and a mug by their names, and guesses by the width else", () => {
    const of = (name: string, widestMm: number) =>
      wareOf({ wallMm: 6, baseMm: 8, widestMm, name }).ware.geometry;
    expect(of("dinner plates", 200).heightMm).toBeCloseTo(18);
    expect(of("test tiles", 100).heightMm).toBe(8);
    expect(of("bowl", 200).heightMm).toBeCloseTo(90);
    expect(of("bowl", 200).footRadiusMm).toBeCloseTo(55);
    expect(of("mugs", 90).heightMm).toBeCloseTo(103.5);
    expect(of("things", 90).heightMm).toBeCloseTo(103.5);
    expect(of("things", 300).heightMm).toBeCloseTo(27);
    expect(of("things", 300).footRadiusMm).toBe(150);
  });

  it("stands a tile on edge on no shelf, where it bears more", () => {
    const tile = { body: MUG.body, wallMm: 8, baseMm: 8, widestMm: 100, name: "tiles" };
    const flat = wareOf(tile);
    const edge = wareOf({ ...tile, stands: "on edge" });
    expect(edge.assumed).toEqual([]);
    expect(limitingRate(edge.ware, { band: QUARTZ_BAND, ratio: 0.3 })).toBeGreaterThan(
      1.5 * limitingRate(flat.ware, { band: QUARTZ_BAND, ratio: 0.3 }),
    );
  });

  it("takes the wall from the base when only that is known", () => {
    expect(wareOf({ wallMm: null, baseMm: 16, widestMm: null }).ware.geometry.wallMm).toBe(12);
  });

  it("refuses a wall of no thickness", () => {
    expect(() => wareOf({ wallMm: 0, baseMm: null, widestMm: null })).toThrow(RangeError);
  });
});
