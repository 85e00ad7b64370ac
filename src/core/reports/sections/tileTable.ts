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
    ...firings.map((firing): Block => {
      const own = tiles.filter((tile) => tile.firing === firing);
      return {
        kind: "table",
        caption: `Firing ${all.findIndex(({ record }) => record === firing) + 1}: ${own[0]?.firingTitle ?? firing}`,
        columns: [
          { head: "tile", align: "left" },
          { head: "clay", align: "left" },
          { head: "glaze", align: "left" },
          { head: "coat, mm", align: "right" },
          { head: "glazed", align: "left" },
          { head: "spacing, mm", align: "right" },
          { head: "cracks", align: "left" },
        ],
        rows: own.map(tileRow),
      };
    }),
    ...leftOutBlocks(leftOut),
  ];
}

function tileRow(tile: Tile): readonly Cell[] {
  return [
    tile.piece,
    tile.clay,
    tile.glaze,
    `${fewDigits(tile.coat.firedMm)} ± ${fewDigits(tile.coat.sigmaMm)}`,
    tile.glazedSides === "one" ? "one side" : "both",
    spacingText(tile),
    tile.cracked ?? "not noted",
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
