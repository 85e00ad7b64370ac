import { lastAsked } from "../math/memo.ts";
import { strainIn } from "./bodyExpansion.ts";
import { type ElasticPiece, elasticPiece, PLACES_TOLD } from "./elasticPiece.ts";
import { CONVECTION_W_PER_M2K, LAYER_SHARE, radiationWPerM2K } from "./heatExchange.ts";
import { LAYERS, PLACES, pieceMesh } from "./pieceMesh.ts";
import { isFlat, type PieceShape } from "./pieceShape.ts";
import type { StrainNumbers } from "./strainNumbers.ts";
import { AROUND, BASE, DEEP, gapWPerM2K, LOAD, meanC, WALL } from "./wareState.ts";

/** Elastic piece and room for its temperatures; shared by all pieces of one shape. */
export interface PieceStress {
  readonly elastic: ElasticPiece;
  /** Share of the base in the temperature of every line, and free strain of every place. */
  readonly baseShare: Float64Array;
  readonly free: Float64Array;
}

const SHAPES = lastAsked<PieceStress>(24);

/** The elastic piece of a shape; worked out once. */
export function pieceStress(shape: PieceShape): PieceStress {
  return SHAPES.of(Object.values(shape).join(" "), () => {
    const mesh = pieceMesh(shape);
    return {
      elastic: elasticPiece(mesh),
      baseShare: new Float64Array(mesh.lines),
      free: new Float64Array(mesh.lines * PLACES),
    };
  });
}

/** What is changed about the temperatures of a piece before its stress is worked out. */
export interface Alteration {
  /** Times which all differences within the piece are taken. */
  readonly lag: number;
  /** Times which differences through wall and base are taken. */
  readonly deep: number;
}

export const UNALTERED: Alteration = { lag: 1, deep: 1 };

/**
 * Stress over strength of a piece in a state: what its free strains, hindered by each other, put
 * on a test bar that breaks as often.
 */
export function stressRatio(state: Float64Array, numbers: StrainNumbers): number {
  return strainedBar(state, numbers, { table: numbers.strain }) / numbers.strainToFailure;
}

/** Another dilation, and other lags where asked. */
interface StrainedBy {
  readonly table: Float64Array;
  readonly alteration?: Alteration;
}

/** Stress of the test bar over Young's modulus, with another dilation or other lags where asked. */
export function strainedBar(state: Float64Array, numbers: StrainNumbers, by: StrainedBy): number {
  strainPiece(state, numbers, by);
  return barStress(numbers.stress.elastic);
}

/** Works out the stress at every place of a piece, into `numbers.stress.elastic`. */
export function strainPiece(state: Float64Array, numbers: StrainNumbers, by: StrainedBy): void {
  putFreeStrain(state, numbers, by);
  numbers.stress.elastic.strain(numbers.stress.free);
}

/** Writes the free strain of every place of the section into `numbers.stress.free`. */
function putFreeStrain(state: Float64Array, numbers: StrainNumbers, by: StrainedBy): void {
  const { elastic, baseShare, free } = numbers.stress;
  const { mesh } = elastic;
  const { lag, deep } = by.alteration ?? UNALTERED;
  const flat = isFlat(numbers.shape);
  putBaseShare(state, numbers);
  const wallC = flat ? state[AROUND]! : meanC(state, WALL);
  const baseC = meanC(state, BASE);
  const rim = mesh.radius[mesh.lines - 1]!;
  for (let line = 0; line < mesh.lines; line++) {
    const share = baseShare[line]!;
    const place = mesh.radius[line]! / rim;
    const levelC = wallC + lag * (share * (baseC - wallC) + state[LOAD]! * (1 - place * place));
    for (let k = 0; k < PLACES; k++) {
      const throughBase = state[BASE + DEEP - 1 - k]! - baseC;
      const throughWall = flat ? 0 : state[WALL + k]! - wallC;
      const tempC = levelC + lag * deep * (share * throughBase + (1 - share) * throughWall);
      free[line * PLACES + k] = strainIn(by.table, tempC);
    }
  }
}

/**
 * How much of the difference between base and wall each line has: the two run into each other by
 * conduction, over a length at which clay loses as much from its faces as it passes on, as fins do.
 */
function putBaseShare(state: Float64Array, numbers: StrainNumbers): void {
  const { elastic, baseShare } = numbers.stress;
  const { mesh } = elastic;
  const { conductivity, wallM, baseM, baseSeesOut, wallSeesOut } = numbers;
  const tempC = meanC(state, BASE);
  const face = radiationWPerM2K(tempC) + CONVECTION_W_PER_M2K;
  const flat = isFlat(numbers.shape);
  const under = numbers.onEdge ? face * LAYER_SHARE : gapWPerM2K(numbers, tempC);
  const baseWPerM2K = face * (1 - baseSeesOut * (1 - LAYER_SHARE)) + under;
  const wallSeesBase = numbers.baseOverWall * (1 - baseSeesOut);
  const wallWPerM2K = face * (1 + wallSeesOut * LAYER_SHARE + wallSeesBase);
  const baseFin = finMm(conductivity * baseM, baseWPerM2K);
  const wallFin = finMm(conductivity * wallM, wallWPerM2K);
  const end = mesh.along[mesh.lines - 1]!;
  const turn = flat ? end : mesh.turnAt;
  const far = (2 * (end - turn)) / wallFin;
  const baseHolds =
    Math.sqrt(conductivity * baseM * baseWPerM2K) *
    (scaledBessel(turn / baseFin, 1) / scaledBessel(turn / baseFin, 0));
  const wallHolds = flat
    ? face * baseM
    : Math.sqrt(conductivity * wallM * wallWPerM2K) * ((1 - Math.exp(-far)) / (1 + Math.exp(-far)));
  const meeting = baseHolds / (baseHolds + wallHolds);
  const atTurn = scaledBessel(turn / baseFin, 0);
  for (let line = 0; line < mesh.lines; line++) {
    const way = mesh.along[line]!;
    if (way <= turn) {
      const within = scaledBessel(way / baseFin, 0) / atTurn;
      baseShare[line] = 1 - (1 - meeting) * within * Math.exp((way - turn) / baseFin);
    } else {
      const back = (2 * (end - way)) / wallFin;
      baseShare[line] =
        (meeting * Math.exp((turn - way) / wallFin) * (1 + Math.exp(-back))) / (1 + Math.exp(-far));
    }
  }
}

/** Length over which a sheet evens out a difference [mm]. */
function finMm(conductance: number, wPerM2K: number): number {
  return Math.sqrt(conductance / wPerM2K) * 1000;
}

/**
 * Modified Bessel function of the first kind over e^x, of order 0 or 1, for x from 0 on
 * (Abramowitz & Stegun 9.8.1 to 9.8.4, error under 3e−7).
 */
function scaledBessel(x: number, order: 0 | 1): number {
  const small = x < 3.75;
  const t = small ? (x / 3.75) * (x / 3.75) : 3.75 / x;
  let sum = 0;
  for (const term of small ? SMALL[order] : LARGE[order]) sum = sum * t + term;
  if (!small) return sum / Math.sqrt(x);
  return (order === 1 ? x * sum : sum) * Math.exp(-x);
}

/** Coefficients, highest power first. */
const SMALL = [
  [0.0045813, 0.0360768, 0.2659732, 1.2067492, 3.0899424, 3.5156229, 1],
  [0.00032411, 0.00301532, 0.02658733, 0.15084934, 0.51498869, 0.87890594, 0.5],
] as const;
const LARGE = [
  [
    0.00392377, -0.01647633, 0.02635537, -0.02057706, 0.00916281, -0.00157565, 0.00225319,
    0.01328592, 0.39894228,
  ],
  [
    -0.00420059, 0.01787654, -0.02895312, 0.02282967, -0.01031555, 0.00163801, -0.00362018,
    -0.03988024, 0.39894228,
  ],
] as const;

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
