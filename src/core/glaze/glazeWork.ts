import { type Caution, cautionsFor, type Situation } from "../cautions/cautions.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import { type BatchSheet, batchSheet } from "./batchSheet.ts";
import { atomsIn } from "./elements.ts";
import type { ParsedGlaze } from "./Glaze.ts";
import { parseGlaze } from "./glazeFile.ts";
import { type GlazeFit, glazeFit } from "./glazeFit.ts";
import { type GlazeSheet, workOutGlaze } from "./glazeSheet.ts";
import type { Oxide } from "./oxides.ts";
import { type CoatSheet, coatSheet, type SlipSheet, slipSheet } from "./slipSheet.ts";
import { chromatesIn } from "./toxicFindings.ts";

/**
 * A glaze file worked out, with batch, slip and coat as asked.
 *
 * @param name What to call the file in problems.
 * @returns the problems of the file, of its slip, or `glaze/batch-without-recipe`.
 */
export function glazeWorkOf(text: string, name: string, wishes: GlazeWishes): Result<GlazeWork> {
  const parsed = parseGlaze(text, name);
  if (!parsed.ok) return parsed;
  const sheet = workOutGlaze(parsed.value, name);
  if (!sheet.ok) return sheet;
  const { givenAs } = parsed.value;
  const { batchG, slipGPerCm3, bucketLitres } = wishes;
  if (givenAs.kind === "oxides" && batchG !== null) return failed(noRecipe(name));
  const batch = givenAs.kind === "recipe" ? batchSheet(givenAs.recipe, batchG) : null;
  const slip =
    slipGPerCm3 === null && bucketLitres === null && batchG === null
      ? ok(null)
      : slipSheet(parsed.value, {
          slipGPerCm3,
          bucketLitres,
          dryG: dryMasses(batchG, batch?.totalForBaseG ?? null),
        });
  if (!slip.ok) return slip;
  const onBody = fitOfSheet(sheet.value);
  return ok({
    sheet: sheet.value,
    batch,
    slip: slip.value,
    coat: coatSheet(sheet.value, wishes.dryCoatGPerCm2),
    onBody,
    cautions: cautionsFor({
      ...glazeHazards(parsed.value),
      // A fit and a leach test speak of crackle whichever way they go.
      crackle: parsed.value.crackle || "fit" in onBody || parsed.value.leachTests.length > 0,
    }),
  });
}

/** The mass wanted, and what it comes to with the additions on top when that is more [g]. */
function dryMasses(batchG: number | null, totalForBaseG: number | null): readonly number[] {
  if (batchG === null) return [];
  return totalForBaseG === null || totalForBaseG <= batchG * 1.0001
    ? [batchG]
    : [batchG, totalForBaseG];
}

function noRecipe(name: string): Problem {
  return {
    code: "glaze/batch-without-recipe",
    where: name,
    what: "the file gives oxides and no recipe",
    expected: "a recipe of materials to weigh",
    fix: "leave --batch out, or write the recipe",
  };
}

/** What a potter wants to know at the scales and the bucket. */
export interface GlazeWishes {
  /** Mass to weigh out [g]. */
  readonly batchG: number | null;
  /** Density of the slip, measured or wanted [g/cm³]. */
  readonly slipGPerCm3: number | null;
  readonly bucketLitres: number | null;
  /** Dry glaze on a surface [g/cm²]. */
  readonly dryCoatGPerCm2: number | null;
}

/** One glaze, worked out, with what its potter asked for. */
export interface GlazeWork {
  readonly sheet: GlazeSheet;
  /** null for a glaze given by its oxides. */
  readonly batch: BatchSheet | null;
  /** null when neither a density nor a batch was asked for. */
  readonly slip: SlipSheet | null;
  /** null when neither the file nor the potter gives a coat. */
  readonly coat: CoatSheet | null;
  readonly onBody: FitOrMissing;
  readonly cautions: readonly Caution[];
}

/** Draws of everything uncertain; the same seed every time. */
const DRAWS = { runs: 400, seed: 1 };

/** Where cooling ends [°C]. */
const ROOM_C = 20;

/** One standard deviation of a coat read off a piece, as a share of it; our own estimate. */
const COAT_SIGMA = 0.15;

/** How a glaze fits the body that its file names, or the keys that are missing for it. */
type FitOrMissing = { readonly fit: GlazeFit } | { readonly missing: readonly string[] };

/** The fit of a glaze on the piece of its file; needs body, wall, coat and glazedSides. */
function fitOfSheet({ parsed, glaze }: GlazeSheet): FitOrMissing {
  const { body, wallMm, coatMm, glazing, absorptionPercent, cracks } = parsed.ware;
  if (body === null || wallMm === null || coatMm === null || glazing === null)
    return {
      missing: [
        ...(body === null ? ["body"] : []),
        ...(wallMm === null ? ["wall"] : []),
        ...(coatMm === null ? ["coat"] : []),
        ...(glazing === null ? ["glazedSides"] : []),
      ],
    };
  return {
    fit: glazeFit({
      glaze,
      body,
      piece: { wallMm, coatMm, coatSigma: COAT_SIGMA, glazing, absorptionPercent },
      roomC: ROOM_C,
      measured: cracks,
      draws: DRAWS,
    }),
  };
}

/** What can hurt about weighing, firing and using this glaze. */
function glazeHazards(parsed: ParsedGlaze): Situation {
  const { moles, givenAs } = parsed;
  const holds = (...oxides: readonly Oxide[]) => oxides.some((oxide) => (moles[oxide] ?? 0) > 0);
  const brings = (...elements: readonly string[]) =>
    elements.some((each) => broughtBy(parsed, each));
  return {
    powders: givenAs.kind === "recipe",
    silicaDust: givenAs.kind === "recipe" && holds("SiO2"),
    lead: holds("PbO"),
    cadmium: holds("CdO"),
    otherPoisons: holds("As2O3", "Sb2O3", "BeO", "SeO2", "HgO", "Tl2O"),
    radioactive: holds("U3O8", "ThO2"),
    chromates: chromatesIn(parsed).length > 0,
    barium: holds("BaO"),
    manganese: holds("MnO"),
    lithium: holds("Li2O"),
    chromium: holds("Cr2O3"),
    copper: holds("CuO"),
    cobaltOrNickel: holds("CoO", "NiO"),
    vanadium: holds("V2O5"),
    fluorine: holds("F", "Cl", "Br", "I") || brings("F", "Cl", "Br", "I"),
    sulphur: brings("S", "N"),
    glazeSurface: true,
    glazeEstimate: true,
  };
}

/** Whether a material of the recipe brings an element that leaves in the kiln. */
function broughtBy({ givenAs }: ParsedGlaze, element: string): boolean {
  if (givenAs.kind !== "recipe") return false;
  return [...givenAs.recipe.base, ...givenAs.recipe.additions].some(
    ({ material, parts }) =>
      parts > 0 && material.formula !== null && atomsIn(material.formula).has(element),
  );
}
