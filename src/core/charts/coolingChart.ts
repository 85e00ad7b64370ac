import type { Curve } from "../curve/Curve.ts";
import { printRate, printTemperature } from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { type ChartSpec, drawn, type Row, VEGA_LITE_SCHEMA } from "./chartSpec.ts";
import {
  type CoolingLimit,
  limitNames,
  limitSteps,
  overLimit,
  overLimitDots,
} from "./coolingLimits.ts";
import {
  type CoolingLine,
  type CoolingPoint,
  coolingRows,
  measuredCooling,
  plannedCooling,
} from "./coolingLine.ts";
import { rowPixels } from "./curveLines.ts";
import { type Frame, PLOT_WIDTH, pixelAt } from "./frame.ts";
import { type KeyEntry, keyLayers } from "./key.ts";
import { type Label, labelLayers, lineLayer } from "./layers.ts";
import { labelWidth } from "./placement.ts";
import { acrossAxis, type Places, upAxis } from "./places.ts";
import { coolingRate, evenTicks, roundUp, temperature } from "./quantities.ts";
import { styleAt, type Theme, theme, themeConfig } from "./theme.ts";

/** What a cooling chart shows. */
export interface CoolingChartInput {
  readonly title: string;
  readonly zones: readonly { readonly name: string; readonly curve: Curve }[];
  readonly planned: Curve | null;
  readonly limits: readonly CoolingLimit[];
  /** A limit that changes with temperature, hot end first; rates signed [°C/h]. */
  readonly limitCurve?: {
    readonly label: string;
    readonly points: readonly { readonly tempC: number; readonly rateCPerHour: number }[];
  } | null;
  readonly unit: TemperatureUnit;
  readonly dark?: boolean;
}

const HEIGHT = 260;

/** Most limits that fit one above the other: with more, their steps would be too low to read. */
const LIMITS_HIGH = 5;

/** Cooling below which everything is drawn; faster cooling above it may leave the chart at the top [°C]. */
const SHOWN_WHOLE_BELOW_C = 700;

/**
 * Cooling rate against temperature after the peak, hot at the left, as it happens. Limits are steps over
 * their bands; dots mark where a measured line is over a guide that the ware did not bear to be broken. Only the fast cooling
 * above red heat may leave the chart at the top, and then a label says so.
 */
export function coolingChart(input: CoolingChartInput): ChartSpec {
  const colours = theme(input.dark);
  const lines = linesOf(input, colours);
  const frame = frameOf(lines, input);
  const places: Places = {
    xField: temperature(input.unit).field,
    yField: coolingRate(input.unit).field,
    x: acrossAxis(`${temperature(input.unit).title}, falling`, frame.x, ticksOf(frame, input.unit)),
    y: upAxis(coolingRate(input.unit).title, frame.y, evenTicks(0, frame.y[1], 5)),
  };
  const withRows = lines.map((line) => ({ ...line, rows: coolingRows(line.points, input.unit) }));
  const pixels = withRows.flatMap((line) =>
    rowPixels(line.rows, places.xField, places.yField, frame),
  );
  const limitRows = limitCurveRows(input);
  const limitPixels = rowPixels(limitRows, places.xField, places.yField, frame);
  const tooFast = overLimit(judgedPoints(lines), input.limits);
  return {
    $schema: VEGA_LITE_SCHEMA,
    description: descriptionOf(input, lines, tooFast.length > 0),
    title: {
      text: input.title,
      subtitle: lines.some((line) => line.isMeasured)
        ? "After the peak; measured over 15 minutes at a time"
        : "After the peak",
    },
    background: colours.paper,
    padding: 18,
    width: frame.width,
    height: frame.height,
    layer: [
      ...limitSteps(places, input.limits, input.unit, colours),
      ...(limitRows.length > 0 ? [lineLayer(places, limitRows, colours.computed, "order")] : []),
      ...withRows.map((line) => lineLayer(places, line.rows, line.style, "elapsedHours")),
      ...overLimitDots(places, tooFast, input.unit, colours),
      ...limitNames(places, frame, input.limits, input.unit, [...pixels, ...limitPixels], colours),
      ...labelLayers(places, frame, notes(lines, frame, input), colours.quiet, colours.paper),
      ...keyLayers(
        places,
        frame,
        keyEntries(lines, frame, tooFast.length > 0, input, colours),
        colours,
      ),
    ],
    config: themeConfig(colours),
  };
}

function linesOf(input: CoolingChartInput, colours: Theme): readonly CoolingLine[] {
  const measured = input.zones.map(({ name, curve }, i) => ({
    name,
    points: measuredCooling(curve),
    style: styleAt(colours.measured, i),
    isMeasured: true,
  }));
  const planned = input.planned
    ? [
        {
          name: "planned",
          points: plannedCooling(input.planned),
          style: measured.length > 0 ? colours.planned : styleAt(colours.measured, 0),
          isMeasured: false,
        },
      ]
    : [];
  return [...measured, ...planned].filter((line) => line.points.length > 0);
}

function frameOf(lines: readonly CoolingLine[], input: CoolingChartInput): Frame {
  const { shown } = temperature(input.unit);
  const rate = coolingRate(input.unit).shown;
  const points = lines.flatMap((line) => line.points);
  const temps = [
    ...points.map((point) => point.tempC),
    ...input.limits.flatMap(({ band }) => [band.lowC, band.highC]),
  ];
  const limits = input.limits.map((limit) => limit.limitCPerHour);
  const low = points
    .filter((point) => point.tempC < SHOWN_WHOLE_BELOW_C)
    .map((point) => 0 - point.rateCPerHour);
  const all = points.map((point) => 0 - point.rateCPerHour);
  const highestLimit = Math.max(0, ...limits);
  const everything = Math.max(10, 1.1 * Math.max(0, ...all), 1.5 * highestLimit);
  const readable = Math.max(1.15 * Math.max(0, ...low), LIMITS_HIGH * highestLimit);
  const wanted = highestLimit > 0 ? Math.min(everything, readable) : everything;
  return {
    width: PLOT_WIDTH,
    height: HEIGHT,
    x: [
      drawn(shown(temps.length > 0 ? Math.max(...temps) : 1000)),
      drawn(shown(temps.length > 0 ? Math.min(...temps) : 0)),
    ],
    y: [0, roundUp(rate(-wanted))],
  };
}

/** The changing limit as rows of the chart. */
function limitCurveRows({ limitCurve, unit }: CoolingChartInput): readonly Row[] {
  const temp = temperature(unit);
  const rate = coolingRate(unit);
  return (limitCurve?.points ?? []).map((point, order) => ({
    order,
    [temp.field]: drawn(temp.shown(point.tempC)),
    [rate.field]: drawn(rate.shown(point.rateCPerHour)),
    piece: 0,
  }));
}

function ticksOf(frame: Frame, unit: TemperatureUnit): readonly number[] {
  const step = unit === "C" ? 100 : 200;
  const first = Math.floor(frame.x[0] / step);
  const last = Math.ceil(frame.x[1] / step);
  return Array.from({ length: Math.max(0, first - last + 1) }, (_, i) => (first - i) * step);
}

/** Says how fast it was where a line leaves the chart at the top, or that there is no line. */
function notes(
  lines: readonly CoolingLine[],
  frame: Frame,
  input: CoolingChartInput,
): readonly Label[] {
  const fastest = fastestPoint(lines);
  if (!fastest)
    return [
      {
        text: "no cooling after the peak yet",
        at: { x: frame.width / 2, y: frame.height / 2 },
        align: "center",
      },
    ];
  if (coolingRate(input.unit).shown(fastest.rateCPerHour) <= frame.y[1]) return [];
  const text = `↑ up to ${printRate(fastest.rateCPerHour, input.unit)} at ${printTemperature(fastest.tempC, input.unit)}`;
  const half = labelWidth(text) / 2;
  const { x } = pixelAt(frame, temperature(input.unit).shown(fastest.tempC), 0);
  return [
    {
      text,
      at: { x: Math.min(Math.max(x, half + 110), frame.width - half), y: -11 },
      align: "center",
    },
  ];
}

function fastestPoint(lines: readonly CoolingLine[]): CoolingPoint | null {
  const [first, ...others] = judgedPoints(lines);
  if (!first) return null;
  return others.reduce((a, b) => (b.rateCPerHour < a.rateCPerHour ? b : a), first);
}

/** What the limits are held against: what was measured, or the plan when nothing was. */
function judgedPoints(lines: readonly CoolingLine[]): readonly CoolingPoint[] {
  const measured = lines.filter((line) => line.isMeasured);
  return (measured.length > 0 ? measured : lines).flatMap((line) => line.points);
}

function keyEntries(
  lines: readonly CoolingLine[],
  frame: Frame,
  isTooFast: boolean,
  input: CoolingChartInput,
  colours: Theme,
): readonly KeyEntry[] {
  const { shown } = coolingRate(input.unit);
  const entries = lines.map(({ name, style, points }): KeyEntry => {
    const last = points.at(-1)!;
    return {
      name,
      details: [],
      style,
      nearY: pixelAt(frame, 0, Math.min(frame.y[1], Math.max(0, shown(last.rateCPerHour)))).y,
    };
  });
  const over: KeyEntry = { name: "over the guide", details: [], dot: colours.ember, nearY: 0 };
  return [...(isTooFast ? [over] : []), ...entries, ...limitCurveEntry(frame, input, colours)];
}

/** The changing limit in the key, near its lowest place; not when all of it is over the top. */
function limitCurveEntry(
  frame: Frame,
  { limitCurve, unit }: CoolingChartInput,
  colours: Theme,
): readonly KeyEntry[] {
  const lowest = Math.min(
    ...(limitCurve?.points ?? []).map(({ rateCPerHour }) => coolingRate(unit).shown(rateCPerHour)),
  );
  if (!limitCurve || lowest > frame.y[1]) return [];
  return [
    {
      name: limitCurve.label,
      details: [],
      style: colours.computed,
      nearY: pixelAt(frame, 0, lowest).y,
    },
  ];
}

function descriptionOf(
  input: CoolingChartInput,
  lines: readonly CoolingLine[],
  isTooFast: boolean,
): string {
  const limits = input.limits.map(
    ({ label, limitCPerHour }) => `${label} ${printRate(limitCPerHour, input.unit)}`,
  );
  const over = isTooFast ? "; dots mark where it was over a guide" : "";
  const names = lines.map((line) => line.name).join(", ");
  const steps = limits.length > 0 ? `, with steps for ${limits.join(" and ")}` : "";
  const changing = input.limitCurve ? `; dashed: ${input.limitCurve.label}` : "";
  return `${input.title}: cooling rate against falling temperature after the peak (${names})${steps}${changing}${over}.`;
}
