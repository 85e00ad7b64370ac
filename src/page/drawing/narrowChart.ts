import type { TopLevelSpec } from "vega-lite";
import { wrappedToWidth } from "../../core/charts/textWidth.ts";
import { type AxisRead, type ChartRead, chartRead, type LayerRead } from "./ChartRead.ts";
import { freeWords } from "./freeWords.ts";
import { besideToBelow, type MovedWords } from "./narrowWords.ts";
import { ticksWithRoom } from "./ticksWithRoom.ts";

/** Width of the plot on a telephone [px]: with its axis it fills a screen of 390. */
const PLOT_WIDTH = 290;

/** Room around a drawing on a telephone [px]. */
const PADDING = 8;

/** Title and subtitle may be as wide as plot and axis [px]; bold letters take a little more. */
const SUBTITLE_WIDTH = 336;
const TITLE_WIDTH = 310;

const TITLE_SIZE = 18;

/**
 * A chart of layers as it is drawn on a telephone: a narrower plot with fewer ticks, and what stands
 * beside the plot of the chart below it, or, where it names rows, over them.
 * @throws RangeError for a spec that is no chart of layers.
 */
export function narrowChart(spec: TopLevelSpec): TopLevelSpec {
  const chart = chartRead(spec);
  const moved = besideToBelow(chart);
  const wordsX = freeWords(chart, { width: PLOT_WIDTH, height: moved.height });
  const fontSize = chart.config.axis.labelFontSize;
  const layer = chart.layer.flatMap((each) => {
    const isLong = each.data.values.some((row) => wordsX(row, each) !== null);
    const rim = isLong && each.mark.stroke === undefined ? [rimOf(each, chart)] : [];
    return [...rim, each].map((one) => narrowLayer(one, { moved, wordsX, fontSize }));
  });
  const narrow: ChartRead = {
    ...chart,
    title: narrowTitle(chart),
    padding: PADDING,
    width: PLOT_WIDTH,
    height: moved.height,
    layer,
    config: { ...chart.config, title: { ...chart.config.title, ...titleLook(chart) } },
  };
  return narrow as unknown as TopLevelSpec;
}

/** A title begins over the labels of the vertical axis, or over the plot where there are none. */
function titleLook({ layer, config }: ChartRead) {
  const hasLabels = layer[0]?.encoding.y.axis.values.length !== 0;
  return { fontSize: TITLE_SIZE, dx: hasLabels ? config.title.dx : 0 };
}

/** The rim of words that may have to lie over a curve. */
function rimOf(layer: LayerRead, { background }: ChartRead): LayerRead {
  const rim = { stroke: background, strokeWidth: 4, color: background };
  return { ...layer, mark: { ...layer.mark, ...rim } };
}

function narrowTitle({ title, config }: ChartRead): ChartRead["title"] {
  const { subtitleFontSize } = config.title;
  return {
    text: [title.text].flat().flatMap((line) => wrappedToWidth(line, TITLE_SIZE, TITLE_WIDTH, 3)),
    subtitle: [title.subtitle ?? []]
      .flat()
      .flatMap((line) => wrappedToWidth(line, subtitleFontSize, SUBTITLE_WIDTH, 5)),
  };
}

function narrowLayer(
  layer: LayerRead,
  given: {
    readonly moved: MovedWords;
    readonly wordsX: ReturnType<typeof freeWords>;
    readonly fontSize: number;
  },
): LayerRead {
  const { moved, wordsX, fontSize } = given;
  const { x, y } = layer.encoding;
  const values = layer.data.values.map((row) => {
    const place = moved.placeOf(row, layer);
    if (place === null) {
      const free = wordsX(row, layer);
      return free === null ? row : { ...row, [x.field]: valueAt(x, free / PLOT_WIDTH) };
    }
    return {
      ...row,
      [x.field]: valueAt(x, place.x / PLOT_WIDTH),
      [y.field]: valueAt(y, 1 - place.y / moved.height),
    };
  });
  return {
    ...layer,
    data: { values },
    encoding: {
      ...layer.encoding,
      x: ticksWithRoom(x, PLOT_WIDTH, fontSize),
    },
  };
}

function valueAt({ scale }: AxisRead, share: number): number {
  const [low, high] = scale.domain;
  return low + share * (high - low);
}
