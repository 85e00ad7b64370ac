import { failed, ok, type Problem, type Result } from "../problem.ts";
import { shown } from "../units/quantity.ts";
import { CHEMICALS } from "./chemicals.ts";
import { atomsInWords } from "./elements.ts";
import type { Material } from "./Glaze.ts";
import type { GlazeFile } from "./glazeFormat.ts";
import { firedOxideOf, namedOxides, oxidesOfFormula, stayingElements } from "./namedOxides.ts";
import { mapAmounts } from "./oxides.ts";

/** Name, ideal formula, density [g/cm³], and other words for it. */
type Row = readonly [name: string, formula: string, density: number, ...words: readonly string[]];

/**
 * Theoretical minerals and salts: ideal formulas, no product of anybody's.
 * What is dug and sold differs: an analysis of one's own is always nearer.
 * Densities of feldspars, silica, whiting, talc, dolomite and clays are those of handbooks for
 * potters, middles of their ranges; the others are from memory.
 *
 * @see SOURCES["mineral-formulas"], SOURCES["batch-practice"], SOURCES["powder-densities"]
 */
const ROWS: readonly Row[] = [
  ["potash feldspar", "KAlSi3O8", 2.6, "orthoclase", "microcline", "potassium feldspar"],
  ["soda feldspar", "NaAlSi3O8", 2.6, "albite", "sodium feldspar"],
  ["lime feldspar", "CaAl2Si2O8", 2.7, "anorthite"],
  ["nepheline", "Na3KAl4Si4O16", 2.6],
  ["petalite", "LiAlSi4O10", 2.4],
  ["spodumene", "LiAlSi2O6", 3.1],
  ["kaolinite", "Al2Si2O5(OH)4", 2.6, "kaolin", "china clay"],
  ["metakaolin", "Al2Si2O7", 2.6, "calcined kaolin", "calcined kaolinite"],
  ["montmorillonite", "Na0.33Al1.67Mg0.33Si4O10(OH)2", 2.5, "bentonite"],
  ["pyrophyllite", "Al2Si4O10(OH)2", 2.8],
  ["quartz", "SiO2", 2.65, "silica", "flint"],
  ["whiting", "CaCO3", 2.8, "calcite", "calcium carbonate", "chalk", "limestone"],
  ["dolomite", "CaMg(CO3)2", 2.85],
  ["talc", "Mg3Si4O10(OH)2", 2.75],
  ["wollastonite", "CaSiO3", 2.9],
  ["magnesite", "MgCO3", 3.0, "magnesium carbonate"],
  ["magnesia", "MgO", 3.6, "magnesium oxide"],
  ["calcined alumina", "Al2O3", 3.9, "alumina", "aluminium oxide"],
  ["alumina hydrate", "Al(OH)3", 2.4, "aluminium hydroxide"],
  ["zinc oxide", "ZnO", 5.6],
  ["strontium carbonate", "SrCO3", 3.7],
  ["barium carbonate", "BaCO3", 4.3],
  ["lithium carbonate", "Li2CO3", 2.1],
  ["soda ash", "Na2CO3", 2.5, "sodium carbonate"],
  ["pearl ash", "K2CO3", 2.4, "potassium carbonate"],
  ["borax", "Na2B4O7·10H2O", 1.7],
  ["boric acid", "H3BO3", 1.4],
  ["colemanite", "Ca2B6O11·5H2O", 2.4],
  ["ulexite", "NaCaB5O9·8H2O", 2.0],
  ["bone ash", "Ca3(PO4)2", 3.1, "calcium phosphate"],
  ["rutile", "TiO2", 4.2, "titanium dioxide", "titanium oxide"],
  ["zircon", "ZrSiO4", 4.6, "zirconium silicate"],
  ["zirconia", "ZrO2", 5.7, "zirconium oxide"],
  ["tin oxide", "SnO2", 6.9],
  ["red iron oxide", "Fe2O3", 5.2, "iron oxide", "haematite", "hematite"],
  ["black iron oxide", "Fe3O4", 5.2, "magnetite"],
  ["manganese dioxide", "MnO2", 5.0],
  ["manganese carbonate", "MnCO3", 3.7],
  ["copper carbonate", "CuCO3·Cu(OH)2", 4.0, "malachite"],
  ["copper oxide", "CuO", 6.3],
  ["cobalt carbonate", "CoCO3", 4.1],
  ["cobalt oxide", "Co3O4", 6.1],
  ["chromium oxide", "Cr2O3", 5.2, "chrome oxide"],
  ["nickel oxide", "NiO", 6.7],
];

/** The built-in materials, in the order of the table. */
export const MINERALS: readonly Material[] = ROWS.map(material);

const ALL: readonly Row[] = [...ROWS, ...CHEMICALS];
const ALL_MATERIALS: readonly Material[] = [...MINERALS, ...CHEMICALS.map(material)];

/** Every word for a built-in material, in lower case, and the material. */
export const MINERAL_WORDS: ReadonlyMap<string, Material> = new Map(
  ALL.flatMap(([name, , , ...words], index) =>
    [name, ...words].flatMap(spelled).map((word) => [word, ALL_MATERIALS[index]!] as const),
  ),
);

/**
 * A substance written as its formula, `Pb3O4` or `K2Cr2O7`, of at least two elements or with a number.
 * @returns null for what is no formula, and for what leaves nothing in a glaze.
 */
export function materialOfFormula(name: string): Material | null {
  const formula = name.trim();
  const atoms = atomsInWords(formula);
  if (atoms === null || (atoms.size < 2 && !/\d/.test(formula))) return null;
  const staying = stayingElements(atoms);
  if (staying.length === 0 || staying.some((element) => firedOxideOf(element) === null))
    return null;
  return {
    name: formula,
    formula,
    ...oxidesOfFormula(formula),
    densityGPerCm3: null,
    source: "mineral-formulas",
  };
}

function material([name, formula, densityGPerCm3]: Row): Material {
  return {
    name,
    formula,
    ...oxidesOfFormula(formula),
    densityGPerCm3,
    source: "mineral-formulas",
  };
}

/** A word as it is spelled on either side of the ocean. */
function spelled(word: string): readonly string[] {
  const other = word.replace("sulph", "sulf").replace("aluminium", "aluminum");
  return other === word ? [word] : [word, other];
}

/** How far an analysis may be from 100 [per cent]. */
const TOLERANCE = 2;

/** A material as the file gives it. */
type GivenMaterial = NonNullable<GlazeFile["materials"]>[string];

/**
 * A material from an analysis of one's own.
 * As received, oxides and loss make 100; calcined, the oxides alone do and the loss is taken off
 * them. Within ± 2 they are scaled to exactly 100.
 *
 * @param placeOf Place of a path inside the material, for problems.
 * @returns `glaze/loss`, `glaze/analysis-sum`, and the problems of `namedOxides`.
 */
export function ownMaterial(
  name: string,
  given: GivenMaterial,
  placeOf: (path: readonly string[]) => string,
): Result<{ readonly material: Material; readonly remarks: readonly string[] }> {
  const loi = given.loi ?? 0;
  const oxides = namedOxides(given.oxides, {
    by: "weight",
    placeOf: (key) => placeOf(["oxides", key]),
  });
  const problems: Problem[] = oxides.ok ? [] : [...oxides.problems];
  if (loi >= 100) problems.push(lossProblem(loi, placeOf(["loi"])));
  else if (oxides.ok) {
    const sum = oxides.value.sum + (given.basis === "calcined" ? 0 : loi);
    if (Math.abs(sum - 100) > TOLERANCE)
      problems.push(sumProblem(oxides.value.sum, given, placeOf([])));
  }
  if (!oxides.ok || problems.length > 0) return failed(...problems);
  const { amounts, sum, remarks } = oxides.value;
  const kept = given.basis === "calcined" ? 1 - loi / 100 : sum / (sum + loi);
  return ok({
    material: {
      name,
      formula: null,
      oxides: mapAmounts(amounts, (amount) => (amount / sum) * kept),
      lossFraction: 1 - kept,
      densityGPerCm3: given.density ?? null,
      source: { yours: given.source },
    },
    remarks: remarks.map((remark) => `${name}: ${remark}`),
  });
}

function lossProblem(loi: number, where: string): Problem {
  return {
    code: "glaze/loss",
    what: `loi is ${shown(loi)}`,
    where,
    expected: "a loss on ignition below 100 per cent, for something has to stay in the glaze",
    fix: "check the number; what burns away whole, such as gum, belongs in notes",
  };
}

function sumProblem(sum: number, given: GivenMaterial, where: string): Problem {
  const loi = given.loi ?? 0;
  const alone = percentText(sum);
  const withLoss = percentText(sum + loi);
  const other = given.basis === "calcined" ? sum + loi : sum;
  const asCalcined = given.basis === "calcined";
  return {
    code: "glaze/analysis-sum",
    what: `the oxides add up to ${alone}, and with the loss on ignition to ${withLoss}`,
    where,
    expected: asCalcined
      ? `oxides of 100 ± ${TOLERANCE} % by themselves (basis: calcined)`
      : `oxides and loss of 100 ± ${TOLERANCE} % together (basis: as received)`,
    fix:
      Math.abs(other - 100) <= TOLERANCE && loi !== 0
        ? `write basis: ${asCalcined ? "as received" : "calcined"}, which these numbers fit`
        : "look for the oxide or the loss that is missing or mistyped",
  };
}

function percentText(value: number): string {
  return `${value.toFixed(1)} %`;
}
