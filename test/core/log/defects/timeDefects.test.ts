import { describe, expect, it } from "vitest";
import { reading } from "../logBuilder.ts";
import { bytesOf, type DefectLog, expectAsMade, readFixture } from "./defectLog.ts";

const AFTERNOON = "2026-03-14T17:05:00";
const NIGHT = "2026-03-14T23:05:00";
/** One reading an hour, from 20 °C to 1220 °C. */
const HOURLY = {
  readings: 31,
  step: 3600,
  tempsC: [20, 1220],
  faults: [["coarse", 31, /one reading in 60 min/]],
} as const;

const COUNTS: readonly DefectLog[] = [
  {
    file: "epoch-seconds.csv",
    is: "in seconds since 1970",
    start: AFTERNOON,
    decided: { "time format": /^seconds since 1970; .*universal time/ },
  },
  {
    file: "epoch-milliseconds.csv",
    is: "in milliseconds since 1970",
    start: AFTERNOON,
    decided: { "time format": /^milliseconds since 1970/ },
  },
  {
    file: "epoch-nanoseconds.csv",
    is: "in nanoseconds since 1970",
    start: AFTERNOON,
    decided: { "time format": /^nanoseconds since 1970/ },
  },
  {
    file: "spreadsheet-days.csv",
    is: "in days of a spreadsheet",
    start: AFTERNOON,
    decided: { "time format": /^spreadsheet days; likely|^spreadsheet days since 1900; likely/ },
  },
  {
    file: "elapsed-over-24-hours.csv",
    is: "in hours, minutes and seconds beyond a day",
    ...HOURLY,
    decided: { "time format": /^elapsed: hours, minutes and seconds/ },
  },
  {
    file: "elapsed-days-dotted.csv",
    is: "in days, a point, and hours",
    ...HOURLY,
    decided: { "time format": /^elapsed: .*written as a span/ },
  },
  {
    file: "elapsed-days-word.csv",
    is: "in days with a d behind them, and hours",
    ...HOURLY,
    decided: { "time format": /^elapsed: .*days/ },
  },
  { file: "elapsed-before-nought.csv", is: "in seconds from ten minutes before nought on" },
  {
    file: "label-impossible.csv",
    is: "in minutes under a label that says seconds",
    step: 5,
    faults: [
      ["clock", 1, /"Time \(s\)" says s, but only min would give a likely firing; --time-unit min/],
    ],
  },
];

const DATES: readonly DefectLog[] = [
  {
    file: "row-numbers-first.csv",
    is: "in stamps after a column of row numbers",
    start: AFTERNOON,
    columns: ["No.: other", "Kiln (°C): temperature"],
    decided: { "time column": /^Time; likely/ },
  },
  { file: "iso-offset-without-colon.csv", is: "with an offset without a colon", start: AFTERNOON },
  { file: "midnight-as-24.csv", is: "with 24:00 for midnight", start: NIGHT },
  {
    file: "date-and-time-columns.csv",
    is: "in a column of dates and one of times",
    start: NIGHT,
    decided: { "time column": /Datum \+ Uhrzeit/ },
  },
  {
    file: "date-where-it-changes.csv",
    is: "with the date only where it changes",
    start: NIGHT,
    decided: { "time column": /Date \+ Time/ },
  },
  { file: "iso-zone-in-brackets.csv", is: "with the name of a zone in brackets", start: AFTERNOON },
  {
    file: "iso-fraction-after-comma.csv",
    is: "with a comma before the fraction of a second",
    start: AFTERNOON,
  },
  // 02:00 to 02:55 comes twice, the second time an hour further from universal time.
  {
    file: "iso-offset-change.csv",
    is: "with an offset that changes by night",
    start: "2026-10-25T02:00:00",
    decided: { "time format": /kept at the offset of the first/ },
  },
  {
    file: "month-names.csv",
    is: "with months by name",
    start: AFTERNOON,
    decided: { "day order": /month's name/ },
  },
  { file: "month-names-german.csv", is: "with months by their German names", start: AFTERNOON },
  {
    file: "month-names-french.csv",
    is: "with months by their French names",
    start: "2026-08-14T17:05:00",
  },
  { file: "weekday-names.csv", is: "with the day of the week before the date", start: AFTERNOON },
  {
    file: "year-of-two-digits.csv",
    is: "with two digits for the year",
    start: AFTERNOON,
    decided: { "day order": /^day first: 2026-03-14; guessed; .*or year first: 2014-03-26/ },
  },
  {
    file: "day-first-undecidable.csv",
    is: "on 05/03, in March or in May",
    start: "2026-03-05T10:00:00",
    decided: { "day order": /^day first: 2026-03-05; guessed; .*or month first: 2026-05-03/ },
  },
  {
    file: "day-first-by-midnight.csv",
    is: "on 05/03 and after midnight on 06/03",
    start: "2026-03-05T23:05:00",
    decided: { "day order": /^day first; certain; .*midnight/ },
  },
];

describe("a log whose time is", () => {
  it.each([...COUNTS, ...DATES])("$is reads as it was made ($file)", expectAsMade);

  it("in days with two decimals is spread over 14.4 min each (spreadsheet-days-two-decimals.csv)", () => {
    const log = readFixture("spreadsheet-days-two-decimals.csv");
    const format = log.decisions.find(({ about }) => about === "time format");
    expect(format?.because).toContain("spread evenly over 864 s");
    // Rounding may shift each end by half of a hundredth of a day.
    const times = log.channels[0]?.curve?.timesSeconds ?? [];
    expect(times).toHaveLength(36);
    expect(Math.abs((times[35] as number) - 35 * 300)).toBeLessThanOrEqual(864);
  });

  it("in days since 1904 has the right steps, and its date may be the other (spreadsheet-days-1904.csv)", () => {
    const log = readFixture("spreadsheet-days-1904.csv");
    const format = log.decisions.find(({ about }) => about === "time format");
    expect(format?.runnerUp).toContain("1904");
    expect(log.channels[0]?.curve?.timesSeconds[23]).toBeCloseTo(23 * 300, 0);
    const told = reading(bytesOf("spreadsheet-days-1904.csv"), { timeKind: "spreadsheet-1904" });
    expect(told.start).toBe(AFTERNOON);
  });
});
