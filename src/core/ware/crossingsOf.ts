import type { Direction } from "../curve/Band.ts";
import { passagesOf } from "../curve/bandPassage.ts";
import type { Curve } from "../curve/Curve.ts";
import type { Crossing } from "./Crossing.ts";
import { CRISTOBALITE_BAND, publishedLimit, QUARTZ_BAND } from "./inversionBands.ts";
import type { WareSize } from "./WareSize.ts";

const BOTH_WAYS: readonly Direction[] = ["heating", "cooling"];

/**
 * How a Curve went through both inversions, each with the published limit for ware of this size.
 * Direction by direction, in the order in which the bands are met: heating goes through
 * cristobalite first, cooling through quartz first. A band that was never entered is listed too,
 * with `measured` saying `no`.
 */
export function crossingsOf(
  curve: Curve,
  options: { readonly directions?: readonly Direction[]; readonly ware?: WareSize } = {},
): readonly Crossing[] {
  const passage = passagesOf(curve);
  return (options.directions ?? BOTH_WAYS).flatMap((direction) =>
    bandsMet(direction).map((band) => {
      const limit = publishedLimit(band, direction, options.ware);
      return {
        ...passage(band, direction),
        limitCPerHour: limit?.limitCPerHour ?? null,
        limitBasis: limit?.basis ?? null,
        limitMeantFor: limit?.meantFor ?? null,
        strainRatio: null,
        strainRatioLow: null,
        strainRatioHigh: null,
      };
    }),
  );
}

function bandsMet(direction: Direction) {
  return direction === "heating"
    ? [CRISTOBALITE_BAND, QUARTZ_BAND]
    : [QUARTZ_BAND, CRISTOBALITE_BAND];
}
