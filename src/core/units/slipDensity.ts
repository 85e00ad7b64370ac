import { failed, ok, type Result } from "../problem.ts";
import { GRAMS_PER_OUNCE, parseMass } from "./mass.ts";
import { notThatQuantity, type QuantityForm, writtenQuantity } from "./parseQuantity.ts";
import { LITRES_PER_PINT, parseVolume } from "./volume.ts";

const FORM: QuantityForm = {
  code: "units/not-a-slip-density",
  kind: "the density of a slip",
  expected: '"1.45", "1450 g/L", "65g/50mL", "29 oz/imperial pint", "24 oz/US pint"',
};

/** Grams per cubic centimetre in an ounce per pint. */
const PER_PINT = {
  imperial: GRAMS_PER_OUNCE / (1000 * LITRES_PER_PINT.imperial),
  us: GRAMS_PER_OUNCE / (1000 * LITRES_PER_PINT.us),
} as const;

/** Grams per cubic centimetre in each unit; bare and with `sg` it is a specific gravity. */
const UNITS: Readonly<Record<string, number>> = { "": 1, sg: 1, "g/cm3": 1, "g/cm³": 1 };

/** Densities of a slip that can be dipped or poured at all [g/cm³]. */
const RANGE = [1.02, 2.2] as const;

/**
 * Density of a slip [g/cm³] from what a person wrote: `1.45`, `1450g/L`, `"29 oz/imperial pint"`, or
 * a measure as it was weighed: `65g/50mL`.
 *
 * @returns `units/not-a-slip-density`, also for a pint that does not say whose, or
 * `units/slip-density-range` outside 1.02 to 2.2.
 */
export function parseSlipDensity(
  text: string,
  context: { readonly where: string },
): Result<number> {
  const written = writtenQuantity(text);
  const density = (written && UNITS[written.unit] ? written.value : null) ?? weighed(text);
  if (density === null) return notThatQuantity(text, FORM, context.where);
  const [least, most] = RANGE;
  if (density >= least && density <= most) return ok(density);
  return failed({
    code: "units/slip-density-range",
    where: context.where,
    what: `"${text}" is ${density.toFixed(2)} times as heavy as water`,
    expected: `${least} to ${most} for a slip; a bare number is a specific gravity`,
    fix: density > 500 ? `write ${text.trim()}g/L` : "check the number and its unit",
  });
}

/** A density of slip [g/cm³] as ounces per pint. */
export function ouncesPerPint(gPerCm3: number, pint: keyof typeof PER_PINT): number {
  return gPerCm3 / PER_PINT[pint];
}

/** A mass over a volume, `65g/50mL` or `1450 g/L` [g/cm³]; null for anything else. */
function weighed(text: string): number | null {
  const [over = "", under = "", ...more] = text.split("/");
  if (under === "" || more.length > 0) return null;
  const mass = parseMass(over, { where: "" });
  const volume = parseVolume(/^\s*\d/.test(under) ? under : `1 ${under}`, { where: "" });
  const isNamed = /[a-z]/i.test(over) && /[a-z]/i.test(under);
  return isNamed && mass.ok && volume.ok ? mass.value / (1000 * volume.value) : null;
}
