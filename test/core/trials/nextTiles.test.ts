import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { basisOf } from "../../../src/core/math/linearSystem.ts";
import { chooseTiles } from "../../../src/core/trials/chooseTiles.ts";
import { confoundingOf } from "../../../src/core/trials/confoundingOf.ts";
import { tileCauses } from "../../../src/core/trials/firingCauses.ts";
import type { NextTiles } from "../../../src/core/trials/NextTest.ts";
import { neededError, nextTiles } from "../../../src/core/trials/nextTiles.ts";
import type { Tile } from "../../../src/core/trials/Tile.ts";
import { someTile } from "./someTile.ts";
import "../../support/propertySeed.ts";

function nextFor(tiles: readonly Tile[], scatter: number | null = 0.25): NextTiles | null {
  return nextTiles({
    tiles,
    confounding: confoundingOf(tileCauses(tiles, []), tiles.length),
    scatter,
  });
}

/** Many of a kind of tile. */
function many(count: number, told: Parameters<typeof someTile>[0]): readonly Tile[] {
  return Array.from({ length: count }, (_, at) => someTile({ ...told, piece: `P${at}` }));
}

describe("the error that is small enough", () => {
  it("is the difference over both t's of the scatter", () => {
    // 14 degrees of freedom, by printed t tables: 2.145 for 5 % two-sided, 0.868 for 8 of 10.
    expect(neededError(Math.log(1.5), 14)).toBeCloseTo(Math.log(1.5) / (2.145 + 0.868), 4);
  });

  it("is none without a tile to spare", () => {
    expect(neededError(0.4, 0)).toBe(0);
  });
});

describe("the next tiles", () => {
  it("cross clay and sides when every one-sided tile was of one clay", () => {
    const next = nextFor([
      ...many(6, { clay: "Tarrow white", glazedSides: "one" }),
      ...many(6, { clay: "Mere buff", glazedSides: "both" }),
    ]);
    expect(next?.isEnough).toBe(true);
    expect(next?.wanted.map(({ cause }) => cause).sort()).toEqual(["clay", "sides"]);
    expect(next?.wanted.every(({ before }) => before === null)).toBe(true);
    const kinds = next?.tiles.map(({ clay, glazedSides }) => `${clay} ${glazedSides}`) ?? [];
    // The mixes that were missing are what tells.
    expect(kinds).toContain("Tarrow white both");
    expect(kinds).toContain("Mere buff one");
    // Everything else stays as most tiles had it.
    expect(new Set(next?.tiles.map(({ glaze }) => glaze))).toEqual(new Set(["pond ice"]));
    // One tile gives the level of the new firing, a second parts clay and sides.
    expect(next?.fewest).toBe(2);
  });

  it("bring every wanted comparison under what is needed", () => {
    const tiles = [
      ...many(5, { clay: "Tarrow white", glazedSides: "one" }),
      ...many(5, { clay: "Mere buff", glazedSides: "both" }),
    ];
    const next = nextFor(tiles);
    expect(next?.wanted.every(({ after, needed }) => after <= needed)).toBe(true);
  });

  it("are both clays in one firing when the clay changed from firing to firing", () => {
    const next = nextFor([
      ...many(8, { firing: "a.yaml", clay: "Tarrow white" }),
      ...many(8, { firing: "b.yaml", clay: "Mere buff" }),
    ]);
    expect(next?.tiles.map(({ clay }) => clay).sort()).toEqual(["Mere buff", "Tarrow white"]);
    // Within the new firing alone: as many of each as two groups need, or one less for what is shared.
    expect(next?.tiles.every(({ count }) => count >= 7 && count <= 9)).toBe(true);
  });

  it("are more of each when nothing is mixed but a group has one tile", () => {
    const next = nextFor(
      [someTile({ glazedSides: "one" }), someTile({ glazedSides: "both" })],
      null,
    );
    expect(next?.scatterIs).toBe("assumed");
    expect(next?.reason).toContain("too few tiles");
    expect(next?.total).toBeGreaterThan(10);
  });

  it("are of two coats when there was one coat only", () => {
    const next = nextFor(many(9, { coatMm: 0.6 }));
    expect([...new Set(next?.tiles.map(({ coatMm }) => coatMm))].sort()).toEqual([0.6, 1.2]);
  });

  it("are none when nothing was measured", () => {
    expect(nextFor(many(6, { pitchMm: null }))).toBeNull();
  });
});

describe("choosing tiles", () => {
  const row = fc.array(fc.constantFrom(0, 1), { minLength: 4, maxLength: 4 });

  it("takes no more than the rank that is missing, as trying every set confirms", () => {
    fc.assert(
      fc.property(
        fc.array(row, { minLength: 1, maxLength: 4 }),
        fc.array(row, { minLength: 2, maxLength: 6 }),
        (rows, candidates) => {
          const wanted = [0, 1, 2, 3].map((at) => ({
            direction: [0, 1, 2, 3].map((i) => (i === at ? 1 : 0)),
            needed: () => Number.POSITIVE_INFINITY,
          }));
          const chosen = chooseTiles({ rows, candidates, wanted, scatter: 0.01, most: 10 });
          const rank = (all: readonly (readonly number[])[]) => basisOf(all).length;
          const subsets = Array.from({ length: 2 ** candidates.length }, (_, mask) =>
            candidates.filter((__, at) => (mask >> at) & 1),
          );
          const enough = subsets.filter((set) => rank([...rows, ...set]) === 4);
          const fewest =
            enough.length === 0 ? null : Math.min(...enough.map(({ length }) => length));
          expect(chosen.fewest).toBe(fewest);
        },
      ),
    );
  });
});
