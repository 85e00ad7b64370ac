import { ok, type Result } from "../problem.ts";
import { notThatQuantity, type QuantityForm } from "./parseQuantity.ts";

/** What a laboratory found given off in its test. */
export interface LeachAmount {
  readonly value: number;
  readonly unit: "mg/L" | "mg/dm²";
  /** Less than the value: under what the laboratory can find. */
  readonly isBelow: boolean;
}

const FORM: QuantityForm = {
  code: "units/not-a-leach-amount",
  kind: "an amount given off in a leach test",
  expected: '"0.42 mg/L", "0.05 mg/dm2", or "<0.02 mg/L" for less than can be found',
};

const WRITTEN = /^(<?)\s*(\d+(?:\.\d+)?)\s*(\S+)$/;

/** Every unit; a microgram in a millilitre is a milligram in a litre. */
const UNITS: Readonly<Record<string, LeachAmount["unit"]>> = {
  "mg/l": "mg/L",
  "ug/ml": "mg/L",
  "µg/ml": "mg/L",
  ppm: "mg/L",
  "mg/dm2": "mg/dm²",
  "mg/dm²": "mg/dm²",
};

/**
 * An amount from a report of a leach test: `0.42 mg/L`, `<0.02 mg/L`, `0.05 mg/dm2`.
 *
 * @returns `units/not-a-leach-amount` for anything else, also without a unit.
 */
export function parseLeachAmount(
  text: string,
  context: { readonly where: string },
): Result<LeachAmount> {
  const [, below, number, unit] = WRITTEN.exec(text.trim()) ?? [];
  const known = UNITS[(unit ?? "").toLowerCase()];
  if (known === undefined) return notThatQuantity(text, FORM, context.where);
  return ok({ value: Number(number), unit: known, isBelow: below === "<" });
}
