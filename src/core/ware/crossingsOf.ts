import type { Direction } from "../curve/Band.ts";
import { passagesOf } from "../curve/bandPassage.ts";
import type { Curve } from "../curve/Curve.ts";
import type { Crossing } from "./Crossing.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "./inversionBands.ts";

const BOTH_WAYS: readonly Direction[] = ["heating", "cooling"];

/**
 * How a Curve went through both inversions, not judged yet.
 * Direction by direction, in the order in which the bands are met: heating goes through
 * cristobalite first, cooling through quartz first. A band that was never entered is listed too,
 * with `measured` saying `no`.
 */
export function crossingsOf(
  curve: Curve,
  options: { readonly directions?: readonly Direction[] } = {},
): readonly Crossing[] {
  const passage = passagesOf(curve);
  return (options.directions ?? BOTH_WAYS).flatMap((direction) =>
    bandsMet(direction).map((band) => ({
      ...passage(band, direction),
      limitCPerHour: null,
      limitFromC: null,
      limitToC: null,
      limitBasis: null,
      limitMeantFor: null,
      isCristobalitic: false,
      severity: null,
      openedC: null,
      strainRatio: null,
      strainRatioLow: null,
      strainRatioHigh: null,
    })),
  );
}

function bandsMet(direction: Direction) {
  return direction === "heating"
    ? [CRISTOBALITE_BAND, QUARTZ_BAND]
    : [QUARTZ_BAND, CRISTOBALITE_BAND];
}
