import { failed, ok, type Result } from "../problem.ts";
import { dryGPerLitre, type Slip, waterForDryG, waterGPerLitre } from "./brongniart.ts";
import type { ParsedGlaze } from "./ParsedGlaze.ts";
import { solidsDensity } from "./solidsDensity.ts";

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
