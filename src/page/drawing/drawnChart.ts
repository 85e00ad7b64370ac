import type { TopLevelSpec } from "vega-lite";
import { escapeHtml } from "../../core/reports/blockHtml.ts";
import { type AxisRead, type ChartRead, chartRead, type LayerRead } from "./ChartRead.ts";
import { drawnAxes } from "./drawnAxes.ts";
import { drawnMarks, type Plot } from "./drawnMarks.ts";
import { element, type Ink, reachOf } from "./Ink.ts";
import { ASCENT, DESCENT, words } from "./words.ts";

/**
 * A chart of the core as SVG, drawn by the page itself. It knows the few marks that the core's
 * charts are made of and nothing else; `test/page/drawing.test.ts` holds it against vega, which
 * would have made the page twice as large.
 *
 * @param id Makes the ids of the drawing its own on the page.
 */
export function drawnChart(spec: TopLevelSpec, id: string): string {
  const chart = chartRead(spec);
  const plot = plotOf(chart);
  const axes = drawnAxes(chart, plot);
  const marks = chart.layer.map((layer) => layerInk(layer, plot, id));
  const inside = [...axes.grid, ...axes.words, ...marks];
  const all = [...inside, ...titles(chart, reachOf(inside).top)];
  return sheet(chart, all, id);
}

function plotOf({ layer, width, height }: ChartRead): Plot {
  const [first] = layer;
  if (first === undefined) throw new RangeError("drawnChart: a chart without layers");
  const { x, y } = first.encoding;
  return { x: scaleOf(x, 0, width), y: scaleOf(y, height, 0) };
}

function scaleOf({ scale }: AxisRead, from: number, to: number): (value: number) => number {
  const [low, high] = scale.domain;
  return (value) => from + ((value - low) / (high - low)) * (to - from);
}

function layerInk(layer: LayerRead, plot: Plot, id: string): Ink {
  const drawn = drawnMarks(layer, plot);
  const clip = layer.mark.clip ? `url(#${id}-clip)` : undefined;
  const svg = drawn.map((each) => each.svg).join("");
  const reach = drawn.some((each) => each.reach !== null) ? reachOf(drawn) : null;
  return { svg: svg === "" ? "" : element("g", { "clip-path": clip }, svg), reach };
}

/** Lines of title and subtitle over everything else; nothing over a chart without a title. */
function titles({ title, config }: ChartRead, top: number): readonly Ink[] {
  const heads = [title.text].flat().filter((line) => line !== "");
  if (heads.length === 0) return [];
  const { color, fontSize, subtitleColor, subtitleFontSize, dx, offset } = config.title;
  const lines = [title.subtitle ?? []].flat();
  const step = subtitleFontSize + 2;
  const lowest = top - offset - subtitleFontSize * DESCENT;
  const highest = lowest - (lines.length - 1) * step;
  const foot =
    highest - subtitleFontSize * ASCENT - config.title.subtitlePadding - fontSize * DESCENT;
  const head = { x: dx, size: fontSize, fill: color, bold: true };
  return [
    ...heads.map((text, i) =>
      words({ ...head, text, y: foot - (heads.length - 1 - i) * (fontSize + 3) }),
    ),
    ...lines.map((text, i) =>
      words({ text, x: dx, y: highest + i * step, size: subtitleFontSize, fill: subtitleColor }),
    ),
  ];
}

function sheet(chart: ChartRead, pieces: readonly Ink[], id: string): string {
  const { left, right, top, bottom } = reachOf(pieces);
  const { padding, background, description = "" } = chart;
  const shiftX = Math.ceil(padding - left);
  const shiftY = Math.ceil(padding - top);
  const width = Math.ceil(Math.max(right, chart.width) + padding) + shiftX;
  const height = Math.ceil(Math.max(bottom, chart.height) + padding) + shiftY;
  const clip = element(
    "clipPath",
    { id: `${id}-clip` },
    element("rect", { width: chart.width, height: chart.height }),
  );
  const paper = element("rect", { width, height, fill: background });
  const drawing = element(
    "g",
    { transform: `translate(${shiftX},${shiftY})`, "font-family": chart.config.font },
    pieces.map(({ svg }) => svg).join(""),
  );
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      width,
      height,
      viewBox: `0 0 ${width} ${height}`,
      role: "img",
    },
    `<title>${escapeHtml(description)}</title><defs>${clip}</defs>${paper}${drawing}`,
  );
}
