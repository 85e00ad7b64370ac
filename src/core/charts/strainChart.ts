import { type Curve, peakOf } from "../curve/Curve.ts";
import type { PieceStrain } from "../ware/pieceStrain.ts";
import { type ChartSpec, drawn, type Layer, type Row, VEGA_LITE_SCHEMA } from "./chartSpec.ts";
import { rowPixels } from "./curveLines.ts";
import { type Frame, type Pixel, PLOT_WIDTH, pixelAt } from "./frame.ts";
import { keyLayers } from "./key.ts";
import { type Label, labelLayers, leaderLayer, lineLayer } from "./layers.ts";
import { type Box, freestBox, LINE_HEIGHT, labelWidth, spread } from "./placement.ts";
import { acrossAxis, type Places, placing, upAxis } from "./places.ts";
import { evenTicks, hourTicks, roundUp } from "./quantities.ts";
import { type DrawnPassage, drawnPassages, drawnStrain, strainRows } from "./strainLine.ts";
import { styleAt, type Theme, theme, themeConfig } from "./theme.ts";

/** What a chart of the stress in the ware shows. */
export interface StrainChartInput {
  readonly title: string;
  readonly curve: Curve;
  /** What the Curve does to the piece: `platters`. */
  readonly strained: PieceStrain;
  readonly dark?: boolean;
}

const HEIGHT = 240;

/** A name further from the middle of its strip than this is tied to it. */
const ASIDE_PIXELS = 12;

/** Stress over strength that is drawn as a line across, in words. */
const LEVELS = [
  { strain: 0.5, words: "half its strength" },
  { strain: 1, words: "its strength" },
];

/**
 * Stress over strength of one piece against time from the peak on, as long as the kiln is shut: the
 * computed middle as a line, where four draws
 * of five lie as a shade, and when the ware went through each inversion as strips.
 */
export function strainChart(input: StrainChartInput): ChartSpec {
  const colours = theme(input.dark);
  const { curve, strained } = input;
  const passages = drawnPassages(strained);
  const strain = drawnStrain(strained, peakOf(curve).seconds);
  const rows = strainRows(strain, curve, passages);
  const frame = frameOf(rows, strain.timesSeconds);
  const places: Places = {
    xField: "elapsedHours",
    yField: "strain",
    x: acrossAxis("Elapsed time (h)", frame.x, hourTicks(frame.x[0], frame.x[1])),
    y: titledAbove(upAxis("Stress over strength", frame.y, evenTicks(0, frame.y[1], 5))),
  };
  const style = styleAt(colours.measured, 0);
  const pixels = rowPixels(rows, places.xField, places.yField, frame);
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf(input, passages),
    title: {
      text: input.title,
      subtitle: subtitleOf(strained),
    },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...passageStrips(places, frame, passages, colours),
      rangeLayer(places, rows, style.stroke),
      ...levelLines(places, frame, colours),
      lineLayer(places, rows, style, "elapsedHours"),
      ...labelLayers(places, frame, levelLabels(frame, pixels), colours.ink, colours.paper),
      ...passageNames(places, frame, passages, colours.quiet),
      ...keyLayers(
        places,
        frame,
        [
          {
            name: strained.name,
            details: [],
            style,
            nearY: pixelAt(frame, 0, Number(rows.at(-1)?.strain ?? 0)).y,
          },
        ],
        colours,
      ),
    ],
    config: themeConfig(colours),
  };
}

function frameOf(rows: readonly Row[], timesSeconds: Float64Array): Frame {
  const from = (timesSeconds[0] ?? 0) / 3600;
  const to = (timesSeconds.at(-1) ?? 0) / 3600;
  const highest = Math.max(0, ...rows.map((row) => Number(row.high)));
  return {
    width: PLOT_WIDTH,
    height: HEIGHT,
    x: [from, Math.max(to, from + 1 / 60)],
    y: [0, roundUp(Math.max(1.2, 1.05 * highest))],
  };
}

function passageStrips(
  places: Places,
  frame: Frame,
  passages: readonly DrawnPassage[],
  colours: Theme,
): readonly Layer[] {
  if (passages.length === 0) return [];
  return [
    {
      data: {
        values: passages.map((passage) => ({
          band: `${passage.band}, ${passage.direction}`,
          elapsedHours: drawn(passage.fromSeconds / 3600),
          endHours: drawn(passage.toSeconds / 3600),
          strain: frame.y[1],
          foot: 0,
        })),
      },
      mark: { type: "rect", color: colours.band, opacity: colours.bandOpacity },
      encoding: { ...placing(places), x2: { field: "endHours" }, y2: { field: "foot" } },
    },
  ];
}

function rangeLayer(places: Places, rows: readonly Row[], colour: string): Layer {
  return {
    data: {
      values: rows.map(({ elapsedHours, low, high, piece }) => ({
        elapsedHours: elapsedHours as number,
        strain: high as number,
        low: low as number,
        piece: piece as number,
      })),
    },
    mark: { type: "area", clip: true, color: colour, opacity: 0.22 },
    encoding: {
      ...placing(places),
      y2: { field: "low" },
      detail: { field: "piece", type: "nominal" },
    },
  };
}

function levelLines(places: Places, frame: Frame, colours: Theme): readonly Layer[] {
  return LEVELS.map(({ strain }) => ({
    data: { values: frame.x.map((elapsedHours) => ({ elapsedHours, strain })) },
    mark: {
      type: "line",
      color: colours.ember,
      ...(strain < 1 ? { strokeWidth: 1, strokeDash: [2, 3] } : { strokeWidth: 1.6 }),
    },
    encoding: placing(places),
  }));
}

/** Words on or under each level, where the line does not pass. */
function levelLabels(frame: Frame, lines: Parameters<typeof freestBox>[1]["lines"]) {
  const boxes: Box[] = [];
  return LEVELS.map(({ strain, words }): Label => {
    const { y } = pixelAt(frame, 0, strain);
    const width = labelWidth(words);
    const lefts = Array.from({ length: 30 }, (_, i) => 4 + (i * (frame.width - width - 8)) / 29);
    const box = freestBox(
      [y - 2, y + LINE_HEIGHT + 2].flatMap((bottom) =>
        lefts.map((left) => ({ left, right: left + width, top: bottom - LINE_HEIGHT, bottom })),
      ),
      { lines, boxes },
      frame,
    );
    boxes.push(box);
    return { text: words, at: { x: box.left, y: (box.top + box.bottom) / 2 }, align: "left" };
  });
}

/** The name and direction of each passage, over its strip in two lines, tied to it where it stands aside. */
function passageNames(
  places: Places,
  frame: Frame,
  passages: readonly DrawnPassage[],
  colour: string,
): readonly Layer[] {
  const named = passages.map((passage) => ({
    ...passage,
    name: passage.band.replace(/ inversion$/, ""),
  }));
  const widest = Math.max(
    0,
    ...named.flatMap(({ name, direction }) => [labelWidth(name), labelWidth(direction)]),
  );
  const middles = named.map(
    ({ fromSeconds, toSeconds }) => pixelAt(frame, (fromSeconds + toSeconds) / 7200, 0).x,
  );
  const xs = spread(middles, widest + 10, widest / 2, frame.width);
  const labels = named.flatMap(({ name, direction }, i): readonly Label[] => {
    const x = xs[i]!;
    return [
      { text: name, at: { x, y: -36 }, align: "center" },
      { text: direction, at: { x, y: -19 }, align: "center" },
    ];
  });
  const leaders = middles.flatMap((x, i): readonly (readonly [Pixel, Pixel])[] => {
    const from = { x: xs[i]!, y: -9 };
    return Math.abs(from.x - x) < ASIDE_PIXELS ? [] : [[from, { x, y: 0 }]];
  });
  return [
    ...leaderLayer(places, frame, leaders, colour),
    ...labelLayers(places, frame, labels, colour, null),
  ];
}

/** The title of the axis a line higher, so that names of passages have the whole width. */
function titledAbove(axis: Places["y"]): Places["y"] {
  return { ...axis, axis: { ...axis.axis, titleY: -58 } };
}

function subtitleOf({ name }: PieceStrain): string[] {
  return [
    `Computed for ${name}, from the peak on, the kiln shut`,
    "The shade holds 8 in 10 of what may be",
  ];
}

function descriptionOf(
  { title, strained }: StrainChartInput,
  passages: readonly DrawnPassage[],
): string {
  const worst = passages.map(
    ({ band, direction, ratio, low, high }) =>
      `${band}, ${direction}: ${ratio.toFixed(2)} of its strength (8 in 10 between ${low.toFixed(2)} and ${high.toFixed(2)})`,
  );
  const most = worst.length > 0 ? `; at most ${worst.join("; ")}` : "; no inversion was reached";
  return `${title}: computed stress over strength of ${strained.name} against time from the peak on, with lines at half its strength and at its strength${most}.`;
}
