import { thickestSaid } from "../ware/thickestSaid.ts";
import { type AssumedWare, wareOf } from "../ware/wareOf.ts";
import { computedLimits, type LimitFor, publishedLimits } from "./coolingLimits.ts";
import type { Schedule } from "./Schedule.ts";

/** The piece whose stress can be computed, with what is assumed of it; null when no body is named. */
export function pieceOf(ware: Schedule["ware"]): AssumedWare | null {
  if (!ware.body) return null;
  const thickest = ware.thickestMm;
  const wallMm = ware.wallMm ?? null;
  const baseMm = ware.baseMm ?? null;
  const taken = {
    wallMm: wallMm ?? (baseMm === null ? thickest : null),
    baseMm: baseMm ?? (wallMm === null ? thickest : null),
  };
  const piece = wareOf({
    body: ware.body,
    ...taken,
    widestMm: ware.widestMm,
    shelfMm: ware.shelfMm,
    footGapMm: ware.footGapMm,
    glazedSides: ware.glazedSides,
  });
  return { ...piece, assumed: [...thickestSaid({ wallMm, baseMm }, taken), ...piece.assumed] };
}

/** What the ware of a schedule stands: computed when its body is named, else as published. */
export function limitsFor(ware: Schedule["ware"]): LimitFor {
  const piece = pieceOf(ware);
  return piece === null ? publishedLimits(ware) : computedLimits(piece.ware);
}
