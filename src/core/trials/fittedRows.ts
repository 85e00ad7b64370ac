import { type CensoredFit, type CensoredRow, censoredFit } from "./censoredModel.ts";
import { EXPONENT_AT, type SpacingRows } from "./spacingRows.ts";

/** A fit of rows, with what it was fitted to. */
export interface FittedRows {
  readonly data: SpacingRows;
  readonly rows: readonly CensoredRow[];
  readonly fit: CensoredFit;
}

/** Fits twice, since the error left in the coats weighs by the exponent; null when columns repeat. */
export function fittedRows(data: SpacingRows): FittedRows | null {
  const first = censoredFit(data.calibrated(0));
  if (first === null) return null;
  const rows = data.calibrated(first.coefficients[EXPONENT_AT] as number);
  const fit = censoredFit(rows);
  return fit === null ? null : { data, rows, fit };
}
