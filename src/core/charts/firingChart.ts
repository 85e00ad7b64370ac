import { type Curve, peakOf, temperatureAt } from "../curve/Curve.ts";
import type { Band } from "../curve/edgeTimes.ts";
import { printDuration, printElapsed, printTemperature } from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { bandLabels, bandStrips, stripBoxes } from "./bandStrips.ts";
import { type ChartSpec, drawn, type Layer, VEGA_LITE_SCHEMA } from "./chartSpec.ts";
import { curveRows, rowPixels } from "./curveLines.ts";
import { coneMarks, eventMarks, type FiringMark, stairHeight } from "./firingMarks.ts";
import { type Frame, PLOT_WIDTH, pixelAt } from "./frame.ts";
import { gapStrips } from "./gapStrips.ts";
import { type KeyEntry, keyLayers } from "./key.ts";
import { labelLayers, lineLayer } from "./layers.ts";
import { acrossAxis, type Places, upAxis } from "./places.ts";
import { clockText, hourTicks, temperature, temperatureTicks } from "./quantities.ts";
import { type LineStyle, styleAt, type Theme, theme, themeConfig } from "./theme.ts";

/** What a firing chart shows. */
export interface FiringChartInput {
  readonly title: string;
  /** Measured Curves, one for each thermocouple; none when there is only a plan. */
  readonly zones: readonly { readonly name: string; readonly curve: Curve }[];
  readonly planned: Curve | null;
  /** The plan as the user's own kiln would go through it; drawn only beside a plan. */
  readonly predicted?: Curve | null;
  readonly bands: readonly Band[];
  readonly conesDown: readonly {
    readonly cone: string;
    readonly atSeconds: number;
    readonly tempC: number;
  }[];
  readonly events: readonly { readonly label: string; readonly atSeconds: number }[];
  /** Time of day at 0 s [s after midnight]; null when nobody knows. */
  readonly startOfDaySeconds: number | null;
  readonly unit: TemperatureUnit;
  readonly dark?: boolean;
}

/** A line of the chart with its name, style and Curve. */
interface Line {
  readonly name: string;
  readonly curve: Curve;
  readonly style: LineStyle;
  readonly isMeasured: boolean;
}

const HEIGHT = 420;

/**
 * Temperature against elapsed time: measured lines solid, the plan dashed, broken at gaps in the log;
 * inversion strips, cones going down and events are named where they are.
 * @throws RangeError when there is neither a measured nor a planned Curve.
 */
export function firingChart(input: FiringChartInput): ChartSpec {
  const colours = theme(input.dark);
  const lines = linesOf(input, colours);
  const frame = frameOf(lines, input);
  const places = placesOf(frame, input);
  const { field } = temperature(input.unit);
  const drawnLines = lines.map((line) => ({ ...line, rows: curveRows(line.curve, input.unit) }));
  const linePixels = drawnLines.flatMap((line) =>
    rowPixels(line.rows, "elapsedHours", field, frame),
  );
  const cones = coneMarks(places, frame, coneTexts(input, frame), colours);
  const bands = bandLabels(frame, input.bands, input.unit, {
    lines: linePixels,
    boxes: cones.boxes,
  });
  const taken = [
    ...cones.boxes,
    ...bands.map((band) => band.box),
    ...stripBoxes(frame, input.bands, input.unit),
  ];
  const events = eventMarks(
    places,
    frame,
    eventTexts(input, lines, frame),
    { lines: linePixels, boxes: taken },
    colours,
  );
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf(input, lines),
    title: { text: input.title, subtitle: subtitleOf(input, lines) },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...bandStrips(places, frame, input.bands, input.unit, colours),
      ...gapStrips(
        places,
        frame,
        input.zones.map((zone) => zone.curve),
        colours,
      ),
      ...drawnLines.map((line) => lineLayer(places, line.rows, line.style, "elapsedHours")),
      ...labelLayers(
        places,
        frame,
        bands.map((band) => band.label),
        colours.quiet,
        null,
      ),
      ...cones.layers,
      ...events.layers,
      ...clockLayers(places, frame, input.startOfDaySeconds, colours),
      ...keyLayers(
        places,
        frame,
        lines.map((line) => keyEntry(line, frame, input.unit)),
        colours,
      ),
    ],
    config: themeConfig(colours),
  };
}

function linesOf(input: FiringChartInput, colours: Theme): readonly Line[] {
  const measured = input.zones.map((zone, i) => ({
    ...zone,
    style: styleAt(colours.measured, i),
    isMeasured: true,
  }));
  if (!input.planned) {
    if (measured.length === 0)
      throw new RangeError("firingChart: neither a measured nor a planned Curve");
    return measured;
  }
  const style = measured.length === 0 ? styleAt(colours.measured, 0) : colours.planned;
  const plan = { name: "planned", curve: input.planned, style, isMeasured: false };
  if (!input.predicted) return [...measured, plan];
  const predicted = {
    name: "as your kiln will go",
    curve: input.predicted,
    style: styleAt(colours.compared, 1),
    isMeasured: false,
  };
  return [...measured, { ...plan, name: "plan" }, predicted];
}

function frameOf(lines: readonly Line[], input: FiringChartInput): Frame {
  const { shown } = temperature(input.unit);
  const starts = lines.map(({ curve }) => curve.timesSeconds[0]!);
  const ends = lines.map(({ curve }) => curve.timesSeconds.at(-1)!);
  const highest = shown(Math.max(...lines.map(({ curve }) => peakOf(curve).tempC)));
  const lowest = shown(
    Math.min(0, ...lines.map(({ curve }) => curve.tempsC.reduce((a, b) => Math.min(a, b)))),
  );
  const firstCone = input.conesDown.slice(-5).map((cone) => shown(cone.tempC));
  const room = 1 - stairHeight(firstCone.length) / HEIGHT;
  const forNames = lowest + (Math.min(...firstCone, highest) - lowest) / room;
  const step = input.unit === "C" ? 50 : 100;
  const top = Math.ceil(Math.max(lowest + (highest - lowest) * 1.06, forNames) / step) * step;
  return {
    width: PLOT_WIDTH,
    height: HEIGHT,
    x: [drawn(Math.min(0, ...starts) / 3600), drawn(Math.max(...ends) / 3600)],
    y: [drawn(lowest), top],
  };
}

function placesOf(frame: Frame, input: FiringChartInput): Places {
  const { field, title } = temperature(input.unit);
  const ticks = hourTicks(frame.x[0], frame.x[1]);
  const x =
    input.startOfDaySeconds === null
      ? acrossAxis("Elapsed time (h)", frame.x, ticks)
      : acrossAxis("Elapsed time (h), time of day below", frame.x, ticks, 26);
  return {
    xField: "elapsedHours",
    yField: field,
    x,
    y: upAxis(title, frame.y, temperatureTicks(frame.y[0], frame.y[1], input.unit)),
  };
}

/** Time of day as a second line under the hours. */
function clockLayers(
  places: Places,
  frame: Frame,
  startOfDaySeconds: number | null,
  colours: Theme,
): readonly Layer[] {
  if (startOfDaySeconds === null) return [];
  const labels = hourTicks(frame.x[0], frame.x[1]).map((hours) => ({
    text: clockText(startOfDaySeconds + hours * 3600),
    at: { x: pixelAt(frame, hours, 0).x, y: frame.height + 31 },
    align: "center" as const,
  }));
  return labelLayers(places, frame, labels, colours.quiet, colours.paper);
}

function coneTexts(input: FiringChartInput, frame: Frame): readonly FiringMark[] {
  const { shown } = temperature(input.unit);
  return input.conesDown
    .toSorted((a, b) => a.atSeconds - b.atSeconds)
    .map(({ cone, atSeconds, tempC }) => ({
      text: `cone ${cone} down at ${momentText(input, atSeconds)}`,
      at: pixelAt(frame, atSeconds / 3600, shown(tempC)),
    }));
}

function eventTexts(
  input: FiringChartInput,
  lines: readonly Line[],
  frame: Frame,
): readonly FiringMark[] {
  const measured = lines.filter((line) => line.isMeasured);
  const judged = measured.length > 0 ? measured : lines;
  const { shown } = temperature(input.unit);
  return input.events
    .filter(({ atSeconds }) => atSeconds / 3600 >= frame.x[0] && atSeconds / 3600 <= frame.x[1])
    .map(({ label, atSeconds }) => {
      const tempsC = judged
        .map(({ curve }) => temperatureAt(curve, atSeconds))
        .filter((tempC) => tempC !== null);
      const y = tempsC[0] === undefined ? frame.y[0] : shown(tempsC[0]);
      return {
        text: `${label}, ${momentText(input, atSeconds)}`,
        at: pixelAt(frame, atSeconds / 3600, y),
      };
    });
}

function momentText(input: FiringChartInput, atSeconds: number): string {
  return input.startOfDaySeconds === null
    ? `${printElapsed(atSeconds)} h`
    : clockText(input.startOfDaySeconds + atSeconds);
}

function keyEntry(line: Line, frame: Frame, unit: TemperatureUnit): KeyEntry {
  const { shown } = temperature(unit);
  return {
    name: line.name,
    details: [`peak ${printTemperature(peakOf(line.curve).tempC, unit)}`],
    nearY: pixelAt(frame, 0, shown(line.curve.tempsC.at(-1)!)).y,
    style: line.style,
  };
}

function subtitleOf(input: FiringChartInput, lines: readonly Line[]): string {
  const { curve, name } = hottest(lines);
  const peak = peakOf(curve);
  const where = input.zones.length > 1 ? ` (${name})` : "";
  return `Peak ${printTemperature(peak.tempC, input.unit)}${where} after ${printDuration(peak.seconds)}`;
}

function descriptionOf(input: FiringChartInput, lines: readonly Line[]): string {
  const peak = peakOf(hottest(lines).curve);
  const measured = input.zones.map((zone) => zone.name).join(", ");
  const what = [
    ...(measured ? [`measured (${measured}) as solid lines`] : []),
    ...(input.planned ? [measured ? "planned as a dashed line" : "planned as a solid line"] : []),
    ...(input.predicted ? ["as your kiln will go as a line of longer dashes"] : []),
  ].join(", ");
  const also = [
    ...input.bands.map((band) => `${band.name} as a strip`),
    ...input.conesDown.map(
      (cone) => `cone ${cone.cone} down at ${momentText(input, cone.atSeconds)}`,
    ),
    ...input.events.map((event) => `${event.label} at ${momentText(input, event.atSeconds)}`),
  ];
  const list = also.length > 0 ? `; marked are ${also.join(", ")}` : "";
  return `${input.title}: temperature against elapsed time, ${what}, rising to ${printTemperature(peak.tempC, input.unit)} after ${printDuration(peak.seconds)}${list}.`;
}

/** The measured line with the highest peak, or the plan when nothing was measured. */
function hottest(lines: readonly Line[]): Line {
  const measured = lines.filter((line) => line.isMeasured);
  const candidates = measured.length > 0 ? measured : lines.slice(0, 1);
  return candidates.reduce((a, b) => (peakOf(b.curve).tempC > peakOf(a.curve).tempC ? b : a));
}
