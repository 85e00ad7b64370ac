import { failed, ok, type Result } from "../problem.ts";
import { bareNumber, notThatQuantity, type QuantityForm, writtenQuantity } from "./quantity.ts";

/** Grams in an avoirdupois ounce; the pound of 453.59237 g is exact by definition. */
export const GRAMS_PER_OUNCE = 453.59237 / 16;

const MASS_FORM: QuantityForm = {
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
    ? bareNumber(grams, MASS_FORM, context.where)
    : notThatQuantity(text, MASS_FORM, context.where);
}

/** Litres in an imperial pint of 20 fluid ounces, and in a US liquid pint of 16; by definition. */
export const LITRES_PER_PINT = { imperial: 0.56826125, us: 0.473176473 } as const;

const VOLUME_FORM: QuantityForm = {
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
    ? bareNumber(litres, VOLUME_FORM, context.where)
    : notThatQuantity(text, VOLUME_FORM, context.where);
}

function spaced(unit: string): string {
  return unit.replaceAll("-", " ");
}

const DENSITY_FORM: QuantityForm = {
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
  if (density === null) return notThatQuantity(text, DENSITY_FORM, context.where);
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

const COAT_FORM: QuantityForm = {
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
    ? bareNumber(perCm2, COAT_FORM, context.where)
    : notThatQuantity(text, COAT_FORM, context.where);
}

/** What a laboratory found given off in its test. */
export interface LeachAmount {
  readonly value: number;
  readonly unit: "mg/L" | "mg/dm²";
  /** Less than the value: under what the laboratory can find. */
  readonly isBelow: boolean;
}

const LEACH_FORM: QuantityForm = {
  code: "units/not-a-leach-amount",
  kind: "an amount given off in a leach test",
  expected: '"0.42 mg/L", "0.05 mg/dm2", or "<0.02 mg/L" for less than can be found',
};

const WRITTEN_LEACH = /^(<?)\s*(\d+(?:\.\d+)?)\s*(\S+)$/;

/** Every unit; a microgram in a millilitre is a milligram in a litre. */
const LEACH_UNITS: Readonly<Record<string, LeachAmount["unit"]>> = {
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
  const [, below, number, unit] = WRITTEN_LEACH.exec(text.trim()) ?? [];
  const known = LEACH_UNITS[(unit ?? "").toLowerCase()];
  if (known === undefined) return notThatQuantity(text, LEACH_FORM, context.where);
  return ok({ value: Number(number), unit: known, isBelow: below === "<" });
}
