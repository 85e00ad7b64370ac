import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { calendarText, firingMoments } from "../../../src/core/schedule/calendar.ts";
import { draftSchedule } from "../../../src/core/schedule/draftSchedule.ts";
import { parseSchedule } from "../../../src/core/schedule/scheduleFile.ts";

const START = "2026-12-31T18:00:00";

/** A firing whose times can be told by hand: 980 °C at 98 °C/h, an hour there, down to 80 at 90 °C/h. */
const TEXT = `
formatVersion: 1
title: By hand
unit: C
segments:
  - { to: 1000, rate: 98, hold: 1 h }
  - { to: 80, rate: 92 }
`;

function drafted(text: string) {
  const schedule = parseSchedule(text, "a.yaml");
  if (!schedule.ok) throw new Error(schedule.problems[0]?.what);
  return draftSchedule({ schedule: schedule.value, start: START });
}

describe("firingMoments", () => {
  it("tells the peak, the quartz inversion and 100 °C of a firing as arithmetic does", () => {
    const moments = firingMoments(drafted(TEXT), { unit: "C" });
    const at = (words: string) => moments.find(({ what }) => what.startsWith(words))?.seconds;
    expect(at("Switch")).toBe(0);
    // (1000 − 20) / 98 = 10 h
    expect(at("Peak, 1000 °C")).toBe(36_000);
    // 11 h, then (1000 − 620) / 92 h and (1000 − 520) / 92 h
    expect(at("Cools into")).toBeCloseTo(39_600 + (380 / 92) * 3600, 6);
    expect(at("Passes")).toBeCloseTo(39_600 + (480 / 92) * 3600, 6);
    expect(
      at("Perhaps cool enough to open, 100 °C, if it falls as an assumed kiln does"),
    ).toBeCloseTo(39_600 + (900 / 92) * 3600, 6);
  });

  it("stands in the order of the clock", () => {
    const text = readFileSync(
      join(import.meta.dirname, "../../../schedules/cone-5-crackle-tiles.yaml"),
      "utf8",
    );
    const seconds = firingMoments(drafted(text), { unit: "C" }).map((moment) => moment.seconds);
    expect(seconds).toEqual(seconds.toSorted((a, b) => a - b));
    expect(seconds).toHaveLength(6);
  });

  it("falls by itself to 100 °C where the schedule ends hotter", () => {
    const moments = firingMoments(drafted(TEXT.replace("to: 80", "to: 300")), { unit: "C" });
    const cool = moments.find(({ what }) => what.startsWith("Perhaps cool enough"));
    expect(cool?.seconds).toBeGreaterThan(39_600 + (700 / 92) * 3600);
  });
});

describe("what the calendar says beside the times", () => {
  const text = calendarText(firingMoments(drafted(TEXT), { unit: "C" }), {
    title: "A",
    start: START,
  }).replaceAll("\r\n ", "");
  const events = text.split("BEGIN:VEVENT").slice(1);
  const event = (words: string) => events.find((each) => each.includes(words)) ?? "";

  it("rings before the peak, when it is switched on, and when it may be opened", () => {
    expect(event("SUMMARY:Peak")).toMatch(
      /BEGIN:VALARM\r\nACTION:DISPLAY\r\nDESCRIPTION:Peak[^\r]*\r\nTRIGGER:-PT15M\r\nEND:VALARM/,
    );
    expect(event("SUMMARY:Switch")).toContain("TRIGGER:PT0S");
    expect(event("SUMMARY:Perhaps cool")).toContain("TRIGGER:PT0S");
    expect(event("quartz inversion")).not.toContain("VALARM");
  });

  it("carries the caution that fits the moment", () => {
    expect(event("SUMMARY:Peak")).toMatch(
      /DESCRIPTION:.*see for yourself that the kiln switches off/,
    );
    expect(event("SUMMARY:Peak")).toMatch(/DESCRIPTION:.*infrared-rated glasses/);
    expect(event("SUMMARY:Perhaps cool")).toMatch(/DESCRIPTION:.*not the clock/);
  });
});

describe("a top at night", () => {
  // The top stands from 10 h to 11 h after the start.
  it.each([
    ["2026-12-31T18:00:00", "04:00", "2026-12-31 21:00"],
    ["2026-12-31T13:20:00", "23:20", "2026-12-31 09:45"],
    ["2026-12-31T21:00:00", "07:00", null],
    ["2026-12-31T08:00:00", "18:00", null],
  ])("from a start at %s comes at %s", (start, at, better) => {
    const { schedule } = drafted(TEXT);
    const { findings } = draftSchedule({ schedule, start });
    const found = findings.find(({ topic }) => topic === "top at night");
    if (better === null) return expect(found).toBe(undefined);
    expect(found?.advice).toContain(`Be there at ${at}`);
    expect(found?.advice).toContain(`at ${better}`);
    const again = draftSchedule({ schedule, start: `${better.replace(" ", "T")}:00` });
    expect(again.findings.some(({ topic }) => topic === "top at night")).toBe(false);
  });

  it("is not spoken of without a start", () => {
    const { schedule } = drafted(TEXT);
    const { findings } = draftSchedule({ schedule, start: null });
    expect(findings.some(({ topic }) => topic === "top at night")).toBe(false);
  });
});

describe("calendarText", () => {
  const moments = [{ what: "Peak", seconds: 7 * 3600 }];

  it("gives times of the clock without a zone, over the end of a year", () => {
    const text = calendarText(moments, { title: "A", start: START });
    expect(text).toContain("DTSTART:20270101T010000\r\n");
    expect(text).not.toMatch(/DTSTART[^\r\n]*Z|TZID/);
  });

  it("ends every line with CR LF and has what RFC 5545, 3.6 asks of a calendar and an event", () => {
    const text = calendarText(moments, { title: "A", start: START });
    expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
    for (const line of [
      "BEGIN:VCALENDAR",
      "VERSION:2.0",
      "PRODID:",
      "UID:",
      "DTSTAMP:",
      "END:VCALENDAR",
    ])
      expect(text).toContain(line);
    expect(text.match(/BEGIN:VEVENT/g)).toHaveLength(1);
  });

  it("escapes text as RFC 5545, 3.3.11 says", () => {
    const text = calendarText([{ what: "a; b, c \\ d\ne\u0007", seconds: 0 }], {
      title: "A",
      start: START,
    });
    expect(text).toContain("SUMMARY:a\\; b\\, c \\\\ d\\ne\r\n");
  });

  it("folds lines at 75 octets, inside no letter, and unfolds to the same", () => {
    const title = "Gefäße für Ölflaschen 🏺 ".repeat(12).trim();
    const text = calendarText(moments, { title, start: START });
    const lines = text.split("\r\n");
    for (const line of lines) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
    expect(text.replaceAll("\r\n ", "")).toContain(title);
    expect(text).not.toContain("\uFFFD");
  });

  it("is the same bytes for the same firing", () => {
    const once = calendarText(moments, { title: "A", start: START });
    expect(calendarText(moments, { title: "A", start: START })).toBe(once);
  });
});
