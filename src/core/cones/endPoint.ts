import { failed, ok, type Problem, type Result } from "../problem.ts";
import { celsiusFromKelvin } from "../units/temperature.ts";
import {
  CONE_TABLES,
  type ConeSeries,
  type Confidence,
  parseCone,
  printedEndPoint,
  type TableSeries,
} from "./cone.ts";
import {
  anchored,
  CONE_MODELS,
  type ConeModel,
  logEffectiveRate,
  marginSigmaK,
} from "./coneModel.ts";
import { ENTRY_SCATTER_K } from "./fitKinetics.ts";
import { isExtrapolatedRate } from "./heatwork.ts";
import { logArrheniusIntegral, rampEndPointK } from "./kinetics.ts";

/** Slowest and fastest ramps that are answered at all [°C/h]. */
const RATE_LIMITS_CPERHOUR = { slowest: 1, fastest: 1000 } as const;

/**
 * One sigma of a cell that nobody read again [K]: what a model that has not seen it misses it by,
 * 5.6 K for remembered cells and 5.8 K for those that were read.
 */
const REMEMBERED_SIGMA_K = 6;

/** Where a cone goes down on a plain ramp. */
export interface EndPoint {
  /** [°C]. */
  readonly tempC: number;
  /** One sigma [K]: of a printed cell the scatter of the charts (2 K), of a remembered one 6 K; else of the model. */
  readonly sigmaK: number;
  readonly basis: "printed" | "model";
  /** How well the printed cell is attested; null for the model. */
  readonly confidence: Confidence | null;
  /** The ramp is slower than 8 or faster than 300 °C/h and not a column of the table. */
  readonly extrapolated: boolean;
}

/**
 * Temperature at which a cone goes down on a steady ramp from the cold.
 * The printed cell where the rate is a column of the table; else the model, anchored to the table.
 * Series without a model (legacy, 1926, refractory and Seger tables) are answered from the table only.
 *
 * @param query.rateCPerHour Heating rate over about the last 100 K [°C/h], 1–1000.
 * @returns The end point, or `cones/unknown-cone`, `cones/rate-out-of-range`, `cones/rate-not-printed`.
 */
export function endPointC(query: {
  readonly series: TableSeries;
  readonly cone: string;
  readonly rateCPerHour: number;
}): Result<EndPoint> {
  const { series, rateCPerHour } = query;
  const cone = parseCone(query.cone, { series, where: "cone" });
  if (!cone.ok) return cone;
  const { slowest, fastest } = RATE_LIMITS_CPERHOUR;
  if (!(rateCPerHour >= slowest && rateCPerHour <= fastest))
    return failed(rateProblem(rateCPerHour));
  const printed = printedEndPoint(CONE_TABLES[series], cone.value, rateCPerHour);
  if (printed !== null)
    return ok({
      tempC: printed.tempC,
      sigmaK: printed.confidence === "from-memory" ? REMEMBERED_SIGMA_K : ENTRY_SCATTER_K,
      basis: "printed",
      confidence: printed.confidence,
      extrapolated: false,
    });
  if (!isModelled(series)) return failed(notPrintedProblem(series, cone.value, rateCPerHour));
  const model = CONE_MODELS[series].find((each) => each.cone === cone.value);
  if (model === undefined) return failed(notPrintedProblem(series, cone.value, rateCPerHour));
  const end = modelEndPoint(model, rateCPerHour);
  return ok({
    ...end,
    basis: "model",
    confidence: null,
    extrapolated: isExtrapolatedRate(rateCPerHour),
  });
}

/** True for the series that have a kinetic model. */
function isModelled(series: TableSeries): series is ConeSeries {
  return series in CONE_MODELS;
}

/** Anchored end point on a plain ramp: where the margin that `heatworkOf` reports is zero. */
function modelEndPoint(
  model: ConeModel,
  rateCPerHour: number,
): { readonly tempC: number; readonly sigmaK: number } {
  const logHeatworkAt = (tempK: number) =>
    model.logPreFactor + logArrheniusIntegral(tempK, model.activationKJ) - Math.log(rateCPerHour);
  let tempK = rampEndPointK(model.activationKJ, model.endPoint60K, rateCPerHour);
  for (let round = 0; round < 50; round++) {
    const { marginK } = anchored(model, tempK, logHeatworkAt(tempK));
    tempK -= marginK;
    if (Math.abs(marginK) < 1e-9) break;
  }
  const logRate = logEffectiveRate(model, tempK, logHeatworkAt(tempK));
  return { tempC: celsiusFromKelvin(tempK), sigmaK: marginSigmaK(model, logRate) };
}

function rateProblem(rateCPerHour: number): Problem {
  const { slowest, fastest } = RATE_LIMITS_CPERHOUR;
  return {
    code: "cones/rate-out-of-range",
    what: `a rate of ${rateCPerHour} °C/h is beyond anything cones can answer for`,
    where: "rate",
    expected: `${slowest} to ${fastest} °C/h (2 to 1800 °F/h), heating`,
    fix: "give the rate over the last 100 °C (180 °F) of heating; charts cover 15 to 150 °C/h",
  };
}

function notPrintedProblem(series: TableSeries, cone: string, rateCPerHour: number): Problem {
  const table = CONE_TABLES[series];
  const cells = table.ratesCPerHour.flatMap((rate) => {
    const cell = printedEndPoint(table, cone, rate);
    if (cell === null) return [];
    return [rate === null ? `${cell.tempC} °C without a rate` : `${cell.tempC} °C at ${rate} °C/h`];
  });
  return {
    code: "cones/rate-not-printed",
    what: `the ${series} table has no end point of cone ${cone} at ${rateCPerHour} °C/h`,
    where: "rate",
    expected: `a printed value; for cone ${cone} the table has ${cells.join(" and ")}`,
    fix: "use the printed value, or choose a series with a model, such as self-supporting",
  };
}
