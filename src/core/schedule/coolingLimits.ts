import type { Band, Direction } from "../curve/Band.ts";
import type { Curve } from "../curve/Curve.ts";
import { printMm } from "../units/print.ts";
import type { Crossing } from "../ware/Crossing.ts";
import { crossingsOf } from "../ware/crossingsOf.ts";
import { CRISTOBALITE_BAND, publishedLimit, QUARTZ_BAND } from "../ware/inversionBands.ts";
import { limitingRate } from "../ware/limitingRate.ts";
import type { PieceStrain } from "../ware/pieceStrain.ts";
import { SAFE_RATIO } from "../ware/safeRatio.ts";
import type { Ware } from "../ware/Ware.ts";
import type { WareSize } from "../ware/WareSize.ts";

/** How fast a piece may cool through an inversion. */
interface CoolingLimit {
  /** Positive [°C/h]. */
  readonly limitCPerHour: number;
  /** Whom it is for: `ware up to 12 mm thick`. */
  readonly meantFor: string;
  /** Where it comes from, in words. */
  readonly why: string;
}

/** The limit of a band; both inversions have one. */
export type LimitFor = (band: Band) => CoolingLimit;

/** The inversions that cooling goes through, in the order met. */
export const COOLING_BANDS: readonly Band[] = [QUARTZ_BAND, CRISTOBALITE_BAND];

/**
 * What published guidance allows ware of this size.
 * The returned function throws a RangeError for a band that has no published limit.
 */
export function publishedLimits(ware: WareSize): LimitFor {
  return (band) => {
    const limit = publishedLimit(band, "cooling", ware);
    if (limit === null) throw new RangeError(`publishedLimits: no limit at ${band.name}`);
    return { limitCPerHour: limit.limitCPerHour, meantFor: limit.meantFor, why: limit.basis };
  };
}

/** How a Curve goes through both inversions, cooling judged by these limits. */
export function limitedCrossings(
  curve: Curve,
  options: {
    readonly ware: WareSize;
    readonly limitFor: LimitFor;
    readonly directions?: readonly Direction[];
  },
): readonly Crossing[] {
  const { limitFor, ...rest } = options;
  return crossingsOf(curve, rest).map((crossing) => {
    const band = COOLING_BANDS.find((each) => each.name === crossing.band);
    if (crossing.direction === "heating" || band === undefined) return crossing;
    const limit = limitFor(band);
    return {
      ...crossing,
      limitCPerHour: limit.limitCPerHour,
      limitBasis: limit.why,
      limitMeantFor: limit.meantFor,
    };
  });
}

/**
 * A crossing with the stress of a piece in it, where the whole passage was seen and the piece had
 * been fired before: on the way down that is always so, on the way up for ware that went in bisqued.
 */
export function withStrain(crossing: Crossing, strained: PieceStrain): Crossing {
  const computed =
    crossing.measured === "whole"
      ? strained.passages.find(
          ({ band, direction }) => band === crossing.band && direction === crossing.direction,
        )?.computed
      : null;
  return {
    ...crossing,
    strainRatio: computed?.ratio ?? null,
    strainRatioLow: computed?.low ?? null,
    strainRatioHigh: computed?.high ?? null,
  };
}

/** What the computed stress in a piece allows, in place of what is published. */
export function computedLimits(ware: Ware): LimitFor {
  const { body, geometry } = ware;
  const limits = new Map(
    COOLING_BANDS.map((band) => [band.name, limitingRate(ware, { band, ratio: SAFE_RATIO })]),
  );
  return (band) => {
    const limitCPerHour = limits.get(band.name);
    if (limitCPerHour === undefined) throw new RangeError(`computedLimits: ${band.name}`);
    return {
      limitCPerHour,
      meantFor: `${body.name}, wall ${printMm(geometry.wallMm)}, base ${printMm(geometry.baseMm)}`,
      why: "computed: at this rate the stress in the ware is half its strength, good to a factor of two either way and never checked on cracked pots; it takes the place of the published limit, which does not know the body",
    };
  };
}
