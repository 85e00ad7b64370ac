import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coneIndex, type Heatwork } from "../../../src/core/cones/cone.ts";
import { heatworkOf } from "../../../src/core/cones/heatwork.ts";
import { type Curve, makeCurve } from "../../../src/core/curve/Curve.ts";
import { firing, hold, ramp } from "./rampsAndHolds.ts";

/** Plausible firings: up in two ramps, a hold, down; the whole range of rates that cones meet. */
const anyFiring = fc
  .record({
    peakC: fc.double({ min: 620, max: 1340, noNaN: true }),
    rate: fc.double({ min: 15, max: 250, noNaN: true }),
    holdHours: fc.double({ min: 0, max: 3, noNaN: true }),
    coolRate: fc.double({ min: 20, max: 400, noNaN: true }),
  })
  .map(({ peakC, rate, holdHours, coolRate }) =>
    firing(ramp(150, peakC - 300), ramp(rate, peakC), hold(holdHours + 0.01), ramp(coolRate, 100)),
  );

function margins(curve: Curve, offsetK = 0): readonly number[] {
  return heatworkOf(curve, { offsetK }).cones.map((cone) => cone.marginK);
}

/** Cones between a millionth and a thousand budgets: beyond, the table's shift means nothing. */
function expectNoLess(before: Heatwork, after: Heatwork): void {
  before.cones.forEach((cone, i) => {
    if (cone.heatwork < 1e-6 || cone.heatwork > 1e3) return;
    expect(after.cones[i]?.marginK).toBeGreaterThanOrEqual(cone.marginK - 1e-6);
  });
}

function mapped(curve: Curve, time: (t: number) => number, temp = (c: number) => c): Curve {
  return makeCurve(curve.timesSeconds.map(time), curve.tempsC.map(temp));
}

describe("heatworkOf", () => {
  it("never gives less to a hotter firing, for any firing and any cone that feels it", () => {
    fc.assert(
      fc.property(anyFiring, fc.double({ min: 0.1, max: 60, noNaN: true }), (curve, hotterK) => {
        expectNoLess(heatworkOf(curve), heatworkOf(curve, { offsetK: hotterK }));
      }),
      { numRuns: 100 },
    );
  });

  it("never gives less to a longer firing, for any firing and any cone that feels it", () => {
    fc.assert(
      fc.property(anyFiring, fc.double({ min: 1.01, max: 3, noNaN: true }), (curve, slower) => {
        const longer = mapped(curve, (t) => t * slower);
        expectNoLess(heatworkOf(curve), heatworkOf(longer));
      }),
      { numRuns: 100 },
    );
  });

  it("is the same when pieces are split, for any firing", () => {
    fc.assert(
      fc.property(anyFiring, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (curve, share) => {
        const times: number[] = [];
        const temps: number[] = [];
        curve.timesSeconds.forEach((time, i) => {
          const [t0, c0] = [curve.timesSeconds[i - 1], curve.tempsC[i - 1]];
          if (t0 !== undefined && c0 !== undefined) {
            times.push(t0 + share * (time - t0));
            temps.push(c0 + share * ((curve.tempsC[i] as number) - c0));
          }
          times.push(time);
          temps.push(curve.tempsC[i] as number);
        });
        const whole = margins(curve);
        margins(makeCurve(times, temps)).forEach((margin, i) => {
          // Rounding of times and temperatures, and pieces so cold that they are skipped: under 1 mK.
          expect(Math.abs(margin - (whole[i] as number))).toBeLessThan(1e-3);
        });
      }),
      { numRuns: 60 },
    );
  });

  it("is the same when the clock starts later, for any firing", () => {
    fc.assert(
      fc.property(anyFiring, fc.integer({ min: -1_000_000, max: 1_000_000 }), (curve, shift) => {
        const whole = margins(curve);
        margins(mapped(curve, (t) => t + shift)).forEach((margin, i) => {
          expect(Math.abs(margin - (whole[i] as number))).toBeLessThan(1e-4);
        });
      }),
      { numRuns: 60 },
    );
  });

  it("takes an offset as if the readings had been that much higher, for any firing", () => {
    fc.assert(
      fc.property(anyFiring, fc.double({ min: -40, max: 40, noNaN: true }), (curve, offsetK) => {
        const moved = margins(
          mapped(
            curve,
            (t) => t,
            (c) => c + offsetK,
          ),
        );
        margins(curve, offsetK).forEach((margin, i) => {
          expect(Math.abs(margin - (moved[i] as number))).toBeLessThan(1e-6);
        });
      }),
      { numRuns: 60 },
    );
  });

  it("takes cones down softest first, for any firing on chart-like rates", () => {
    fc.assert(
      fc.property(anyFiring, (curve) => {
        const down = heatworkOf(curve)
          .cones.filter(({ cone, downAtSeconds }) => downAtSeconds !== null && !cone.includes("."))
          .map(({ cone }) => coneIndex(cone));
        expect(down).toEqual(down.map((_, i) => -22 + i));
      }),
      { numRuns: 60 },
    );
  });

  it("says a cone is down exactly when it has a time of going down, for any firing", () => {
    fc.assert(
      fc.property(anyFiring, (curve) => {
        for (const cone of heatworkOf(curve).cones) {
          expect(cone.downAtSeconds !== null).toBe(cone.heatwork >= 1);
          expect(cone.marginK >= 0).toBe(cone.heatwork >= 1);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("finds the time at which the printed end point is passed on a plain ramp", () => {
    const six = heatworkOf(firing(ramp(60, 1300))).cones.find(({ cone }) => cone === "6");
    // Printed 1222 °C at 60 °C/h; 0.35 K of anchoring at the printed rate is 21 s.
    expect(Math.abs((six?.downAtSeconds ?? 0) - ((1222 - 25) / 60) * 3600)).toBeLessThan(21);
  });

  it("adds nothing across a gap and says that it did not", () => {
    const times = [0, 71820, 73620, 75420];
    const temps = [25, 1222, 1222, 1222];
    const withGap = heatworkOf(makeCurve(times, temps, [{ fromSeconds: 71820, toSeconds: 73620 }]));
    const shorter = heatworkOf(makeCurve([0, 71820, 73620], [25, 1222, 1222]));
    expect(withGap.position.label).toBe(shorter.position.label);
    expect(withGap.extrapolations).toEqual([
      "nothing was measured for 30 min from 19:57; its heat is not counted",
    ]);
  });

  it.each([
    [firing(ramp(60, 500)), "below cone 022"],
    [firing(ramp(60, 1450)), "cone 14 or more"],
    [firing(ramp(60, 1450), ramp(200, 400)), "cone 14 or more"],
  ])("has no position in numbers outside the series", (curve, label) => {
    const { position, sigmaCones, modelSigmaCones } = heatworkOf(curve);
    expect(position).toMatchObject({ label, fraction: null, index: null });
    expect([sigmaCones, modelSigmaCones]).toEqual([null, null]);
  });

  it("writes a position as the last cone down and the share of the way on", () => {
    expect(heatworkOf(firing(ramp(60, 1204))).position.label).toMatch(/^cone 5 \+ 5\d %$/);
  });

  it("passes from cone 1 to cone 3 in the iron-free series, which has no cone 2", () => {
    const { position } = heatworkOf(firing(ramp(60, 1147)), {
      series: "self-supporting-iron-free",
    });
    expect(position).toMatchObject({ cone: "1", next: "3" });
    expect(position.index).toBeCloseTo(2 * (position.fraction ?? 0), 9);
  });

  it("widens its uncertainty by the offset and by slow holds", () => {
    const plain = heatworkOf(firing(ramp(60, 1225)), { offsetSigmaK: 3 });
    const slow = heatworkOf(firing(ramp(60, 1200), hold(6)), { offsetSigmaK: 3 });
    expect(plain.sigmaCones).toBeCloseTo(plain.modelSigmaCones ?? 0, 9);
    expect(slow.sigmaCones ?? 0).toBeGreaterThan(plain.sigmaCones ?? 0);
    expect(heatworkOf(firing(ramp(60, 1225))).sigmaCones ?? 0).toBeGreaterThan(0.5);
  });

  it("takes its ± across the cones that so much less and so much more heat would reach", () => {
    // 12 K around 1239 °C at 60 °C/h: cones 6, 7, 8 fall at 1222, 1239, 1249 by the chart.
    const sigma = heatworkOf(firing(ramp(60, 1239)), { offsetSigmaK: 12 }).sigmaCones ?? 0;
    const up = 1 + (1251 - 1249) / (1260 - 1249);
    const down = (1239 - 1227) / (1239 - 1222);
    expect(sigma).toBeCloseTo((up + down) / 2, 1);
  });

  it("measures the rate over the last 100 K below the peak", () => {
    expect(heatworkOf(firing(ramp(200, 1000), ramp(80, 1200))).lastHundredCPerHour).toBeCloseTo(
      80,
      6,
    );
    expect(heatworkOf(firing(ramp(200, 90))).lastHundredCPerHour).toBeNull();
  });

  it("counts a hold inside the last 100 K as time", () => {
    const curve = firing(ramp(100, 1150), hold(1), ramp(100, 1200));
    expect(heatworkOf(curve).lastHundredCPerHour).toBeCloseTo(50, 6);
  });

  it("has no last rate when a gap lies in that stretch", () => {
    const curve = makeCurve(
      [0, 36000, 37000, 40000],
      [25, 1100, 1130, 1200],
      [{ fromSeconds: 36000, toSeconds: 37000 }],
    );
    expect(heatworkOf(curve).lastHundredCPerHour).toBeNull();
  });

  it.each([
    [firing(ramp(60, 1222)), 60],
    [firing(ramp(150, 1243)), 150],
    [firing(ramp(15, 1000)), 15],
  ])("gives a plain ramp its own rate as effective rate", (curve, rate) => {
    expect(heatworkOf(curve).effectiveRateCPerHour).toBeCloseTo(rate, 4);
  });

  it("says when the time near the top is beyond the charts", () => {
    expect(heatworkOf(firing(ramp(60, 1170), hold(30))).extrapolations.join()).toContain("8 °C/h");
    expect(heatworkOf(firing(ramp(500, 1260))).extrapolations.join()).toContain("300 °C/h");
    expect(heatworkOf(firing(ramp(100, 1230))).extrapolations).toEqual([]);
  });

  it("warns that small cones were published at one rate", () => {
    expect(heatworkOf(firing(ramp(300, 1255)), { series: "small" }).extrapolations).toHaveLength(1);
  });
});
