import { fitSpacing } from "./fitSpacing.ts";
import type { GlazeStudy } from "./GlazeStudy.ts";
import { sampleSizes } from "./sampleSizes.ts";
import type { Tile } from "./Tile.ts";
import { throughCracks } from "./throughCracks.ts";

/**
 * Spacing, through cracks and numbers of tiles of one glaze.
 *
 * @param seed Of drawn dealings of labels; the same gives the same.
 */
export function studyGlaze(glaze: string, all: readonly Tile[], seed: number): GlazeStudy {
  const tiles = all.filter((tile) => tile.glaze === glaze);
  const looked = tiles.filter(({ spacing }) => spacing.kind !== "not measured");
  const fit = fitSpacing(looked, seed);
  const spacing = fit.ok ? fit.value : null;
  const sizes = sampleSizes(looked, spacing);
  return {
    glaze,
    spacing,
    problems: [...(fit.ok ? [] : fit.problems), ...sizes.problems],
    through: throughCracks(tiles),
    sizes,
  };
}
