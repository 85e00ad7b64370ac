import type { TopLevelSpec } from "vega-lite";
import { textWidth, wrappedToWidth } from "../../core/charts/textWidth.ts";
import { type AxisRead, type ChartRead, chartRead, type LayerRead, type Row } from "./ChartRead.ts";
import { besideToBelow, type MovedWords } from "./narrowWords.ts";
import { ticksWithRoom } from "./ticksWithRoom.ts";

/** Width of the plot on a telephone [px]: with its axis it fills a screen of 390. */
const PLOT_WIDTH = 296;

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
  const layer = chart.layer.map((each) => narrowLayer(each, chart, moved));
  const narrow: ChartRead = {
    ...chart,
    title: narrowTitle(chart),
    padding: PADDING,
    width: PLOT_WIDTH,
    height: moved.height,
    layer,
    config: { ...chart.config, title: { ...chart.config.title, fontSize: TITLE_SIZE } },
  };
  return narrow as unknown as TopLevelSpec;
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

function narrowLayer(layer: LayerRead, chart: ChartRead, moved: MovedWords): LayerRead {
  const { x, y } = layer.encoding;
  const values = layer.data.values.map((row) => {
    const place = moved.placeOf(row, layer);
    if (place === null) return insideRow(row, layer);
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
      x: ticksWithRoom(x, PLOT_WIDTH, chart.config.axis.labelFontSize),
    },
  };
}

function valueAt({ scale }: AxisRead, share: number): number {
  const [low, high] = scale.domain;
  return low + share * (high - low);
}

/** Words in the plot that would reach over its right edge end there. */
function insideRow(row: Row, { mark, encoding }: LayerRead): Row {
  const { x, text } = encoding;
  if (mark.type !== "text" || text === undefined || mark.align === "right") return row;
  const [low, high] = x.scale.domain;
  const width = textWidth(String(row[text.field]), mark.fontSize ?? 11);
  const reach = mark.align === "center" ? width / 2 : width;
  const most = low + (1 - reach / PLOT_WIDTH) * (high - low);
  return { ...row, [x.field]: Math.min(Number(row[x.field]), most) };
}
