import { describe, expect, it } from "vitest";
import { corners, sampled } from "../../support/curves.ts";
import { schedule, segment } from "../../support/schedules.ts";
import { expectedOf, isWithin, noisy, watchedAt } from "../../support/watching.ts";

/** 60 °C/h from 20 °C: the chart's own ramp, on which cone 5 goes down at the printed 1186 °C. */
const RAMP = sampled(corners([0, 20], [22, 1340]), 60);
const CHART_C = 1186;
const CHART_SECONDS = ((CHART_C - 20) / 60) * 3600;

describe("the expectation of a cone", () => {
  it.each([15, 18, 19])(
    "on the chart's ramp is the chart's end point, asked after %i h",
    (hours) => {
      const state = watchedAt(RAMP, hours, { cone: "5" });
      // The anchored model returns printed cells to 0.33 K, which is 20 s at 60 °C/h; 1186 is printed to 1 °C, a minute.
      expect(Math.abs(expectedOf(state).atSeconds - CHART_SECONDS)).toBeLessThan(80);
      expect(state.wanted?.by).toBe("present rate");
    },
  );

  it("lies within twice its span where readings scatter by 1.5 °C", () => {
    for (const hours of [12, 15, 17, 18, 19]) {
      const span = expectedOf(watchedAt(noisy(RAMP, 1.5), hours, { cone: "5" }));
      expect(isWithin(CHART_SECONDS, span, 2)).toBe(true);
    }
  });

  it("spans the usual twelve degrees of thermocouple and cone: twelve minutes at 60 °C/h", () => {
    const span = expectedOf(watchedAt(RAMP, 18, { cone: "5", offsetK: null }));
    const { atSeconds, earliestSeconds, latestSeconds } = span;
    // 12 K at 1 K a minute.
    expect(atSeconds - earliestSeconds).toBeGreaterThan(11 * 60);
    expect(latestSeconds - atSeconds).toBeGreaterThan(11 * 60);
    expect(latestSeconds - atSeconds).toBeLessThan(16 * 60);
  });

  it("allows for the 8 °C that kilns usually run hotter for the cone than they read", () => {
    const usual = expectedOf(watchedAt(RAMP, 18, { cone: "5", offsetK: null }));
    expect(Math.abs(usual.atSeconds - (CHART_SECONDS - 8 * 60))).toBeLessThan(80);
  });

  it("comes earlier by past witness cones that say the thermocouple reads low", () => {
    const plain = watchedAt(RAMP, 18, { cone: "5" });
    const warmer = watchedAt(RAMP, 18, { cone: "5", offsetK: 10 });
    const sooner =
      (plain.wanted?.expected?.atSeconds as number) -
      (warmer.wanted?.expected?.atSeconds as number);
    // 10 K at 1 K a minute.
    expect(sooner).toBeGreaterThan(9 * 60);
    expect(sooner).toBeLessThan(11 * 60);
  });

  it("follows the plan into a slower ramp that the present rate knows nothing of", () => {
    const curve = sampled(corners([0, 20], [7.2, 1100], [10, 1240]), 60);
    const plan = schedule({ cone: "5", segments: [segment(1100, 150), segment(1240, 50)] });
    const truth = watchedAt(curve, 10, { cone: "5" }).wanted?.downAtSeconds as number;
    const byRate = expectedOf(watchedAt(curve, 6, { cone: "5" })).atSeconds;
    const byPlan = watchedAt(curve, 6, { plan });
    expect(byPlan.wanted?.by).toBe("plan");
    expect(Math.abs(expectedOf(byPlan).atSeconds - truth)).toBeLessThan(60);
    expect(truth - byRate).toBeGreaterThan(30 * 60);
  });

  it("does not trust a plan that the kiln cannot keep up with", () => {
    // Asked for 150 °C/h, the kiln climbs at 75 from 700 °C on.
    const curve = sampled(corners([0, 20], [4.53, 700], [11.73, 1240]), 60);
    const plan = schedule({ cone: "5", segments: [segment(1240, 150)] });
    const truth = watchedAt(curve, 11.7, { cone: "5" }).wanted?.downAtSeconds as number;
    const state = watchedAt(curve, 8, { plan });
    expect(state.wanted?.by).toBe("plan");
    expect(Math.abs(expectedOf(state).atSeconds - truth)).toBeLessThan(60);
  });

  it("trusts a plan again at a corner, before the new ramp has shown itself", () => {
    const curve = sampled(corners([0, 20], [6, 920], [6.2, 926], [10, 1306]), 60);
    const plan = schedule({ cone: "5", segments: [segment(920, 150, 12), segment(1306, 100)] });
    const truth = watchedAt(curve, 10, { cone: "5" }).wanted?.downAtSeconds as number;
    const state = watchedAt(curve, 6.3, { plan });
    // The last ten minutes are half a hold; at their mean rate the cone would come hours later.
    expect(Math.abs(expectedOf(state).atSeconds - truth)).toBeLessThan(15 * 60);
  });

  it("counts what is left of a planned hold from when the kiln came to it", () => {
    const curve = sampled(corners([0, 20], [19, 1160], [21, 1160]), 60);
    const plan = schedule({ cone: "4", segments: [segment(1160, 60, 60)] });
    const state = watchedAt(curve, 19.5, { plan });
    expect(state.plan).toMatchObject({ doing: "holding", toC: 1160 });
    // 2 °C below the hold counts as being there: 2 minutes at 60 °C/h.
    expect(state.plan?.leftSeconds).toBeGreaterThanOrEqual((30 - 3) * 60);
    expect(state.plan?.leftSeconds).toBeLessThanOrEqual(30 * 60);
  });

  it("is not given while the kiln falls, only what was reached", () => {
    const curve = sampled(corners([0, 20], [19, 1160], [20, 960]), 60);
    const { wanted, phase } = watchedAt(curve, 19.5, { cone: "5" });
    expect(phase).toBe("falling");
    expect(wanted).toMatchObject({ expected: null, whyNot: "the kiln is falling" });
    expect(wanted?.heatwork).toBeGreaterThan(0.05);
  });

  it("is not given for a hold that would take more than half a day", () => {
    const curve = sampled(corners([0, 20], [10, 900], [12, 900]), 60);
    expect(watchedAt(curve, 12, { cone: "5" }).wanted).toMatchObject({
      expected: null,
      whyNot: "not within 12 h at this rate",
    });
  });

  it("says that a plan ends before the cone is down", () => {
    const curve = sampled(corners([0, 20], [18, 1100]), 60);
    const plan = schedule({ cone: "6", segments: [segment(1180, 60)] });
    const state = watchedAt(curve, 17, { plan });
    expect(state.wanted?.whyNot).toContain("ends before");
    expect(state.findings.map(({ topic }) => topic)).toContain("cone not reached ahead");
  });

  it("waits while the last minutes hold too few readings", () => {
    const curve = sampled(corners([0, 20], [1, 80]), 60);
    const state = watchedAt(curve, 0.03, { cone: "5" });
    expect(state.rate).toBeNull();
    expect(state.wanted?.whyNot).toContain("too few readings");
  });

  it("refuses a cone that the series does not have", () => {
    expect(() => watchedAt(RAMP, 10, { cone: "42" })).toThrow(/watch\/no-such-cone/);
  });
});
