import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { REFERENCE_KILN } from "../../../src/core/kiln/LearnedKiln.ts";
import { topEndSeconds } from "../../../src/core/schedule/coneAim.ts";
import { draftSchedule } from "../../../src/core/schedule/draftSchedule.ts";
import { type NewScheduleInput, newSchedule } from "../../../src/core/schedule/newSchedule.ts";
import type { Schedule } from "../../../src/core/schedule/Schedule.ts";
import { parseSchedule, scheduleYaml } from "../../../src/core/schedule/scheduleFile.ts";
import { bodyNamed } from "../../../src/core/ware/bodies.ts";
import { hasAlikeNeighbours, isWhole, valued } from "../../support/schedules.ts";

function wanted(parts: Partial<NewScheduleInput> = {}): NewScheduleInput {
  return {
    cone: "5",
    series: "self-supporting",
    unit: "C",
    ware: { body: null, wallMm: 6, baseMm: 12, widestMm: null, damp: false },
    cooling: { kind: "slow" },
    withinSeconds: null,
    ...parts,
  };
}

const ware = (parts: Partial<NewScheduleInput["ware"]>) => ({ ...wanted().ware, ...parts });

function problemOf(input: NewScheduleInput) {
  const result = newSchedule(input);
  return result.ok ? null : result.problems[0];
}

describe("newSchedule", () => {
  it("reaches its cone, draws no objection and gives a reason for every segment, for any wish", () => {
    fc.assert(
      fc.property(
        fc.record({
          cone: fc.constantFrom("06", "04", "1", "5", "6", "10"),
          unit: fc.constantFrom("C" as const, "F" as const),
          cooling: fc.constantFrom<NewScheduleInput["cooling"]>(
            { kind: "natural" },
            { kind: "slow" },
            { kind: "hold", atC: 850, seconds: 3600 },
          ),
          thickness: fc.integer({ min: 1, max: 100 }),
          widestMm: fc.constantFrom(null, 150, 400),
          damp: fc.boolean(),
        }),
        ({ thickness, widestMm, damp, ...wish }) => {
          const input = wanted({
            ...wish,
            ware: { body: null, wallMm: thickness, baseMm: thickness, widestMm, damp },
          });
          const made = valued(newSchedule(input));
          const read = valued(parseSchedule(scheduleYaml(made), "new.yaml"));
          const { findings, heatwork, expansion } = draftSchedule({ schedule: read, start: null });
          expect(findings.filter(({ severity }) => severity !== "note")).toEqual([]);
          expect(isWhole(made)).toBe(true);
          expect(hasAlikeNeighbours(made)).toBe(false);
          const top = topEndSeconds(read, expansion) as number;
          const down = heatwork.cones.find(({ cone }) => cone === wish.cone)?.downAtSeconds;
          expect(down).toBeLessThanOrEqual(top);
          // The peak is rounded up to a whole degree, which is a few minutes of the hold.
          expect(down).toBeGreaterThan(top - 15 * 60);
          expect(made.segments.every(({ why }) => why !== null && why.length <= 300)).toBe(true);
        },
      ),
      { numRuns: 25 },
    );
  });

  it("holds damp ware below boiling and climbs thick or wide ware slowly through quartz", () => {
    const damp = valued(newSchedule(wanted({ ware: ware({ damp: true }) })));
    expect(damp.segments[0]).toMatchObject({ toC: 80, holdSeconds: 2 * 3600 });
    const platter = valued(newSchedule(wanted({ ware: ware({ widestMm: 400 }) })));
    expect(platter.segments[1]).toMatchObject({ toC: 650, rateCPerHour: 90 });
  });

  it("cools a wide piece, and a body with cristobalite, visibly slower than a mug", () => {
    const kiln = { ...REFERENCE_KILN, naturalCoolingCPerHour: (tempC: number) => 3 * tempC };
    const lowest = (words: string, widestMm: number | null = 140) => {
      const body = valued(bodyNamed(words, "a test"));
      const piece = ware({ widestMm, body });
      const made = valued(newSchedule(wanted({ kiln, ware: piece, cooling: { kind: "natural" } })));
      return Math.min(
        ...made.segments.map(({ rateCPerHour: rate }) =>
          rate === "free" || rate > 0 ? 1000 : -rate,
        ),
      );
    };
    expect(lowest("stoneware", 400)).toBeLessThan(lowest("stoneware", 100));
    expect(lowest("cristobalitic")).toBeLessThan(lowest("stoneware") / 2);
  });

  it("writes slow cooling whatever the ware bears, and says when it would not need it", () => {
    const falls = (cooling: "natural" | "slow", thickness: number) =>
      valued(
        newSchedule(
          wanted({
            cooling: { kind: cooling },
            ware: ware({ wallMm: thickness, baseMm: thickness }),
          }),
        ),
      ).segments.filter(({ rateCPerHour: rate }) => typeof rate === "number" && rate < 0);
    for (const thickness of [3, 6, 12, 40]) {
      const [quartz] = falls("slow", thickness);
      expect(Math.abs(Number(quartz?.rateCPerHour))).toBeLessThanOrEqual(50);
      expect(quartz?.toC).toBeLessThanOrEqual(520);
    }
    expect(falls("natural", 6)).toEqual([]);
    expect(falls("slow", 6)[0]?.why).toContain("it would not need it");
    expect(falls("slow", 40)[0]?.why).not.toContain("it would not need it");
  });

  it("plans no climb that the kiln cannot keep", () => {
    const kiln = { ...REFERENCE_KILN, fullHeatingCPerHour: (tempC: number) => (1400 - tempC) / 4 };
    const made = valued(newSchedule(wanted({ kiln })));
    const { findings } = draftSchedule({ schedule: made, start: null, kiln });
    expect(findings.map(({ topic }) => topic)).not.toContain("reach while heating");
  });

  it("allows for a thermocouple that reads too low, and says so", () => {
    const top = (each: Schedule) => Math.max(...each.segments.map(({ toC }) => toC));
    const shifted = valued(newSchedule(wanted({ offsetK: 10 })));
    const right = valued(newSchedule(wanted({ offsetK: 0 })));
    expect(top(right) - top(shifted)).toBeCloseTo(10, -0.5);
    expect(shifted.notes).toContain("10 °C too low");
  });

  it.each([
    ["ware-thickness", wanted({ ware: ware({ wallMm: 0.5 }) }), "--wall 1"],
    ["ware-thickness", wanted({ ware: ware({ baseMm: 140 }) }), "--base 100"],
    ["ware-width", wanted({ ware: ware({ widestMm: 5 }) }), "--width"],
    ["hold-too-hot", wanted({ cooling: { kind: "hold", atC: 1180, seconds: 60 } }), "--cooling"],
    ["too-little-time", wanted({ withinSeconds: 6 * 3600 }), "--within 28h"],
  ])("refuses what cannot be, with the nearest that can: %s", (code, input, fix) => {
    const problem = problemOf(input);
    expect(problem?.code).toBe(`schedule/${code}`);
    expect(problem?.fix).toContain(fix);
  });

  it("keeps to the time that it names as the nearest", () => {
    const problem = problemOf(wanted({ withinSeconds: 6 * 3600 }));
    const hours = Number(/--within (\d+)h/.exec(problem?.fix ?? "")?.[1]);
    expect(problemOf(wanted({ withinSeconds: hours * 3600 }))).toBeNull();
    expect(problemOf(wanted({ withinSeconds: (hours - 1) * 3600 }))).not.toBeNull();
  });
});
