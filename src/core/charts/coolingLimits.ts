import type { Band } from "../curve/edgeTimes.ts";
import { printRate } from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { drawn, type Layer } from "./chartSpec.ts";
import { type CoolingPoint, coolingRows } from "./coolingLine.ts";
import { type Frame, type Pixel, pixelAt } from "./frame.ts";
import { type Label, labelLayers, leaderLayer } from "./layers.ts";
import { type Box, densely, freestBox, LINE_HEIGHT, labelWidth } from "./placement.ts";
import { type Places, placing } from "./places.ts";
import { coolingRate, temperature } from "./quantities.ts";
import type { Theme } from "./theme.ts";

/** A guide for cooling in a band, or in the part of it that matters. */
export interface CoolingLimit {
  readonly band: Band;
  /** The ware did not bear what was done: then the places over the guide are marked. */
  readonly isBroken: boolean;
  /** Positive [°C/h]. */
  readonly limitCPerHour: number;
  readonly label: string;
}

/** Limits as steps: the allowed room of each band tinted, its upper edge drawn. */
export function limitSteps(
  places: Places,
  limits: readonly CoolingLimit[],
  unit: TemperatureUnit,
  colours: Theme,
): readonly Layer[] {
  if (limits.length === 0) return [];
  const temp = temperature(unit);
  const rate = coolingRate(unit);
  const rows = limits.map(({ band, limitCPerHour }) => ({
    band: band.name,
    [temp.field]: drawn(temp.shown(band.highC)),
    low: drawn(temp.shown(band.lowC)),
    [rate.field]: drawn(rate.shown(-limitCPerHour)),
    foot: 0,
  }));
  return [
    {
      data: { values: rows },
      mark: { type: "rect", color: colours.band, opacity: colours.bandOpacity },
      encoding: { ...placing(places), x2: { field: "low" }, y2: { field: "foot" } },
    },
    {
      data: { values: rows },
      mark: { type: "rule", color: colours.ember, strokeWidth: 2.4 },
      encoding: { ...placing(places), x2: { field: "low" } },
    },
  ];
}

/** Names of the limits with their values, near their steps where no line passes. */
export function limitNames(
  places: Places,
  frame: Frame,
  limits: readonly CoolingLimit[],
  unit: TemperatureUnit,
  lines: readonly Pixel[],
  colours: Theme,
): readonly Layer[] {
  const boxes: Box[] = [];
  const labels: Label[] = [];
  const leaders: (readonly [Pixel, Pixel])[] = [];
  for (const limit of limits) {
    const text = `${limit.label}: ${printRate(limit.limitCPerHour, unit)}`;
    const step = middleOf(limit, frame, unit);
    const others = limits.filter((each) => each !== limit);
    const covering = [...lines, ...others.flatMap((each) => stepPixels(each, frame, unit))];
    const box = freestBox(above(step, labelWidth(text)), { lines: covering, boxes }, frame);
    boxes.push(box);
    labels.push({ text, at: { x: box.left, y: (box.top + box.bottom) / 2 }, align: "left" });
    const x = Math.min(Math.max(step.x, box.left + 12), box.right - 16);
    const isAside = step.x < box.left || step.x > box.right;
    if (isAside || step.y - box.bottom > LINE_HEIGHT) leaders.push([{ x, y: box.bottom }, step]);
  }
  return [
    ...leaderLayer(places, frame, leaders, colours.quiet),
    ...labelLayers(places, frame, labels, colours.ink, colours.paper),
  ];
}

/** Points that are faster than the guide of the band they are in, where the ware did not bear it. */
export function overLimit(
  points: readonly CoolingPoint[],
  limits: readonly CoolingLimit[],
): readonly CoolingPoint[] {
  return points.filter(({ tempC, rateCPerHour }) =>
    limits.some(
      ({ band, limitCPerHour, isBroken }) =>
        isBroken && tempC >= band.lowC && tempC <= band.highC && 0 - rateCPerHour > limitCPerHour,
    ),
  );
}

/** Points over a limit, as dots on their line. */
export function overLimitDots(
  places: Places,
  points: readonly CoolingPoint[],
  unit: TemperatureUnit,
  colours: Theme,
): readonly Layer[] {
  if (points.length === 0) return [];
  return [
    {
      data: { values: [...coolingRows(points, unit)] },
      mark: {
        type: "point",
        shape: "circle",
        size: 26,
        filled: true,
        opacity: 1,
        clip: true,
        color: colours.ember,
      },
      encoding: placing(places),
    },
  ];
}

function middleOf(
  { band, limitCPerHour }: CoolingLimit,
  frame: Frame,
  unit: TemperatureUnit,
): Pixel {
  return pixelAt(
    frame,
    temperature(unit).shown((band.lowC + band.highC) / 2),
    coolingRate(unit).shown(-limitCPerHour),
  );
}

/** The edge of a step as dense points. */
function stepPixels(limit: CoolingLimit, frame: Frame, unit: TemperatureUnit): readonly Pixel[] {
  const { y } = middleOf(limit, frame, unit);
  const xOf = (tempC: number) => pixelAt(frame, temperature(unit).shown(tempC), 0).x;
  return densely([
    { x: xOf(limit.band.highC), y },
    { x: xOf(limit.band.lowC), y },
  ]);
}

/** Places for words over a step: on it first, then higher and to the sides. */
function above(step: Pixel, width: number): readonly Box[] {
  return [2, 22, 40, 60, 80, 105, 130, 155, 180, 205].flatMap((up) =>
    [-width / 2, -20, 20 - width, 30, -width - 30].map((aside) => ({
      left: step.x + aside,
      right: step.x + aside + width,
      top: step.y - up - LINE_HEIGHT,
      bottom: step.y - up,
    })),
  );
}
