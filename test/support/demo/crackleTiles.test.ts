import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { dot, normalMatrix, solved } from "../../../src/core/math/linearSystem.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import type { SpacingFit } from "../../../src/core/trials/FiringStudy.ts";
import { fitSpacing } from "../../../src/core/trials/fitSpacing.ts";
import { studyFits } from "../../../src/core/trials/studyFits.ts";
import { type Tile, tilesOf } from "../../../src/core/trials/Tile.ts";
import {
  DEMO_TRUTH,
  demoTiles,
  expectedPitchMm,
  pondIce,
  trueShrinksMore,
} from "./crackleTiles.ts";

const TRUE_RATIOS: Readonly<Record<string, number>> = {
  "clay Tarrow dusk": DEMO_TRUTH.duskOverWhite,
  "clay Tarrow white": 1 / DEMO_TRUTH.duskOverWhite,
  "sides both": DEMO_TRUTH.bothOverOne,
  "sides one": 1 / DEMO_TRUTH.bothOverOne,
};

describe("the invented crackle tiles", () => {
  it("are 24 of three firings, and follow what the README states", () => {
    const tiles = demoTiles(["A", "B", "C"]);
    expect(tiles).toHaveLength(24);
    const rows = tiles.map(({ coatMm, clay, glazedSides }) => [
      1,
      Math.log(coatMm),
      clay === "Tarrow dusk" ? 1 : 0,
      glazedSides === "both" ? 1 : 0,
    ]);
    const logs = tiles.map((tile) => Math.log(expectedPitchMm(tile)));
    const matrix = normalMatrix(
      rows,
      rows.map(() => 1),
    );
    const right = [0, 1, 2, 3].map((i) =>
      dot(
        rows.map((row) => row[i] as number),
        logs,
      ),
    );
    const [, exponent = 0, dusk = 0, both = 0] = solved(matrix, right) ?? [];
    expect(exponent).toBeCloseTo(DEMO_TRUTH.exponent, 2);
    expect(Math.exp(dusk)).toBeCloseTo(DEMO_TRUTH.duskOverWhite, 2);
    expect(Math.exp(both)).toBeCloseTo(DEMO_TRUTH.bothOverOne, 2);
    for (const tile of tiles)
      expect(trueShrinksMore(tile)).toBeCloseTo(DEMO_TRUTH.shrinksMore[tile.clay], 2);
  });

  it("give the analysis of their records the truth back, within its intervals", () => {
    const { ratios } = expectTruthIn(["2026-02-21-b", "2026-03-14-b", "2026-04-11-a"]);
    expect(ratios[0]?.test?.p).toBeLessThan(0.05);
    expect(ratios.map(({ factor }) => factor)).toEqual(["clay", "sides", "firing", "firing"]);
  });

  it("give back how much more the glaze shrinks, within the spread, on either clay", () => {
    const { pairs, leftOut } = studyFits(
      tilesOfRecords(["2026-02-21-b", "2026-03-14-b", "2026-04-11-a"]),
      { glazes: new Map([["pond-ice", pondIce()]]), bodies: new Map() },
      () => null,
    );
    expect(leftOut).toEqual([]);
    expect(pairs.map(({ clay, tiles }) => [clay, tiles])).toEqual([
      ["Tarrow white", 12],
      ["Tarrow dusk", 12],
    ]);
    for (const { clay, found, foundOverExpected } of pairs) {
      const [spacing] = found;
      const truth = DEMO_TRUTH.shrinksMore[clay as keyof typeof DEMO_TRUTH.shrinksMore];
      expect(spacing).toMatchObject({ from: "crack spacing", holds: "about", tiles: 12 });
      expect(1e6 * (spacing?.perK.low as number)).toBeLessThan(truth);
      expect(1e6 * (spacing?.perK.high as number)).toBeGreaterThan(truth);
      // Tiles scatter by 12 %, coats are read to 10 %: 12 tiles leave a few percent.
      expect(Math.abs(1e6 * (spacing?.perK.median as number) - truth)).toBeLessThan(0.1 * truth);
      // Spacings are as the files let expect: they were made from them.
      expect(foundOverExpected?.within).toBe(12);
      expect(Math.abs((foundOverExpected?.median as number) - 1)).toBeLessThan(0.2);
    }
  });

  it("give it back with the tiles of the hurried firing for one of the three, too", () => {
    expectTruthIn(["2026-02-21-b", "2026-03-14-b", "2026-05-23-b"]);
    expect(demoTiles(["D"]).map(({ piece }) => piece)).toEqual(["D1", "D2", "D3", "D4"]);
  });
});

/** Fits the tiles of some demo records, and demands the truth within every interval. */
function expectTruthIn(names: readonly string[]): SpacingFit {
  const fit = fitSpacing(tilesOfRecords(names), 1);
  if (!fit.ok) throw new Error(fit.problems.map(({ what }) => what).join());
  const { exponent, ratios } = fit.value;
  expect(exponent.low).toBeLessThan(DEMO_TRUTH.exponent);
  expect(exponent.high).toBeGreaterThan(DEMO_TRUTH.exponent);
  for (const { factor, level, ratio } of ratios) {
    const truth = TRUE_RATIOS[`${factor} ${level}`] ?? 1;
    expect(ratio.low).toBeLessThan(truth);
    expect(ratio.high).toBeGreaterThan(truth);
  }
  return fit.value;
}

function tilesOfRecords(names: readonly string[]): readonly Tile[] {
  const records = names.map((name) => {
    const file = new URL(`../../../logs/${name}.yaml`, import.meta.url);
    const record = parseRecord(readFileSync(file, "utf8"), `${name}.yaml`);
    if (!record.ok) throw new Error(record.problems.map(({ what }) => what).join());
    return record.value;
  });
  const { tiles, leftOut } = tilesOf(records);
  expect(leftOut).toEqual([]);
  return tiles;
}
