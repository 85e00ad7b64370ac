import type { Source } from "./source.ts";

/** Sources of the cooling room: inversions, and how fast ware was said to bear them. */
export const COOLING_SOURCES = {
  "fraser-1986": {
    title:
      "Ceramic Faults and their Remedies, as cited by an encyclopedia entry on the quartz inversion",
    author: "H. Fraser",
    publisher: "A & C Black",
    year: 1986,
    locator:
      "rule of 50 °C/h through 573 °C; the entry also cites Fortuna 2000 and Dodd & Murfin 1994",
    seen: "at second hand",
  },
  "fortuna-2000": {
    title: "Sanitaryware; read as a sanitary-ware technology text that follows it",
    author: "D. Fortuna",
    publisher: "Faenza Editrice",
    year: 2000,
    locator:
      "cooling of an intermittent kiln, stage by stage; water at 100 to 150 °C, 300 °C/h at most, ware of 10 to 12 mm",
    seen: "at second hand",
  },
  "carpenter-1998": {
    title:
      "Calibration of excess thermodynamic properties and elastic constant variations associated with the α–β phase transition in quartz",
    author: "Carpenter, Salje, Graeme-Barber, Wruck, Dove & Knight",
    publisher: "American Mineralogist 83, 2–22",
    year: 1998,
    locator: "cell parameters by neutron diffraction",
    seen: "copy",
  },
  "raz-2002": {
    title: "Quartz: pressure, volume and temperature, table at 1 bar",
    publisher: "Raz, Girsperger & Thompson",
    year: 2002,
    locator: "1 bar rows",
    seen: "copy",
  },
  "antao-2016": {
    title: "Quartz: cell parameters and structure across the α–β transition",
    author: "S. M. Antao",
    publisher: "Acta Crystallographica B72, 249–262",
    year: 2016,
    locator: "cell volumes, doi 10.1107/S205252061600233X",
    seen: "copy",
  },
  "kihara-1990": {
    title: "An X-ray study of the temperature dependence of the quartz structure",
    author: "K. Kihara",
    publisher: "European Journal of Mineralogy 2, 63–77",
    year: 1990,
    locator: "cell at 848 K; American Mineralogist crystal structure database 0006370",
    seen: "copy",
  },
  "holland-powell-2011": {
    title:
      "An improved and extended internally consistent thermodynamic dataset for phases of petrological interest",
    author: "Holland & Powell",
    publisher: "Journal of Metamorphic Geology 29, 333–383",
    year: 2011,
    locator: "quartz: Landau parameters",
    seen: "copy",
  },
  "lakshtanov-2007": {
    title: "High-temperature phase transitions and elasticity of silica polymorphs",
    author: "Lakshtanov, Sinogeikin & Bass",
    publisher: "Physics and Chemistry of Minerals 34, 11–22",
    year: 2007,
    locator: "density at 20 and 600 °C",
    seen: "copy",
  },
  "kosinski-1992": {
    title: "Thermal expansion of quartz along its axes",
    publisher: "Kosinski et al.",
    year: 1992,
    locator: "coefficients at 25 °C",
    seen: "copy",
  },
  "bourova-richet-1998": {
    title: "Quartz and cristobalite: high-temperature cell parameters and volumes",
    author: "Bourova & Richet",
    publisher: "Geophysical Research Letters 25",
    year: 1998,
    locator: "volume of β-cristobalite at 750 K",
    seen: "abstract only",
  },
  "fei-1995": {
    title: "Thermal expansion (of minerals)",
    author: "Y. Fei",
    publisher: "AGU Reference Shelf 2",
    year: 1995,
    locator: "volume expansion of α-cristobalite",
    seen: "from memory",
  },
  "carslaw-jaeger-1959": {
    title: "Conduction of Heat in Solids",
    author: "Carslaw & Jaeger",
    publisher: "Oxford University Press",
    year: 1959,
    locator: "§3.5, slab under a ramp",
    seen: "from memory",
  },
  "cladding-2018": {
    title: "Ceramic façade cladding, vitrified: table of properties",
    publisher: "Applied Adhesion Science",
    year: 2018,
    locator: "density 2200 kg/m³, flexural strength 55 MPa, expansion 6.0 millionths per kelvin",
    seen: "read",
  },
  "ochen-2021": {
    title: "Ceramic tiles: flexural strength",
    publisher: "Ochen et al.",
    year: 2021,
    locator: "33 MPa for a coarse tile",
    seen: "read",
  },
  "porcelain-stoneware-2020": {
    title: "Porcelain stoneware: phases and strength",
    publisher: "Boletín de la Sociedad Española de Cerámica y Vidrio",
    year: 2020,
    locator: "12.3 % of quartz by weight; flexural strength over 75 MPa at best",
    seen: "abstract only",
  },
  "porcelain-c430": {
    title: "Dense lime-based porcelain, IEC 60672 type C-430, in a database of materials",
    publisher: "database of materials, porcelain C-430",
    year: null,
    locator:
      "Young's modulus 91 GPa, Poisson 0.17, flexural strength 90 MPa, 1.8 W/mK, 780 J/kgK, 2600 kg/m³, 6.0 millionths per kelvin, 0.86 mm²/s, thermal shock 170 K",
    seen: "read",
  },
  "porcelain-page": {
    title: "Porcelain: page of material properties",
    publisher: "page of material properties, porcelain",
    year: null,
    locator: "density 2400 kg/m³, conductivity 1.5 W/mK",
    seen: "read",
  },
  "cibse-guide-a": {
    title: "Guide A: Environmental Design",
    publisher: "CIBSE Guide A",
    year: null,
    locator: "table 3.36, glazed ceramic: 1.40 W/mK, 2500 kg/m³, 840 J/kgK",
    seen: "read",
  },
} as const satisfies Record<string, Source>;
