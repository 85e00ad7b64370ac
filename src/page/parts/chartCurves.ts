import type { TopLevelSpec } from "vega-lite";
import { type ChartRead, chartRead, type LayerRead, type Row } from "../drawing/ChartRead.ts";

/** A curve of a chart: what it is called, its rows in their order, and the fields that place them. */
export interface ChartCurve {
  readonly name: string;
  readonly rows: readonly Row[];
  readonly x: string;
  readonly y: string;
}

/**
 * The curves of a chart, the thickest first, without guides, keys and leaders, which are not clipped to
 * the plot; none of a chart without layers.
 */
export function chartCurves(spec: TopLevelSpec): readonly ChartCurve[] {
  if (!("layer" in spec)) return [];
  const chart = chartRead(spec);
  const curves = chart.layer.filter(
    ({ mark, data }) => mark.type === "line" && mark.clip && data.values.length > 1,
  );
  const width = ({ mark }: LayerRead) => mark.strokeWidth ?? 0;
  const first = curves.toSorted((a, b) => width(b) - width(a));
  return first.map((layer, at) => ({
    name: nameOf(layer, chart) ?? (curves.length === 1 ? "the curve" : `line ${at + 1}`),
    rows: layer.data.values,
    x: layer.encoding.x.field,
    y: layer.encoding.y.field,
  }));
}

/** From one line of an entry of a key to the next; entries are further apart [px]. */
const LINE_PX = 19;

/** The words that the key of a chart has beside a stroke like that of a curve. */
function nameOf({ mark }: LayerRead, chart: ChartRead): string | null {
  const swatch = chart.layer.find(
    (each) =>
      each.mark.type === "line" &&
      !each.mark.clip &&
      each.data.values.length === 2 &&
      each.mark.stroke === mark.stroke &&
      String(each.mark.strokeDash) === String(mark.strokeDash),
  );
  const [end] = swatch?.data.values ?? [];
  if (swatch === undefined || end === undefined) return null;
  const { field, scale } = swatch.encoding.y;
  const [low, high] = scale.domain;
  const below = (row: Row) =>
    ((Number(end[field]) - Number(row[field])) / (high - low)) * chart.height;
  for (const { mark: kind, encoding, data } of chart.layer) {
    const text = encoding.text?.field;
    const at = data.values.findIndex((row) => row[field] === end[field]);
    if (kind.type !== "text" || text === undefined || at === -1) continue;
    const next = data.values[at + 1];
    const hasTwo = next !== undefined && below(next) > 0 && below(next) <= LINE_PX;
    return data.values
      .slice(at, at + (hasTwo ? 2 : 1))
      .map((row) => row[text])
      .join(" ");
  }
  return null;
}
