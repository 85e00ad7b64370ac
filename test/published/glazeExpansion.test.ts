import { describe, expect, it } from "vitest";
import { appenExpansion } from "../../src/core/glaze/expansionModels.ts";
import { molesOf, scaledTo } from "../../src/core/glaze/oxides.ts";
import { stiffTemperature } from "../../src/core/glaze/setPointModel.ts";
import { cited } from "../../src/core/sources/bibliography.ts";
import { REFERENCE_GLASSES } from "../support/referenceGlasses.ts";

describe(`Appen's set (${cited("appen-1974")}) against measured glasses whose analysis and expansion were seen`, () => {
  it.each(REFERENCE_GLASSES.filter(({ attested }) => attested === "seen"))(
    "$glass: measured $measured at $range °C lies within two of the stated ± 0.5 ($source)",
    ({ wtPercent, measured }) => {
      expect(
        Math.abs((appenExpansion(molesOf(wtPercent))?.meanPerK ?? Number.NaN) * 1e6 - measured),
      ).toBeLessThan(1);
    },
  );
});

describe(`from weight to moles (${cited("fluegel-2007")}, Table 1)`, () => {
  it("SRM 711 comes to the printed mol % within 0.01 (printed digits)", () => {
    const percent = scaledTo(
      100,
      molesOf({ SiO2: 46.005, Al2O3: 0.559, Na2O: 2.503, K2O: 5.616, PbO: 45.317 }),
    );
    const printed = { SiO2: 71.28, Al2O3: 0.51, Na2O: 3.76, K2O: 5.55, PbO: 18.9 } as const;
    for (const oxide of Object.keys(printed) as (keyof typeof printed)[])
      expect(Math.abs((percent[oxide] ?? 0) - printed[oxide])).toBeLessThan(0.0101);
  });
});

describe(`temperature at 10^12 Pa·s (${cited("fluegel-2007")}, Table 12)`, () => {
  it.each([
    [
      "SRM 710a",
      551,
      { SiO2: 67.9, Al2O3: 2.11, Na2O: 8.09, K2O: 9.34, CaO: 8.54, TiO2: 0.4, ZnO: 3.62 },
    ],
    ["SRM 717a", 520, { SiO2: 68, Al2O3: 3.5, Na2O: 1, K2O: 8, B2O3: 18.51, Li2O: 1 }],
    ["SRM 711", 445, { SiO2: 46, Al2O3: 0.56, Na2O: 2.5, K2O: 5.62, PbO: 45.32 }],
    ["SRM 710", 564, { SiO2: 71.42, Al2O3: 0.18, Na2O: 8.81, K2O: 7.81, CaO: 11.75, Fe2O3: 0.03 }],
    [
      "DGG I",
      535,
      {
        SiO2: 71.79,
        Al2O3: 1.24,
        Na2O: 14.97,
        K2O: 0.33,
        MgO: 4.18,
        CaO: 6.74,
        SO3: 0.43,
        Fe2O3: 0.19,
        TiO2: 0.14,
      },
    ],
  ] as const)(
    "%s: %d °C within 0.5 °C (the paper's own model value, to a degree)",
    (_, tempC, wt) => {
      expect(Math.abs(stiffTemperature(molesOf(wt)).tempC - tempC)).toBeLessThan(0.5);
    },
  );
});
