import { describe, expect, it } from "vitest";
import { layerStress } from "../../../src/core/glaze/laminate.ts";
import {
  BOTH_DEPTHS,
  type DepthTable,
  FREE_DEPTHS,
  RING_DEPTHS,
} from "../../../src/core/glaze/throughTables.ts";
import { edgeCrack } from "../../support/edgeCrack.ts";

/** Wall, depth and K* of the tables, from a fifth of a coat below the glaze to a share of the strip. */
const cases = (tables: readonly DepthTable[], coats: number, share: number) =>
  tables.flatMap(({ wallOverCoat, rows }) =>
    rows
      .filter(([depth]) => depth >= 1.2 && depth <= share * (wallOverCoat + coats))
      .map(([depth, kStar]) => [wallOverCoat, depth, kStar] as const),
  );

describe("derived: K* of the depth tables, by that weight function, for equal stiffness", () => {
  it.each(cases(RING_DEPTHS, 1, 1 / 3))(
    "closed wall of %d coats, %d deep: %d, at most 6.5 % less, to a third of the strip (a ring of ten walls' radius holds a deep crack more shut than a long strip)",
    (wall, depth, kStar) => {
      const found = edgeCrack((x) => (x < 1 ? 1 : -1 / wall), depth, wall + 1);
      expect(found / kStar).toBeGreaterThan(0.985);
      expect(found / kStar).toBeLessThan(1.065);
    },
  );

  it.each(cases(BOTH_DEPTHS, 2, 1 / 2))(
    "coats on both faces of a wall of %d, %d deep: %d within 2.5 %",
    (wall, depth, kStar) => {
      const found = edgeCrack((x) => (x < 1 || x > wall + 1 ? 1 : -2 / wall), depth, wall + 2);
      expect(Math.abs(found / kStar - 1)).toBeLessThan(0.025);
    },
  );

  it.each(cases(FREE_DEPTHS, 1, 1 / 2))(
    "free plate of %d coats, %d deep: %d within 0.03",
    (wall, depth, kStar) => {
      const layers = {
        glazeGPa: 65,
        glazePoisson: 0.2,
        bodyGPa: 65,
        bodyPoisson: 0.2,
        coatMm: 1,
        wallMm: wall,
      };
      const { glazeMPa, underGlazeMPa, bareFaceMPa } = layerStress(
        layers,
        "one face, free to bend",
        5e-4,
      );
      const bare = bareFaceMPa as number;
      const slope = (bare - underGlazeMPa) / wall;
      const stress = (x: number) =>
        (x < 1 ? glazeMPa + slope * (x - 0.5) : underGlazeMPa + slope * (x - 1)) / glazeMPa;
      expect(Math.abs(edgeCrack(stress, depth, wall + 1) - kStar)).toBeLessThan(0.03);
    },
  );
});
