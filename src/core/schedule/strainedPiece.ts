import type { Curve } from "../curve/Curve.ts";
import { type PieceStrain, pieceStrain } from "../ware/pieceStrain.ts";
import { pieceOf } from "./pieceOf.ts";
import type { Schedule } from "./Schedule.ts";

/** Temperatures at which a drafted kiln may come to be opened, that its stress is told for [°C]. */
const MAY_OPEN_C = [200, 150, 100] as const;

/**
 * What a planned Curve does to the ware of a schedule, opening included; null when no body is named.
 * A schedule has one piece and no name for it.
 */
export function strainedPiece(ware: Schedule["ware"], curve: Curve): PieceStrain | null {
  const piece = pieceOf(ware);
  if (piece === null) return null;
  return pieceStrain(curve, { name: "the ware", ware: piece.ware, state: ware.state }, MAY_OPEN_C);
}
