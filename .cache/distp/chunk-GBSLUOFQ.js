import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  leachLimits
} from "./chunk-4LHYQSW7.js";
import {
  GivenBodyFile
} from "./chunk-BUYZUOGW.js";
import {
  external_exports
} from "./chunk-2Y6UMGL7.js";

// src/core/glaze/glazeFormat.ts
var MOST_LINES = 60;
var Quantity = external_exports.union([external_exports.number(), external_exports.string().min(1)]);
var Words = external_exports.string().min(1).max(200);
var Amounts = external_exports.record(external_exports.string(), external_exports.number().nonnegative()).refine((amounts) => Object.keys(amounts).length <= MOST_LINES, {
  error: `at most ${MOST_LINES} oxides`
});
var Parts = external_exports.union([
  external_exports.number().positive(),
  external_exports.strictObject({
    parts: external_exports.number().positive().describe("Parts by weight."),
    calcined: external_exports.boolean().optional().describe("Weighed calcined: its loss is fired off already.")
  })
]);
var Lines = external_exports.record(external_exports.string(), Parts).refine((lines) => Object.keys(lines).length <= MOST_LINES, {
  error: `at most ${MOST_LINES} materials`
});
var OwnMaterial = external_exports.strictObject({
  oxides: Amounts.describe("Its analysis, weight per cent by oxide."),
  loi: external_exports.number().min(-10).max(1e3).optional().describe("Loss on ignition, per cent of the weight; 0 when left out."),
  basis: external_exports.enum(["as received", "calcined"]).optional().describe(
    "as received: oxides and loss make 100; calcined: the oxides alone do. As received when left out."
  ),
  density: external_exports.number().min(0.5).max(12).optional().describe("Density of the solid, g/cm\xB3."),
  source: Words.describe("Where the analysis comes from, and when.")
}).describe("A material of your own: oxides, loi and source.");
var Spread = (unit) => external_exports.union([
  external_exports.number().positive(),
  external_exports.strictObject({
    value: external_exports.number().positive().describe(`The value [${unit}].`),
    low: external_exports.number().positive().describe("One in ten lies below."),
    high: external_exports.number().positive().describe("One in ten lies above.")
  })
]);
var Cracks = external_exports.strictObject({
  cracked: external_exports.boolean().optional().describe("Whether the glaze cracked; left out: nobody looked."),
  spacing: external_exports.strictObject({
    mean: Quantity.describe("Mean distance: millimetres, or like 1/4 in."),
    low: Quantity.describe("Nine in ten say it is more."),
    high: Quantity.describe("Nine in ten say it is less."),
    counted: external_exports.enum(["along lines", "pitch"]).describe("along lines: lengths between cracks along random lines; pitch: size of cells.")
  }).optional(),
  pings: external_exports.array(
    external_exports.strictObject({
      coat: Quantity.describe('Fired coat of the piece that pinged, with its unit: "0.6 mm".'),
      at: Quantity.describe('When the first ping was heard: \xB0C, or like "420 F".'),
      plusMinus: external_exports.number().positive().describe("One standard deviation of that, kelvin."),
      kiln: external_exports.enum(["shut", "opened", "not noted"]).describe("The kiln at that moment.")
    })
  ).max(20).optional().describe("First pings on cooling, a line each.")
});
var LeachTestFile = external_exports.strictObject({
  ware: external_exports.enum(["cup", "dish", "cooking"]).describe("cup: cup, mug or pitcher; dish: plate, bowl or jar; cooking: to cook or bake in."),
  depth: Quantity.describe("From the lowest place inside to the rim: millimetres."),
  holds: Quantity.describe("What it holds: litres, or like 300 mL."),
  lead: Words.optional().describe('Lead found: "0.42 mg/L", "0.05 mg/dm2", "<0.02 mg/L".'),
  cadmium: Words.optional().describe("Cadmium found, in the same way."),
  source: Words.describe("Which laboratory, and when.")
});
var GlazeFile = external_exports.strictObject({
  formatVersion: external_exports.literal(1).describe("Version of this format."),
  title: Words.describe("Name of the glaze."),
  invented: external_exports.literal(true).optional().describe("true when it was made up as an example."),
  basis: external_exports.enum(["wt %", "mol %", "moles"]).optional().describe("What the numbers under oxides are; moles may have any sum, as a unity formula."),
  oxides: Amounts.optional().describe("The fired glaze by oxide; needs basis."),
  recipe: Lines.optional().describe("Material and parts by weight; the base, meant to make 100."),
  additions: Lines.optional().describe("Material and parts on top of 100 of the base."),
  materials: external_exports.record(external_exports.string(), OwnMaterial).optional().describe("Analyses of your own materials, by the name used in the recipe."),
  cone: external_exports.string().min(1).optional().describe('Cone it is fired to, in quotes: "6".'),
  crackle: external_exports.boolean().optional().describe("The glaze is meant to crackle."),
  expansion: external_exports.strictObject({
    value: external_exports.number().describe("Mean linear expansion per kelvin: 7.2e-6."),
    plusMinus: external_exports.number().positive().optional().describe("One standard deviation, per kelvin."),
    from: external_exports.number().optional().describe("Lower end of the range, \xB0C; 20 when left out."),
    to: external_exports.number().describe("Upper end of the range, \xB0C."),
    how: Words.describe("How it was measured, and on what.")
  }).optional().describe("Expansion as measured; it then rules over the computed one."),
  setPoint: external_exports.strictObject({
    value: Quantity.describe('Set point: \xB0C, or like "1080 F".'),
    plusMinus: external_exports.number().positive().optional().describe("One standard deviation, kelvin."),
    how: Words.describe("How it was found.")
  }).optional().describe("Where the glaze stops flowing on cooling, as measured."),
  youngGPa: Spread("GPa").optional().describe("Stiffness of the fired glaze, GPa."),
  poisson: Spread("1").optional().describe("Poisson's ratio of the fired glaze."),
  toughness: Spread("MPa\u221Am").optional().describe("Toughness of the fired glaze, MPa\u221Am."),
  firedDensity: Spread("g/cm\xB3").optional().describe("Density of the fired glaze, g/cm\xB3."),
  solidsDensity: external_exports.number().min(1).max(8).optional().describe("Density of the dry powder's solids, g/cm\xB3; worked out when left out."),
  body: GivenBodyFile.optional().describe(
    "The body under it: stoneware cone 6, or a group of its properties."
  ),
  absorption: external_exports.number().min(0).max(40).optional().describe("Water that the fired body takes up, per cent."),
  wall: Quantity.optional().describe("Thickness of the wall: millimetres, or like 1/4 in."),
  coat: Quantity.optional().describe('Thickness of the fired glaze, with its unit: "0.6 mm".'),
  glazedSides: external_exports.enum(["one", "both"]).optional().describe("one side or both."),
  shape: external_exports.enum(["closed", "flat"]).optional().describe("closed, as a mug, cannot bend; flat, as a tile, can. Closed when left out."),
  leachTests: external_exports.array(LeachTestFile).max(20).optional().describe("What a laboratory found given off by fired pieces, a test each."),
  cracks: Cracks.optional().describe("What was seen and heard of cracks on this piece."),
  notes: external_exports.string().max(4e3).optional().describe("Anything else to know.")
}).describe("A glaze.");

// src/core/glaze/elements.ts
var ROWS = [
  ["H", "hydrogen", 1.008],
  ["He", "helium", 4.0026],
  ["Li", "lithium", 6.94],
  ["Be", "beryllium", 9.0122],
  ["B", "boron", 10.81],
  ["C", "carbon", 12.011],
  ["N", "nitrogen", 14.007],
  ["O", "oxygen", 15.999],
  ["F", "fluorine", 18.998],
  ["Ne", "neon", 20.18],
  ["Na", "sodium", 22.99],
  ["Mg", "magnesium", 24.305],
  ["Al", "aluminium", 26.982],
  ["Si", "silicon", 28.085],
  ["P", "phosphorus", 30.974],
  ["S", "sulphur", 32.06],
  ["Cl", "chlorine", 35.45],
  ["Ar", "argon", 39.95],
  ["K", "potassium", 39.098],
  ["Ca", "calcium", 40.078],
  ["Sc", "scandium", 44.956],
  ["Ti", "titanium", 47.867],
  ["V", "vanadium", 50.942],
  ["Cr", "chromium", 51.996],
  ["Mn", "manganese", 54.938],
  ["Fe", "iron", 55.845],
  ["Co", "cobalt", 58.933],
  ["Ni", "nickel", 58.693],
  ["Cu", "copper", 63.546],
  ["Zn", "zinc", 65.38],
  ["Ga", "gallium", 69.723],
  ["Ge", "germanium", 72.63],
  ["As", "arsenic", 74.922],
  ["Se", "selenium", 78.971],
  ["Br", "bromine", 79.904],
  ["Kr", "krypton", 83.798],
  ["Rb", "rubidium", 85.468],
  ["Sr", "strontium", 87.62],
  ["Y", "yttrium", 88.906],
  ["Zr", "zirconium", 91.224],
  ["Nb", "niobium", 92.906],
  ["Mo", "molybdenum", 95.95],
  ["Tc", "technetium", 98],
  ["Ru", "ruthenium", 101.07],
  ["Rh", "rhodium", 102.91],
  ["Pd", "palladium", 106.42],
  ["Ag", "silver", 107.87],
  ["Cd", "cadmium", 112.41],
  ["In", "indium", 114.82],
  ["Sn", "tin", 118.71],
  ["Sb", "antimony", 121.76],
  ["Te", "tellurium", 127.6],
  ["I", "iodine", 126.9],
  ["Xe", "xenon", 131.29],
  ["Cs", "caesium", 132.91],
  ["Ba", "barium", 137.33],
  ["La", "lanthanum", 138.91],
  ["Ce", "cerium", 140.12],
  ["Pr", "praseodymium", 140.91],
  ["Nd", "neodymium", 144.24],
  ["Pm", "promethium", 145],
  ["Sm", "samarium", 150.36],
  ["Eu", "europium", 151.96],
  ["Gd", "gadolinium", 157.25],
  ["Tb", "terbium", 158.93],
  ["Dy", "dysprosium", 162.5],
  ["Ho", "holmium", 164.93],
  ["Er", "erbium", 167.26],
  ["Tm", "thulium", 168.93],
  ["Yb", "ytterbium", 173.05],
  ["Lu", "lutetium", 174.97],
  ["Hf", "hafnium", 178.49],
  ["Ta", "tantalum", 180.95],
  ["W", "tungsten", 183.84],
  ["Re", "rhenium", 186.21],
  ["Os", "osmium", 190.23],
  ["Ir", "iridium", 192.22],
  ["Pt", "platinum", 195.08],
  ["Au", "gold", 196.97],
  ["Hg", "mercury", 200.59],
  ["Tl", "thallium", 204.38],
  ["Pb", "lead", 207.2],
  ["Bi", "bismuth", 208.98],
  ["Po", "polonium", 209],
  ["At", "astatine", 210],
  ["Rn", "radon", 222],
  ["Fr", "francium", 223],
  ["Ra", "radium", 226],
  ["Ac", "actinium", 227],
  ["Th", "thorium", 232.04],
  ["Pa", "protactinium", 231.04],
  ["U", "uranium", 238.03],
  ["Np", "neptunium", 237],
  ["Pu", "plutonium", 244],
  ["Am", "americium", 243],
  ["Cm", "curium", 247],
  ["Bk", "berkelium", 247],
  ["Cf", "californium", 251],
  ["Es", "einsteinium", 252],
  ["Fm", "fermium", 257],
  ["Md", "mendelevium", 258],
  ["No", "nobelium", 259],
  ["Lr", "lawrencium", 262],
  ["Rf", "rutherfordium", 267],
  ["Db", "dubnium", 268],
  ["Sg", "seaborgium", 269],
  ["Bh", "bohrium", 270],
  ["Hs", "hassium", 269],
  ["Mt", "meitnerium", 277],
  ["Ds", "darmstadtium", 281],
  ["Rg", "roentgenium", 282],
  ["Cn", "copernicium", 285],
  ["Nh", "nihonium", 286],
  ["Fl", "flerovium", 290],
  ["Mc", "moscovium", 290],
  ["Lv", "livermorium", 293],
  ["Ts", "tennessine", 294],
  ["Og", "oganesson", 294]
];
var ATOMIC_WEIGHTS = new Map(
  ROWS.map(([symbol, , weight]) => [symbol, weight])
);
var OTHER_NAMES = [
  [/\bplumb\w*|\blitharge|\bgalena|\bminium\b/, "Pb"],
  [/\bantimon\w*|\bstibn\w*/, "Sb"],
  [/\barsen\w*|\borpiment|\brealgar/, "As"],
  [/\bmercur\w*|\bcinnabar|\bvermilion|\bcalomel/, "Hg"],
  [/\bthall\w*/, "Tl"],
  [/\buran\w*|\byellowcake|\bpitchblende/, "U"],
  [/\bselen\w*/, "Se"],
  [/\bcadm\w*/, "Cd"],
  [/\bberyl\w*/, "Be"],
  [/\bchrom\w*|\bdichromate/, "Cr"],
  [/\bvanad\w*/, "V"],
  [/\bnickel\w*/, "Ni"],
  [/\bcobalt\w*/, "Co"],
  [/\bmangan\w*|\bpermanganate/, "Mn"],
  [/\bbari?um|\bbaryt\w*|\bwitherite/, "Ba"],
  [/\blith\w*|\blepidolite/, "Li"],
  [/\bcupr\w*|\bcopper\w*/, "Cu"],
  [/\bbor(?:ic|ate|ax)\w*/, "B"]
];
function elementName(symbol) {
  return ROWS.find(([each]) => each === symbol)?.[1] ?? symbol;
}
function elementIn(words) {
  const lower = words.toLowerCase();
  const other = OTHER_NAMES.find(([pattern]) => pattern.test(lower));
  if (other !== void 0) return other[1];
  const named = ROWS.find(([, name]) => new RegExp(`\\b${name}\\b`).test(lower));
  return named?.[0] ?? null;
}

// src/core/glaze/chemicalFormula.ts
var PIECE = /([A-Z][a-z]?|\(|\)|·)(\d+(?:\.\d+)?)?/gy;
function atomsIn(formula) {
  const total = /* @__PURE__ */ new Map();
  for (const part of formula.split("\xB7")) {
    const [, times = "", rest = ""] = /^(\d+)?(.*)$/.exec(part) ?? [];
    for (const [element, count] of groupIn(rest, formula))
      add(total, element, count * (times === "" ? 1 : Number(times)));
  }
  return total;
}
function molarMass(formula) {
  let mass = 0;
  for (const [element, count] of atomsIn(formula)) mass += count * weightOf(element, formula);
  return mass;
}
function atomsInWords(text) {
  try {
    const atoms = atomsIn(text);
    return atoms.size > 0 && [...atoms.keys()].every((each) => ATOMIC_WEIGHTS.has(each)) ? atoms : null;
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
function groupIn(text, formula) {
  const stack = [/* @__PURE__ */ new Map()];
  let end = 0;
  for (const [piece, token, digits] of text.matchAll(PIECE)) {
    end += piece.length;
    const count = digits === void 0 ? 1 : Number(digits);
    if (token === "(") stack.push(/* @__PURE__ */ new Map());
    else if (token === ")") closeGroup(stack, count, formula);
    else add(stack.at(-1), token, count);
  }
  if (end !== text.length || stack.length !== 1) throw new RangeError(`atomsIn: "${formula}"`);
  return stack[0];
}
function closeGroup(stack, times, formula) {
  const group = stack.pop();
  const around = stack.at(-1);
  if (group === void 0 || around === void 0) throw new RangeError(`atomsIn: "${formula}"`);
  for (const [element, count] of group) add(around, element, count * times);
}
function add(counts, element, count) {
  counts.set(element, (counts.get(element) ?? 0) + count);
}
function weightOf(element, formula) {
  const weight = ATOMIC_WEIGHTS.get(element);
  if (weight === void 0) throw new RangeError(`molarMass: no element ${element} in ${formula}`);
  return weight;
}

// src/core/glaze/oxides.ts
var OXIDES = [
  "Li2O",
  "Na2O",
  "K2O",
  "MgO",
  "CaO",
  "SrO",
  "BaO",
  "ZnO",
  "PbO",
  "Al2O3",
  "B2O3",
  "SiO2",
  "P2O5",
  "TiO2",
  "ZrO2",
  "SnO2",
  "FeO",
  "Fe2O3",
  "MnO",
  "CoO",
  "NiO",
  "CuO",
  "Cr2O3",
  "V2O5",
  "CeO2",
  "Bi2O3",
  "Sb2O3",
  "As2O3",
  "CdO",
  "BeO",
  "SeO2",
  "HgO",
  "Tl2O",
  "U3O8",
  "ThO2",
  "Rb2O",
  "Cs2O",
  "Ag2O",
  "Ga2O3",
  "In2O3",
  "Sc2O3",
  "Y2O3",
  "La2O3",
  "Pr2O3",
  "Nd2O3",
  "Sm2O3",
  "Eu2O3",
  "Gd2O3",
  "Tb2O3",
  "Dy2O3",
  "Ho2O3",
  "Er2O3",
  "Tm2O3",
  "Yb2O3",
  "Lu2O3",
  "GeO2",
  "HfO2",
  "Nb2O5",
  "Ta2O5",
  "MoO3",
  "WO3",
  "Re2O7",
  "TeO2",
  "RuO2",
  "Rh2O3",
  "PdO",
  "OsO2",
  "IrO2",
  "Pt",
  "Au",
  "SO3",
  "F",
  "Cl",
  "Br",
  "I"
];
var FLUXES = [
  "Li2O",
  "Na2O",
  "K2O",
  "MgO",
  "CaO",
  "SrO",
  "BaO",
  "ZnO",
  "PbO"
];
var ALKALIS = ["Li2O", "Na2O", "K2O"];
var MASSES = Object.fromEntries(OXIDES.map((oxide) => [oxide, molarMass(oxide)]));
function oxideMass(oxide) {
  return MASSES[oxide];
}
function entriesOf(amounts) {
  return OXIDES.flatMap((oxide) => {
    const amount = amounts[oxide] ?? 0;
    return amount === 0 ? [] : [[oxide, amount]];
  });
}
function mapAmounts(amounts, change) {
  return Object.fromEntries(
    entriesOf(amounts).flatMap(([oxide, amount]) => {
      const changed = change(amount, oxide);
      return changed === 0 ? [] : [[oxide, changed]];
    })
  );
}
function totalOf(amounts, of = OXIDES) {
  return of.reduce((sum, oxide) => sum + (amounts[oxide] ?? 0), 0);
}
function scaledTo(total, amounts) {
  const sum = totalOf(amounts);
  if (!(sum > 0)) throw new RangeError(`scaledTo: amounts add up to ${sum}`);
  return mapAmounts(amounts, (amount) => amount * total / sum);
}
function molesOf(weights) {
  return mapAmounts(weights, (weight, oxide) => weight / oxideMass(oxide));
}
function weightsOf(moles) {
  return mapAmounts(moles, (amount, oxide) => amount * oxideMass(oxide));
}

// src/core/glaze/leachSheet.ts
function leachSheet(test) {
  return leachLimits(test.ware).flatMap((limit) => {
    const found = test[limit.metal];
    return found === null ? [] : [{ limit, found, stands: standsAt(found, limit) }];
  });
}
function standsAt(found, limit) {
  if (found.unit !== limit.unit) return "open";
  if (found.value <= limit.most) return "under";
  return found.isBelow ? "open" : "over";
}

export {
  elementName,
  elementIn,
  atomsIn,
  molarMass,
  atomsInWords,
  OXIDES,
  FLUXES,
  ALKALIS,
  oxideMass,
  entriesOf,
  mapAmounts,
  totalOf,
  scaledTo,
  molesOf,
  weightsOf,
  GlazeFile,
  leachSheet
};
