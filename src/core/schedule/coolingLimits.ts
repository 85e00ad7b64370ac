import type { Band, Direction } from "../curve/Band.ts";
import type { Curve } from "../curve/Curve.ts";
import type { Crossing } from "../ware/Crossing.ts";
import { crossingsOf } from "../ware/crossingsOf.ts";
import { CRISTOBALITE_BAND, publishedLimit, QUARTZ_BAND } from "../ware/inversionBands.ts";
import { limitingRate } from "../ware/limitingRate.ts";
import type { Ware } from "../ware/Ware.ts";
import type { WareSize } from "../ware/WareSize.ts";
import { wareStrain } from "../ware/wareStrain.ts";

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
 * How a Curve goes through both inversions, judged by the computed stress in a piece.
 * Stress over strength is given for cooling only: on the way up the piece is not yet the fired body
 * whose properties are known.
 */
export function strainedCrossings(
  curve: Curve,
  options: { readonly size: WareSize; readonly ware: Ware; readonly limitFor: LimitFor },
): readonly Crossing[] {
  const { worst } = wareStrain(curve, options.ware);
  return limitedCrossings(curve, { ware: options.size, limitFor: options.limitFor }).map(
    (crossing) => ({
      ...crossing,
      strainRatio:
        crossing.measured === "whole" && crossing.direction === "cooling"
          ? (worst.find(
              ({ band, direction }) => band === crossing.band && direction === crossing.direction,
            )?.ratio ?? null)
          : null,
    }),
  );
}

/** Computed stress over strength that is still thought safe: the computation is good to a factor of two. */
const SAFE_RATIO = 0.5;

/** What the computed stress in a piece allows, in place of what is published. */
export function computedLimits(ware: Ware): LimitFor {
  const { body, geometry } = ware;
  const wallMm = Math.round(geometry.wallMm);
  const baseMm = Math.round(geometry.baseMm);
  const limits = new Map(
    COOLING_BANDS.map((band) => [band.name, limitingRate(ware, { band, ratio: SAFE_RATIO })]),
  );
  return (band) => {
    const limitCPerHour = limits.get(band.name);
    if (limitCPerHour === undefined) throw new RangeError(`computedLimits: ${band.name}`);
    return {
      limitCPerHour,
      meantFor: `${body.name}, wall ${wallMm} mm, base ${baseMm} mm`,
      why: "computed: at this rate the stress in the ware is half its strength, good to a factor of two either way and never checked on cracked pots; it takes the place of the published limit, which does not know the body",
    };
  };
}
