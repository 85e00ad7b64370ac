import { type Curve, peakOf, sliced } from "../curve/Curve.ts";
import { localSlopes } from "../curve/slopes.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { drawn, type Row } from "./chartSpec.ts";
import { coolingRate, temperature } from "./quantities.ts";
import type { LineStyle } from "./theme.ts";

/** Width of the window over which a measured slope is taken [s]. */
const SLOPE_WINDOW_SECONDS = 15 * 60;

/** Stretch of time that one drawn point stands for [s]; shorter ones would draw the noise of the readings. */
const STRETCH_SECONDS = 5 * 60;

/** Longest planned piece that is taken for a part of a bent line [s]. */
const SHORT_PIECE_SECONDS = 20 * 60;

/** The rate at one moment of the cooling; rates signed [°C/h]. */
export interface CoolingPoint {
  readonly seconds: number;
  readonly tempC: number;
  readonly rateCPerHour: number;
  /** Changes wherever the line has to break. */
  readonly piece: number;
}

/** A line of the cooling chart. */
export interface CoolingLine {
  readonly name: string;
  readonly points: readonly CoolingPoint[];
  readonly style: LineStyle;
  readonly isMeasured: boolean;
}

/** Local slope of a measured Curve at every moment after its peak where it was measured. */
export function measuredCooling(curve: Curve): readonly CoolingPoint[] {
  const slopes = localSlopes(curve, SLOPE_WINDOW_SECONDS);
  const points: CoolingPoint[] = [];
  let piece = 0;
  for (let i = peakOf(curve).index; i < slopes.length; i++) {
    const rateCPerHour = slopes[i]!;
    if (Number.isNaN(rateCPerHour)) piece += 1;
    else
      points.push({
        seconds: curve.timesSeconds[i]!,
        tempC: curve.tempsC[i]!,
        rateCPerHour,
        piece,
      });
  }
  return fastestOfEach(points);
}

/**
 * Rate of a planned Curve after its peak, exact: a level step for each long straight piece. Short pieces
 * stand for a bent line, such as a kiln that cools by itself, and give their middle only.
 */
export function plannedCooling(curve: Curve): readonly CoolingPoint[] {
  const cooling = sliced(curve, peakOf(curve).seconds, curve.timesSeconds.at(-1)!);
  if (!cooling) return [];
  const { timesSeconds, tempsC } = cooling;
  return Array.from(timesSeconds.subarray(1), (to, i) => {
    const from = timesSeconds[i]!;
    const fromC = tempsC[i]!;
    const fallC = tempsC[i + 1]! - fromC;
    return sharesOf(to - from).map((share) => ({
      seconds: from + (to - from) * share,
      tempC: fromC + fallC * share,
      rateCPerHour: (3600 * fallC) / (to - from),
      piece: 0,
    }));
  }).flat();
}

/** Where on a straight piece of so many seconds there are points, 0–1. */
function sharesOf(seconds: number): readonly number[] {
  if (seconds <= SHORT_PIECE_SECONDS) return [0.5];
  const steps = Math.ceil(seconds / STRETCH_SECONDS);
  return Array.from({ length: steps + 1 }, (_, step) => step / steps);
}

/** Points as rows of a chart, in the reader's unit. */
export function coolingRows(
  points: readonly CoolingPoint[],
  unit: TemperatureUnit,
): readonly Row[] {
  const temp = temperature(unit);
  const rate = coolingRate(unit);
  return points.map((point) => ({
    elapsedHours: drawn(point.seconds / 3600),
    [temp.field]: drawn(temp.shown(point.tempC)),
    [rate.field]: drawn(rate.shown(point.rateCPerHour)),
    piece: point.piece,
  }));
}

/** The fastest point of each stretch of time, so that no fast passage is lost; and every end of a piece. */
function fastestOfEach(points: readonly CoolingPoint[]): readonly CoolingPoint[] {
  const fastest = new Map<number, CoolingPoint>();
  for (const point of points) {
    const stretch = Math.floor(point.seconds / STRETCH_SECONDS);
    const best = fastest.get(stretch);
    if (!best || point.rateCPerHour < best.rateCPerHour) fastest.set(stretch, point);
  }
  const kept = new Set(fastest.values());
  return points.filter(
    (point, i) =>
      kept.has(point) ||
      point.piece !== points[i - 1]?.piece ||
      point.piece !== points[i + 1]?.piece,
  );
}
