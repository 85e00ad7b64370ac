import { type ElasticPiece, PLACES_TOLD } from "./elasticPiece.ts";
import { LAYERS } from "./pieceMesh.ts";

/**
 * Scatter of the strength of clay bodies, Weibull's modulus: hardly ever outside 6 to 15, so 7 to 13
 * in eight cases of ten; from memory. Whole numbers.
 */
export const WEIBULL = { value: 10, low: 7, high: 13 } as const;

/**
 * Bar by which strength is measured: 3 × 4 mm over 40 mm between the supports, as laboratories bend
 * ceramics; common practice, from memory. Bars of 12 mm over 100 mm, as of a studio's own clay,
 * would make every ratio 0.71 of this.
 */
const BAR_MM3 = 3 * 4 * 40;

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
  for (let at = 0; at < volumes.length; at++) {
    const middle = (stress[at * 4]! + stress[at * 4 + 1]!) / 2;
    const half = (stress[at * 4]! - stress[at * 4 + 1]!) / 2;
    const shear = stress[at * 4 + 3]!;
    const reach = Math.sqrt(half * half + shear * shear);
    sum +=
      volumes[at]! *
      (power(middle + reach, modulus) +
        power(middle - reach, modulus) +
        power(stress[at * 4 + 2]!, modulus));
  }
  if (sum <= 0) return 0;
  const barVolume = barMm3 / (2 * (modulus + 1) * (modulus + 1));
  return Math.exp(Math.log(sum / barVolume) / modulus);
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
interface LargestTension {
  /** Over Young's modulus. */
  readonly tension: number;
  /** Element along the piece, from the axis on, and whether it is on the inside. */
  readonly along: number;
  readonly inside: boolean;
}

/** Weights by which the three places across an element tell what is on its inner face. */
const FACE = [1 / 1.2 - 1 / (2 * Math.sqrt(0.6)), 1 - 1 / 0.6, 1 / 1.2 + 1 / (2 * Math.sqrt(0.6))];

/** The largest tension on either face of a piece. */
export function largestTension({ stress, volumes }: ElasticPiece): LargestTension {
  let largest: LargestTension = { tension: 0, along: 0, inside: false };
  for (let at = 0; at < volumes.length; at += 3) {
    const element = Math.floor(at / PLACES_TOLD);
    for (const inside of [false, true]) {
      if (element % LAYERS !== (inside ? LAYERS - 1 : 0)) continue;
      const face = [0, 1, 2, 3].map((kind) =>
        FACE.reduce((sum, weight, k) => {
          const place = at + (inside ? k : 2 - k);
          return sum + weight * stress[place * 4 + kind]!;
        }, 0),
      );
      const [radial, axial, around, shear] = face as [number, number, number, number];
      const reach = Math.sqrt(((radial - axial) / 2) ** 2 + shear * shear);
      const tension = Math.max((radial + axial) / 2 + reach, around);
      if (tension > largest.tension)
        largest = { tension, along: Math.floor(element / LAYERS), inside };
    }
  }
  return largest;
}
