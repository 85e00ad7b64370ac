import { describe, expect, it } from "vitest";
import { soundSaid } from "../../../src/core/record/moment.ts";

describe("what was heard, said in one line", () => {
  it.each([
    ["a crack 14:05", "a crack", "14:05"],
    ["a crack at 14:05", "a crack", "14:05"],
    ["14:05: a crack", "a crack", "14:05"],
    ["14:05 a crack", "a crack", "14:05"],
    ["pinging,  +11:30", "pinging", "+11:30"],
    ["two knocks, about + 11:30", "two knocks", "+ 11:30"],
    ["a bang 2026-03-15 09:10", "a bang", "2026-03-15 09:10"],
    ["a bang 2026-03-15T09:10:30", "a bang", "2026-03-15T09:10:30"],
  ])("%j is words and a moment", (line, what, at) => {
    expect(soundSaid(line)).toEqual({ what, at });
  });

  it.each(["14:05", " +11:30 ", "at 14:05"])("%j alone is pinging, and that is noted", (line) => {
    expect(soundSaid(line)).toMatchObject({
      what: "pinging",
      note: expect.stringContaining("assumed"),
    });
  });

  it.each(["", "a crack", "a crack 24:00", "a crack 2026-02-30 14:05", "crack 14:05, 15:10"])(
    "%j is not understood rather than half understood",
    (line) => {
      expect(soundSaid(line)).toBeNull();
    },
  );
});
