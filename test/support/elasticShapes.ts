import { type ElasticPiece, elasticPiece } from "../../src/core/ware/elasticPiece.ts";
import { type PieceMesh, PLACES, pieceMesh } from "../../src/core/ware/pieceMesh.ts";
import type { PieceShape } from "../../src/core/ware/pieceShape.ts";

/** A mug and a dinner plate, rims upright. */
export const MUG_SHAPE: PieceShape = {
  wallMm: 6,
  baseMm: 8,
  footRadiusMm: 42.5,
  rimRadiusMm: 42.5,
  heightMm: 100,
};
export const PLATE_SHAPE: PieceShape = {
  wallMm: 7,
  baseMm: 7,
  footRadiusMm: 135,
  rimRadiusMm: 135,
  heightMm: 25,
};

/** A plain disc. */
export const discShape = (radiusMm: number, thickMm: number): PieceShape => ({
  wallMm: thickMm,
  baseMm: thickMm,
  footRadiusMm: radiusMm,
  rimRadiusMm: radiusMm,
  heightMm: thickMm,
});

/** An elastic piece under a free strain that depends on line and depth, 0 outside to 1 inside. */
export function strained(
  shape: PieceShape,
  free: (line: number, deep: number, mesh: PieceMesh) => number,
  finer = 1,
): ElasticPiece {
  const mesh = pieceMesh(shape, finer);
  const piece = elasticPiece(mesh);
  piece.strain(
    Float64Array.from({ length: mesh.lines * PLACES }, (_, i) =>
      free(Math.floor(i / PLACES), (i % PLACES) / (PLACES - 1), mesh),
    ),
  );
  return piece;
}

/** Any section cut into a grid of elements, under a free strain that depends on the place. */
export function strainedSection(
  grid: { readonly wide: number; readonly high: number },
  placeOf: (across: number, up: number) => { readonly r: number; readonly z: number },
  free: (place: { readonly r: number; readonly z: number }) => number,
): ElasticPiece {
  const index = new Map<string, number>();
  const nodes: { readonly r: number; readonly z: number }[] = [];
  for (let i = 0; i <= 2 * grid.wide; i++)
    for (let j = 0; j <= 2 * grid.high; j++) {
      if (i % 2 === 1 && j % 2 === 1) continue;
      index.set(`${i} ${j}`, nodes.length);
      nodes.push(placeOf(i / 2 / grid.wide, j / 2 / grid.high));
    }
  const elements: number[] = [];
  for (let i = 0; i < 2 * grid.wide; i += 2)
    for (let j = 0; j < 2 * grid.high; j += 2)
      for (const [a, b] of [
        [0, 0],
        [2, 0],
        [2, 2],
        [0, 2],
        [1, 0],
        [2, 1],
        [1, 2],
        [0, 1],
      ] as const)
        elements.push(index.get(`${i + a} ${j + b}`)!);
  const piece = elasticPiece({
    r: Float64Array.from(nodes, ({ r }) => r),
    z: Float64Array.from(nodes, ({ z }) => z),
    // Every node has a line of its own, so that its free strain can be given.
    line: Int32Array.from(nodes, (_, node) => node),
    place: new Int32Array(nodes.length),
    elements: Int32Array.from(elements),
    lines: nodes.length,
    along: new Float64Array(nodes.length),
    radius: Float64Array.from(nodes, ({ r }) => r),
    turnAt: 0,
  });
  const strains = new Float64Array(nodes.length * PLACES);
  for (const [node, place] of nodes.entries()) strains[node * PLACES] = free(place);
  piece.strain(strains);
  return piece;
}
