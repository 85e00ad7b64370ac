import type { Source } from "./bibliography.ts";

/** Sources of the glaze room: composition, expansion, set point, batches, dust and dissolution. */
export const GLAZE_SOURCES = {
  "iupac-atomic-weights": {
    title: "Standard atomic weights, conventional and abridged values",
    publisher: "IUPAC, Commission on Isotopic Abundances and Atomic Weights",
    year: 2021,
    locator: "abridged to five figures; held in part against a copy of the 1997 table",
    seen: "from memory",
  },
  "mineral-formulas": {
    title: "Ideal formulas of minerals and salts",
    publisher: "mineralogy and chemistry textbooks",
    year: null,
    locator: "end members; what is dug and sold differs from them",
    seen: "common practice",
  },
  "appen-1974": {
    title: "Chemistry of Glass (in Russian)",
    author: "A. A. Appen",
    publisher: "Khimiya, Leningrad",
    year: 1974,
    locator:
      "table of partial expansions, 20 to 400 °C, with ranges; method of 1961. The rules for SiO2, TiO2, B2O3 and PbO are from memory and agree with the limits seen",
    seen: "at second hand",
  },
  "winkelmann-schott-1894": {
    title: "Thermal resistance of different glasses and its dependence on composition (in German)",
    author: "Winkelmann & Schott",
    publisher: "Annalen der Physik und Chemie 51, 730",
    year: 1894,
    locator:
      "cubical factors by weight; SiO2, B2O3 and MgO seen quoted by English & Turner 1920, the rest from memory",
    seen: "from memory",
  },
  "hall-1930": {
    title: "The influence of chemical composition on the physical properties of glazes",
    author: "F. P. Hall",
    publisher: "Journal of the American Ceramic Society 13, 182–199",
    year: 1930,
    locator: "linear factors by weight from about 124 glazes",
    seen: "from memory",
  },
  "fluegel-2007": {
    title: "Glass viscosity calculation based on a global statistical modelling approach",
    author: "A. Fluegel",
    publisher: "Glass Technology A 48, 13–30",
    year: 2007,
    locator: "Table 6: temperature at 10^12 Pa·s; Tables 1 and 12: standard glasses",
    seen: "copy",
  },
  "set-point-viscosity": {
    title: "Viscosity at which a glass on cooling begins to hold stress",
    publisher: "glass technology teaching",
    year: null,
    locator: "10^12 to 10^13.5 Pa·s at the cooling rates of kilns",
    seen: "from memory",
  },
  "glaze-elastic": {
    title: "Stiffness, Poisson's ratio, toughness and density of fired glazes",
    publisher: "values of soda-lime and borosilicate glass, and ranges for glazes",
    year: null,
    locator: "E 55 to 75 GPa, ν 0.18 to 0.25, K_Ic 0.6 to 0.8 MPa·√m, 2.4 to 2.6 g/cm³",
    seen: "from memory",
  },
  "astm-c372": {
    title: "Linear thermal expansion of porcelain enamel and glaze frits by dilatometer, C372",
    publisher: "ASTM International",
    year: 2020,
    locator: "accuracy of ± 3 % on the expansion and ± 5 % on the coefficient",
    seen: "abstract only",
  },
  "soda-lime-database": {
    title: "High Temperature Glass Melt Property Database, as tabulated in an encyclopedia article",
    author: "Seward & Vascott (eds.)",
    publisher: "American Ceramic Society",
    year: 2005,
    locator: "container and window glass, 100 to 300 °C",
    seen: "at second hand",
  },
  "iso-3585": {
    title: "Borosilicate glass 3.3: properties",
    publisher: "ISO 3585 and makers' data sheets",
    year: 1998,
    locator: "3.3 ± 0.1 · 10⁻⁶/K, 20 to 300 °C",
    seen: "copy",
  },
  "brongniart-1854": {
    title: "Traité des arts céramiques, as reprinted in a handbook for Australian potters",
    author: "A. Brongniart",
    publisher: "Paris",
    year: 1854,
    locator: "formula for the dry content of a slip, with its table for solids of 2.6",
    seen: "at second hand",
  },
  "batch-practice": {
    title: "Glaze batches: additions over 100, powder densities, dip densities, bentonite",
    publisher: "potters' handbooks and trade sheets",
    year: null,
    locator: "densities of feldspar, silica, whiting, talc, dolomite and clays",
    seen: "common practice",
  },
  "powder-densities": {
    title: "Densities of oxides and carbonates",
    publisher: "chemistry handbooks",
    year: null,
    locator: "whole or half of a tenth of g/cm³",
    seen: "from memory",
  },
  "silica-limits": {
    title: "Respirable crystalline silica: OSHA 0.05, NIOSH 0.05, ACGIH 0.025 mg/m³",
    publisher: "OSHA, NIOSH, ACGIH",
    year: 2016,
    locator: "limits of the workplace air, read in 2026",
    seen: "at second hand",
  },
  "manganese-limits": {
    title:
      "Manganese: OSHA ceiling 5, NIOSH 1, ACGIH 0.02 mg/m³ respirable and 0.1 mg/m³ inhalable",
    publisher: "OSHA, NIOSH, ACGIH",
    year: null,
    locator: "limits of the workplace air, read in 2026",
    seen: "at second hand",
  },
  "eu-84-500": {
    title: "Directive 84/500/EEC on ceramic articles for contact with foodstuffs",
    publisher: "Council of the European Communities",
    year: 1984,
    locator: "lead and cadmium given off into 4 % acetic acid in 24 h at 22 °C",
    seen: "copy",
  },
  "us-food-code-lead": {
    title: "Lead given off by ceramic ware, 4-101.13",
    publisher: "FDA, Food Code",
    year: null,
    locator:
      "cups, mugs and pitchers 0.5, hollow ware from 1.1 L on 1.0, smaller 2.0, flat 3.0 mg/L, read in 2026",
    seen: "copy",
  },
  "us-cpg-cadmium": {
    title: "Cadmium given off by pottery, section 545.400",
    publisher: "FDA, Compliance Policy Guide",
    year: null,
    locator: "flat and small hollow ware 0.5, large 0.25 mg/L, read in 2026",
    seen: "copy",
  },
  "crystals-in-glaze": {
    title: "Amounts of opacifier above which crystals stay or form in a cooled glaze",
    publisher: "our own estimate after potters' handbooks",
    year: null,
    locator: "tin, zirconium and titanium oxide, and alumina mattes",
    seen: "common practice",
  },
} as const satisfies Record<string, Source>;

/** Sources of stress, cracks and delayed crazing in a glazed wall. */
export const GLAZE_STRESS_SOURCES = {
  "timoshenko-1925": {
    title: "Analysis of bi-metal thermostats",
    author: "S. Timoshenko",
    publisher: "Journal of the Optical Society of America 11, 233–255",
    year: 1925,
    locator: "curvature of two bonded strips",
    seen: "from memory",
  },
  "beuth-1992": {
    title: "Cracking of thin bonded films in residual tension",
    author: "J. L. Beuth",
    publisher: "International Journal of Solids and Structures 29, 1657–1675",
    year: 1992,
    locator: "g 1.258 for equal stiffness; Z is π/2 of it",
    seen: "from memory",
  },
  "channel-elements": {
    title: "Cracks through a coat on a body: energy against stiffness, wall and spacing",
    publisher: "finite elements in plane strain",
    year: 2026,
    locator:
      "Poisson ratios 0.20; gives 1.975 for equal stiffness where Hutchinson & Suo print 1.976",
    seen: "own computation",
  },
  "depth-weight-functions": {
    title: "Long cracks through a glaze into its wall: stress intensity against depth",
    publisher: "superposed edge cracks",
    year: 2026,
    locator:
      "equal stiffness; strip in tension agrees with the handbook's 1.367, 1.660 and 2.827 at 0.2, 0.3 and 0.5 of its width",
    seen: "own computation",
  },
  "depth-stiffness": {
    title: "What a body softer or stiffer than its glaze changes about a crack's depth",
    publisher: "finite elements in plane strain",
    year: 2026,
    locator:
      "body of 0.2 to 2 of the glaze's stiffness, walls of 4 to 20 coats, Poisson ratios 0.20; for equal stiffness within 1 % of the superposed edge cracks on both faces, within 3 % on one (a ring of great radius)",
    seen: "own computation",
  },
  "ceramics-toughness": {
    title: "Toughness, stiffness and Poisson's ratio of fired bodies",
    publisher: "handbooks of ceramics",
    year: null,
    locator: "earthenware 0.4 to 0.9, stoneware 0.9 to 1.4, porcelain 1.0 to 1.4 MPa·√m",
    seen: "from memory",
  },
  "glaze-squeeze": {
    title: "Squeeze that is wanted in a glaze, 20 to 80 MPa",
    publisher: "teaching of ceramics",
    year: null,
    locator: "a glaze bears up to ten times as much squeeze as pull",
    seen: "from memory",
  },
  "four-porous-bodies": {
    title: "Fit of several glazes on four porous bodies, and crazing in steam",
    publisher: "a study of tile bodies, seen without its title page",
    year: null,
    locator:
      "glaze over body by more than about 1.0 millionths per kelvin cracks in the kiln, by 0 to 1.0 perhaps days later, below not even in 12 h of steam; moisture growth 0.05 to 0.1 %",
    seen: "at second hand",
  },
  "hall-wilson-hoff-2011": {
    title: "Mass gain of fired clay with the fourth root of time, data to 58 years",
    author: "Hall, Wilson & Hoff",
    publisher: "Journal of the American Ceramic Society 94, 3651",
    year: 2011,
    locator: "long-term growth of 0.05 to 0.20 %",
    seen: "abstract only",
  },
  "morgan-1941": {
    title: "Moisture expansion of a vitrified red body",
    author: "Morgan",
    publisher: "Journal of the American Ceramic Society",
    year: 1941,
    locator: "none measured in 200 turns of wet and dry",
    seen: "abstract only",
  },
  "glass-slow-growth": {
    title: "Cracks that grow slowly in wet soda-lime glass",
    publisher: "handbooks of glass strength",
    year: null,
    locator: "standstill at about 0.25 MPa·√m, exponent of speed 16 to 20",
    seen: "from memory",
  },
} as const satisfies Record<string, Source>;
