import type { SpacingFit } from "../trials/FiringStudy.ts";
import type { Tile } from "../trials/Tile.ts";
import type { Layer } from "./chartSpec.ts";
import type { Frame } from "./frame.ts";
import { labelLayers, stroke } from "./layers.ts";
import { LABEL_SIZE, LINE_HEIGHT } from "./placement.ts";
import { type Places, placing, spot } from "./places.ts";
import { expectedStyle } from "./spacingExpected.ts";
import { guideMiddle } from "./spacingGuides.ts";
import { arrowHead, pointMark, tileMarks } from "./spacingTiles.ts";
import { wrappedToWidth } from "./textWidth.ts";
import { type LineStyle, styleAt, type Theme } from "./theme.ts";

/** Room for words at the right of the plot [px]. */
const KEY_WIDTH = 130;

/** What the points, arrows and lines mean, at the right of the plot. */
export function spacingKey(given: {
  readonly places: Places;
  readonly frame: Frame;
  readonly tiles: readonly Tile[];
  readonly fit: SpacingFit | null;
  readonly colours: Theme;
  readonly hasExpected: boolean;
}): readonly Layer[] {
  const { places, frame, tiles, fit, colours, hasExpected } = given;
  const entries: readonly Entry[] = [
    ...tileMarks(tiles, colours).map((mark) => ({
      words: [
        ...wrappedToWidth(mark.clay, LABEL_SIZE, KEY_WIDTH, 2),
        mark.filled ? "both sides" : "one side",
      ],
      mark: pointMark(mark, colours.paper),
    })),
    ...(tiles.some(({ spacing }) => spacing.kind === "uncracked")
      ? [
          {
            words: ["uncracked", "wider than this"],
            mark: arrowHead(colours.ink, colours.paper),
          },
        ]
      : []),
    ...(fit === null
      ? []
      : [{ words: ["fitted", "band 95 %"], line: styleAt(colours.measured, 1) }]),
    ...(guideMiddle(given) === null
      ? []
      : [{ words: ["powers ½ and 1", "to compare with"], line: colours.planned }]),
    ...(hasExpected
      ? [{ words: ["expected by files", "on each clay"], line: expectedStyle(colours.ink) }]
      : []),
  ];
  const tops = entries.map((_, at) =>
    entries
      .slice(0, at)
      .reduce((sum, { words }) => sum + words.length * LINE_HEIGHT + 8, LINE_HEIGHT / 2),
  );
  return [
    ...entries.flatMap((entry, at) => sample(places, frame, { entry, y: tops[at]! })),
    ...entries.flatMap(({ words }, at) =>
      words.flatMap((word, line) =>
        labelLayers(
          places,
          frame,
          [
            {
              text: word,
              at: { x: frame.width + 46, y: tops[at]! + line * LINE_HEIGHT },
              align: "left",
            },
          ],
          line < words.length - 1 ? colours.ink : colours.quiet,
          null,
        ),
      ),
    ),
  ];
}

interface Entry {
  readonly words: readonly string[];
  readonly mark?: ReturnType<typeof pointMark>;
  readonly line?: LineStyle;
}

function sample(
  places: Places,
  frame: Frame,
  { entry, y }: { readonly entry: Entry; readonly y: number },
): readonly Layer[] {
  const at = (x: number) => spot(places, frame, { x: frame.width + x, y });
  const encoding = placing(places);
  if (entry.line)
    return [
      {
        data: { values: [at(14), at(38)] },
        mark: { type: "line", ...stroke(entry.line) },
        encoding,
      },
    ];
  return entry.mark ? [{ data: { values: [at(26)] }, mark: entry.mark, encoding }] : [];
}
