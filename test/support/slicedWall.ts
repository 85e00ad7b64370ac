import type { Glazing, Layers } from "../../src/core/glaze/laminate.ts";

/** Stress in thin slices of a glazed wall [MPa], bare or lower face first. */
export interface SlicedWall {
  readonly slices: readonly {
    readonly midMm: number;
    readonly thickMm: number;
    readonly inGlaze: boolean;
    readonly mPa: number;
  }[];
  readonly glazeMPa: number;
  readonly forceNPerMm: number;
  readonly momentN: number;
}

/** Slices in the wall, and in each coat. */
const SLICES = 500;

/**
 * A glazed wall cut into slices, let go in small steps until its elastic energy is least.
 * Knows no formula of layered plates: each slice is stiffness × (strain of the wall there − its own).
 */
export function slicedWall(layers: Layers, glazing: Glazing, mismatch: number): SlicedWall {
  const { coatMm, wallMm } = layers;
  const glaze = (1000 * layers.glazeGPa) / (1 - layers.glazePoisson);
  const body = (1000 * layers.bodyGPa) / (1 - layers.bodyPoisson);
  const part = (from: number, thick: number, inGlaze: boolean) =>
    Array.from({ length: SLICES }, (_, i) => ({
      midMm: from + (thick * (i + 0.5)) / SLICES,
      thickMm: thick / SLICES,
      inGlaze,
    }));
  const cut = [
    ...(glazing === "both faces" ? part(-wallMm / 2 - coatMm, coatMm, true) : []),
    ...part(-wallMm / 2, wallMm, false),
    ...part(wallMm / 2, coatMm, true),
  ];
  const stiffness = (inGlaze: boolean) => (inGlaze ? glaze : body);
  let [middle, bend] = [0, 0];
  const stressOf = ({ midMm, inGlaze }: (typeof cut)[number]) =>
    stiffness(inGlaze) * (middle + bend * midMm + (inGlaze ? mismatch : 0));
  const sum = (pick: (slice: (typeof cut)[number]) => number) =>
    cut.reduce((total, slice) => total + slice.thickMm * pick(slice), 0);
  const stretch = sum(({ inGlaze }) => stiffness(inGlaze));
  const turn = sum(({ inGlaze, midMm }) => stiffness(inGlaze) * midMm ** 2);
  for (let step = 0; step < 120; step++) {
    middle -= sum(stressOf) / stretch;
    if (glazing !== "one face, wall held")
      bend -= sum((slice) => stressOf(slice) * slice.midMm) / turn;
  }
  const slices = cut.map((slice) => ({ ...slice, mPa: stressOf(slice) }));
  const inGlaze = slices.filter((slice) => slice.inGlaze);
  return {
    slices,
    glazeMPa: inGlaze.reduce((total, slice) => total + slice.mPa, 0) / inGlaze.length,
    forceNPerMm: sum(stressOf),
    momentN: sum((slice) => stressOf(slice) * slice.midMm),
  };
}
