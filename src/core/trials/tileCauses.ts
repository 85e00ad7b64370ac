import type { Cause } from "./Cause.ts";
import { coatBins } from "./coatBins.ts";
import type { FiringInNumbers } from "./FiringFact.ts";
import { firingCauses } from "./firingCauses.ts";
import type { Tile } from "./Tile.ts";

/** All that may govern the spacing on these tiles: what the tiles have, and how they were fired. */
export function tileCauses(
  tiles: readonly Tile[],
  firings: readonly FiringInNumbers[],
): readonly Cause[] {
  const { levels, amounts } = coatBins(tiles.map(({ coat }) => coat.firedMm));
  return [
    ...firingCauses(tiles, firings),
    kind(
      "clay",
      tiles.map(({ clay }) => clay),
    ),
    kind(
      "glaze",
      tiles.map(({ glaze }) => glaze),
    ),
    {
      name: "coat",
      of: "tile",
      levels,
      amounts,
      sayOf: (level) => `${level} thick`,
      sayTile: (level) => level,
    },
    {
      ...kind(
        "sides",
        tiles.map(({ glazedSides }) => glazedSides),
      ),
      sayOf: (level) => `glazed on ${level === "one" ? "one side" : "both sides"}`,
      sayTile: (level) => (level === "one" ? "one-sided" : "two-sided"),
    },
    kind(
      "shape",
      tiles.map(({ shape }) => shape),
    ),
    {
      ...kind(
        "place",
        tiles.map(({ place }) => place),
      ),
      sayOf: (level) => `from ${level}`,
      sayTile: (level) => level,
    },
  ];
}

function kind(name: string, levels: readonly (string | null)[]): Cause {
  return {
    name,
    of: "tile",
    levels,
    amounts: null,
    sayOf: (level) => level,
    sayTile: (level) => level,
  };
}
