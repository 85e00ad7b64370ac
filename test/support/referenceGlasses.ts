import type { OxideAmounts } from "../../src/core/glaze/oxides.ts";
import { cited } from "../../src/core/sources/bibliography.ts";

/** A glass with its analysis and, where there is one, its measured expansion. */
export interface ReferenceGlass {
  readonly glass: string;
  readonly wtPercent: OxideAmounts;
  /** [10⁻⁶/K] */
  readonly measured: number;
  /** [°C] */
  readonly range: string;
  readonly source: string;
  readonly attested: "seen" | "from memory in part";
}

const MELTS = cited("soda-lime-database");
const HANDBOOKS = "Hutchins & Harrington 1966; Shand 1958";

/** Sixteen glasses with analysis and expansion; which parts are from memory is said. */
export const REFERENCE_GLASSES: readonly ReferenceGlass[] = [
  {
    glass: "container soda-lime",
    wtPercent: {
      SiO2: 74,
      Na2O: 13,
      CaO: 10.5,
      Al2O3: 1.3,
      K2O: 0.3,
      SO3: 0.2,
      MgO: 0.2,
      Fe2O3: 0.04,
      TiO2: 0.01,
    },
    measured: 9.0,
    range: "100 to 300",
    source: MELTS,
    attested: "seen",
  },
  {
    glass: "window soda-lime",
    wtPercent: {
      SiO2: 73,
      Na2O: 14,
      CaO: 9,
      MgO: 4,
      Al2O3: 0.15,
      K2O: 0.03,
      TiO2: 0.02,
      Fe2O3: 0.1,
    },
    measured: 9.5,
    range: "100 to 300",
    source: MELTS,
    attested: "seen",
  },
  {
    glass: "float, a glassworks' bulletin",
    wtPercent: {
      SiO2: 72.6,
      Na2O: 13.9,
      CaO: 8.4,
      MgO: 3.9,
      Al2O3: 1.1,
      K2O: 0.6,
      SO3: 0.2,
      Fe2O3: 0.11,
    },
    measured: 8.3,
    range: "24 to 302",
    source: "a glassworks' technical bulletin (2008); EN 572-1 gives 9.0 for float",
    attested: "seen",
  },
  {
    glass: "borosilicate 3.3, analysis",
    wtPercent: {
      SiO2: 80.6,
      B2O3: 12.6,
      Na2O: 4.2,
      Al2O3: 2.2,
      CaO: 0.1,
      MgO: 0.05,
      Fe2O3: 0.04,
      Cl: 0.1,
    },
    measured: 3.3,
    range: "20 to 300",
    source: cited("iso-3585"),
    attested: "seen",
  },
  {
    glass: "borosilicate 3.3, nominal",
    wtPercent: { SiO2: 81, B2O3: 13, Na2O: 4, Al2O3: 2 },
    measured: 3.3,
    range: "20 to 300",
    source: "DIN ISO 7991 data sheet",
    attested: "seen",
  },
  {
    glass: "fused silica, SRM 739",
    wtPercent: { SiO2: 100 },
    measured: 0.55,
    range: "20 to 320",
    source: "Hahn & Kirby 1972",
    attested: "from memory in part",
  },
  {
    glass: "E-glass",
    wtPercent: {
      SiO2: 55.21,
      B2O3: 6.869,
      Al2O3: 14.43,
      MgO: 4.224,
      CaO: 17.76,
      Na2O: 0.6095,
      Fe2O3: 0.3347,
      TiO2: 0.5666,
    },
    measured: 5.4,
    range: "20 to 300",
    source: "composition: Fluegel",
    attested: "from memory in part",
  },
  {
    glass: "TV panel",
    wtPercent: {
      SiO2: 61.75,
      Al2O3: 2.069,
      CaO: 0.04808,
      SrO: 9.224,
      BaO: 9.267,
      Li2O: 0.008539,
      Na2O: 7.669,
      K2O: 7.578,
      Fe2O3: 0.04564,
      TiO2: 0.4337,
      ZrO2: 1.391,
      ZnO: 0.5116,
    },
    measured: 9.9,
    range: "0 to 300",
    source: "composition: Fluegel",
    attested: "from memory in part",
  },
  {
    glass: "soda-lime lamp glass",
    wtPercent: { SiO2: 73.6, Na2O: 16, K2O: 0.6, CaO: 5.2, MgO: 3.6, Al2O3: 1 },
    measured: 9.35,
    range: "0 to 300",
    source: HANDBOOKS,
    attested: "from memory in part",
  },
  {
    glass: "potash-soda-lead, 21 % PbO",
    wtPercent: { SiO2: 63, Na2O: 7.6, K2O: 6, CaO: 0.3, MgO: 0.2, PbO: 21, Al2O3: 1 },
    measured: 9.3,
    range: "0 to 300",
    source: HANDBOOKS,
    attested: "from memory in part",
  },
  {
    glass: "potash-soda-lead, 29 % PbO",
    wtPercent: { SiO2: 56, Na2O: 4, K2O: 9, PbO: 29, Al2O3: 2 },
    measured: 8.95,
    range: "0 to 300",
    source: HANDBOOKS,
    attested: "from memory in part",
  },
  {
    glass: "alkaline-earth aluminosilicate",
    wtPercent: { SiO2: 62, B2O3: 5, Na2O: 1, CaO: 8, MgO: 7, Al2O3: 17 },
    measured: 4.2,
    range: "0 to 300",
    source: `${HANDBOOKS}; composition in Sensors 23 (2023) 5976`,
    attested: "from memory in part",
  },
  {
    glass: "lead borosilicate",
    wtPercent: { SiO2: 73, B2O3: 16.5, Na2O: 4.5, PbO: 6 },
    measured: 3.6,
    range: "0 to 300",
    source: HANDBOOKS,
    attested: "from memory in part",
  },
  {
    glass: "thermometer glass, soda-lime-zinc",
    wtPercent: { SiO2: 67.5, Na2O: 14, CaO: 7, ZnO: 7, B2O3: 2, Al2O3: 2.5 },
    measured: 8.1,
    range: "0 to 100",
    source: "Hovestadt 1902",
    attested: "from memory in part",
  },
  {
    glass: "thermometer glass, borosilicate",
    wtPercent: { SiO2: 72, B2O3: 12, Na2O: 11, Al2O3: 5 },
    measured: 5.9,
    range: "0 to 100",
    source: "Hovestadt (1902); composition in Sensors 23 (2023) 5976",
    attested: "from memory in part",
  },
  {
    glass: "borosilicate crown, optical",
    wtPercent: { SiO2: 69.1, B2O3: 10.75, Na2O: 10.4, K2O: 6.3, BaO: 3.07, As2O3: 0.36 },
    measured: 8.3,
    range: "20 to 300",
    source: "optical-glass data sheets",
    attested: "from memory in part",
  },
];
