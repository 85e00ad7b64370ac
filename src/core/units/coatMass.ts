import type { Result } from "../problem.ts";
import { GRAMS_PER_OUNCE } from "./mass.ts";
import { bareNumber, notThatQuantity, type QuantityForm } from "./parseQuantity.ts";

const FORM: QuantityForm = {
  code: "units/not-a-coat-mass",
  kind: "a dry mass on an area",
  expected: '"10g/100cm2", "0.1 g/cm2", "0.4 oz/16 in2"',
};

const WRITTEN = /^(\d+(?:\.\d+)?)\s*(g|oz)\s*(?:\/|on|per)\s*(\d+(?:\.\d+)?)?\s*(cm|in)(?:2|²)$/i;

/** Square centimetres in a square inch, by definition. */
export const CM2_PER_IN2 = 2.54 ** 2;

/**
 * Dry glaze on an area [g/cm²], above 0, from what a person wrote: `10g/100cm2`, `"0.1 g/cm2"`.
 *
 * @returns `units/not-a-coat-mass` for anything else.
 */
export function parseCoatMass(text: string, context: { readonly where: string }): Result<number> {
  const [, mass = "", massUnit = "", area = "1", areaUnit = ""] = WRITTEN.exec(text.trim()) ?? [];
  const grams = Number(mass) * (massUnit.toLowerCase() === "oz" ? GRAMS_PER_OUNCE : 1);
  const cm2 = Number(area) * (areaUnit.toLowerCase() === "in" ? CM2_PER_IN2 : 1);
  const perCm2 = mass === "" ? Number.NaN : grams / cm2;
  return perCm2 > 0
    ? bareNumber(perCm2, FORM, context.where)
    : notThatQuantity(text, FORM, context.where);
}
