import { failed, type Result } from "../problem.ts";
import {
  bareNumber,
  notThatQuantity,
  type QuantityForm,
  shown,
  writtenQuantity,
} from "./parseQuantity.ts";

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
