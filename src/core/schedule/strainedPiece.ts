import type { Curve } from "../curve/Curve.ts";
import { type PieceStrain, pieceStrain } from "../ware/pieceStrain.ts";
import { pieceOf } from "./pieceOf.ts";
import type { Schedule } from "./Schedule.ts";

/** Temperatures at which a drafted kiln may come to be opened, that its stress is told for [°C]. */
const MAY_OPEN_C = [200, 150, 100] as const;

/**
 * What a planned Curve does to the ware of a schedule, opening included.
 * A schedule has one piece and no name for it.
 */
export function strainedPiece(ware: Schedule["ware"], curve: Curve): PieceStrain {
  const { ware: piece } = pieceOf(ware);
  return pieceStrain(curve, { name: "the ware", ware: piece, state: ware.state }, MAY_OPEN_C);
}
