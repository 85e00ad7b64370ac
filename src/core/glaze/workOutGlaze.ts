import { ok, type Result } from "../problem.ts";
import { alkaliFindings } from "./alkaliFindings.ts";
import { crystalFindings } from "./crystalFindings.ts";
import { expansionFindings } from "./expansionFindings.ts";
import { firedGlaze } from "./firedGlaze.ts";
import type { GlazeSheet } from "./GlazeSheet.ts";
import { leachFindings } from "./leachFindings.ts";
import { scaledTo, weightsOf } from "./oxides.ts";
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
  const fired = firedGlaze(parsed, where);
  if (!fired.ok) return fired;
  const { glaze, computed, outside } = fired.value;
  const molPercent = scaledTo(100, moles);
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
      ...toxicFindings(parsed),
      ...leachFindings(parsed.leachTests),
      ...expansionFindings(glaze, { computed, outside }),
      ...alkaliFindings(molPercent, computed !== null && own.expansion === null),
      ...crystalFindings(molPercent),
      ...setPointFindings(glaze.setPoint, stiff),
      ...recipeFindings(parsed),
    ],
  });
}
