import type { FiringInNumbers } from "../../trials/FiringFact.ts";
import type { Tile } from "../../trials/Tile.ts";
import type { TileLeftOut, TileSet } from "../../trials/tilesOf.ts";
import type { Block, Cell } from "../Block.ts";
import { asGiven, fewDigits } from "../spreadWords.ts";

/** Every tile with its coat and spacing, firing by firing, and what was left out. */
export function tileTable(
  { tiles, leftOut }: TileSet,
  all: readonly FiringInNumbers[],
): readonly Block[] {
  const firings = [...new Set(tiles.map(({ firing }) => firing))];
  return [
    { kind: "heading", text: "The tiles" },
    ...firings.flatMap((firing) => {
      const own = tiles.filter((tile) => tile.firing === firing);
      const number = all.findIndex(({ record }) => record === firing) + 1;
      return [
        firingTable(own, `Firing ${number}: ${own[0]?.firingTitle ?? firing}`),
        ...moreOf(own),
      ];
    }),
    ...leftOutBlocks(leftOut),
  ];
}

/** Tiles of one firing; a glaze that all have stands in the caption. */
function firingTable(own: readonly Tile[], title: string): Block {
  const glazes = [...new Set(own.map(({ glaze }) => glaze))];
  const isOne = glazes.length === 1;
  return {
    kind: "table",
    caption: isOne ? `${title}; all ${glazes[0]}` : title,
    columns: [
      { head: "tile", align: "left" },
      { head: "clay", align: "left" },
      ...(isOne ? [] : [{ head: "glaze", align: "left" } as const]),
      { head: "coat, mm", align: "right" },
      { head: { lines: ["sides", "glazed"] }, align: "left" },
      { head: "spacing, mm", align: "right" },
      { head: "cracks", align: "left" },
    ],
    rows: own.map((tile) => tileRow(tile, isOne)),
  };
}

function tileRow(tile: Tile, isOne: boolean): readonly Cell[] {
  return [
    tile.piece,
    tile.clay,
    ...(isOne ? [] : [tile.glaze]),
    `${fewDigits(tile.coat.firedMm)} ± ${fewDigits(tile.coat.sigmaMm)}`,
    tile.glazedSides,
    spacingText(tile),
    tile.cracked ?? "not noted",
  ];
}

/** What was noted of single tiles beside their spacing: directions and pings. */
function moreOf(own: readonly Tile[]): readonly Block[] {
  const ways = own.flatMap(({ piece, spacing }) =>
    spacing.kind === "measured" && spacing.alongOverAcross !== null
      ? [`${piece} ${fewDigits(spacing.alongOverAcross)}`]
      : [],
  );
  const pings = own.flatMap(({ piece, pings: heard }) =>
    heard === null ? [] : [`${piece} ${heard.count}`],
  );
  return [
    ...(ways.length === 0
      ? []
      : [
          {
            kind: "sentence",
            text: `From crack to crack along the tile, over the same across it (1 without a direction): ${ways.join(", ")}.`,
          } as const,
        ]),
    ...(pings.length === 0
      ? []
      : [{ kind: "sentence", text: `Pings heard: ${pings.join(", ")}.` } as const]),
  ];
}

function spacingText({ spacing }: Tile): string {
  if (spacing.kind === "not measured") return "not measured";
  if (spacing.kind === "uncracked") return `over ${asGiven(spacing.atLeastMm)}`;
  const { pitchMm, lowMm, highMm } = spacing;
  return lowMm === null || highMm === null
    ? asGiven(pitchMm)
    : `${fewDigits(pitchMm)} (${fewDigits(lowMm)} to ${fewDigits(highMm)})`;
}

/** Counted by what they are left out of and why, so that a long list stays short. */
function leftOutBlocks(leftOut: readonly TileLeftOut[]): readonly Block[] {
  const reasons = [...new Set(leftOut.map(({ from, why }) => `${from}\n${why}`))];
  if (reasons.length === 0) return [];
  return [
    { kind: "sentence", text: "Left out:" },
    {
      kind: "list",
      items: reasons.map((reason) => {
        const own = leftOut.filter(({ from, why }) => `${from}\n${why}` === reason);
        const [from, why] = reason.split("\n");
        return `of ${from}: ${own.map(({ piece }) => piece).join(", ")}, because ${why}`;
      }),
    },
  ];
}
