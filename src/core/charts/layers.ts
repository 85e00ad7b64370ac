import type { Layer, Row } from "./chartSpec.ts";
import type { Frame, Pixel } from "./frame.ts";
import { LABEL_SIZE } from "./placement.ts";
import { type Places, placing, spot } from "./places.ts";
import type { LineStyle } from "./theme.ts";

/** Words at a place [px] of the plot. */
export interface Label {
  readonly text: string;
  readonly at: Pixel;
  readonly align: "left" | "center" | "right";
}

/** Lines that break where the `piece` changes and go through their rows in the order given by `order`. */
export function lineLayer(
  places: Places,
  rows: readonly Row[],
  style: LineStyle,
  order: string,
): Layer {
  return {
    data: { values: [...rows] },
    mark: {
      type: "line",
      clip: true,
      strokeJoin: "round",
      strokeCap: style.strokeDash.length > 0 ? "butt" : "round",
      ...stroke(style),
    },
    encoding: {
      ...placing(places),
      detail: { field: "piece", type: "nominal" },
      order: { field: order, type: "quantitative" },
    },
  };
}

/** Words at places of the plot; with a rim of paper they stay legible over lines. */
export function labelLayers(
  places: Places,
  frame: Frame,
  labels: readonly Label[],
  colour: string,
  rim: string | null,
): readonly Layer[] {
  return (["left", "center", "right"] as const).flatMap((align) => {
    const rows = labels
      .filter((label) => label.align === align)
      .map((label) => ({ ...spot(places, frame, label.at), text: label.text }));
    if (rows.length === 0) return [];
    const text = {
      type: "text" as const,
      align,
      baseline: "middle" as const,
      fontSize: LABEL_SIZE,
    };
    const encoding = { ...placing(places), text: { field: "text", type: "nominal" as const } };
    const words: Layer = { data: { values: rows }, mark: { ...text, color: colour }, encoding };
    if (rim === null) return [words];
    const around = { stroke: rim, strokeWidth: 4, strokeJoin: "round" as const, color: rim };
    return [{ data: { values: rows }, mark: { ...text, ...around }, encoding }, words];
  });
}

/** A thin line from a mark to its label. */
export function leaderLayer(
  places: Places,
  frame: Frame,
  leaders: readonly (readonly [Pixel, Pixel])[],
  colour: string,
): readonly Layer[] {
  if (leaders.length === 0) return [];
  return [
    {
      data: {
        values: leaders.flatMap((ends, piece) =>
          ends.map((end, order) => ({ ...spot(places, frame, end), piece, order })),
        ),
      },
      mark: { type: "line", stroke: colour, strokeWidth: 0.8 },
      encoding: {
        ...placing(places),
        detail: { field: "piece", type: "nominal" },
        order: { field: "order", type: "quantitative" },
      },
    },
  ];
}

/** The stroke of a line style, as properties of a mark. */
export function stroke(style: LineStyle) {
  return {
    stroke: style.stroke,
    strokeWidth: style.strokeWidth,
    ...(style.strokeDash.length > 0 ? { strokeDash: [...style.strokeDash] } : {}),
  };
}
