import { describe, it } from "vitest";
import { type DefectLog, expectAsMade } from "./defectLog.ts";

const ENCODINGS: readonly DefectLog[] = [
  {
    file: "utf-16le-no-mark.csv",
    is: "in UTF-16 with the low byte first, without its mark",
    decided: { encoding: /^utf-16le; certain; every second byte is zero/ },
  },
  {
    file: "utf-16be-no-mark.csv",
    is: "in UTF-16 with the high byte first, without its mark",
    decided: { encoding: /^utf-16be; certain; every second byte is zero/ },
  },
  {
    file: "utf-8-mark.csv",
    is: "in UTF-8 and begins with a byte-order mark",
    decided: { encoding: /^utf-8; certain; .*byte-order mark/ },
  },
  {
    file: "latin-1-degree.csv",
    is: "in Latin-1, where byte B0 is the degree sign",
    columns: ["Kiln (°C): temperature"],
    decided: { encoding: /^windows-1252; likely; .*degree sign/ },
  },
  {
    // F8 is the degree sign of code page 437 and of 850 alike.
    file: "code-page-437-degree.csv",
    is: "in code page 437, where byte F8 is the degree sign",
    columns: ["Kiln (°C): temperature"],
    decided: { encoding: /^code page 850; likely; .*degree sign/ },
  },
  {
    file: "mac-roman-degree.csv",
    is: "in Mac Roman, where byte A1 is the degree sign",
    columns: ["Kiln (°C): temperature"],
    decided: { encoding: /^macintosh; likely; .*degree sign/ },
  },
  {
    file: "koi8-r-degree.csv",
    is: "in KOI8-R, where byte 9C is the degree sign",
    columns: ["Kiln (°C): temperature"],
    decided: { encoding: /^koi8-r; likely; .*degree sign/ },
  },
  {
    file: "shift-jis-degree.csv",
    is: "in Shift JIS, where bytes 81 8B are the degree sign",
    columns: ["Kiln (°C): temperature"],
    decided: { encoding: /^shift_jis; likely; .*degree sign/ },
  },
  {
    file: "gb18030-degree.csv",
    is: "in GB 18030, where bytes A1 E3 are the degree sign",
    columns: ["Kiln (°C): temperature"],
    decided: { encoding: /^gb18030; likely; .*degree sign/ },
  },
];

const WRITTEN_IN_HEADER = { unit: /^°C; certain/ };

const DEGREES: readonly DefectLog[] = [
  {
    file: "degree-double-encoded.csv",
    is: "encoded twice over, so that Â stands before the degree sign",
    decided: WRITTEN_IN_HEADER,
  },
  {
    file: "degree-replaced.csv",
    is: "without its degree sign: a mark for what was lost stands there",
    decided: WRITTEN_IN_HEADER,
  },
  {
    file: "degree-ordinal.csv",
    is: "written with the raised o of ordinals for a degree sign",
    decided: WRITTEN_IN_HEADER,
  },
  {
    file: "degree-ring.csv",
    is: "written with the ring above for a degree sign",
    decided: WRITTEN_IN_HEADER,
  },
  {
    file: "degree-one-character.csv",
    is: "written with the one character of °C",
    decided: WRITTEN_IN_HEADER,
  },
  {
    file: "degree-in-words.csv",
    is: "with units in whole words",
    decided: WRITTEN_IN_HEADER,
  },
];

const LINES: readonly DefectLog[] = [
  { file: "line-ends-mixed.csv", is: "with line ends of all three kinds" },
  { file: "line-ends-cr.csv", is: "with returns and no line feeds" },
  {
    // A line of nothing is no row; one with a comma is.
    file: "blank-lines.csv",
    is: "with blank lines, and one that holds only a delimiter",
    rejected: [[19, /no readable time/]],
  },
  {
    file: "last-line-cut-in-number.csv",
    is: "cut off within its last number: 30 of 307.5",
    readings: 23,
    rejected: [[25, /./]],
  },
  {
    file: "last-line-cut-in-time.csv",
    is: "cut off within its last time",
    readings: 23,
    rejected: [[25, /./]],
  },
];

const NUMBERS: readonly DefectLog[] = [
  {
    file: "thousands-hard-blank.csv",
    is: "with a hard blank after the thousands and a decimal comma",
    tempsC: [1222.5, 935],
    decided: { "decimal mark": /^comma/ },
  },
  {
    file: "decimal-comma-semicolon.csv",
    is: "with decimal commas between semicolons",
    decided: { delimiter: /^semicolon/, "decimal mark": /^comma/ },
  },
  {
    file: "thousands-comma.csv",
    is: "with a comma after the thousands, in quotes between commas",
    tempsC: [1222.5, 935],
    decided: { "decimal mark": /^point; .*thousands/ },
  },
  {
    file: "thousands-apostrophe.csv",
    is: "with an apostrophe after the thousands",
    tempsC: [1222.5, 935],
    decided: { "decimal mark": /^point/ },
  },
  {
    file: "thousands-narrow-blank.csv",
    is: "with a narrow blank after the thousands and a decimal comma",
    tempsC: [1222.5, 935],
    decided: { "decimal mark": /^comma/ },
  },
  {
    file: "thousands-point-decimal-comma.csv",
    is: "with a point after the thousands and a decimal comma",
    tempsC: [1222.5, 935],
    decided: { "decimal mark": /^comma; .*thousands/ },
  },
  { file: "minus-sign.csv", is: "with true minus signs and with plus signs", tempsC: [-5, 52.5] },
  { file: "exponents.csv", is: "with powers of ten in all its numbers" },
  { file: "flag-letters.csv", is: "with a letter behind each number" },
  {
    file: "unit-in-cells.csv",
    is: "with °C behind each number",
    decided: { unit: /^°C; certain/ },
  },
  { file: "kelvin.csv", is: "in kelvins", unit: "K", decided: { unit: /^K; certain/ } },
  { file: "fahrenheit.csv", is: "in °F", unit: "F", decided: { unit: /^°F; certain/ } },
];

describe("a log whose text is", () => {
  it.each([...ENCODINGS, ...DEGREES, ...LINES, ...NUMBERS])(
    "$is reads as it was made ($file)",
    expectAsMade,
  );
});
