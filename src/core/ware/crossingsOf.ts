import type { Direction } from "../curve/Band.ts";
import { bandPassage } from "../curve/bandPassage.ts";
import type { Curve } from "../curve/Curve.ts";
import type { Crossing } from "./Crossing.ts";
import { CRISTOBALITE_BAND, publishedLimit, QUARTZ_BAND } from "./inversionBands.ts";

const BOTH_WAYS: readonly Direction[] = ["heating", "cooling"];

/**
 * How a Curve went through both inversions, each with the limit that holds for unknown ware.
 * Direction by direction, in the order in which the bands are met: heating goes through
 * cristobalite first, cooling through quartz first. A band that was never entered is listed too,
 * with `measured` saying `no`.
 */
export function crossingsOf(
  curve: Curve,
  directions: readonly Direction[] = BOTH_WAYS,
): readonly Crossing[] {
  return directions.flatMap((direction) =>
    bandsMet(direction).map((band) => {
      const limit = publishedLimit(band, direction);
      return {
        ...bandPassage(curve, band, direction),
        limitCPerHour: limit?.limitCPerHour ?? null,
        limitBasis: limit?.basis ?? null,
        strainRatio: null,
      };
    }),
  );
}

function bandsMet(direction: Direction) {
  return direction === "heating"
    ? [CRISTOBALITE_BAND, QUARTZ_BAND]
    : [QUARTZ_BAND, CRISTOBALITE_BAND];
}
