import type { AxisRead, ChartRead } from "./ChartRead.ts";
import type { Plot } from "./drawnMarks.ts";
import { element, type Ink } from "./Ink.ts";
import { ASCENT, DESCENT, MIDDLE, words } from "./words.ts";

/** Grid, labels and titles of both axes. */
export function drawnAxes(
  chart: ChartRead,
  plot: Plot,
): { readonly grid: readonly Ink[]; readonly words: readonly Ink[] } {
  const [layer] = chart.layer;
  if (layer === undefined) return { grid: [], words: [] };
  const { x, y } = layer.encoding;
  return {
    grid: [...gridLines(y, chart, plot), baseLine(chart)],
    words: [...acrossWords(x, chart, plot), ...upWords(y, chart, plot)],
  };
}

function gridLines(axis: AxisRead, chart: ChartRead, plot: Plot): readonly Ink[] {
  if (!axis.axis.grid) return [];
  const { gridColor, gridWidth } = chart.config.axis;
  return axis.axis.values.map((value) => {
    const at = plot.y(value) + 0.5;
    const ends = { x1: 0.5, x2: chart.width + 0.5, y1: at, y2: at };
    return ink(element("line", { ...ends, stroke: gridColor, "stroke-width": gridWidth }));
  });
}

function baseLine({ width, height, config }: ChartRead): Ink {
  const { domainColor, domainWidth } = config.axis;
  const ends = { x1: 0.5, x2: width + 0.5, y1: height + 0.5, y2: height + 0.5 };
  return ink(element("line", { ...ends, stroke: domainColor, "stroke-width": domainWidth }));
}

function ink(svg: string): Ink {
  return { svg, reach: null };
}

function acrossWords(axis: AxisRead, chart: ChartRead, plot: Plot): readonly Ink[] {
  const { labelColor: fill, labelFontSize: size, labelPadding, titleFontSize } = chart.config.axis;
  const labelY = chart.height + labelPadding + size * ASCENT;
  const labels = axis.axis.values.map((value) =>
    words({
      text: shownTick(axis, value),
      x: plot.x(value),
      y: labelY,
      size,
      fill,
      align: "center",
    }),
  );
  const titleY = labelY + size * DESCENT + (axis.axis.titlePadding ?? 4) + titleFontSize * ASCENT;
  return [...labels, words({ text: axis.title, x: 0, y: titleY, size: titleFontSize, fill })];
}

function upWords(axis: AxisRead, chart: ChartRead, plot: Plot): readonly Ink[] {
  const { labelColor: fill, labelFontSize: size, labelPadding, titleFontSize } = chart.config.axis;
  const labels = axis.axis.values.map((value) => {
    const y = plot.y(value) + size * MIDDLE;
    return words({ text: shownTick(axis, value), x: -labelPadding, y, size, fill, align: "right" });
  });
  const { titleX = 0, titleY = 0 } = axis.axis;
  const foot = titleY - titleFontSize * DESCENT;
  return [...labels, words({ text: axis.title, x: titleX, y: foot, size: titleFontSize, fill })];
}

/** The label of a tick: at most two decimals, a true minus sign; the amount itself on logarithms. */
export function shownTick({ axis }: AxisRead, value: number): string {
  const amount = axis.labelExpr === undefined ? value : 10 ** value;
  return String(Number(amount.toFixed(2))).replace("-", "−");
}
