import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { heatworkOf } from "../../../src/core/cones/heatwork.ts";
import { heatworkTrace } from "../../../src/core/cones/heatworkTrace.ts";
import { makeCurve } from "../../../src/core/curve/Curve.ts";
import { firing, hold, ramp } from "./rampsAndHolds.ts";

const series = "self-supporting";
const curve = firing(ramp(150, 1080), ramp(60, 1190), hold(0.5), ramp(100, 500));

describe("heatworkTrace", () => {
  it("never falls and its times rise, for any peak", () => {
    fc.assert(
      fc.property(fc.double({ min: 700, max: 1300, noNaN: true }), (peakC) => {
        const traces = heatworkTrace({
          curve: firing(ramp(100, peakC), hold(0.3), ramp(100, 300)),
          series,
          cones: ["018", "04", "6", "10"],
          points: 40,
        });
        for (const { timesSeconds, heatwork } of traces) {
          expect(timesSeconds).toHaveLength(40);
          for (let i = 1; i < 40; i++) {
            expect(timesSeconds[i]).toBeGreaterThan(timesSeconds[i - 1] as number);
            expect(heatwork[i]).toBeGreaterThanOrEqual(heatwork[i - 1] as number);
          }
        }
      }),
      { numRuns: 30 },
    );
  });

  it("passes 1 when heatworkOf says that the cone goes down", () => {
    const five = heatworkOf(curve).cones.find(({ cone }) => cone === "5");
    const [trace] = heatworkTrace({ curve, series, cones: ["5"], points: 2001 });
    const at = trace?.heatwork.findIndex((value) => value >= 1) ?? -1;
    const step = (trace?.timesSeconds[1] ?? 0) - (trace?.timesSeconds[0] ?? 0);
    const passed = trace?.timesSeconds[at] ?? 0;
    expect(Math.abs(passed - (five?.downAtSeconds ?? 0))).toBeLessThanOrEqual(step);
  });

  it("ends where heatworkOf ends for a cone that stays up", () => {
    const six = heatworkOf(curve).cones.find(({ cone }) => cone === "6");
    const [trace] = heatworkTrace({ curve, series, cones: ["6"] });
    // A trace ends when 99.9 % of the final value is reached.
    expect((trace?.heatwork.at(-1) ?? 0) / (six?.heatwork ?? 1)).toBeGreaterThan(0.998);
  });

  it("stands still across a gap", () => {
    const gap = { fromSeconds: 60_000, toSeconds: 64_000 };
    const logged = makeCurve([0, 60_000, 64_000, 66_000], [25, 1150, 1190, 1200], [gap]);
    const [trace] = heatworkTrace({ curve: logged, series, cones: ["5"], points: 200 });
    const inside = (trace?.heatwork ?? new Float64Array()).filter(
      (_, i) =>
        (trace?.timesSeconds[i] ?? 0) > gap.fromSeconds &&
        (trace?.timesSeconds[i] ?? 0) < gap.toSeconds,
    );
    expect(new Set(inside).size).toBe(1);
  });

  it("refuses a cone that the series does not have", () => {
    expect(() => heatworkTrace({ curve, series, cones: ["99"] })).toThrow(RangeError);
  });
});
