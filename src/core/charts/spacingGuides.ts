import type { SpacingFit } from "../trials/FiringStudy.ts";
import type { Tile } from "../trials/Tile.ts";
import { drawn, type Layer } from "./chartSpec.ts";
import { type Frame, pixelAt } from "./frame.ts";
import { labelLayers, lineLayer } from "./layers.ts";
import type { Places } from "./places.ts";
import type { Theme } from "./theme.ts";

/** Powers to hold a fit against, with what they are called. */
const GUIDES = [
  { power: 0.5, name: "power ½" },
  { power: 1, name: "power 1" },
];

/** Coats that lie closer show no slope [decimal logarithm]: a quarter more. */
const LEAST_SPREAD = Math.log10(1.25);

/** Lines of the powers ½ and 1 through the middle of the fit, or of the measured tiles. */
export function guideLayers(given: {
  readonly places: Places;
  readonly frame: Frame;
  readonly tiles: readonly Tile[];
  readonly fit: SpacingFit | null;
  readonly colours: Theme;
}): readonly Layer[] {
  const { places, frame, colours } = given;
  const middle = guideMiddle(given);
  if (middle === null) return [];
  const ends = GUIDES.map(({ power, name }) => ({
    name,
    power,
    rows: frame.x.map((x) => ({ x, y: middle.y + power * (x - middle.x) })),
  }));
  return [
    ...ends.map(({ rows }, piece) =>
      lineLayer(
        places,
        rows.map(({ x, y }, order) => ({
          logCoat: drawn(x),
          logSpacing: drawn(y),
          piece,
          order,
        })),
        { ...colours.planned, strokeWidth: 1.2 },
        "order",
      ),
    ),
    ...labelLayers(
      places,
      frame,
      ends.map(({ name, power }) => ({ text: name, at: labelAt(power), align: "left" as const })),
      colours.quiet,
      colours.paper,
    ),
  ];

  /** Near the left edge, where the lines lie farthest apart, or where the plot ends. */
  function labelAt(power: number) {
    const { x: centre, y: level } = middle as { readonly x: number; readonly y: number };
    const bottom = centre + (frame.y[0] + 0.03 * (frame.y[1] - frame.y[0]) - level) / power;
    const x = Math.max(frame.x[0] + 0.025 * (frame.x[1] - frame.x[0]), bottom);
    const { x: left, y: top } = pixelAt(frame, x, level + power * (x - centre));
    // Over the flat line, under the steep one: away from the fit between them.
    return { x: left + 4, y: power < 1 ? top - 14 : top + 2 };
  }
}

/**
 * Where the guides meet [decimal logarithms]: the middle of the fit, or of the measured tiles; null
 * when all coats are nearly one, so that no slope can be seen.
 */
export function guideMiddle(given: {
  readonly tiles: readonly Tile[];
  readonly fit: SpacingFit | null;
}): { readonly x: number; readonly y: number } | null {
  const at = given.fit?.curve[Math.floor(given.fit.curve.length / 2)];
  if (at !== undefined) return { x: Math.log10(at.coatMm), y: Math.log10(at.pitchMm) };
  const measured = given.tiles.flatMap(({ coat, spacing }) =>
    spacing.kind === "measured"
      ? [{ x: Math.log10(coat.firedMm), y: Math.log10(spacing.pitchMm) }]
      : [],
  );
  const coats = measured.map(({ x }) => x);
  if (measured.length === 0 || Math.max(...coats) - Math.min(...coats) < LEAST_SPREAD) return null;
  const mean = (of: (point: { x: number; y: number }) => number) =>
    measured.reduce((sum, point) => sum + of(point), 0) / measured.length;
  return { x: mean(({ x }) => x), y: mean(({ y }) => y) };
}
