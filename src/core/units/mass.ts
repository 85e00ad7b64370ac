import type { Result } from "../problem.ts";
import {
  bareNumber,
  notThatQuantity,
  type QuantityForm,
  writtenQuantity,
} from "./parseQuantity.ts";

/** Grams in an avoirdupois ounce; the pound of 453.59237 g is exact by definition. */
export const GRAMS_PER_OUNCE = 453.59237 / 16;

const FORM: QuantityForm = {
  code: "units/not-a-mass",
  kind: "a mass",
  expected: '"2 kg", "500 g", "5 lb", "16 oz", or a bare number of grams',
};

/** Grams in each unit. */
const GRAMS: Readonly<Record<string, number>> = {
  "": 1,
  g: 1,
  gram: 1,
  grams: 1,
  kg: 1000,
  oz: GRAMS_PER_OUNCE,
  lb: 453.59237,
  lbs: 453.59237,
};

/**
 * A mass [g], above 0, from what a person wrote: `2kg`, `"500 g"`, `5lb`. A bare number is grams.
 *
 * @returns `units/not-a-mass` for anything else.
 */
export function parseMass(text: string, context: { readonly where: string }): Result<number> {
  const written = writtenQuantity(text);
  const grams = written ? written.value * (GRAMS[written.unit] ?? Number.NaN) : Number.NaN;
  return grams > 0
    ? bareNumber(grams, FORM, context.where)
    : notThatQuantity(text, FORM, context.where);
}
