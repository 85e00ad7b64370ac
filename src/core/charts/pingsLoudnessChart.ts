import type { PlacedPing } from "../pings/PingReview.ts";
import { printDuration } from "../text/quantities.ts";
import { type ChartSpec, drawn, type Layer, VEGA_LITE_SCHEMA } from "./chartSpec.ts";
import { type Frame, PLOT_WIDTH } from "./frame.ts";
import { type KeyEntry, keyLayers } from "./key.ts";
import { recordingTime } from "./pingsTime.ts";
import { unloadingLayers } from "./pingsUnloading.ts";
import { type Places, placing, upAxis } from "./places.ts";
import { evenTicks, roundUp } from "./quantities.ts";
import { styleAt, type Theme, theme, themeConfig } from "./theme.ts";

/** What a chart of single pings shows. */
export interface PingsLoudnessInput {
  readonly title: string;
  readonly pings: readonly PlacedPing[];
  /** Which pings are of which kind, the deep before the light; one kind where they are not told apart. */
  readonly kinds: readonly (readonly number[])[];
  readonly seconds: number;
  /** When the ware was taken out [s of the recording]; null when that is not known. */
  readonly unloadedSeconds: number | null;
  readonly dark?: boolean;
}

const HEIGHT = 240;

/** More pings than this make one blot; the loudest are drawn. */
const MOST_DRAWN = 3000;

/** Pings against time, each as high as it stood out of the quiet. */
export function pingsLoudnessChart(input: PingsLoudnessInput): ChartSpec {
  const colours = theme(input.dark);
  const time = recordingTime(input.seconds);
  const deep = new Set(input.kinds.length > 1 ? input.kinds[0] : []);
  const drawnPings = input.pings
    .map((ping, i) => ({ ...ping, isDeep: deep.has(i) }))
    .toSorted((a, b) => b.overFloorDb - a.overFloorDb)
    .slice(0, MOST_DRAWN);
  const top = roundUp(Math.max(20, drawnPings[0]?.overFloorDb ?? 0));
  const frame: Frame = { width: PLOT_WIDTH, height: HEIGHT, x: [0, time.end], y: [0, top] };
  const places: Places = {
    xField: time.field,
    yField: "overFloorDb",
    x: time.axis,
    y: upAxis("Over the quiet level (dB)", frame.y, evenTicks(0, top, 5)),
  };
  const left = input.pings.length - drawnPings.length;
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: `${input.title}: ${drawnPings.length} pings in ${printDuration(input.seconds)} against time, with their loudness over the quiet level in decibels.`,
    title: {
      text: input.title,
      subtitle:
        left > 0
          ? `Each ping as loud as it stood out; the ${left} faintest are left out of the picture`
          : "Each ping as loud as it stood out of the quiet",
    },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...looksOf(input, colours).map(
        ({ isDeep, dot, dotShape }): Layer => ({
          data: {
            values: drawnPings
              .filter((ping) => ping.isDeep === isDeep)
              .map(({ atSeconds, overFloorDb }) => ({
                [time.field]: drawn(time.shown(atSeconds)),
                overFloorDb: drawn(overFloorDb),
              })),
          },
          mark: {
            type: "point",
            shape: dotShape,
            size: (drawnPings.length > 300 ? 14 : 26) * (isDeep ? 1.6 : 1),
            filled: true,
            opacity: 0.75,
            color: dot,
          },
          encoding: placing(places),
        }),
      ),
      ...unloadingLayers(places, frame, { time, atSeconds: input.unloadedSeconds }, colours),
      ...keyLayers(places, frame, looksOf(input, colours), colours),
    ],
    config: themeConfig(colours),
  };
}

interface Look extends KeyEntry {
  readonly isDeep: boolean;
  readonly dot: string;
  readonly dotShape: "circle" | "triangle-down";
}

/** How each kind of ping is drawn and named. */
function looksOf({ pings, kinds }: PingsLoudnessInput, colours: Theme): readonly Look[] {
  const [deep, light] = kinds;
  const all: Look = {
    name: "ping",
    details: [`${pings.length} heard`],
    nearY: HEIGHT / 3,
    isDeep: false,
    dot: styleAt(colours.measured, 0).stroke,
    dotShape: "circle",
  };
  if (deep === undefined || light === undefined) return [all];
  return [
    {
      ...all,
      name: "deep ping",
      details: [`${deep.length} heard`],
      isDeep: true,
      dot: styleAt(colours.measured, 1).stroke,
      dotShape: "triangle-down",
    },
    { ...all, name: "light ping", details: [`${light.length} heard`], nearY: HEIGHT / 2 },
  ];
}
