import type { Tile } from "../trials/Tile.ts";
import { drawn, type Layer, type Row } from "./chartSpec.ts";
import { type Places, placing } from "./places.ts";
import { styleAt, type Theme } from "./theme.ts";

/** Shapes of the clays, in the order in which they are met. */
const CLAY_SHAPES = ["circle", "square", "triangle-up", "diamond", "triangle-down", "cross"];

/** How far an arrow of an uncracked tile reaches [decimal logarithm]. */
const ARROW = 0.09;

/** How the tiles of one clay and one kind of glazing are drawn. */
export interface TileMark {
  readonly clay: string;
  readonly glazedSides: "one" | "both";
  readonly shape: string;
  readonly colour: string;
  /** Filled where both sides are glazed, open where one is. */
  readonly filled: boolean;
}

/** The marks of all kinds of tile that there are, clay by clay. */
export function tileMarks(tiles: readonly Tile[], colours: Theme): readonly TileMark[] {
  const clays = [...new Set(tiles.map(({ clay }) => clay))];
  return clays.flatMap((clay, at) =>
    (["one", "both"] as const).flatMap((glazedSides) =>
      tiles.some((tile) => tile.clay === clay && tile.glazedSides === glazedSides)
        ? [
            {
              clay,
              glazedSides,
              shape: CLAY_SHAPES[at % CLAY_SHAPES.length]!,
              colour: styleAt(colours.compared, at).stroke,
              filled: glazedSides === "both",
            },
          ]
        : [],
    ),
  );
}

/** Tiles as points with their ranges; those that did not crack as arrows from their bound upwards. */
export function tileLayers(
  places: Places,
  tiles: readonly Tile[],
  colours: Theme,
): readonly Layer[] {
  return tileMarks(tiles, colours).flatMap((mark) => {
    const own = tiles.filter(
      ({ clay, glazedSides }) => clay === mark.clay && glazedSides === mark.glazedSides,
    );
    return [
      ...rangeLayers(places, own, mark.colour),
      ...arrowLayers(places, own, { mark, paper: colours.paper }),
      ...pointLayers(places, own, { mark, paper: colours.paper }),
    ];
  });
}

function rangeLayers(places: Places, tiles: readonly Tile[], colour: string): readonly Layer[] {
  const encoding = placing(places);
  const mark = { type: "rule" as const, color: colour, strokeWidth: 1, opacity: 0.55 };
  const up = tiles.flatMap(({ coat, spacing }): readonly Row[] =>
    spacing.kind === "measured" && spacing.lowMm !== null && spacing.highMm !== null
      ? [{ logCoat: log(coat.firedMm), logSpacing: log(spacing.lowMm), end: log(spacing.highMm) }]
      : [],
  );
  const across = tiles.flatMap(({ coat: { firedMm, sigmaMm }, spacing }): readonly Row[] =>
    spacing.kind === "measured" && sigmaMm > 0
      ? [
          {
            logCoat: log(Math.max(firedMm / 2, firedMm - sigmaMm)),
            end: log(firedMm + sigmaMm),
            logSpacing: log(spacing.pitchMm),
          },
        ]
      : [],
  );
  return [
    ...(up.length === 0
      ? []
      : [{ data: { values: [...up] }, mark, encoding: { ...encoding, y2: { field: "end" } } }]),
    ...(across.length === 0
      ? []
      : [{ data: { values: [...across] }, mark, encoding: { ...encoding, x2: { field: "end" } } }]),
  ];
}

function arrowLayers(
  places: Places,
  tiles: readonly Tile[],
  { mark, paper }: { readonly mark: TileMark; readonly paper: string },
): readonly Layer[] {
  const arrows = tiles.flatMap(({ coat, spacing }): readonly Row[] => {
    if (spacing.kind !== "uncracked") return [];
    const from = log(spacing.atLeastMm);
    return [{ logCoat: log(coat.firedMm), logSpacing: from, end: drawn(from + ARROW) }];
  });
  if (arrows.length === 0) return [];
  const encoding = placing(places);
  return [
    {
      data: { values: [...arrows] },
      mark: { type: "rule", color: mark.colour, strokeWidth: 1.4 },
      encoding: { ...encoding, y2: { field: "end" } },
    },
    {
      data: { values: arrows.map((row) => ({ ...row, logSpacing: row.end as number })) },
      mark: arrowHead(mark.colour, paper),
      encoding,
    },
  ];
}

function pointLayers(
  places: Places,
  tiles: readonly Tile[],
  { mark, paper }: { readonly mark: TileMark; readonly paper: string },
): readonly Layer[] {
  const points = tiles.flatMap(({ coat, spacing }): readonly Row[] =>
    spacing.kind === "not measured"
      ? []
      : [
          {
            logCoat: log(coat.firedMm),
            logSpacing: log(spacing.kind === "measured" ? spacing.pitchMm : spacing.atLeastMm),
          },
        ],
  );
  if (points.length === 0) return [];
  return [
    { data: { values: [...points] }, mark: pointMark(mark, paper), encoding: placing(places) },
  ];
}

/** The head of the arrow over a tile that did not crack, in the plot and in the key. */
export function arrowHead(colour: string, paper: string) {
  return {
    type: "point" as const,
    shape: "triangle-up",
    size: 60,
    fill: paper,
    stroke: colour,
    strokeWidth: 1.4,
    opacity: 1,
  };
}

/** A point as a tile is drawn, in the plot and in the key. */
export function pointMark(mark: TileMark, paper: string) {
  return {
    type: "point" as const,
    shape: mark.shape,
    size: 80,
    fill: mark.filled ? mark.colour : paper,
    stroke: mark.colour,
    strokeWidth: 1.8,
    opacity: 1,
  };
}

function log(amount: number): number {
  return drawn(Math.log10(amount));
}
