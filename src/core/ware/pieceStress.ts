import { strainIn } from "./bodyExpansion.ts";
import { type ElasticPiece, elasticPiece } from "./elasticPiece.ts";
import { CONVECTION_W_PER_M2K, LAYER_SHARE, radiationWPerM2K } from "./heatExchange.ts";
import { lastAsked } from "./lastAsked.ts";
import { PLACES, pieceMesh } from "./pieceMesh.ts";
import { isFlat, type PieceShape } from "./pieceShape.ts";
import type { StrainNumbers } from "./strainNumbers.ts";
import { AROUND, BASE, DEEP, gapWPerM2K, LOAD, meanC, WALL } from "./wareState.ts";
import { barStress } from "./weibull.ts";

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
