import type { Direction } from "../curve/Band.ts";
import type { Curve } from "../curve/Curve.ts";
import {
  COOLING_BANDS,
  computedLimits,
  type LimitFor,
  withStrain,
} from "../schedule/coolingLimits.ts";
import type { Crossing } from "../ware/Crossing.ts";
import { crossingsOf } from "../ware/crossingsOf.ts";
import { heatingOf } from "../ware/pieceStrain.ts";
import type { WareSize } from "../ware/WareSize.ts";
import type { FiredPiece } from "./firedPieces.ts";
import { type StrainOf, strainsOnce } from "./strainsOnce.ts";

/** A piece, and what it stands. */
interface LimitedPiece {
  readonly piece: FiredPiece;
  readonly limitFor: LimitFor;
}

/**
 * How a firing went through both inversions, judged for the piece that stands the least.
 * With pieces whose body is known the limit is computed and the worst stress over strength given,
 * on the way up only for a piece that had been fired before; without, the limit is the published
 * one for ware of this size.
 */
export function firedCrossings(
  curve: Curve,
  size: WareSize,
  fired: { readonly pieces: readonly FiredPiece[]; readonly strainOf?: StrainOf },
): readonly Crossing[] {
  const { pieces, strainOf = strainsOnce() } = fired;
  const limited = pieces.map((piece) => ({ piece, limitFor: computedLimits(piece.ware) }));
  return crossingsOf(curve, { ware: size }).map((crossing) => {
    const weakest = weakestAt(crossing, limited);
    if (weakest === null) return crossing;
    const { piece, limit } = weakest;
    const strained = withStrain(crossing, strainOf(curve, piece));
    return crossing.direction === "heating"
      ? strained
      : {
          ...strained,
          limitCPerHour: limit.limitCPerHour,
          limitBasis: limit.why,
          limitMeantFor: `${piece.name} (${limit.meantFor})`,
        };
  });
}

/** The piece with the lowest limit in this band, of those whose stress is computed this way. */
function weakestAt(
  crossing: { readonly band: string; readonly direction: Direction },
  limited: readonly LimitedPiece[],
) {
  const band = COOLING_BANDS.find(({ name }) => name === crossing.band);
  if (band === undefined) return null;
  return limited
    .filter(
      ({ piece }) => crossing.direction === "cooling" || heatingOf(piece.state) === "computed",
    )
    .map(({ piece, limitFor }) => ({ piece, limit: limitFor(band) }))
    .reduce<{ piece: FiredPiece; limit: ReturnType<LimitFor> } | null>(
      (a, b) => (a !== null && a.limit.limitCPerHour <= b.limit.limitCPerHour ? a : b),
      null,
    );
}
