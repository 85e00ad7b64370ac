import { describe, expect, it } from "vitest";
import { layerStress } from "../../src/core/glaze/laminate.ts";
import {
  BOTH_DEPTHS,
  type DepthTable,
  FREE_DEPTHS,
  RING_DEPTHS,
} from "../../src/core/glaze/throughTables.ts";

/**
 * Stress intensity of an edge crack in a strip, by H. F. Bueckner's weight function (Zeitschrift für
 * angewandte Mathematik und Mechanik 50, 1970; coefficients from memory); half the strip at most.
 *
 * @param stress On the line of the crack, against depth.
 */
function edgeCrack(stress: (depth: number) => number, depth: number, width: number): number {
  const share = depth / width;
  const m1 = 0.6147 + 17.1844 * share ** 2 + 8.7822 * share ** 6;
  const m2 = 0.2502 + 3.2889 * share ** 2 + 70.0444 * share ** 6;
  const steps = 20_000;
  let sum = 0;
  // With 1 − x/a as a square the singular end is smooth.
  for (let i = 0; i < steps; i++) {
    const root = (i + 0.5) / steps;
    const rest = root * root;
    sum += (stress(depth * (1 - rest)) * (1 + m1 * rest + m2 * rest * rest)) / steps;
  }
  return 2 * Math.sqrt((2 * depth) / Math.PI) * sum;
}

describe("an edge crack in a strip under tension, F of K = F σ √(πa)", () => {
  // Tada, Paris & Irwin, The Stress Analysis of Cracks Handbook; F to half a per cent.
  it.each([
    [0.2, 1.367],
    [0.3, 1.66],
    [0.5, 2.827],
  ])("%d of the width: %d within 1 % (the weight function's own accuracy)", (share, printed) => {
    const found = edgeCrack(() => 1, share, 1) / Math.sqrt(Math.PI * share);
    expect(Math.abs(found / printed - 1)).toBeLessThan(0.01);
  });
});

/** Wall, depth and K* of the tables, from a fifth of a coat below the glaze to a share of the strip. */
const cases = (tables: readonly DepthTable[], coats: number, share: number) =>
  tables.flatMap(({ wallOverCoat, rows }) =>
    rows
      .filter(([depth]) => depth >= 1.2 && depth <= share * (wallOverCoat + coats))
      .map(([depth, kStar]) => [wallOverCoat, depth, kStar] as const),
  );

describe("K* of the depth tables, by that weight function, for equal stiffness", () => {
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
