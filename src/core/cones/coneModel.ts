import { kelvinFromCelsius } from "../units/temperature.ts";
import { CONE_TABLES, type ConeSeries } from "./cone.ts";
import { type Anchor, anchorsOf, type ConeKinetics, risesWithRate } from "./fitKinetics.ts";
import {
  arrheniusRate,
  GAS_CONSTANT,
  KINETICS,
  logArrheniusIntegral,
  rampEndPointK,
} from "./kinetics.ts";

/** Everything that is needed to follow one cone through a Curve; temperatures in K, rates per hour. */
export interface ConeModel {
  readonly cone: string;
  readonly series: ConeSeries;
  /** Activation energy E [kJ/mol]. */
  readonly activationKJ: number;
  /** ln A [1/h]: the budget is 1 at the bare model's end point on a 60 °C/h ramp. */
  readonly logPreFactor: number;
  /** That end point [K]. */
  readonly endPoint60K: number;
  /** K by which the end point moves when the rate grows e-fold: R·T²/E. */
  readonly perFoldK: number;
  /** Table minus model at each printed rate, slowest first: what anchoring adds to the end point. */
  readonly shifts: readonly { readonly logRate: number; readonly shiftK: number }[];
}

/** Follows one cone from its constants and the end points it has to return. */
function makeConeModel(
  series: ConeSeries,
  { cone, activationKJ, endPoint60C }: ConeKinetics,
  anchors: readonly Anchor[],
): ConeModel {
  const endPoint60K = kelvinFromCelsius(endPoint60C);
  return {
    cone,
    series,
    activationKJ,
    logPreFactor: Math.log(60) - logArrheniusIntegral(endPoint60K, activationKJ),
    endPoint60K,
    perFoldK: (GAS_CONSTANT * endPoint60K ** 2) / activationKJ,
    shifts: anchors.map(({ rateCPerHour, tempC }) => ({
      logRate: Math.log(rateCPerHour),
      shiftK: kelvinFromCelsius(tempC) - rampEndPointK(activationKJ, endPoint60K, rateCPerHour),
    })),
  };
}

/** Every modelled cone of every series, softest first. */
export const CONE_MODELS: Readonly<Record<ConeSeries, readonly ConeModel[]>> = {
  "self-supporting": modelsOf("self-supporting"),
  "self-supporting-iron-free": modelsOf("self-supporting-iron-free"),
  large: modelsOf("large"),
  "large-iron-free": modelsOf("large-iron-free"),
  small: modelsOf("small"),
};

/**
 * Model of one cone.
 * @throws RangeError when the series has no such cone; parse names with `parseCone` first.
 */
export function coneModel(series: ConeSeries, cone: string): ConeModel {
  const model = CONE_MODELS[series].find((each) => each.cone === cone);
  if (model === undefined) throw new RangeError(`coneModel: no cone ${cone} in ${series}`);
  return model;
}

/**
 * Logarithm of the effective rate [ln °C/h]: how fast a ramp would have to be to leave this much
 * heatwork at this peak, to first order, as the anchoring uses it (about 4 % above an exact ramp).
 */
export function logEffectiveRate(model: ConeModel, peakK: number, logHeatwork: number): number {
  const perFold = (GAS_CONSTANT * peakK ** 2) / model.activationKJ;
  const peakRate = arrheniusRate(peakK, model.activationKJ, model.logPreFactor);
  return Math.log(perFold * peakRate) - logHeatwork;
}

/** Exact ramp rate [°C/h] that leaves this much heatwork when it ends at this peak. */
export function equivalentRampRate(model: ConeModel, peakK: number, logHeatwork: number): number {
  const logIntegral = logArrheniusIntegral(peakK, model.activationKJ);
  return Math.exp(model.logPreFactor + logIntegral - logHeatwork);
}

/** Table minus model [K] at an effective rate: straight in ln rate between columns, flat outside. */
function anchorShiftK(model: ConeModel, logRate: number): number {
  const { shifts } = model;
  const upper = shifts.findIndex((shift) => shift.logRate > logRate);
  const high = shifts[upper];
  const low = shifts[upper - 1];
  if (high === undefined) return shifts.at(-1)?.shiftK ?? 0;
  if (low === undefined) return high.shiftK;
  const share = (logRate - low.logRate) / (high.logRate - low.logRate);
  return low.shiftK + share * (high.shiftK - low.shiftK);
}

/** A budget seen against the printed table. */
interface Anchored {
  /** Above (+) or below (−) the end point [K]. */
  readonly marginK: number;
  /** Budget with the table's shift taken out; 1 = down by the table. */
  readonly heatwork: number;
}

/** Margin and heatwork against the printed table, for a bare budget reached with this peak [K]. */
export function anchored(model: ConeModel, peakK: number, logHeatwork: number): Anchored {
  const perFoldK = (GAS_CONSTANT * peakK ** 2) / model.activationKJ;
  const shiftK = anchorShiftK(model, logEffectiveRate(model, peakK, logHeatwork));
  const marginK = perFoldK * logHeatwork - shiftK;
  return { marginK, heatwork: Math.exp(marginK / perFoldK) };
}

/**
 * One sigma of a margin from the cone model alone [K]: 2 K of scatter and 18 % of the way from
 * 60 °C/h, not below 3 K (calibrated on left-out rates). Small cones, calibrated at one rate only:
 * not below 10 K. Cones 022–020, two rates only: not below 5 K between the columns, 10 K at 15 °C/h.
 */
export function marginSigmaK(model: ConeModel, logRate: number): number {
  const folds = Math.abs(logRate - Math.log(60));
  return Math.max(Math.hypot(2, 0.18 * model.perFoldK * folds), sigmaFloorK(model, logRate));
}

function sigmaFloorK(model: ConeModel, logRate: number): number {
  if (model.series === "small") return 10;
  if (model.series !== "self-supporting" || model.shifts.length > 2) return 3;
  const outside = Math.max(Math.log(60) - logRate, logRate - Math.log(150), 0);
  return 5 + 5 * Math.min(1, outside / Math.log(4));
}

function modelsOf(series: ConeSeries): readonly ConeModel[] {
  return KINETICS[series].map((kinetics) => {
    const printed = anchorsOf(CONE_TABLES[series], kinetics.cone);
    const anchors = risesWithRate(printed)
      ? printed
      : anchorsOf(CONE_TABLES["self-supporting"], kinetics.cone);
    return makeConeModel(series, kinetics, anchors);
  });
}
