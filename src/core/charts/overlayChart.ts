import type { Band } from "../curve/Band.ts";
import type { Curve } from "../curve/Curve.ts";
import { peakOf } from "../curve/peakOf.ts";
import { printTemperature } from "../units/print.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { bandLabels, bandStrips } from "./bandStrips.ts";
import { type ChartSpec, drawn, VEGA_LITE_SCHEMA } from "./chartSpec.ts";
import { curveRows, rowPixels } from "./curveLines.ts";
import { type Frame, PLOT_WIDTH } from "./frame.ts";
import { keyLayers } from "./key.ts";
import { labelLayers, lineLayer } from "./layers.ts";
import { acrossAxis, type Places, upAxis } from "./places.ts";
import { hourTicks, temperature, temperatureTicks } from "./quantities.ts";
import { styleAt, theme, themeConfig } from "./theme.ts";

/** What an overlay chart shows. */
export interface OverlayChartInput {
  readonly title: string;
  /** Firings with time 0 at their peak. */
  readonly firings: readonly { readonly name: string; readonly curve: Curve }[];
  readonly bands: readonly Band[];
  readonly unit: TemperatureUnit;
  readonly dark?: boolean;
}

const HEIGHT = 420;

/**
 * Several firings over each other, aligned at the peak, each with a dash of its own.
 * @throws RangeError when there is no firing.
 */
export function overlayChart(input: OverlayChartInput): ChartSpec {
  if (input.firings.length === 0) throw new RangeError("overlayChart: no firings");
  const colours = theme(input.dark);
  const frame = frameOf(input);
  const { field, title } = temperature(input.unit);
  const places: Places = {
    xField: "elapsedHours",
    yField: field,
    x: acrossAxis("Time from the peak (h)", frame.x, hourTicks(frame.x[0], frame.x[1])),
    y: upAxis(title, frame.y, temperatureTicks(frame.y[0], frame.y[1], input.unit)),
  };
  const lines = input.firings.map(({ name, curve }, i) => ({
    name,
    curve,
    rows: curveRows(curve, input.unit),
    style: styleAt(colours.compared, i),
  }));
  const pixels = lines.flatMap((line) => rowPixels(line.rows, places.xField, places.yField, frame));
  const bands = bandLabels(frame, input.bands, input.unit, { lines: pixels, boxes: [] });
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf(input),
    title: { text: input.title, subtitle: "Each firing with its peak at 0 h" },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...bandStrips(places, frame, input.bands, input.unit, colours),
      ...lines.map((line) => lineLayer(places, line.rows, line.style, "elapsedHours")),
      ...labelLayers(
        places,
        frame,
        bands.map((band) => band.label),
        colours.quiet,
        null,
      ),
      ...keyLayers(
        places,
        frame,
        lines.map(({ name, curve, style }, i) => ({
          name,
          details: [`peak ${printTemperature(peakOf(curve).tempC, input.unit)}`],
          nearY: i,
          style,
        })),
        colours,
      ),
    ],
    config: themeConfig(colours),
  };
}

function frameOf(input: OverlayChartInput): Frame {
  const { shown } = temperature(input.unit);
  const curves = input.firings.map((firing) => firing.curve);
  const highest = Math.max(...curves.map((curve) => peakOf(curve).tempC));
  const lowest = Math.min(
    0,
    ...curves.map((curve) => curve.tempsC.reduce((a, b) => Math.min(a, b))),
  );
  const step = input.unit === "C" ? 50 : 100;
  return {
    width: PLOT_WIDTH,
    height: HEIGHT,
    x: [
      drawn(Math.min(...curves.map((curve) => curve.timesSeconds[0] as number)) / 3600),
      drawn(Math.max(...curves.map((curve) => curve.timesSeconds.at(-1) as number)) / 3600),
    ],
    y: [drawn(shown(lowest)), Math.ceil((shown(highest) * 1.03) / step) * step],
  };
}

function descriptionOf(input: OverlayChartInput): string {
  const peaks = input.firings.map(
    ({ name, curve }) => `${name} (peak ${printTemperature(peakOf(curve).tempC, input.unit)})`,
  );
  const strips = input.bands.map((band) => band.name);
  const also = strips.length > 0 ? `; strips mark ${strips.join(" and ")}` : "";
  return `${input.title}: temperature against time from the peak for ${peaks.join(", ")}${also}.`;
}
