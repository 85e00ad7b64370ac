import { CRISTOBALITE_BAND, hasCristobalite, QUARTZ_BAND } from "./inversionBands.ts";
import { limitingRate, SAFE_RATIO } from "./limitingRate.ts";
import type { Ware } from "./Ware.ts";

/**
 * Pieces in the order of what they stand, the weakest first: the one with the lowest computed limit
 * in either inversion, the lower one only with cristobalite. Pieces that stand the same keep their order.
 */
export function weakestFirst<Piece extends { readonly ware: Ware }>(
  pieces: readonly Piece[],
): readonly Piece[] {
  return pieces
    .map((piece) => ({ piece, limit: lowestLimit(piece.ware) }))
    .toSorted((a, b) => a.limit - b.limit)
    .map(({ piece }) => piece);
}

function lowestLimit(ware: Ware): number {
  const bands = hasCristobalite(ware.body) ? [QUARTZ_BAND, CRISTOBALITE_BAND] : [QUARTZ_BAND];
  return Math.min(...bands.map((band) => limitingRate(ware, { band, ratio: SAFE_RATIO })));
}
