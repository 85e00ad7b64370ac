import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parseRecord } from "../../../src/core/firing/record.ts";
import { fitSpacing } from "../../../src/core/trials/fitSpacing.ts";
import { dot, normalMatrix, solved } from "../../../src/core/trials/linearSystem.ts";
import { tilesOf } from "../../../src/core/trials/tilesOf.ts";
import { DEMO_TRUTH, demoTiles, expectedPitchMm } from "./crackleTiles.ts";

const TRUE_RATIOS: Readonly<Record<string, number>> = {
  "clay Tarrow red": DEMO_TRUTH.redOverWhite,
  "clay Tarrow white": 1 / DEMO_TRUTH.redOverWhite,
  "sides both": DEMO_TRUTH.bothOverOne,
  "sides one": 1 / DEMO_TRUTH.bothOverOne,
};

describe("the invented crackle tiles", () => {
  it("are 24 of three firings, and follow what the README states", () => {
    const tiles = demoTiles();
    expect(tiles).toHaveLength(24);
    const rows = tiles.map(({ coatMm, clay, glazedSides }) => [
      1,
      Math.log(coatMm),
      clay === "Tarrow red" ? 1 : 0,
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
    const [, exponent = 0, red = 0, both = 0] = solved(matrix, right) ?? [];
    expect(exponent).toBeCloseTo(DEMO_TRUTH.exponent, 2);
    expect(Math.exp(red)).toBeCloseTo(DEMO_TRUTH.redOverWhite, 2);
    expect(Math.exp(both)).toBeCloseTo(DEMO_TRUTH.bothOverOne, 2);
  });

  it("give the analysis of their records the truth back, within its intervals", () => {
    const records = ["2026-02-21-b", "2026-03-14-b", "2026-04-11-a"].map((name) => {
      const file = new URL(`../../../logs/${name}.yaml`, import.meta.url);
      const record = parseRecord(readFileSync(file, "utf8"), `${name}.yaml`);
      if (!record.ok) throw new Error(record.problems.map(({ what }) => what).join());
      return record.value;
    });
    const { tiles, leftOut } = tilesOf(records);
    expect(leftOut).toEqual([]);
    const fit = fitSpacing(tiles, 1);
    if (!fit.ok) throw new Error(fit.problems.map(({ what }) => what).join());
    const { exponent, ratios } = fit.value;
    expect(exponent.low).toBeLessThan(DEMO_TRUTH.exponent);
    expect(exponent.high).toBeGreaterThan(DEMO_TRUTH.exponent);
    for (const { factor, level, ratio } of ratios) {
      const truth = TRUE_RATIOS[`${factor} ${level}`] ?? 1;
      expect(ratio.low).toBeLessThan(truth);
      expect(ratio.high).toBeGreaterThan(truth);
    }
    expect(ratios[0]?.test?.p).toBeLessThan(0.05);
    expect(ratios.map(({ factor }) => factor)).toEqual(["clay", "sides", "firing", "firing"]);
  });
});
