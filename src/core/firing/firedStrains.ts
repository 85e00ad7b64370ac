import type { Curve } from "../curve/Curve.ts";
import { openingStrains } from "../ware/openingStrain.ts";
import { type PieceStrain, STRAIN_DRAWS } from "../ware/pieceStrain.ts";
import { weakestFirst } from "../ware/weakestFirst.ts";
import type { FiredPiece } from "./firedPieces.ts";
import type { StrainOf } from "./strainsOnce.ts";

/**
 * What a firing did to each piece, the one that stands the least first.
 *
 * @param curve Of the hottest zone, while the kiln was shut.
 * @param fired.openedC How hot the kiln was when it was opened; null when that is not known.
 */
export function firedStrains(
  curve: Curve,
  fired: {
    readonly pieces: readonly FiredPiece[];
    readonly strainOf: StrainOf;
    readonly openedC: number | null;
  },
): readonly PieceStrain[] {
  const { pieces, strainOf, openedC } = fired;
  return weakestFirst(pieces).map((piece) => ({
    ...strainOf(curve, piece),
    openings: openedC === null ? [] : openingStrains(piece.ware, [openedC], STRAIN_DRAWS),
  }));
}
