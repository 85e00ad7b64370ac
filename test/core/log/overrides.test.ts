import { describe, expect, it } from "vitest";
import {
  type LogReading,
  type LogSaid,
  saidTogether,
} from "../../../src/core/log/reading/LogReading.ts";
import { readLog } from "../../../src/core/log/readLog.ts";
import type { Result } from "../../../src/core/problem.ts";
import { splitQuoted } from "../../../src/node/readLogChunks.ts";

function read(lines: readonly string[], said: LogSaid = {}): Result<LogReading> {
  const bytes = new TextEncoder().encode(`${lines.join("\n")}\n`);
  return readLog(bytes, { ...said, name: "a.csv" }, splitQuoted);
}

function reading(lines: readonly string[], said: LogSaid = {}): LogReading {
  const result = read(lines, said);
  if (!result.ok) throw new Error(result.problems.map(({ what }) => what).join());
  return result.value;
}

function codes(result: Result<LogReading>): readonly string[] {
  return result.ok ? [] : result.problems.map(({ code }) => code);
}

/** A kiln that rises by 100 °C/h in 60 rows, one each minute. */
const risingC = (i: number) => (20 + (i * 100) / 60).toFixed(1);
const rows = (line: (i: number) => string, count = 60) =>
  Array.from({ length: count }, (_, i) => line(i));
const timesOf = ({ channels }: LogReading) => [...(channels[0]?.curve?.timesSeconds ?? [])];
const spanSeconds = (log: LogReading) => timesOf(log).at(-1);

describe("the header that is told", () => {
  const lines = [
    "Kiln three, spring",
    "stamp,cone,floor",
    "Time (s),Top (°C),Bottom (°C)",
    ...rows((i) => `${i * 60},${risingC(i)},${risingC(i)}`),
  ];

  it("gives the columns the names of its line", () => {
    const names = (header: number) =>
      reading(lines, {
        header,
        timeColumn: "1",
        columns: ["2"],
        unit: "C",
        timeUnit: "s",
      }).channels.map(({ name }) => name);
    expect(names(2)).toEqual(["cone", "floor"]);
    expect(names(3)).toEqual(["Top (°C)", "Bottom (°C)"]);
  });

  it("numbers the columns when it is none", () => {
    const said = {
      header: "none",
      timeColumn: "1",
      columns: ["2"],
      unit: "C",
      timeUnit: "s",
    } as const;
    expect(reading(lines, said).channels.map(({ name }) => name)).toEqual(["column 2", "column 3"]);
  });

  it("is refused on a line that is not there", () => {
    expect(codes(read(lines, { header: 900 }))).toEqual(["log/wrong-option"]);
  });
});

describe("the kind of time that is told", () => {
  const numbered = ["t,Temp (°C)", ...rows((i) => `${45_000 + i},${risingC(i)}`)];

  it("reads the same numbers as seconds, days, spreadsheet days, epoch seconds or a count", () => {
    const kinds: readonly (readonly [LogSaid, number])[] = [
      [{ timeKind: "elapsed", timeUnit: "s" }, 59],
      [{ timeKind: "elapsed", timeUnit: "ms" }, 0.059],
      [{ timeKind: "elapsed", timeUnit: "d" }, 59 * 86_400],
      [{ timeKind: "spreadsheet" }, 59 * 86_400],
      [{ timeKind: "epoch" }, 59],
      [{ timeKind: "count", intervalSeconds: 30 }, 59 * 30],
    ];
    for (const [said, seconds] of kinds)
      expect(spanSeconds(reading(numbered, { ...said, timeColumn: "t" }))).toBeCloseTo(seconds, 6);
  });

  it("puts spreadsheet day 45000 on 15 March 2023, as 1900-based day numbers count", () => {
    expect(reading(numbered, { timeKind: "spreadsheet", timeColumn: "t" }).start).toBe(
      "2023-03-15T00:00:00",
    );
  });

  it("puts the same day four years and a day later when days count from 1904", () => {
    const told = reading(numbered, { timeKind: "spreadsheet-1904", timeColumn: "t" });
    expect(told.start).toBe("2027-03-16T00:00:00");
  });

  it("reads a clock from zero as the time of day, and one from nine as elapsed", () => {
    const clock = (hour: number) => [
      "Clock,Temp (°C)",
      ...rows((i) => `0${hour}:${String(i).padStart(2, "0")}:00,${risingC(i)}`),
    ];
    expect(reading(clock(0)).startOfDaySeconds).toBeNull();
    expect(reading(clock(0), { timeKind: "clock-24h" }).startOfDaySeconds).toBe(0);
    expect(reading(clock(9)).startOfDaySeconds).toBe(9 * 3600);
    expect(reading(clock(9), { timeKind: "elapsed" }).startOfDaySeconds).toBeNull();
  });

  it("goes over twelve as the dial that is told does", () => {
    const half = [
      "Clock,Temp (°C)",
      ...rows((i) => `${((i + 9) % 12) + 1}:00:00,${(20 + i * 40).toFixed(1)}`, 15),
    ];
    expect(spanSeconds(reading(half, { timeKind: "clock-12h" }))).toBe(14 * 3600);
    expect(codes(read(half, { timeKind: "clock-24h" }))).toEqual(["log/clock-reset"]);
  });

  it("is refused where the column cannot be that", () => {
    expect(codes(read(numbered, { timeKind: "clock-24h", timeColumn: "t" }))).toEqual([
      "log/wrong-option",
    ]);
  });
});

describe("the role that is told", () => {
  const lines = [
    "Time (s),Top (°C),SP (°C),Mean (°C),Load",
    ...rows((i) => `${i * 60},${risingC(i)},${20 + i},${risingC(i)},${i % 100}`),
  ];
  const rolesIn = (said: LogSaid) => reading(lines, said).channels.map(({ role }) => role);

  it("is the role that the column has, whatever its name and its shape say", () => {
    expect(rolesIn({})[1]).toBe("set-point");
    expect(
      rolesIn({ roles: { "SP (°C)": "temperature", "Mean (°C)": "other", Load: "output" } }),
    ).toEqual(["temperature", "temperature", "other", "output"]);
  });

  it("is taken by the number of the column as well, and goes before the columns named", () => {
    expect(rolesIn({ columns: ["Top (°C)", "Mean (°C)"], roles: { "4": "other" } })).toEqual([
      "temperature",
      "set-point",
      "other",
      rolesIn({})[3],
    ]);
  });

  it("is refused for a column that is not there, and for the time", () => {
    expect(codes(read(lines, { roles: { Lid: "other" } }))).toEqual(["log/unknown-column"]);
    expect(codes(read(lines, { roles: { "Time (s)": "output" } }))).toEqual(["log/unknown-column"]);
  });

  it("of a record gives way to columns named on the command line, and joins roles named there", () => {
    const record: LogSaid = { roles: { a: "other", b: "output" }, unit: "F" };
    expect(saidTogether(record, { columns: ["a"] })).toEqual({ unit: "F", columns: ["a"] });
    expect(saidTogether(record, { roles: { b: "other" } }).roles).toEqual({
      a: "other",
      b: "other",
    });
  });
});

describe("the layout that is told", () => {
  const long = [
    "Time (s),Zone,Temp (°C)",
    ...rows((i) => `${Math.floor(i / 2) * 60},${i % 2 ? "top" : "bottom"},${risingC(i)}`),
  ];

  it("keeps a column of words a column", () => {
    expect(reading(long).channels.map(({ name }) => name)).toEqual(["bottom", "top"]);
    const names = reading(long, { layout: "wide" }).channels.map(({ name }) => name);
    expect(names).toContain("Temp (°C)");
  });

  it("makes a column of each channel even where no time comes twice", () => {
    const apart = [
      "Time (s),Zone,Temp (°C)",
      ...rows((i) => `${i * 60},${i % 2 ? "top" : "bottom"},${risingC(i)}`),
    ];
    expect(reading(apart, { layout: "long" }).channels.map(({ name }) => name)).toEqual([
      "bottom",
      "top",
    ]);
  });

  it("is refused as long where no column names channels", () => {
    const lines = ["Time (s),Temp (°C)", ...rows((i) => `${i * 60},${risingC(i)}`)];
    expect(codes(read(lines, { layout: "long" }))).toEqual(["log/wrong-option"]);
  });
});

describe("the date and the delimiter that are told", () => {
  it("reads 26-03-05 as 5 March 2026 when the year comes first", () => {
    const lines = [
      "Date,Temp (°C)",
      ...rows((i) => `26-03-05 10:${String(i).padStart(2, "0")}:00,${risingC(i)}`),
    ];
    expect(reading(lines, { yearFirst: true }).start).toBe("2026-03-05T10:00:00");
    expect(reading(lines, { dayFirst: true }).start).toBe("2005-03-26T10:00:00");
  });

  it("cuts at two blanks and not at one", () => {
    const lines = ["Time (s)   Upper zone (°C)", ...rows((i) => `${i * 60}   ${risingC(i)}`)];
    expect(reading(lines, { delimiter: "  " }).channels.map(({ name }) => name)).toEqual([
      "Upper zone (°C)",
    ]);
  });
});
