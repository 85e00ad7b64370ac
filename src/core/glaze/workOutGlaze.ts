import { failed, ok, type Result } from "../problem.ts";
import { alkaliFindings, MOST_ALKALIS } from "./alkaliFindings.ts";
import { appenExpansion } from "./appenExpansion.ts";
import { appenOutside } from "./appenOutside.ts";
import { crystalFindings } from "./crystalFindings.ts";
import { expansionFindings } from "./expansionFindings.ts";
import type { GlazeSheet } from "./GlazeSheet.ts";
import { glazeOf } from "./glazeOf.ts";
import { leachFindings } from "./leachFindings.ts";
import { ALKALIS, scaledTo, totalOf, weightsOf } from "./oxides.ts";
import type { ParsedGlaze } from "./ParsedGlaze.ts";
import { recipeFindings } from "./recipeFindings.ts";
import { setPointFindings } from "./setPointFindings.ts";
import { stiffTemperature } from "./setPointModel.ts";
import { toxicFindings } from "./toxicFindings.ts";
import { unityFormula } from "./unityFormula.ts";
import { secondOpinions } from "./weightFactorSets.ts";

/**
 * Works out a glaze: formula, expansion, set point and findings.
 *
 * @param where What to call the file in problems.
 * @returns `glaze/no-expansion` when no oxide has a factor and none was measured.
 */
export function workOutGlaze(parsed: ParsedGlaze, where: string): Result<GlazeSheet> {
  const { moles, own } = parsed;
  const computed = appenExpansion(moles);
  if (computed === null && own.expansion === null)
    return failed({
      code: "glaze/no-expansion",
      what: "no oxide of the glaze has a factor of expansion",
      where,
      expected: "silica and fluxes, or a measured expansion",
      fix: "check the oxides, or give expansion with value, to and how",
    });
  const molPercent = scaledTo(100, moles);
  const outside = computed === null ? [] : appenOutside(computed);
  const isOutside = outside.length > 0 || totalOf(molPercent, ALKALIS) > MOST_ALKALIS;
  const glaze = glazeOf(parsed, computed, isOutside);
  const stiff = stiffTemperature(moles);
  const unity = unityFormula(moles);
  return ok({
    parsed,
    glaze,
    unity,
    wtPercent: scaledTo(100, weightsOf(moles)),
    molPercent,
    computed,
    opinions: secondOpinions(moles),
    stiff,
    findings: [
      ...toxicFindings(molPercent),
      ...leachFindings(parsed.leachTests),
      ...expansionFindings(glaze, { computed, outside }),
      ...alkaliFindings(molPercent, computed !== null && own.expansion === null),
      ...crystalFindings(molPercent),
      ...setPointFindings(glaze.setPoint, stiff),
      ...recipeFindings(parsed),
    ],
  });
}
