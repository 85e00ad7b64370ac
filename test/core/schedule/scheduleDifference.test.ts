import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { scheduleDifference } from "../../../src/core/schedule/energy.ts";
import { expandSchedule } from "../../../src/core/schedule/expandSchedule.ts";
import { anySchedule, schedule, segment } from "../../support/schedules.ts";

describe("scheduleDifference", () => {
  it("keeps what is the same and marks what goes and comes, in order", () => {
    const before = schedule({
      segments: [segment(600, 100), segment(1100, 100), segment(500, -50)],
    });
    const after = schedule({
      segments: [segment(600, 100), segment(800, 50), segment(1100, 100), segment(500, -50)],
    });
    const lines = scheduleDifference(before, after);
    expect(lines.map(({ kind, segment: { toC } }) => `${kind} ${toC}`)).toEqual([
      "same 600",
      "removed 1100",
      "added 800",
      "added 1100",
      "same 500",
    ]);
    expect(lines.map(({ seconds }) => seconds / 3600)).toEqual([5.8, 5, 4, 3, 12]);
  });

  it("adds up to the difference in time, and removes nothing from itself, for any two schedules", () => {
    const total = (each: Parameters<typeof expandSchedule>[0]) =>
      expandSchedule(each).timeline.at(-1)?.endSeconds as number;
    fc.assert(
      fc.property(anySchedule, anySchedule, (before, after) => {
        const signs = { same: 0, removed: -1, added: 1 } as const;
        const sum = scheduleDifference(before, after).reduce(
          (seconds, line) => seconds + signs[line.kind] * line.seconds,
          0,
        );
        expect(sum).toBeCloseTo(total(after) - total(before), 3);
        expect(scheduleDifference(after, after).every(({ kind }) => kind === "same")).toBe(true);
      }),
      { numRuns: 50 },
    );
  });
});
