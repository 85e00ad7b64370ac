import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { AssumedKiln } from "../../../src/core/kiln/LearnedKiln.ts";
import { expandSchedule } from "../../../src/core/schedule/expandSchedule.ts";
import { anySchedule, schedule, segment } from "../../support/schedules.ts";

/** Heats at a steady 200 °C/h, falls by 0.5 per hour of what it is above 20 °C. */
const SIMPLE_KILN: AssumedKiln = {
  fullHeatingCPerHour: () => 200,
  naturalCoolingCPerHour: (tempC) => 0.5 * (tempC - 20),
  basis: "a kiln made up for this test",
};

describe("expandSchedule", () => {
  it("lays out ramps and holds in time", () => {
    const { timeline, curve } = expandSchedule(
      schedule({ segments: [segment(120, 50, 30), segment(1120, 200)] }),
    );
    expect(timeline.map((row) => [row.kind, row.startSeconds, row.endSeconds])).toEqual([
      ["ramp", 0, 7200],
      ["hold", 7200, 9000],
      ["ramp", 9000, 27_000],
    ]);
    expect([...curve.timesSeconds]).toEqual([0, 7200, 9000, 27_000]);
    expect([...curve.tempsC]).toEqual([20, 120, 120, 1120]);
  });

  it("says the rate of a falling ramp as negative", () => {
    const { timeline } = expandSchedule(
      schedule({ segments: [segment(620, 100), segment(520, -50)] }),
    );
    expect(timeline[1]?.rateCPerHour).toBeCloseTo(-50, 9);
  });

  it("falls as the kiln does: from 820 to 420 °C at 0.5 per hour takes 2 ln 2 hours", () => {
    const { timeline } = expandSchedule(
      schedule({ startC: 820, segments: [segment(420, "free")] }),
      { kiln: SIMPLE_KILN },
    );
    const hours = (timeline[0]?.endSeconds as number) / 3600;
    expect(Math.abs(hours - 2 * Math.LN2)).toBeLessThan(1e-4);
  });

  it("falls no faster than a known kiln does, whatever is programmed, and keeps the programmed rate", () => {
    const fast = schedule({ startC: 820, segments: [segment(420, -5000)] });
    const { timeline } = expandSchedule(fast, { kiln: SIMPLE_KILN });
    expect((timeline[0]?.endSeconds as number) / 3600).toBeCloseTo(2 * Math.LN2, 3);
    expect(timeline[0]?.rateCPerHour).toBe(-5000);
    // Of an assumed kiln nobody knows whether it can.
    expect(expandSchedule(fast).timeline[0]?.endSeconds).toBeCloseTo((400 / 5000) * 3600, 6);
  });

  it("heats as the kiln does", () => {
    const { timeline } = expandSchedule(schedule({ segments: [segment(420, "free")] }), {
      kiln: SIMPLE_KILN,
    });
    expect(timeline[0]?.endSeconds).toBeCloseTo(7200, 6);
    expect(timeline[0]?.assumedRate).toBe(true);
  });

  it("says what free was taken to be", () => {
    const { assumptions } = expandSchedule(
      schedule({ segments: [segment(1000, "free"), segment(30, "free")] }),
    );
    expect(assumptions.join(" ")).toMatch(/Full heating .* 180 L .* simulated, not measured/);
    expect(assumptions.join(" ")).toMatch(/natural cooling, lid shut/);
  });

  it("comes to an end even when it falls to room temperature and below", () => {
    const { timeline } = expandSchedule(
      schedule({ segments: [segment(200, 100), segment(10, "free")] }),
    );
    expect(Number.isFinite(timeline.at(-1)?.endSeconds)).toBe(true);
  });

  it("refuses a broken promise", () => {
    expect(() => expandSchedule(schedule({ segments: [segment(20, 60)] }))).toThrow(RangeError);
    expect(() => expandSchedule(schedule({ segments: [segment(100, -60)] }))).toThrow(RangeError);
  });

  it("never goes back in time, ends where it should, and has points 10 minutes apart at most on free ramps, for any schedule", () => {
    fc.assert(
      fc.property(anySchedule, (any) => {
        const { curve, timeline } = expandSchedule(any);
        expect(curve.tempsC.at(-1)).toBe(any.segments.at(-1)?.toC);
        expect(curve.timesSeconds.at(-1)).toBe(timeline.at(-1)?.endSeconds);
        timeline.forEach((row, i) => {
          expect(row.startSeconds).toBe(i === 0 ? 0 : timeline[i - 1]?.endSeconds);
          expect(row.endSeconds).toBeGreaterThan(row.startSeconds);
          if (!row.assumedRate) return;
          const times = [...curve.timesSeconds].filter(
            (time) => time >= row.startSeconds && time <= row.endSeconds,
          );
          const steps = times.slice(1).map((time, k) => time - (times[k] as number));
          expect(Math.max(...steps)).toBeLessThanOrEqual(600);
        });
      }),
      { numRuns: 50 },
    );
  });
});
