import { describe, expect, it } from "vitest";
import { AIM_MARGIN_K } from "../../src/core/schedule/coneAim.ts";
import { draftSchedule } from "../../src/core/schedule/draftSchedule.ts";
import { expandSchedule } from "../../src/core/schedule/expandSchedule.ts";
import { parseSchedule } from "../../src/core/schedule/scheduleFile.ts";
import { solvePeak } from "../../src/core/schedule/solveSchedule.ts";
import { schedule, segment, valued } from "../support/schedules.ts";

const fahrenheit = (segments: string, extra = "") =>
  valued(
    parseSchedule(
      `{formatVersion: 1, title: As published, unit: F, start: 68, ${extra} segments: [${segments}]}`,
      "published",
    ),
  );

describe("cone of a published schedule", () => {
  it("108 °F/h to 1888 °F makes a perfect cone 05 (a potter's notes, March 2017), within 0.3 cone", () => {
    const { heatwork } = draftSchedule({
      schedule: fahrenheit("{to: 1688, rate: 250}, {to: 1888, rate: 108}"),
      start: null,
    });
    // Cone 05 is −5 on the count of whole cones.
    expect(Math.abs((heatwork.position.index as number) + 5)).toBeLessThanOrEqual(0.3);
  });
});

describe("peak of a plain ramp at 60 °C/h", () => {
  // Cone chart of the Edward Orton Jr. Ceramic Foundation, self-supporting cones, 60 °C/h column.
  it.each([
    ["04", 1063],
    ["5", 1186],
    ["6", 1222],
    ["10", 1285],
  ])(
    "for cone %s is %d °C within 1 °C (printed to 1 °C; anchoring leaves 0.33 °C)",
    (cone, endC) => {
      const solved = valued(
        solvePeak({ schedule: schedule({ segments: [segment(1200, 60)] }), cone, offsetK: 0 }),
      );
      const justFallsC = (solved.segments[0]?.toC as number) - AIM_MARGIN_K;
      expect(Math.abs(justFallsC - endC)).toBeLessThanOrEqual(1);
    },
  );
});

describe("natural cooling of the reference kiln", () => {
  it("takes about twice the 13 h from 1040 to 49 °C that were logged for a light bisque (a potter, 2008)", () => {
    const { timeline } = expandSchedule(
      schedule({ startC: 1040, segments: [segment(49, "free")] }),
    );
    const hours = (timeline[0]?.endSeconds as number) / 3600;
    // A loaded 180 L kiln holds more than a light load: longer, by a factor of two and a half at most.
    expect(hours / 13).toBeGreaterThan(1);
    expect(hours / 13).toBeLessThan(2.5);
  });
});
