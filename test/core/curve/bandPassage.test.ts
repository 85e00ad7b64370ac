import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bandPassage } from "../../../src/core/curve/bandPassage.ts";
import { makeCurve, offsetBy, shifted } from "../../../src/core/curve/Curve.ts";
import { seededEven } from "../../../src/core/math/distributions.ts";
import { corners, sampled } from "../../support/curves.ts";

const QUARTZ = { name: "quartz inversion", lowC: 520, highC: 620 };

describe("the passage through a band", () => {
  it("has the mean rate of the band's width over the time to cross", () => {
    const passage = bandPassage(corners([0, 20], [5, 1200], [10, 200]), QUARTZ, "cooling");
    expect(passage.measured).toBe("whole");
    expect(passage.seconds).toBeCloseTo(1800, 6);
    expect(passage.meanCPerHour).toBeCloseTo(-200, 6);
    expect(passage.fastestCPerHour).toBeCloseTo(-200, 6);
    expect(passage.recrossings).toBe(0);
  });

  it("tells the slow part of a passage from the fast part", () => {
    const passage = bandPassage(
      corners([0, 20], [5, 1200], [6, 600], [6.5, 540], [10.5, 500]),
      QUARTZ,
      "cooling",
    );
    expect(passage.fastestCPerHour).toBeLessThan(-120);
    expect(passage.meanCPerHour).toBeGreaterThan(-100);
  });

  it("sees heating before the peak only", () => {
    const passage = bandPassage(corners([0, 20], [6, 1220], [10, 300]), QUARTZ, "heating");
    expect(passage.meanCPerHour).toBeCloseTo(200, 6);
    expect(passage.fromC).toBe(520);
  });

  it("is not measured when the readings end above the band", () => {
    const passage = bandPassage(corners([0, 20], [6, 1220], [8, 800]), QUARTZ, "cooling");
    expect(passage).toMatchObject({
      measured: "no",
      seconds: null,
      meanCPerHour: null,
      notes: [],
    });
  });

  it("is measured in part, and says why, when the readings end inside the band", () => {
    const passage = bandPassage(corners([0, 20], [6, 1220], [8, 560]), QUARTZ, "cooling");
    expect(passage.measured).toBe("partly");
    expect(passage.meanCPerHour).toBeNull();
    expect(passage.fastestCPerHour).toBeCloseTo(-330, 3);
    expect(passage.notes).toEqual(["the readings end inside the band"]);
  });

  it("gives no number when a gap hides the edge", () => {
    const curve = makeCurve(
      [0, 3600, 7200, 14400, 18000],
      [1000, 900, 800, 560, 400],
      [{ fromSeconds: 7200, toSeconds: 14400 }],
    );
    const passage = bandPassage(curve, QUARTZ, "cooling");
    expect(passage.measured).toBe("partly");
    expect(passage.seconds).toBeNull();
    expect(passage.notes).toContain("the moment it entered the band lies in a gap");
  });

  it("counts a reheat inside the band and takes first entering to last leaving", () => {
    const passage = bandPassage(
      corners([0, 1000], [4, 600], [5, 500], [6, 580], [8, 400]),
      QUARTZ,
      "cooling",
    );
    expect(passage.recrossings).toBe(1);
    expect(passage.notes.join()).toContain("turned back");
    expect(passage.endSeconds).toBeGreaterThan(6 * 3600);
  });

  it("does not count noise at the edge as turning back", () => {
    const random = seededEven(7);
    const clean = sampled(corners([0, 1000], [8, 200]), 10);
    const noisy = makeCurve(
      clean.timesSeconds,
      clean.tempsC.map((temp) => temp + 2 * (random() - 0.5)),
    );
    const passage = bandPassage(noisy, QUARTZ, "cooling");
    expect(passage.recrossings).toBe(0);
    expect(passage.meanCPerHour as number).toBeGreaterThan(-100.6);
    expect(passage.meanCPerHour as number).toBeLessThan(-99.4);
  });

  it("does not change when the clock does, for any shift", () => {
    const curve = sampled(corners([0, 20], [6, 1220], [14, 100]), 60);
    const plain = bandPassage(curve, QUARTZ, "cooling");
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), (seconds) => {
        const moved = bandPassage(shifted(curve, seconds), QUARTZ, "cooling");
        expect(moved.seconds).toBeCloseTo(plain.seconds as number, 4);
        expect(moved.fastestCPerHour).toBeCloseTo(plain.fastestCPerHour as number, 4);
      }),
      { numRuns: 25 },
    );
  });

  it("moves with the band when Curve and band are offset together", () => {
    const curve = sampled(corners([0, 20], [6, 1220], [14, 100]), 60);
    const band = { ...QUARTZ, lowC: QUARTZ.lowC + 9, highC: QUARTZ.highC + 9 };
    expect(bandPassage(offsetBy(curve, 9), band, "cooling").seconds).toBeCloseTo(
      bandPassage(curve, QUARTZ, "cooling").seconds as number,
      4,
    );
  });

  it("never calls a passage slower at its fastest than on its mean, for any cooling", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 30, max: 3000, noNaN: true }),
        fc.double({ min: 30, max: 3000, noNaN: true }),
        (first, second) => {
          const middle = (1000 - 570) / first;
          const curve = corners([0, 1000], [middle, 570], [middle + 470 / second, 100]);
          const passage = bandPassage(curve, QUARTZ, "cooling");
          expect(Math.abs(passage.fastestCPerHour as number)).toBeGreaterThanOrEqual(
            Math.abs(passage.meanCPerHour as number) * 0.97,
          );
        },
      ),
    );
  });
});
