import { type Curve, peakOf } from "../curve/Curve.ts";
import type { Band } from "../curve/edgeTimes.ts";
import { printTemperature } from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { bandLabels, bandStrips } from "./bandStrips.ts";
import { type ChartSpec, drawn, VEGA_LITE_SCHEMA } from "./chartSpec.ts";
import { curveRows, rowPixels } from "./curveLines.ts";
import { type Frame, PLOT_WIDTH } from "./frame.ts";
import { keyLayers } from "./key.ts";
import { labelLayers, lineLayer } from "./layers.ts";
import { acrossAxis, type Places, upAxis } from "./places.ts";
import { hourTicks, temperature, temperatureTicks } from "./quantities.ts";
import { type LineStyle, styleAt, type Theme, theme, themeConfig } from "./theme.ts";

/** What an overlay chart shows. */
export interface OverlayChartInput {
  readonly title: string;
  /** Under the title: where hour 0 is. */
  readonly subtitle: string;
  /** `the peak`, to end "time from …". */
  readonly zero: string;
  /** Firings with time 0 where they are lined up; null where one never comes there and is not drawn. */
  readonly firings: readonly { readonly name: string; readonly curve: Curve | null }[];
  readonly bands: readonly Band[];
  readonly unit: TemperatureUnit;
  readonly dark?: boolean;
}

const HEIGHT = 420;

/**
 * Several firings over each other, lined up at one moment, each with a dash of its own, which a firing
 * that is not drawn leaves free.
 * @throws RangeError when there is no firing to draw.
 */
export function overlayChart(input: OverlayChartInput): ChartSpec {
  const colours = theme(input.dark);
  const drawnFirings = firingsOf(input, colours);
  if (drawnFirings.length === 0) throw new RangeError("overlayChart: no firings");
  const frame = frameOf(drawnFirings, input.unit);
  const { field, title } = temperature(input.unit);
  const places: Places = {
    xField: "elapsedHours",
    yField: field,
    x: acrossAxis(`Time from ${input.zero} (h)`, frame.x, hourTicks(frame.x[0], frame.x[1])),
    y: upAxis(title, frame.y, temperatureTicks(frame.y[0], frame.y[1], input.unit)),
  };
  const lines = drawnFirings.map((firing) => ({
    ...firing,
    rows: curveRows(firing.curve, input.unit),
  }));
  const pixels = lines.flatMap((line) => rowPixels(line.rows, places.xField, places.yField, frame));
  const bands = bandLabels(frame, input.bands, input.unit, { lines: pixels, boxes: [] });
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf(input, drawnFirings),
    title: { text: input.title, subtitle: input.subtitle },
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

interface DrawnFiring {
  readonly name: string;
  readonly curve: Curve;
  readonly style: LineStyle;
}

function firingsOf({ firings }: OverlayChartInput, { compared }: Theme): readonly DrawnFiring[] {
  return firings.flatMap(({ name, curve }, i) =>
    curve === null ? [] : [{ name, curve, style: styleAt(compared, i) }],
  );
}

function frameOf(firings: readonly DrawnFiring[], unit: TemperatureUnit): Frame {
  const { shown } = temperature(unit);
  const curves = firings.map((firing) => firing.curve);
  const highest = Math.max(...curves.map((curve) => peakOf(curve).tempC));
  const lowest = Math.min(
    0,
    ...curves.map((curve) => curve.tempsC.reduce((a, b) => Math.min(a, b))),
  );
  const step = unit === "C" ? 50 : 100;
  return {
    width: PLOT_WIDTH,
    height: HEIGHT,
    x: [
      drawn(Math.min(...curves.map((curve) => curve.timesSeconds[0]!)) / 3600),
      drawn(Math.max(...curves.map((curve) => curve.timesSeconds.at(-1)!)) / 3600),
    ],
    y: [drawn(shown(lowest)), Math.ceil((shown(highest) * 1.03) / step) * step],
  };
}

function descriptionOf(input: OverlayChartInput, firings: readonly DrawnFiring[]): string {
  const peaks = firings.map(
    ({ name, curve }) => `${name} (peak ${printTemperature(peakOf(curve).tempC, input.unit)})`,
  );
  const strips = input.bands.map((band) => band.name);
  const also = strips.length > 0 ? `; strips mark ${strips.join(" and ")}` : "";
  return `${input.title}: temperature against time from ${input.zero} for ${peaks.join(", ")}${also}.`;
}
