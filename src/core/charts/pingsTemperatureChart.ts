import type { PingTemperatures } from "../pings/PingReview.ts";
import { printTemperature } from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../ware/inversions.ts";
import { type ChartSpec, drawn, type Layer, VEGA_LITE_SCHEMA } from "./chartSpec.ts";
import { type Frame, PLOT_WIDTH, pixelAt } from "./frame.ts";
import { keyLayers } from "./key.ts";
import { labelLayers } from "./layers.ts";
import { acrossAxis, type Places, placing, upAxis } from "./places.ts";
import { evenTicks, roundUp, temperature, temperatureTicks } from "./quantities.ts";
import { styleAt, type Theme, theme, themeConfig } from "./theme.ts";

/** What a chart of pings against temperature shows. */
export interface PingsTemperatureInput {
  readonly title: string;
  readonly temperatures: PingTemperatures;
  readonly unit: TemperatureUnit;
  readonly dark?: boolean;
}

const HEIGHT = 260;

/** Room over the highest bar for the names of the strips. */
const HEAD_ROOM = 1.25;

/** Rate of pings against temperature in steps of 50 °C, hot at the left as the kiln cools. */
export function pingsTemperatureChart(input: PingsTemperatureInput): ChartSpec {
  const colours = theme(input.dark);
  const { steps, unloading } = input.temperatures;
  const leftOut = unloading?.count ?? 0;
  const { shown, field, title } = temperature(input.unit);
  const frame = frameOf(input);
  const [hot, cold] = frame.x;
  const places: Places = {
    xField: field,
    yField: "perHour",
    x: acrossAxis(
      `${title}, cooling to the right`,
      frame.x,
      temperatureTicks(cold, hot, input.unit),
    ),
    y: upAxis("Pings per hour", frame.y, evenTicks(0, frame.y[1], 5)),
  };
  const bar = styleAt(colours.measured, 0).stroke;
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: `${input.title}: pings per hour against temperature from ${printTemperature(steps[0]?.highC ?? 0, input.unit)} to ${printTemperature(steps.at(-1)?.lowC ?? 0, input.unit)}; strips mark the quartz and the cristobalite inversion.`,
    title: {
      text: input.title,
      subtitle: `For the time that the recording listened in each step of temperature${leftOut > 0 ? `; ${leftOut} from after unloading left out` : ""}`,
    },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...strips(places, frame, input, colours),
      {
        data: {
          values: steps.map(({ lowC, highC, perHour }) => ({
            [field]: drawn(shown(highC)),
            low: drawn(shown(lowC)),
            perHour: drawn(perHour),
            foot: 0,
          })),
        },
        mark: { type: "rect", color: bar, opacity: 0.85, stroke: colours.paper, strokeWidth: 1.5 },
        encoding: { ...placing(places), x2: { field: "low" }, y2: { field: "foot" } },
      },
      ...stripNames(places, frame, input, colours),
      ...keyLayers(
        places,
        frame,
        [{ name: "pings per hour", details: ["while listened"], nearY: HEIGHT / 3, dot: bar }],
        colours,
      ),
    ],
    config: themeConfig(colours),
  };
}

function frameOf({ temperatures, unit }: PingsTemperatureInput): Frame {
  const { shown } = temperature(unit);
  const { steps } = temperatures;
  const most = Math.max(1, ...steps.map(({ perHour }) => perHour));
  return {
    width: PLOT_WIDTH,
    height: HEIGHT,
    x: [drawn(shown(steps[0]?.highC ?? 100)), drawn(shown(steps.at(-1)?.lowC ?? 0))],
    y: [0, roundUp(most * HEAD_ROOM)],
  };
}

/** The parts of the inversions that lie in the plot. */
function shownBands({ temperatures }: PingsTemperatureInput) {
  const hottest = temperatures.steps[0]?.highC ?? 100;
  const coldest = temperatures.steps.at(-1)?.lowC ?? 0;
  return [QUARTZ_BAND, CRISTOBALITE_BAND]
    .map(({ name, lowC, highC }) => ({
      name,
      lowC: Math.max(lowC, coldest),
      highC: Math.min(highC, hottest),
    }))
    .filter(({ lowC, highC }) => highC > lowC);
}

function strips(
  places: Places,
  frame: Frame,
  input: PingsTemperatureInput,
  colours: Theme,
): readonly Layer[] {
  const bands = shownBands(input);
  if (bands.length === 0) return [];
  const { shown } = temperature(input.unit);
  return [
    {
      data: {
        values: bands.map(({ name, lowC, highC }) => ({
          band: name,
          [places.xField]: drawn(shown(highC)),
          low: drawn(shown(lowC)),
          perHour: 0,
          top: frame.y[1],
        })),
      },
      mark: { type: "rect", color: colours.band, opacity: colours.bandOpacity },
      encoding: { ...placing(places), x2: { field: "low" }, y2: { field: "top" } },
    },
  ];
}

function stripNames(
  places: Places,
  frame: Frame,
  input: PingsTemperatureInput,
  colours: Theme,
): readonly Layer[] {
  const { shown } = temperature(input.unit);
  const labels = shownBands(input).map(({ name, lowC, highC }) => ({
    text: name.replace(" inversion", ""),
    at: { x: pixelAt(frame, shown((lowC + highC) / 2), 0).x, y: 12 },
    align: "center" as const,
  }));
  return labelLayers(places, frame, labels, colours.quiet, null);
}
