import type { PieceShape } from "./pieceShape.ts";

/** Elements through the thickness: five places at which strain is told apart. */
export const LAYERS = 2;

/** Places through the thickness, from the outside or underside to the inside. */
export const PLACES = 2 * LAYERS + 1;

/** Elements along base, turn and wall. */
const COUNTS = { base: 7, turn: 2, wall: 7 } as const;

/** Each element is this much longer than its neighbour on the side of the turn. */
const GROWTH = 1.5;

/** Radius of the rounded inner corner over the thinner of wall and base; our own estimate. */
const INNER_ROUNDING = 0.5;

/** Half the section of a round piece: elements of eight nodes, line after line from the axis to the rim. */
export interface PieceMesh {
  /** Radius and height of every node [mm]. */
  readonly r: Float64Array;
  readonly z: Float64Array;
  /** Line and place through the thickness of every node. */
  readonly line: Int32Array;
  readonly place: Int32Array;
  /** Eight nodes an element: four corners turning left, then the sides between them. */
  readonly elements: Int32Array;
  /** Lines across the section. */
  readonly lines: number;
  /** Way along the middle of the clay from the axis to each line, and its radius there [mm]. */
  readonly along: Float64Array;
  readonly radius: Float64Array;
  /** Way from the axis to the middle of the turn; the whole way where there is no wall [mm]. */
  readonly turnAt: number;
}

/** The line down the middle of the clay. */
interface Midline {
  readonly baseMm: number;
  readonly turnMm: number;
  readonly wallMm: number;
  readonly turnRadiusMm: number;
  /** Angle of the wall over the shelf [rad]. */
  readonly slope: number;
}

/**
 * Cuts the section of a piece into elements: a level base, a turn, a straight wall.
 * The turn is rounded on the inside and square on the outside. Without a wall it is a disc.
 *
 * @param finer Cuts every element along the piece into so many; 1 is what everything is computed with.
 */
export function pieceMesh(shape: PieceShape, finer = 1): PieceMesh {
  const middle = midlineOf(shape);
  const { wallMm, baseMm } = shape;
  const hasWall = middle.wallMm > 0;
  const parts = [
    grown(middle.baseMm, COUNTS.base * finer, baseMm, finer).toReversed(),
    ...(hasWall
      ? [
          Array.from({ length: COUNTS.turn * finer }, () => middle.turnMm / (COUNTS.turn * finer)),
          grown(middle.wallMm, COUNTS.wall * finer, wallMm, finer),
        ]
      : []),
  ];
  const along = [0];
  for (const length of parts.flat()) {
    const from = along.at(-1)!;
    along.push(from + length / 2, from + length);
  }
  const lines = along.length;
  const nodes: number[][] = [];
  const index = new Map<number, number>();
  const radius = new Float64Array(lines);
  for (const [line, way] of along.entries()) {
    const at = onMidline(middle, way);
    radius[line] = at.r;
    const share = Math.min(1, Math.max(0, (way - middle.baseMm) / Math.max(middle.turnMm, 1e-9)));
    const thick = hasWall ? baseMm + (wallMm - baseMm) * share : baseMm;
    for (let place = 0; place < PLACES; place += line % 2 === 0 ? 1 : 2) {
      const inner = { r: at.r - (thick / 2) * at.sine, z: at.z + (thick / 2) * at.cosine };
      const outer = cornerAt(middle, shape, way) ?? {
        r: at.r + (thick / 2) * at.sine,
        z: at.z - (thick / 2) * at.cosine,
      };
      const out = 1 - place / (PLACES - 1);
      index.set(line * PLACES + place, nodes.length);
      nodes.push([
        inner.r + (outer.r - inner.r) * out,
        inner.z + (outer.z - inner.z) * out,
        line,
        place,
      ]);
    }
  }
  const elements: number[] = [];
  for (let line = 0; line + 2 < lines; line += 2)
    for (let place = 0; place + 2 < PLACES; place += 2)
      for (const [along2, across] of CORNERS_AND_SIDES)
        elements.push(index.get((line + along2) * PLACES + place + across)!);
  return {
    r: Float64Array.from(nodes, ([r]) => Math.max(0, r!)),
    z: Float64Array.from(nodes, ([, z]) => z!),
    line: Int32Array.from(nodes, ([, , line]) => line!),
    place: Int32Array.from(nodes, ([, , , place]) => place!),
    elements: Int32Array.from(elements),
    lines,
    along: Float64Array.from(along),
    radius,
    turnAt: middle.baseMm + middle.turnMm / 2,
  };
}

/** Lines and places from the first corner of an element, in the order of its nodes. */
const CORNERS_AND_SIDES = [
  [0, 0],
  [2, 0],
  [2, 2],
  [0, 2],
  [1, 0],
  [2, 1],
  [1, 2],
  [0, 1],
] as const;

/** Lengths that add up to a whole, the first about 0.6 of the thickness at most. */
function grown(wholeMm: number, count: number, thickMm: number, finer: number): number[] {
  const first = Math.min((0.6 * thickMm) / finer, wholeMm / count);
  const ratio = Math.min(growthFor(wholeMm / first, count), GROWTH * 4);
  const raw = Array.from({ length: count }, (_, i) => Math.exp(i * Math.log(ratio)));
  const sum = raw.reduce((total, each) => total + each, 0);
  return raw.map((each) => (each * wholeMm) / sum);
}

/** Ratio of neighbours with which so many lengths make a whole of so many times the first. */
function growthFor(whole: number, count: number): number {
  let [low, high] = [1, 10];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    let [sum, each] = [0, 1];
    for (let k = 0; k < count; k++, each *= middle) sum += each;
    if (sum > whole) high = middle;
    else low = middle;
  }
  return low;
}

function midlineOf(shape: PieceShape): Midline {
  const { wallMm, baseMm, footRadiusMm, rimRadiusMm, heightMm } = shape;
  if (heightMm <= baseMm + wallMm / 2)
    return { baseMm: footRadiusMm, turnMm: 0, wallMm: 0, turnRadiusMm: 0, slope: 0 };
  const thin = Math.min(wallMm, baseMm);
  const turnRadiusMm = Math.min(
    Math.max(wallMm, baseMm) / 2 + INNER_ROUNDING * thin,
    footRadiusMm - wallMm / 2 - 1,
  );
  const levelMm = Math.max(1, footRadiusMm - wallMm / 2 - turnRadiusMm);
  let slope = Math.PI / 2;
  let rise = 0;
  for (let i = 0; i < 8; i++) {
    const out =
      rimRadiusMm - (wallMm / 2) * Math.sin(slope) - levelMm - turnRadiusMm * Math.sin(slope);
    rise = heightMm - baseMm / 2 - turnRadiusMm * (1 - Math.cos(slope));
    slope = Math.atan2(Math.max(rise, 1), Math.max(0, out));
  }
  const wall = Math.max(wallMm / 2, rise / Math.sin(slope));
  return { baseMm: levelMm, turnMm: turnRadiusMm * slope, wallMm: wall, turnRadiusMm, slope };
}

/** Place and direction on the middle of the clay. */
function onMidline(middle: Midline, way: number) {
  const { baseMm, turnMm, turnRadiusMm, slope } = middle;
  if (way <= baseMm) return { r: way, z: 0, sine: 0, cosine: 1 };
  const angle = turnMm > 0 ? Math.min(slope, (way - baseMm) / turnRadiusMm) : 0;
  const beyond = Math.max(0, way - baseMm - turnMm);
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  return {
    r: baseMm + turnRadiusMm * sine + beyond * cosine,
    z: turnRadiusMm * (1 - cosine) + beyond * sine,
    sine,
    cosine,
  };
}

/** Outside of the turn: on along the underside to the corner, then up the wall; null elsewhere. */
function cornerAt(middle: Midline, shape: PieceShape, way: number) {
  const { baseMm, turnMm, slope } = middle;
  if (turnMm === 0 || way < baseMm || way > baseMm + turnMm) return null;
  const end = onMidline(middle, baseMm + turnMm);
  const foot = { r: baseMm, z: -shape.baseMm / 2 };
  const wall = {
    r: end.r + (shape.wallMm / 2) * end.sine,
    z: end.z - (shape.wallMm / 2) * end.cosine,
  };
  const corner = {
    r: wall.r - ((wall.z - foot.z) / Math.sin(slope)) * Math.cos(slope),
    z: foot.z,
  };
  const share = ((way - baseMm) / turnMm) * 2;
  const [from, to, on] = share < 1 ? [foot, corner, share] : [corner, wall, share - 1];
  return { r: from.r + (to.r - from.r) * on, z: from.z + (to.z - from.z) * on };
}
