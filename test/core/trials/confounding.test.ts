import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Cause, Confounding } from "../../../src/core/trials/Confounding.ts";
import { confoundingOf } from "../../../src/core/trials/confoundingOf.ts";
import { tileCauses } from "../../../src/core/trials/firingCauses.ts";
import type { Tile } from "../../../src/core/trials/Tile.ts";
import { someTile } from "./someTile.ts";
import "../../support/propertySeed.ts";

const CLAYS = ["Tarrow white", "Mere buff"];
const GLAZES = ["pond ice", "grey moon"];
const SIDES = ["one", "both"] as const;
const SHAPES = ["flat", "closed"] as const;
const COATS = [0.4, 1.2];

function lookedAt(tiles: readonly Tile[]): Confounding {
  return confoundingOf(tileCauses(tiles, []), tiles.length);
}

/** Names of the two causes of every pair that cannot be told apart, each pair once. */
function untold({ pairs }: Confounding): readonly string[] {
  return pairs
    .filter(({ telling }) => telling === "cannot")
    .map(({ first, second }) => [first, second].sort().join(" + "))
    .sort();
}

type Factor = "firing" | "clay" | "glaze" | "sides" | "shape" | "coat";
const FACTORS: readonly Factor[] = ["firing", "clay", "glaze", "sides", "shape", "coat"];

/** A tile with the first or second level of each factor. */
function tileAt(level: (factor: Factor) => 0 | 1): Tile {
  return someTile({
    firing: ["a.yaml", "b.yaml"][level("firing")] as string,
    firingTitle: ["First firing", "Second firing"][level("firing")] as string,
    clay: CLAYS[level("clay")] as string,
    glaze: GLAZES[level("glaze")] as string,
    glazedSides: SIDES[level("sides")] as "one",
    shape: SHAPES[level("shape")] as "flat",
    coatMm: COATS[level("coat")] as number,
  });
}

/** Every mix of the free factors once; the others go with the one that they are tied to. */
function study(tied: ReadonlyMap<Factor, Factor>): readonly Tile[] {
  const free = FACTORS.filter((factor) => !tied.has(factor));
  return Array.from({ length: 2 ** free.length }, (_, mix) =>
    tileAt((factor) => {
      const at = free.indexOf(tied.get(factor) ?? factor);
      return ((mix >> at) & 1) as 0 | 1;
    }),
  );
}

describe("what the tiles cannot tell apart", () => {
  it("is nothing where every mix was fired", () => {
    const found = lookedAt(study(new Map()));
    expect(untold(found)).toEqual([]);
    expect(found.pairs.every(({ telling, shared }) => telling === "apart" && shared < 1e-9)).toBe(
      true,
    );
    expect(found.together).toEqual([]);
  });

  it("is exactly what was tied together, whatever that is", () => {
    const tie = fc
      .uniqueArray(fc.constantFrom(...FACTORS), { minLength: 2, maxLength: 4 })
      .map((names) =>
        names.length === 4
          ? new Map([
              [names[1], names[0]],
              [names[3], names[2]],
            ])
          : new Map(names.slice(1).map((name) => [name, names[0]])),
      );
    fc.assert(
      fc.property(tie, (tied) => {
        const ties = tied as ReadonlyMap<Factor, Factor>;
        const groups = FACTORS.map((factor) => ties.get(factor) ?? factor);
        const expected = FACTORS.flatMap((first, i) =>
          FACTORS.slice(i + 1).flatMap((second, k) =>
            groups[i] === groups[i + 1 + k] ? [[first, second].sort().join(" + ")] : [],
          ),
        );
        const found = lookedAt(study(ties));
        expect(untold(found)).toEqual(expected.sort());
        expect(found.together.flatMap(({ causes }) => causes).sort()).toEqual(
          FACTORS.filter((_, i) => groups.filter((group) => group === groups[i]).length > 1).sort(),
        );
      }),
    );
  });

  it("is said in words: what every tile of a kind was as well", () => {
    const found = lookedAt(study(new Map([["sides", "clay"]])));
    expect(found.together).toEqual([
      {
        causes: ["clay", "sides"],
        because: [
          "every Tarrow white tile is glazed on one side",
          "every Mere buff tile is glazed on both sides",
        ],
      },
    ]);
  });

  it("is said once, though a firing and its heat say the same of every coat", () => {
    const cause = (name: string, of: Cause["of"], levels: readonly string[]): Cause => ({
      name,
      of,
      levels,
      amounts: null,
      sayOf: (level) => (of === "tile" ? level : `from firing ${level}`),
      sayTile: (level) => level,
    });
    const firings = ["1", "1", "2", "2"];
    const { together } = confoundingOf(
      [
        cause("firing", "firing", firings),
        cause("heat", "part of the firing", firings),
        cause("coat", "tile", ["0.3 mm", "0.3 mm", "0.5 mm", "0.5 mm"]),
      ],
      4,
    );
    expect(together).toEqual([
      {
        causes: ["firing", "heat", "coat"],
        because: ["every 0.3 mm tile is from firing 1", "every 0.5 mm tile is from firing 2"],
      },
    ]);
  });

  it("is found between one firing of three and the clay that was fired in it alone", () => {
    const tiles = [
      ["a.yaml", "Tarrow white"],
      ["a.yaml", "Tarrow white"],
      ["b.yaml", "Tarrow white"],
      ["c.yaml", "Mere buff"],
      ["c.yaml", "Mere buff"],
    ].map(([firing, clay]) => someTile({ firing: firing as string, clay: clay as string }));
    const found = lookedAt(tiles);
    expect(untold(found)).toEqual(["clay + firing"]);
    // The firing did more than the clay: a and b can be compared, so the two are not one.
    expect(found.together).toEqual([]);
  });

  it("is found when several causes together stand for another, though none does alone", () => {
    const tiles = [
      [0, 0, 0],
      [0, 1, 1],
      [1, 0, 1],
      [1, 1, 2],
    ].flatMap(([clay, glaze, place]) => [
      someTile({
        clay: CLAYS[clay as number] as string,
        glaze: GLAZES[glaze as number] as string,
        place: `shelf ${place}`,
      }),
      someTile({
        clay: CLAYS[clay as number] as string,
        glaze: GLAZES[glaze as number] as string,
        place: `shelf ${place}`,
      }),
    ]);
    // The number of the shelf is clay + glaze, so shelf 2 against shelf 0 is both changed at once.
    const found = lookedAt(tiles);
    expect(found.jointly.map(({ cause }) => cause)).toContain("place");
  });
});

describe("partly mixed causes", () => {
  it("share what the square of their correlation says", () => {
    // 6 of 8 tiles agree: correlation (6 − 2)/8 = ½, shared ¼.
    const pairs = [
      [0, 0],
      [0, 0],
      [0, 0],
      [0, 1],
      [1, 1],
      [1, 1],
      [1, 1],
      [1, 0],
    ];
    const tiles = pairs.map(([clay, sides]) =>
      someTile({
        clay: CLAYS[clay as number] as string,
        glazedSides: SIDES[sides as number] as "one",
      }),
    );
    const pair = lookedAt(tiles).pairs.find(
      ({ first, second }) => first === "clay" && second === "sides",
    );
    expect(pair?.telling).toBe("partly");
    expect(pair?.shared).toBeCloseTo(0.25, 9);
  });

  it("count coats that a gauge cannot tell apart as one, so scatter does not hide a confounding", () => {
    const tiles = [0.78, 0.8, 0.85, 1.3, 1.35, 1.4].map((coatMm, at) =>
      someTile({ coatMm, clay: CLAYS[at < 3 ? 0 : 1] as string }),
    );
    expect(untold(lookedAt(tiles))).toEqual(["clay + coat"]);
  });
});

describe("causes of which the tiles say nothing", () => {
  it("are named: one level only, a level for each tile, noted nowhere", () => {
    const tiles = [1, 2, 3].map((at) =>
      someTile({ place: `shelf ${at}`, shape: null, coatMm: 0.4 * at }),
    );
    const found = lookedAt(tiles);
    expect(found.everyOwn).toEqual(["place"]);
    expect(found.unknown).toEqual(["shape"]);
    expect(found.constant.map(({ name }) => name)).toEqual(["firing", "clay", "glaze", "sides"]);
    expect(found.causes.map(({ name }) => name)).toEqual(["coat"]);
  });

  it("are all when there is no tile", () => {
    expect(lookedAt([]).pairs).toEqual([]);
  });
});
