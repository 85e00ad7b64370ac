import { celsiusFromKelvin, kelvinFromCelsius } from "../units/temperature.ts";
import { rampEndPointK } from "./arrhenius.ts";

/** Scatter assumed of one printed end point [K]: about what the free fits leave over. */
export const ENTRY_SCATTER_K = 2;

/** A printed end point and the rate of its column. */
export interface Anchor {
  readonly rateCPerHour: number;
  readonly tempC: number;
}

/** Two constants of one cone, as the fit moves them. */
interface ConeFit {
  /** ln E, E in kJ/mol. */
  readonly logActivation: number;
  /** End point at 60 °C/h [°C]. */
  readonly endPoint60C: number;
}

const START_LOG_ACTIVATION = Math.log(700);

/**
 * E and end point of one cone by least squares on its printed end points, 2 K each.
 * With a prior on ln E the fit also works for two rates, where two points alone say nothing.
 */
export function leastSquaresCone(
  anchors: readonly Anchor[],
  prior: { readonly meanLog: number; readonly sd: number } | null,
): ConeFit {
  const sixty = anchors.find((anchor) => anchor.rateCPerHour === 60) ?? anchors[0];
  if (sixty === undefined) throw new RangeError("leastSquaresCone: no end points");
  let logE = prior?.meanLog ?? START_LOG_ACTIVATION;
  let endK = kelvinFromCelsius(sixty.tempC);
  const residuals = (atLogE: number, atEndK: number): number[] => [
    ...anchors.map(({ rateCPerHour, tempC }) => {
      const modelK = rampEndPointK(Math.exp(atLogE), atEndK, rateCPerHour);
      return (modelK - kelvinFromCelsius(tempC)) / ENTRY_SCATTER_K;
    }),
    ...(prior === null ? [] : [(atLogE - prior.meanLog) / prior.sd]),
  ];
  for (let round = 0; round < 60; round++) {
    const step = gaussNewtonStep(residuals, logE, endK);
    logE += Math.max(-0.5, Math.min(0.5, step.logE));
    endK += step.endK;
    if (Math.abs(step.logE) < 1e-10 && Math.abs(step.endK) < 1e-8) break;
  }
  return { logActivation: logE, endPoint60C: celsiusFromKelvin(endK) };
}

/** End point at 60 °C/h [K] that meets printed end points best when only it is free. */
export function leastSquaresEndPoint(
  anchors: readonly Anchor[],
  endPointK: (sixtyK: number, rateCPerHour: number) => number,
): number {
  const first = anchors[0];
  if (first === undefined) throw new RangeError("leastSquaresEndPoint: no end points");
  let sixtyK = kelvinFromCelsius(first.tempC);
  for (let round = 0; round < 60; round++) {
    let slopeSum = 0;
    let missSum = 0;
    for (const { rateCPerHour, tempC } of anchors) {
      const slope =
        (endPointK(sixtyK + 0.05, rateCPerHour) - endPointK(sixtyK - 0.05, rateCPerHour)) / 0.1;
      missSum += slope * (endPointK(sixtyK, rateCPerHour) - kelvinFromCelsius(tempC));
      slopeSum += slope * slope;
    }
    const step = missSum / slopeSum;
    sixtyK -= step;
    if (Math.abs(step) < 1e-8) break;
  }
  return sixtyK;
}

function gaussNewtonStep(
  residuals: (logE: number, endK: number) => number[],
  logE: number,
  endK: number,
): { logE: number; endK: number } {
  const here = residuals(logE, endK);
  const byLogE = differences(residuals(logE + 1e-4, endK), residuals(logE - 1e-4, endK), 2e-4);
  const byEndK = differences(residuals(logE, endK + 0.01), residuals(logE, endK - 0.01), 0.02);
  const ee = dot(byLogE, byLogE);
  const et = dot(byLogE, byEndK);
  const tt = dot(byEndK, byEndK);
  const e = dot(byLogE, here);
  const t = dot(byEndK, here);
  const determinant = ee * tt - et * et;
  return { logE: (et * t - tt * e) / determinant, endK: (et * e - ee * t) / determinant };
}

function differences(up: readonly number[], down: readonly number[], width: number): number[] {
  return up.map((value, i) => (value - (down[i] as number)) / width);
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * (b[i] as number), 0);
}
