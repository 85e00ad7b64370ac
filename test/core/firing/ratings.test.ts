import { describe, expect, it } from "vitest";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import { draftSchedule } from "../../../src/core/schedule/draftSchedule.ts";
import { parseSchedule, scheduleYaml } from "../../../src/core/schedule/scheduleFile.ts";
import { firing, readingOf } from "../../support/firings.ts";
import { valued } from "../../support/schedules.ts";

const WIRE = "above the thermocouple's rating";
const KILN = "above the kiln's rating";

function reviewed(peakC: number, lines: string, topic: string): string | null {
  const record = valued(parseRecord(`formatVersion: 1\ntitle: Test\n${lines}\n`, "firing.yaml"));
  const { findings } = valued(
    reviewFiring({ reading: readingOf({ kiln: firing({ peakC }) }), record, plan: null }),
  );
  return findings.find((each) => each.topic === topic)?.severity ?? null;
}

function planned(peakC: number, lines: string) {
  const text = `formatVersion: 1\ntitle: Test\nunit: C\n${lines}\nsegments:\n  - { to: ${peakC}, rate: 100 }\n`;
  return valued(parseSchedule(text, "plan.yaml"));
}

function drafted(peakC: number, lines: string, topic: string): string | null {
  const { findings } = draftSchedule({ schedule: planned(peakC, lines), start: null });
  return findings.find((each) => each.topic === topic)?.severity ?? null;
}

describe("a top above what the thermocouple lasts at", () => {
  // ASTM E230's suggested limits: K and N 1260 °C at 8 gauge, 1090 at 14, 870 at 24; S 1480.
  it.each([
    [1400, "K", "", "warning"],
    [1290, "K", "", "caution"],
    [1250, "K", "", null],
    [1222, "K", ", wire: 1.6", "warning"],
    [1060, "K", ", wire: 1.63", null],
    [1000, "K", ", wire: 0.5", "warning"],
    [1300, "N", "", "caution"],
    [1400, "S", "", null],
    [1060, "J", "", "warning"],
  ])("%i °C on type %s%s is %s", (peakC, type, wire, severity) => {
    const lines = `thermocouple: { type: ${type}${wire} }`;
    expect(reviewed(peakC, lines, WIRE)).toBe(severity);
    expect(drafted(peakC, lines, WIRE)).toBe(severity);
  });

  it("is asked about in a draft that names none", () => {
    expect(drafted(1300, "", WIRE)).toBe("note");
    expect(drafted(1400, "", WIRE)).toBe("caution");
    expect(drafted(1222, "", WIRE)).toBe(null);
  });
});

describe("a top above the kiln's rating", () => {
  it.each([
    ["kilnRating: 1200", "warning"],
    ["kilnRating: 2192 F", "warning"],
    ["kilnRating: 1230", null],
    ["", null],
  ])("with %s is %s", (lines, severity) => {
    expect(reviewed(1222, lines, KILN)).toBe(severity);
    expect(drafted(1222, lines, KILN)).toBe(severity);
  });

  it("stays in a schedule that is written anew", () => {
    const schedule = planned(1222, "kilnRating: 1300\nthermocouple: { type: S, wire: 0.5 }");
    expect(parseSchedule(scheduleYaml(schedule), "again.yaml")).toEqual({
      ok: true,
      value: schedule,
    });
  });
});
