import type { WareGeometry } from "./Ware.ts";

/** A round piece as it is computed: a level base and a straight wall, or a disc. */
export interface PieceShape {
  readonly wallMm: number;
  readonly baseMm: number;
  /** Outer radius of the base, and of the rim. */
  readonly footRadiusMm: number;
  readonly rimRadiusMm: number;
  /** From the shelf's side of the base to the rim; the thickness alone for a disc. */
  readonly heightMm: number;
}

/** Up to here a piece whose height is not known is as high as a mug, from there on as low as a plate [mm]. */
const MUG_WIDE_MM = 120;
const PLATE_WIDE_MM = 240;

/** Height over width of a mug and of a plate; our own estimate. */
const MUG_HEIGHT = 1.15;
const PLATE_HEIGHT = 0.09;

/** A piece lower than this over its thickness has no wall: a tile, a slab, a brick. */
const FLAT_HEIGHT = 1.5;

/** The round piece that stands for a piece. Square ones and slabs are taken as round and as wide. */
export function pieceShape(geometry: WareGeometry): PieceShape {
  const { wallMm, baseMm, footprintRadiusMm } = geometry;
  const heightMm = geometry.heightMm ?? likelyHeightMm(2 * footprintRadiusMm);
  const flat = geometry.stands === "on edge" || heightMm <= FLAT_HEIGHT * Math.max(baseMm, wallMm);
  return {
    wallMm,
    baseMm,
    footRadiusMm: Math.max(geometry.footRadiusMm ?? footprintRadiusMm, baseMm),
    rimRadiusMm: Math.max(footprintRadiusMm, baseMm),
    heightMm: flat ? baseMm : heightMm,
  };
}

/** Whether a piece is a disc, a tile or a block, with no wall of its own. */
export function isFlat({ heightMm, baseMm }: PieceShape): boolean {
  return heightMm <= baseMm;
}

/** What the name of a piece says of its shape. */
interface NamedShape {
  readonly flat: boolean;
  readonly heightOverWidth: number;
  readonly footOverWidth: number;
}

/** Shapes by the words for them; our own estimate. A foot is as wide as the piece where that is harder on it. */
const NAMED: readonly (readonly [RegExp, NamedShape])[] = [
  [
    /\b(?:tiles?|slabs?|plaques?|trivets?|coasters?|bricks?|discs?|test bars?)\b/i,
    { flat: true, heightOverWidth: 0, footOverWidth: 1 },
  ],
  [
    /\b(?:plates?|platters?|saucers?|trays?)\b/i,
    { flat: false, heightOverWidth: PLATE_HEIGHT, footOverWidth: 1 },
  ],
  [/\bbowls?\b/i, { flat: false, heightOverWidth: 0.45, footOverWidth: 0.55 }],
  [
    /\b(?:mugs?|cups?|beakers?|tumblers?|jars?|cylinders?)\b/i,
    { flat: false, heightOverWidth: MUG_HEIGHT, footOverWidth: 1 },
  ],
  [
    /\b(?:vases?|bottles?|jugs?|pitchers?)\b/i,
    { flat: false, heightOverWidth: 1.8, footOverWidth: 0.8 },
  ],
];

/** The shape that a name says, by the first word for one; null when it says none. */
export function shapeNamed(name: string): NamedShape | null {
  return NAMED.find(([words]) => words.test(name))?.[1] ?? null;
}

/** Height of a piece of which only the width is known: narrow ones are mugs, wide ones plates [mm]. */
export function likelyHeightMm(wideMm: number): number {
  const share = (wideMm - MUG_WIDE_MM) / (PLATE_WIDE_MM - MUG_WIDE_MM);
  const plate = Math.min(1, Math.max(0, share));
  return tenths(wideMm * (MUG_HEIGHT + (PLATE_HEIGHT - MUG_HEIGHT) * plate));
}

/** To a tenth of a millimetre: no guess is better. */
export function tenths(mm: number): number {
  return Math.round(mm * 10) / 10;
}
