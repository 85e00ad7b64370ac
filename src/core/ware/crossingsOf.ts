import type { BandPassage, Direction } from "../curve/Band.ts";
import { passagesOf } from "../curve/bandPassage.ts";
import type { Curve } from "../curve/Curve.ts";
import type { Severity } from "../findings/Finding.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "./inversionBands.ts";

/** A passage judged by the stress in the piece that bears it least. */
export interface Crossing extends BandPassage {
  /** The guide: rate at which the stress is half the strength [°C/h, positive]; null where none applies. */
  readonly limitCPerHour: number | null;
  /** The part of the band in which the guide is to be kept [°C]; null with it. */
  readonly limitFromC: number | null;
  readonly limitToC: number | null;
  /** Where the guide comes from, in words. */
  readonly limitBasis: string | null;
  /** Whom the guide is for: `an ordinary stoneware mug`; null where none applies. */
  readonly limitMeantFor: string | null;
  /** Whether that piece's body has cristobalite, so that the lower band is one. */
  readonly isCristobalitic: boolean;
  /** By the stress; null where it is not judged: on the way up, part of it unseen, the lid off. */
  readonly severity: Severity | null;
  /** The kiln was opened in it or before, at this [°C]: from there the rate is not the ware's; else null. */
  readonly openedC: number | null;
  /** Computed stress over strength at its worst; null until the ware is computed. */
  readonly strainRatio: number | null;
  /** Its 10 and 90 % points by what the body may be; null with it. */
  readonly strainRatioLow: number | null;
  readonly strainRatioHigh: number | null;
}

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
