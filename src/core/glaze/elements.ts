/** An element: symbol, name, conventional atomic weight [g/mol]; of one without stable atoms, a mass number. */
type Row = readonly [symbol: string, name: string, weight: number];

/**
 * The elements by atomic number. Weights to five figures where they have them; those of elements
 * that no ordinary glaze holds are from memory.
 *
 * @see SOURCES["iupac-atomic-weights"]
 */
const ROWS: readonly Row[] = [
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
  ["Og", "oganesson", 294],
];

/** Atomic weight by symbol [g/mol]. */
const ATOMIC_WEIGHTS: ReadonlyMap<string, number> = new Map(
  ROWS.map(([symbol, , weight]) => [symbol, weight]),
);

/** Other names under which an element stands in words for what is bought. */
const OTHER_NAMES: readonly (readonly [words: RegExp, symbol: string])[] = [
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
  [/\bbor(?:ic|ate|ax)\w*/, "B"],
];

/** The name of an element; its symbol where there is no such element. */
export function elementName(symbol: string): string {
  return ROWS.find(([each]) => each === symbol)?.[1] ?? symbol;
}

/** The element that words name: `lead oxide`, `uranyl nitrate`; those that poison first, null when none is named. */
export function elementIn(words: string): string | null {
  const lower = words.toLowerCase();
  const other = OTHER_NAMES.find(([pattern]) => pattern.test(lower));
  if (other !== undefined) return other[1];
  const named = ROWS.find(([, name]) => new RegExp(`\\b${name}\\b`).test(lower));
  return named?.[0] ?? null;
}

/** Atoms of each element in one formula unit. */
export type AtomCounts = ReadonlyMap<string, number>;

const PIECE = /([A-Z][a-z]?|\(|\)|·)(\d+(?:\.\d+)?)?/gy;

/**
 * Atoms of each element in a formula such as `CaMg(CO3)2`, `Ca2B6O11·5H2O` or `Na0.33Al1.67`.
 * A number behind a middle dot multiplies all up to the next dot. RangeError for anything else.
 */
export function atomsIn(formula: string): AtomCounts {
  const total = new Map<string, number>();
  for (const part of formula.split("·")) {
    const [, times = "", rest = ""] = /^(\d+)?(.*)$/.exec(part) ?? [];
    for (const [element, count] of groupIn(rest, formula))
      add(total, element, count * (times === "" ? 1 : Number(times)));
  }
  return total;
}

/** Mass of one mole of a formula [g]. */
export function molarMass(formula: string): number {
  let mass = 0;
  for (const [element, count] of atomsIn(formula)) mass += count * weightOf(element, formula);
  return mass;
}

/**
 * Atoms in what a person may have meant as a formula.
 * @returns null where it is none, or names what is no element.
 */
export function atomsInWords(text: string): AtomCounts | null {
  try {
    const atoms = atomsIn(text);
    return atoms.size > 0 && [...atoms.keys()].every((each) => ATOMIC_WEIGHTS.has(each))
      ? atoms
      : null;
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

function groupIn(text: string, formula: string): AtomCounts {
  const stack: Map<string, number>[] = [new Map()];
  let end = 0;
  for (const [piece, token, digits] of text.matchAll(PIECE)) {
    end += piece.length;
    const count = digits === undefined ? 1 : Number(digits);
    if (token === "(") stack.push(new Map());
    else if (token === ")") closeGroup(stack, count, formula);
    else add(stack.at(-1)!, token as string, count);
  }
  if (end !== text.length || stack.length !== 1) throw new RangeError(`atomsIn: "${formula}"`);
  return stack[0]!;
}

function closeGroup(stack: Map<string, number>[], times: number, formula: string): void {
  const group = stack.pop();
  const around = stack.at(-1);
  if (group === undefined || around === undefined) throw new RangeError(`atomsIn: "${formula}"`);
  for (const [element, count] of group) add(around, element, count * times);
}

function add(counts: Map<string, number>, element: string, count: number): void {
  counts.set(element, (counts.get(element) ?? 0) + count);
}

function weightOf(element: string, formula: string): number {
  const weight = ATOMIC_WEIGHTS.get(element);
  if (weight === undefined) throw new RangeError(`molarMass: no element ${element} in ${formula}`);
  return weight;
}
