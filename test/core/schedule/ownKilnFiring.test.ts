import { describe, expect, it } from "vitest";
import { adviceText, type Finding, statementText } from "../../../src/core/findings/Finding.ts";
import type { LearnedKiln } from "../../../src/core/kiln/LearnedKiln.ts";
import { learnKiln } from "../../../src/core/kiln/learnKiln.ts";
import { predictFiring } from "../../../src/core/kiln/predictFiring.ts";
import { asAssumedKiln } from "../../../src/core/kiln/reach.ts";
import { plainPaint } from "../../../src/core/reports/Block.ts";
import { draftDocument } from "../../../src/core/reports/documents/draftDocument.ts";
import { type Draft, draftSchedule } from "../../../src/core/schedule/draftSchedule.ts";
import { scheduleDifference } from "../../../src/core/schedule/energy.ts";
import { kilnReachC } from "../../../src/core/schedule/ownKilnFiring.ts";
import { repairSchedule } from "../../../src/core/schedule/repairSchedule.ts";
import type { Schedule } from "../../../src/core/schedule/Schedule.ts";
import { demoFiring } from "../../support/kilns.ts";
import { draftText } from "../../support/reportTexts.ts";
import { schedule, segment, valued } from "../../support/schedules.ts";

function learnedFrom(
  name: string,
  options: { readonly withOutput?: boolean; readonly powerWatt?: number } = {},
): LearnedKiln {
  const { powerWatt = 10_500, withOutput = true } = options;
  return valued(learnKiln([demoFiring(name, { withOutput })], { powerWatt, tariffPerKWh: 0.3 }));
}

const STRONG = learnedFrom("2026-02-07-a");
const WORN = learnedFrom("2026-06-06-a");
const WITHOUT_OUTPUT = learnedFrom("2026-02-07-a", { withOutput: false });

function draft(kiln: LearnedKiln, parts: Partial<Schedule>, start: string | null = null): Draft {
  return draftSchedule({ schedule: schedule(parts), start, kiln: asAssumedKiln(kiln) });
}

function about(found: Draft, topic: string): readonly Finding[] {
  return found.findings.filter((finding) => finding.topic === topic);
}

/** Text without the line breaks of the report. */
function flat(found: Draft): string {
  return draftText(found, { unit: "C", paint: plainPaint }).replaceAll(/\s+/g, " ");
}

const HOT = { cone: "10", segments: [segment(1000, 150), segment(1300, 60)] };

describe("a stall", () => {
  const found = draft(WORN, HOT);

  it("before the peak is a warning that says how far the kiln gets", () => {
    const [stall] = about(found, "reach while heating").filter(
      ({ severity }) => severity === "warning",
    );
    expect(statementText(stall as Finding, "C")).toMatch(
      /^Your kiln stalls in segment 2: with everything on it gets to about 1\d{3} °C, short of 1300 °C\.$/,
    );
    expect(adviceText(stall as Finding, "C")).toMatch(/By common practice fewer shelves/);
  });

  it("leaves the wanted cone not reached, which is a warning of its own", () => {
    const [cone] = about(found, "cone on your kiln");
    expect(cone?.severity).toBe("warning");
    expect(cone?.statement).toMatch(/^On your kiln cone 10 is not reached/);
  });

  it("leaves the end of the programme and the electricity of the whole open", () => {
    expect(found.own?.firing.endSeconds).toBeNull();
    expect(found.energyKWh).toBeNull();
    expect(flat(found)).toContain("up to where it stalls");
  });

  it("is only a caution where no log carries the output, for the kiln may do more", () => {
    const worn = learnedFrom("2026-06-06-a", { withOutput: false });
    const topics = about(draft(worn, HOT), "reach while heating");
    expect(topics.map(({ severity }) => severity)).not.toContain("warning");
    expect(topics.some(({ statement }) => statement.includes("the least that it can do"))).toBe(
      true,
    );
  });

  it("near the room's temperature on the way down is a note, and costs no power", () => {
    const found = draft(STRONG, { segments: [segment(600, 100), segment(10, "free")] });
    const [slow] = about(found, "reach while cooling");
    expect(slow?.severity).toBe("note");
    expect(slow?.statement).toContain("near the temperature of its room");
    expect(found.energyKWh).toBeCloseTo(found.own?.firing.energyKWh as number, 9);
  });
});

describe("falling behind", () => {
  it("by more than a quarter of an hour on the way up is a caution", () => {
    const [late] = about(draft(WORN, { segments: [segment(1000, 190)] }), "reach while heating");
    expect(late?.severity).toBe("caution");
    expect(statementText(late as Finding, "C")).toMatch(
      /falls behind in segment 1, from about \d+ °C on: it climbs to 1000 °C at about \d+ °C\/h, not 190 °C\/h/,
    );
  });

  it("by less is a note", () => {
    const late = about(draft(WORN, { segments: [segment(620, 150)] }), "reach while heating");
    expect(late.map(({ severity }) => severity)).toEqual(["note"]);
  });

  it("on the way down is a note: the ware is only cooled more gently", () => {
    const segments = [segment(1000, 120), segment(200, -200)];
    const [slow, ...more] = about(draft(STRONG, { segments }), "reach while cooling");
    expect([slow?.severity, more.length]).toEqual(["note", 0]);
    expect(slow?.statement).toContain("falls more slowly");
  });

  it("is said once, by the simulation and not by the check of ramps as well", () => {
    const found = draft(WORN, { segments: [segment(1000, 190)] });
    expect(about(found, "reach while heating")).toHaveLength(1);
    expect(found.findings.some(({ statement }) => statement.includes("may not keep up"))).toBe(
      false,
    );
  });

  it("is not said of a kiln that keeps up", () => {
    const found = draft(STRONG, { segments: [segment(600, 60)] });
    expect(about(found, "reach while heating")).toEqual([]);
  });

  it("near the peak that overshoots the cone is a warning", () => {
    const segments = [segment(1080, 150), segment(1176, 60, 10)];
    const [cone] = about(draft(WORN, { cone: "5", segments }), "cone on your kiln");
    expect(cone?.severity).toBe("warning");
    expect(cone?.statement).toContain("overshot by a whole cone");
  });
});

describe("a fall that the kiln would outrun", () => {
  const segments = [segment(1000, 150), segment(600, -40), segment(100, "free")];
  const found = draft(STRONG, { segments });

  it("takes power, which the report says", () => {
    expect(found.own?.segments[1]?.rampOutput).toBeGreaterThan(0.05);
    expect(flat(found)).toMatch(
      /Segment 2: left alone the kiln falls faster, so the elements have to slow it, about \d+ % of full power/,
    );
  });

  it("takes none where it falls by itself", () => {
    expect(found.own?.segments[2]?.rampOutput).toBeLessThan(0.001);
  });
});

describe("electricity", () => {
  const segments = [segment(1000, 150, 15), segment(600, -40), segment(100, "free")];

  it("is one number in headline, prediction, document and change", () => {
    const found = draft(STRONG, { segments });
    const predicted = predictFiring(STRONG, { segments, startC: 20 }).energyKWh as number;
    const lines = scheduleDifference(found.schedule, found.schedule, asAssumedKiln(STRONG));
    expect(found.energyKWh).toBeCloseTo(predicted, 9);
    expect(lines.reduce((sum, { kWh }) => sum + (kWh ?? 0), 0)).toBeCloseTo(predicted, 9);
    const document = draftDocument(found);
    expect(document.energyKWh).toBeCloseTo(document.onYourKiln?.energyKWh as number, 9);
    expect(document.onYourKiln?.cost).toBeCloseTo(0.3 * predicted, 9);
  });

  it("is not made up without an output column, and what is missing is said", () => {
    const found = draft(WITHOUT_OUTPUT, { segments });
    expect([found.energyKWh, found.own?.firing.energyKWh]).toEqual([null, null]);
    expect(flat(found)).toContain(
      "not known; missing: a log with a column of the controller's output",
    );
  });
});

describe("a report of a draft for a learned kiln", () => {
  const segments = [segment(1080, 120), segment(1176, 60, 10), segment(100, "free")];
  const found = draft(STRONG, { cone: "5", segments }, "2026-12-01T18:00:00");

  it("says when it is cool by the clock", () => {
    expect(flat(found)).toMatch(/at 200 °C about \d+:\d\d after the start \(\d\d:\d\d, day 2\)/);
    expect(flat(found)).toMatch(/at 50 °C about/);
  });

  it("counts full in its timeline as the simulation goes", () => {
    const row = found.expansion.timeline.at(-1);
    const went = found.own?.segments.at(-1);
    expect(row?.rateCPerHour).toBeCloseTo(went?.meanCPerHour as number, 1);
  });

  it("fits in 80 columns", () => {
    const lines = draftText(found, { unit: "F", paint: plainPaint }).split("\n");
    expect(Math.max(...lines.map((line) => [...line].length))).toBeLessThanOrEqual(80);
  });
});

describe("the reach of a learned kiln", () => {
  it("is where full power from cold still gives the 15 °C/h of the cone charts", () => {
    const reachC = kilnReachC(asAssumedKiln(WORN));
    const climb = [reachC - 1, reachC + 9].map((toC) => {
      const segments = [segment(toC, "free"), segment(toC + 5, "free")];
      return predictFiring(WORN, { segments }).segments[1]?.meanCPerHour as number;
    });
    expect(climb[0]).toBeGreaterThan(14);
    expect(climb[1]).toBeLessThan(15);
  });

  it("is far higher with good elements", () => {
    expect(kilnReachC(asAssumedKiln(STRONG))).toBeGreaterThan(kilnReachC(asAssumedKiln(WORN)) + 50);
  });
});

describe("mending for a learned kiln", () => {
  it("leaves no climb that would be late", () => {
    const kiln = asAssumedKiln(WORN);
    const late = schedule({ segments: [segment(1000, 190), segment(100, "free")] });
    const { after, steps } = repairSchedule({ schedule: late, kiln });
    expect(steps.map(({ topic }) => topic)).toContain("reach while heating");
    const again = draftSchedule({ schedule: after, start: null, kiln });
    expect(
      about(again, "reach while heating").filter(({ severity }) => severity !== "note"),
    ).toEqual([]);
  });
});
