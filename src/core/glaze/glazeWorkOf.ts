import { cautionsFor } from "../cautions/cautionsFor.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import { batchSheet } from "./batchSheet.ts";
import { coatSheet } from "./coatSheet.ts";
import { fitOfSheet } from "./fitOfSheet.ts";
import type { GlazeWishes, GlazeWork } from "./GlazeWork.ts";
import { glazeHazards } from "./glazeHazards.ts";
import { parseGlaze } from "./parseGlaze.ts";
import { slipSheet } from "./slipSheet.ts";
import { workOutGlaze } from "./workOutGlaze.ts";

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
