import type { LayerRead, MarkRead, Row } from "./ChartRead.ts";
import { element, type Ink, px } from "./Ink.ts";
import { MIDDLE, words } from "./words.ts";

/** Where values land in a plot [px]. */
export interface Plot {
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
}

type Draw = (layer: LayerRead, plot: Plot) => readonly Ink[];

/** The marks of one layer. */
export function drawnMarks(layer: LayerRead, plot: Plot): readonly Ink[] {
  return DRAWN[layer.mark.type](layer, plot);
}

const DRAWN: Readonly<Record<MarkRead["type"], Draw>> = {
  line: (layer, plot) => pieces(layer).map((rows) => lineInk(rows, layer, plot)),
  area: (layer, plot) => pieces(layer).map((rows) => areaInk(rows, layer, plot)),
  rect: (layer, plot) => layer.data.values.map((row) => rectInk(row, layer, plot)),
  rule: (layer, plot) => layer.data.values.map((row) => ruleInk(row, layer, plot)),
  point: (layer, plot) => layer.data.values.map((row) => pointInk(row, layer, plot)),
  text: (layer, plot) => layer.data.values.map((row) => textInk(row, layer, plot)),
};

/** Rows apart by their piece, each in its order. */
function pieces({ data, encoding }: LayerRead): readonly (readonly Row[])[] {
  const detail = encoding.detail?.field;
  const order = encoding.order?.field;
  const groups = new Map<Row[string] | undefined, Row[]>();
  for (const row of data.values) {
    const piece = detail === undefined ? "" : row[detail];
    const group = groups.get(piece);
    if (group === undefined) groups.set(piece, [row]);
    else group.push(row);
  }
  return [...groups.values()].map((rows) =>
    order === undefined ? rows : rows.toSorted((a, b) => Number(a[order]) - Number(b[order])),
  );
}

interface Pixel {
  readonly x: number;
  readonly y: number;
}

function pixelOf(row: Row, { encoding }: LayerRead, plot: Plot): Pixel {
  return { x: plot.x(Number(row[encoding.x.field])), y: plot.y(Number(row[encoding.y.field])) };
}

/** The other corner of a mark that has two; the same where it has none. */
function otherPixelOf(row: Row, layer: LayerRead, plot: Plot): Pixel {
  const { x2, y2 } = layer.encoding;
  const here = pixelOf(row, layer, plot);
  return {
    x: x2 === undefined ? here.x : plot.x(Number(row[x2.field])),
    y: y2 === undefined ? here.y : plot.y(Number(row[y2.field])),
  };
}

function lineInk(rows: readonly Row[], layer: LayerRead, plot: Plot): Ink {
  const { mark } = layer;
  const pixels = rows.map((row) => pixelOf(row, layer, plot));
  const svg = element("path", {
    d: pathOf(pixels),
    fill: "none",
    stroke: mark.stroke ?? mark.color,
    "stroke-width": mark.strokeWidth ?? 2,
    "stroke-dasharray": mark.strokeDash?.join(","),
    "stroke-linecap": mark.strokeCap,
    "stroke-linejoin": mark.strokeJoin,
    opacity: mark.opacity,
  });
  return { svg, reach: mark.clip ? null : around(pixels) };
}

function areaInk(rows: readonly Row[], layer: LayerRead, plot: Plot): Ink {
  const { mark } = layer;
  const byX = rows.toSorted((a, b) => pixelOf(a, layer, plot).x - pixelOf(b, layer, plot).x);
  const upper = byX.map((row) => pixelOf(row, layer, plot));
  const lower = byX.map((row) => otherPixelOf(row, layer, plot)).reverse();
  const d = `${pathOf([...upper, ...lower])}Z`;
  return { svg: element("path", { d, fill: mark.color, opacity: mark.opacity }), reach: null };
}

function rectInk(row: Row, layer: LayerRead, plot: Plot): Ink {
  const a = pixelOf(row, layer, plot);
  const b = otherPixelOf(row, layer, plot);
  const svg = element("rect", {
    x: Math.min(a.x, b.x),
    y: Math.min(a.y, b.y),
    width: Math.abs(a.x - b.x),
    height: Math.abs(a.y - b.y),
    fill: layer.mark.color,
    opacity: layer.mark.opacity,
  });
  return { svg, reach: null };
}

function ruleInk(row: Row, layer: LayerRead, plot: Plot): Ink {
  const a = pixelOf(row, layer, plot);
  const b = otherPixelOf(row, layer, plot);
  const { color, strokeWidth, opacity } = layer.mark;
  const ends = { x1: a.x, y1: a.y, x2: b.x, y2: b.y };
  return {
    svg: element("line", { ...ends, stroke: color, "stroke-width": strokeWidth, opacity }),
    reach: null,
  };
}

function pointInk(row: Row, layer: LayerRead, plot: Plot): Ink {
  const { mark } = layer;
  const { x, y } = pixelOf(row, layer, plot);
  const size = mark.size ?? 30;
  const look = {
    fill: mark.fill ?? mark.color,
    opacity: mark.opacity,
    stroke: mark.stroke,
    "stroke-width": mark.strokeWidth,
  };
  const corners = CORNERS[mark.shape ?? "circle"];
  const half = Math.sqrt(size) / 2;
  const svg =
    corners === undefined
      ? element("circle", { cx: x, cy: y, r: Math.sqrt(size / Math.PI), ...look })
      : element("path", {
          d: `${pathOf(corners.map((at) => ({ x: x + half * at.x, y: y + half * at.y })))}Z`,
          ...look,
        });
  return { svg, reach: mark.clip ? null : around([{ x, y }]) };
}

const RISE = Math.sqrt(3) / 2;

/** Corners of symbols in a square of two by two, as vega draws them; all others are circles. */
const CORNERS: Readonly<Record<string, readonly Pixel[]>> = {
  "triangle-up": shape([0, -RISE], [-1, RISE], [1, RISE]),
  "triangle-down": shape([0, RISE], [-1, -RISE], [1, -RISE]),
  "triangle-right": shape([RISE, 0], [-RISE, -1], [-RISE, 1]),
  "triangle-left": shape([-RISE, 0], [RISE, -1], [RISE, 1]),
  square: shape([-1, -1], [1, -1], [1, 1], [-1, 1]),
  diamond: shape([0, -1], [1, 0], [0, 1], [-1, 0]),
  cross: shape(
    ...[
      [-1, -0.4],
      [-1, 0.4],
      [-0.4, 0.4],
      [-0.4, 1],
      [0.4, 1],
      [0.4, 0.4],
    ],
    ...[
      [1, 0.4],
      [1, -0.4],
      [0.4, -0.4],
      [0.4, -1],
      [-0.4, -1],
      [-0.4, -0.4],
    ],
  ),
};

function shape(...corners: readonly (readonly number[])[]): readonly Pixel[] {
  return corners.map(([x = 0, y = 0]) => ({ x, y }));
}

function textInk(row: Row, layer: LayerRead, plot: Plot): Ink {
  const { mark, encoding } = layer;
  const { x, y } = pixelOf(row, layer, plot);
  const size = mark.fontSize ?? 11;
  return words({
    text: String(row[encoding.text?.field ?? ""] ?? ""),
    x,
    y: y + size * MIDDLE,
    size,
    fill: mark.color ?? "currentColor",
    ...(mark.align && { align: mark.align }),
    ...(mark.stroke && { rim: { stroke: mark.stroke, width: mark.strokeWidth ?? 1 } }),
  });
}

function pathOf(pixels: readonly Pixel[]): string {
  return pixels.map(({ x, y }, i) => `${i === 0 ? "M" : "L"}${px(x)},${px(y)}`).join("");
}

function around(pixels: readonly Pixel[]): Ink["reach"] {
  const xs = pixels.map(({ x }) => x);
  const ys = pixels.map(({ y }) => y);
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
  };
}
