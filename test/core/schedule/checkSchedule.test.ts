import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { adviceText, type Finding, statementText } from "../../../src/core/findings/Finding.ts";
import { limitsFor } from "../../../src/core/schedule/coolingLimits.ts";
import { draftSchedule } from "../../../src/core/schedule/draftSchedule.ts";
import type { Schedule } from "../../../src/core/schedule/Schedule.ts";
import { QUARTZ_BAND } from "../../../src/core/ware/inversions.ts";
import { strainSeverity } from "../../../src/core/ware/strainRisk.ts";
import { anySchedule, schedule, segment } from "../../support/schedules.ts";

function about(topic: string, parts: Partial<Schedule>): Finding | undefined {
  const { findings } = draftSchedule({ schedule: schedule(parts), start: null });
  return findings.find((finding) => finding.topic === topic);
}

const ware = (parts: Partial<Schedule["ware"]>): Schedule["ware"] => ({
  thickestMm: null,
  widestMm: null,
  state: null,
  crackle: false,
  ...parts,
});

describe("water", () => {
  it.each([
    ["bone dry", 60, "note"],
    ["bone dry", 200, "caution"],
    ["bone dry", 400, "warning"],
  ] as const)("%s ware at %d °C/h is a %s", (state, rate, severity) => {
    const finding = about("water, rate of the start", {
      segments: [segment(1000, rate)],
      ware: ware({ state }),
    });
    expect(finding?.severity).toBe(severity);
  });

  it("is not mentioned for bisqued ware", () => {
    const parts = { segments: [segment(1000, 400)], ware: ware({ state: "bisqued" }) };
    expect(about("water, rate of the start", parts)).toBeUndefined();
  });

  it("warns of damp ware that has no time to dry, and is content with a long hold", () => {
    const fast = { segments: [segment(1000, 100)], ware: ware({ state: "damp" }) };
    const held = {
      segments: [segment(82, 40, 120), segment(1000, 100)],
      ware: ware({ state: "damp" }),
    };
    expect(about("water, time to dry", fast)?.severity).toBe("warning");
    expect(about("water, time to dry", held)?.severity).toBe("note");
  });

  it("wants six hours for sculpture", () => {
    const sculpture = ware({ state: "bone dry", thickestMm: 30 });
    const short = { segments: [segment(82, 40, 120), segment(1000, 60)], ware: sculpture };
    const long = { segments: [segment(82, 40, 360), segment(1000, 60)], ware: sculpture };
    expect(about("water, time to dry", short)?.severity).toBe("caution");
    expect(about("water, time to dry", long)?.severity).toBe("note");
  });
});

describe("carbon", () => {
  it.each([
    [60, "note"],
    [100, "note"],
    [200, "caution"],
  ] as const)("a bisque at %d °C/h is a %s", (rate, severity) => {
    const parts = { segments: [segment(1050, rate)], ware: ware({ state: "bone dry" as const }) };
    expect(about("carbon burning out", parts)?.severity).toBe(severity);
  });
});

describe("cone", () => {
  it("warns when the cone is missed", () => {
    const finding = about("cone wanted", { cone: "6", segments: [segment(1150, 60)] });
    expect(finding?.severity).toBe("warning");
    expect(finding && statementText(finding, "C")).toMatch(
      /^Cone 6 is not reached, short by \d+ °C/,
    );
  });

  it("warns when a whole cone is overshot", () => {
    const finding = about("cone wanted", { cone: "5", segments: [segment(1240, 60)] });
    expect(finding?.severity).toBe("warning");
    expect(finding?.statement).toContain("overshot");
  });

  it("is content at the chart's end point", () => {
    const finding = about("cone wanted", { cone: "6", segments: [segment(1224, 60)] });
    expect(finding?.severity).toBe("note");
  });

  it("says which cone is reached when none is wanted", () => {
    const finding = about("cone reached", { segments: [segment(1224, 60)] });
    expect(finding?.statement).toContain("cone 6");
  });
});

describe("cooling through quartz", () => {
  const cooled = (rate: number) => [
    segment(1180, 100),
    segment(700, "free" as const),
    segment(450, -rate),
  ];

  const WARES = [{}, { thickestMm: 6 }, { thickestMm: 20 }, { thickestMm: 10, widestMm: 400 }];

  it.each(
    WARES.flatMap((parts) =>
      (
        [
          [0.9, "note"],
          [1.2, "note"],
          [1.8, "caution"],
          [4, "warning"],
        ] as const
      ).map(([times, severity]) => ({ parts, times, severity })),
    ),
  )("ware $parts at $times times its guide is a $severity", ({ parts, times, severity }) => {
    const guide = limitsFor(ware(parts))(QUARTZ_BAND)?.limitCPerHour as number;
    const finding = about("cooling through quartz", {
      segments: cooled(times * guide),
      ware: ware(parts),
    });
    const stress = finding?.evidence.find(({ name }) => name === "stress")?.value ?? 0;
    expect(finding?.severity).toBe(severity);
    expect(strainSeverity(stress)).toBe(severity);
  });

  it("names the mean, the fastest rate and the guide, and for whom it is", () => {
    const finding = about("cooling through quartz", { segments: cooled(80) });
    expect(finding?.evidence.map((item) => item.name)).toContain("mean");
    const said = finding && statementText(finding, "C");
    expect(said).toContain("up to 80 °C/h");
    expect(said).toMatch(/guide is \d+ °C\/h, for an ordinary stoneware mug/);
  });

  it("is judged on the fall by itself when the schedule stops at the peak", () => {
    const finding = about("cooling through quartz", { segments: [segment(1180, 100)] });
    expect(finding?.statement).toContain("falling by itself after the schedule");
  });
});

describe("what the kiln can do", () => {
  it("says when a programmed fall is faster than the kiln's own", () => {
    const parts = { segments: [segment(600, 100), segment(150, -60)] };
    const finding = about("reach while cooling", parts);
    expect(finding && statementText(finding, "C")).toContain("falls more slowly than 60 °C/h");
  });

  it("says when a climb is faster than the kiln's own", () => {
    const finding = about("reach while heating", { segments: [segment(1200, 250)] });
    expect(finding?.severity).toBe("note");
  });
});

describe("the end", () => {
  it("says how long the kiln takes to cool when the schedule ends hot", () => {
    const finding = about("unloading", { segments: [segment(1180, 100)] });
    expect(finding && statementText(finding, "C")).toMatch(/falls to 100 °C in about \d+ h/);
  });

  it("says nothing of that when the schedule ends cool", () => {
    const parts = { segments: [segment(1180, 100), segment(90, "free" as const)] };
    expect(about("unloading", parts)).toBeUndefined();
  });

  it("says that cones go on bending when the schedule stops at its peak", () => {
    expect(about("heat after the end", { segments: [segment(1180, 100)] })).toBeDefined();
  });

  it("speaks of crackle when the glaze is meant to crackle", () => {
    expect(about("crackle", { ware: ware({ crackle: true }) })?.severity).toBe("note");
    expect(about("crackle", {})).toBeUndefined();
  });
});

describe("draftSchedule", () => {
  it("has a printable sentence for every finding, worst first, for any schedule", () => {
    const rank = { warning: 0, caution: 1, note: 2 };
    fc.assert(
      fc.property(anySchedule, (any) => {
        const { findings } = draftSchedule({ schedule: any, start: null });
        for (const finding of findings)
          for (const text of [statementText(finding, "C"), adviceText(finding, "F")])
            expect(text).not.toMatch(/NaN|Infinity|undefined|[{}]/);
        const ranks = findings.map((finding) => rank[finding.severity]);
        expect(ranks).toEqual([...ranks].sort());
      }),
      { numRuns: 25 },
    );
  });

  it("adds the offset of witness cones before it judges the cone", () => {
    const plan = schedule({ segments: [segment(1215, 60)] });
    const cold = draftSchedule({ schedule: plan, start: null, offsetK: 0 });
    const warm = draftSchedule({ schedule: plan, start: null, offsetK: 12 });
    expect(cold.heatwork.position.cone).not.toBe("6");
    expect(warm.heatwork.position.cone).toBe("6");
  });
});
