import type { Curve } from "../curve/Curve.ts";
import { kelvinFromCelsius } from "../units/temperature.ts";
import { peaksOf } from "./budget.ts";
import type { ConeSeries, ConeState, Heatwork } from "./cone.ts";
import { CONE_MODELS, type ConeModel, equivalentRampRate } from "./coneModel.ts";
import { conePosition } from "./conePosition.ts";
import { extrapolationsOf } from "./extrapolations.ts";
import { type FollowedCone, followCone } from "./followCone.ts";
import { lastHundredCPerHour } from "./lastHundred.ts";
import { levelsOf } from "./levels.ts";

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
    measuredPeakC: peaksC.at(-1) as number,
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
