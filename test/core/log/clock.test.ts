import { describe, expect, it } from "vitest";
import { choiceOf, firing, pairs, problemsOf, reading, wall, writeLog } from "./logBuilder.ts";

const STAMPED = { header: "Time,Temp °C", time: (s: number) => `${wall(s).date} ${wall(s).clock}` };

/** A one-minute log through a Sunday night; `change` bends the clock from a minute on. */
function night(
  change: (minute: number) => number,
  tempC: (minute: number) => number = (minute) => 1000 - minute,
): string {
  const rows = Array.from({ length: 300 }, (_, minute) => {
    const shown = minute + change(minute);
    const day = shown < 120 ? 24 : 25;
    const ofDay = (shown + 22 * 60) % 1440;
    const clock = [Math.floor(ofDay / 60), ofDay % 60].map((n) => String(n).padStart(2, "0"));
    return `2026-10-${day} ${clock.join(":")}:00,${tempC(minute).toFixed(1)}`;
  });
  return `Time,Temp °C\n${rows.join("\n")}\n`;
}

const steady = Array.from({ length: 300 }, (_, minute) => minute * 60);

describe("a clock", () => {
  it("that goes back by an hour when summer time ends runs on", () => {
    const log = reading(night((minute) => (minute >= 240 ? -60 : 0)));
    expect(pairs(log).map(([seconds]) => seconds)).toEqual(steady);
    expect(log.faults.map((fault) => [fault.kind, fault.what])).toEqual([
      [
        "clock",
        "The clock went back by one hour at the end of summer time; an hour was added after it.",
      ],
    ]);
  });

  it("that goes ahead by an hour while the temperature does not is set back", () => {
    const log = reading(night((minute) => (minute >= 240 ? 60 : 0)));
    expect(pairs(log).map(([seconds]) => seconds)).toEqual(steady);
    expect(log.faults[0]?.what).toMatch(/summer time; the temperature shows that no hour passed/);
    expect(log.gaps).toEqual([]);
  });

  it("that goes ahead by an hour with the temperature leaves a gap", () => {
    const log = reading(
      night(
        (minute) => (minute >= 240 ? 60 : 0),
        (minute) => 1000 - minute - (minute >= 240 ? 60 : 0),
      ),
    );
    expect(log.gaps).toEqual([{ fromSeconds: 239 * 60, toSeconds: 300 * 60 }]);
    expect(log.channels[0]?.curve?.gaps).toEqual(log.gaps);
  });

  it("that goes ahead by an hour during a hold leaves a gap and says that it cannot tell", () => {
    const log = reading(
      night(
        (minute) => (minute >= 240 ? 60 : 0),
        () => 1000,
      ),
    );
    expect(log.gaps.length).toBe(1);
    expect(log.faults[0]?.what).toMatch(/does not tell whether an hour passed/);
  });

  it("running from the newest row to the oldest is turned round", () => {
    const [header, ...rows] = writeLog(firing(100), STAMPED).trimEnd().split("\n");
    const turned = reading([header, ...rows.toReversed()].join("\n"));
    expect(pairs(turned)).toEqual(pairs(reading(writeLog(firing(100), STAMPED))));
  });

  it("with two rows changed over is put in order, and says so", () => {
    const rows = writeLog(firing(300), STAMPED).split("\n");
    [rows[100], rows[101]] = [rows[101] as string, rows[100] as string];
    const log = reading(rows.join("\n"));
    expect(pairs(log)).toEqual(pairs(reading(writeLog(firing(300), STAMPED))));
    expect(log.faults.map(({ kind, count }) => [kind, count])).toEqual([["clock", 1]]);
  });

  it("with one wild stamp loses that row only", () => {
    const rows = writeLog(firing(100), STAMPED).split("\n");
    rows[50] = "2062-01-01 00:00:00,500.0";
    const log = reading(rows.join("\n"));
    expect(log.rows).toEqual({
      total: 100,
      accepted: 99,
      rejected: [
        {
          line: 51,
          reason: "its time jumps far ahead and back",
          text: "2062-01-01 00:00:00,500.0",
        },
      ],
    });
  });

  it("set in the first minutes leaves those rows out and says so", () => {
    const rows = writeLog(firing(200), STAMPED).split("\n");
    rows[1] = "2000-01-01 00:00:00,20.0";
    rows[2] = "2000-01-01 00:05:00,20.0";
    const log = reading(rows.join("\n"));
    expect(log.rows.accepted).toBe(198);
    expect(log.rows.rejected.map(({ line }) => line)).toEqual([2, 3]);
    expect(log.faults[0]?.what).toMatch(/The clock was set during the log; 2 rows/);
  });

  it("that starts anew in mid-log is never stitched", () => {
    const once = writeLog(firing(50)).trimEnd();
    const again = writeLog(firing(50), { header: "" });
    expect(problemsOf(`${once}\n${again}`)).toContain("(log/clock-reset)");
  });

  it("with stamps to the minute and six rows in each has them spread evenly", () => {
    const rows = Array.from(
      { length: 60 },
      (_, i) => `10:${String(Math.floor((i + 3) / 6)).padStart(2, "0")},${200 + i}`,
    );
    const times = pairs(reading(`Clock,Temp °C\n${rows.join("\n")}`)).map(([seconds]) => seconds);
    expect(times).toEqual(rows.map((_, i) => i * 10));
  });

  it("with one row twice keeps it once", () => {
    const log = reading(writeLog(firing(50)).replace("600,45.0\n", "600,45.0\n600,45.0\n"));
    expect(log.rows.rejected).toEqual([
      { line: 5, reason: "the same row again", text: "600,45.0" },
    ]);
    expect(log.rows.total).toBe(51);
  });

  it("with steps of a day at midnight settles which field is the day", () => {
    const rows = Array.from({ length: 30 }, (_, i) => {
      const minute = 23 * 60 + 30 + i * 5;
      const day = minute < 1440 ? "03/05" : "03/06";
      const clock = `${String(Math.floor(minute / 60) % 24).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;
      return `${day}/2026 ${clock},${100 + i * 9}`;
    });
    const log = reading(`Time,Temp °C\n${rows.join("\n")}`);
    expect(log.start).toBe("2026-03-05T23:30:00");
    expect(log.intervalSeconds).toBe(300);
    expect(choiceOf(log, "day order")).toBe("month first");
  });

  it("with a date that can be read two ways goes on, and tells both", () => {
    const rows = Array.from(
      { length: 30 },
      (_, i) => `05/03/2026 10:${String(i).padStart(2, "0")}:00,${20 + i}`,
    );
    const text = `Time,Temp °C\n${rows.join("\n")}`;
    const log = reading(text);
    const order = log.decisions.find((each) => each.about === "day order");
    expect(order).toMatchObject({
      choice: "day first: 2026-03-05",
      confidence: "guessed",
      runnerUp: "month first: 2026-05-03",
      option: "--day-first, --month-first or --year-first",
    });
    expect(reading(text, { dayFirst: false }).start).toBe("2026-05-03T10:00:00");
    expect(pairs(reading(text, { dayFirst: false }))).toEqual(pairs(log));
  });

  it("whose label gives an impossible firing is read as labelled, with a warning", () => {
    const log = reading(writeLog(firing(200), { time: (s) => String(s / 60) }));
    expect(log.intervalSeconds).toBe(5);
    expect(log.faults.map((fault) => fault.what)).toContain(
      '"Time (s)" says s, but only min would give a likely firing; --time-unit min reads it so.',
    );
  });
});
