import type { Layer } from "./chartSpec.ts";
import type { Frame, Pixel } from "./frame.ts";
import { type Label, labelLayers, leaderLayer } from "./layers.ts";
import {
  type Box,
  freestBox,
  LINE_HEIGHT,
  labelWidth,
  type Obstacles,
  spread,
} from "./placement.ts";
import { type Places, placing, spot } from "./places.ts";
import type { Theme } from "./theme.ts";

/** Something that happened at a moment, at its place in the plot. */
export interface FiringMark {
  readonly text: string;
  readonly at: Pixel;
}

/** Words, lines to them, and the room that they take. */
export interface PlacedMarks {
  readonly layers: readonly Layer[];
  readonly boxes: readonly Box[];
}

/** Most cones that are named; further ones are marked only. */
const NAMED_CONES = 5;

/** Cones going down: a small cone on the line, its name in a stair beside the rise to the peak. */
export function coneMarks(
  places: Places,
  frame: Frame,
  marks: readonly FiringMark[],
  colours: Theme,
): PlacedMarks {
  const named = marks.slice(-NAMED_CONES);
  if (named.length === 0) return { layers: [], boxes: [] };
  const widest = Math.max(...named.map((mark) => labelWidth(mark.text)));
  const leftmost = Math.min(...named.map((mark) => mark.at.x));
  const rightmost = Math.max(...named.map((mark) => mark.at.x));
  const onLeft = leftmost - 16 - widest >= 0;
  const x = onLeft ? leftmost - 16 : rightmost + 16;
  const lowest = Math.max(...named.map((mark) => mark.at.y)) - 3;
  const ys = stair(named, lowest);
  const labels = named.map(
    (mark, i): Label => ({
      text: mark.text,
      at: { x, y: ys[i]! },
      align: onLeft ? "right" : "left",
    }),
  );
  const gap = onLeft ? 4 : -4;
  return {
    layers: [
      ...leaderLayer(
        places,
        frame,
        labels.map((label, i) => [{ x: x + gap, y: label.at.y }, named[i]!.at]),
        colours.quiet,
      ),
      symbolLayer(places, frame, marks, "triangle-up", 70, colours),
      ...labelLayers(places, frame, labels, colours.ink, colours.paper),
    ],
    boxes: labels.map((label) => boxOf(label, widest)),
  };
}

/** Room above the lowest of some cones that their names need [px]. */
export function stairHeight(count: number): number {
  return Math.min(count, NAMED_CONES) * LINE_HEIGHT + 6;
}

/** Events: a small diamond on the line (or at the foot when nothing was measured), its words where they cover nothing. */
export function eventMarks(
  places: Places,
  frame: Frame,
  marks: readonly FiringMark[],
  obstacles: Obstacles,
  colours: Theme,
): PlacedMarks {
  if (marks.length === 0) return { layers: [], boxes: [] };
  const boxes: Box[] = [];
  const labels: Label[] = [];
  for (const mark of marks) {
    const width = labelWidth(mark.text);
    const box = freestBox(
      around(mark.at, width),
      { ...obstacles, boxes: [...obstacles.boxes, ...boxes] },
      frame,
    );
    boxes.push(box);
    const before = box.right < mark.at.x;
    labels.push({
      text: mark.text,
      at: { x: before ? box.right : box.left, y: (box.top + box.bottom) / 2 },
      align: before ? "right" : "left",
    });
  }
  const leaders = marks.map((mark, i): readonly [Pixel, Pixel] => [
    nearestOn(boxes[i]!, mark.at),
    mark.at,
  ]);
  return {
    layers: [
      ...leaderLayer(places, frame, leaders, colours.quiet),
      symbolLayer(places, frame, marks, "diamond", 60, colours),
      ...labelLayers(places, frame, labels, colours.ink, colours.paper),
    ],
    boxes,
  };
}

function symbolLayer(
  places: Places,
  frame: Frame,
  marks: readonly FiringMark[],
  shape: string,
  size: number,
  colours: Theme,
): Layer {
  return {
    data: { values: marks.map((mark) => ({ ...spot(places, frame, mark.at), what: mark.text })) },
    mark: {
      type: "point",
      shape,
      size,
      filled: true,
      color: colours.ink,
      opacity: 1,
      stroke: colours.paper,
      strokeWidth: 1,
    },
    encoding: placing(places),
  };
}

/** Heights of names that rise with their marks, none lower than `lowest`. */
function stair(marks: readonly FiringMark[], lowest: number): readonly number[] {
  const order = marks.map((_, i) => lowest - i * 1e-6);
  const wanted = marks.map((mark, i) => Math.min(mark.at.y, order[i]!));
  return spread(wanted, LINE_HEIGHT, Number.NEGATIVE_INFINITY, lowest);
}

/** Places for words around a point: right, left, then higher and lower, farther and farther. */
function around(at: Pixel, width: number): readonly Box[] {
  return [0, -20, 20, -40, 40, -60, 60, -85, 85, -115, 115].flatMap((down) =>
    [14, 30, 60].flatMap((away) => [
      boxAt(at.x + away, at.y + down, width),
      boxAt(at.x - away - width, at.y + down, width),
    ]),
  );
}

function boxAt(left: number, middle: number, width: number): Box {
  return {
    left,
    right: left + width,
    top: middle - LINE_HEIGHT / 2,
    bottom: middle + LINE_HEIGHT / 2,
  };
}

function boxOf(label: Label, width: number): Box {
  return boxAt(label.align === "right" ? label.at.x - width : label.at.x, label.at.y, width);
}

function nearestOn(box: Box, at: Pixel): Pixel {
  return {
    x: at.x < box.left ? box.left - 3 : box.right + 3,
    y: (box.top + box.bottom) / 2,
  };
}
