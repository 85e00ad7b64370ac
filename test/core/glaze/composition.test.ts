import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { atomsIn, molarMass } from "../../../src/core/glaze/elements.ts";
import { appenExpansion } from "../../../src/core/glaze/expansionModels.ts";
import { unityFormula } from "../../../src/core/glaze/glazeSheet.ts";
import { MINERAL_WORDS, MINERALS } from "../../../src/core/glaze/minerals.ts";
import {
  molesOf,
  OXIDES,
  type Oxide,
  type OxideAmounts,
  scaledTo,
  totalOf,
  weightsOf,
} from "../../../src/core/glaze/oxides.ts";
import "../../support/propertySeed.ts";
import { glazeFile, parsed, workedOut } from "./glazeFiles.ts";

const amounts: fc.Arbitrary<OxideAmounts> = fc
  .dictionary(fc.constantFrom(...OXIDES), fc.double({ min: 0.01, max: 100, noNaN: true }), {
    minKeys: 1,
  })
  .map((record) => ({ ...record }));

const expectSame = (found: OxideAmounts, expected: OxideAmounts) => {
  for (const oxide of OXIDES) expect(found[oxide] ?? 0).toBeCloseTo(expected[oxide] ?? 0, 9);
};

describe("a chemical formula", () => {
  it("counts atoms through brackets and water of crystals: Ca2B6O11·5H2O has 16 O and 10 H", () => {
    expect(Object.fromEntries(atomsIn("Ca2B6O11·5H2O"))).toEqual({ Ca: 2, B: 6, O: 16, H: 10 });
    expect(Object.fromEntries(atomsIn("CaMg(CO3)2"))).toEqual({ Ca: 1, Mg: 1, C: 2, O: 6 });
  });

  it("weighs calcite at 40.078 + 12.011 + 3 · 15.999 = 100.086", () => {
    expect(molarMass("CaCO3")).toBeCloseTo(100.086, 9);
  });

  it.each(["CaCO3)", "(CaCO3", "xCO3", "Qq2"])("is refused when it is none: %s", (text) => {
    expect(() => molarMass(text)).toThrow(RangeError);
  });
});

describe("an ideal mineral", () => {
  const mineral = (name: string) => MINERAL_WORDS.get(name)!;

  it("kaolinite loses 2 H2O: 36.03 of 258.16, which is 13.96 %, and keeps 46.55 % silica", () => {
    expect(mineral("kaolinite").lossFraction).toBeCloseTo(0.1396, 4);
    expect(mineral("kaolinite").oxides.SiO2).toBeCloseTo(0.4655, 4);
  });

  it("whiting loses CO2: 44.009 of 100.086, which is 43.97 %", () => {
    expect(mineral("whiting").lossFraction).toBeCloseTo(0.4397, 4);
  });

  it("potash feldspar is 16.9 K2O, 18.3 Al2O3, 64.8 SiO2, as in textbooks", () => {
    const { K2O = 0, Al2O3 = 0, SiO2 = 0 } = mineral("potash feldspar").oxides;
    expect([K2O, Al2O3, SiO2].map((share) => Math.round(share * 1000) / 10)).toEqual([
      16.9, 18.3, 64.8,
    ]);
  });

  it.each(MINERALS)("$name: what stays and what leaves make the whole", (each) => {
    expect(totalOf(each.oxides) + each.lossFraction).toBeCloseTo(1, 9);
  });

  it.each(MINERALS)("$name: no metal is lost or made", ({ formula, oxides }) => {
    const [mass, before] = [molarMass(formula ?? ""), atomsIn(formula ?? "")];
    const after = new Map<string, number>();
    for (const [oxide, grams] of Object.entries(oxides) as [Oxide, number][])
      for (const [element, count] of atomsIn(oxide))
        after.set(element, (after.get(element) ?? 0) + (grams * mass * count) / molarMass(oxide));
    for (const [element, count] of before)
      if (!["H", "C", "O"].includes(element)) expect(after.get(element)).toBeCloseTo(count, 9);
  });

  it("has no word for two materials", () => {
    const names = MINERALS.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const each of MINERALS) expect(MINERAL_WORDS.get(each.name)).toBe(each);
  });
});

describe("a unity formula", () => {
  it("comes back from the recipe it was reckoned to", () => {
    // 0.3 K2O, 0.7 CaO, 0.5 Al2O3, 3.5 SiO2 by hand: 0.3 · 556.66 g of potash feldspar brings all
    // K2O with 0.3 Al2O3 and 1.8 SiO2; 0.7 · 100.086 whiting; 0.2 · 258.157 kaolinite brings 0.2
    // Al2O3 and 0.4 SiO2; 1.3 · 60.083 quartz the rest.
    const sheet = workedOut(
      glazeFile(
        "recipe:",
        "  potash feldspar: 166.996",
        "  whiting: 70.060",
        "  kaolinite: 51.631",
        "  quartz: 78.108",
      ),
    );
    const moles = sheet.unity?.moles ?? {};
    expect(moles.K2O).toBeCloseTo(0.3, 3);
    expect(moles.CaO).toBeCloseTo(0.7, 3);
    expect(moles.Al2O3).toBeCloseTo(0.5, 3);
    expect(moles.SiO2).toBeCloseTo(3.5, 3);
    expect(sheet.unity?.silicaToAlumina).toBeCloseTo(7, 2);
  });

  it("counts zinc as a flux and iron not", () => {
    const unity = unityFormula({ ZnO: 0.25, CaO: 0.25, Fe2O3: 0.1, SiO2: 2 });
    expect(unity?.moles).toEqual({ CaO: 0.5, ZnO: 0.5, SiO2: 4, Fe2O3: 0.2 });
  });

  it("is none without a flux", () => {
    expect(unityFormula({ SiO2: 1 })).toBeNull();
  });

  it("has fluxes of 1, for any glaze that has some", () => {
    fc.assert(
      fc.property(amounts, (moles) => {
        const unity = unityFormula({ ...moles, CaO: 1 });
        const fluxes = totalOf(unity?.moles ?? {}, [
          "Li2O",
          "Na2O",
          "K2O",
          "MgO",
          "CaO",
          "SrO",
          "BaO",
          "ZnO",
          "PbO",
        ]);
        expect(fluxes).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe("amounts", () => {
  it("come back from weight to moles to weight, for any glaze", () => {
    fc.assert(
      fc.property(amounts, (weights) => {
        expectSame(scaledTo(100, weightsOf(molesOf(weights))), scaledTo(100, weights));
      }),
    );
  });

  it("add up to what they are scaled to, for any glaze", () => {
    fc.assert(
      fc.property(amounts, (moles) => {
        expect(totalOf(scaledTo(100, moles))).toBeCloseTo(100, 9);
      }),
    );
  });
});

describe("a recipe", () => {
  const lines = ["quartz: 25", "kaolinite: 20", "whiting: 15", "soda feldspar: 40"];
  const recipe = (order: readonly string[], times = 1) =>
    glazeFile(
      "recipe:",
      ...order
        .map((line) => line.replace(/\d+/, (parts) => String(Number(parts) * times)))
        .map((line) => `  ${line}`),
    );

  it("gives the same glaze whatever the order and the size of the batch", () => {
    fc.assert(
      fc.property(
        fc.shuffledSubarray(lines, { minLength: 4, maxLength: 4 }),
        fc.integer({ min: 1, max: 30 }),
        (order, times) => {
          expectSame(parsed(recipe(order, times)).moles, parsed(recipe(lines)).moles);
        },
      ),
    );
  });

  it("gives the same glaze from calcined kaolinite, 86.04 parts for 100 raw", () => {
    const raw = glazeFile("recipe:", "  kaolinite: 50", "  quartz: 50");
    const calcined = glazeFile(
      "recipe:",
      "  kaolinite: { parts: 43.022, calcined: true }",
      "  quartz: 50",
    );
    const [a, b] = [parsed(raw).moles, parsed(calcined).moles];
    expect(b.Al2O3).toBeCloseTo(a.Al2O3 ?? 0, 4);
  });

  it("loses what its materials lose: half whiting, half quartz loses 21.99 %", () => {
    const { givenAs } = parsed(glazeFile("recipe:", "  whiting: 50", "  quartz: 50"));
    expect(givenAs.kind === "recipe" && givenAs.lossFraction).toBeCloseTo(0.2199, 4);
  });

  it("loses nothing from what is weighed calcined", () => {
    const { givenAs } = parsed(
      glazeFile("recipe:", "  kaolinite: { parts: 50, calcined: true }", "  quartz: 50"),
    );
    expect(givenAs.kind === "recipe" && givenAs.lossFraction).toBe(0);
  });

  it("takes an analysis of its own before the mineral of that name", () => {
    const glaze = parsed(
      glazeFile(
        "recipe: { kaolin: 50, quartz: 50 }",
        "materials:",
        "  Kaolin:",
        "    oxides: { SiO2: 48, Al2O3: 38, K2O: 2 }",
        "    loi: 12",
        "    source: supplier, 2026",
      ),
    );
    expect(glaze.moles.K2O).toBeGreaterThan(0);
    expect(glaze.remarks.join()).toMatch(/your own analysis is used/);
  });

  it("reads an analysis on a calcined basis and as received as the same thing", () => {
    const with_ = (basis: string, oxides: string) =>
      parsed(
        glazeFile(
          "recipe: { clay: 50, whiting: 50 }",
          `materials: { clay: { oxides: ${oxides}, loi: 20, basis: ${basis}, source: test } }`,
        ),
      ).moles;
    expectSame(
      with_("calcined", "{ SiO2: 60, Al2O3: 40 }"),
      with_("as received", "{ SiO2: 48, Al2O3: 32 }"),
    );
  });
});

describe("oxides of a file", () => {
  it("may be written sio2 or SiO₂", () => {
    const glaze = parsed(glazeFile("basis: mol %", "oxides: { sio2: 70, CaO: 20, Al₂O₃: 10 }"));
    expectSame(glaze.moles, { SiO2: 0.7, CaO: 0.2, Al2O3: 0.1 });
  });

  it("count manganese dioxide as MnO by moles, and say so", () => {
    const glaze = parsed(glazeFile("basis: moles", "oxides: { SiO2: 3, CaO: 1, MnO2: 0.1 }"));
    expectSame(glaze.moles, { SiO2: 3 / 4.1, CaO: 1 / 4.1, MnO: 0.1 / 4.1 });
    expect(glaze.remarks).toEqual(["MnO2 is counted as MnO"]);
  });

  it("are the same glaze in wt % and in mol %", () => {
    // 60.083 g of silica and 56.077 g of lime are a mole each.
    const weight = parsed(glazeFile("basis: wt %", "oxides: { SiO2: 51.7244, CaO: 48.2756 }"));
    const moles = parsed(glazeFile("basis: mol %", "oxides: { SiO2: 50, CaO: 50 }"));
    expect(weight.moles.SiO2).toBeCloseTo(moles.moles.SiO2 ?? 0, 5);
  });
});

describe("Appen's set", () => {
  it("counts 5 mol % of each alkali by its factor: K2O more than Na2O more than Li2O", () => {
    const with_ = (alkali: OxideAmounts) =>
      appenExpansion({ SiO2: 66, CaO: 20, Al2O3: 9, ...alkali })?.meanPerK ?? 0;
    expect(with_({ K2O: 5 }) - with_({ Na2O: 5 })).toBeCloseTo(0.05 * 70e-7, 12);
    expect(with_({ Na2O: 5 }) - with_({ Li2O: 5 })).toBeCloseTo(0.05 * 125e-7, 12);
  });

  it("counts an Fe2O3 as two atoms of iron: 10 of it with 80 silica gives 20 of 100", () => {
    expect(appenExpansion({ SiO2: 80, Fe2O3: 10 })?.countedMolPercent).toEqual({
      SiO2: 80,
      FeO: 20,
    });
  });

  it("leaves out what has no factor, and says how much", () => {
    const found = appenExpansion({ SiO2: 70, CaO: 20, SO3: 10 });
    expect(found?.left).toEqual({ SO3: 10 });
    expect(found?.countedMolPercent.SiO2).toBeCloseTo(77.7778, 4);
  });

  it("has no answer where nothing has a factor", () => {
    expect(appenExpansion({ Cl: 1 })).toBeNull();
  });

  it("gives the same for any total, for any glaze", () => {
    fc.assert(
      fc.property(amounts, fc.double({ min: 0.01, max: 100, noNaN: true }), (moles, times) => {
        const all = { ...moles, SiO2: 50 };
        const more = scaledTo(totalOf(all) * times, all);
        const [a, b] = [appenExpansion(all)?.meanPerK ?? 0, appenExpansion(more)?.meanPerK ?? 0];
        expect(b * 1e6).toBeCloseTo(a * 1e6, 9);
      }),
    );
  });
});
