import type { TopLevelSpec } from "vega-lite";
import { type Curve, peakOf } from "../curve/Curve.ts";
import type { Band } from "../curve/edgeTimes.ts";
import { printTemperature } from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { bandStrips } from "./bandStrips.ts";
import { drawn, type Layer, VEGA_LITE_SCHEMA } from "./chartSpec.ts";
import { curveRows } from "./curveLines.ts";
import { type Frame, pixelAt } from "./frame.ts";
import { labelLayers, lineLayer } from "./layers.ts";
import { acrossAxis, type Places, placing, upAxis } from "./places.ts";
import { evenTicks, hourTicks, temperature } from "./quantities.ts";
import { wrappedToWidth } from "./textWidth.ts";
import { styleAt, type Theme, theme, themeConfig } from "./theme.ts";

/** Several small charts in rows. */
export type SmallMultiples = Extract<TopLevelSpec, { concat: unknown }>;

/** What small charts of firings show. */
export interface FiringsChartInput {
  readonly title: string;
  readonly firings: readonly {
    readonly name: string;
    /** Time 0 = the peak. */
    readonly curve: Curve;
    /** When the kiln was opened, after the peak [s], and how hot it was [°C]; null when not noted. */
    readonly opened: { readonly atSeconds: number; readonly tempC: number } | null;
  }[];
  readonly bands: readonly Band[];
  readonly unit: TemperatureUnit;
  readonly dark?: boolean;
}

const COLUMNS = 3;
const WIDTH = 226;
const HEIGHT = 150;

/** Height of the words on the opening, over the fall of the curve [px]. */
const OPENED_AT = 34;

/** Firings that are shown at most; more would be stamps. */
const MOST = 12;

/**
 * Each firing in a small chart of its own, all with the same axes, its peak at 0 h: the curve, the
 * inversions as strips, the peak and the opening. Beyond twelve firings the rest is said, not drawn.
 * @throws RangeError when there is no firing.
 */
export function firingsChart(input: FiringsChartInput): SmallMultiples {
  if (input.firings.length === 0) throw new RangeError("firingsChart: no firings");
  const colours = theme(input.dark);
  const shown = input.firings.slice(0, MOST);
  const frame = frameOf({ ...input, firings: shown });
  const left = input.firings.length - shown.length;
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf(input),
    title: {
      text: input.title,
      subtitle:
        left > 0
          ? `The first ${MOST}; ${left} more are not drawn`
          : "Hours from the peak; a diamond stands where the kiln was opened",
    },
    background: colours.paper,
    padding: 18,
    columns: COLUMNS,
    spacing: { row: 34, column: 30 },
    concat: shown.map((firing, at) => panel(firing, { input, frame, colours, number: at + 1 })),
    config: {
      ...themeConfig(colours),
      // The whole has one title; over a panel stands its name, small.
      title: { ...themeConfig(colours).title, offset: 16 },
    },
  };
}

function panel(
  firing: FiringsChartInput["firings"][number],
  by: {
    readonly input: FiringsChartInput;
    readonly frame: Frame;
    readonly colours: Theme;
    readonly number: number;
  },
): SmallMultiples["concat"][number] {
  const { input, frame, colours, number } = by;
  const { unit } = input;
  const { field, shown } = temperature(unit);
  const places: Places = {
    xField: "elapsedHours",
    yField: field,
    x: acrossAxis(
      "",
      frame.x,
      hourTicks(frame.x[0], frame.x[1]).filter((_, at) => at % 2 === 0),
    ),
    y: upAxis("", frame.y, evenTicks(frame.y[0], frame.y[1], 4)),
  };
  const peak = peakOf(firing.curve);
  const peakAt = pixelAt(frame, 0, shown(peak.tempC));
  const { opened } = firing;
  const layer: readonly Layer[] = [
    ...bandStrips(places, frame, input.bands, unit, colours),
    lineLayer(places, curveRows(firing.curve, unit), styleAt(colours.measured, 0), "elapsedHours"),
    ...(opened === null
      ? []
      : [
          openingMark(
            places,
            { hours: opened.atSeconds / 3600, temp: shown(opened.tempC) },
            colours,
          ),
        ]),
    ...labelLayers(
      places,
      frame,
      [
        {
          text: printTemperature(peak.tempC, unit),
          at: { x: peakAt.x + 9, y: peakAt.y + 2 },
          align: "left",
        },
      ],
      colours.ink,
      colours.paper,
    ),
    ...(opened === null
      ? []
      : labelLayers(
          places,
          frame,
          [
            {
              text: `opened, ${printTemperature(opened.tempC, unit)}`,
              at: { x: frame.width, y: OPENED_AT },
              align: "right",
            },
          ],
          colours.quiet,
          colours.paper,
        )),
  ];
  return {
    title: {
      text: [...wrappedToWidth(`${number}. ${firing.name}`, 13, WIDTH, 2)],
      fontSize: 13,
      fontWeight: 600,
      offset: 6,
      dx: 0,
      anchor: "start",
      frame: "group",
    },
    width: frame.width,
    height: frame.height,
    layer: [...layer],
  };
}

function openingMark(
  places: Places,
  { hours, temp }: { readonly hours: number; readonly temp: number },
  colours: Theme,
): Layer {
  return {
    data: { values: [{ [places.xField]: drawn(hours), [places.yField]: drawn(temp) }] },
    mark: {
      type: "point",
      shape: "diamond",
      size: 70,
      fill: colours.paper,
      stroke: colours.ember,
      strokeWidth: 1.8,
      opacity: 1,
    },
    encoding: placing(places),
  };
}

function frameOf({ firings, unit }: FiringsChartInput): Frame {
  const { shown } = temperature(unit);
  const highest = Math.max(...firings.map(({ curve }) => peakOf(curve).tempC));
  const step = unit === "C" ? 100 : 200;
  const hours = (seconds: number) => drawn(seconds / 3600);
  return {
    width: WIDTH,
    height: HEIGHT,
    x: [
      hours(Math.min(...firings.map(({ curve }) => curve.timesSeconds[0]!))),
      hours(
        Math.max(
          ...firings.map(({ curve, opened }) =>
            Math.max(curve.timesSeconds.at(-1)!, opened?.atSeconds ?? 0),
          ),
        ),
      ),
    ],
    y: [drawn(shown(0)), Math.ceil((shown(highest) * 1.06) / step) * step],
  };
}

function descriptionOf({ title, firings, unit, bands }: FiringsChartInput): string {
  const each = firings.slice(0, MOST).map(({ name, curve, opened }, at) => {
    const opening = opened === null ? "" : `, opened at ${printTemperature(opened.tempC, unit)}`;
    return `${at + 1}. ${name} (peak ${printTemperature(peakOf(curve).tempC, unit)}${opening})`;
  });
  const strips = bands.map(({ name }) => name).join(" and ");
  return `${title}: each by itself with its peak at 0 h, ${each.join("; ")}${strips === "" ? "" : `; strips mark ${strips}`}.`;
}
