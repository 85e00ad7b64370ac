import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { LogOptions } from "../../../src/core/log/reading/LogReading.ts";
import { readLog } from "../../../src/core/log/readLog.ts";
import { problemText } from "../../../src/core/problem.ts";
import { splitQuoted } from "../../../src/node/readLogChunks.ts";
import { reading } from "./logBuilder.ts";

function bytesOf(name: string): Uint8Array {
  return readFileSync(new URL(`../../fixtures/logs/${name}`, import.meta.url));
}

function said(name: string, options: Partial<LogOptions> = {}): string {
  const result = readLog(bytesOf(name), { name, ...options }, splitQuoted);
  return result.ok ? "it was read" : result.problems.map(problemText).join("\n");
}

const ABSENT = [
  [
    "empty.csv",
    {},
    `empty.csv: holds nothing (0 bytes)
  expected  a log: rows with a time and a temperature
  try       export the log again, and check that the file is the right one     (log/empty)`,
  ],
  [
    "picture-named.csv",
    {},
    `picture-named.csv: is a picture, not text
  expected  a text file with rows of numbers: .csv, .txt, .tsv
  try       export the log as CSV or text, and give that file     (log/not-text)`,
  ],
  [
    "random-bytes.csv",
    {},
    `random-bytes.csv: is not text: 11 % of it are control characters
  expected  a text file with rows of numbers: .csv, .txt, .tsv
  try       export the log as CSV or text, and give that file     (log/not-text)`,
  ],
  [
    "only-words.csv",
    {},
    `only-words.csv: holds no rows of numbers (4 lines, cut at the comma)
  expected  rows with a time and at least one temperature
  try       check that this is the log and not its description, or say --delimiter and --decimal     (log/no-table)`,
  ],
  [
    "one-row.csv",
    {},
    `one-row.csv: holds one row of readings
  expected  at least two rows, at two times
  try       export the whole firing, not its last reading     (log/one-row)`,
  ],
  [
    "no-time.csv",
    {},
    `no-time.csv: has no column of times; its columns are 1 "Zone", 2 "Temp (°C)"
  expected  a column of dates, clock times or elapsed time, or a known sampling interval
  try       name it with --time-column NAME, or say the step between rows with --interval SECONDS     (log/no-time)`,
  ],
  [
    "no-temperature.csv",
    {},
    `no-temperature.csv: has no column of temperatures: the columns are 1 "Time (s)", 2 "Heat flux (kW/m2)", 3 "Battery (V)"; the time is Time (s)
  expected  a column of temperatures, named or labelled in °C, °F or K
  try       name the column with --column NAME or --column NUMBER     (log/no-temperature)`,
  ],
  [
    "millivolts-only.csv",
    {},
    `millivolts-only.csv: "Kiln (mV)" holds millivolts, up to 1.15 mV, and nothing says of which thermocouple: K would peak at 53 °C; N would peak at 67 °C; S would peak at 182 °C; R would peak at 180 °C; B would peak at 481 °C; J would peak at 47 °C; T would peak at 52 °C, if the terminals are at 25 °C
  expected  the letter of its type, from the plug, the lead or the order
  try       say it with --thermocouple K (or N, S, R, B, J, T), or as thermocouple.type in the firing record     (log/thermocouple-unknown)
millivolts-only.csv: holds millivolts, and no column says how warm the terminals were
  expected  the temperature of the terminals at which the thermocouple ends, as a column or told
  try       say it with --cold-junction 25C, or as log.coldJunction in the firing record; 0C when the logger has added it already     (log/cold-junction-unknown)`,
  ],
  [
    "all-open.csv",
    {},
    `all-open.csv: the temperature columns ("Temp (°C)") hold only OPEN, NaN
  expected  numbers in at least one temperature column
  try       check the thermocouple and its plug, or name another column with --column     (log/no-readings)`,
  ],
] as const;

const OPEN_QUESTIONS = [
  [
    "unit-could-be-two.csv",
    {},
    `unit-could-be-two.csv: the temperatures start at 75 and peak at 1050, which could be °C or °F
  expected  a unit in the header, in a row under it, in the cells, or above the table
  try       say it with --log-unit C or --log-unit F (or K)     (log/unit-unknown)`,
  ],
  [
    "time-unit-ambiguous.csv",
    {},
    `time-unit-ambiguous.csv: the times in "Time" have no unit, and s and min both give a likely firing
  expected  seconds, minutes or hours, named in the header or in a row under it
  try       say it with --time-unit s, min or h     (log/time-unit-unknown)`,
  ],
  [
    "elapsed-two-fields.csv",
    {},
    `elapsed-two-fields.csv: the elapsed times in "Elapsed" have two fields, and could be hours and minutes or minutes and seconds
  expected  hh:mm or mm:ss, said in the header or plain from the heating rate
  try       say what the last field is: --time-unit min or --time-unit s     (log/time-unit-unknown)`,
  ],
  [
    "sample-numbers-without-interval.csv",
    {},
    `sample-numbers-without-interval.csv: counts its samples in "No." but does not say how long a step is
  expected  a sampling interval above the table, or a column of times
  try       say the step between samples with --interval SECONDS     (log/no-interval)`,
  ],
  [
    "clock-reset.csv",
    {},
    `clock-reset.csv: line 32: the clock jumps from 2026-03-14 10:29:00 to 2026-03-10 00:00:00; the log falls into 2 parts
  expected  one firing whose clock runs on
  try       cut the file before line 32, and review each part by itself     (log/clock-reset)`,
  ],
] as const;

const WRONG_OPTIONS = [
  [
    "month-first.csv",
    { columns: ["Kiln"] },
    `month-first.csv: there is no column "Kiln"
  expected  a temperature column, out of: 1 "Date", 2 "Temp (°C)"
  try       give --column one of these names, or its number from 1     (log/unknown-column)`,
  ],
  [
    "month-first.csv",
    { columns: ["1"] },
    `month-first.csv: column "Date" holds the time
  expected  a temperature column, out of: 1 "Date", 2 "Temp (°C)"
  try       give --column one of these names, or its number from 1     (log/unknown-column)`,
  ],
  [
    "month-first.csv",
    { timeColumn: "Clock" },
    `month-first.csv: there is no column "Clock" for the time
  expected  one of its columns: 1 "Date", 2 "Temp (°C)"
  try       give --time-column one of these names, or its number from 1     (log/unknown-column)`,
  ],
  [
    "no-time.csv",
    { timeColumn: "Zone" },
    `no-time.csv: column "Zone" holds no times
  expected  a column of dates, clock times, or numbers that rise
  try       give --time-column another of: 1 "Zone", 2 "Temp (°C)"     (log/no-time)`,
  ],
  [
    "month-first.csv",
    { dayFirst: true },
    `month-first.csv: the date 3/14/2026 cannot be read day first
  expected  an order of day and month under which the dates exist
  try       leave out the option about the day, or turn it round     (log/day-order)`,
  ],
  [
    "month-first.csv",
    { encoding: "klingon" },
    `month-first.csv: the encoding "klingon" is not known
  expected  the name of a text encoding: utf-8, utf-16le, utf-16be, windows-1252, cp850
  try       leave out --encoding, or give one of these names     (log/unknown-encoding)`,
  ],
  [
    "month-first.csv",
    { delimiter: "::", intervalSeconds: -5 },
    `month-first.csv: --delimiter is "::"
  expected  one character that is no letter, digit, quote or line end
  try       write the character between the cells, in quotes: --delimiter ';'     (log/wrong-option)
month-first.csv: --interval is -5
  expected  a step above 0 seconds
  try       write the seconds between two rows: --interval 60     (log/wrong-option)`,
  ],
] as const;

describe("a log that cannot be read", () => {
  it.each([...ABSENT, ...OPEN_QUESTIONS, ...WRONG_OPTIONS])(
    "%s with %j says what is wrong and what to do",
    (name, options, expected) => {
      expect(said(name, options)).toBe(expected);
    },
  );

  it("asks for the unit and the time unit at once when both are open", () => {
    const rows = Array.from({ length: 40 }, (_, i) => `${i * 80},${75 + i * 22}`);
    const result = readLog(
      new TextEncoder().encode(`Time,Kiln\n${rows.join("\n")}`),
      { name: "a.csv" },
      splitQuoted,
    );
    expect(result.ok ? [] : result.problems.map((problem) => problem.code)).toEqual([
      "log/unit-unknown",
      "log/time-unit-unknown",
    ]);
  });
});

describe("an open question", () => {
  it.each([
    ["unit-could-be-two.csv", { unit: "F" }, 600],
    ["time-unit-ambiguous.csv", { timeUnit: "min" }, 4800],
    ["elapsed-two-fields.csv", { timeUnit: "s" }, 60],
    ["elapsed-two-fields.csv", { timeUnit: "min" }, 3600],
    ["sample-numbers-without-interval.csv", { intervalSeconds: 30 }, 30],
    ["no-time.csv", { intervalSeconds: 10 }, 10],
  ] as const)("of %s is answered by %j", (name, options, intervalSeconds) => {
    const log = reading(bytesOf(name), options);
    expect(log.intervalSeconds).toBe(intervalSeconds);
    expect(log.decisions.some((each) => each.confidence === "told")).toBe(true);
  });
});
