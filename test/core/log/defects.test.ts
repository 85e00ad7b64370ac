import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { LogReading } from "../../../src/core/log/reading/LogReading.ts";
import { choiceOf, pairs, problemsOf, reading } from "./logBuilder.ts";

function bytesOf(name: string): Uint8Array {
  return readFileSync(new URL(`../../fixtures/logs/${name}`, import.meta.url));
}

function read(name: string): LogReading {
  return reading(bytesOf(name), { name });
}

function becauseOf(log: LogReading, about: string): string | undefined {
  return log.decisions.find((each) => each.about === about)?.because;
}

describe("one log for each defect", () => {
  it("decimal commas between commas, without quotes, are asked about", () => {
    const name = "decimal-commas-unquoted.csv";
    expect(problemsOf(bytesOf(name), { name })).toBe(
      `decimal-commas-unquoted.csv: commas stand between the cells and, it seems, inside the numbers too: 3 cells under 2 names in "17:00:00,20,0"
  expected  another mark between cells, decimal points, or numbers in quotes
  try       export the log again with semicolons between the cells; or say --delimiter , when no comma is a decimal one     (log/decimal-unknown)`,
    );
  });

  it("a point that only stands before three digits is no decimal mark", () => {
    const log = read("thousands-with-points.csv");
    expect(becauseOf(log, "decimal mark")).toBe(
      "the point only stands before groups of three digits, between thousands",
    );
    expect(pairs(log).at(-1)).toEqual([11_400, 1080]);
  });

  it("morning and afternoon are read in Chinese", () => {
    const log = read("afternoon-in-chinese.csv");
    expect(log.start).toBe("2026-03-14T11:30:00");
    expect(pairs(log).at(-1)).toEqual([29 * 300, 20 + 29 * 12]);
  });

  it("a set point without a name shows by its exact lines", () => {
    const log = read("set-point-unnamed.csv");
    expect(log.channels.map(({ role }) => role)).toEqual(["temperature", "set-point"]);
    expect(becauseOf(log, "columns")).toContain(
      "Ch 2 (°C): set-point (it runs in exact lines and steps, as no kiln does)",
    );
  });

  it("a thermocouple that jumps wildly is left out from there on, counted and said", () => {
    const log = read("wild-thermocouple.csv");
    expect(pairs(log, "Bottom (°C)")).toHaveLength(20);
    expect(log.channels[1]?.dropped).toBe(20);
    expect(Math.max(...pairs(log, "Bottom (°C)").map(([, tempC]) => tempC))).toBe(487);
    const [fault] = log.faults.filter(({ channel }) => channel === "Bottom (°C)");
    expect(fault?.what).toMatch(
      /^Bottom \(°C\) jumps up and down by \d+ K from reading to reading while another thermocouple runs smoothly, as a failing one does; its 20 readings there are left out\.$/,
    );
  });

  it("whole degrees Celsius turned into °F give the unit away, as a guess that is marked as one", () => {
    const log = read("whole-celsius-in-fahrenheit.csv");
    const unit = log.decisions.find(({ about }) => about === "unit");
    expect(unit).toMatchObject({
      choice: "°F",
      confidence: "guessed",
      because: "no unit is written; all numbers are whole degrees Celsius turned into °F",
      runnerUp: "°C",
      option: "--log-unit C, F or K",
    });
    expect(pairs(log)[0]?.[1]).toBeCloseTo(90, 6);
  });

  it("blank cells in columns of fixed width stay in their column", () => {
    const log = read("blank-cells-fixed-width.txt");
    expect(choiceOf(log, "delimiter")).toBe("runs of two or more blanks");
    expect(pairs(log, "Top")).toHaveLength(38);
    // The seventh row has no number under "Top": 20 + 25 × 6 less 5 stands under "Bottom".
    expect(pairs(log, "Bottom")[6]).toEqual([1800, 165]);
  });

  it("a hard space of code page 850 between thousands is no letter", () => {
    const log = read("hard-space-code-page-850.csv");
    expect(choiceOf(log, "encoding")).toBe("code page 850");
    expect(pairs(log).at(-1)).toEqual([8400, 1180]);
  });

  it("the sharp peak of a coarse log is no spike", () => {
    const log = read("sharp-peak-coarse.csv");
    // 600 °C and twelve rises of 45 K.
    expect(Math.max(...pairs(log).map(([, tempC]) => tempC))).toBe(1140);
    expect(pairs(log)).toHaveLength(25);
  });

  it("totals under a table without times are no reading", () => {
    const log = read("totals-without-time.csv");
    expect(log.rows.accepted).toBe(20);
    expect(log.rows.rejected).toEqual([
      { line: 23, reason: "words where numbers belong", text: "Energy;12;kWh" },
    ]);
  });

  it("an hour that comes twice keeps both of its readings in a long layout", () => {
    const log = read("long-layout-clock-back.csv");
    expect(pairs(log, "Top")).toHaveLength(30);
    // 02:00 comes again after twelve rows of five minutes: 400 + 5 × 12.
    expect(pairs(log, "Top")[12]).toEqual([3600, 460]);
    expect(pairs(log, "Bottom")[12]).toEqual([3600, 451]);
  });
});
