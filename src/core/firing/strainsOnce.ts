import type { Curve } from "../curve/Curve.ts";
import { type PieceStrain, pieceStrain } from "../ware/pieceStrain.ts";
import type { FiredPiece } from "./firedPieces.ts";

/** The stress that a Curve puts into a piece. */
export type StrainOf = (curve: Curve, piece: FiredPiece) => PieceStrain;

/** Computes each Curve and piece once, however often it is asked for. */
export function strainsOnce(): StrainOf {
  const known = new Map<Curve, Map<FiredPiece, PieceStrain>>();
  return (curve, piece) => {
    const ofCurve = known.get(curve) ?? new Map<FiredPiece, PieceStrain>();
    const strain = ofCurve.get(piece) ?? pieceStrain(curve, piece);
    known.set(curve, ofCurve.set(piece, strain));
    return strain;
  };
}
