import type { Curve } from "../curve/Curve.ts";
import { computedLimits, strainedCrossings } from "../schedule/coolingLimits.ts";
import type { Crossing } from "../ware/Crossing.ts";
import { crossingsOf } from "../ware/crossingsOf.ts";
import type { WareSize } from "../ware/WareSize.ts";
import type { FiredPiece } from "./firedPieces.ts";

/**
 * How a firing went through both inversions, judged for the piece that stands the least.
 * With pieces whose body is known the limit is computed and the worst stress over strength given;
 * without, the limit is the published one for ware of this size.
 */
export function firedCrossings(
  curve: Curve,
  size: WareSize,
  pieces: readonly FiredPiece[],
): readonly Crossing[] {
  const [first, ...others] = pieces.map((piece) => judgedFor(curve, size, piece));
  if (first === undefined) return crossingsOf(curve, { ware: size });
  return others.reduce(
    (worst, each) => worst.map((crossing, i) => worse(crossing, each[i] as Crossing)),
    first,
  );
}

function judgedFor(curve: Curve, size: WareSize, { name, ware }: FiredPiece): readonly Crossing[] {
  const limitFor = computedLimits(ware);
  return strainedCrossings(curve, { size, ware, limitFor }).map((crossing) => ({
    ...crossing,
    limitMeantFor: crossing.limitMeantFor && `${name} (${crossing.limitMeantFor})`,
  }));
}

/** The crossing with the lower limit; the first where none applies. */
function worse(a: Crossing, b: Crossing): Crossing {
  return (b.limitCPerHour ?? 0) < (a.limitCPerHour ?? 0) ? b : a;
}
