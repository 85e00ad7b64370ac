import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { problemText } from "../../../src/core/problem.ts";
import { clockAt, parseStart } from "../../../src/core/schedule/clock.ts";

describe("parseStart", () => {
  it.each([
    ["2026-12-01 18:00", "2026-12-01T18:00:00"],
    ["2026-12-01T18:00", "2026-12-01T18:00:00"],
    ["2026-12-01T18:00:30", "2026-12-01T18:00:30"],
    [" 2026-12-01 7:05 ", "2026-12-01T07:05:00"],
    ["2024-02-29 00:00", "2024-02-29T00:00:00"],
  ])("reads %s", (text, wall) => {
    expect(parseStart(text, "--start")).toEqual({ ok: true, value: wall });
  });

  it.each([
    ["2026-02-30 18:00", "is not on the calendar or the clock"],
    ["2026-12-01 24:00", "is not a day and a time"],
    ["2026-12-01 18:75", "is not on the calendar or the clock"],
    ["2026-12-01", 'write "2026-12-01 18:00"'],
    ["01.12.2026 18:00", "write year, month and day with hyphens"],
    ["2026-12-01 18:00Z", "is not a day and a time"],
    ["tomorrow", '"tomorrow" is not a day and a time'],
  ])("explains %s", (text, said) => {
    const result = parseStart(text, "--start");
    expect(result.ok ? "" : result.problems.map(problemText).join("\n")).toContain(said);
  });
});

describe("parseStart with the wall time of now", () => {
  it.each([
    ["Dec 1 6pm", "2026-12-01T18:00:00"],
    ["1 December 18:00", "2026-12-01T18:00:00"],
    ["Dec. 1st, 2027 6:30 pm", "2027-12-01T18:30:00"],
    ["tomorrow 18:00", "2026-12-01T18:00:00"],
    ["today at 11 pm", "2026-11-30T23:00:00"],
    ["18:00", "2026-12-01T18:00:00"],
    ["23:30", "2026-11-30T23:30:00"],
    ["2 Jan 7:05", "2027-01-02T07:05:00"],
    ["2026-12-01 6pm", "2026-12-01T18:00:00"],
  ])("reads %s as the next such moment", (text, wall) => {
    expect(parseStart(text, "--start", "2026-11-30T20:00:00")).toEqual({ ok: true, value: wall });
  });

  it.each(["Dec 32 6pm", "13 pm", "tomorrow", "soon", "Feb 30 18:00"])("refuses %s", (text) => {
    expect(parseStart(text, "--start", "2026-11-30T20:00:00").ok).toBe(false);
  });
});

describe("clockAt", () => {
  it("goes over midnight and the end of the year", () => {
    expect(clockAt("2026-12-31T18:00:00", 11.5 * 3600)).toBe("2027-01-01T05:30:00");
  });

  it("knows no summer time, whatever the machine's zone", () => {
    expect(clockAt("2026-03-29T01:30:00", 3600)).toBe("2026-03-29T02:30:00");
  });

  it("counts to the nearest second", () => {
    expect(clockAt("2026-12-01T18:00:00", 59.6)).toBe("2026-12-01T18:01:00");
  });

  it("adds up, for any two spans", () => {
    fc.assert(
      fc.property(fc.integer({ max: 1e7 }), fc.integer({ max: 1e7 }), (a, b) => {
        const start = "2026-12-01T18:00:00";
        fc.pre(a > -1e9 && b > -1e9);
        expect(clockAt(clockAt(start, a), b)).toBe(clockAt(start, a + b));
      }),
    );
  });

  it("throws on a start that was never parsed", () => {
    expect(() => clockAt("soon", 0)).toThrow(RangeError);
  });
});
