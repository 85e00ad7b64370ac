import { fitSpacing } from "./fitSpacing.ts";
import type { GroupRatio, GroupSlope, SpacingFit } from "./SpacingFit.ts";
import type { Tile } from "./Tile.ts";

/** Measured tiles from which a glaze is put beside others. */
const FEWEST = 2;

/** Glazes held against each other on all of their tiles, coats, clays, sides and firings made equal. */
export interface GlazesCompared {
  /** Of glazes alone: pitch of `level` over that of `against`, the glaze with most tiles. */
  readonly ratios: readonly GroupRatio[];
  /** Glazes that changed together with something else, so that no ratio is theirs. */
  readonly untold: SpacingFit["untold"];
  /** Power of the coat of each glaze by itself, where there are enough tiles. */
  readonly slopes: readonly GroupSlope[];
  readonly tiles: number;
}

/**
 * One glaze against another by one fit over the tiles of all, the power of the coat in common.
 * Glazes of which fewer than two tiles have a spacing are left out.
 *
 * @param seed Of the draws in tests of labels.
 * @returns null with fewer than two glazes, or too few tiles to fit them together.
 */
export function glazesCompared(all: readonly Tile[], seed: number): GlazesCompared | null {
  const measured = (glaze: string) =>
    all.filter((tile) => tile.glaze === glaze && tile.spacing.kind === "measured").length;
  const glazes = new Set(all.map(({ glaze }) => glaze).filter((each) => measured(each) >= FEWEST));
  if (glazes.size < 2) return null;
  const tiles = all.filter(
    ({ glaze, spacing }) => glazes.has(glaze) && spacing.kind !== "not measured",
  );
  const fit = fitSpacing(tiles, seed);
  if (!fit.ok) return null;
  const ofGlazes = <Group extends { readonly factor: string }>(groups: readonly Group[]) =>
    groups.filter(({ factor }) => factor === "glaze");
  return {
    ratios: ofGlazes(fit.value.ratios),
    untold: ofGlazes(fit.value.untold),
    slopes: ofGlazes(fit.value.slopes),
    tiles: fit.value.tiles,
  };
}
