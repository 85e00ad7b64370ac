import type { Band } from "../curve/edgeTimes.ts";
import type { ReachRow } from "../kiln/LearnedKiln.ts";
import { printTemperature } from "../text/quantities.ts";
import { fahrenheitDeltaFromCelsiusDelta, type TemperatureUnit } from "../units/temperature.ts";
import { type ChartSpec, drawn, type Layer, type Row, VEGA_LITE_SCHEMA } from "./chartSpec.ts";
import { rowPixels } from "./curveLines.ts";
import { type Frame, PLOT_WIDTH, pixelAt } from "./frame.ts";
import { keyLayers } from "./key.ts";
import { labelLayers, lineLayer } from "./layers.ts";
import { freestBox, LINE_HEIGHT, labelWidth } from "./placement.ts";
import { acrossAxis, type Places, placing, upAxis } from "./places.ts";
import { evenTicks, roundUp, temperature, temperatureTicks } from "./quantities.ts";
import { type LineStyle, styleAt, type Theme, theme, themeConfig } from "./theme.ts";

/** What a chart of a kiln's reach shows. */
export interface ReachChartInput {
  readonly title: string;
  readonly reach: readonly ReachRow[];
  /** Inversions, as strips. */
  readonly bands: readonly Band[];
  /** Whether the climb is known from the controller's output, or is the least it can be. */
  readonly powerKnown: boolean;
  readonly unit: TemperatureUnit;
  readonly dark?: boolean;
}

const HEIGHT = 340;

interface ReachLine {
  readonly name: string;
  readonly details: readonly string[];
  readonly rows: readonly Row[];
  readonly style: LineStyle;
}

/**
 * How fast a kiln goes against temperature: the climb with everything on, the fastest climb seen,
 * and the fall by itself. Both ways are drawn upward, so that they can be compared.
 * @throws RangeError when there is no row.
 */
export function reachChart(input: ReachChartInput): ChartSpec {
  if (input.reach.length === 0) throw new RangeError("reachChart: no rows");
  const colours = theme(input.dark);
  const frame = frameOf(input);
  const speed = speedOf(input.unit);
  const { field, title } = temperature(input.unit);
  const places: Places = {
    xField: field,
    yField: speed.field,
    x: acrossAxis(title, frame.x, temperatureTicks(frame.x[0], frame.x[1], input.unit)),
    y: upAxis(speed.title, frame.y, evenTicks(0, frame.y[1], 6)),
  };
  const lines = linesOf(input, colours);
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf(input),
    title: {
      text: input.title,
      subtitle: "Learned from its logs; climbing and falling both drawn upward",
    },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...strips(places, frame, input, colours),
      ...lines.map((line) => lineLayer(places, line.rows, line.style, field)),
      ...bandNames(places, frame, input, lines, colours),
      ...keyLayers(
        places,
        frame,
        lines.map(({ name, details, rows, style }) => ({
          name,
          details,
          style,
          nearY: pixelAt(frame, 0, Number(rows.at(-1)?.[speed.field] ?? 0)).y,
        })),
        colours,
      ),
    ],
    config: themeConfig(colours),
  };
}

/** Speed in the reader's unit, whichever way it goes. */
function speedOf(unit: TemperatureUnit) {
  return unit === "C"
    ? { field: "speedCPerHour", title: "Speed (°C/h)", shown: (rate: number) => rate }
    : { field: "speedFPerHour", title: "Speed (°F/h)", shown: fahrenheitDeltaFromCelsiusDelta };
}

function linesOf(input: ReachChartInput, colours: Theme): readonly ReachLine[] {
  const line = (of: (row: ReachRow) => number | null): readonly Row[] => {
    const speed = speedOf(input.unit);
    const temp = temperature(input.unit);
    let piece = 0;
    return input.reach.flatMap((row) => {
      const rate = of(row);
      if (rate === null) {
        piece += 1;
        return [];
      }
      return [
        {
          [temp.field]: drawn(temp.shown(row.tempC)),
          [speed.field]: drawn(speed.shown(rate)),
          piece,
        },
      ];
    });
  };
  const lines: readonly ReachLine[] = [
    {
      name: "full power",
      details: [input.powerKnown ? "predicted" : "at least"],
      rows: line((row) => row.climbCPerHour),
      style: styleAt(colours.compared, 0),
    },
    {
      name: "fastest climb seen",
      details: ["any log, over 30 min"],
      rows: line((row) => row.seenCPerHour),
      style: styleAt(colours.compared, 2),
    },
    {
      name: "falling by itself",
      details: ["lid shut, power off"],
      rows: line((row) => row.fallCPerHour),
      style: styleAt(colours.compared, 1),
    },
  ];
  return lines.filter(({ rows }) => rows.length > 0);
}

function frameOf({ reach, unit }: ReachChartInput): Frame {
  const { shown } = temperature(unit);
  const fastest = Math.max(
    10,
    ...reach.flatMap((row) => [row.climbCPerHour, row.fallCPerHour, row.seenCPerHour ?? 0]),
  );
  return {
    width: PLOT_WIDTH,
    height: HEIGHT,
    x: [drawn(shown(reach[0]!.tempC)), drawn(shown(reach.at(-1)!.tempC))],
    y: [0, roundUp(speedOf(unit).shown(fastest) * 1.05)],
  };
}

/** Bands as upright strips. */
function strips(
  places: Places,
  frame: Frame,
  { bands, unit }: ReachChartInput,
  colours: Theme,
): readonly Layer[] {
  if (bands.length === 0) return [];
  const { shown } = temperature(unit);
  return [
    {
      data: {
        values: bands.map((band) => ({
          band: band.name,
          [places.xField]: drawn(shown(band.lowC)),
          high: drawn(shown(band.highC)),
          [places.yField]: frame.y[0],
          top: frame.y[1],
        })),
      },
      mark: { type: "rect", color: colours.band, opacity: colours.bandOpacity },
      encoding: { ...placing(places), x2: { field: "high" }, y2: { field: "top" } },
    },
  ];
}

/** Names of the strips, in or beside them where no line passes. */
function bandNames(
  places: Places,
  frame: Frame,
  { bands, unit }: ReachChartInput,
  lines: readonly ReachLine[],
  colours: Theme,
): readonly Layer[] {
  const pixels = lines.flatMap(({ rows }) => rowPixels(rows, places.xField, places.yField, frame));
  const { shown } = temperature(unit);
  const labels = bands.map((band) => {
    const width = labelWidth(band.name);
    const middle = pixelAt(frame, shown((band.lowC + band.highC) / 2), 0).x;
    const box = freestBox(
      [6, 28, 60, 120, 180, 240].map((top) => ({
        left: middle - width / 2,
        right: middle + width / 2,
        top,
        bottom: top + LINE_HEIGHT,
      })),
      { lines: pixels, boxes: [] },
      frame,
    );
    return {
      text: band.name,
      at: { x: middle, y: (box.top + box.bottom) / 2 },
      align: "center" as const,
    };
  });
  return labelLayers(places, frame, labels, colours.quiet, null);
}

function descriptionOf({ title, reach, bands, unit }: ReachChartInput): string {
  const from = printTemperature(reach[0]!.tempC, unit);
  const to = printTemperature(reach.at(-1)!.tempC, unit);
  const names = bands.map((band) => band.name);
  const also = names.length > 0 ? `; strips mark ${names.join(" and ")}` : "";
  return `${title}: speed against temperature from ${from} to ${to}, climbing at full power, the fastest climb seen, and falling by itself${also}.`;
}
