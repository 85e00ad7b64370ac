import { describe, expect, it } from "vitest";
import { kilnHeatworkOf } from "../../../src/core/cones/usualOffset.ts";
import { AIM_MARGIN_K, aimMarginK, topEndSeconds } from "../../../src/core/schedule/coneAim.ts";
import { draftSchedule } from "../../../src/core/schedule/draftSchedule.ts";
import { expandSchedule } from "../../../src/core/schedule/expandSchedule.ts";
import { solvePeak } from "../../../src/core/schedule/solveSchedule.ts";
import { schedule, segment, valued } from "../../support/schedules.ts";

function peakFor(
  cone: string,
  segments: readonly ReturnType<typeof segment>[],
  offsetK: number | null = null,
): number {
  const solved = valued(solvePeak({ schedule: schedule({ segments }), cone, offsetK }));
  return Math.max(...solved.segments.map((each) => each.toC));
}

/** When a cone falls, from the end of the second segment, by the plan with the usual offset [s]. */
function fallsAfterTop(cone: string, segments: readonly ReturnType<typeof segment>[]): number {
  const solved = valued(solvePeak({ schedule: schedule({ segments }), cone }));
  const { heatwork, expansion } = draftSchedule({ schedule: solved, start: null });
  const end = expansion.timeline.findLast((row) => row.segment === 1)?.endSeconds as number;
  const state = heatwork.cones.find((each) => each.cone === cone);
  return (state?.downAtSeconds ?? Number.POSITIVE_INFINITY) - end;
}

describe("solvePeak", () => {
  it.each(["06", "1", "5", "6", "10"])(
    "lets cone %s fall shortly before the top hold ends, whatever comes after",
    (cone) => {
      const climb = [segment(900, 150), segment(1200, 60, 15)];
      const tails = [[], [segment(600, "free")], [segment(880, -70, 30), segment(100, "free")]];
      for (const tail of tails) {
        const seconds = fallsAfterTop(cone, [...climb, ...tail]);
        expect(seconds).toBeLessThan(0);
        expect(seconds).toBeGreaterThan(-8 * 60);
      }
    },
  );

  it("leaves the cone by the small margin of the aim past its end when the hold ends", () => {
    const solved = valued(
      solvePeak({
        schedule: schedule({
          segments: [segment(1000, 150), segment(1200, 60, 15), segment(600, "free")],
        }),
        cone: "6",
      }),
    );
    const untilTop = { ...solved, segments: solved.segments.slice(0, 2) };
    const { cones } = kilnHeatworkOf(expandSchedule(untilTop).curve, { series: "self-supporting" });
    expect(cones.find((state) => state.cone === "6")?.marginK).toBeCloseTo(AIM_MARGIN_K, 1);
    expect(aimMarginK(solved, { cone: "6" })).toBeCloseTo(0, 1);
    expect(solved.cone).toBe("6");
  });

  it("asks for less peak with a longer hold, and for the same whatever the cooling", () => {
    const plain = peakFor("5", [segment(1180, 60)]);
    const held = peakFor("5", [segment(1180, 60, 30)]);
    const cooled = peakFor("5", [segment(1180, 60, 30), segment(1000, -60)]);
    expect(held).toBeLessThan(plain - 5);
    expect(cooled).toBeCloseTo(held, 2);
  });

  it("asks for 8 °C less than of a thermocouple that is right, as kilns usually run", () => {
    const segments = [segment(900, 150), segment(1200, 60, 15)];
    expect(peakFor("6", segments, 0) - peakFor("6", segments)).toBeCloseTo(8, 1);
    expect(peakFor("6", segments, 20)).toBeCloseTo(peakFor("6", segments) - 12, 1);
    expect(peakFor("06", segments, 0)).toBeCloseTo(peakFor("06", segments), 2);
  });

  it("counts a soak that is let down by a few degrees to the top hold", () => {
    const letDown = schedule({
      segments: [
        segment(1000, 150),
        segment(1210, 60, 5),
        segment(1206, -60, 20),
        segment(100, "free"),
      ],
    });
    const expansion = expandSchedule(letDown);
    const end = expansion.timeline.findLast((row) => row.segment === 2)?.endSeconds;
    expect(topEndSeconds(letDown, expansion)).toBe(end);
    const dropped = schedule({
      segments: [
        segment(1000, 150),
        segment(1210, 60, 5),
        segment(1150, -60, 20),
        segment(100, "free"),
      ],
    });
    const other = expandSchedule(dropped);
    expect(topEndSeconds(dropped, other)).toBe(
      other.timeline.findLast((row) => row.segment === 1)?.endSeconds,
    );
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
