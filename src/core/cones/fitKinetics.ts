import { celsiusFromKelvin, kelvinFromCelsius, ZERO_CELSIUS_K } from "../units/temperature.ts";
import type { ConeSeries, ConeTable } from "./cone.ts";
import { rampEndPointK } from "./kinetics.ts";

/** Fitted constants of one cone. */
export interface ConeKinetics {
  readonly cone: string;
  /** Apparent activation energy E [kJ/mol]. */
  readonly activationKJ: number;
  /** End point of the bare model on a plain ramp of 60 °C/h [°C]; with E it fixes the pre-factor. */
  readonly endPoint60C: number;
}

/** Width of the kernel that says which cones are neighbours [K], picked on left-out rates. */
const KERNEL_K = 25;
/** Standard deviation of ln E about its neighbours, picked on left-out rates. */
const PRIOR_LOG_SD = 0.13;

/** Cones of one make of mixture, among which E is shared: soft, iron-bearing, stoneware. */
type Group = "soft" | "iron" | "stoneware";

interface Neighbour {
  readonly cone: string;
  readonly group: Group;
  readonly logActivation: number;
  readonly endPoint60C: number;
}

/** Tables that constants are fitted to. */
type FittedTables = Readonly<Record<ConeSeries, ConeTable>>;

/**
 * Kinetic constants of every modelled cone from the published tables.
 * Self-supporting cones: E and end point by least squares, E pulled to the free fits of the other
 * cones of its group (mean of ln E, weighted by closeness in end point). Large and small cones: E of
 * the self-supporting cone of the same number, end point fitted. A row that does not rise with the
 * rate (large cone 14 as printed) is not fitted; the self-supporting constants stand in for it.
 *
 * @returns Constants rounded to 0.001 kJ/mol and 0.001 °C, softest first.
 */
export function fitKinetics(
  tables: FittedTables,
): Readonly<Record<ConeSeries, readonly ConeKinetics[]>> {
  const regular = fitSelfSupporting("self-supporting", tables["self-supporting"]);
  const ironFree = fitSelfSupporting(
    "self-supporting-iron-free",
    tables["self-supporting-iron-free"],
  );
  return {
    "self-supporting": regular,
    "self-supporting-iron-free": ironFree,
    large: fitBorrowed(tables.large, regular),
    "large-iron-free": fitBorrowed(tables["large-iron-free"], ironFree),
    small: fitBorrowed(tables.small, regular),
  };
}

/** Printed end points of a row as rate and temperature, slowest first. */
export function anchorsOf(table: ConeTable, cone: string): readonly Anchor[] {
  const row = table.rows.find((each) => each.cone === cone);
  if (row === undefined) throw new RangeError(`anchorsOf: no cone ${cone} in ${table.series}`);
  return row.endPoints.flatMap((endPoint, column) => {
    const rateCPerHour = table.ratesCPerHour[column] ?? null;
    return endPoint === null || rateCPerHour === null
      ? []
      : [{ rateCPerHour, tempC: endPoint.tempC }];
  });
}

/** True when a faster ramp never ends at a lower temperature, as heatwork demands. */
export function risesWithRate(anchors: readonly Anchor[]): boolean {
  return anchors.every((anchor, i) => i === 0 || anchor.tempC > anchors[i - 1]!.tempC);
}

/** Kinetic constants of one self-supporting series, whose E are its own. */
export function fitSelfSupporting(
  series: "self-supporting" | "self-supporting-iron-free",
  table: ConeTable,
): readonly ConeKinetics[] {
  return fitOwnRates(table, series === "self-supporting" ? regularGroup : () => "iron");
}

function fitOwnRates(table: ConeTable, groupOf: (cone: string) => Group): readonly ConeKinetics[] {
  const neighbours = table.rows.flatMap((row): Neighbour[] => {
    const anchors = anchorsOf(table, row.cone);
    if (anchors.length < 3) return [];
    const free = leastSquaresCone(anchors, null);
    return [{ cone: row.cone, group: groupOf(row.cone), ...free }];
  });
  return table.rows.map((row) => {
    const anchors = anchorsOf(table, row.cone);
    const prior = { meanLog: priorLog(row.cone, anchors, groupOf, neighbours), sd: PRIOR_LOG_SD };
    const fit = leastSquaresCone(anchors, prior);
    return rounded(row.cone, Math.exp(fit.logActivation), fit.endPoint60C);
  });
}

function priorLog(
  cone: string,
  anchors: readonly Anchor[],
  groupOf: (cone: string) => Group,
  neighbours: readonly Neighbour[],
): number {
  const ownC = printedAtSixtyC(anchors);
  let weights = 0;
  let sum = 0;
  for (const other of neighbours) {
    if (other.cone === cone || other.group !== groupOf(cone)) continue;
    const weight = Math.exp(-0.5 * ((ownC - other.endPoint60C) / KERNEL_K) ** 2);
    weights += weight;
    sum += weight * other.logActivation;
  }
  return sum / weights;
}

/** Printed end point at 60 °C/h [°C]; without that column, straight in ln rate between its neighbours. */
function printedAtSixtyC(anchors: readonly Anchor[]): number {
  const upper = anchors.find((anchor) => anchor.rateCPerHour >= 60);
  const lower = anchors.findLast((anchor) => anchor.rateCPerHour <= 60);
  if (upper === undefined || lower === undefined)
    throw new RangeError("fitKinetics: the printed rates do not reach round 60 °C/h");
  if (upper === lower) return upper.tempC;
  const share =
    Math.log(60 / lower.rateCPerHour) / Math.log(upper.rateCPerHour / lower.rateCPerHour);
  return lower.tempC + share * (upper.tempC - lower.tempC);
}

function fitBorrowed(table: ConeTable, lenders: readonly ConeKinetics[]): readonly ConeKinetics[] {
  return table.rows.map((row) => {
    const lender = lenders.find((each) => each.cone === row.cone);
    if (lender === undefined)
      throw new RangeError(`fitKinetics: no cone ${row.cone} to lend its E`);
    const anchors = anchorsOf(table, row.cone);
    if (!risesWithRate(anchors)) return lender;
    const endPointK = leastSquaresEndPoint(anchors, (sixtyK, rateCPerHour) =>
      rampEndPointK(lender.activationKJ, sixtyK, rateCPerHour),
    );
    return rounded(row.cone, lender.activationKJ, endPointK - ZERO_CELSIUS_K);
  });
}

function regularGroup(cone: string): Group {
  if (!cone.startsWith("0")) return Number(cone) <= 3 ? "iron" : "stoneware";
  return Number(cone) >= 11 ? "soft" : "iron";
}

function rounded(cone: string, activationKJ: number, endPoint60C: number): ConeKinetics {
  return { cone, activationKJ: toThousandth(activationKJ), endPoint60C: toThousandth(endPoint60C) };
}

function toThousandth(value: number): number {
  return Math.round(value * 1000) / 1000;
}

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
function leastSquaresEndPoint(
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
  return up.map((value, i) => (value - down[i]!) / width);
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * b[i]!, 0);
}
