import type { Spread } from "../math/statistics.ts";
import type { FitStudy, FoundMismatch, GlazeOnClay } from "../trials/FiringStudy.ts";
import { type ChartSpec, drawn, type Layer, VEGA_LITE_SCHEMA } from "./chartSpec.ts";
import { type Frame, PLOT_WIDTH, pixelAt } from "./frame.ts";
import { labelLayers, lineLayer } from "./layers.ts";
import { acrossAxis, type Places, placing, upAxis } from "./places.ts";
import { evenTicks } from "./quantities.ts";
import { type LineStyle, styleAt, type Theme, theme, themeConfig } from "./theme.ts";

/** What a chart of fits shows. */
export interface FitsChartInput {
  readonly title: string;
  /** At least one glaze on a clay. */
  readonly pairs: FitStudy["pairs"];
  readonly dark?: boolean;
}

/** Height of one row [px]. */
const ROW = 30;

/** Room beyond the outermost range, as a share of it. */
const ROOM = 0.08;

/** One line of the chart: who tells, and what. */
interface FitRow {
  readonly y: number;
  /** Of a pair, before its rows; else null. */
  readonly heading: string | null;
  readonly label: string;
  readonly perK: Spread | null;
  readonly found: FoundMismatch | null;
}

/**
 * How much more each glaze shrinks than its clay: by the files of glaze and body, and as cracks and
 * pings of the tiles say, each as a middle with its range.
 * @throws RangeError without any pair.
 */
export function fitsChart({ title, pairs, dark }: FitsChartInput): ChartSpec {
  if (pairs.length === 0) throw new RangeError("fitsChart: no glaze on any clay");
  const colours = theme(dark);
  const rows = rowsOf(pairs);
  const frame = frameOf(rows);
  const places: Places = {
    xField: "perMillion",
    yField: "row",
    x: acrossAxis(
      "Glaze shrinks more than the clay (millionths per °C)",
      frame.x,
      evenTicks(frame.x[0], frame.x[1], 8),
    ),
    y: upAxis("", frame.y, []),
  };
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf(title, pairs),
    title: { text: title, subtitle: "The farther right, the harder the glaze is pulled" },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...zeroLayers(places, frame, colours),
      ...rangeLayers(places, rows, colours),
      ...wordLayers(places, frame, { rows, colours }),
    ],
    config: themeConfig(colours),
  };
}

function rowsOf(pairs: FitStudy["pairs"]): readonly FitRow[] {
  const rows = pairs.flatMap(({ glaze, clay, computedPerK, found }) => [
    { heading: `${glaze} on ${clay}`, label: "", perK: null, found: null },
    { heading: null, label: "by the files", perK: computedPerK, found: null },
    ...found.map((each) => ({
      heading: null,
      label: `${each.from}, ${each.tiles === 1 ? "one tile" : `${each.tiles} tiles`}`,
      perK: each.perK,
      found: each,
    })),
  ]);
  return rows.map((row, at) => ({ ...row, y: rows.length - at - 0.5 }));
}

function frameOf(rows: readonly FitRow[]): Frame {
  const ends = rows.flatMap(({ perK, found }) => [
    ...(perK === null ? [] : [perK.low, perK.high]),
    ...(found === null ? [] : [found.leastPerK, found.mostPerK]),
  ]);
  const [low, high] = [Math.min(0, ...ends) * 1e6, Math.max(0, ...ends) * 1e6];
  const room = ROOM * (high - low);
  return {
    width: PLOT_WIDTH,
    height: ROW * rows.length,
    x: [drawn(low - room), drawn(high + room)],
    y: [0, rows.length],
  };
}

/** No difference: to the left the glaze is squeezed, to the right pulled. */
function zeroLayers(places: Places, frame: Frame, colours: Theme): readonly Layer[] {
  const rows = frame.y.map((row, order) => ({ perMillion: 0, row, piece: 0, order }));
  return [lineLayer(places, rows, { ...colours.planned, strokeWidth: 1.2 }, "order")];
}

function rangeLayers(places: Places, rows: readonly FitRow[], colours: Theme): readonly Layer[] {
  const encoding = placing(places);
  const files: LineStyle = styleAt(colours.measured, 1);
  const tiles: LineStyle = styleAt(colours.measured, 0);
  return rows.flatMap(({ y, perK, found }): readonly Layer[] => {
    if (perK === null) return [];
    const colour = (found === null ? files : tiles).stroke;
    const at = (value: number) => drawn(value * 1e6);
    return [
      {
        data: { values: [{ perMillion: at(perK.low), end: at(perK.high), row: y }] },
        mark: { type: "rule", color: colour, strokeWidth: found === null ? 1.6 : 3 },
        encoding: { ...encoding, x2: { field: "end" } },
      },
      {
        data: { values: [{ perMillion: at(perK.median), row: y }] },
        mark: {
          type: "point",
          shape: found === null ? "diamond" : pointShape(found),
          size: 90,
          fill: found === null ? colours.paper : colour,
          stroke: colour,
          strokeWidth: 1.8,
          opacity: 1,
        },
        encoding,
      },
    ];
  });
}

/** A bound points the way in which the truth may lie. */
function pointShape({ holds }: FoundMismatch): string {
  if (holds === "about") return "circle";
  return holds === "at least" ? "triangle-right" : "triangle-left";
}

function wordLayers(
  places: Places,
  frame: Frame,
  { rows, colours }: { readonly rows: readonly FitRow[]; readonly colours: Theme },
): readonly Layer[] {
  const at = (y: number) => pixelAt(frame, frame.x[0], y).y;
  const words = (isHeading: boolean) =>
    rows
      .filter(({ heading }) => (heading !== null) === isHeading)
      .map(({ heading, label, y }) => ({
        text: heading ?? label,
        at: { x: frame.width + 14, y: at(y) },
        align: "left" as const,
      }));
  const zero = pixelAt(frame, 0, 0).x;
  const ways = [
    { text: "squeezed", at: { x: zero - 8, y: at(frame.y[1]) + 6 }, align: "right" as const },
    { text: "pulled", at: { x: zero + 8, y: at(frame.y[1]) + 6 }, align: "left" as const },
  ].filter(({ align }) => align === "left" || zero > 90);
  return [
    ...labelLayers(places, frame, words(true), colours.ink, colours.paper),
    ...labelLayers(places, frame, [...words(false), ...ways], colours.quiet, colours.paper),
  ];
}

function descriptionOf(title: string, pairs: readonly GlazeOnClay[]): string {
  const of = (perK: Spread) => (perK.median * 1e6).toFixed(1);
  const said = pairs.map(({ glaze, clay, computedPerK, found }) =>
    [
      `${glaze} on ${clay} ${of(computedPerK)} by the files`,
      ...found.map(({ from, holds, perK }) => `${holds} ${of(perK)} by ${from}`),
    ].join(", "),
  );
  return `${title}: difference in shrinking between glaze and clay in millionths per °C; ${said.join("; ")}.`;
}
