import { failed, ok, type Problem, type Result } from "../problem.ts";

/** A number as people write it in front of a unit: `1186`, `-60`, `0.5`; never a comma. */
const WRITTEN = /^([+\-−]?)(\d+(?:\.\d+)?|\.\d+)\s*(.*)$/s;

/** A written quantity, cut into its number and what stands after it. */
export interface WrittenQuantity {
  readonly value: number;
  /** Trimmed, lower case, single spaces; empty for a bare number. */
  readonly unit: string;
}

/**
 * A number and the unit behind it, the unit not yet understood.
 * @returns null when the text does not begin with a plain number.
 */
export function writtenQuantity(text: string): WrittenQuantity | null {
  const parts = WRITTEN.exec(text.trim());
  if (!parts) return null;
  const size = Number(parts[2]);
  if (!Number.isFinite(size)) return null;
  const value = parts[1] === "-" || parts[1] === "−" ? -size : size;
  const unit = (parts[3] as string).trim().toLowerCase().replaceAll(/\s+/g, " ");
  return { value, unit };
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
  const comma = typeof value === "string" && /\d,\d/.test(value);
  return failed({
    code: form.code,
    what: `${shown(value)} is not ${form.kind}`,
    where,
    expected: form.expected,
    fix: comma
      ? `write the number with a point and no thousands mark: ${(value as string).replace(",", ".").trim()}`
      : `write it like ${form.expected.split(", ")[0]}`,
  });
}

/** A bare number as it is, when it is finite; what JSON and YAML can hold otherwise is refused. */
export function bareNumber(value: number, form: QuantityForm, where: string): Result<number> {
  return Number.isFinite(value) ? ok(value) : notThatQuantity(value, form, where);
}
