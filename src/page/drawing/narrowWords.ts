import type { ChartRead, LayerRead, Row } from "./ChartRead.ts";

/** Where what stood beside a plot goes. */
export interface MovedWords {
  /** Height of the plot that has room for it [px]. */
  readonly height: number;
  /** The new place from the top left corner of the plot [px]; null for what stands inside and stays. */
  readonly placeOf: (
    row: Row,
    layer: LayerRead,
  ) => { readonly x: number; readonly y: number } | null;
}

/** From the plot to where its key begins in the charts of the core [px]. */
const KEY_INDENT = 14;

/** Room that labels and title of the horizontal axis take below the plot, and some air [px]. */
const AXIS_ROOM = 66;

/** Most that two lines of a key are apart [px]: more only followed the ends of the curves. */
const MOST_APART = 26;

/** Height of a row whose name stands over it [px]. */
const ROW = 46;

/** From the middle of a row up to its name, and down to a heading [px]. */
const OVER_ROW = 17;
const HEADING_DOWN = 7;

/** A key goes below the plot; names of rows, where there is no key, over their rows. */
export function besideToBelow(chart: ChartRead): MovedWords {
  const isKey = chart.layer.some(
    (layer) =>
      layer.mark.type !== "text" && layer.data.values.some((row) => isBeside(row, layer, chart)),
  );
  return isKey ? keyBelow(chart) : namesOver(chart);
}

function keyBelow(chart: ChartRead): MovedWords {
  const { height } = chart;
  const tops = [
    ...new Set(
      chart.layer.flatMap((layer) =>
        layer.data.values
          .filter((row) => isBeside(row, layer, chart))
          .map((row) => yOf(row, layer, chart)),
      ),
    ),
  ].toSorted((a, b) => a - b);
  let at = height + AXIS_ROOM;
  const places = new Map(
    tops.map((top, index) => {
      at += index === 0 ? 0 : Math.min(MOST_APART, top - tops[index - 1]!);
      return [top, at] as const;
    }),
  );
  return {
    height,
    placeOf: (row, layer) =>
      isBeside(row, layer, chart)
        ? {
            x: xOf(row, layer, chart) - chart.width - KEY_INDENT,
            y: places.get(yOf(row, layer, chart)) as number,
          }
        : null,
  };
}

function namesOver(chart: ChartRead): MovedWords {
  const points = chart.layer.filter(({ mark }) => mark.type === "point");
  const rows = new Set(
    points.flatMap((layer) => layer.data.values.map((row) => yOf(row, layer, chart))),
  );
  const names = new Set(
    chart.layer.flatMap((layer) =>
      layer.data.values
        .filter((row) => isBeside(row, layer, chart))
        .map((row) => yOf(row, layer, chart)),
    ),
  );
  const height = names.size === 0 ? chart.height : names.size * ROW;
  return {
    height,
    placeOf: (row, layer) => {
      if (!isBeside(row, layer, chart)) return null;
      const y = yOf(row, layer, chart);
      const middle = (y / chart.height) * height;
      return { x: 0, y: middle + (rows.has(y) ? -OVER_ROW : HEADING_DOWN) };
    },
  };
}

function isBeside(row: Row, layer: LayerRead, chart: ChartRead): boolean {
  return xOf(row, layer, chart) > chart.width + 1;
}

function xOf(row: Row, { encoding: { x } }: LayerRead, { width }: ChartRead): number {
  const [low, high] = x.scale.domain;
  return ((Number(row[x.field]) - low) / (high - low)) * width;
}

/** To whole pixels, so that marks and words of one line are found together. */
function yOf(row: Row, { encoding: { y } }: LayerRead, { height }: ChartRead): number {
  const [low, high] = y.scale.domain;
  return Math.round(((high - Number(row[y.field])) / (high - low)) * height);
}
