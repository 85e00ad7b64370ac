import { failed, ok, type Result } from "../problem.ts";
import { solidsDensity } from "./batchSheet.ts";
import type { ParsedGlaze } from "./Glaze.ts";
import type { GlazeSheet } from "./glazeSheet.ts";

/** Taken for the solids of a glaze without a recipe [g/cm³]. */
const USUAL_SOLIDS = 2.6;

/** Densities that are shown when none is asked for [g/cm³]: the usual ones for dipping. */
const USUAL_SLIPS = [1.4, 1.45, 1.5];

/** A slip of one density. */
interface SlipRow {
  readonly slipGPerCm3: number;
  readonly dryGPerLitre: number;
  readonly waterGPerLitre: number;
  /** Water for each dry mass asked for [g], in the order asked. */
  readonly waterG: readonly number[];
}

/** A glaze as a slip in a bucket. */
export interface SlipSheet {
  readonly solidGPerCm3: number;
  readonly solidFrom: "yours" | "worked out" | "assumed";
  /** Materials whose density is not known, for which 2.6 was taken. */
  readonly unknownMaterials: readonly string[];
  /** The dry masses that the rows give water for [g]. */
  readonly dryG: readonly number[];
  readonly rows: readonly SlipRow[];
  /** What a measured bucket holds; null when none was given. */
  readonly bucket: {
    readonly litres: number;
    readonly dryG: number;
    readonly waterG: number;
  } | null;
}

/** What to work out about a slip. */
export interface SlipWish {
  /** Density measured or wanted [g/cm³]; null shows the usual ones. */
  readonly slipGPerCm3: number | null;
  readonly bucketLitres: number | null;
  readonly dryG: readonly number[];
}

/**
 * Dry content and water of a slip, by Brongniart's formula.
 *
 * @returns `glaze/slip-too-heavy` for a slip as heavy as its solids; `glaze/bucket-without-density`.
 */
export function slipSheet(parsed: ParsedGlaze, wish: SlipWish): Result<SlipSheet> {
  const solids = solidsOf(parsed);
  const solidGPerCm3 = solids.gPerCm3;
  const { slipGPerCm3, bucketLitres, dryG } = wish;
  if (bucketLitres !== null && slipGPerCm3 === null)
    return failed({
      code: "glaze/bucket-without-density",
      where: "--bucket",
      what: "the bucket has a volume and no density",
      expected: "the density of the slip in it as well",
      fix: "weigh a litre, or a smaller measure, and give --density 1.45",
    });
  if (slipGPerCm3 !== null && slipGPerCm3 >= solidGPerCm3)
    return failed({
      code: "glaze/slip-too-heavy",
      where: "--density",
      what: `a slip of ${slipGPerCm3.toFixed(2)} g/cm³ of solids of ${solidGPerCm3.toFixed(2)} g/cm³`,
      expected: "a slip lighter than its solids, for there is water in it",
      fix: "check the density, or solidsDensity in the file",
    });
  const rows = (slipGPerCm3 === null ? USUAL_SLIPS : [slipGPerCm3])
    .filter((density) => density < solidGPerCm3)
    .map((density) => rowOf({ slipGPerCm3: density, solidGPerCm3 }, dryG));
  const [first] = rows;
  return ok({
    solidGPerCm3,
    solidFrom: solids.from,
    unknownMaterials: solids.unknown,
    dryG,
    rows,
    bucket:
      bucketLitres === null || first === undefined
        ? null
        : {
            litres: bucketLitres,
            dryG: bucketLitres * first.dryGPerLitre,
            waterG: bucketLitres * first.waterGPerLitre,
          },
  });
}

function rowOf(slip: Slip, dryG: readonly number[]): SlipRow {
  return {
    slipGPerCm3: slip.slipGPerCm3,
    dryGPerLitre: dryGPerLitre(slip),
    waterGPerLitre: waterGPerLitre(slip),
    waterG: dryG.map((mass) => waterForDryG(mass, slip)),
  };
}

function solidsOf({ own, givenAs }: ParsedGlaze): {
  readonly gPerCm3: number;
  readonly from: SlipSheet["solidFrom"];
  readonly unknown: readonly string[];
} {
  if (own.solidsDensityGPerCm3 !== null)
    return { gPerCm3: own.solidsDensityGPerCm3, from: "yours", unknown: [] };
  if (givenAs.kind === "oxides") return { gPerCm3: USUAL_SOLIDS, from: "assumed", unknown: [] };
  return { ...solidsDensity(givenAs.recipe), from: "worked out" };
}

/** A slip: how heavy it is, and how heavy the solid in it. */
interface Slip {
  /** Mass of a millilitre of slip [g/cm³]: above 1, below the solid's. */
  readonly slipGPerCm3: number;
  /** Density of the dry solid [g/cm³]. */
  readonly solidGPerCm3: number;
}

/** Density of water [g/cm³]. */
const WATER = 1;

/**
 * Dry content of a slip [g/L], by Brongniart's formula: (D − 1000) · G / (G − 1).
 *
 * @see SOURCES["brongniart-1854"]
 */
export function dryGPerLitre({ slipGPerCm3, solidGPerCm3 }: Slip): number {
  return (1000 * (slipGPerCm3 - WATER) * solidGPerCm3) / (solidGPerCm3 - WATER);
}

/** Water in a slip [g/L]: what the dry content leaves of its mass. */
export function waterGPerLitre(slip: Slip): number {
  return 1000 * slip.slipGPerCm3 - dryGPerLitre(slip);
}

/** Water for a dry mass to make a slip of this density [g]. */
export function waterForDryG(dryG: number, { slipGPerCm3, solidGPerCm3 }: Slip): number {
  return (dryG * (1 - slipGPerCm3 / solidGPerCm3)) / (slipGPerCm3 - WATER);
}

/** Dry glaze on a surface against the fired coat. */
export interface CoatSheet {
  /** Share of the dry mass that fires away; null when there is no recipe, and 0 was counted. */
  readonly lossFraction: number | null;
  readonly firedGPerCm3: number;
  /** From a dry mass weighed; low and high from the density of the fired glaze. */
  readonly weighed: {
    readonly dryGPerCm2: number;
    readonly firedMm: number;
    readonly lowMm: number;
    readonly highMm: number;
  } | null;
  /** For the coat that the file gives. */
  readonly wanted: { readonly firedMm: number; readonly dryGPerCm2: number } | null;
}

/** The coat of a glaze, both ways; null when neither way is asked for. */
export function coatSheet(
  { parsed, glaze }: GlazeSheet,
  dryGPerCm2: number | null,
): CoatSheet | null {
  const { coatMm } = parsed.ware;
  if (dryGPerCm2 === null && coatMm === null) return null;
  const lossFraction = parsed.givenAs.kind === "recipe" ? parsed.givenAs.lossFraction : null;
  const { value, low, high } = glaze.firedDensityKgPerM3;
  const at = (kgPerM3: number) => ({
    lossFraction: lossFraction ?? 0,
    firedGPerCm3: kgPerM3 / 1000,
  });
  return {
    lossFraction,
    firedGPerCm3: value / 1000,
    weighed:
      dryGPerCm2 === null
        ? null
        : {
            dryGPerCm2,
            firedMm: firedCoatMm(dryGPerCm2, at(value)),
            lowMm: firedCoatMm(dryGPerCm2, at(high)),
            highMm: firedCoatMm(dryGPerCm2, at(low)),
          },
    wanted:
      coatMm === null ? null : { firedMm: coatMm, dryGPerCm2: dryCoatGPerCm2(coatMm, at(value)) },
  };
}

/** A coat of glaze on a surface. */
interface Coat {
  /** Share of the dry mass that fires away, 0 to 1. */
  readonly lossFraction: number;
  /** Of the fired glaze [g/cm³]. */
  readonly firedGPerCm3: number;
}

/**
 * Thickness of the fired glaze [mm] from the dry mass on a surface: m (1 − LOI) / (A ρ).
 * Bubbles make it thicker, what soaks into the body or runs off makes it thinner.
 *
 * @param dryGPerCm2 Dry glaze on the surface [g/cm²].
 */
export function firedCoatMm(dryGPerCm2: number, { lossFraction, firedGPerCm3 }: Coat): number {
  return (10 * dryGPerCm2 * (1 - lossFraction)) / firedGPerCm3;
}

/** Dry glaze [g/cm²] for a fired coat [mm]. */
export function dryCoatGPerCm2(coatMm: number, { lossFraction, firedGPerCm3 }: Coat): number {
  return (coatMm * firedGPerCm3) / (10 * (1 - lossFraction));
}
