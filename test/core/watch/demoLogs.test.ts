import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { kilnFiringOf } from "../../../src/core/firing/kilnFiring.ts";
import { learnKiln } from "../../../src/core/kiln/learnKiln.ts";
import { asAssumedKiln } from "../../../src/core/kiln/reach.ts";
import { parseSchedule } from "../../../src/core/schedule/scheduleFile.ts";
import type { WatchState } from "../../../src/core/watch/WatchState.ts";
import { valued } from "../../support/schedules.ts";
import {
  cooledOf,
  demoLog,
  demoLogUntil,
  expectedOf,
  isWithin,
  watchedReading,
} from "../../support/watching.ts";

/** Firings that reached their cone, with what was fired. */
const FIRED = [
  ["2026-02-07-a", "04", "bisque-cone-04"],
  ["2026-02-21-b", "5", "cone-5-glaze"],
  ["2026-03-14-b", "5", "cone-5-crackle-tiles"],
  ["2026-03-28-a", "6", "cone-6-slow-cool"],
  ["2026-04-25-b", "5", "cone-5-slow-cool"],
  ["2026-05-23-b", "5", "cone-5-crackle-tiles"],
] as const;

/** When the cone was down by the whole log [s]: what expectations before are held against. */
function downAt(name: string, cone: string): number {
  return watchedReading(demoLog(name), { cone }).wanted?.downAtSeconds as number;
}

function minutesBefore(name: string, seconds: number, minutes: number) {
  return demoLogUntil(name, seconds - 60 * minutes);
}

/** Expected less true [min]; null when nothing was expected. */
function errorMinutes({ wanted }: WatchState, truth: number): number | null {
  return wanted?.expected ? (wanted.expected.atSeconds - truth) / 60 : null;
}

function planNamed(name: string) {
  return valued(parseSchedule(readFileSync(`schedules/${name}.yaml`, "utf8"), `${name}.yaml`));
}

describe.each(FIRED)("watching the demo log %s for cone %s", (name, cone, planName) => {
  const truth = downAt(name, cone);

  it("expects the cone at the present rate ever nearer to when it came", () => {
    const errors = [180, 60, 20].map((minutes) =>
      Math.abs(
        errorMinutes(watchedReading(minutesBefore(name, truth, minutes), { cone }), truth) ??
          Number.NaN,
      ),
    );
    expect(errors[2] as number).toBeLessThanOrEqual(errors[0] as number);
    // 20 min before, a tenth of an hour.
    expect(errors[2]).toBeLessThan(6);
  });

  it("expects it along the plan within twice the span, three hours and one hour before", () => {
    const plan = planNamed(planName);
    for (const minutes of [180, 60]) {
      const state = watchedReading(minutesBefore(name, truth, minutes), { cone, plan });
      expect(isWithin(truth, expectedOf(state), 2)).toBe(true);
    }
  });
});

describe("watching a demo log cool by itself", () => {
  const teacher = kilnFiringOf(demoLog("2026-02-07-a"), null);
  const kiln = asAssumedKiln(valued(learnKiln(teacher === null ? [] : [teacher])));
  const name = "2026-02-21-b";
  const whole = watchedReading(demoLog(name));
  const truth = new Map(whole.cooling?.cooledBy.map(({ tempC, atSeconds }) => [tempC, atSeconds]));

  it("tells what was read once the kiln is colder", () => {
    expect(whole.tempC).toBeLessThan(100);
    expect([...truth.keys()]).toEqual(expect.arrayContaining([200, 100]));
    expect(whole.cooling?.cooledBy[0]?.isMeasured).toBe(true);
  });

  it.each([
    ["the stand-in kiln", null],
    ["the learned kiln", kiln],
  ])("says within twice its span when it is at 200 and 100 °C, by %s", (_, known) => {
    for (const hours of [0.25, 1, 2, 4, 8]) {
      const until = whole.peakAtSeconds + hours * 3600;
      const state = watchedReading(demoLogUntil(name, until), { cone: "5", kiln: known });
      for (const tempC of [200, 100]) {
        const span = cooledOf(state, tempC);
        expect(isWithin(truth.get(tempC) as number, span, 2)).toBe(true);
      }
    }
  });

  it("spans less when the kiln is known, and says which kiln it was", () => {
    const reading = demoLogUntil(name, whole.peakAtSeconds + 900);
    const stranger = watchedReading(reading, { cone: "5" }).cooling;
    const friend = watchedReading(reading, { cone: "5", kiln }).cooling;
    expect([stranger?.kiln, friend?.kiln]).toEqual(["reference", "learned"]);
    expect(friend?.factor as number).toBeLessThan(stranger?.factor as number);
    expect(stranger?.basis).toContain("not known");
    expect(friend?.basis).toContain("2026-02-07-a.csv");
  });

  it("does not take a fall that its set point leads for the kiln's own", () => {
    const slow = "2026-03-28-a";
    const peak = watchedReading(demoLog(slow)).peakAtSeconds;
    const state = watchedReading(demoLogUntil(slow, peak + 4 * 3600), { cone: "6" });
    expect(state.phase).toBe("falling");
    expect(state.cooling?.ownShare).toBeNull();
  });
});
