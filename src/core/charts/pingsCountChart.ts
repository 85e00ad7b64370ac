import type { PingLaw } from "../pings/omoriLaw.ts";
import { printDuration } from "../text/quantities.ts";
import { type ChartSpec, drawn, type Layer, type Row, VEGA_LITE_SCHEMA } from "./chartSpec.ts";
import { type Frame, PLOT_WIDTH, pixelAt } from "./frame.ts";
import { type KeyEntry, keyLayers } from "./key.ts";
import { lineLayer } from "./layers.ts";
import { type RecordingTime, recordingTime } from "./pingsTime.ts";
import { unloadingLayers } from "./pingsUnloading.ts";
import { type Places, placing, upAxis } from "./places.ts";
import { evenTicks, roundUp } from "./quantities.ts";
import { styleAt, type Theme, theme, themeConfig } from "./theme.ts";

/** What a chart of the growing count shows. */
export interface PingsCountInput {
  readonly title: string;
  /** Times of the pings, rising [s]. */
  readonly times: readonly number[];
  readonly seconds: number;
  /** Null up to 50 pings: nothing is fitted then. */
  readonly law: PingLaw | null;
  /** When the ware was taken out [s of the recording]; null when that is not known. */
  readonly unloadedSeconds: number | null;
  readonly dark?: boolean;
}

const HEIGHT = 300;

/** Corners of the staircase that are drawn at most. */
const MOST_CORNERS = 1500;

/** How many pings were heard up to a time, with the fitted law and the band about it. */
export function pingsCountChart(input: PingsCountInput): ChartSpec {
  const colours = theme(input.dark);
  const time = recordingTime(input.seconds);
  const top = roundUp(
    Math.max(5, input.times.length * 1.04, ...(input.law?.line ?? []).map(({ high }) => high)),
  );
  const frame: Frame = { width: PLOT_WIDTH, height: HEIGHT, x: [0, time.end], y: [0, top] };
  const places: Places = {
    xField: time.field,
    yField: "pings",
    x: time.axis,
    y: upAxis("Pings so far", frame.y, evenTicks(0, top, 6)),
  };
  const heardStyle = styleAt(colours.measured, 0);
  const endY = pixelAt(frame, 0, input.times.length).y;
  const entries: readonly KeyEntry[] = [
    { name: "heard", details: ["a lower bound"], nearY: endY, style: heardStyle },
    ...(input.law === null ? [] : [lawEntry(input.law, endY + 40, colours)]),
  ];
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf(input),
    title: {
      text: input.title,
      subtitle:
        input.law === null
          ? "Up to 50 pings no law is fitted"
          : "The band holds 95 of 100 recordings of the fitted law, at each time",
    },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...(input.law === null ? [] : lawLayers(places, input.law, time, colours)),
      lineLayer(places, staircase(input, time), heardStyle, "order"),
      ...unloadingLayers(places, frame, { time, atSeconds: input.unloadedSeconds }, colours),
      ...keyLayers(places, frame, entries, colours),
    ],
    config: themeConfig(colours),
  };
}

function lawEntry(law: PingLaw, nearY: number, colours: Theme): KeyEntry {
  return {
    name: "1/(t + c)^p, fitted",
    details: [`p ${twoDigits(law.p)} (${twoDigits(law.pLow)} to ${twoDigits(law.pHigh)})`],
    nearY,
    style: styleAt(colours.measured, 1),
  };
}

function lawLayers(
  places: Places,
  { line }: PingLaw,
  time: RecordingTime,
  colours: Theme,
): readonly Layer[] {
  const at = (seconds: number) => drawn(time.shown(seconds));
  return [
    {
      data: {
        values: line.map(({ seconds, low, high }) => ({
          [time.field]: at(seconds),
          pings: drawn(low),
          high: drawn(high),
        })),
      },
      mark: { type: "area", color: styleAt(colours.measured, 1).stroke, opacity: 0.2 },
      encoding: { ...placing(places), y2: { field: "high" } },
    },
    lineLayer(
      places,
      line.map(({ seconds, count }, order) => ({
        [time.field]: at(seconds),
        pings: drawn(count),
        piece: 0,
        order,
      })),
      styleAt(colours.measured, 1),
      "order",
    ),
  ];
}

function staircase({ times, seconds }: PingsCountInput, time: RecordingTime): readonly Row[] {
  const stride = Math.max(1, Math.ceil((2 * times.length) / MOST_CORNERS));
  const corners: (readonly [number, number])[] = [[0, 0]];
  for (let i = 0; i < times.length; i += stride) {
    corners.push([times[i]!, corners.at(-1)?.[1] as number], [times[i]!, i + 1]);
  }
  corners.push([seconds, times.length]);
  return corners.map(([at, pings], order) => ({
    [time.field]: drawn(time.shown(at)),
    pings,
    piece: 0,
    order,
  }));
}

function descriptionOf({ title, times, seconds, law }: PingsCountInput): string {
  const fitted =
    law === null
      ? ""
      : `; a fitted law thins out with an exponent of ${twoDigits(law.p)}, between ${twoDigits(law.pLow)} and ${twoDigits(law.pHigh)}`;
  return `${title}: the count grows to ${times.length} in ${printDuration(seconds)}${fitted}.`;
}

function twoDigits(value: number): string {
  return value.toFixed(2).replace("-", "−");
}
