import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  makeCurve,
  offsetBy,
  peakOf,
  shifted,
  sliced,
  temperatureAt,
} from "../../../src/core/curve/Curve.ts";
import { crossingTimes } from "../../../src/core/curve/edgeTimes.ts";
import { localSlopes, slopeMeter, thinned } from "../../../src/core/curve/slopes.ts";
import { anyCurve, corners, sampled } from "../../support/curves.ts";

describe("a Curve", () => {
  it("refuses times that stand still, naming the point", () => {
    expect(() => makeCurve([0, 60, 60], [1, 2, 3])).toThrow("does not rise at point 2");
  });

  it("refuses a temperature that is not a number", () => {
    expect(() => makeCurve([0, 60], [1, Number.NaN])).toThrow("point 1 is not finite");
  });

  it("refuses a gap that is not one step", () => {
    expect(() => makeCurve([0, 60, 120], [1, 2, 3], [{ fromSeconds: 0, toSeconds: 120 }])).toThrow(
      "one step",
    );
  });

  it("copies what it is given", () => {
    const temps = [1, 2];
    const curve = makeCurve([0, 1], temps);
    temps[0] = 99;
    expect(curve.tempsC[0]).toBe(1);
  });
});

describe("temperatureAt", () => {
  it("lies between the neighbouring readings, for any Curve and moment", () => {
    fc.assert(
      fc.property(anyCurve, fc.double({ min: 0, max: 1, noNaN: true }), (curve, share) => {
        const first = curve.timesSeconds[0] as number;
        const last = curve.timesSeconds.at(-1) as number;
        const temp = temperatureAt(curve, first + share * (last - first)) as number;
        expect(temp).toBeGreaterThanOrEqual(Math.min(...curve.tempsC) - 1e-9);
        expect(temp).toBeLessThanOrEqual(Math.max(...curve.tempsC) + 1e-9);
      }),
    );
  });

  it("says nothing inside a gap, and the reading at its edges", () => {
    const curve = makeCurve([0, 60, 3660], [100, 110, 200], [{ fromSeconds: 60, toSeconds: 3660 }]);
    expect(temperatureAt(curve, 60)).toBe(110);
    expect(temperatureAt(curve, 61)).toBeNull();
    expect(temperatureAt(curve, 3660)).toBe(200);
  });

  it("says nothing before the first and after the last reading", () => {
    const curve = corners([0, 20], [1, 80]);
    expect(temperatureAt(curve, -1)).toBeNull();
    expect(temperatureAt(curve, 3601)).toBeNull();
  });
});

describe("crossingTimes", () => {
  it("alternates between heating and cooling, for any Curve", () => {
    fc.assert(
      fc.property(anyCurve, fc.double({ min: 1, max: 1299, noNaN: true }), (curve, tempC) => {
        const directions = crossingTimes(curve, tempC).map((crossing) => crossing.direction);
        for (let i = 1; i < directions.length; i++)
          expect(directions[i]).not.toBe(directions[i - 1]);
      }),
    );
  });

  it("finds the moment on the straight piece", () => {
    const found = crossingTimes(corners([0, 0], [2, 200], [3, 0]), 50);
    expect(found.map((crossing) => crossing.seconds)).toEqual([1800, 9900]);
  });

  it("finds nothing inside a gap", () => {
    const curve = makeCurve([0, 60, 3660], [100, 110, 200], [{ fromSeconds: 60, toSeconds: 3660 }]);
    expect(crossingTimes(curve, 150)).toEqual([]);
  });
});

describe("moved Curves", () => {
  it("go there and back, for any whole shift", () => {
    fc.assert(
      fc.property(anyCurve, fc.integer({ min: -1e6, max: 1e6 }), (curve, seconds) => {
        expect(shifted(shifted(curve, seconds), -seconds)).toEqual(curve);
      }),
    );
  });

  it("keep their shape when offset", () => {
    expect([...offsetBy(corners([0, 10], [1, 20]), 5).tempsC]).toEqual([15, 25]);
  });

  it("are cut with interpolated ends", () => {
    const cut = sliced(corners([0, 0], [1, 100], [2, 0]), 1800, 5400);
    expect([...(cut?.timesSeconds ?? [])]).toEqual([1800, 3600, 5400]);
    expect([...(cut?.tempsC ?? [])]).toEqual([50, 100, 50]);
  });

  it("are nothing when less than two points are left", () => {
    expect(sliced(corners([0, 0], [1, 100]), 7200, 9000)).toBeNull();
  });
});

describe("slopes", () => {
  it("are the ramp's rate inside a ramp, whatever the sampling", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 200 }),
        fc.double({ min: -300, max: 300, noNaN: true }),
        (stepSeconds, rate) => {
          const ramp = sampled(corners([0, 1000], [2, 1000 + 2 * rate]), stepSeconds);
          expect(slopeMeter(ramp).slopeAt(3000, 900)).toBeCloseTo(rate, 4);
        },
      ),
    );
  });

  it("are the least-squares slope: half the ramp's rate at a corner between hold and ramp", () => {
    expect(slopeMeter(corners([0, 500], [1, 500], [2, 600])).slopeAt(3600, 1200)).toBeCloseTo(
      50,
      6,
    );
  });

  it("are not measured where the window leaves the Curve or meets a gap", () => {
    const curve = makeCurve(
      [0, 600, 1200, 4800, 5400, 6000],
      [0, 10, 20, 80, 90, 100],
      [{ fromSeconds: 1200, toSeconds: 4800 }],
    );
    expect([...localSlopes(curve, 600)].map(Number.isNaN)).toEqual([
      true,
      false,
      true,
      true,
      false,
      true,
    ]);
  });
});

describe("thinned", () => {
  it("keeps the peak, the lowest point, the ends and the order, for any Curve", () => {
    fc.assert(
      fc.property(anyCurve, fc.integer({ min: 8, max: 40 }), (curve, points) => {
        const thin = thinned(curve, points);
        expect(thin.timesSeconds.length).toBeLessThanOrEqual(Math.max(points, 8));
        expect(peakOf(thin).tempC).toBe(peakOf(curve).tempC);
        expect(Math.min(...thin.tempsC)).toBe(Math.min(...curve.tempsC));
        expect(thin.timesSeconds[0]).toBe(curve.timesSeconds[0]);
        expect(thin.timesSeconds.at(-1)).toBe(curve.timesSeconds.at(-1));
      }),
    );
  });

  it("keeps both sides of a gap", () => {
    const times = Array.from({ length: 500 }, (_, i) => (i < 250 ? i : i + 5000));
    const curve = makeCurve(times, times, [{ fromSeconds: 249, toSeconds: 5250 }]);
    expect(thinned(curve, 20).gaps).toEqual(curve.gaps);
  });
});
