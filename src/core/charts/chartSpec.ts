import type { TopLevelSpec } from "vega-lite";

/** A layered vega-lite chart as plain JSON: data embedded, nothing left to compute. */
export type ChartSpec = Extract<TopLevelSpec, { layer: unknown }>;

/** Several charts, one above the other. */
export type PictureSpec = Extract<TopLevelSpec, { vconcat: unknown }>;

/** One layer of a chart. */
export type Layer = ChartSpec["layer"][number];

/** Address of the vega-lite version that the specs are written in. */
export const VEGA_LITE_SCHEMA = "https://vega.github.io/schema/vega-lite/v6.json";

/** One row of embedded data: core field names, numbers and words only. */
export type Row = Readonly<Record<string, number | string>>;

/** A number short enough for a picture: 7 significant digits. */
export function drawn(value: number): number {
  return Number(value.toPrecision(7));
}
