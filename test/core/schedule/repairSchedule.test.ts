import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { AssumedKiln } from "../../../src/core/kiln/LearnedKiln.ts";
import { limitsFor } from "../../../src/core/schedule/coolingLimits.ts";
import { draftSchedule } from "../../../src/core/schedule/draftSchedule.ts";
import { expandSchedule } from "../../../src/core/schedule/expandSchedule.ts";
import { repairSchedule } from "../../../src/core/schedule/repairSchedule.ts";
import type { Schedule } from "../../../src/core/schedule/Schedule.ts";
import { parseSchedule, scheduleYaml } from "../../../src/core/schedule/scheduleFile.ts";
import { QUARTZ_BAND } from "../../../src/core/ware/inversions.ts";
import {
  anySchedule,
  hasAlikeNeighbours,
  isWhole,
  schedule,
  segment,
  valued,
} from "../../support/schedules.ts";

const THICK = { thickestMm: 16, widestMm: 380, state: "damp", crackle: false } as const;

const HASTY = schedule({
  cone: "5",
  ware: THICK,
  segments: [segment(600, 250), segment(1080, 200), segment(1150, 180, 90), segment(100, -400)],
});

/** A kiln whose speeds do not depend on temperature [°C/h]. */
function kilnOf(heating: number, cooling: number): AssumedKiln {
  return {
    fullHeatingCPerHour: () => heating,
    naturalCoolingCPerHour: () => cooling,
    heatCapacityJPerK: 100_000,
    basis: "a kiln of a test",
  };
}

function troubles(each: Schedule, kiln?: AssumedKiln): readonly string[] {
  const { findings } = draftSchedule({ schedule: each, start: null, ...(kiln && { kiln }) });
  return findings.filter(({ severity }) => severity !== "note").map(({ topic }) => topic);
}

const hours = (each: Schedule, kiln: AssumedKiln) =>
  (expandSchedule(each, { kiln }).timeline.at(-1)?.endSeconds as number) / 3600;

describe("repairSchedule", () => {
  it("leaves a schedule alone that nothing speaks against", () => {
    const fine = schedule({ segments: [segment(1000, 100), segment(1186, 60), segment(650, -50)] });
    const once = repairSchedule({ schedule: repairSchedule({ schedule: fine }).after });
    expect(once).toMatchObject({ steps: [], costSeconds: 0, costKWh: 0 });
  });

  it("silences every finding of a hasty schedule for thick, damp, wide ware", () => {
    expect(troubles(HASTY).length).toBeGreaterThan(4);
    const repair = repairSchedule({ schedule: HASTY });
    expect(troubles(repair.after)).toEqual([]);
    expect(repair.steps.map(({ topic }) => topic)).toEqual(
      expect.arrayContaining(["water, time to dry", "cooling through quartz", "cone wanted"]),
    );
    expect(repair.costSeconds).toBeGreaterThan(0);
  });

  it("writes a file that passes its own check", () => {
    const { after } = repairSchedule({ schedule: HASTY });
    const read = valued(parseSchedule(scheduleYaml(after), "mended.yaml"));
    expect(troubles(read)).toEqual([]);
  });

  it("slows a fall only through the band and the window that measures it", () => {
    // In a stoneware platter there is nothing below quartz that would have to be slowed.
    const ware = { ...THICK, state: null };
    const guide = Math.floor(limitsFor(ware)(QUARTZ_BAND)?.limitCPerHour as number);
    const free = 4 * guide;
    const before = schedule({ ware, segments: [segment(1100, 150), segment(300, "free")] });
    const { after, costSeconds } = repairSchedule({ schedule: before, kiln: kilnOf(200, free) });
    const slowed = after.segments.filter(({ rateCPerHour }) => rateCPerHour === -guide);
    // Half the window of 15 min and a little reaches out of 620 to 520 °C at either end.
    const reach = 0.14 * guide;
    expect(slowed.map(({ toC }) => toC)).toEqual([Math.floor(520 - reach)]);
    // What is slowed takes four times as long; the last 200 °C are written down at the kiln's own rate.
    const slowedK = Math.ceil(620 + reach) - Math.floor(520 - reach);
    expect(costSeconds / 3600).toBeCloseTo((slowedK / guide) * (3 / 4) + 200 / free, 1);
  });

  it("costs what holding the fall back takes in electricity", () => {
    const ware = { ...THICK, state: null };
    const guide = Math.floor(limitsFor(ware)(QUARTZ_BAND)?.limitCPerHour as number);
    const before = schedule({ ware, segments: [segment(700, 150), segment(100, "free")] });
    const { costKWh, costSeconds } = repairSchedule({
      schedule: before,
      kiln: kilnOf(200, 3 * guide),
    });
    // While held back the kiln loses three times what it falls at: two thirds of its loss are made good.
    const heldHours = (1.5 * costSeconds) / 3600;
    expect(costKWh).toBeCloseTo((2 * guide * heldHours * 100_000) / 3.6e6, 2);
  });

  it("says that a kiln which falls too fast has to be held back, and that a slow one cannot be hurried", () => {
    const fast = repairSchedule({ schedule: HASTY, kiln: kilnOf(200, 400) });
    expect(fast.limits.join(" ")).toContain("held back with the elements on");
    const wish = schedule({ segments: [segment(1100, 150), segment(700, -400)] });
    const slow = repairSchedule({ schedule: wish, kiln: kilnOf(200, 40) });
    expect(slow.limits.join(" ")).toContain("cannot be hurried");
  });

  it("leaves ramps to full power where the own kiln cannot keep them", () => {
    const weak = {
      ...kilnOf(0, 40),
      fullHeatingCPerHour: (tempC: number) => 300 - tempC / 5,
    };
    const before = schedule({ segments: [segment(1100, 150), segment(100, "free")] });
    const { after } = repairSchedule({ schedule: before, kiln: weak });
    expect(after.segments.slice(0, 2)).toMatchObject([
      { toC: 750, rateCPerHour: 150 },
      { toC: 1100, rateCPerHour: "free" },
    ]);
    expect(hours(after, weak)).toBeGreaterThan(hours(before, weak));
  });

  it("lists what it cannot mend, with what would help", () => {
    const stuck = schedule({
      cone: "5",
      segments: [segment(1240, 60, 50), segment(1250, 60), segment(100, "free")],
    });
    expect(repairSchedule({ schedule: stuck }).limits.join(" ")).toMatch(/Cone 5.*What would help/);
  });

  it("does not raise a peak beyond the kiln's reach, and says how far it gets", () => {
    const weak = { ...kilnOf(0, 40), fullHeatingCPerHour: (tempC: number) => (1190 - tempC) / 3 };
    const cool = schedule({ cone: "8", segments: [segment(1100, 30), segment(100, "free")] });
    const { after, limits } = repairSchedule({ schedule: cool, kiln: weak });
    expect(Math.max(...after.segments.map(({ toC }) => toC))).toBe(1100);
    expect(limits.join(" ")).toMatch(/up to 1145 °C only.*new elements/);
  });

  it("changes nothing when it mends a mended schedule, for any schedule", () => {
    fc.assert(
      fc.property(anySchedule, (any) => {
        const once = repairSchedule({ schedule: any }).after;
        const twice = repairSchedule({ schedule: once });
        expect(isWhole(once)).toBe(true);
        expect(hasAlikeNeighbours(once)).toBe(false);
        expect(twice.after).toEqual(once);
        expect(twice.steps).toEqual([]);
      }),
      { numRuns: 20 },
    );
  });
});
