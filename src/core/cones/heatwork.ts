import type { Curve } from "../curve/Curve.ts";
import { printDuration, printElapsed } from "../text/quantities.ts";
import { kelvinFromCelsius } from "../units/temperature.ts";
import { levelsOf, peaksOf } from "./budget.ts";
import {
  type ConePosition,
  type ConeSeries,
  type ConeState,
  coneIndex,
  type Heatwork,
  wholeCones,
} from "./cone.ts";
import { CONE_MODELS, type ConeModel, equivalentRampRate } from "./coneModel.ts";
import { type FollowedCone, followCone } from "./followCone.ts";

/** One sigma of a Curve that is taken at its word [K]: the scatter of reported firings. */
const AS_READ_SIGMA_K = 12;

/** What is known beyond the Curve. */
export interface HeatworkOptions {
  /** Which cones; self-supporting unless said. */
  readonly series?: ConeSeries;
  /** Added to every reading first [K]; 0 unless said: `kilnHeatworkOf` knows the usual one. */
  readonly offsetK?: number;
  /** One sigma of the offset, the cone model at the chart's rates included [K]; 12 unless said. */
  readonly offsetSigmaK?: number;
  /** Where the offset is from; `none` unless said. */
  readonly offsetIs?: Heatwork["offsetIs"];
}

/**
 * What a Curve did to every cone of a series, and where it stands among them.
 * Per cone a heatwork budget ∫A·exp(−E/RT)dt, exact on each straight piece, heating and cooling
 * alike; then a small shift so that plain ramps return the printed table. Nothing is added across
 * gaps. A cone that went down stays down. Hotter or longer raises every bare budget; the table
 * shift may take back a few K when a short fast spike follows a long hold, and means nothing for
 * cones below a millionth of their budget or above a thousand budgets.
 *
 * `peakC` includes the offset. `effectiveRateCPerHour` belongs to the cone nearest to its end
 * point, as an exact ramp; null when the heat was far too little, or too much, for every cone.
 * `sigmaCones` are null where there is no cone on one side.
 */
export function heatworkOf(curve: Curve, options: HeatworkOptions = {}): Heatwork {
  const series = options.series ?? "self-supporting";
  const offsetK = options.offsetK ?? 0;
  const offsetSigmaK = options.offsetSigmaK ?? AS_READ_SIGMA_K;
  const { followed, measuredPeakC } = followedCones(CONE_MODELS[series], curve, offsetK);
  const peakC = measuredPeakC + offsetK;
  const cones = followed.map((each) => each.state);
  const placed = conePosition(series, cones);
  const rateCPerHour = effectiveRate(followed, peakC);
  return {
    series,
    position: placed.position,
    sigmaCones: placed.sigmaCones(offsetSigmaK),
    modelSigmaCones: placed.modelSigmaCones,
    offsetK,
    offsetSigmaK,
    offsetIs: options.offsetIs ?? "none",
    peakC,
    lastHundredCPerHour: lastHundredCPerHour(curve, measuredPeakC),
    effectiveRateCPerHour: rateCPerHour,
    extrapolations: extrapolationsOf({ curve, series, peakC: measuredPeakC, rateCPerHour }),
    cones,
  };
}

/** What a Curve did to one cone, as `heatworkOf` says it; null when its series has no model of it. */
export function coneStateOf(
  curve: Curve,
  of: { readonly series: ConeSeries; readonly cone: string; readonly offsetK: number },
): ConeState | null {
  const models = CONE_MODELS[of.series].filter((model) => model.cone === of.cone);
  const [only] = followedCones(models, curve, of.offsetK).followed;
  return only?.state ?? null;
}

function followedCones(
  models: readonly ConeModel[],
  curve: Curve,
  offsetK: number,
): { readonly followed: readonly FollowedCone[]; readonly measuredPeakC: number } {
  const peaks = peaksOf(curve.tempsC);
  const peaksC = peaks.before;
  const scratch = new Float64Array(peaksC.length);
  const heat = { curve, offsetK, peaksC, levels: levelsOf(curve.tempsC), peaks };
  return {
    followed: models.map((model) => followCone(model, heat, scratch)),
    measuredPeakC: peaksC.at(-1)!,
  };
}

/** Rate of the plain ramp that matches the cone nearest to its end point [°C/h]. */
function effectiveRate(followed: readonly FollowedCone[], peakC: number): number | null {
  const felt = followed.filter((each) => each.state.heatwork > 1e-3 && each.state.heatwork < 1e3);
  const nearest = felt.toSorted((a, b) => Math.abs(a.state.marginK) - Math.abs(b.state.marginK))[0];
  return nearest === undefined
    ? null
    : equivalentRampRate(nearest.model, kelvinFromCelsius(peakC), nearest.logHeatwork);
}

/** A position, and its uncertainty once the offset's is known. */
interface PlacedPosition {
  readonly position: ConePosition;
  /** One sigma of the model alone, in cones; null outside the series. */
  readonly modelSigmaCones: number | null;
  /** One sigma in cones for that of the offset [K]; null outside the series. */
  readonly sigmaCones: (offsetSigmaK: number) => number | null;
}

/** What the model is out by where charts are best [K]; reported firings hold it already. */
export const CHART_SIGMA_K = 3;

/** Where the margins stand among the whole cones: the last one down, and the share of the way on. */
function conePosition(series: ConeSeries, states: readonly ConeState[]): PlacedPosition {
  const whole = new Set(wholeCones(series));
  const cones = states.filter((state) => whole.has(state.cone));
  const last = cones.findLastIndex((state) => state.marginK >= 0);
  const below = cones[last];
  const above = cones[last + 1];
  if (below === undefined) return outside(`below cone ${above?.cone}`, null, above?.cone ?? null);
  if (above === undefined) return outside(`cone ${below.cone} or more`, below.cone, null);
  const spacingK = below.marginK - above.marginK;
  const fraction = below.marginK / spacingK;
  const from = coneIndex(below.cone);
  const modelSigmaK = Math.max(below.marginSigmaK, above.marginSigmaK);
  return {
    position: {
      cone: below.cone,
      fraction,
      next: above.cone,
      label: `cone ${below.cone} + ${Math.min(99, Math.round(fraction * 100))} %`,
      index: from + fraction * (coneIndex(above.cone) - from),
    },
    modelSigmaCones: halfSpread(cones, modelSigmaK),
    sigmaCones: (offsetSigmaK) => halfSpread(cones, totalSigmaK(offsetSigmaK, modelSigmaK)),
  };
}

/** One sigma of offset and model together [K]: what the model is worse than at the chart's rates is added. */
export function totalSigmaK(offsetSigmaK: number, marginSigmaK: number): number {
  return Math.sqrt(offsetSigmaK ** 2 + Math.max(0, marginSigmaK ** 2 - CHART_SIGMA_K ** 2));
}

/** Half of how far the position moves between so much less and so much more heat [cones]. */
function halfSpread(cones: readonly ConeState[], sigmaK: number): number | null {
  const high = indexAt(cones, sigmaK);
  const low = indexAt(cones, -sigmaK);
  const here = indexAt(cones, 0);
  if (here === null) return null;
  if (high !== null && low !== null) return (high - low) / 2;
  return high !== null ? high - here : low !== null ? here - low : null;
}

/** Position with so much added to every margin [K], straight between cones; null outside the series. */
function indexAt(cones: readonly ConeState[], moreK: number): number | null {
  const last = cones.findLastIndex((state) => state.marginK + moreK >= 0);
  const below = cones[last];
  const above = cones[last + 1];
  if (below === undefined || above === undefined) return null;
  const from = coneIndex(below.cone);
  const fraction = (below.marginK + moreK) / (below.marginK - above.marginK);
  return from + fraction * (coneIndex(above.cone) - from);
}

function outside(label: string, cone: string | null, next: string | null): PlacedPosition {
  return {
    position: { cone, fraction: null, next, label, index: null },
    modelSigmaCones: null,
    sigmaCones: () => null,
  };
}

/** Below the peak by this much [K] counts as having reached it. */
const NEAR_PEAK_K = 5;
/** Stretch of the heating over which cone charts give their rates [K]. */
const STRETCH_K = 100;

/**
 * Mean heating rate over the last 100 K before a Curve first comes within 5 K of its peak [°C/h].
 * From the last rise through (peak − 105) before that moment to the first reach of (peak − 5);
 * dips and holds in between count as time. Null when the Curve starts above (peak − 105) or
 * a gap touches the stretch.
 */
function lastHundredCPerHour(curve: Curve, peakC: number): number | null {
  const { timesSeconds, tempsC, gaps } = curve;
  const topC = peakC - NEAR_PEAK_K;
  const bottomC = topC - STRETCH_K;
  const top = tempsC.findIndex((tempC) => tempC >= topC);
  let bottom = top;
  while (bottom > 0 && tempsC[bottom - 1]! > bottomC) bottom--;
  if (top < 1 || bottom < 1) return null;
  const from = timesSeconds[bottom - 1]!;
  const to = timesSeconds[top]!;
  if (gaps.some((gap) => gap.fromSeconds < to && gap.toSeconds > from)) return null;
  const seconds = timeAt(curve, top, topC) - timeAt(curve, bottom, bottomC);
  return (STRETCH_K * 3600) / seconds;
}

/** Moment [s] at which the piece that ends at a point passes a temperature. */
function timeAt({ timesSeconds, tempsC }: Curve, end: number, tempC: number): number {
  const fromC = tempsC[end - 1]!;
  const fromSeconds = timesSeconds[end - 1]!;
  const share = (tempC - fromC) / (tempsC[end]! - fromC);
  return fromSeconds + share * (timesSeconds[end]! - fromSeconds);
}

/** Slowest and fastest effective rates at which a cone answer is not yet a guess [°C/h]. */
const SLOWEST_CPERHOUR = 8;
const FASTEST_CPERHOUR = 300;

/** Heat more than this below the peak adds next to nothing [K]. */
const HOT_PART_K = 150;

/** True when an effective rate [°C/h] lies beyond what cones were published for. */
export function isExtrapolatedRate(rateCPerHour: number): boolean {
  const tolerance = 1e-6;
  return (
    rateCPerHour < SLOWEST_CPERHOUR * (1 - tolerance) ||
    rateCPerHour > FASTEST_CPERHOUR * (1 + tolerance)
  );
}

/** Why a cone answer reaches beyond what was published or measured, as phrases; empty when it does not. */
function extrapolationsOf(answer: {
  readonly curve: Curve;
  readonly series: ConeSeries;
  readonly peakC: number;
  readonly rateCPerHour: number | null;
}): readonly string[] {
  return [
    ...rateReasons(answer.rateCPerHour),
    ...(answer.series === "small"
      ? ["small cones were published at 300 °C/h (540 °F/h) only; elsewhere ± 10 °C (18 °F)"]
      : []),
    ...gapReasons(answer.curve, answer.peakC),
  ];
}

function rateReasons(rateCPerHour: number | null): readonly string[] {
  if (rateCPerHour === null || !isExtrapolatedRate(rateCPerHour)) return [];
  return rateCPerHour < SLOWEST_CPERHOUR
    ? ["so much time near the top is like a ramp slower than 8 °C/h (14 °F/h), beyond the charts"]
    : [
        "so little time near the top is like a ramp faster than 300 °C/h (540 °F/h), beyond the charts",
      ];
}

function gapReasons({ timesSeconds, tempsC, gaps }: Curve, peakC: number): readonly string[] {
  return gaps.flatMap((gap) => {
    const at = timesSeconds.indexOf(gap.fromSeconds);
    const hotterC = Math.max(tempsC[at]!, tempsC[at + 1]!);
    const length = printDuration(gap.toSeconds - gap.fromSeconds);
    return hotterC < peakC - HOT_PART_K
      ? []
      : [
          `nothing was measured for ${length} from ${printElapsed(gap.fromSeconds)}; its heat is not counted`,
        ];
  });
}
