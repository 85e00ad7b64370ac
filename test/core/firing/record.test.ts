import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { problemText } from "../../../src/core/problem.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { FiringRecordFile } from "../../../src/core/record/recordFormat.ts";

const FULL = `formatVersion: 1
title: Crackle tiles
unit: F
schedule: tiles.yaml
kiln: the small top loader
thermocouple: { type: K, class: 2 }
cone: "05"
witnessCones:
  - { cone: "05", bent: 4 o'clock }
  - { cone: "5", bent: upright }
ware:
  - { name: mugs, clay: buff, state: glazed on bisque, thickest: 6 mm, count: 4 }
trials:
  - { piece: A1, clay: buff, glaze: white, coat: 0.8 mm, glazedSides: one, crackSpacing: 6 mm, cracked: crackle }
log: { unit: F, columns: [kiln], dayFirst: true }
unloaded: { at: 2026-03-15 09:10, temperature: 212 }
heard:
  - { what: pinging, at: +14:05 }
notes: none
`;

function problemsOf(text: string): readonly string[] {
  const record = parseRecord(text, "a.yaml");
  return record.ok ? [] : record.problems.map(problemText);
}

describe("a firing record", () => {
  it("is read into canonical units", () => {
    const record = parseRecord(FULL, "a.yaml");
    expect(record.ok).toBe(true);
    if (!record.ok) return;
    expect(record.value.unloaded?.temperatureC).toBeCloseTo(100, 9);
    expect(record.value.trials[0]).toMatchObject({ coatMm: 0.8, crackSpacingMm: 6 });
    expect(record.value.ware[0]).toMatchObject({ thickestMm: 6, widestMm: null, count: 4 });
    expect(record.value.thermocouple).toEqual({ type: "K", class: "2", sheathMm: null });
    expect(record.value.log).toEqual({
      unit: "F",
      columns: ["kiln"],
      dayFirst: true,
      thermocouple: "K",
    });
    expect(record.value.heard[0]?.at).toEqual({ kind: "elapsed", seconds: 50_700 });
    expect(record.value.unloaded?.at).toEqual({
      kind: "clock",
      date: "2026-03-15",
      secondsOfDay: 33_000,
    });
    expect(record.value.invented).toBe(false);
  });

  it("keeps the zero of cone 05", () => {
    const record = parseRecord(FULL, "a.yaml");
    expect(record.ok && record.value.cone).toBe("05");
    expect(record.ok && record.value.witnesses.map(({ cone, bend }) => [cone, bend])).toEqual([
      ["05", { kind: "clock", oClock: 4 }],
      ["5", { kind: "upright" }],
    ]);
  });

  it("asks for quotes around a cone, with the zero as it was written", () => {
    const texts = problemsOf(
      "formatVersion: 1\ntitle: x\ncone: 05\nwitnessCones:\n  - &first { cone: 04, bent: down }\n  - *first\n",
    );
    expect(texts[0]).toBe(
      [
        "a.yaml: cone, line 3: the cone 05 is written as a number",
        '  expected  a cone in quotes, because "05" and "5" are different cones',
        '  try       write cone: "05"     (record/cone-without-quotes)',
      ].join("\n"),
    );
    expect(texts[1]).toContain("a.yaml: witnessCones[0].cone, line 5: the cone 04 is");
    expect(texts[2]).toContain('write cone: "04"');
  });

  it("is read from JSON as well", () => {
    const text = JSON.stringify({ formatVersion: 1, title: "x", witnessCones: [] });
    expect(parseRecord(text, "a.json").ok).toBe(true);
  });

  it("suggests the word that was probably meant", () => {
    expect(problemsOf("formatVersion: 1\ntitle: x\nwitnesCones: []\n")).toEqual([
      [
        'a.yaml: witnesCones, line 3: "witnesCones" is not a key of a firing record here',
        "  expected  one of formatVersion, title, unit, schedule, cone, kiln, kilnRating, thermocouple, cones, witnessCones, ware, trials, log, unloaded, heard, found, notes, invented",
        "  try       write witnessCones instead, if you mean it     (record/unknown-key)",
      ].join("\n"),
    ]);
  });

  it("shows all that is wrong at once", () => {
    const texts = problemsOf(
      "formatVersion: 1\ntitle: x\nunloaded: { at: '25:00', temperature: 3 furlongs }\nwitnessCones: [{ cone: \"99\", bent: donw }]\n",
    );
    expect(texts.map((text) => /\(([^()]+\/[^()]+)\)$/.exec(text)?.[1])).toEqual([
      "cones/unknown-cone",
      "record/not-a-bend",
      "record/not-a-moment",
      "units/not-a-temperature",
    ]);
    expect(texts[1]).toBe(
      [
        'a.yaml: witnessCones[0].bent, line 4: "donw" does not say how far the cone bent',
        '  expected  upright, down, a clock position from 12 (upright) to 6 such as "4 o\'clock", or degrees from upright such as "45 degrees"',
        '  try       write "down"     (record/not-a-bend)',
      ].join("\n"),
    );
    expect(texts[2]).toBe(
      [
        'a.yaml: unloaded.at, line 3: "25:00" is not a moment',
        '  expected  a clock time such as "09:10", "3:40 pm" or "2026-03-15 09:10", or a time since the start of the log such as "+14:05" (h:mm)',
        '  try       write it like "09:10", with a 24-hour clock     (record/not-a-moment)',
      ].join("\n"),
    );
  });

  it("says what is missing", () => {
    expect(problemsOf("formatVersion: 1\n")).toEqual([
      [
        "a.yaml: title, line 1: title is missing",
        "  expected  text (what this firing was, in one line)",
        "  try       add title     (record/missing)",
      ].join("\n"),
    ]);
  });

  it("says which values may stand where a wrong one stands", () => {
    expect(problemsOf("formatVersion: 1\ntitle: x\nunit: X\n")).toEqual([
      [
        'a.yaml: unit, line 3: unit is "X"',
        "  expected  C or F (unit of bare temperatures in this file)",
        "  try       write C or F     (record/wrong-value)",
      ].join("\n"),
    ]);
  });

  it("says on which line a text is not YAML", () => {
    expect(problemsOf("formatVersion: 1\ntitle: [x\n")[0]).toContain("a.yaml: line 3");
    expect(problemsOf("formatVersion: 1\ntitle: [x\n")[0]).toContain("(record/not-yaml)");
  });

  it("never throws, for any text", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        parseRecord(text, "a.yaml");
      }),
    );
  });

  it("has a JSON Schema with a description of every top-level word", () => {
    const schema = z.toJSONSchema(FiringRecordFile, { io: "input" });
    expect(schema.additionalProperties).toBe(false);
    expect(schema.required).toEqual(["formatVersion", "title"]);
  });
});
