/** What a pattern of cracks is taken for when its spacing is worked out. */
export type CrackPattern = "net" | "parallel";

/**
 * Distance from one crack to its next neighbour, square across [mm], from the mean intercept of
 * lines in all directions. A net of square cells of side d has the intercept π d/4, parallel
 * cracks of pitch p have π p/2.
 *
 * @see SOURCES["underwood-1970"]
 */
export function crackPitch(interceptMm: number, pattern: CrackPattern): number {
  return ((pattern === "net" ? 4 : 2) / Math.PI) * interceptMm;
}

/**
 * Grain size number of metallographers for a mean intercept [mm]: 0 at 0.32 mm, one more for
 * each halving of the area of a cell.
 *
 * @see SOURCES["astm-e112"]
 */
export function grainSizeNumber(interceptMm: number): number {
  return -6.643856 * Math.log10(interceptMm) - 3.288;
}
