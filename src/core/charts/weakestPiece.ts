import type { FiredPiece } from "../firing/firedPieces.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../ware/inversionBands.ts";
import { limitingRate, limitingRateAt } from "../ware/limitingRate.ts";
import type { Ware } from "../ware/Ware.ts";

/** Stress over strength at which the computed limits are taken: half of what the ware stands. */
const HALF_STRENGTH = 0.5;

/** Where the computed limit is drawn, and how finely [°C]. */
const FROM_C = 700;
const TO_C = 100;
const STEP_C = 10;

/** The piece that stands the least: the lowest computed limit in either inversion; null without pieces. */
export function weakestPiece(pieces: readonly FiredPiece[]): FiredPiece | null {
  const [first, ...others] = pieces.map((piece) => ({ piece, limit: lowestLimit(piece.ware) }));
  if (first === undefined) return null;
  return others.reduce((a, b) => (b.limit < a.limit ? b : a), first).piece;
}

/** The cooling rate at which ware reaches half its strength, hot end first; rates signed [°C/h]. */
export function computedLimitPoints(
  ware: Ware,
): readonly { readonly tempC: number; readonly rateCPerHour: number }[] {
  return Array.from({ length: (FROM_C - TO_C) / STEP_C + 1 }, (_, i) => {
    const tempC = FROM_C - i * STEP_C;
    return { tempC, rateCPerHour: 0 - limitingRateAt(ware, { tempC, ratio: HALF_STRENGTH }) };
  });
}

function lowestLimit(ware: Ware): number {
  return Math.min(
    ...[QUARTZ_BAND, CRISTOBALITE_BAND].map((band) =>
      limitingRate(ware, { band, ratio: HALF_STRENGTH }),
    ),
  );
}
