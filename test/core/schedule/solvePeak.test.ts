import { describe, expect, it } from "vitest";
import { draftSchedule } from "../../../src/core/schedule/draftSchedule.ts";
import { solvePeak } from "../../../src/core/schedule/solvePeak.ts";
import { schedule, segment, valued } from "../../support/schedules.ts";

function peakFor(cone: string, segments: readonly ReturnType<typeof segment>[]): number {
  const solved = valued(solvePeak({ schedule: schedule({ segments }), cone }));
  return Math.max(...solved.segments.map((each) => each.toC));
}

describe("solvePeak", () => {
  it("brings the margin of the cone to nothing", () => {
    const solved = valued(
      solvePeak({
        schedule: schedule({
          segments: [segment(1000, 150), segment(1200, 60, 15), segment(600, "free")],
        }),
        cone: "6",
      }),
    );
    const { heatwork } = draftSchedule({ schedule: solved, start: null });
    const margin = heatwork.cones.find((state) => state.cone === "6")?.marginK as number;
    expect(Math.abs(margin)).toBeLessThan(0.05);
    expect(solved.cone).toBe("6");
  });

  it("asks for less peak with a longer hold, and with slow cooling", () => {
    const plain = peakFor("5", [segment(1180, 60)]);
    const held = peakFor("5", [segment(1180, 60, 30)]);
    const cooled = peakFor("5", [segment(1180, 60, 30), segment(1000, -60)]);
    expect(held).toBeLessThan(plain - 5);
    expect(cooled).toBeLessThan(held - 3);
  });

  it("changes nothing but the peak", () => {
    const before = schedule({ segments: [segment(1000, 150), segment(1200, 60, 15)] });
    const after = valued(solvePeak({ schedule: before, cone: "6" }));
    expect({ ...after, cone: null, segments: [] }).toEqual({ ...before, segments: [] });
    expect(after.segments[0]).toEqual(before.segments[0]);
  });

  it.each([
    ["no-peak", schedule({ startC: 800, segments: [segment(100, -50)] }), "6"],
    ["no-such-peak", schedule({ segments: [segment(1240, 60, 60), segment(1250, 60)] }), "5"],
    ["no-model", schedule(), "42"],
  ])("says why it cannot: %s", (code, before, cone) => {
    const result = solvePeak({ schedule: before, cone });
    expect(result.ok ? "" : result.problems[0]?.code).toBe(`schedule/${code}`);
  });
});
