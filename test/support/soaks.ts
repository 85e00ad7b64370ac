import { pieceBudget } from "../../src/core/cones/budget.ts";
import { CONE_TABLES, printedEndPoint } from "../../src/core/cones/cone.ts";
import type { ConeModel } from "../../src/core/cones/coneModel.ts";
import { rampEndPointK } from "../../src/core/cones/kinetics.ts";
import { kelvinFromCelsius } from "../../src/core/units/temperature.ts";

/** Bare end point [K] on a plain ramp. */
export function endK(model: ConeModel, rateCPerHour: number): number {
  return rampEndPointK(model.activationKJ, model.endPoint60K, rateCPerHour);
}

/** Printed end point at 60 °C/h [K]. */
export function printedK(cone: string): number {
  const printed = printedEndPoint(CONE_TABLES["self-supporting"], cone, 60);
  return kelvinFromCelsius(printed?.tempC ?? Number.NaN);
}

/** Hours that a hold at one cone's printed end point takes to bring down a harder one, after 60 °C/h. */
export function soakHours(softer: ConeModel, harder: ConeModel): number {
  const peakK = printedK(softer.cone);
  const fromK = 300;
  const rampSeconds = ((peakK - fromK) / 60) * 3600;
  const collected = pieceBudget(harder, { fromK, toK: peakK, seconds: rampSeconds });
  return (1 - collected) / pieceBudget(harder, { fromK: peakK, toK: peakK, seconds: 3600 });
}
