import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { REFERENCE_KILN } from "../../../src/core/kiln/LearnedKiln.ts";
import { AIM_MARGIN_K, aimMarginK, peakSegment } from "../../../src/core/schedule/coneAim.ts";
import { draftSchedule } from "../../../src/core/schedule/draftSchedule.ts";
import type { Schedule } from "../../../src/core/schedule/Schedule.ts";
import { type SolveInput, solveSchedule } from "../../../src/core/schedule/solveSchedule.ts";
import { isWhole, schedule, segment, valued } from "../../support/schedules.ts";

const DROP_AND_HOLD = schedule({
  segments: [
    segment(1000, 150),
    segment(1200, 60, 15),
    segment(1150, "free", 45),
    segment(100, "free"),
  ],
});

/** How far past its end a cone is when the second segment's hold ends [K]. */
function pastAtTop(each: Schedule, cone: string, offsetK: number | null = null): number {
  const untilTop = { ...each, segments: each.segments.slice(0, 2) };
  const { heatwork } = draftSchedule({ schedule: untilTop, start: null, offsetK });
  return heatwork.cones.find((state) => state.cone === cone)?.marginK ?? Number.NaN;
}

/** A whole step of rounding to the hotter side at most past the aim. */
function expectAimed(pastK: number): void {
  expect(pastK).toBeGreaterThan(AIM_MARGIN_K - 0.01);
  expect(pastK).toBeLessThan(AIM_MARGIN_K + 0.6);
}

function problemOf(input: SolveInput & { solve: "peak" | "hold" | "rate" }) {
  const result = solveSchedule(input);
  return result.ok ? null : result.problems[0];
}

describe("solveSchedule", () => {
  it("lets the cone fall by the end of the top hold with the lowest whole degree, for any cone, hold, offset and cooling", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("04", "03", "1", "3", "4", "5", "6", "8", "10"),
        fc.integer({ min: 0, max: 60 }),
        fc.integer({ min: -15, max: 15 }),
        fc.constantFrom("C" as const, "F" as const),
        (cone, holdMinutes, offsetK, unit) => {
          const before = schedule({
            unit,
            segments: [
              segment(900, 150),
              segment(1200, 60, holdMinutes),
              segment(880, -70, 30),
              segment(100, "free"),
            ],
          });
          const solved = valued(solveSchedule({ schedule: before, cone, solve: "peak", offsetK }));
          const at = peakSegment(solved)?.index ?? 0;
          const size = unit === "C" ? 1 : 1 / 1.8;
          const margin = (lowerK: number) =>
            aimMarginK(
              {
                ...solved,
                segments: solved.segments.map((each, i) =>
                  i === at ? { ...each, toC: each.toC - lowerK } : each,
                ),
              },
              { cone, offsetK },
            );
          expect(isWhole(solved)).toBe(true);
          expect(margin(0)).toBeGreaterThanOrEqual(0);
          expect(margin(size)).toBeLessThan(0.01);
        },
      ),
      { numRuns: 40 },
    );
  });

  it("looks at the cone when the top hold ends: a second hold further down changes nothing", () => {
    const without = schedule({ segments: [segment(1000, 150), segment(1200, 60, 15)] });
    const hold = (each: Schedule) =>
      valued(solveSchedule({ schedule: each, cone: "6", solve: "hold" })).segments[1]?.holdSeconds;
    expect(hold(DROP_AND_HOLD)).toBe(hold(without));
  });

  it.each(["hold", "rate"] as const)(
    "finds the %s that makes the cone, and leaves the rest",
    (solve) => {
      const solved = valued(solveSchedule({ schedule: DROP_AND_HOLD, cone: "6", solve }));
      // A minute of holding, or a degree an hour, is some 0.3 °C of heat.
      expectAimed(pastAtTop(solved, "6"));
      expect((solved.segments[1]?.holdSeconds ?? 1) % 60).toBe(0);
      expect(isWhole(solved)).toBe(true);
      expect(solved.segments[1]?.toC).toBe(1200);
      expect([0, 2, 3].map((i) => solved.segments[i])).toEqual(
        [0, 2, 3].map((i) => DROP_AND_HOLD.segments[i]),
      );
    },
  );

  it("writes a file of odd numbers whole, and joins neighbours of one rate", () => {
    const odd = schedule({
      unit: "F",
      segments: [
        segment(600.3, 33.3),
        { ...segment(1000, 72.7), why: "one" },
        { ...segment(1090, 72.6), why: "two" },
        segment(1200, 60.1, 10),
        segment(100, "free"),
      ],
    });
    const solved = valued(solveSchedule({ schedule: odd, cone: "6", solve: "peak" }));
    // 72.7 and 72.6 °C/h are 130.9 and 130.7 °F/h, and 600.3 °C is 1112.5 °F.
    expect(solved.segments.map(({ why }) => why)).toEqual([null, "one; two", null, null]);
    expect(isWhole(solved)).toBe(true);
    expect((solved.segments[1]?.rateCPerHour as number) * 1.8).toBeCloseTo(130, 6);
    expect((solved.segments[0]?.toC as number) * 1.8 + 32).toBeCloseTo(1113, 6);
  });

  it("names the nearest that is possible when no hold or rate does it", () => {
    expect(problemOf({ schedule: DROP_AND_HOLD, cone: "5", solve: "hold" })).toMatchObject({
      code: "schedule/no-such-hold",
      what: expect.stringMatching(/without any the schedule reaches cone/),
      fix: expect.stringMatching(/--solve peak, which gives \d+ °C/),
    });
    expect(problemOf({ schedule: DROP_AND_HOLD, cone: "3", solve: "hold" })?.fix).toBe(
      "change the neighbouring segments or the cone",
    );
    expect(problemOf({ schedule: DROP_AND_HOLD, cone: "10", solve: "rate" })).toMatchObject({
      code: "schedule/no-such-rate",
      what: expect.stringMatching(/even at 15 °C\/h the schedule reaches cone/),
    });
  });

  it("says how far a weak kiln gets, and what would help", () => {
    const kiln = { ...REFERENCE_KILN, fullHeatingCPerHour: (tempC: number) => (1250 - tempC) / 4 };
    expect(problemOf({ schedule: DROP_AND_HOLD, cone: "10", solve: "peak", kiln })).toMatchObject({
      code: "schedule/kiln-too-weak",
      what: expect.stringMatching(/up to 1190 °C only, which makes cone \d/),
      fix: expect.stringContaining("new elements"),
    });
  });
});
