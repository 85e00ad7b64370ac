import type { TopLevelSpec } from "vega-lite";
import { printElapsed } from "../../core/text/quantities.ts";
import { type ChartRead, chartRead, type Row } from "../drawing/ChartRead.ts";
import { type ChartCurve, chartCurves } from "./chartCurves.ts";

/** A place on a curve of a chart, by the places of the curve and of its row. */
interface ReadingPlace {
  readonly curve: number;
  readonly row: number;
}

/** A reading of a chart: its words, and where it is in the plot [px of the plot]. */
export interface ChartReading extends ReadingPlace {
  readonly words: string;
  readonly x: number;
  readonly y: number;
}

/** Way of an arrow key, and of a large step, as a share of the width of the plot. */
const SMALL_STEP = 1 / 200;
const LARGE_STEP = 1 / 20;

/** Reads a chart along its curves. */
export interface ChartReader {
  /** What a key reads next; null for a key that reads nothing. */
  readonly byKey: (
    now: ReadingPlace | null,
    key: { readonly key: string; readonly shiftKey: boolean },
    from: number | null,
  ) => ChartReading | null;
  /** The curve nearest to a place in the plot. */
  readonly near: (x: number, y: number) => ChartReading | null;
}

/** What a key does from a place; with Shift in a large step. */
type Act = (now: ReadingPlace, isLarge: boolean) => ChartReading | null;

const START: ReadingPlace = { curve: 0, row: 0 };

/** A reader of a chart; one without curves reads nothing. */
export function chartReader(spec: TopLevelSpec): ChartReader {
  const chart = chartRead(spec);
  const curves = chartCurves(spec);
  const plot = plotOf(chart);
  const at = (curve: number, row: number): ChartReading | null => {
    const line = curves[curve];
    const point = line?.rows[row];
    if (line === undefined || point === undefined) return null;
    return { curve, row, words: wordsOf(line, point, chart), ...plot(line, point) };
  };
  const nearest = (curve: number, x: number) => {
    const line = curves[curve];
    if (line === undefined) return null;
    const far = line.rows.map((row) => Math.abs(plot(line, row).x - x));
    return at(curve, far.indexOf(Math.min(...far)));
  };
  const walked = (now: ReadingPlace, step: number) => {
    const line = curves[now.curve]!;
    const from = plot(line, line.rows[now.row]!).x;
    const way = Math.sign(step);
    let row = now.row;
    while (line.rows[row + way] !== undefined) {
      row += way;
      const gone = Math.abs(plot(line, line.rows[row]!).x - from);
      if (gone >= Math.abs(step) * chart.width) break;
    }
    return at(now.curve, row);
  };
  const crossed = (now: ReadingPlace, way: number) =>
    nearest((now.curve + way + curves.length) % curves.length, at(now.curve, now.row)?.x ?? 0);
  const keyed: Readonly<Record<string, Act>> = {
    ArrowRight: (now, isLarge) => walked(now, isLarge ? LARGE_STEP : SMALL_STEP),
    ArrowLeft: (now, isLarge) => walked(now, isLarge ? -LARGE_STEP : -SMALL_STEP),
    PageDown: (now) => walked(now, LARGE_STEP),
    PageUp: (now) => walked(now, -LARGE_STEP),
    ArrowDown: (now) => crossed(now, 1),
    ArrowUp: (now) => crossed(now, -1),
    Home: ({ curve }) => at(curve, 0),
    End: ({ curve }) => at(curve, (curves[curve]?.rows.length ?? 1) - 1),
  };
  const byKey: ChartReader["byKey"] = (now, { key, shiftKey }, from) => {
    const act = keyed[key];
    if (act === undefined || curves.length === 0) return null;
    if (now !== null || key === "End") return act(now ?? START, shiftKey);
    return from === null ? at(0, 0) : nearest(0, from);
  };
  const near = (x: number, y: number) => {
    const all = curves.flatMap((_, curve) => nearest(curve, x) ?? []);
    return all.toSorted((a, b) => Math.hypot(a.x - x, a.y - y) - Math.hypot(b.x - x, b.y - y))[0];
  };
  return { byKey, near: (x, y) => near(x, y) ?? null };
}

function plotOf({ layer, width, height }: ChartRead) {
  const [first] = layer;
  const [left, right] = first?.encoding.x.scale.domain ?? [0, 1];
  const [low, high] = first?.encoding.y.scale.domain ?? [0, 1];
  return ({ x, y }: ChartCurve, row: Row) => ({
    x: ((Number(row[x]) - left) / (right - left)) * width,
    y: (1 - (Number(row[y]) - low) / (high - low)) * height,
  });
}

function wordsOf({ name, x, y }: ChartCurve, row: Row, { layer }: ChartRead): string {
  const title = layer[0]?.encoding.y.title ?? y;
  return `${name}, ${withUnit(x, Number(row[x]))}: ${withUnit(y, Number(row[y]), title)}`;
}

const UNITS: Readonly<Record<string, string>> = {
  tempC: "°C",
  tempF: "°F",
  coolingCPerHour: "°C/h down",
  coolingFPerHour: "°F/h down",
  rateCPerHour: "°C/h",
  rateFPerHour: "°F/h",
};

/** A value with its unit, or after the title of its axis where it has none. */
function withUnit(field: string, value: number, title = ""): string {
  if (field === "elapsedHours") return `${printElapsed(value * 3600)} h`;
  const unit = UNITS[field];
  if (unit !== undefined) return `${Math.round(value)} ${unit}`.replace("-", "−");
  return `${title.toLowerCase()} ${Number(value.toFixed(2))}`.trim().replace("-", "−");
}
