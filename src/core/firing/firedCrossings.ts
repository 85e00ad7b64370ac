import type { Direction } from "../curve/Band.ts";
import type { Curve } from "../curve/Curve.ts";
import {
  COOLING_BANDS,
  computedLimits,
  type LimitFor,
  passageOf,
  withLimit,
  withStrain,
} from "../schedule/coolingLimits.ts";
import type { Crossing } from "../ware/crossingsOf.ts";
import { crossingsOf } from "../ware/crossingsOf.ts";
import { heatingOf } from "../ware/pieceStrain.ts";
import { isJudged } from "../ware/strainRisk.ts";
import type { FiredPiece } from "./firedPieces.ts";
import type { KilnOpened } from "./kilnOpened.ts";
import { type StrainOf, strainsOnce } from "./strainsOnce.ts";

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
