import type { Plane } from "./PhotoMeasurement.ts";
import { barStrength, type RidgeLevels, ridgeLevels, ridges, SIGMA_OF_WIDTH } from "./ridges.ts";

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
    leastVisibleWidth: leastVisible(levels, smoothings[0]!),
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

/** A picture of yes and no, row by row: 1 where a crack is, else 0. */
export interface Mask {
  readonly width: number;
  readonly height: number;
  readonly bits: Uint8Array;
}

/**
 * Places above the low level that hang together with one above the high level, corner to corner
 * counting as together; the outermost rows and columns are left out.
 */
function aboveThreshold(
  strength: Plane,
  level: { readonly low: number; readonly high: number },
): Mask {
  const { width, height, values } = strength;
  const bits = new Uint8Array(values.length);
  const waiting: number[] = [];
  const inside = (i: number) => {
    const x = i % width;
    return x > 0 && x < width - 1 && i >= width && i < values.length - width;
  };
  const take = (i: number, least: number) => {
    if (bits[i] === 1 || !(values[i]! > least) || !inside(i)) return;
    bits[i] = 1;
    waiting.push(i);
  };
  for (let i = 0; i < values.length; i++) {
    take(i, level.high);
    for (let from = waiting.pop(); from !== undefined; from = waiting.pop())
      for (const down of [-width, 0, width])
        for (const across of [-1, 0, 1]) take(from + down + across, level.low);
  }
  return { width, height, bits };
}

/** Rounds of cutting; a spur on a spur goes in the second. */
const ROUNDS = 2;

/**
 * Thin lines without what is no crack: side twigs shorter than `spur`, which thinning leaves, and
 * pieces that hang together with nothing and have fewer places than `least`, which are specks.
 */
export function withoutSpurs(
  lines: Mask,
  shortest: { readonly spur: number; readonly least: number },
): Mask {
  const bits = lines.bits.slice();
  const around = ring(lines.width);
  for (let round = 0; round < ROUNDS; round++)
    for (let i = 0; i < bits.length; i++) {
      if (bits[i] === 0 || neighboursOf(bits, i, around).length !== 1) continue;
      const twig = followed(bits, i, { around, most: shortest.spur });
      if (twig !== null) for (const at of twig) bits[at] = 0;
    }
  dropSmall(bits, around, shortest.least);
  return { ...lines, bits };
}

function neighboursOf(bits: Uint8Array, i: number, around: readonly number[]): readonly number[] {
  const found: number[] = [];
  for (const step of around) if (bits[i + step] === 1) found.push(i + step);
  return found;
}

/** Places from a loose end up to a joint; null when none comes soon enough. */
function followed(
  bits: Uint8Array,
  end: number,
  { around, most }: { readonly around: readonly number[]; readonly most: number },
): readonly number[] | null {
  const path: number[] = [];
  let here: number | undefined = end;
  while (here !== undefined && path.length <= most) {
    path.push(here);
    const ahead: readonly number[] = neighboursOf(bits, here, around).filter(
      (at) => !path.includes(at),
    );
    if (ahead.length > 1) return path.length > 1 ? path.slice(0, -1) : null;
    here = ahead[0];
  }
  return null;
}

function dropSmall(bits: Uint8Array, around: readonly number[], least: number): void {
  const seen = new Uint8Array(bits.length);
  for (let i = 0; i < bits.length; i++) {
    if (bits[i] === 0 || seen[i] === 1) continue;
    const piece = [i];
    seen[i] = 1;
    for (let at = 0; at < piece.length; at++)
      for (const next of neighboursOf(bits, piece[at]!, around))
        if (seen[next] === 0) {
          seen[next] = 1;
          piece.push(next);
        }
    if (piece.length < least) for (const at of piece) bits[at] = 0;
  }
}

/**
 * A mask thinned to lines one place wide that keep its shape and its joints.
 * The outermost rows and columns of the mask must be empty.
 *
 * @see SOURCES["zhang-suen-1984"]
 */
export function thinnedMask(mask: Mask): Mask {
  const bits = mask.bits.slice();
  let candidates: number[] = [];
  for (let i = 0; i < bits.length; i++) if (bits[i] === 1) candidates.push(i);
  for (let goes = true; goes; ) {
    goes = false;
    for (const turn of [0, 1] as const) {
      const leaving = candidates.filter((i) => mayGo(bits, i, { width: mask.width, turn }));
      for (const i of leaving) bits[i] = 0;
      if (leaving.length === 0) continue;
      goes = true;
      candidates = candidates.filter((i) => bits[i] === 1);
    }
  }
  return { ...mask, bits };
}

/** Steps to the eight neighbours, clockwise from the one above. */
function ring(width: number): readonly number[] {
  return [-width, 1 - width, 1, width + 1, width, width - 1, -1, -width - 1];
}

function mayGo(
  bits: Uint8Array,
  i: number,
  { width, turn }: { readonly width: number; readonly turn: 0 | 1 },
): boolean {
  const up = bits[i - width]!;
  const upRight = bits[i - width + 1]!;
  const right = bits[i + 1]!;
  const downRight = bits[i + width + 1]!;
  const down = bits[i + width]!;
  const downLeft = bits[i + width - 1]!;
  const left = bits[i - 1]!;
  const upLeft = bits[i - width - 1]!;
  const count = up + upRight + right + downRight + down + downLeft + left + upLeft;
  if (count < 2 || count > 6) return false;
  // Places that are set and follow one that is not, once around.
  const rises =
    (up & ~upLeft) +
    (upRight & ~up) +
    (right & ~upRight) +
    (downRight & ~right) +
    (down & ~downRight) +
    (downLeft & ~down) +
    (left & ~downLeft) +
    (upLeft & ~left);
  if (rises !== 1) return false;
  return turn === 0
    ? up * right * down === 0 && right * down * left === 0
    : up * right * left === 0 && up * down * left === 0;
}
