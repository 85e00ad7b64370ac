import type { Layer } from "./chartSpec.ts";
import type { Frame } from "./frame.ts";
import { type Label, labelLayers, stroke } from "./layers.ts";
import { LABEL_SIZE, LINE_HEIGHT, spread } from "./placement.ts";
import { type Places, placing, spot } from "./places.ts";
import { wrappedToWidth } from "./textWidth.ts";
import type { LineStyle, Theme } from "./theme.ts";

/** Room for names at the right of the plot [px]. */
const KEY_WIDTH = 130;

/** A line (or dots) of a chart, for the key at its right. */
export interface KeyEntry {
  readonly name: string;
  /** Further short lines under the name. */
  readonly details: readonly string[];
  /** Where the line ends [px from the top]; entries stay near it. */
  readonly nearY: number;
  readonly style?: LineStyle;
  /** Colour of a dot that is explained instead of a line. */
  readonly dot?: string;
  /** Of that dot; a circle when left out. */
  readonly dotShape?: "circle" | "triangle-down";
}

/** Names of the lines at the right of the plot, each with a piece of its line, in order of where they end. */
export function keyLayers(
  places: Places,
  frame: Frame,
  entries: readonly KeyEntry[],
  colours: Theme,
): readonly Layer[] {
  const blocks = fitting(entries, frame.height);
  const apart = tallestOf(blocks) * LINE_HEIGHT + 6;
  const tops = spread(
    entries.map((entry) => entry.nearY - LINE_HEIGHT / 2),
    apart,
    LINE_HEIGHT / 2,
    frame.height - apart + LINE_HEIGHT / 2,
  );
  const first = blocks.flatMap(({ name }, i) => column(frame, name, tops[i]!));
  const rest = blocks.flatMap(({ name, details }, i) =>
    column(frame, details, tops[i]! + name.length * LINE_HEIGHT),
  );
  return [
    ...entries.flatMap((entry, i) => sample(places, frame, entry, tops[i]!)),
    ...labelLayers(places, frame, first, colours.ink, colours.paper),
    ...labelLayers(places, frame, rest, colours.quiet, colours.paper),
  ];
}

interface Block {
  readonly name: readonly string[];
  readonly details: readonly string[];
}

/** The entries as lines of words: with less of them when there are too many for the height. */
function fitting(entries: readonly KeyEntry[], height: number): readonly Block[] {
  const blocksOf = (lines: number, isFull: boolean) =>
    entries.map((entry) => ({
      name: wrappedToWidth(entry.name, LABEL_SIZE, KEY_WIDTH, lines),
      details: isFull ? entry.details : [],
    }));
  const fits = (blocks: readonly Block[]) =>
    blocks.length * (tallestOf(blocks) * LINE_HEIGHT + 6) <= height;
  return (
    [blocksOf(3, true), blocksOf(2, true), blocksOf(2, false)].find(fits) ?? blocksOf(1, false)
  );
}

function tallestOf(blocks: readonly Block[]): number {
  return Math.max(1, ...blocks.map(({ name, details }) => name.length + details.length));
}

function column(frame: Frame, lines: readonly string[], top: number): readonly Label[] {
  return lines.map((text, n) => ({
    text,
    at: { x: frame.width + 46, y: top + n * LINE_HEIGHT },
    align: "left",
  }));
}

function sample(
  places: Places,
  frame: Frame,
  { style, dot, dotShape = "circle" }: KeyEntry,
  y: number,
): readonly Layer[] {
  const encoding = placing(places);
  const at = (x: number) => spot(places, frame, { x: frame.width + x, y });
  return [
    ...(style
      ? [
          {
            data: { values: [at(14), at(38)] },
            mark: { type: "line" as const, ...stroke(style) },
            encoding,
          },
        ]
      : []),
    ...(dot
      ? [
          {
            data: { values: [at(26)] },
            mark: {
              type: "point" as const,
              shape: dotShape,
              size: 34,
              filled: true,
              opacity: 1,
              color: dot,
            },
            encoding,
          },
        ]
      : []),
  ];
}
