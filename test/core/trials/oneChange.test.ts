import { describe, expect, it } from "vitest";
import { heatworkOf } from "../../../src/core/cones/heatwork.ts";
import { REFERENCE_KILN } from "../../../src/core/kiln/LearnedKiln.ts";
import { reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import { expandSchedule } from "../../../src/core/schedule/expandSchedule.ts";
import type { Schedule } from "../../../src/core/schedule/Schedule.ts";
import type { NotedFiring } from "../../../src/core/trials/firingFacts.ts";
import { CHANGES } from "../../../src/core/trials/oneChange.ts";
import { corners, sampled } from "../../support/curves.ts";
import { firing, readingOf } from "../../support/firings.ts";
import { schedule, segment, valued } from "../../support/schedules.ts";

const PLAN = schedule({
  title: "Cone 5",
  cone: "5",
  segments: [segment(1080, 150), segment(1186, 60), segment(100, "free")],
});

function reviewed(curve: Parameters<typeof readingOf>[0][string]): NotedFiring {
  const reading = readingOf({ kiln: curve });
  return { review: valued(reviewFiring({ reading, record: null, plan: null })), record: null };
}

function coneOf(plan: Schedule): number {
  return heatworkOf(expandSchedule(plan).curve).position.index as number;
}

describe("one change of a schedule", () => {
  it("slows the inversion it is asked to, and leaves the cone as it was", () => {
    const other = reviewed(firing({ cristobaliteCPerHour: 15 }));
    const made = CHANGES.cristobalite.make(PLAN, { value: 15, other });
    const slowed = made?.schedule.segments.filter(({ rateCPerHour }) => rateCPerHour === -15) ?? [];
    expect(slowed).toHaveLength(1);
    expect(slowed[0]?.toC).toBeLessThanOrEqual(170);
    expect(coneOf(made?.schedule as Schedule)).toBeCloseTo(coneOf(PLAN), 3);
  });

  it("has nothing to slow on a kiln that falls more slowly by itself", () => {
    const other = reviewed(firing({ cristobaliteCPerHour: 15 }));
    const heavy = { ...REFERENCE_KILN, naturalCoolingCPerHour: () => 12 };
    const known = { kiln: heavy, offsetK: 0 };
    expect(CHANGES.cristobalite.make(PLAN, { value: 15, other, known })).toBeNull();
  });

  it("holds on the way down where the other firing was held, and nowhere else", () => {
    const other = reviewed(
      sampled(corners([0, 20], [8, 1190], [10.5, 950], [12.5, 950], [30, 60]), 60),
    );
    const made = CHANGES.coolingHold.make(PLAN, { value: 7200, other });
    const segments = made?.schedule.segments ?? [];
    expect(segments).toHaveLength(4);
    expect(segments[2]?.toC).toBeGreaterThanOrEqual(945);
    expect(segments[2]?.toC).toBeLessThanOrEqual(955);
    // Two hours, to a few minutes.
    expect(Math.abs((segments[2]?.holdSeconds ?? 0) - 7200)).toBeLessThanOrEqual(600);
    expect(segments.toSpliced(2, 1)).toEqual(PLAN.segments);
  });

  it("does not hold as a firing that was never held", () => {
    const other = reviewed(firing({}));
    expect(CHANGES.coolingHold.make(PLAN, { value: 0, other })).toBeNull();
  });

  it("moves the peak alone to the cone of a hotter firing", () => {
    // Cone 6 is printed with 1222 °C at 60 °C/h, cone 7 with 1239 °C; 8 °C are allowed for.
    const other = reviewed(firing({ peakC: 1219 }));
    const made = CHANGES.heat.make(PLAN, { value: 6, other });
    const segments = made?.schedule.segments ?? [];
    expect(made?.schedule.cone).toBe("6");
    expect(segments[1]?.toC).toBeGreaterThan(1200);
    expect([segments[0], segments[2]]).toEqual([PLAN.segments[0], PLAN.segments[2]]);
  });

  it("never advises to open above 100 °C, whatever the other firing did", () => {
    const made = CHANGES.opening.make(PLAN, { value: 180, other: reviewed(firing({})) });
    expect(made?.schedule).toEqual(PLAN);
    expect(made?.evidence).toEqual([{ name: "opening", value: 100, kind: "temperature" }]);
  });
});
