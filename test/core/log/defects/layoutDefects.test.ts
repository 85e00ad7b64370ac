import { describe, expect, it } from "vitest";
import { problemsOf } from "../logBuilder.ts";
import { bytesOf, type DefectLog, expectAsMade } from "./defectLog.ts";

const AROUND_THE_TABLE: readonly DefectLog[] = [
  { file: "preamble-of-numbers.csv", is: "has numbers between commas above it" },
  { file: "line-ends-in-names.csv", is: "has line ends within its quoted names" },
  {
    file: "preamble-12-lines.csv",
    is: "has twelve lines of notes above it",
    decided: { header: /^a row of names/ },
  },
  {
    file: "comment-lines.csv",
    is: "has comments above it and between its rows",
    rejected: [
      [11, /a comment/],
      [23, /a comment/],
    ],
  },
  {
    file: "footer-statistics.csv",
    is: "has least, greatest and mean below it",
    rejected: [27, 28, 29, 30].map((line) => [line, /no readable time/]),
  },
  {
    file: "header-repeated.csv",
    is: "has its names again in the middle",
    rejected: [[14, /the header again/]],
  },
  {
    file: "header-rows-several.csv",
    is: "has a row of groups, a row of names and a row of units",
    columns: ["Top: temperature", "Bottom: temperature"],
    decided: { header: /names and a row of units/, unit: /^°C; certain/ },
  },
  {
    file: "unit-row.csv",
    is: "has a row of units under its names",
    columns: ["Kiln: temperature"],
    decided: { header: /names and a row of units/, unit: /^°C; certain/ },
  },
  {
    file: "names-none.csv",
    is: "has no names at all",
    start: "2026-03-14T17:05:00",
    columns: ["column 2: temperature"],
    decided: { header: /^none/, unit: /^°C; likely; no unit is written/ },
  },
  {
    file: "names-repeated.csv",
    is: "has one name twice",
    columns: ["Temp (°C): temperature", "Temp (°C) (2): temperature"],
  },
  {
    file: "name-empty.csv",
    is: "has a column without a name, which may be a zone or a set point",
    columns: ["Top (°C): temperature", "column 3: temperature"],
    decided: { columns: /guessed.*or column 3 as a set point/ },
  },
  {
    file: "interval-above.csv",
    is: "has no times, but the interval above it",
    decided: { "time format": /sample number × 300 s.*above the table/ },
  },
];

const CELLS: readonly DefectLog[] = [
  {
    file: "long-layout.csv",
    is: "has a row for each channel and time",
    readings: 30,
    step: 60,
    tempsC: [25, 112],
    columns: ["Top: temperature", "Bottom: temperature"],
    decided: { layout: /one row per channel and time/ },
  },
  {
    file: "tabs-decimal-comma.tsv",
    is: "has tabs between decimal commas",
    decided: { delimiter: /^tab/, "decimal mark": /^comma/ },
  },
  {
    file: "bars-about-cells.csv",
    is: "has bars before, between and behind its cells",
    columns: ["column 1: other", "Kiln (°C): temperature", "column 4: other"],
  },
  {
    file: "sep-line.csv",
    is: "names its delimiter in the first line",
    decided: { delimiter: /^semicolon.*sep=/ },
  },
  {
    file: "delimiter-trailing.csv",
    is: "ends each row with a delimiter",
    columns: ["Kiln (°C): temperature", "column 3: other"],
  },
  {
    file: "rows-ragged.csv",
    is: "has rows of one cell to five, one of them without a temperature",
    readings: 23,
    lasts: 6900,
    tempsC: [20, 307.5],
    columns: ["Kiln (°C): temperature", "Note: other"],
    rejected: [[6, /no temperature in it/]],
  },
  {
    file: "quote-unclosed.csv",
    is: "opens a quote in a note and never closes it",
    columns: ["Kiln (°C): temperature", "Note: other"],
  },
  {
    file: "quote-at-line-start.csv",
    is: "opens a quote before a time and never closes it",
    readings: 23,
    lasts: 6900,
    tempsC: [20, 307.5],
    rejected: [[10, /no readable time/]],
  },
  {
    file: "quote-inside-cell.csv",
    is: 'holds 5" in its cells',
    columns: ["Kiln (°C): temperature", "Place: other"],
  },
  { file: "quoted-everything.csv", is: "has quotes about every cell" },
  {
    file: "blanks-in-runs.txt",
    is: "has two to five blanks between its cells",
    decided: { delimiter: /^runs of two or more blanks/ },
  },
  {
    file: "fixed-width.txt",
    is: "has columns of fixed width with blanks in the names",
    columns: ["Top (°C): temperature", "Bottom (°C): temperature"],
  },
  {
    file: "cells-hostile.csv",
    is: "holds formulas, tags and commands to a terminal",
    columns: ["Kiln (°C): temperature", "Note: other"],
    rejected: [[26, /no number and no time in it/]],
  },
];

describe("a log that", () => {
  it.each([...AROUND_THE_TABLE, ...CELLS])("$is reads as it was made ($file)", expectAsMade);

  it("is followed by a table of segments is not read as one firing (two-tables.csv)", () => {
    const said = problemsOf(bytesOf("two-tables.csv"), { name: "two-tables.csv" });
    // The second table begins with line 28: names, 24 rows, a blank line, names.
    expect(said).toContain("cut the file before line 28");
    expect(said).toContain("(log/clock-reset)");
  });
});
