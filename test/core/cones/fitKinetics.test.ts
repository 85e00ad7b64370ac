import { describe, expect, it } from "vitest";
import { CONE_TABLES } from "../../../src/core/cones/cone.ts";
import { fitKinetics, leastSquaresCone } from "../../../src/core/cones/fitKinetics.ts";
import { KINETICS, rampEndPointK } from "../../../src/core/cones/kinetics.ts";

describe("fitKinetics", () => {
  it("gives the shipped constants from the shipped tables", () => {
    expect(fitKinetics(CONE_TABLES)).toEqual(KINETICS);
  });

  it("lends the self-supporting constants to large cone 14, whose printed row falls with the rate", () => {
    expect(KINETICS.large.at(-1)).toEqual(KINETICS["self-supporting"].at(-1));
  });

  it("has no bare end point out of order among whole cones, from 5 to 600 °C/h", () => {
    for (const rateCPerHour of [5, 15, 60, 150, 300, 600]) {
      const ends = KINETICS["self-supporting"]
        .filter(({ cone }) => !cone.includes("."))
        .map((each) => rampEndPointK(each.activationKJ, each.endPoint60C + 273.15, rateCPerHour));
      expect(ends).toEqual(ends.toSorted((a, b) => a - b));
    }
  });
});

describe("leastSquaresCone", () => {
  it("returns the constants that made the end points", () => {
    const anchors = [15, 60, 150].map((rateCPerHour) => ({
      rateCPerHour,
      tempC: rampEndPointK(700, 1473.15, rateCPerHour) - 273.15,
    }));
    const fit = leastSquaresCone(anchors, null);
    expect(Math.exp(fit.logActivation)).toBeCloseTo(700, 3);
    expect(fit.endPoint60C).toBeCloseTo(1200, 5);
  });

  it("leans towards its prior when the end points say little", () => {
    const anchors = [
      { rateCPerHour: 60, tempC: 1200 },
      { rateCPerHour: 61, tempC: 1201 },
    ];
    const fit = leastSquaresCone(anchors, { meanLog: Math.log(500), sd: 0.1 });
    expect(Math.exp(fit.logActivation)).toBeCloseTo(500, 0);
  });
});
