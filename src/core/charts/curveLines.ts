import type { Curve } from "../curve/Curve.ts";
import { thinned } from "../curve/slopes.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { drawn, type Row } from "./chartSpec.ts";
import { type Frame, type Pixel, pixelAt } from "./frame.ts";
import { densely } from "./placement.ts";
import { temperature } from "./quantities.ts";

/** Points that a line of a chart keeps at most. */
const POINTS = 1000;

/** A Curve as rows of a chart: hours, temperature in the reader's unit, and a `piece` that changes at every gap. */
export function curveRows(curve: Curve, unit: TemperatureUnit): readonly Row[] {
  const { timesSeconds, tempsC, gaps } = thinned(curve, POINTS);
  const { field, shown } = temperature(unit);
  const gapEnds = new Set(gaps.map((gap) => gap.toSeconds));
  let piece = 0;
  return Array.from(timesSeconds, (seconds, i) => {
    if (gapEnds.has(seconds)) piece += 1;
    return {
      elapsedHours: drawn(seconds / 3600),
      [field]: drawn(shown(tempsC[i]!)),
      piece,
    };
  });
}

/** Rows as dense points of the plot, for placing words beside them; pieces stay apart. */
export function rowPixels(
  rows: readonly Row[],
  xField: string,
  yField: string,
  frame: Frame,
): readonly Pixel[] {
  const pieces = new Map<Row[string] | undefined, Pixel[]>();
  for (const row of rows) {
    const piece = pieces.get(row.piece) ?? [];
    piece.push(pixelAt(frame, Number(row[xField]), Number(row[yField])));
    pieces.set(row.piece, piece);
  }
  return [...pieces.values()].flatMap(densely);
}
