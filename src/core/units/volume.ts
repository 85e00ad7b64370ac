import type { Result } from "../problem.ts";
import {
  bareNumber,
  notThatQuantity,
  type QuantityForm,
  writtenQuantity,
} from "./parseQuantity.ts";

/** Litres in an imperial pint of 20 fluid ounces, and in a US liquid pint of 16; by definition. */
export const LITRES_PER_PINT = { imperial: 0.56826125, us: 0.473176473 } as const;

const FORM: QuantityForm = {
  code: "units/not-a-volume",
  kind: "a volume",
  expected: '"5 L", "500 mL", "2 imperial gal", "2 US gal", or a bare number of litres',
};

/** Litres in each unit; a pint or gallon says whose it is. */
const LITRES: Readonly<Record<string, number>> = {
  "": 1,
  l: 1,
  litre: 1,
  litres: 1,
  liter: 1,
  liters: 1,
  ml: 0.001,
  "imperial pint": LITRES_PER_PINT.imperial,
  "imperial pints": LITRES_PER_PINT.imperial,
  "us pint": LITRES_PER_PINT.us,
  "us pints": LITRES_PER_PINT.us,
  "imperial gal": 8 * LITRES_PER_PINT.imperial,
  "us gal": 8 * LITRES_PER_PINT.us,
};

/**
 * A volume [L], above 0, from what a person wrote: `5L`, `"500 mL"`, `"2 US gal"`.
 *
 * @returns `units/not-a-volume` for anything else, also for a gallon that does not say whose.
 */
export function parseVolume(text: string, context: { readonly where: string }): Result<number> {
  const written = writtenQuantity(text);
  const litres = written
    ? written.value * (LITRES[spaced(written.unit)] ?? Number.NaN)
    : Number.NaN;
  return litres > 0
    ? bareNumber(litres, FORM, context.where)
    : notThatQuantity(text, FORM, context.where);
}

function spaced(unit: string): string {
  return unit.replaceAll("-", " ");
}
