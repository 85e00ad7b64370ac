import { failed, ok, type Problem, type Result } from "../problem.ts";
import { shown } from "../units/parseQuantity.ts";
import type { GlazeFile } from "./glazeFormat.ts";
import type { Material } from "./Material.ts";
import { namedOxides } from "./namedOxides.ts";
import { mapAmounts } from "./oxides.ts";

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
