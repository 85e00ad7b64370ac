import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  CONES_SOURCES,
  coneIndex
} from "./chunk-R2H4YYDI.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";

// src/core/sources/cooling.ts
var COOLING_SOURCES = {
  "fraser-1986": {
    title: "Ceramic Faults and their Remedies, as cited by an encyclopedia entry on the quartz inversion",
    author: "H. Fraser",
    publisher: "A & C Black",
    year: 1986,
    locator: "rule of 50 \xB0C/h through 573 \xB0C; the entry also cites Fortuna 2000 and Dodd & Murfin 1994",
    seen: "at second hand"
  },
  "fortuna-2000": {
    title: "Sanitaryware; read as a sanitary-ware technology text that follows it",
    author: "D. Fortuna",
    publisher: "Faenza Editrice",
    year: 2e3,
    locator: "cooling of an intermittent kiln, stage by stage; water at 100 to 150 \xB0C, 300 \xB0C/h at most, ware of 10 to 12 mm",
    seen: "at second hand"
  },
  "carpenter-1998": {
    title: "Calibration of excess thermodynamic properties and elastic constant variations associated with the \u03B1\u2013\u03B2 phase transition in quartz",
    author: "Carpenter, Salje, Graeme-Barber, Wruck, Dove & Knight",
    publisher: "American Mineralogist 83, 2\u201322",
    year: 1998,
    locator: "cell parameters by neutron diffraction",
    seen: "copy"
  },
  "raz-2002": {
    title: "Quartz: pressure, volume and temperature, table at 1 bar",
    publisher: "Raz, Girsperger & Thompson",
    year: 2002,
    locator: "1 bar rows",
    seen: "copy"
  },
  "antao-2016": {
    title: "Quartz: cell parameters and structure across the \u03B1\u2013\u03B2 transition",
    author: "S. M. Antao",
    publisher: "Acta Crystallographica B72, 249\u2013262",
    year: 2016,
    locator: "cell volumes, doi 10.1107/S205252061600233X",
    seen: "copy"
  },
  "kihara-1990": {
    title: "An X-ray study of the temperature dependence of the quartz structure",
    author: "K. Kihara",
    publisher: "European Journal of Mineralogy 2, 63\u201377",
    year: 1990,
    locator: "cell at 848 K; American Mineralogist crystal structure database 0006370",
    seen: "copy"
  },
  "holland-powell-2011": {
    title: "An improved and extended internally consistent thermodynamic dataset for phases of petrological interest",
    author: "Holland & Powell",
    publisher: "Journal of Metamorphic Geology 29, 333\u2013383",
    year: 2011,
    locator: "quartz: Landau parameters",
    seen: "copy"
  },
  "lakshtanov-2007": {
    title: "High-temperature phase transitions and elasticity of silica polymorphs",
    author: "Lakshtanov, Sinogeikin & Bass",
    publisher: "Physics and Chemistry of Minerals 34, 11\u201322",
    year: 2007,
    locator: "density at 20 and 600 \xB0C",
    seen: "copy"
  },
  "kosinski-1992": {
    title: "Thermal expansion of quartz along its axes",
    publisher: "Kosinski et al.",
    year: 1992,
    locator: "coefficients at 25 \xB0C",
    seen: "copy"
  },
  "bourova-richet-1998": {
    title: "Quartz and cristobalite: high-temperature cell parameters and volumes",
    author: "Bourova & Richet",
    publisher: "Geophysical Research Letters 25",
    year: 1998,
    locator: "volume of \u03B2-cristobalite at 750 K",
    seen: "abstract only"
  },
  "fei-1995": {
    title: "Thermal expansion (of minerals)",
    author: "Y. Fei",
    publisher: "AGU Reference Shelf 2",
    year: 1995,
    locator: "volume expansion of \u03B1-cristobalite",
    seen: "from memory"
  },
  "carslaw-jaeger-1959": {
    title: "Conduction of Heat in Solids",
    author: "Carslaw & Jaeger",
    publisher: "Oxford University Press",
    year: 1959,
    locator: "\xA73.5, slab under a ramp",
    seen: "from memory"
  },
  "cladding-2018": {
    title: "Ceramic fa\xE7ade cladding, vitrified: table of properties",
    publisher: "Applied Adhesion Science",
    year: 2018,
    locator: "density 2200 kg/m\xB3, flexural strength 55 MPa, expansion 6.0 millionths per kelvin",
    seen: "read"
  },
  "ochen-2021": {
    title: "Ceramic tiles: flexural strength",
    publisher: "Ochen et al.",
    year: 2021,
    locator: "33 MPa for a coarse tile",
    seen: "read"
  },
  "porcelain-stoneware-2020": {
    title: "Porcelain stoneware: phases and strength",
    publisher: "Bolet\xEDn de la Sociedad Espa\xF1ola de Cer\xE1mica y Vidrio",
    year: 2020,
    locator: "12.3 % of quartz by weight; flexural strength over 75 MPa at best",
    seen: "abstract only"
  },
  "porcelain-c430": {
    title: "Dense lime-based porcelain, IEC 60672 type C-430, in a database of materials",
    publisher: "database of materials, porcelain C-430",
    year: null,
    locator: "Young's modulus 91 GPa, Poisson 0.17, flexural strength 90 MPa, 1.8 W/mK, 780 J/kgK, 2600 kg/m\xB3, 6.0 millionths per kelvin, 0.86 mm\xB2/s, thermal shock 170 K",
    seen: "read"
  },
  "porcelain-page": {
    title: "Porcelain: page of material properties",
    publisher: "page of material properties, porcelain",
    year: null,
    locator: "density 2400 kg/m\xB3, conductivity 1.5 W/mK",
    seen: "read"
  },
  "cibse-guide-a": {
    title: "Guide A: Environmental Design",
    publisher: "CIBSE Guide A",
    year: null,
    locator: "table 3.36, glazed ceramic: 1.40 W/mK, 2500 kg/m\xB3, 840 J/kgK",
    seen: "read"
  }
};

// src/core/sources/firing.ts
var FIRING_SOURCES = {
  "iso-1182-2020": {
    title: "EN ISO 1182: reaction to fire tests for products, non-combustibility test",
    publisher: "ISO and CEN",
    year: 2020,
    locator: "7.2.4, furnace stabilization, in a public excerpt of BS EN ISO 1182:2020",
    seen: "copy"
  },
  "imo-ftp-2010": {
    title: "Fire Test Procedures Code, annex 1, part 3",
    publisher: "International Maritime Organization",
    year: 2010,
    locator: "8.3.1.3, deviation of the area under the furnace curve",
    seen: "read"
  },
  "ams-2750": {
    title: "AMS 2750F: pyrometry, as an article on temperature uniformity gives its furnace classes",
    publisher: "SAE International",
    year: 2020,
    locator: "furnace class 6, \xB1 28 \xB0C",
    seen: "at second hand"
  },
  "opening-practice": {
    title: "When to open a kiln",
    publisher: "teaching notes and potters' lists",
    year: null,
    locator: "first crack at or below 200 to 250 \xB0C, unloading at or below 100 to 120 \xB0C",
    seen: "common practice"
  },
  "reading-cracks": {
    title: "Reading a crack: edges, pattern, place and ring",
    publisher: "potters' teaching notes",
    year: null,
    locator: "rounded edges are older than the glaze, sharp ones younger; a cracked pot rings dull",
    seen: "common practice"
  },
  "wilson-2003": {
    title: "Moisture expansion of fired clay with the fourth root of time",
    author: "Wilson et al.",
    publisher: "Physical Review Letters 90",
    year: 2003,
    locator: "125503",
    seen: "abstract only"
  },
  "freiman-1984": {
    title: "Effects of chemical environments on slow crack growth in glasses and ceramics",
    author: "S. W. Freiman",
    publisher: "Journal of Geophysical Research 89",
    year: 1984,
    locator: "p. 4072, growth that goes on under steady stress",
    seen: "abstract only"
  },
  "thouless-1990": {
    title: "Crack spacing in brittle films on elastic substrates",
    author: "M. D. Thouless",
    publisher: "Journal of the American Ceramic Society 73",
    year: 1990,
    locator: "p. 2144, spacing with the square root of thickness",
    seen: "at second hand"
  },
  "hutchinson-suo-1992": {
    title: "Mixed mode cracking in layered materials",
    author: "Hutchinson & Suo",
    publisher: "Advances in Applied Mechanics 29",
    year: 1992,
    locator: "p. 63, a layer in tension that cracks, and how deep; applied to glaze by us",
    seen: "at second hand"
  },
  "killick-2012": {
    title: "Optimal detection of changepoints with a linear computational cost",
    author: "Killick, Fearnhead & Eckley",
    publisher: "Journal of the American Statistical Association 107",
    year: 2012,
    locator: "p. 1590, pruning",
    seen: "abstract only"
  },
  "lemire-2007": {
    title: "A better alternative to piecewise linear time series segmentation",
    author: "D. Lemire",
    publisher: "SIAM Data Mining",
    year: 2007,
    locator: "arXiv cs/0605103, constant and linear pieces together",
    seen: "abstract only"
  }
};

// src/core/sources/glaze.ts
var GLAZE_SOURCES = {
  "iupac-atomic-weights": {
    title: "Standard atomic weights, conventional and abridged values",
    publisher: "IUPAC, Commission on Isotopic Abundances and Atomic Weights",
    year: 2021,
    locator: "abridged to five figures; held in part against a copy of the 1997 table",
    seen: "from memory"
  },
  "mineral-formulas": {
    title: "Ideal formulas of minerals and salts",
    publisher: "mineralogy and chemistry textbooks",
    year: null,
    locator: "end members; what is dug and sold differs from them",
    seen: "common practice"
  },
  "appen-1974": {
    title: "Chemistry of Glass (in Russian)",
    author: "A. A. Appen",
    publisher: "Khimiya, Leningrad",
    year: 1974,
    locator: "table of partial expansions, 20 to 400 \xB0C, with ranges; method of 1961. The rules for SiO2, TiO2, B2O3 and PbO are from memory and agree with the limits seen",
    seen: "at second hand"
  },
  "winkelmann-schott-1894": {
    title: "Thermal resistance of different glasses and its dependence on composition (in German)",
    author: "Winkelmann & Schott",
    publisher: "Annalen der Physik und Chemie 51, 730",
    year: 1894,
    locator: "cubical factors by weight; SiO2, B2O3 and MgO seen quoted by English & Turner 1920, the rest from memory",
    seen: "from memory"
  },
  "hall-1930": {
    title: "The influence of chemical composition on the physical properties of glazes",
    author: "F. P. Hall",
    publisher: "Journal of the American Ceramic Society 13, 182\u2013199",
    year: 1930,
    locator: "linear factors by weight from about 124 glazes",
    seen: "from memory"
  },
  "fluegel-2007": {
    title: "Glass viscosity calculation based on a global statistical modelling approach",
    author: "A. Fluegel",
    publisher: "Glass Technology A 48, 13\u201330",
    year: 2007,
    locator: "Table 6: temperature at 10^12 Pa\xB7s; Tables 1 and 12: standard glasses",
    seen: "copy"
  },
  "set-point-viscosity": {
    title: "Viscosity at which a glass on cooling begins to hold stress",
    publisher: "glass technology teaching",
    year: null,
    locator: "10^12 to 10^13.5 Pa\xB7s at the cooling rates of kilns",
    seen: "from memory"
  },
  "glaze-elastic": {
    title: "Stiffness, Poisson's ratio, toughness and density of fired glazes",
    publisher: "values of soda-lime and borosilicate glass, and ranges for glazes",
    year: null,
    locator: "E 55 to 75 GPa, \u03BD 0.18 to 0.25, K_Ic 0.6 to 0.8 MPa\xB7\u221Am, 2.4 to 2.6 g/cm\xB3",
    seen: "from memory"
  },
  "astm-c372": {
    title: "Linear thermal expansion of porcelain enamel and glaze frits by dilatometer, C372",
    publisher: "ASTM International",
    year: 2020,
    locator: "accuracy of \xB1 3 % on the expansion and \xB1 5 % on the coefficient",
    seen: "abstract only"
  },
  "soda-lime-database": {
    title: "High Temperature Glass Melt Property Database, as tabulated in an encyclopedia article",
    author: "Seward & Vascott (eds.)",
    publisher: "American Ceramic Society",
    year: 2005,
    locator: "container and window glass, 100 to 300 \xB0C",
    seen: "at second hand"
  },
  "iso-3585": {
    title: "Borosilicate glass 3.3: properties",
    publisher: "ISO 3585 and makers' data sheets",
    year: 1998,
    locator: "3.3 \xB1 0.1 \xB7 10\u207B\u2076/K, 20 to 300 \xB0C",
    seen: "copy"
  },
  "brongniart-1854": {
    title: "Trait\xE9 des arts c\xE9ramiques, as reprinted in a handbook for Australian potters",
    author: "A. Brongniart",
    publisher: "Paris",
    year: 1854,
    locator: "formula for the dry content of a slip, with its table for solids of 2.6",
    seen: "at second hand"
  },
  "batch-practice": {
    title: "Glaze batches: additions over 100, powder densities, dip densities, bentonite",
    publisher: "potters' handbooks and trade sheets",
    year: null,
    locator: "densities of feldspar, silica, whiting, talc, dolomite and clays",
    seen: "common practice"
  },
  "powder-densities": {
    title: "Densities of oxides and carbonates",
    publisher: "chemistry handbooks",
    year: null,
    locator: "whole or half of a tenth of g/cm\xB3",
    seen: "from memory"
  },
  "silica-limits": {
    title: "Respirable crystalline silica: OSHA 0.05, NIOSH 0.05, ACGIH 0.025 mg/m\xB3",
    publisher: "OSHA, NIOSH, ACGIH",
    year: 2016,
    locator: "limits of the workplace air, read in 2026",
    seen: "at second hand"
  },
  "manganese-limits": {
    title: "Manganese: OSHA ceiling 5, NIOSH 1, ACGIH 0.02 mg/m\xB3 respirable and 0.1 mg/m\xB3 inhalable",
    publisher: "OSHA, NIOSH, ACGIH",
    year: null,
    locator: "limits of the workplace air, read in 2026",
    seen: "at second hand"
  },
  "eu-84-500": {
    title: "Directive 84/500/EEC on ceramic articles for contact with foodstuffs",
    publisher: "Council of the European Communities",
    year: 1984,
    locator: "lead and cadmium given off into 4 % acetic acid in 24 h at 22 \xB0C",
    seen: "copy"
  },
  "us-food-code-lead": {
    title: "Lead given off by ceramic ware, 4-101.13",
    publisher: "FDA, Food Code",
    year: null,
    locator: "cups, mugs and pitchers 0.5, hollow ware from 1.1 L on 1.0, smaller 2.0, flat 3.0 mg/L, read in 2026",
    seen: "copy"
  },
  "us-cpg-cadmium": {
    title: "Cadmium given off by pottery, section 545.400",
    publisher: "FDA, Compliance Policy Guide",
    year: null,
    locator: "flat and small hollow ware 0.5, large 0.25 mg/L, read in 2026",
    seen: "copy"
  },
  "crystals-in-glaze": {
    title: "Amounts of opacifier above which crystals stay or form in a cooled glaze",
    publisher: "our own estimate after potters' handbooks",
    year: null,
    locator: "tin, zirconium and titanium oxide, and alumina mattes",
    seen: "common practice"
  }
};

// src/core/sources/glazeStress.ts
var GLAZE_STRESS_SOURCES = {
  "timoshenko-1925": {
    title: "Analysis of bi-metal thermostats",
    author: "S. Timoshenko",
    publisher: "Journal of the Optical Society of America 11, 233\u2013255",
    year: 1925,
    locator: "curvature of two bonded strips",
    seen: "from memory"
  },
  "beuth-1992": {
    title: "Cracking of thin bonded films in residual tension",
    author: "J. L. Beuth",
    publisher: "International Journal of Solids and Structures 29, 1657\u20131675",
    year: 1992,
    locator: "g 1.258 for equal stiffness; Z is \u03C0/2 of it",
    seen: "from memory"
  },
  "channel-elements": {
    title: "Cracks through a coat on a body: energy against stiffness, wall and spacing",
    publisher: "finite elements in plane strain",
    year: 2026,
    locator: "Poisson ratios 0.20; gives 1.975 for equal stiffness where Hutchinson & Suo print 1.976",
    seen: "own computation"
  },
  "depth-weight-functions": {
    title: "Long cracks through a glaze into its wall: stress intensity against depth",
    publisher: "superposed edge cracks",
    year: 2026,
    locator: "equal stiffness; strip in tension agrees with the handbook's 1.367, 1.660 and 2.827 at 0.2, 0.3 and 0.5 of its width",
    seen: "own computation"
  },
  "depth-stiffness": {
    title: "What a body softer or stiffer than its glaze changes about a crack's depth",
    publisher: "finite elements in plane strain",
    year: 2026,
    locator: "body of 0.2 to 2 of the glaze's stiffness, walls of 4 to 20 coats, Poisson ratios 0.20; for equal stiffness within 1 % of the superposed edge cracks on both faces, within 3 % on one (a ring of great radius)",
    seen: "own computation"
  },
  "ceramics-toughness": {
    title: "Toughness, stiffness and Poisson's ratio of fired bodies",
    publisher: "handbooks of ceramics",
    year: null,
    locator: "earthenware 0.4 to 0.9, stoneware 0.9 to 1.4, porcelain 1.0 to 1.4 MPa\xB7\u221Am",
    seen: "from memory"
  },
  "glaze-squeeze": {
    title: "Squeeze that is wanted in a glaze, 20 to 80 MPa",
    publisher: "teaching of ceramics",
    year: null,
    locator: "a glaze bears up to ten times as much squeeze as pull",
    seen: "from memory"
  },
  "four-porous-bodies": {
    title: "Fit of several glazes on four porous bodies, and crazing in steam",
    publisher: "a study of tile bodies, seen without its title page",
    year: null,
    locator: "glaze over body by more than about 1.0 millionths per kelvin cracks in the kiln, by 0 to 1.0 perhaps days later, below not even in 12 h of steam; moisture growth 0.05 to 0.1 %",
    seen: "at second hand"
  },
  "hall-wilson-hoff-2011": {
    title: "Mass gain of fired clay with the fourth root of time, data to 58 years",
    author: "Hall, Wilson & Hoff",
    publisher: "Journal of the American Ceramic Society 94, 3651",
    year: 2011,
    locator: "long-term growth of 0.05 to 0.20 %",
    seen: "abstract only"
  },
  "morgan-1941": {
    title: "Moisture expansion of a vitrified red body",
    author: "Morgan",
    publisher: "Journal of the American Ceramic Society",
    year: 1941,
    locator: "none measured in 200 turns of wet and dry",
    seen: "abstract only"
  },
  "glass-slow-growth": {
    title: "Cracks that grow slowly in wet soda-lime glass",
    publisher: "handbooks of glass strength",
    year: null,
    locator: "standstill at about 0.25 MPa\xB7\u221Am, exponent of speed 16 to 20",
    seen: "from memory"
  }
};

// src/core/sources/kiln.ts
var KILN_SOURCES = {
  "bejan-kraus-2003": {
    title: "Heat Transfer Handbook",
    author: "Bejan & Kraus",
    publisher: "Wiley",
    year: 2003,
    locator: "lumped body cooled by radiation, equation 3.283",
    seen: "read"
  },
  "codata-2018": {
    title: "Recommended values of the fundamental physical constants",
    author: "CODATA",
    publisher: "National Institute of Standards and Technology",
    year: 2018,
    locator: "Stefan\u2013Boltzmann constant",
    seen: "from memory"
  }
};

// src/core/sources/logs.ts
var LOGS_SOURCES = {
  hampel: {
    title: "The Hampel identifier: outliers by the median and its absolute deviations (Pearson 1999)",
    publisher: "IEEE Transactions on Control Systems Technology 7, 55\u201363",
    year: 1999,
    locator: "as described in signal-processing documentation",
    seen: "copy"
  },
  "iec-60584-1": {
    title: "IEC 60584-1: Thermocouples, EMF specifications and tolerances",
    publisher: "International Electrotechnical Commission",
    year: 2013,
    locator: "upper ends of the reference tables: K 1372 \xB0C, S and R 1768.1 \xB0C, B 1820 \xB0C",
    seen: "copy"
  },
  "csv-spectrum": {
    title: "csv-spectrum: a variety of CSV files to serve as an acid test",
    publisher: "npm package csv-spectrum 2.0.0, BSD-2-Clause",
    year: null,
    locator: "csvs/ and json/",
    seen: "read"
  },
  "vega-datasets": {
    title: "vega-datasets: example data for visualisation",
    publisher: "npm package vega-datasets 3.2.1",
    year: null,
    locator: "data/*.csv",
    seen: "read"
  },
  "firing-practice": {
    title: "How long firings last, how fast kilns heat, and how warm a studio is",
    publisher: "common practice",
    year: null,
    locator: "limits set wide on purpose, used only to choose between units",
    seen: "common practice"
  },
  "summer-time": {
    title: "Days and hours at which clocks are changed in Europe and America",
    publisher: "from memory",
    year: null,
    locator: "small hours of a Sunday",
    seen: "from memory"
  }
};

// src/core/sources/photo.ts
var PHOTO_SOURCES = {
  "astm-e112": {
    title: "E112, Standard Test Methods for Determining Average Grain Size",
    publisher: "ASTM International",
    year: 2013,
    locator: "lineal intercept procedure; statistical analysis: 95 % interval, relative accuracy",
    seen: "from memory"
  },
  "underwood-1970": {
    title: "Quantitative Stereology",
    author: "E. E. Underwood",
    publisher: "Addison-Wesley",
    year: 1970,
    locator: "length of lines in an area from crossings of test lines",
    seen: "from memory"
  },
  "steger-1998": {
    title: "An unbiased detector of curvilinear structures",
    author: "C. Steger",
    publisher: "IEEE Transactions on Pattern Analysis and Machine Intelligence 20",
    year: 1998,
    locator: "pages 113 to 125: the least smoothing at which a bar has one ridge, in its middle",
    seen: "from memory"
  },
  "zhang-suen-1984": {
    title: "A fast parallel algorithm for thinning digital patterns",
    author: "T. Y. Zhang & C. Y. Suen",
    publisher: "Communications of the ACM 27",
    year: 1984,
    locator: "pages 236 to 239",
    seen: "from memory"
  },
  "srgb-1999": {
    title: "IEC 61966-2-1, Default RGB colour space: sRGB",
    publisher: "International Electrotechnical Commission",
    year: 1999,
    locator: "the curve between level and light; the shares of red, green and blue in brightness",
    seen: "from memory"
  }
};

// src/core/sources/pings.ts
var PINGS_SOURCES = {
  "utsu-1961": {
    title: "A statistical study on the occurrence of aftershocks",
    author: "T. Utsu",
    publisher: "Geophysical Magazine 30",
    year: 1961,
    locator: "modified Omori law: rate in proportion to 1/(t + c)^p",
    seen: "from memory"
  },
  "ogata-1983": {
    title: "Estimation of the parameters in the modified Omori formula by maximum likelihood",
    author: "Y. Ogata",
    publisher: "Journal of Physics of the Earth 31",
    year: 1983,
    locator: "likelihood of the times themselves",
    seen: "from memory"
  },
  "baro-2013": {
    title: "Statistical similarity between the compression of a porous material and earthquakes",
    author: "J. Bar\xF3 et al.",
    publisher: "Physical Review Letters 110, 088702",
    year: 2013,
    locator: "cracking of porous silica keeps to the modified Omori law",
    seen: "abstract only"
  },
  "crack-growth-law": {
    title: "Clicks of slow crack growth: p = 1 \u2212 m/(n \u2212 2)",
    publisher: "worked out here",
    year: 2026,
    locator: "constant stress, flaws of Weibull modulus m, crack speed as the n-th power of stress intensity; m 5 and n 18 give 0.69, m 10 gives 0.38",
    seen: "own computation"
  },
  "moisture-click-law": {
    title: "Clicks of moisture growth: p = 3/4",
    publisher: "worked out here",
    year: 2026,
    locator: "one click for every equal step of a growth that goes with the fourth root of time",
    seen: "own computation"
  },
  "ping-onset": {
    title: "First ping against misfit: set point minus onset = K(1 \u2212 \u03BD)/(E \u0394\u03B1 \u221A(Z h))",
    publisher: "channel cracks in a thin coat",
    year: 2026,
    locator: "0.4 mm of glaze: misfit 1.0, 1.5, 2.0 millionths per kelvin give 306, 204, 153 K",
    seen: "own computation"
  },
  "kass-raftery-1995": {
    title: "Bayes factors",
    author: "R. E. Kass & A. E. Raftery",
    publisher: "Journal of the American Statistical Association 90",
    year: 1995,
    locator: "a BIC difference over 10 is very strong evidence",
    seen: "from memory"
  },
  "ashman-1994": {
    title: "Detecting bimodality in astronomical datasets",
    author: "K. M. Ashman, C. M. Bird & S. E. Zepf",
    publisher: "Astronomical Journal 108",
    year: 1994,
    locator: "two groups are clearly apart when D is over 2",
    seen: "from memory"
  },
  "kulldorff-1997": {
    title: "A spatial scan statistic",
    author: "M. Kulldorff",
    publisher: "Communications in Statistics: Theory and Methods 26",
    year: 1997,
    locator: "likelihood ratio of the best window against seeded random ones",
    seen: "from memory"
  }
};

// src/core/sources/schedules.ts
var SCHEDULES_SOURCES = {
  "mastering-cone-6": {
    title: "Mastering Cone 6 Glazes, schedules as quoted by a reader in a forum post",
    publisher: "J. Hesselberth & R. Roy",
    year: 2002,
    locator: "bisque 100 \xB0C/h from 100 to 900 \xB0C; cone 6 medium glaze; slow cool 1900 to 1400 \xB0F",
    seen: "at second hand"
  },
  "bisque-guide": {
    title: "Firing schedule guide",
    publisher: "a firing guide on the web",
    year: null,
    locator: "bisque 04, slow and medium: 150 to 200 \xB0F/h to 1700 \xB0F, 108 \xB0F/h to 1945 \xB0F",
    seen: "read"
  },
  "cautious-bisque": {
    title: "Bisque for thick work, post on the Clayart list",
    publisher: "potters' mailing list",
    year: 2020,
    locator: "180 \xB0F for 3 h; 100 to 150 \xB0F/h to 250 \xB0F; 125 \xB0F/h to 1900 \xB0F",
    seen: "read"
  },
  "european-bisque": {
    title: "Bisque schedules, forum topic 4889",
    publisher: "Ceramic Arts Network community",
    year: null,
    locator: "damp ware 82 \xB0C for 1 to 4 h; 100 \xB0C/h to 600 \xB0C; thin ware 200 \xB0F/h to 220 \xB0F",
    seen: "read"
  },
  "candling-sculpture": {
    title: "Sculptor's note on candling",
    publisher: "web page",
    year: 2014,
    locator: "6 h or more at 65 to 120 \xB0C for sculpture",
    seen: "read"
  },
  "bisque-carbon": {
    title: "Notes on bisque: carbon out of the clay between 650 and 950 \xB0C",
    publisher: "common teaching",
    year: null,
    locator: "700 to 900 \xB0C at 60 to 80 \xB0C/h",
    seen: "from memory"
  },
  "burn-out-hold": {
    title: "Hold for burning out, post on the Clayart list",
    publisher: "potters' mailing list",
    year: 2019,
    locator: "about 1500 \xB0F for about 1 h",
    seen: "read"
  },
  "cone-chart-rates": {
    title: "Temperature equivalent chart for pyrometric cones",
    publisher: "Edward Orton Jr. Ceramic Foundation",
    year: 2016,
    locator: "rates hold for the last 100 \xB0C; columns 15, 60 and 150 \xB0C/h",
    seen: "copy"
  },
  "soak-length": {
    title: "How long a soak for gloss, post on the Clayart list",
    publisher: "potters' mailing list",
    year: 2002,
    locator: "15 to 20 min is enough; runs appear beyond 1 h",
    seen: "read"
  }
};

// src/core/sources/thermocouples.ts
var THERMOCOUPLES_SOURCES = {
  "nist-monograph-175": {
    title: "Temperature-Electromotive Force Reference Functions and Tables for the Letter-Designated Thermocouple Types Based on the ITS-90",
    author: "Burns, Scroger, Strouse, Croarkin & Guthrie",
    publisher: "NIST Monograph 175",
    year: 1993,
    locator: "coefficients and tables of types B, J, K, N, R, S, T, from its files of plain text",
    seen: "copy"
  },
  "astm-e230": {
    title: "ASTM E230/E230M-12: temperature-emf tables for standardized thermocouples",
    publisher: "ASTM International",
    year: 2012,
    locator: "tolerances on initial values, standard and special, in a summary of the document",
    seen: "at second hand"
  },
  "astm-e230-service": {
    title: "ASTM E230: suggested upper temperature limits of protected thermocouples, by gauge",
    publisher: "ASTM International",
    year: 2012,
    locator: "table of limits in closed-end protecting tubes, as several summaries give it",
    seen: "at second hand"
  },
  "iec-60584-tolerances": {
    title: "IEC 60584-1: thermocouples, EMF specifications and tolerances",
    publisher: "International Electrotechnical Commission",
    year: 2013,
    locator: "tolerance classes 1, 2 and 3, in summaries and a comparison table",
    seen: "at second hand"
  },
  "webster-2021": {
    title: "On base-metal thermocouples: their tolerances predict error in use poorly",
    author: "Webster",
    publisher: "Measurement Science and Technology 32",
    year: 2021,
    locator: "085007",
    seen: "at second hand"
  },
  "kollie-1975": {
    title: "On errors of type K thermocouples by short-range ordering in the Ni\u2013Cr leg",
    author: "Kollie et al.",
    publisher: "Oak Ridge National Laboratory, ORNL-TM-4862",
    year: 1975,
    locator: "errors up to 1.7 % after annealed wire was heated above 200 \xB0C; gone above 600 \xB0C",
    seen: "at second hand"
  },
  "sheath-response": {
    title: "Response times of mineral-insulated thermocouples",
    publisher: "a data sheet of sheathed thermocouples",
    year: null,
    locator: "air at 2 m/s, 90 %: 0.5 mm 5.5 s, 1.0 mm 10 s, 1.5 mm 25 s, 3.0 mm 80 s",
    seen: "read"
  }
};

// src/core/sources/trials.ts
var TRIALS_SOURCES = {
  "coat-reading": {
    title: "Thickness of glaze coats: reading error, dry over fired coat, density of fired glaze",
    publisher: "workshop practice",
    year: null,
    locator: "15 % when read by hand; dry 1.6 to 2 times fired; 2.4 to 2.6 g/cm\xB3",
    seen: "from memory"
  },
  "groisman-kaplan-1994": {
    title: "An experimental study of cracking induced by desiccation",
    author: "A. Groisman & E. Kaplan",
    publisher: "Europhysics Letters 25, 415",
    year: 1994,
    locator: "spacing of cracks in drying layers nearly in proportion to thickness",
    seen: "from memory"
  },
  "tobin-1958": {
    title: "Estimation of relationships for limited dependent variables",
    author: "J. Tobin",
    publisher: "Econometrica 26, 24\u201336",
    year: 1958,
    locator: "likelihood of observations known only to lie beyond a limit",
    seen: "from memory"
  },
  "fuller-1987": {
    title: "Measurement Error Models",
    author: "W. A. Fuller",
    publisher: "Wiley",
    year: 1987,
    locator: "reliability ratio; slopes with known error in the explaining variable",
    seen: "from memory"
  },
  "good-2005": {
    title: "Permutation, Parametric and Bootstrap Tests of Hypotheses",
    author: "P. Good",
    publisher: "Springer",
    year: 2005,
    locator: "labels exchanged within blocks; least p of few dealings",
    seen: "from memory"
  },
  "kish-1965": {
    title: "Survey Sampling",
    author: "L. Kish",
    publisher: "Wiley",
    year: 1965,
    locator: "design effect of clusters, 1 + (m \u2212 1) icc",
    seen: "from memory"
  },
  "clopper-pearson-1934": {
    title: "The use of confidence or fiducial limits illustrated in the case of the binomial",
    author: "C. J. Clopper & E. S. Pearson",
    publisher: "Biometrika 26, 404\u2013413",
    year: 1934,
    locator: "exact limits of a share",
    seen: "from memory"
  },
  "fisher-1934": {
    title: "Statistical Methods for Research Workers, 5th edition",
    author: "R. A. Fisher",
    publisher: "Oliver & Boyd",
    year: 1934,
    locator: "exact treatment of 2 \xD7 2 tables",
    seen: "from memory"
  },
  "trial-planning": {
    title: "Tiles needed for a ratio of spacings and for the exponent, by t test and least squares",
    publisher: "worked out here",
    year: 2026,
    locator: "scatter 0.25 between like tiles, our own estimate; two-sided 5 %, power 0.8",
    seen: "own computation"
  }
};

// src/core/sources/bibliography.ts
var SOURCES = {
  ...CONES_SOURCES,
  ...COOLING_SOURCES,
  ...FIRING_SOURCES,
  ...GLAZE_SOURCES,
  ...GLAZE_STRESS_SOURCES,
  ...KILN_SOURCES,
  ...LOGS_SOURCES,
  ...PHOTO_SOURCES,
  ...PINGS_SOURCES,
  ...SCHEDULES_SOURCES,
  ...TRIALS_SOURCES,
  ...THERMOCOUPLES_SOURCES
};

// src/core/sources/basedOn.ts
var WEAK = [
  "at second hand",
  "from memory",
  "common practice",
  "own computation"
];
function cited(id) {
  const { author, publisher, year, seen } = SOURCES[id];
  return [
    author ?? publisher,
    ...year === null ? [] : [year],
    ...WEAK.includes(seen) ? [seen] : []
  ].join(", ");
}
function basedOn(rule, ...ids) {
  return `${rule} (${ids.map(cited).join("; ")})`;
}

// src/core/document/nearWord.ts
function nearWord(word, known) {
  const lower = word.toLowerCase();
  let best = null;
  let bestDistance = Math.min(3, Math.max(1, Math.ceil(word.length / 3))) + 1;
  for (const candidate of known) {
    const distance = editDistance(lower, candidate.toLowerCase());
    if (distance < bestDistance) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}
function editDistance(a, b) {
  if (Math.abs(a.length - b.length) > 3) return Number.POSITIVE_INFINITY;
  const rows = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    const above = rows[i - 1];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(
        above[j] + 1,
        row[j - 1] + 1,
        above[j - 1] + same
      );
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, rows[i - 2][j - 2] + 1);
      row.push(least);
    }
    rows.push(row);
  }
  return rows[a.length][b.length];
}

// src/core/ware/bodies.ts
var FROM_MEMORY = "from memory";
var OWN_ESTIMATE = "our own estimate";
var CLADDING = cited("cladding-2018");
var PORCELAIN_SHEETS = `${cited("porcelain-c430")}; ${cited("porcelain-page")}; ${cited("cibse-guide-a")}`;
var CAPACITY = [1080, 1e3, 1150];
var UNKNOWN_BODY = body("unknown body", {
  density: [2200, 1900, 2400, OWN_ESTIMATE],
  conductivity: [1.2, 0.9, 1.6, OWN_ESTIMATE],
  young: [45, 25, 65, OWN_ESTIMATE],
  rupture: [38, 20, 60, OWN_ESTIMATE],
  quartz: [0.2, 0.1, 0.35, OWN_ESTIMATE],
  cristobalite: [0.01, 0, 0.1, OWN_ESTIMATE],
  matrix: 4.5
});
var STONEWARE_6 = body("stoneware cone 6", {
  density: [2200, 2050, 2350, CLADDING],
  conductivity: [1.2, 1, 1.5],
  young: [45, 30, 60],
  rupture: [38, 25, 55, `${CLADDING}; ${cited("ochen-2021")}; else ${FROM_MEMORY}`],
  quartz: [0.2, 0.1, 0.3],
  cristobalite: [0.01, 0, 0.05],
  matrix: 4.5
});
var ORDINARY_BODY = STONEWARE_6;
var PORCELAIN_6 = body("porcelain cone 6", {
  density: [2350, 2250, 2450],
  conductivity: [1.4, 1.1, 1.8],
  young: [62, 50, 72],
  rupture: [55, 35, 80, `${CLADDING}; ${cited("porcelain-stoneware-2020")}; else ${FROM_MEMORY}`],
  quartz: [0.18, 0.1, 0.25, `${cited("porcelain-stoneware-2020")}; range ${FROM_MEMORY}`],
  cristobalite: [0, 0, 0.02],
  matrix: 4.25
});
var CRISTOBALITIC = body("stoneware cone 10 cristobalitic", {
  density: [2250, 2100, 2350],
  conductivity: [1.3, 1, 1.6],
  young: [45, 30, 55],
  rupture: [38, 25, 50],
  quartz: [0.15, 0.05, 0.25],
  cristobalite: [0.1, 0.05, 0.2],
  matrix: 4.5
});
var BODIES = [
  {
    ...body("earthenware cone 04", {
      density: [1900, 1700, 2100],
      conductivity: [0.9, 0.5, 1.2],
      young: [20, 8, 30],
      rupture: [17, 8, 30],
      quartz: [0.28, 0.15, 0.4],
      cristobalite: [0, 0, 0.05],
      matrix: 5.5
    }),
    heatCapacityJPerKgK: property([1050, 950, 1100])
  },
  STONEWARE_6,
  PORCELAIN_6,
  body("stoneware cone 10", {
    density: [2300, 2150, 2400],
    conductivity: [1.3, 1, 1.6],
    young: [52, 40, 65],
    rupture: [45, 30, 60],
    quartz: [0.17, 0.08, 0.25],
    cristobalite: [0.03, 0, 0.1],
    matrix: 4.5
  }),
  CRISTOBALITIC,
  body("porcelain cone 10", {
    density: [2400, 2300, 2500, PORCELAIN_SHEETS],
    conductivity: [1.5, 1.2, 1.8, PORCELAIN_SHEETS],
    young: [70, 60, 91, `${cited("porcelain-c430")}; else ${FROM_MEMORY}`],
    rupture: [65, 40, 90, `${cited("porcelain-c430")}; else ${FROM_MEMORY}`],
    quartz: [0.12, 0.03, 0.2],
    cristobalite: [0, 0, 0.02],
    matrix: 4
  }),
  UNKNOWN_BODY
];
var KINDS = ["earthenware", "stoneware", "porcelain", "cristobalitic", "unknown"];
var MEANT = /* @__PURE__ */ new Map([
  ["terracotta", "earthenware"],
  ["cristobalite", "cristobalitic"]
]);
var IDLE = /* @__PURE__ */ new Set(["cone", "\u03B4", "body", "clay", "c", "fired", "to", "at"]);
function bodyNamed(words, where) {
  const said = words.toLowerCase().match(/[\p{L}]+|\d+(?:\.\d+)?/gu) ?? [];
  const kinds = said.map((word) => MEANT.get(word) ?? word).filter((word) => new RegExp("^\\p{L}", "u").test(word) && !IDLE.has(word));
  const cones = said.filter((word) => /^\d/.test(word));
  const found = cones.length > 1 ? void 0 : listed(kinds, cones[0] ?? null);
  return found === void 0 ? notListed(words, kinds, where) : ok(found);
}
function listed(kinds, cone) {
  const said = new Set(kinds);
  if (said.has("cristobalitic")) {
    said.delete("cristobalitic");
    said.delete("stoneware");
    return said.size === 0 && (cone === null || firedTo(cone) === "10") ? CRISTOBALITIC : void 0;
  }
  if (said.size !== 1) return void 0;
  const [kind] = said;
  if (kind === "unknown") return cone === null ? UNKNOWN_BODY : void 0;
  const end = cone === null ? kind === "earthenware" ? "04" : "6" : firedTo(cone);
  return BODIES.find(({ name }) => name === `${kind} cone ${end}`);
}
function firedTo(cone) {
  if (/^0\d/.test(cone)) return "04";
  const index = coneIndex(cone);
  if (index < coneIndex("4") || index > coneIndex("13")) return null;
  return index < coneIndex("8") ? "6" : "10";
}
function notListed(words, kinds, where) {
  const known = KINDS;
  const near = kinds.flatMap((word) => nearWord(word, known) ?? []);
  const corrected = [...new Set(near)].join(" ");
  const suggestions = BODIES.map(({ name }) => name).filter(
    (name) => corrected !== "" && name.includes(near[0])
  );
  return failed({
    code: "ware/unknown-body",
    what: `"${words}" is not a body of the list`,
    where,
    expected: `one of ${BODIES.map(({ name }) => name).join(", ")}`,
    fix: suggestions.length > 0 ? `write ${suggestions.map((name) => `"${name}"`).join(" or ")}` : 'write the nearest of these, or "unknown"'
  });
}
function body(name, rows) {
  return {
    name,
    densityKgPerM3: property(rows.density),
    heatCapacityJPerKgK: property(CAPACITY),
    conductivityWPerMK: property(rows.conductivity),
    youngGPa: property(rows.young),
    ruptureMPa: property(rows.rupture),
    quartzFraction: property(rows.quartz),
    cristobaliteFraction: property(rows.cristobalite),
    matrixExpansionPerK: {
      value: rows.matrix * 1e-6,
      low: rows.matrix * 8e-7,
      high: rows.matrix * 12e-7,
      source: OWN_ESTIMATE
    }
  };
}
function property([value, low, high, source = FROM_MEMORY]) {
  return { value, low, high, source };
}

export {
  cited,
  basedOn,
  nearWord,
  FROM_MEMORY,
  OWN_ESTIMATE,
  UNKNOWN_BODY,
  ORDINARY_BODY,
  BODIES,
  bodyNamed
};
