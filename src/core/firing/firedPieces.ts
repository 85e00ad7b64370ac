import type { StrainedPiece } from "../ware/pieceStrain.ts";
import { thickestSaid } from "../ware/thickestSaid.ts";
import { wareOf } from "../ware/wareOf.ts";
import type { FiringRecord } from "./FiringRecord.ts";

/** A kind of ware whose stress can be computed, because the record names its body. */
export interface FiredPiece extends StrainedPiece {
  /** What was assumed about it, in plain words. */
  readonly assumed: readonly string[];
}

/** The ware of a record that names a body; the thickest part stands in for a wall that is not given. */
export function firedPieces(record: FiringRecord | null): readonly FiredPiece[] {
  return (record?.ware ?? []).flatMap((piece) => {
    if (piece.body === null) return [];
    const thickest = piece.thickestMm;
    const taken = {
      wallMm: piece.wallMm ?? (piece.baseMm === null ? thickest : null),
      baseMm: piece.baseMm ?? thickest,
    };
    const { ware, assumed } = wareOf({
      body: piece.body,
      ...taken,
      widestMm: piece.widestMm,
      shelfMm: piece.shelfMm,
      footGapMm: piece.footGapMm,
      glazedSides: piece.glazedSides,
    });
    return [
      {
        name: piece.name,
        ware,
        state: piece.state,
        assumed: [...thickestSaid(piece, taken), ...assumed],
      },
    ];
  });
}
