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
