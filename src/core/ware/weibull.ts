import type { ElasticPiece } from "./elasticPiece.ts";
import { LAYERS } from "./pieceMesh.ts";

/** Scatter of the strength of clay bodies, Weibull's modulus; 6 to 15, from memory. */
export const WEIBULL = { value: 10, low: 6, high: 15 } as const;

/**
 * Bar by which strength is measured: 3 × 4 mm over 40 mm between the supports, as laboratories bend
 * ceramics; common practice, from memory. Bars of 12 mm over 100 mm, as of a studio's own clay,
 * would make every ratio 0.71 of this.
 */
const BAR_MM3 = 3 * 4 * 40;

/** Gauss's rule of three places through an element, as shares of the way between its own two. */
const THREE = Math.sqrt(0.6);
const GAUSS = 1 / Math.sqrt(3);
const SHARES = Float64Array.of((1 - THREE / GAUSS) / 2, 0.5, (1 + THREE / GAUSS) / 2);
const WEIGHTS = Float64Array.of(5 / 18, 8 / 18, 5 / 18);

/** Share of the way from the outer to the inner Gauss place of an element at which its face lies. */
const FACE = [(1 - 1 / GAUSS) / 2, (1 + 1 / GAUSS) / 2] as const;

/**
 * Stress of a test bar, bent over three points, that breaks as often as the piece does: tensions
 * in all three main directions, each by itself, summed over the volume by Weibull's theory.
 *
 * @param modulus A whole number.
 * @returns Over Young's modulus.
 */
export function barStress(
  piece: ElasticPiece,
  modulus: number = WEIBULL.value,
  barMm3: number = BAR_MM3,
): number {
  const { stress, volumes } = piece;
  let sum = 0;
  for (let at = 0; at < volumes.length; at += 4)
    sum +=
      (volumes[at]! + volumes[at + 3]!) * through(stress, at, at + 3, modulus) +
      (volumes[at + 1]! + volumes[at + 2]!) * through(stress, at + 1, at + 2, modulus);
  if (sum <= 0) return 0;
  const barVolume = barMm3 / (2 * (modulus + 1) * (modulus + 1));
  return Math.exp(Math.log(sum / barVolume) / modulus);
}

/** Mean of the main tensions, each to a power, from an outer to an inner Gauss place and beyond. */
function through(stress: Float64Array, outer: number, inner: number, modulus: number): number {
  const [o, i] = [outer * 4, inner * 4];
  let sum = 0;
  for (let k = 0; k < 3; k++) {
    const to = SHARES[k]!;
    const from = 1 - to;
    const radial = stress[o]! * from + stress[i]! * to;
    const axial = stress[o + 1]! * from + stress[i + 1]! * to;
    const around = stress[o + 2]! * from + stress[i + 2]! * to;
    const shear = stress[o + 3]! * from + stress[i + 3]! * to;
    const middle = (radial + axial) / 2;
    const half = (radial - axial) / 2;
    const reach = Math.sqrt(half * half + shear * shear);
    sum +=
      WEIGHTS[k]! *
      (power(middle + reach, modulus) + power(middle - reach, modulus) + power(around, modulus));
  }
  return sum;
}

function power(value: number, modulus: number): number {
  if (value <= 0) return 0;
  let result = 1;
  let base = value;
  for (let left = modulus; left > 0; left >>= 1) {
    if ((left & 1) === 1) result *= base;
    base *= base;
  }
  return result;
}

/** Where the largest tension of a piece is. */
export interface LargestTension {
  /** Over Young's modulus. */
  readonly tension: number;
  /** Element along the piece, from the axis on, and whether it is on the inside. */
  readonly along: number;
  readonly inside: boolean;
}

/** The largest tension on either face of a piece. */
export function largestTension({ stress, volumes }: ElasticPiece): LargestTension {
  let largest: LargestTension = { tension: 0, along: 0, inside: false };
  for (let at = 0; at < volumes.length; at += 4) {
    const layer = (at / 4) % LAYERS;
    for (const [side, share] of FACE.entries()) {
      if (side === 0 ? layer !== 0 : layer !== LAYERS - 1) continue;
      for (const [outer, inner] of [
        [at, at + 3],
        [at + 1, at + 2],
      ] as const) {
        const tension = mainTension(stress, outer, inner, share);
        if (tension > largest.tension)
          largest = { tension, along: Math.floor(at / 4 / LAYERS), inside: side === 1 };
      }
    }
  }
  return largest;
}

function mainTension(stress: Float64Array, outer: number, inner: number, share: number): number {
  const between = (kind: number) =>
    stress[outer * 4 + kind]! * (1 - share) + stress[inner * 4 + kind]! * share;
  const half = (between(0) - between(1)) / 2;
  const shear = between(3);
  const reach = Math.sqrt(half * half + shear * shear);
  return Math.max((between(0) + between(1)) / 2 + reach, between(2));
}
