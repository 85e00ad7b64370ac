import { describe, expect, it } from "vitest";
import {
  clockText,
  momentText,
  startOfDayOf,
  stretchText,
} from "../../../src/core/reports/moments.ts";

const FIVE_PAST_FIVE = 17 * 3600 + 5 * 60;

describe("moments", () => {
  it("gives the clock beside the time since the start, and names another day", () => {
    expect(momentText(FIVE_PAST_FIVE, 3600)).toBe("1:00 after the start (18:05)");
    expect(momentText(FIVE_PAST_FIVE, 12 * 3600)).toBe("12:00 after the start (05:05, day 2)");
    expect(momentText(FIVE_PAST_FIVE, -600)).toBe("0:10 before the start (16:55)");
  });

  it("leaves the clock out when none is known", () => {
    expect(momentText(null, 3600)).toBe("1:00 after the start");
  });

  it("is day 2 at midnight, not 24:00", () => {
    expect(clockText(86_400 - 60, 60)).toBe("00:00, day 2");
    expect(clockText(86_400 - 60, 29)).toBe("23:59");
    expect(clockText(600, -1200)).toBe("23:50, the day before");
  });

  it("says the day of a stretch once when both ends are in it", () => {
    expect(stretchText(FIVE_PAST_FIVE, { fromSeconds: 36_000, toSeconds: 39_600 })).toBe(
      "from 10:00 to 11:00 after the start (03:05 to 04:05, day 2)",
    );
    expect(stretchText(FIVE_PAST_FIVE, { fromSeconds: 21_600, toSeconds: 28_800 })).toBe(
      "from 6:00 to 8:00 after the start (23:05 to 01:05, day 2)",
    );
  });

  it("reads the time of day from a wall time", () => {
    expect(startOfDayOf("2026-12-01T18:00:30")).toBe(64_830);
    expect(startOfDayOf(null)).toBeNull();
  });
});
