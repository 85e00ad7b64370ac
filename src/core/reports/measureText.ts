import type { PhotoMeasurement } from "../photo/PhotoMeasurement.ts";
import { type MeasureContext, measureBlocks } from "./measureBlocks.ts";
import type { Paint } from "./paint.ts";
import { reportText } from "./reportText.ts";

/** A measured photograph as text for a terminal, at most 80 columns. */
export function measureText(
  measured: PhotoMeasurement,
  options: MeasureContext & { readonly paint: Paint },
): string {
  return reportText(
    { title: `Crackle in ${measured.name}`, blocks: measureBlocks(measured, options) },
    options.paint,
  );
}
