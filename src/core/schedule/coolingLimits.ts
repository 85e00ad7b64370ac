import type { Curve } from "../curve/Curve.ts";
import type { Band, Direction } from "../curve/edgeTimes.ts";
import { lastAsked } from "../math/memo.ts";
import { type AssumedWare, wareOf } from "../ware/givenWare.ts";
import {
  CRISTOBALITE_BAND,
  type Crossing,
  crossingsOf,
  hasCristobalite,
  QUARTZ_BAND,
} from "../ware/inversions.ts";
import type { ComputedPassage, PieceStrain } from "../ware/pieceStrain.ts";
import { isJudged, limitingRate, SAFE_RATIO, strainSeverity } from "../ware/strainRisk.ts";
import type { Body, Ware } from "../ware/Ware.ts";
import type { Schedule } from "./Schedule.ts";

/** The guide of a piece through a band: how fast it may cool there. */
export interface CoolingLimit {
  /** Positive [°C/h]. */
  readonly limitCPerHour: number;
  /** The part of the band in which it is to be kept: elsewhere the ware bears much more [°C]. */
  readonly fromC: number;
  readonly toC: number;
  /** Whom it is for: `an ordinary stoneware mug`. */
  readonly meantFor: string;
  /** Where it comes from, in words. */
  readonly why: string;
}

/** The guide of a band; null where nothing is known that would slow ware down there. */
export type LimitFor = (band: Band) => CoolingLimit | null;

/** The inversions that cooling goes through, in the order met. */
export const COOLING_BANDS: readonly Band[] = [QUARTZ_BAND, CRISTOBALITE_BAND];

/**
 * So far below the upper end of a band its mineral has yet to change [K]: quartz is as good as flat
 * above 580 °C, spread by some 13 K in a body; cristobalite changes at 200 to 250 °C. A shut kiln may
 * fall there as it likes.
 * @see SOURCES["carpenter-1998"]
 */
const NOT_YET_K = 20;

const WHY =
  "computed: at this rate the stress in the ware is half its strength; never checked on cracked pots";

/**
 * What the computed stress in a piece allows; each band worked out once, when it is first asked for.
 * Without cristobalite the band of its inversion has no guide: the computation is too strict there.
 * The returned function throws a RangeError for a band that is no inversion.
 */
export function computedLimits({
  ware,
  meantFor,
}: Pick<AssumedWare, "ware" | "meantFor">): LimitFor {
  const known = new Map<string, CoolingLimit>();
  return (band) => {
    if (!COOLING_BANDS.some(({ name }) => name === band.name))
      throw new RangeError(`computedLimits: ${band.name}`);
    if (!isJudged({ band: band.name, direction: "cooling" }, ware.body)) return null;
    const limit = known.get(band.name) ?? {
      limitCPerHour: guideOf(ware, band),
      ...partOf(band),
      meantFor,
      why: WHY,
    };
    known.set(band.name, limit);
    return limit;
  };
}

const GUIDES = lastAsked<number>(100);

function guideOf(ware: Ware, band: Band): number {
  return GUIDES.of(JSON.stringify([band.name, ware]), () =>
    limitingRate(ware, { band, ratio: SAFE_RATIO }),
  );
}

/** Where the guide is to be kept [°C]: the changing part of a band, and what the ware lags behind. */
function partOf(band: Band): { readonly fromC: number; readonly toC: number } {
  return { fromC: band.highC - NOT_YET_K, toC: band.lowC };
}

/** How a Curve goes through both inversions, cooling with the guides of a piece, not judged yet. */
export function limitedCrossings(
  curve: Curve,
  options: { readonly limitFor: LimitFor; readonly directions?: readonly Direction[] },
): readonly Crossing[] {
  const { limitFor, ...rest } = options;
  return crossingsOf(curve, rest).map((crossing) => {
    const band = COOLING_BANDS.find((each) => each.name === crossing.band);
    return crossing.direction === "heating" || band === undefined
      ? crossing
      : withLimit(crossing, limitFor(band));
  });
}

/** A crossing with its guide in it. */
export function withLimit(crossing: Crossing, limit: CoolingLimit | null): Crossing {
  return {
    ...crossing,
    limitCPerHour: limit?.limitCPerHour ?? null,
    limitFromC: limit?.fromC ?? null,
    limitToC: limit?.toC ?? null,
    limitBasis: limit?.why ?? null,
    limitMeantFor: limit?.meantFor ?? null,
  };
}

/** What a piece suffered in a crossing; null where it is not computed. */
export function passageOf(
  { passages }: Pick<PieceStrain, "passages">,
  crossing: Crossing,
): ComputedPassage | null {
  const passage = passages.find(
    ({ band, direction }) => band === crossing.band && direction === crossing.direction,
  );
  return passage?.computed ?? null;
}

/**
 * A crossing with the stress of a piece in it, and judged by that. Where a gap, an end of the readings
 * or an opened kiln hides part of the passage, it is judged only if what was seen is already too much.
 */
export function withStrain(
  crossing: Crossing,
  computed: Pick<ComputedPassage, "ratio" | "low" | "high"> | null,
  body: Body,
): Crossing {
  const isWhole = crossing.measured === "whole" && crossing.openedC === null;
  const isFit = isJudged(crossing, body);
  const known =
    computed !== null && (isWhole || (isFit && strainSeverity(computed.ratio) !== "note"))
      ? computed
      : null;
  return {
    ...crossing,
    isCristobalitic: hasCristobalite(body),
    severity: known !== null && isFit ? strainSeverity(known.ratio) : null,
    strainRatio: known?.ratio ?? null,
    strainRatioLow: known?.low ?? null,
    strainRatioHigh: known?.high ?? null,
  };
}

/** The piece that a schedule is judged by: what its file says of the ware, the rest assumed and said. */
export function pieceOf(ware: Schedule["ware"]): AssumedWare {
  return wareOf({
    body: ware.body,
    wallMm: ware.wallMm ?? null,
    baseMm: ware.baseMm ?? null,
    thickestMm: ware.thickestMm,
    widestMm: ware.widestMm,
    heightMm: ware.heightMm,
    stands: ware.stands,
    shelfMm: ware.shelfMm,
    footGapMm: ware.footGapMm,
    glazedSides: ware.glazedSides,
  });
}

/** The guides for the ware of a schedule. */
export function limitsFor(ware: Schedule["ware"]): LimitFor {
  return computedLimits(pieceOf(ware));
}

/**
 * The ware of a schedule with what somebody says of it in its place; null where nothing is said.
 * Walls and base that are said are the thickest part, whatever the file calls that.
 */
export function toldWare(
  ware: Schedule["ware"],
  told: {
    readonly body: Schedule["ware"]["body"] | null;
    readonly wallMm: number | null;
    readonly baseMm: number | null;
    readonly widestMm: number | null;
  },
): Schedule["ware"] {
  const { body, wallMm, baseMm, widestMm } = told;
  const sized = wallMm !== null || baseMm !== null;
  return {
    ...ware,
    ...(body && { body }),
    ...(wallMm !== null && { wallMm }),
    ...(baseMm !== null && { baseMm }),
    ...(sized && { thickestMm: Math.max(wallMm ?? 0, baseMm ?? 0) }),
    ...(widestMm !== null && { widestMm }),
  };
}
