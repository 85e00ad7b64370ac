import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { batchSheet, solidsDensity } from "../../../src/core/glaze/batchSheet.ts";
import {
  dryCoatGPerCm2,
  dryGPerLitre,
  firedCoatMm,
  slipSheet,
  waterForDryG,
  waterGPerLitre,
} from "../../../src/core/glaze/slipSheet.ts";
import {
  ouncesPerPint,
  parseCoatMass,
  parseMass,
  parseSlipDensity,
  parseVolume,
} from "../../../src/core/units/amounts.ts";
import "../../support/propertySeed.ts";
import { glazeFile, parsed } from "./glazeFiles.ts";

const HERE = { where: "here" };

function recipe(...lines: readonly string[]) {
  const { givenAs } = parsed(glazeFile(...lines));
  if (givenAs.kind !== "recipe") throw new Error("no recipe");
  return givenAs.recipe;
}

describe("a batch of 5000 g in all, base 100 with 2 and 1 on top", () => {
  const sheet = batchSheet(
    recipe("recipe: { quartz: 60, whiting: 40 }", "additions: { red iron oxide: 2, rutile: 1 }"),
    5000,
  );

  it("weighs 5000 / 103 = 48.544 g for a part: additions 97.1 and 48.5 g", () => {
    const grams = sheet.rows.map(({ gramsForTotal }) => Math.round((gramsForTotal ?? 0) * 10) / 10);
    expect(grams).toEqual([2912.6, 1941.7, 97.1, 48.5]);
  });

  it("read as 5000 g of base weighs 100 and 50 g on top, 5150 g together", () => {
    const grams = sheet.rows.map(({ gramsForBase }) => gramsForBase);
    expect(grams).toEqual([3000, 2000, 100, 50]);
    expect(sheet.totalForBaseG).toBe(5150);
  });
});

describe("a batch sheet", () => {
  it("scales a base of 80 to 100, and what is on top with it", () => {
    const sheet = batchSheet(
      recipe("recipe: { quartz: 60, whiting: 20 }", "additions: { rutile: 4 }"),
      null,
    );
    expect(sheet.rows.map(({ percentOfBase }) => percentOfBase)).toEqual([75, 25, 5]);
    expect(sheet.baseSum).toBe(80);
  });

  it("offers 86.04 parts calcined for 100 of kaolinite, nothing for whiting", () => {
    const rows = batchSheet(recipe("recipe: { kaolinite: 100, whiting: 10 }"), null).rows;
    expect(rows[0]?.swappedParts).toBeCloseTo(86.04, 2);
    expect(rows[1]?.swappedParts).toBeNull();
  });

  it("says what each material is counted as and loses: 44.01/100.09 of whiting is carbon dioxide", () => {
    const [whiting, quartz] = batchSheet(recipe("recipe: { chalk: 60, quartz: 40 }"), null).rows;
    expect(whiting).toMatchObject({ name: "chalk", formula: "CaCO3" });
    expect(whiting?.lossFraction).toBeCloseTo(44.01 / 100.09, 4);
    expect(quartz).toMatchObject({ formula: "SiO2", lossFraction: 0 });
  });

  it("adds up to the mass wanted in all, for any recipe and mass", () => {
    const parts = fc.integer({ min: 1, max: 90 });
    fc.assert(
      fc.property(parts, parts, parts, fc.integer({ min: 10, max: 20_000 }), (a, b, c, mass) => {
        const sheet = batchSheet(
          recipe(`recipe: { quartz: ${a}, whiting: ${b} }`, `additions: { rutile: ${c} }`),
          mass,
        );
        const sum = (of: (row: (typeof sheet.rows)[number]) => number | null) =>
          sheet.rows.reduce((total, row) => total + (of(row) ?? 0), 0);
        expect(sum((row) => row.gramsForTotal)).toBeCloseTo(mass, 6);
        expect(sum((row) => row.gramsForBase)).toBeCloseTo(sheet.totalForBaseG ?? 0, 6);
        expect(sum((row) => row.percentOfTotal)).toBeCloseTo(100, 9);
      }),
    );
  });
});

describe("a slip", () => {
  it("of 1500 g/L and solids of 2.5 holds 500 · 2.5 / 1.5 = 833.3 g dry and 666.7 g of water", () => {
    const slip = { slipGPerCm3: 1.5, solidGPerCm3: 2.5 };
    expect(dryGPerLitre(slip)).toBeCloseTo(833.333, 3);
    expect(waterGPerLitre(slip)).toBeCloseTo(666.667, 3);
  });

  it("weighing 65 g for 50 mL with solids of 2.65 holds 24.09 g", () => {
    expect(0.05 * dryGPerLitre({ slipGPerCm3: 1.3, solidGPerCm3: 2.65 })).toBeCloseTo(24.09, 2);
  });

  it("of 1.45 takes 982.9 g of water for 1000 g of solids of 2.6", () => {
    expect(waterForDryG(1000, { slipGPerCm3: 1.45, solidGPerCm3: 2.6 })).toBeCloseTo(982.9, 1);
  });

  it("of 30 oz in an imperial pint of 20 oz holds 16.667 oz of solids of 2.5", () => {
    const dry = dryGPerLitre({ slipGPerCm3: 30 / 20, solidGPerCm3: 2.5 });
    expect((dry / 1000) * 20).toBeCloseTo(16.667, 3);
  });

  it("is its dry content and its water, and its volume is theirs, for any slip", () => {
    const density = fc.double({ min: 1.05, max: 1.9, noNaN: true });
    fc.assert(
      fc.property(density, fc.double({ min: 2.2, max: 4, noNaN: true }), (slip, solid) => {
        const given = { slipGPerCm3: slip, solidGPerCm3: solid };
        const [dry, water] = [dryGPerLitre(given), waterGPerLitre(given)];
        expect(dry + water).toBeCloseTo(1000 * slip, 6);
        expect(dry / solid + water).toBeCloseTo(1000, 6);
        expect(waterForDryG(dry, given)).toBeCloseTo(water, 6);
      }),
    );
  });

  it("takes the solids' density by volume: equal masses of 2.6 and 5.2 are 3.4667", () => {
    // 2 / (1/2.6 + 1/5.2) = 3.4667
    expect(
      solidsDensity(recipe("recipe: { soda feldspar: 50, red iron oxide: 50 }")).gPerCm3,
    ).toBeCloseTo(3.4667, 4);
  });

  it("as heavy as its solids is refused", () => {
    const glaze = parsed(glazeFile("recipe: { quartz: 100 }", "solidsDensity: 1.4"));
    const wish = { slipGPerCm3: 1.5, bucketLitres: null, dryG: [] };
    expect(slipSheet(glaze, wish)).toMatchObject({ problems: [{ code: "glaze/slip-too-heavy" }] });
  });

  it("in a bucket without a density is refused", () => {
    const glaze = parsed(glazeFile("recipe: { quartz: 100 }"));
    const wish = { slipGPerCm3: null, bucketLitres: 5, dryG: [] };
    expect(slipSheet(glaze, wish)).toMatchObject({
      problems: [{ code: "glaze/bucket-without-density" }],
    });
  });
});

describe("a fired coat", () => {
  it("of 10 g on 100 cm², losing 10 %, at 2.45 g/cm³ is 0.367 mm", () => {
    expect(firedCoatMm(0.1, { lossFraction: 0.1, firedGPerCm3: 2.45 })).toBeCloseTo(0.367, 3);
  });

  it("comes back from the dry mass that it takes", () => {
    const coat = { lossFraction: 0.12, firedGPerCm3: 2.5 };
    expect(firedCoatMm(dryCoatGPerCm2(0.5, coat), coat)).toBeCloseTo(0.5, 12);
  });
});

describe("quantities of the bench", () => {
  it.each([
    ["2kg", 2000],
    ["500 g", 500],
    ["750", 750],
    ["5 lb", 2267.96],
    ["16oz", 453.59],
  ])("the mass %s is %d g", (text, grams) => {
    const read = parseMass(text, HERE);
    expect(read.ok && read.value).toBeCloseTo(grams, 2);
  });

  it.each([
    ["1.45", 1.45],
    ["1450g/L", 1.45],
    ["1450 g / l", 1.45],
    ["29 oz/imperial pint", 1.4468],
    ["24oz/US-pint", 1.4379],
    ["65g/50mL", 1.3],
    ["1.45 g/cm3", 1.45],
  ])("the density %s is %d g/cm³", (text, density) => {
    const read = parseSlipDensity(text, HERE);
    expect(read.ok && read.value).toBeCloseTo(density, 4);
  });

  it("water weighs 20 oz to the imperial pint, by its old definition, within 0.3 %", () => {
    expect(Math.abs(ouncesPerPint(1, "imperial") / 20 - 1)).toBeLessThan(0.003);
  });

  it.each([
    ["5L", 5],
    ["500 mL", 0.5],
    ["1 US gal", 3.7854],
    ["1 imperial-gal", 4.5461],
  ])("the volume %s is %d L", (text, litres) => {
    const read = parseVolume(text, HERE);
    expect(read.ok && read.value).toBeCloseTo(litres, 4);
  });

  it.each([
    ["10g/100cm2", 0.1],
    ["0.1 g/cm²", 0.1],
    ["1 oz/16in2", 0.2746],
  ])("the coat %s is %d g/cm²", (text, perCm2) => {
    const read = parseCoatMass(text, HERE);
    expect(read.ok && read.value).toBeCloseTo(perCm2, 4);
  });

  it.each([
    ["units/not-a-mass", parseMass("two kilos", HERE)],
    ["units/not-a-mass", parseMass("-2kg", HERE)],
    ["units/not-a-slip-density", parseSlipDensity("29 oz/pint", HERE)],
    ["units/not-a-slip-density", parseSlipDensity("65/50", HERE)],
    ["units/not-a-slip-density", parseSlipDensity("1.45 kg", HERE)],
    ["units/slip-density-range", parseSlipDensity("1450", HERE)],
    ["units/not-a-volume", parseVolume("2 gal", HERE)],
    ["units/not-a-coat-mass", parseCoatMass("10 g", HERE)],
  ])("refuses what could be two things or none: %s", (code, read) => {
    expect(read).toMatchObject({ ok: false, problems: [{ code }] });
  });
});
