import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseSchedule, scheduleYaml } from "../../../src/core/schedule/scheduleFile.ts";
import { anySchedule, schedule, segment, valued } from "../../support/schedules.ts";

describe("scheduleYaml", () => {
  it("is read back as it was, for any schedule", () => {
    fc.assert(
      fc.property(anySchedule, (any) => {
        expect(valued(parseSchedule(scheduleYaml(any), "a.yaml"))).toEqual(any);
      }),
    );
  });

  it("writes one segment a line, in the file's own unit", () => {
    const text = scheduleYaml(
      schedule({
        unit: "F",
        cone: "05",
        segments: [segment(100, 60, 90), segment(20, "free")],
      }),
    );
    expect(text).toBe(
      [
        "formatVersion: 1",
        "title: A firing",
        "unit: F",
        'cone: "05"',
        "segments:",
        "  - { to: 212, rate: 108, hold: 1 h 30 min }",
        "  - { to: 68, rate: free }",
        "",
      ].join("\n"),
    );
  });
});
