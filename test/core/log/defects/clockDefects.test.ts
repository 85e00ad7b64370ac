import { describe, expect, it } from "vitest";
import { problemsOf } from "../logBuilder.ts";
import { bytesOf, type DefectLog, expectAsMade } from "./defectLog.ts";

const AFTERNOON = "2026-03-14T17:05:00";
const NIGHT = "2026-03-14T23:05:00";

const DIALS: readonly DefectLog[] = [
  {
    file: "clock-am-pm-noon.csv",
    is: "with AM and PM about noon",
    start: "2026-03-14T11:05:00",
    decided: { "time format": /AM and PM/ },
  },
  {
    file: "clock-am-pm-midnight.csv",
    is: "with AM and PM about midnight",
    start: NIGHT,
    decided: { "time format": /AM and PM/ },
  },
  {
    file: "clock-am-pm-with-points.csv",
    is: "with a.m. and p.m.",
    start: "2026-03-14T11:05:00",
    decided: { "time format": /AM and PM/ },
  },
  {
    file: "clock-12-hours-no-marker.csv",
    is: "on a dial of twelve hours, without AM and PM",
    readings: 36,
    decided: { "time format": /guessed; .*twelve hours were added/ },
  },
  {
    file: "clock-across-midnight.csv",
    is: "that shows the time of day only, across midnight",
    decided: { "time format": /^time of day.*midnight was passed once/ },
  },
];

/** A steady climb from 300 °C through the night. */
const NIGHT_CLIMB = { readings: 36, tempsC: [300, 737.5] } as const;

const MENDED: readonly DefectLog[] = [
  // The second Sunday of March, on which clocks in North America go ahead.
  {
    file: "summer-time-begins-in-america.csv",
    is: "ahead by an hour on 03/08, a Sunday only with the month first",
    ...NIGHT_CLIMB,
    start: "2026-03-08T00:05:00",
    decided: { "day order": /^month first: 2026-03-08; .*summer time.*or day first: 2026-08-03/ },
    faults: [["clock", 1, /ahead by one hour for summer time; .* was taken out/]],
  },
  {
    file: "newest-first-clock.csv",
    is: "that shows the time of day only, from the newest to the oldest",
    decided: { "time format": /midnight was passed once; .*turned round/ },
  },
  {
    file: "summer-time-begins.csv",
    is: "ahead by an hour that the temperature does not show",
    ...NIGHT_CLIMB,
    start: "2026-03-29T00:05:00",
    faults: [["clock", 1, /ahead by one hour for summer time; .* was taken out/]],
  },
  {
    file: "summer-time-begins-in-a-hold.csv",
    is: "ahead by an hour in a hold, where nothing tells",
    readings: 36,
    start: "2026-03-29T00:05:00",
    // 35 steps and the hour that may have passed; row 35 swings to 1060 + (35 × 7 mod 3) ÷ 2.
    lasts: 35 * 300 + 3600,
    tempsC: [1060, 1061],
    faults: [
      ["clock", 1, /does not tell whether an hour passed/],
      ["gap", 1, /for 65 min/],
    ],
  },
  {
    file: "summer-time-ends.csv",
    is: "back by an hour at the end of summer time",
    ...NIGHT_CLIMB,
    start: "2026-10-25T01:05:00",
    faults: [["clock", 1, /back by one hour at the end of summer time; an hour was added/]],
  },
  {
    file: "stamps-to-the-minute.csv",
    is: "to the minute, with four readings in each",
    readings: 36,
    step: 15,
    tempsC: [300, 317.5],
    start: AFTERNOON,
    decided: { "time format": /4 or so rows of each were spread evenly over 60 s/ },
  },
  {
    file: "newest-first.csv",
    is: "from the newest to the oldest",
    start: AFTERNOON,
    decided: { "time format": /turned round/ },
  },
  {
    file: "rows-out-of-order.csv",
    is: "with two rows changed over",
    readings: 36,
    start: AFTERNOON,
    faults: [["clock", 1, /out of order/]],
  },
  {
    file: "rows-repeated.csv",
    is: "with three rows twice",
    rejected: [8, 16, 23].map((line) => [line, /the same row again/]),
  },
  {
    file: "same-time-other-value.csv",
    is: "with one time twice and two temperatures at it",
    rejected: [[12, /the same time as the row before/]],
  },
  // Rows 10 to 19 of 36 are lacking.
  {
    file: "gap.csv",
    is: "with a gap of 55 minutes",
    readings: 26,
    lasts: 35 * 300,
    tempsC: [20, 457.5],
    faults: [["gap", 1, /for 55 min/]],
  },
  // Steps of 39 to 78 s, 63 s in the middle of 31; the last reading is 4 s late.
  {
    file: "jitter.csv",
    is: "with steps that are never the same",
    readings: 32,
    step: 63,
    lasts: 31 * 60 + 4,
    tempsC: [20, 97.7],
  },
];

describe("a clock", () => {
  it.each([...DIALS, ...MENDED])("$is reads as it was made ($file)", expectAsMade);

  it("set back to the year 2000 is never stitched (clock-reset-to-2000.csv)", () => {
    const said = problemsOf(bytesOf("clock-reset-to-2000.csv"), {
      name: "clock-reset-to-2000.csv",
    });
    expect(said).toContain("from 2026-03-14 18:00:00 to 2000-01-01 00:00:00");
    expect(said).toContain("before line 14");
  });

  it("day first before midnight and month first after it is never stitched (dates-mixed.csv)", () => {
    const said = problemsOf(bytesOf("dates-mixed.csv"), { name: "dates-mixed.csv" });
    expect(said).toContain("before line 13");
    expect(said).toContain("(log/clock-reset)");
  });
});
