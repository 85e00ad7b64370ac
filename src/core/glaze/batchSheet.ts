import type { Recipe, RecipeLine } from "./Glaze.ts";
import { type Oxide, type OxideAmounts, totalOf } from "./oxides.ts";

/** One line of a batch sheet. */
export interface BatchRow {
  readonly name: string;
  readonly part: "base" | "addition";
  readonly calcined: boolean;
  /** Ideal formula that it is counted as; null for an analysis of one's own. */
  readonly formula: string | null;
  /** Share of the material as it is dug or sold, not calcined, that fires away, 0 to 1. */
  readonly lossFraction: number;
  /** As the recipe writes it. */
  readonly parts: number;
  /** Of the base scaled to 100 [per cent]. */
  readonly percentOfBase: number;
  /** Of base and additions together [per cent]. */
  readonly percentOfTotal: number;
  /** When the mass wanted is that of the base [g]; null without a mass wanted. */
  readonly gramsForBase: number | null;
  /** When the mass wanted is that of base and additions [g]; null without a mass wanted. */
  readonly gramsForTotal: number | null;
  /**
   * Parts of the other form, calcined for raw or raw for calcined; null when nothing fires away, and
   * for raw carbonates and salts, which nobody keeps calcined.
   */
  readonly swappedParts: number | null;
}

/** A recipe laid out for the scales. */
export interface BatchSheet {
  /** The mass wanted [g]; null when none was. */
  readonly wantedG: number | null;
  /** Sum of the base as written [parts]; meant to be 100. */
  readonly baseSum: number;
  readonly additionsSum: number;
  readonly rows: readonly BatchRow[];
  /** What the wanted mass weighs in all when it is that of the base [g]. */
  readonly totalForBaseG: number | null;
}

/**
 * A recipe for the scales, read both ways: the mass wanted as that of the base, and of the whole.
 * A base that does not make 100 is scaled to it, and additions with it.
 *
 * @param wantedG Mass wanted [g], above 0; null for percentages only.
 */
export function batchSheet(recipe: Recipe, wantedG: number | null): BatchSheet {
  const baseSum = sumOf(recipe.base);
  const additionsSum = sumOf(recipe.additions);
  const total = baseSum + additionsSum;
  const row =
    (part: BatchRow["part"]) =>
    (line: RecipeLine): BatchRow => ({
      name: line.name,
      part,
      calcined: line.calcined,
      formula: line.material.formula,
      lossFraction: line.material.lossFraction,
      parts: line.parts,
      percentOfBase: (100 * line.parts) / baseSum,
      percentOfTotal: (100 * line.parts) / total,
      gramsForBase: wantedG === null ? null : (wantedG * line.parts) / baseSum,
      gramsForTotal: wantedG === null ? null : (wantedG * line.parts) / total,
      swappedParts: hasOtherForm(line) ? swappedParts(line) : null,
    });
  return {
    wantedG,
    baseSum,
    additionsSum,
    rows: [...recipe.base.map(row("base")), ...recipe.additions.map(row("addition"))],
    totalForBaseG: wantedG === null ? null : (wantedG * total) / baseSum,
  };
}

function sumOf(lines: readonly RecipeLine[]): number {
  return lines.reduce((sum, { parts }) => sum + parts, 0);
}

function hasOtherForm({ material, calcined }: RecipeLine): boolean {
  if (!(material.lossFraction > 0)) return false;
  return calcined || (material.oxides.SiO2 ?? 0) + (material.oxides.Al2O3 ?? 0) > 0.5;
}

/** What of a recipe stays after firing. */
export interface FiredRecipe {
  /** By weight, from the whole recipe [parts]. */
  readonly weights: OxideAmounts;
  /** Share of the weighed dry batch that fires away, 0 to 1. */
  readonly lossFraction: number;
}

/** The oxides of a recipe, base and additions together, and what it loses in the fire. */
export function firedRecipe(recipe: Recipe): FiredRecipe {
  const weights: Partial<Record<Oxide, number>> = {};
  let weighed = 0;
  let lost = 0;
  for (const line of [...recipe.base, ...recipe.additions]) {
    weighed += line.parts;
    if (!line.calcined) lost += line.parts * line.material.lossFraction;
    for (const [oxide, share] of Object.entries(line.material.oxides) as [Oxide, number][])
      weights[oxide] = (weights[oxide] ?? 0) + share * rawParts(line);
  }
  if (!(totalOf(weights) > 0)) throw new RangeError("firedRecipe: nothing stays after firing");
  return { weights, lossFraction: lost / weighed };
}

/** Parts of the raw material that a line stands for. */
function rawParts({ parts, calcined, material }: RecipeLine): number {
  return calcined ? parts / (1 - material.lossFraction) : parts;
}

/** Parts to weigh instead, of the other form: calcined for raw, raw for calcined. */
function swappedParts(line: RecipeLine): number {
  return line.calcined ? rawParts(line) : line.parts * (1 - line.material.lossFraction);
}

/** Taken for a material whose density is not known [g/cm³]: feldspar, clays and most glazes. */
const USUAL = 2.6;

/**
 * Density of the dry solids of a recipe [g/cm³]: their mass over the sum of their volumes.
 *
 * @see SOURCES["batch-practice"], SOURCES["powder-densities"]
 */
export function solidsDensity(recipe: Recipe): {
  readonly gPerCm3: number;
  /** Materials whose density is not known, for which 2.6 was taken. */
  readonly unknown: readonly string[];
} {
  const lines = [...recipe.base, ...recipe.additions];
  const mass = lines.reduce((sum, { parts }) => sum + parts, 0);
  const volume = lines.reduce(
    (sum, { parts, material }) => sum + parts / (material.densityGPerCm3 ?? USUAL),
    0,
  );
  return {
    gPerCm3: mass / volume,
    unknown: lines
      .filter(({ material }) => material.densityGPerCm3 === null)
      .map(({ name }) => name),
  };
}
