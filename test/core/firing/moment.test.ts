import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseMoment, placeMoment } from "../../../src/core/record/moment.ts";

const EVENING = { start: "2026-02-28T22:00:00", startOfDaySeconds: 22 * 3600 };

describe("a moment", () => {
  it.each([
    ["09:10", { kind: "clock", date: null, secondsOfDay: 33_000 }],
    ["2026-03-15 09:10", { kind: "clock", date: "2026-03-15", secondsOfDay: 33_000 }],
    ["2026-03-15T09:10:30", { kind: "clock", date: "2026-03-15", secondsOfDay: 33_030 }],
    ["3:40pm", { kind: "clock", date: null, secondsOfDay: 56_400 }],
    ["12 am", { kind: "clock", date: null, secondsOfDay: 0 }],
    ["2026-03-15 9 a.m.", { kind: "clock", date: "2026-03-15", secondsOfDay: 32_400 }],
    ["+14:05", { kind: "elapsed", seconds: 50_700 }],
    ["+102:05", { kind: "elapsed", seconds: 367_500 }],
  ])("%s is read", (text, moment) => {
    expect(parseMoment(text)).toEqual(moment);
  });

  it.each([
    "24:00",
    "9.10",
    "9:60",
    "2026-02-29 10:00",
    "2026-13-01 10:00",
    "noon",
    "13 pm",
    "9",
    "",
  ])('"%s" is refused', (text) => {
    expect(parseMoment(text)).toBeNull();
  });

  it("without a date is the first such time after the start", () => {
    const morning = parseMoment("06:30");
    expect(morning && placeMoment(morning, EVENING)).toBe(8.5 * 3600);
  });

  it("with a date crosses the end of February", () => {
    const later = parseMoment("2026-03-01 22:00");
    expect(later && placeMoment(later, EVENING)).toBe(86_400);
    const leap = parseMoment("2028-03-01 22:00");
    expect(
      leap && placeMoment(leap, { start: "2028-02-28T22:00:00", startOfDaySeconds: 79_200 }),
    ).toBe(2 * 86_400);
  });

  it("by the clock has no place in a log without one", () => {
    const moment = parseMoment("06:30");
    expect(moment && placeMoment(moment, { start: null, startOfDaySeconds: null })).toBeNull();
  });

  it("with a date has no place in a log that knows only the time of day", () => {
    const moment = parseMoment("2026-03-01 06:30");
    expect(moment && placeMoment(moment, { start: null, startOfDaySeconds: 0 })).toBeNull();
  });

  it("since the start is itself, for any hours and minutes", () => {
    fc.assert(
      fc.property(fc.nat({ max: 200 }), fc.nat({ max: 59 }), (hours, minutes) => {
        const moment = parseMoment(`+${hours}:${String(minutes).padStart(2, "0")}`);
        expect(moment && placeMoment(moment, EVENING)).toBe(hours * 3600 + minutes * 60);
      }),
    );
  });
});
