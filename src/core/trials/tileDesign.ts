import type { NextTile } from "./NextTest.ts";
import type { Tile } from "./Tile.ts";

/** What a tile's kind is in a design; how many does not matter. */
export type TileKind = Omit<NextTile, "count">;

/** The causes that tiles themselves carry, by their names in the grid. */
export type TileCause = "clay" | "glaze" | "coat" | "sides" | "shape";

/** A model of ln spacing: the firing, clay, glaze, sides, shape and ln coat, each adding its effect. */
export interface TileDesign {
  /** Design row of a tile of a firing; the next firing has an effect of its own. */
  readonly rowOf: (kind: TileKind, firing: string | "next") => readonly number[];
  /** Every comparison that belongs to a cause: each two levels, or the exponent. */
  readonly contrastsOf: (cause: TileCause) => readonly DesignContrast[];
}

/** One comparison of a design. */
interface DesignContrast {
  /** `Mere buff against Tarrow white`, `exponent`. */
  readonly words: string;
  readonly direction: readonly number[];
}

/** A tile as its kind. */
export function kindOf({ clay, glaze, coat, glazedSides, shape }: Tile): TileKind {
  return { clay, glaze, coatMm: coat.firedMm, glazedSides, shape };
}

/** The design of these tiles with room for the levels of these candidates and for one more firing. */
export function tileDesign(tiles: readonly Tile[], candidates: readonly TileKind[]): TileDesign {
  const kinds = [...tiles.map(kindOf), ...candidates];
  const firings = [...new Set(tiles.map(({ firing }) => firing))];
  const middle =
    kinds.reduce((sum, { coatMm }) => sum + Math.log(coatMm), 0) / Math.max(1, kinds.length);
  const factors = FACTORS.map((factor) => ({
    ...factor,
    levels: [...new Set(kinds.map(factor.levelOf))],
  }));
  const firstAt = 2 + firings.length;
  const starts = factors.map((_, at) =>
    factors.slice(0, at).reduce((sum, { levels }) => sum + levels.length - 1, firstAt),
  );
  const effects = factors.reduce((sum, { levels }) => sum + levels.length - 1, firstAt);
  const coatRow = (lnCoat: number) => unit(effects, [[1, lnCoat - middle]]);
  return {
    rowOf: (kind, firing) => {
      // The first firing is the intercept; the last of the firing columns is the next firing.
      const place = firing === "next" ? firings.length : firings.indexOf(firing);
      const row = [...coatRow(Math.log(kind.coatMm))];
      row[0] = 1;
      if (place > 0) row[1 + place] = 1;
      factors.forEach(({ levels, levelOf }, at) => {
        const level = levels.indexOf(levelOf(kind));
        if (level > 0) row[(starts[at] as number) + level - 1] = 1;
      });
      return row;
    },
    contrastsOf: (cause) => {
      if (cause === "coat") return [{ words: "exponent", direction: unit(effects, [[1, 1]]) }];
      const at = factors.findIndex(({ name }) => name === cause);
      const { levels, say } = factors[at] as (typeof factors)[number];
      const sign = (level: number, weight: number): readonly (readonly [number, number])[] =>
        level === 0 ? [] : [[(starts[at] as number) + level - 1, weight]];
      return levels.flatMap((one, i) =>
        levels.slice(i + 1).map((other, k) => ({
          words: `${say(other)} against ${say(one)}`,
          direction: unit(effects, [...sign(i, -1), ...sign(i + 1 + k, 1)]),
        })),
      );
    },
  };
}

const FACTORS: readonly {
  readonly name: TileCause;
  readonly levelOf: (kind: TileKind) => string;
  readonly say: (level: string) => string;
}[] = [
  { name: "clay", levelOf: ({ clay }) => clay, say: (level) => level },
  { name: "glaze", levelOf: ({ glaze }) => glaze, say: (level) => level },
  {
    name: "sides",
    levelOf: ({ glazedSides }) => glazedSides,
    say: (level) => (level === "one" ? "one side" : "both sides"),
  },
  { name: "shape", levelOf: ({ shape }) => shape ?? "not noted", say: (level) => level },
];

function unit(length: number, entries: readonly (readonly [number, number])[]): readonly number[] {
  const row = Array.from({ length }, () => 0);
  for (const [at, value] of entries) row[at] = value;
  return row;
}
