import { CRISTOBALITE_BAND, QUARTZ_BAND } from "./inversionBands.ts";
import { limitingRate } from "./limitingRate.ts";
import { SAFE_RATIO } from "./safeRatio.ts";
import type { Ware } from "./Ware.ts";

/**
 * Pieces in the order of what they stand, the weakest first: the one with the lowest computed limit
 * in either inversion. Pieces that stand the same keep their order.
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
  return Math.min(
    ...[QUARTZ_BAND, CRISTOBALITE_BAND].map((band) =>
      limitingRate(ware, { band, ratio: SAFE_RATIO }),
    ),
  );
}
