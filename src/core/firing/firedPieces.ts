import type { Schedule } from "../schedule/Schedule.ts";
import type { StrainedPiece } from "../ware/pieceStrain.ts";
import { wareOf } from "../ware/wareOf.ts";
import type { FiringRecord, RecordedWare } from "./FiringRecord.ts";

/** A kind of ware that a firing is judged by. */
export interface FiredPiece extends StrainedPiece {
  /** What it is, for a guide: `platters (stoneware cone 6, wall 11 mm, base 11 mm)`. */
  readonly meantFor: string;
  /** What was assumed about it, in plain words. */
  readonly assumed: readonly string[];
}

/** As much of a piece as a record or a schedule may say. */
type Said = Partial<Omit<RecordedWare, "clay" | "count">>;

/**
 * The ware of a firing: the record's pieces; what it does not say of one is taken from the schedule
 * that the firing is held against, and what that does not say either from an ordinary mug. Without a
 * list in the record there is one piece, the schedule's.
 */
export function firedPieces(
  record: FiringRecord | null,
  plan: Schedule | null,
): readonly FiredPiece[] {
  const listed = record?.ware ?? [];
  const planned = plan?.ware ?? {};
  if (listed.length > 0)
    return listed.map((piece) => {
      const taken = firedPiece(piece, planned);
      return { ...taken, name: piece.name, meantFor: `${piece.name} (${taken.meantFor})` };
    });
  const only = firedPiece({}, planned);
  return [{ ...only, name: only.isMug ? "an ordinary mug" : "the ware" }];
}

function firedPiece(piece: Said, planned: Said) {
  const sizes = (said: Said) => [said.wallMm, said.baseMm, said.thickestMm];
  const isSized = sizes(piece).some((mm) => mm != null);
  const thickness = isSized ? piece : planned;
  const taken = [
    ...(!piece.body && planned.body ? ["body"] : []),
    ...(!isSized && sizes(planned).some((mm) => mm != null) ? ["thickness"] : []),
    ...(piece.widestMm == null && planned.widestMm != null ? ["width"] : []),
  ];
  const { assumed, ...rest } = wareOf({
    body: piece.body ?? planned.body,
    wallMm: thickness.wallMm ?? null,
    baseMm: thickness.baseMm ?? null,
    thickestMm: thickness.thickestMm,
    widestMm: piece.widestMm ?? planned.widestMm ?? null,
    name: piece.name,
    heightMm: piece.heightMm ?? planned.heightMm,
    stands: piece.stands ?? planned.stands,
    shelfMm: piece.shelfMm ?? planned.shelfMm,
    footGapMm: piece.footGapMm ?? planned.footGapMm,
    glazedSides: piece.glazedSides ?? planned.glazedSides,
  });
  return {
    ...rest,
    state: piece.state ?? planned.state ?? null,
    assumed: [
      ...(taken.length === 0 ? [] : [`${taken.join(", ")} taken from the schedule`]),
      ...assumed,
    ],
  };
}
