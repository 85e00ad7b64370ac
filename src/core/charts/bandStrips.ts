import type { Band } from "../curve/edgeTimes.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { drawn, type Layer } from "./chartSpec.ts";
import { type Frame, pixelAt } from "./frame.ts";
import type { Label } from "./layers.ts";
import {
  type Box,
  freestBox,
  isFree,
  LINE_HEIGHT,
  labelWidth,
  type Obstacles,
} from "./placement.ts";
import { type Places, placing } from "./places.ts";
import { bandRange, temperature } from "./quantities.ts";
import type { Theme } from "./theme.ts";

/** Bands as faint strips across a chart of temperature against time. */
export function bandStrips(
  places: Places,
  frame: Frame,
  bands: readonly Band[],
  unit: TemperatureUnit,
  colours: Theme,
): readonly Layer[] {
  if (bands.length === 0) return [];
  const { shown, field } = temperature(unit);
  return [
    {
      data: {
        values: bands.map((band) => ({
          band: band.name,
          elapsedHours: frame.x[0],
          endHours: frame.x[1],
          [field]: drawn(shown(band.lowC)),
          high: drawn(shown(band.highC)),
        })),
      },
      mark: { type: "rect", color: colours.band, opacity: colours.bandOpacity },
      encoding: { ...placing(places), x2: { field: "endHours" }, y2: { field: "high" } },
    },
  ];
}

/** The room that the strips take, for words that had better stand beside them. */
export function stripBoxes(
  frame: Frame,
  bands: readonly Band[],
  unit: TemperatureUnit,
): readonly Box[] {
  const { shown } = temperature(unit);
  return bands.map((band) => ({
    left: 0,
    right: frame.width,
    top: pixelAt(frame, 0, shown(band.highC)).y,
    bottom: pixelAt(frame, 0, shown(band.lowC)).y,
  }));
}

/**
 * Names of the bands beside their strips (or in a tall one), each where no line passes,
 * near the middle; without their edges where there is no room for them.
 */
export function bandLabels(
  frame: Frame,
  bands: readonly Band[],
  unit: TemperatureUnit,
  obstacles: Obstacles,
): readonly { readonly label: Label; readonly box: Box }[] {
  return bands.map((band) => {
    const [whole, short] = [`${band.name}, ${bandRange(band, unit)}`, band.name].map((text) => ({
      text,
      box: freestBox(besides(band, labelWidth(text), frame, unit), obstacles, frame),
    })) as [PlacedText, PlacedText];
    const { text, box } = isFree(whole.box, obstacles, frame) ? whole : short;
    const at = { x: box.left, y: (box.top + box.bottom) / 2 };
    return { box, label: { text, at, align: "left" as const } };
  });
}

interface PlacedText {
  readonly text: string;
  readonly box: Box;
}

/** Places for words over and under a strip, then in it when it is tall enough. */
function besides(band: Band, width: number, frame: Frame, unit: TemperatureUnit): readonly Box[] {
  const { shown } = temperature(unit);
  const upper = pixelAt(frame, 0, shown(band.highC)).y;
  const lower = pixelAt(frame, 0, shown(band.lowC)).y;
  const lefts = fromTheMiddle(frame.width - width);
  const over = (bottoms: readonly number[]) =>
    lefts.flatMap((left) =>
      bottoms.map((bottom) => ({ left, right: left + width, top: bottom - LINE_HEIGHT, bottom })),
    );
  const isTall = lower - upper > LINE_HEIGHT + 4;
  return [
    ...over([upper, lower + LINE_HEIGHT]),
    ...(isTall ? over([(upper + lower + LINE_HEIGHT) / 2]) : []),
  ];
}

/** Places from the middle of 0…room outward, every 15 px. */
function fromTheMiddle(room: number): readonly number[] {
  const middle = room / 2;
  return Array.from(
    { length: Math.max(1, Math.floor(room / 15)) },
    (_, i) => middle + (i % 2 === 0 ? 1 : -1) * Math.ceil(i / 2) * 15,
  );
}
