import { describe, expect, it } from "vitest";
import { offsetTrend } from "../../../src/core/cones/usualOffset.ts";
import { learnKiln } from "../../../src/core/kiln/learnKiln.ts";
import { seeded } from "../../support/demo/seeded.ts";
import { demoFiring } from "../../support/kilns.ts";
import { valued } from "../../support/schedules.ts";

/** What three cones in a row allow in each of so many firings: 30 K, somewhere about the truth. */
function bounds(count: number, driftK: number, seed: number) {
  const random = seeded(seed);
  return Array.from({ length: count }, (_, i) => {
    const truth = 8 + (driftK * i) / (count - 1) + 4 * random.normal();
    const lowK = truth - 15 + 10 * (random.even() - 0.5);
    return { lowK, highK: lowK + 30 };
  });
}

describe("drift of a thermocouple over a row of firings", () => {
  it("of 35 K over 33 firings is plain, and as large as it is, whatever the scatter", () => {
    for (let seed = 1; seed <= 20; seed++) {
      const trend = offsetTrend(bounds(33, 35, seed));
      expect(trend?.isPlain).toBe(true);
      expect(Math.abs((trend?.driftK ?? 0) - 35)).toBeLessThan(4 * (trend?.sigmaK ?? 0));
    }
  });

  it("that is none is hardly ever plain", () => {
    const plain = Array.from({ length: 50 }, (_, seed) => offsetTrend(bounds(20, 0, seed + 100)));
    expect(plain.filter((trend) => trend?.isPlain).length).toBeLessThanOrEqual(1);
  });

  it("needs four firings whose cones pin the thermocouple from both sides", () => {
    expect(offsetTrend(bounds(3, 60, 1))).toBe(null);
    expect(offsetTrend(bounds(9, 60, 1).map(({ lowK }) => ({ lowK, highK: null })))).toBe(null);
  });

  it("is said of a kiln from its logs", () => {
    const firing = demoFiring("2026-02-07-a");
    const logs = bounds(12, 35, 3).map((offset, i) => ({
      ...firing,
      name: `${i}.csv`,
      start: null,
      offset,
    }));
    const said = (firings: typeof logs) =>
      valued(learnKiln(firings)).findings.find(({ topic }) => topic === "thermocouple drift");
    expect(said(logs)).toMatchObject({ severity: "caution" });
    expect(said(logs)?.statement).toContain("came to read {drift} lower");
    expect(said(logs.slice(0, 2))?.statement).toContain("cannot be told yet");
  });
});

describe("what a kiln does at full power", () => {
  it("is never less than the fastest climb that was seen", () => {
    const kiln = valued(learnKiln([demoFiring("2026-02-07-a"), demoFiring("2026-03-14-b")]));
    for (const { seenCPerHour, climbCPerHour } of kiln.reach)
      expect(climbCPerHour).toBeGreaterThanOrEqual(seenCPerHour ?? 0);
  });
});
