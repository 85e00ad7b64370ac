import { failed, ok, type Problem, type Result } from "../problem.ts";

/** A number as people write it in front of a unit: `1186`, `-60`, `0.5`, `0,5`, `2,165`. */
const WRITTEN = /^([+\-−]?)(\d+(?:[.,]\d+)*|\.\d+)\s*(.*)$/s;

/** Digits in threes behind commas, which is a thousands mark: `2,165`, `1,080.5`. */
const GROUPED = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/;
/** A comma in the place of the point that can be nothing else: `0,5`, `20,25`, `0,125`. */
const DECIMAL_COMMA = /^(?:\d+,\d{1,2}|0,\d+|\d+,\d{4,})$/;

/** A written quantity, cut into its number and what stands after it. */
export interface WrittenQuantity {
  readonly value: number;
  /** Trimmed, lower case, single spaces; empty for a bare number. */
  readonly unit: string;
}

/**
 * A number and the unit behind it, the unit not yet understood.
 *
 * @param threes What a comma before three digits is: `thousands` where nobody writes a thousandth,
 * as of degrees; else `1,250` may be either, and is not taken.
 * @returns null when the text does not begin with a plain number.
 */
export function writtenQuantity(
  text: string,
  threes: "thousands" | "either" = "either",
): WrittenQuantity | null {
  const parts = WRITTEN.exec(text.trim());
  if (!parts) return null;
  const size = sizeOf(parts[2]!, threes);
  if (!Number.isFinite(size)) return null;
  const value = parts[1] === "-" || parts[1] === "−" ? -size : size;
  const unit = parts[3]!.trim().toLowerCase().replaceAll(/\s+/g, " ");
  return { value, unit };
}

function sizeOf(digits: string, threes: "thousands" | "either"): number {
  if (GROUPED.test(digits))
    return threes === "thousands" ? Number(digits.replaceAll(",", "")) : Number.NaN;
  return Number(DECIMAL_COMMA.test(digits) ? digits.replace(",", ".") : digits);
}

/** What was found, short enough to stand in a sentence: `"12 furlongs"`, `-3`. */
export function shown(value: number | string): string {
  if (typeof value === "number") return String(value).replace("-", "−");
  const flat = value.replaceAll(/\s+/g, " ");
  return `"${flat.length > 40 ? `${flat.slice(0, 39)}…` : flat}"`;
}

/** What a kind of quantity looks like, for its problems. */
export interface QuantityForm {
  readonly code: Problem["code"];
  /** With its article: `a temperature`. */
  readonly kind: string;
  readonly expected: string;
}

/** The problem of a text that is not the quantity asked for. */
export function notThatQuantity(
  value: number | string,
  form: QuantityForm,
  where: string,
): Result<never> {
  const either =
    typeof value === "string" ? /^[+\-−]?(\d+),(\d{3})(?!\d)/.exec(value.trim()) : null;
  return failed({
    code: form.code,
    what: `${shown(value)} is not ${form.kind}`,
    where,
    expected: form.expected,
    fix: either
      ? `write ${either[1]}${either[2]} or ${either[1]}.${either[2]}: a comma may mean either`
      : `write it like ${form.expected.split(", ")[0]}`,
  });
}

/** A bare number as it is, when it is finite; what JSON and YAML can hold otherwise is refused. */
export function bareNumber(value: number, form: QuantityForm, where: string): Result<number> {
  return Number.isFinite(value) ? ok(value) : notThatQuantity(value, form, where);
}

/** Whether a quantity is written without any unit: `0.8`, `"1/32"`. */
export function isBareNumber(written: number | string): boolean {
  return typeof written === "number" || /^[\s\d.,/+-]+$/.test(written);
}

const FORM: QuantityForm = {
  code: "units/not-a-length",
  kind: "a length",
  expected: '"6 mm", "2.5 cm", "1/4 in", or a bare number of millimetres',
};

/** Millimetres in each unit; the inch is 25.4 mm by definition. */
const MM: Readonly<Record<string, number>> = {
  "": 1,
  mm: 1,
  cm: 10,
  m: 1000,
  in: 25.4,
  inch: 25.4,
  inches: 25.4,
  '"': 25.4,
  "″": 25.4,
};

const FRACTION = /^(?:(\d+)[ -])?(\d+)\/(\d+)\s*(.*)$/s;

/**
 * A length [mm], above 0, from what a person wrote: `6`, `"6 mm"`, `"0.6 cm"`, `"1/4 in"`,
 * `"1 1/2 in"`. A bare number is in millimetres.
 *
 * @returns `units/not-a-length` for anything else, 0 and negative numbers included.
 */
export function parseLength(
  value: number | string,
  context: { readonly where: string },
): Result<number> {
  const lengthMm = typeof value === "number" ? value : mmWritten(value);
  if (lengthMm !== null && lengthMm <= 0) return notAboveZero(value, context.where);
  if (lengthMm === null) return notThatQuantity(value, FORM, context.where);
  return bareNumber(lengthMm, FORM, context.where);
}

/** Well written, and yet no length that a thing can have. */
function notAboveZero(value: number | string, where: string): Result<never> {
  return failed({
    code: FORM.code,
    what: `${shown(value)} is no more than 0`,
    where,
    expected: "a length above 0",
    fix: "measure it again, or take it out when it is not known; nothing is put in its place",
  });
}

function mmWritten(text: string): number | null {
  const fraction = FRACTION.exec(text.trim());
  if (fraction) {
    const unit = MM[fraction[4]!.trim().toLowerCase()];
    const inches = Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]);
    return unit === undefined || !Number.isFinite(inches) ? null : inches * unit;
  }
  const written = writtenQuantity(text);
  const unit = written ? MM[written.unit] : undefined;
  return written && unit !== undefined ? written.value * unit : null;
}
