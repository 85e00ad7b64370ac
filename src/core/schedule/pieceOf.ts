import { type AssumedWare, wareOf } from "../ware/wareOf.ts";
import { computedLimits, type LimitFor } from "./coolingLimits.ts";
import type { Schedule } from "./Schedule.ts";

/** The piece that a schedule is judged by: what its file says of the ware, the rest assumed and said. */
export function pieceOf(ware: Schedule["ware"]): AssumedWare {
  return wareOf({
    body: ware.body,
    wallMm: ware.wallMm ?? null,
    baseMm: ware.baseMm ?? null,
    thickestMm: ware.thickestMm,
    widestMm: ware.widestMm,
    heightMm: ware.heightMm,
    stands: ware.stands,
    shelfMm: ware.shelfMm,
    footGapMm: ware.footGapMm,
    glazedSides: ware.glazedSides,
  });
}

/** The guides for the ware of a schedule. */
export function limitsFor(ware: Schedule["ware"]): LimitFor {
  return computedLimits(pieceOf(ware));
}
