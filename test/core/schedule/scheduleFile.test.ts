import { describe, expect, it } from "vitest";
import { z } from "zod";
import { problemText } from "../../../src/core/problem.ts";
import { ScheduleFile } from "../../../src/core/schedule/Schedule.ts";
import { parseSchedule } from "../../../src/core/schedule/scheduleFile.ts";

const GOOD = `formatVersion: 1
title: Cone 5 for crackle tiles
unit: C
cone: "5"
segments:
  - { to: 110, rate: 60, hold: 30 min }
  - { to: 1186, rate: 150 }
  - { to: 620, rate: full }
  - { to: 520, rate: 50 }
`;

function problemsOf(text: string): string {
  const result = parseSchedule(text, "a.yaml");
  if (result.ok) throw new Error("the schedule was accepted");
  return result.problems.map(problemText).join("\n");
}

/** The good schedule with one line of it changed. */
function changed(from: string, to: string): string {
  if (!GOOD.includes(from)) throw new Error(`no "${from}" in the good schedule`);
  return GOOD.replace(from, to);
}

describe("parseSchedule", () => {
  it("gives rates their direction from the targets", () => {
    const result = parseSchedule(GOOD, "a.yaml");
    expect(result.ok && result.value.segments.map((segment) => segment.rateCPerHour)).toEqual([
      60,
      150,
      "free",
      -50,
    ]);
  });

  it("reads full, as older files say it, like free", () => {
    for (const word of ["full", "Full", " free "]) {
      const result = parseSchedule(changed("rate: full", `rate: "${word}"`), "a.yaml");
      expect(result.ok && result.value.segments[2]?.rateCPerHour).toBe("free");
    }
    expect(problemsOf(changed("rate: full", "rate: fully"))).toMatch(/or free/);
  });

  it("reads JSON as well", () => {
    const text = JSON.stringify({
      formatVersion: 1,
      title: "As JSON",
      unit: "F",
      start: 68,
      segments: [{ to: 212, rate: 108, hold: 30 }],
    });
    const result = parseSchedule(text, "a.json");
    expect(result.ok && result.value.segments[0]).toEqual({
      toC: 100,
      rateCPerHour: 60,
      holdSeconds: 1800,
      why: null,
    });
    expect(result.ok && result.value.startC).toBe(20);
  });

  it("takes units from strings against the file's own", () => {
    const result = parseSchedule(changed("to: 1186, rate: 150", "to: 2165 F, rate: 270 F/h"), "a");
    expect(result.ok && result.value.segments[1]?.toC).toBe(1185);
    expect(result.ok && result.value.segments[1]?.rateCPerHour).toBeCloseTo(150, 9);
  });

  it("accepts a minus sign where the target falls", () => {
    const result = parseSchedule(changed("rate: 50", "rate: -50"), "a.yaml");
    expect(result.ok && result.value.segments[3]?.rateCPerHour).toBe(-50);
  });

  it.each([
    ["", "a.yaml: the file is empty", "schedule/empty-file"],
    ["# nothing here\n", "the file is empty", "schedule/empty-file"],
    ["title: [unclosed", "a.yaml: line 1: it cannot be read", "schedule/not-yaml"],
    ["a: 1\na: 2\n", "a.yaml: line 2: it cannot be read", "schedule/not-yaml"],
    ["just words", 'the file holds "just words"', "schedule/wrong-value"],
    ["- 1\n- 2\n", "the file holds a list", "schedule/wrong-value"],
    ["x".repeat(500_001), "the text has 500001 characters", "schedule/too-long"],
    [changed("formatVersion: 1", "formatVersion: 2"), "formatVersion is 2", "wrong-version"],
    [changed("formatVersion: 1\n", ""), "formatVersion is missing", "schedule/missing-key"],
    [changed("unit: C", "unit: celsius"), "write unit: C", "schedule/wrong-value"],
    [
      changed("Cone 5 for crackle tiles", "1987"),
      'write it in quotes: title: "1987"',
      "wrong-value",
    ],
    [changed("rate: 150", "rate: true"), "rate is true", "schedule/wrong-value"],
    [changed("rate: 150", "rate:"), "rate is empty", "schedule/wrong-value"],
    [changed(", rate: 150", ""), "segments[1].rate, line 7: rate is missing", "missing-key"],
    [changed("unit: C", "unit: K"), 'unit is "K"', "schedule/wrong-value"],
    [changed('cone: "5"', "cone: 05"), 'write cone: "05"', "schedule/cone-without-quotes"],
    [changed('cone: "5"', 'cone: "55"'), '"55" is not a cone', "cones/unknown-cone"],
    [changed("rate: 150", "rate: 0"), "segments[1].rate, line 7: the rate is 0", "zero-rate"],
    [changed("rate: 150", "rate: 150 C"), '"150 C" is not a rate', "units/not-a-rate"],
    [changed("rate: 150", "rate: -150"), "cools, but the target 1186 °C is above", "direction"],
    [changed("rate: 150", "rate: 9000"), "the rate is 9000", "schedule/rate-too-fast"],
    [changed("to: 1186", "to: 3000"), "the temperature is 3000 °C", "schedule/too-hot"],
    [changed("to: 1186", "to: 2165"), 'write "2165 F" or unit: F', "schedule/too-hot"],
    [changed("to: 520", "to: -40"), "the temperature is −40 °C", "schedule/too-cold"],
    [changed("to: 1186", "to: 110"), "stays at 110 °C", "schedule/goes-nowhere"],
    [changed("hold: 30 min", "hold: 2 weeks"), '"2 weeks" is not a span of time', "not-a-duration"],
    [changed("hold: 30 min", "hold: 20000"), "the hold is 20000 minutes", "schedule/hold-too-long"],
    [changed("hold: 30 min", "soak: 30 min"), "write hold instead", "schedule/unknown-key"],
    [changed("rate: 150", "rote: 150"), "write rate instead", "schedule/unknown-key"],
    [changed("title:", "titel:"), "write title instead", "schedule/unknown-key"],
    [changed("unit: C", "unit: C\nware: { thickest: 4 m }"), "measures 4000 mm", "thickness"],
    [changed("unit: C", "unit: C\nware: { state: dryish }"), 'state is "dryish"', "wrong-value"],
    [
      `formatVersion: 1\ntitle: Long\nunit: C\nsegments:\n${"  - { to: 100, rate: 60 }\n".repeat(201)}`,
      "there are 201 segments",
      "schedule/too-many-segments",
    ],
    ["formatVersion: 1\ntitle: None\nunit: C\nsegments: []\n", "an empty list", "wrong-value"],
  ])("explains what is wrong (%#)", (text, said, code) => {
    expect(problemsOf(text)).toContain(said);
    expect(problemsOf(text)).toContain(`${code})`);
  });

  it("shows the whole problem in three lines", () => {
    expect(problemsOf(changed("rate: 150", "rate: 0"))).toBe(
      [
        "a.yaml: segments[1].rate, line 7: the rate is 0",
        "  expected  a rate above 0 °C/h; the direction follows from the target",
        "  try       use hold on the segment before, to stay at a temperature     (schedule/zero-rate)",
      ].join("\n"),
    );
  });

  it("collects the problems of a whole file", () => {
    const text = changed('cone: "5"', 'cone: "five"')
      .replace("rate: 60", "rate: 0")
      .replace("to: 1186", "to: 3000")
      .replace("rate: 50", "rate: slow");
    const result = parseSchedule(text, "a.yaml");
    expect(result.ok ? [] : result.problems.map((problem) => problem.code)).toEqual([
      "cones/unknown-cone",
      "schedule/zero-rate",
      "schedule/too-hot",
      "units/not-a-rate",
    ]);
  });

  it("does not blow up on aliases of aliases", () => {
    const bomb = [
      "a: &a [x, x, x, x, x, x, x, x, x]",
      ..."bcdefgh".split("").map((letter, i) => {
        const before = "abcdefg"[i];
        return `${letter}: &${letter} [${Array(9).fill(`*${before}`).join(", ")}]`;
      }),
    ].join("\n");
    expect(problemsOf(bomb)).toContain("schedule/not-yaml");
  });

  it("is not fooled by keys that every object has", () => {
    expect(problemsOf(`${GOOD}constructor: 1\n`)).toContain("schedule/unknown-key");
    expect(problemsOf(`${GOOD}__proto__: { title: x }\n`)).toContain("schedule/unknown-key");
  });

  it("has a schema that becomes JSON Schema", () => {
    const schema = z.toJSONSchema(ScheduleFile);
    expect(schema.required).toEqual(["formatVersion", "title", "unit", "segments"]);
    expect(schema.additionalProperties).toBe(false);
  });
});
