import { describe, expect, it } from "vitest";
import { CONE_TABLES, type ConeTable } from "../../../src/core/cones/cone.ts";
import { anchored, CONE_MODELS } from "../../../src/core/cones/coneModel.ts";
import { anchorsOf, fitSelfSupporting } from "../../../src/core/cones/fitKinetics.ts";
import { heatworkOf } from "../../../src/core/cones/heatwork.ts";
import { rampEndPointK } from "../../../src/core/cones/kinetics.ts";
import { kelvinFromCelsius } from "../../../src/core/units/temperature.ts";
import { firing, ramp } from "./rampsAndHolds.ts";

function rms(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
}

function worst(values: readonly number[]): number {
  return Math.max(...values.map(Math.abs));
}

/** Prediction minus table [K] where one printed rate was withheld from one cone at a time. */
function leftOut(series: "self-supporting" | "self-supporting-iron-free", rate: number): number[] {
  const table = CONE_TABLES[series];
  return table.rows.flatMap(({ cone }) => {
    const anchors = anchorsOf(table, cone);
    const printed = anchors.find((anchor) => anchor.rateCPerHour === rate);
    if (anchors.length < 3 || printed === undefined) return [];
    const fit = fitSelfSupporting(series, without(table, cone, rate)).find(
      (each) => each.cone === cone,
    );
    if (fit === undefined) throw new Error(`no fit for cone ${cone}`);
    const sixtyK = kelvinFromCelsius(fit.endPoint60C);
    return [rampEndPointK(fit.activationKJ, sixtyK, rate) - kelvinFromCelsius(printed.tempC)];
  });
}

function without(table: ConeTable, cone: string, rate: number): ConeTable {
  const column = table.ratesCPerHour.indexOf(rate);
  return {
    ...table,
    rows: table.rows.map((row) =>
      row.cone === cone
        ? { ...row, endPoints: row.endPoints.map((cell, i) => (i === column ? null : cell)) }
        : row,
    ),
  };
}

describe("derived: printed rates that the fit has not seen", () => {
  // An independent run of the same fit; its rms is printed to 0.01 K, its worst to 0.1 K.
  it.each([
    ["self-supporting", 60, 2.82, 5.9],
    ["self-supporting", 15, 5.69, 11.1],
    ["self-supporting", 150, 2.8, 6.7],
    ["self-supporting-iron-free", 60, 3.42, 5.8],
    ["self-supporting-iron-free", 15, 3.54, 6.7],
    ["self-supporting-iron-free", 150, 3.87, 7.1],
  ] as const)(
    "%s at %d °C/h are met within %d K rms, %d K at worst",
    (series, rate, rmsK, worstK) => {
      const errors = leftOut(series, rate);
      expect(rms(errors)).toBeLessThan(rmsK + 0.01);
      expect(worst(errors)).toBeLessThan(worstK + 0.06);
    },
  );
});

describe("derived: an independent calculation of the same constants", () => {
  // Bare end points on plain ramps, worked out by a separate program before this one was written;
  // printed to 0.01 K, constants rounded to 0.01 K.
  it.each([
    ["018", [677.93, 691.79, 714.58, 725.54, 749.94]],
    ["04", [1040.6, 1049.54, 1063.96, 1070.77, 1085.66]],
    ["6", [1176.17, 1192.92, 1220.26, 1233.31, 1262.17]],
    ["10", [1243.17, 1258.59, 1283.67, 1295.61, 1321.91]],
  ])("gives cone %s the same end points at 10, 20, 60, 100 and 300 °C/h", (cone, ends) => {
    const model = CONE_MODELS["self-supporting"].find((each) => each.cone === cone);
    [10, 20, 60, 100, 300].forEach((rate, i) => {
      const end = rampEndPointK(model?.activationKJ ?? 0, model?.endPoint60K ?? 0, rate);
      expect(Math.abs(end - kelvinFromCelsius(ends[i] ?? 0))).toBeLessThan(0.02);
    });
  });

  it.each([
    ["60 to 1222", firing(ramp(60, 1222)), 0.0687, 0.16],
    [
      "150 to 1000, 100 to 1210, half an hour",
      firing(ramp(150, 1000), ramp(100, 1210), { holdHours: 0.5 }),
      0.1803,
      3.98,
    ],
    [
      "a slow-cooled mid-range firing",
      firing(
        ramp(83.333, 1198.889),
        { holdHours: 0.25 },
        ramp(277.778, 1037.778),
        ramp(69.444, 760),
      ),
      -0.4199,
      -11.67,
    ],
    ["60 to 1222, 60 down to 1000", firing(ramp(60, 1222), ramp(60, 1000)), 0.7619, 19.54],
    [
      "60 to 1222, a crash to 1166, 60 down to 900",
      firing(ramp(60, 1222), ramp(999, 1166), ramp(60, 900)),
      0.2131,
      4.07,
    ],
  ])("gives cone 6 the same heatwork: %s", (_history, curve, logHeatwork, marginK) => {
    const answer = heatworkOf(curve);
    const model = CONE_MODELS["self-supporting"].find((each) => each.cone === "6");
    const six = answer.cones.find((each) => each.cone === "6");
    if (model === undefined || six === undefined) throw new Error("no cone 6");
    expect(Math.abs(six.marginK - marginK)).toBeLessThan(0.02);
    const peakK = kelvinFromCelsius(answer.peakC);
    expect(Math.abs(anchored(model, peakK, logHeatwork).marginK - six.marginK)).toBeLessThan(0.02);
  });
});
