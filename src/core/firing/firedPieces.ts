import type { Curve } from "../curve/Curve.ts";
import type { Direction } from "../curve/edgeTimes.ts";
import type { FiringRecord, RecordedWare } from "../record/FiringRecord.ts";
import {
  COOLING_BANDS,
  computedLimits,
  type LimitFor,
  passageOf,
  withLimit,
  withStrain,
} from "../schedule/coolingLimits.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import { wareOf } from "../ware/givenWare.ts";
import { type Crossing, crossingsOf } from "../ware/inversions.ts";
import { openingStrains } from "../ware/openingStrain.ts";
import {
  heatingOf,
  type PieceStrain,
  pieceStrain,
  STRAIN_DRAWS,
  type StrainedPiece,
} from "../ware/pieceStrain.ts";
import { isJudged, weakestFirst } from "../ware/strainRisk.ts";
import type { KilnOpened } from "./FiringFacts.ts";

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

/** By what the crossings of a firing are judged. */
export interface FiredBy {
  /** At least one. */
  readonly pieces: readonly FiredPiece[];
  readonly strainOf?: StrainOf;
  /** The Curve while the kiln was shut; without it the whole. */
  readonly shut?: Curve;
  readonly opened?: KilnOpened | null;
}

/**
 * How a firing went through both inversions, each judged by the stress in the piece that bore it
 * least, on the way up only for a piece that had been fired before. From where the kiln was opened on
 * the readings are no longer the ware's, and nothing is judged by them.
 */
export function firedCrossings(curve: Curve, by: FiredBy): readonly Crossing[] {
  const { strainOf = strainsOnce(), shut = curve, opened = null } = by;
  const pieces = by.pieces.map((piece) => ({ piece, limitFor: computedLimits(piece) }));
  return crossingsOf(curve).map((each) => {
    const crossing =
      opened !== null && each.direction === "cooling" && opened.tempC > each.toC
        ? { ...each, openedC: opened.tempC }
        : each;
    const borne = pieces
      .filter(({ piece }) => isComputed(piece, crossing.direction))
      .map((of) => ({ ...of, computed: passageOf(strainOf(shut, of.piece), crossing) }));
    const [worst] = borne.toSorted(
      (a, b) =>
        Number(isJudged(crossing, b.piece.ware.body)) -
          Number(isJudged(crossing, a.piece.ware.body)) ||
        (b.computed?.ratio ?? 0) - (a.computed?.ratio ?? 0),
    );
    if (worst === undefined) return crossing;
    const limited =
      crossing.direction === "heating"
        ? crossing
        : withLimit(crossing, guideAt(crossing.band, worst.limitFor));
    return withStrain(limited, worst.computed, worst.piece.ware.body);
  });
}

function isComputed({ state }: FiredPiece, direction: Direction): boolean {
  return direction === "cooling" || heatingOf(state) === "computed";
}

function guideAt(name: string, limitFor: LimitFor): ReturnType<LimitFor> {
  const band = COOLING_BANDS.find((each) => each.name === name);
  return band === undefined ? null : limitFor(band);
}

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

/** The stress that a Curve puts into a piece. */
type StrainOf = (curve: Curve, piece: FiredPiece) => PieceStrain;

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
