import type { PhotoMeasurement } from "../photo/PhotoMeasurement.ts";
import { reportHtml } from "./html/reportHtml.ts";
import { type MeasureContext, measureBlocks } from "./measureBlocks.ts";

/** A measured photograph as one self-contained page, the overlay in it. */
export function measureHtml(measured: PhotoMeasurement, context: MeasureContext): string {
  return reportHtml({
    title: `Crackle in ${measured.name}`,
    language: "en",
    blocks: measureBlocks(measured, context),
  });
}
