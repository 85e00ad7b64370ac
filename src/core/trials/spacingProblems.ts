import type { Problem } from "../problem.ts";
import { calibratedCoats } from "./calibratedCoats.ts";
import { levelOf, spacingFactors } from "./spacingFactors.ts";
import type { Tile } from "./Tile.ts";

/** Measured tiles that have to be left over once every coefficient is fitted. */
const FREEDOM = 2;

/** Less of the scatter of coats than this is coat and not reading error: nothing to be told. */
const LEAST_RELIABILITY = 0.4;

/** Tiles for an exponent that tells 1/2 from 1: a bare minimum. @see SOURCES["trial-planning"] */
const BARE_MINIMUM = 8;

/** What keeps the spacing of these tiles from being fitted against their coats; empty when nothing. */
export function spacingProblems(tiles: readonly Tile[]): readonly Problem[] {
  const measured = tiles.filter(({ spacing }) => spacing.kind === "measured");
  const glaze = tiles[0]?.glaze ?? "no glaze";
  const where = `tiles of ${glaze}`;
  const read = tiles.map(({ coat }) => ({
    logMm: Math.log(coat.firedMm),
    sigma: coat.sigmaMm / coat.firedMm,
  }));
  const { columns } = spacingFactors(
    tiles,
    read.map(({ logMm }) => logMm),
  );
  const needed = 2 + columns.length + FREEDOM;
  if (measured.length < needed)
    return [
      {
        code: "trials/too-few-tiles",
        what: `${counted(measured.length, "measured tile")} for the power of the coat${columns.length === 0 ? "" : ` and ${counted(columns.length, "difference")} between groups`}`,
        where,
        expected: `${needed} measured tiles at least; ${Math.max(needed, BARE_MINIMUM)} for an answer worth having`,
        fix:
          columns.length === 0
            ? "make more tiles"
            : "make more tiles, or compare fewer groups at once",
      },
    ];
  const coats = calibratedCoats(
    read,
    columns.map(({ values }) => values),
  );
  if (coats.reliability < LEAST_RELIABILITY)
    return [
      {
        code: "trials/coats-alike",
        what: "the coats differ hardly more than they can be misread",
        where,
        expected: "coats that differ by a factor of two and more, in every group",
        fix: "make tiles with coats of 0.3 to 1.2 mm, or measure the coats better and note coatError",
      },
    ];
  return columns.flatMap((column) => allUncracked(tiles, column.factor, column));
}

function counted(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? "" : "s"}`;
}

/** A group in which no tile cracked has no spacing, only a bound: it cannot be put beside others. */
function allUncracked(
  tiles: readonly Tile[],
  factor: Parameters<typeof levelOf>[1],
  { level, against }: { readonly level: string; readonly against: string },
): readonly Problem[] {
  return [level, against].flatMap((each) => {
    const own = tiles.filter((tile) => levelOf(tile, factor) === each);
    if (own.some(({ spacing }) => spacing.kind === "measured")) return [];
    return [
      {
        code: "trials/group-uncracked" as const,
        what: `no tile with ${factor} ${each} cracked (${own.length} of them)`,
        where: `tiles of ${own[0]?.glaze ?? "no glaze"}`,
        expected: "a cracked tile in every group whose spacing is compared",
        fix: "compare how many cracked, or leave this group out of the spacing",
      },
    ];
  });
}
