import { aboveThreshold, type Mask } from "./aboveThreshold.ts";
import type { Plane } from "./blurred.ts";
import { type RidgeLevels, ridgeLevels } from "./ridgeLevels.ts";
import { barStrength, ridges, SIGMA_OF_WIDTH } from "./ridges.ts";
import { thinnedMask } from "./thinnedMask.ts";
import { withoutSpurs } from "./withoutSpurs.ts";

/** Smoothings, over the least one that fits the width: cracks of one tile differ in width. */
const SCALES = [1, Math.SQRT2, 2];
/** Scatters above the ground at which a crack begins, and down to which it is followed. */
const FAR_SIGMAS = 6;
const NEAR_SIGMAS = 3;
/** Strength at which a crack begins, as a share of the usual crack's; it is followed to half that. */
const BEGIN_SHARE = 0.4;
const FOLLOW_SHARE = 0.5;
/** A crack is at least so many times as long as it is wide, else it is a speck; own judgement. */
const SPECK_WIDTHS = 6;
/** Twigs that thinning leaves reach to the side of the band at most, and a little. */
const SPUR_WIDTHS = 1.5;
/** Darkness of an inked crack as a share of the ground, for saying what would have been seen. */
const INKED = 0.5;

/** Cracks as thin lines. */
export interface CrackLines {
  readonly lines: Mask;
  /** Places on a line, about its length in pixels. */
  readonly length: number;
  readonly smoothings: readonly number[];
  readonly share: number;
  /** Narrowest inked crack that would have been found [px]. */
  readonly leastVisibleWidth: number;
}

/**
 * The cracks in an evened-out picture as lines one place wide.
 *
 * @param search.width Full width of a crack [px].
 * @param search.share Strength at which a crack begins, over the usual crack's; 0.4 when not said.
 */
export function crackLines(
  flat: Plane,
  search: { readonly width: number; readonly share?: number },
): CrackLines {
  const { width, share = BEGIN_SHARE } = search;
  const smoothings = SCALES.map((scale) => scale * SIGMA_OF_WIDTH * width);
  const strength = ridges(flat, smoothings);
  const levels = ridgeLevels(strength, FAR_SIGMAS);
  const high = Math.max(levels.ground + FAR_SIGMAS * levels.scatter, share * levels.crest);
  const low = Math.max(
    levels.ground + NEAR_SIGMAS * levels.scatter,
    FOLLOW_SHARE * share * levels.crest,
  );
  const lines = withoutSpurs(thinnedMask(aboveThreshold(strength, { low, high })), {
    spur: Math.ceil(SPUR_WIDTHS * width),
    least: Math.ceil(SPECK_WIDTHS * width),
  });
  return {
    lines,
    length: lines.bits.reduce((sum, bit) => sum + bit, 0),
    smoothings,
    share,
    leastVisibleWidth: leastVisible(levels, smoothings[0] as number),
  };
}

/** Width at which an inked bar just stands far above the noise; strength grows with it below 2 sigma. */
function leastVisible({ ground, scatter }: RidgeLevels, sigma: number): number {
  const wanted = ground + FAR_SIGMAS * scatter;
  let [low, high] = [0, 2 * sigma];
  for (let step = 0; step < 40; step++) {
    const width = (low + high) / 2;
    if (barStrength({ width, contrast: INKED, sigma }) < wanted) low = width;
    else high = width;
  }
  return high;
}
