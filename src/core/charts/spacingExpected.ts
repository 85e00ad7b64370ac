import type { ExpectedPoint } from "../trials/tileFits.ts";
import { drawn, type Layer } from "./chartSpec.ts";
import { lineLayer } from "./layers.ts";
import type { Places } from "./places.ts";
import type { TileMark } from "./spacingTiles.ts";
import type { LineStyle } from "./theme.ts";

/** Spacing to expect against the coat, for tiles of one clay. */
export interface ExpectedCurve {
  readonly clay: string;
  readonly points: readonly ExpectedPoint[];
}

/** How what is expected is drawn, in the colour of its clay. */
export function expectedStyle(colour: string): LineStyle {
  return { stroke: colour, strokeWidth: 1.6, strokeDash: [1.5, 3.5] };
}

/** The middle of what is expected, clay by clay; its range is as wide as the plot and is left out. */
export function expectedLayers(
  places: Places,
  curves: readonly ExpectedCurve[],
  marks: readonly TileMark[],
): readonly Layer[] {
  return curves.flatMap(({ clay, points }) => {
    const colour = marks.find((mark) => mark.clay === clay)?.colour;
    const rows = points.flatMap(({ coatMm, medianMm }, order) =>
      medianMm === null
        ? []
        : [
            {
              logCoat: drawn(Math.log10(coatMm)),
              logSpacing: drawn(Math.log10(medianMm)),
              piece: 0,
              order,
            },
          ],
    );
    if (colour === undefined || rows.length < 2) return [];
    return [lineLayer(places, rows, expectedStyle(colour), "order")];
  });
}
