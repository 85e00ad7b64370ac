import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { heatworkOf } from "../../../src/core/cones/heatwork.ts";
import { makeCurve, offsetBy, shifted, sliced } from "../../../src/core/curve/Curve.ts";
import { adviceText, type Finding, statementText } from "../../../src/core/findings/Finding.ts";
import { problemText } from "../../../src/core/problem.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import type { FiringReview } from "../../../src/core/review/FiringReview.ts";
import { type FiringInput, reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import { corners, sampled } from "../../support/curves.ts";
import { firing, readingOf } from "../../support/firings.ts";
import { PLAN } from "../../support/samples/plan.ts";

function record(lines: string) {
  const parsed = parseRecord(`formatVersion: 1\ntitle: Tiles\n${lines}`, "firing.yaml");
  if (!parsed.ok) throw new Error(parsed.problems.map(problemText).join("\n"));
  return parsed.value;
}

function review(input: Partial<FiringInput> = {}): FiringReview {
  const result = reviewFiring({
    reading: readingOf({ kiln: firing({}) }),
    record: null,
    plan: null,
    ...input,
  });
  if (!result.ok) throw new Error(result.problems.map(problemText).join("\n"));
  return result.value;
}

function finding(from: FiringReview, topic: string): Finding {
  const found = from.findings.find((each) => each.topic === topic);
  if (!found) throw new Error(`no finding about ${topic}`);
  return found;
}

describe("cooling through the inversions", () => {
  const WIDE = "wall: 12, base: 12, widest: 400";

  it.each([
    ["stoneware cone 6", "cooling through quartz"],
    ["stoneware cone 10 cristobalitic", "cooling through cristobalite"],
  ])(
    "of %s is judged by the stress alone: note, caution and warning as it grows",
    (body, topic) => {
      const ware = record(`ware: [{ name: platters, clay: own, body: ${body}, ${WIDE} }]\n`);
      const severities = new Map<string, number[]>();
      for (const rate of [15, 30, 60, 120, 200, 260, 330, 500]) {
        const curve = firing({ quartzCPerHour: rate, cristobaliteCPerHour: rate });
        const reviewed = review({ reading: readingOf({ kiln: curve }), record: ware });
        const { severity, evidence } = finding(reviewed, topic);
        const stress = evidence.find(({ name }) => name === "stress")?.value as number;
        severities.set(severity, [...(severities.get(severity) ?? []), stress]);
      }
      const of = (severity: string) => severities.get(severity) ?? [];
      expect(Math.max(...of("note"))).toBeLessThan(0.7);
      for (const stress of of("caution")) expect(stress).toBeGreaterThanOrEqual(0.7);
      expect(Math.min(...of("warning"))).toBeGreaterThanOrEqual(1);
      expect(Math.max(...of("caution"))).toBeLessThan(1);
    },
  );

  it("of ware that is not known is that of an ordinary mug, said once, and never judged by a rule of thumb", () => {
    const reviewed = review({ reading: readingOf({ kiln: firing({ quartzCPerHour: 80 }) }) });
    const { statement, severity, basis } = finding(reviewed, "cooling through quartz");
    expect(severity).toBe("note");
    expect(statement).toContain("an ordinary stoneware mug (wide or thick pieces bear less)");
    expect(basis).not.toContain("Fraser");
    expect(reviewed.pieces.map(({ ware }) => ware.geometry)).toMatchObject([
      { wallMm: 6, baseMm: 8, footprintRadiusMm: 42.5 },
    ]);
  });

  it("says nothing of cristobalite, and judges nothing there, where the body has none", () => {
    const curve = firing({ cristobaliteCPerHour: 300 });
    const { findings } = review({ reading: readingOf({ kiln: curve }) });
    expect(findings.filter(({ topic }) => topic.includes("cristobalite"))).toEqual([]);
    const end = findings.find(({ topic }) => topic === "cooling to the end");
    expect(end).toMatchObject({ severity: "note", advice: "" });
    expect(findings.map(({ statement }) => statement).join()).not.toMatch(/cristobalite inversion/);
  });

  it("is not known when the readings end above", () => {
    const reviewed = review({ reading: readingOf({ kiln: firing({ lastC: 640 }) }) });
    expect(statementText(finding(reviewed, "cooling through quartz"), "C")).toBe(
      "The readings end at 640 °C: how it cooled through the quartz inversion (620 °C to 520 °C) was not measured.",
    );
    expect(finding(reviewed, "end of the log").severity).toBe("note");
  });
});

describe("the cone", () => {
  it("that was wanted and not reached is a warning", () => {
    const curve = firing({ peakC: 1100 });
    const reviewed = review({ reading: readingOf({ kiln: curve }), plan: PLAN });
    expect(finding(reviewed, "cone reached").severity).toBe("warning");
    expect(statementText(finding(reviewed, "cone reached"), "C")).toContain("cone 5 was wanted");
  });

  it("that was wanted may stand in the record", () => {
    const reviewed = review({ record: record('cone: "10"\n') });
    expect(finding(reviewed, "cone reached").severity).toBe("warning");
  });

  it("is given with the witness cones' offset, and said as read as well", () => {
    const curve = offsetBy(firing({}), -20);
    const reading = readingOf({ kiln: curve });
    const plain = review({ reading });
    const witnessed = review({
      reading,
      record: record('witnessCones: [{ cone: "6", bent: 4 o\'clock }]\n'),
    });
    const offsetK = witnessed.offset?.offsetK ?? Number.NaN;
    expect(witnessed.zones[0]?.heatwork.offsetK).toBe(offsetK);
    expect(witnessed.zones[0]?.peakC).toBe(plain.zones[0]?.peakC);
    expect(statementText(finding(witnessed, "witness cones"), "C")).toContain(
      `As read it was ${heatworkOf(curve).position.label}`,
    );
  });

  it("of a witness that the series has no model for is a problem", () => {
    const result = reviewFiring({
      reading: readingOf({ kiln: firing({}) }),
      record: record('witnessCones: [{ cone: "14", bent: down }]\n'),
      plan: null,
      series: "small",
    });
    expect(result.ok || result.problems[0]?.code).toBe("firing/no-such-cone");
  });
});

describe("what was heard", () => {
  // Down through 573 °C about 12.4 h after 17:00, below 200 °C after about 20 h.
  it("inside the quartz inversion points at dunting first", () => {
    const reviewed = review({ heard: [{ what: "a crack", at: "+12:25" }] });
    expect(statementText(finding(reviewed, "what was heard"), "C")).toContain(
      "look for a long crack through the wall (dunting) first",
    );
  });

  it("below both inversions speaks for the fit of the glaze", () => {
    const reviewed = review({ heard: [{ what: "pinging", at: "15:30" }] });
    expect(reviewed.heard[0]?.atSeconds).toBe(22.5 * 3600);
    expect(statementText(finding(reviewed, "what was heard"), "C")).toContain(
      "speaks for glaze crackle",
    );
  });

  it("after a hot opening points at the draught, not at the glaze", () => {
    const reviewed = review({
      record: record("unloaded: { at: +12:00 }\n"),
      heard: [{ what: "pinging", at: "+12:10" }],
    });
    expect(statementText(finding(reviewed, "what was heard"), "C")).toContain(
      "still hot enough for a draught to crack the wall",
    );
  });

  it("after the last reading is said, not dropped", () => {
    const reviewed = review({ heard: [{ what: "pinging", at: "2026-03-17 08:00" }] });
    expect(reviewed.heard[0]?.tempC).toBeNull();
    expect(statementText(finding(reviewed, "what was heard"), "C")).toContain(
      "after the last reading, so its temperature is not known",
    );
  });

  it("at a time that cannot be read is a problem", () => {
    const result = reviewFiring({
      reading: readingOf({ kiln: firing({}) }),
      record: null,
      plan: null,
      heard: [{ what: "pinging", at: "noon" }],
    });
    expect(result.ok ? "" : problemText(result.problems[0] as never)).toBe(
      [
        '--heard: "noon" is not a moment',
        '  expected  a clock time such as "09:10", "3:40 pm" or "2026-03-15 09:10", or a time since the start of the log such as "+14:05" (h:mm)',
        '  try       write it like "09:10", with a 24-hour clock     (firing/not-a-moment)',
      ].join("\n"),
    );
  });

  it("by the clock is a problem in a log without one", () => {
    const result = reviewFiring({
      reading: { ...readingOf({ kiln: firing({}) }), start: null, startOfDaySeconds: null },
      record: record("unloaded: { at: 09:10 }\n"),
      plan: null,
      heard: [{ what: "pinging", at: "09:00" }],
    });
    expect(result.ok ? [] : result.problems.map(({ code, where }) => [code, where])).toEqual([
      ["firing/no-clock", "--heard"],
      ["firing/no-clock", "firing.yaml: unloaded.at"],
    ]);
  });

  it("may hold braces without breaking the sentence", () => {
    const reviewed = review({ heard: [{ what: "{ping}", at: "+23:00" }] });
    expect(statementText(finding(reviewed, "what was heard"), "C")).toContain('"{ping}"');
  });
});

describe("opening", () => {
  it.each([
    [100, "note"],
    [190, "note"],
    [220, "note"],
    [300, "warning"],
  ])("of ordinary ware at %i °C is a %s, by practice", (tempC, severity) => {
    const reviewed = review({ record: record(`unloaded: { temperature: ${tempC} }\n`) });
    expect(finding(reviewed, "opening").severity).toBe(severity);
  });

  it("of ware that holds cristobalite is judged by what it does to it, all of it told of one piece", () => {
    const opened = (body: string) =>
      finding(
        review({
          record: record(
            `ware:\n  - { name: plates, clay: own, ${body}, wall: 8, base: 14, widest: 300 }\n  - { name: tiles, clay: own }\nunloaded: { temperature: 245 }\n`,
          ),
        }),
        "opening",
      );
    expect(opened("body: stoneware cone 6")).toMatchObject({ severity: "note" });
    const rich = opened("body: stoneware cone 10 cristobalitic");
    const stress = rich.evidence.find(({ name }) => name === "stress")?.value as number;
    expect(stress).toBeGreaterThan(0.5);
    expect(rich.severity).toBe(stress >= 1 ? "warning" : stress >= 0.7 ? "caution" : "note");
    expect(statementText(rich, "C")).toMatch(/strength on plates.*lifting/);
  });

  it("takes the temperature from the log when the record gives a time alone", () => {
    const reviewed = review({ record: record("unloaded: { at: +23:00 }\n") });
    expect(finding(reviewed, "opening").basis).toContain("temperature from the log");
  });
});

describe("measuring", () => {
  it("with two zones says how far they were apart", () => {
    const top = firing({});
    const reviewed = review({ reading: readingOf({ top, bottom: offsetBy(top, -35) }) });
    expect(reviewed.spread?.atPeakC).toBeCloseTo(35, 9);
    expect(reviewed.spread?.largestC).toBeCloseTo(35, 9);
    expect(finding(reviewed, "zones apart").severity).toBe("caution");
  });

  it("with a gap that hides part of an inversion is a caution", () => {
    const whole = firing({});
    const keep = [...whole.timesSeconds.keys()].filter((i) => i < 740 || i > 770);
    const [from, to] = [739 * 60, 771 * 60];
    const curve = makeCurve(
      keep.map((i) => whole.timesSeconds[i] as number),
      keep.map((i) => whole.tempsC[i] as number),
      [{ fromSeconds: from, toSeconds: to }],
    );
    const fault = {
      kind: "gap",
      channel: null,
      fromSeconds: from,
      toSeconds: to,
      count: 31,
      what: "no readings for 32 min",
    } as const;
    const reviewed = review({ reading: readingOf({ kiln: curve }, [fault]) });
    expect(statementText(finding(reviewed, "gaps in the readings"), "C")).toBe(
      "No readings for 32 min. The gap hides some of the cooling through the quartz inversion.",
    );
    expect(finding(reviewed, "gaps in the readings").severity).toBe("caution");
  });

  it("without any temperature is a problem that names the columns", () => {
    const reading = readingOf({ kiln: firing({}) });
    const result = reviewFiring({
      reading: { ...reading, channels: reading.channels.map((c) => ({ ...c, role: "other" })) },
      record: null,
      plan: null,
    });
    expect(result.ok ? "" : problemText(result.problems[0] as never)).toBe(
      [
        "firing.csv: no temperature was found among the columns kiln",
        "  expected  at least one column of measured temperatures with two readings or more",
        "  try       name the column with --column     (firing/no-temperature)",
      ].join("\n"),
    );
  });
});

describe("power", () => {
  it("lost on the way up is found, with when and how deep", () => {
    const curve = sampled(
      corners([0, 20], [5, 770], [6, 600], [8, 900], [11, 1190], [15, 500]),
      60,
    );
    const reviewed = review({ reading: readingOf({ kiln: curve }) });
    const found = finding(reviewed, "power loss");
    expect(statementText(found, "C")).toContain("at 5:00, it fell from 770 °C to 600 °C");
    expect(found.span?.toSeconds).toBeGreaterThan(7 * 3600);
  });

  it("is not said to be lost on a plain firing", () => {
    expect(review().findings.some(({ topic }) => topic === "power loss")).toBe(false);
  });
});

describe("against the plan", () => {
  it("a firing that followed it is off by nothing, whenever it began", () => {
    const reviewed = review({
      reading: readingOf({ kiln: shifted(firing({}), 1234) }),
      plan: PLAN,
    });
    expect(reviewed.comparison?.shiftSeconds).toBeCloseTo(1234, 3);
    expect(reviewed.comparison?.areaDeviation).toBeCloseTo(0, 6);
    expect(reviewed.comparison?.peakDelaySeconds).toBeCloseTo(0, 3);
    expect(finding(reviewed, "against the schedule").severity).toBe("note");
  });

  it("a firing that fell behind is behind by what it lost", () => {
    // The plan reaches 1190 °C at 8 h; this one is 10 h on the way, 50 °C short.
    const late = sampled(corners([0, 20], [6, 1080], [10, 1140], [14, 500], [20, 60]), 60);
    const reviewed = review({ reading: readingOf({ kiln: late }), plan: PLAN });
    expect(reviewed.comparison?.peakDeviationC).toBeCloseTo(-50, 6);
    // At 8 h the plan has 1190, the log 1110.
    expect(reviewed.comparison?.largestDeviationC).toBeCloseTo(-80, 0);
    expect(reviewed.comparison?.areaDeviation).toBeLessThan(0);
    expect(finding(reviewed, "against the schedule").severity).toBe("caution");
  });
});

describe("a review", () => {
  it("is the same at another time, for any shift of the log", () => {
    const base = review();
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), (seconds) => {
        const moved = review({ reading: readingOf({ kiln: shifted(firing({}), seconds) }) });
        expect(moved.findings.map((f) => statementText(f, "C"))).toEqual(
          base.findings.map((f) => statementText(f, "C")),
        );
        expect((moved.zones[0]?.peakAtSeconds ?? Number.NaN) - seconds).toBeCloseTo(
          base.zones[0]?.peakAtSeconds as number,
          6,
        );
      }),
      { numRuns: 10 },
    );
  });

  it("has every statement and advice complete in both units, for any end of the log", () => {
    const whole = firing({ quartzCPerHour: 130 });
    const last = whole.timesSeconds.at(-1) as number;
    fc.assert(
      fc.property(fc.integer({ min: 600, max: last }), (end) => {
        const curve = sliced(whole, 0, end);
        if (curve === null) return;
        const reviewed = review({
          reading: readingOf({ kiln: curve }),
          plan: PLAN,
          record: record(
            'witnessCones: [{ cone: "5", bent: down }, { cone: "6", bent: 4 o\'clock }]\nunloaded: { at: +22:00 }\nheard: [{ what: pinging, at: +13:00 }]\n',
          ),
        });
        for (const each of reviewed.findings)
          for (const unit of ["C", "F"] as const) {
            expect(statementText(each, unit)).not.toMatch(/[{}]|NaN|undefined|Infinity/);
            expect(adviceText(each, unit)).not.toMatch(/[{}]|NaN|undefined|Infinity/);
          }
      }),
      { numRuns: 25 },
    );
  });

  it("carries the cautions of kilns, and of crackle when the glaze is meant to", () => {
    const topics = review({ plan: PLAN }).cautions.map(({ topic }) => topic);
    expect(topics).toContain("kiln");
    expect(topics).toContain("opening");
    expect(topics).toContain("crackle and food");
  });

  it("shows the record as lines", () => {
    const reviewed = review({
      record: record(
        "kiln: the small one\ntrials: [{ piece: A1, clay: buff, glaze: white, coat: 0.8 mm, glazedSides: one, crackSpacing: 6 mm, cracked: crackle }]\ninvented: true\n",
      ),
    });
    expect(reviewed.recordLines).toEqual([
      { label: "example", text: "this firing is invented" },
      { label: "kiln", text: "the small one" },
      {
        label: "trial A1",
        text: "white on buff, coat 0.8 mm, glazed on one side, cracks 6 mm apart, glaze crackled",
      },
    ]);
  });
});
