import { describe, expect, it } from "vitest";
import type { LogReading } from "../../../src/core/log/reading/LogReading.ts";
import { firing, pairs, reading, writeLog } from "./logBuilder.ts";

function roles(log: LogReading): Record<string, string> {
  return Object.fromEntries(log.channels.map(({ name, role }) => [name, role]));
}

const SAMPLES = firing(200);

function wide(
  header: string,
  columns: (tempC: number, i: number) => readonly (string | number)[],
): string {
  const rows = SAMPLES.map(({ seconds, tempC }, i) => [seconds, ...columns(tempC, i)].join(","));
  return `${header}\n${rows.join("\n")}\n`;
}

describe("columns", () => {
  it("are told apart by name and unit", () => {
    const log = reading(
      wide(
        "Time (s),Set point (°C),Top (°C),Bottom (°C),Output (%),Cold junction (°C),Battery (V),Heat flux (kW/m2),Alarm",
        (tempC, i) => [tempC + 2, tempC, tempC - 8, (i * 37) % 100, 23.5, 3.7, tempC / 100, "ok"],
      ),
    );
    expect(roles(log)).toEqual({
      "Set point (°C)": "set-point",
      "Top (°C)": "temperature",
      "Bottom (°C)": "temperature",
      "Output (%)": "output",
      "Cold junction (°C)": "cold-junction",
      "Battery (V)": "other",
      "Heat flux (kW/m2)": "other",
      Alarm: "other",
    });
  });

  it("without names are told apart by their shape", () => {
    const rows = SAMPLES.map(({ seconds, tempC }, i) =>
      [seconds, (tempC + Math.sin(i)).toFixed(2), (i * 37) % 100, 22 + (i % 3)].join(";"),
    );
    expect(roles(reading(rows.join("\n")))).toEqual({
      "column 2": "temperature",
      "column 3": "output",
      "column 4": "other",
    });
  });

  it("that run in exact lines beside a measured one are a set point", () => {
    const text = wide("Time (s),T1 (°C),T2 (°C)", (_, i) => [
      20 + i * 5,
      (20 + i * 5 - 3 + Math.sin(i * 1.7)).toFixed(1),
    ]);
    expect(roles(reading(text))).toEqual({ "T1 (°C)": "set-point", "T2 (°C)": "temperature" });
  });

  it("can be chosen by name or by number", () => {
    const text = wide("Time (s),Top (°C),Bottom (°C)", (tempC) => [tempC, tempC - 8]);
    const chosen = { "Top (°C)": "other", "Bottom (°C)": "temperature" };
    expect(roles(reading(text, { columns: ["bottom (°c)"] }))).toEqual(chosen);
    expect(roles(reading(text, { columns: ["3"] }))).toEqual(chosen);
  });

  it("called Zone A, B and C are not in °C for that", () => {
    const text = wide("Time (s),Zone A,Zone B,Zone C", (tempC) => [
      1.8 * tempC + 32,
      1.8 * tempC + 30,
      1.8 * tempC + 28,
    ]);
    const log = reading(text);
    expect(log.unit).toBe("F");
    expect(log.decisions.find((each) => each.about === "unit")?.confidence).toBe("likely");
  });

  it("of a long log, one row per channel and time, become one column each", () => {
    const rows = SAMPLES.flatMap(({ seconds, tempC }) => [
      `${seconds},Top,${tempC}`,
      `${seconds},Bottom,${tempC - 8}`,
    ]);
    const log = reading(`Time (s),Channel,Temp (°C)\n${rows.join("\n")}`);
    expect(pairs(log, "Top")).toEqual(SAMPLES.map(({ seconds, tempC }) => [seconds, tempC]));
    expect(pairs(log, "Bottom")).toEqual(SAMPLES.map(({ seconds, tempC }) => [seconds, tempC - 8]));
  });
});

describe("a cell that holds no reading", () => {
  it.each([
    "",
    "NaN",
    "---",
    "OL",
    "OPEN",
    "ERR",
    "#DIV/0!",
    "#N/A",
    "n/a",
    "9999",
    "32767",
    "-999",
    "-9999",
    "1e30",
    "0",
    "1372",
  ])(
    "such as “%s” is dropped and counted, and the row kept when another column reads",
    (sentinel) => {
      const text = wide("Time (s),Top (°C),Bottom (°C)", (tempC, i) => [
        i === 100 || i === 101 ? sentinel : tempC,
        tempC - 8,
      ]);
      const log = reading(text);
      expect(log.rows).toEqual({ total: 200, accepted: 200, rejected: [] });
      expect(log.channels[0]).toMatchObject({ readings: 198, dropped: 2 });
      expect(log.channels[1]).toMatchObject({ readings: 200, dropped: 0 });
      expect(log.faults.map((fault) => [fault.kind, fault.count])).toEqual(
        sentinel === "" ? [] : [["open", 2]],
      );
    },
  );

  it("rejects its row when it is the only temperature, with the line and the reason", () => {
    const log = reading("Time (s),Temp (°C)\n0,20\n60,OPEN\n120,24\n180,26\n");
    expect(log.rows).toEqual({
      total: 4,
      accepted: 3,
      rejected: [{ line: 3, reason: "no temperature in it", text: "60,OPEN" }],
    });
  });
});

describe("rows that are no readings", () => {
  it("comments, footers, repeated headers and odd times are listed with line and reason", () => {
    const rows = writeLog(firing(20)).trimEnd().split("\n");
    rows.splice(5, 0, "# door checked", "Time (s),Temp (°C)", "soon,20.0");
    rows.push("", "Peak,1234 reached", "end of log");
    const log = reading(rows.join("\n"));
    expect(log.rows.accepted).toBe(20);
    expect(log.rows.rejected).toEqual([
      { line: 6, reason: "a comment", text: "# door checked" },
      { line: 7, reason: "the header again", text: "Time (s),Temp (°C)" },
      { line: 8, reason: "no readable time", text: "soon,20.0" },
      { line: 26, reason: "no number and no time in it", text: "Peak,1234 reached" },
      { line: 27, reason: "no number and no time in it", text: "end of log" },
    ]);
  });
});

describe("spikes", () => {
  it("are left out and listed", () => {
    const samples = firing(200, 60).map((sample, i) =>
      i === 50 || i === 120 ? { ...sample, tempC: sample.tempC + 200 } : sample,
    );
    const log = reading(writeLog(samples));
    expect(log.channels[0]).toMatchObject({ readings: 198, dropped: 2 });
    expect(
      log.faults.map(({ kind, count, fromSeconds, toSeconds }) => [
        kind,
        count,
        fromSeconds,
        toSeconds,
      ]),
    ).toEqual([["spike", 2, 3000, 7200]]);
  });

  it("are not seen in corners, holds at one degree, noise, or a kiln opened hot", () => {
    const whole = firing(300, 300).map((s) => ({ ...s, tempC: Math.round(s.tempC) }));
    const noisy = firing(600, 60).map((s, i) => ({ ...s, tempC: s.tempC + 2 * Math.sin(i * i) }));
    const opened = firing(300, 60).map((s, i) => ({
      ...s,
      tempC: i < 200 ? s.tempC : s.tempC * 0.97 ** (i - 199),
    }));
    for (const samples of [whole, noisy, opened])
      expect(reading(writeLog(samples)).faults.filter((fault) => fault.kind === "spike")).toEqual(
        [],
      );
  });
});

describe("a thermocouple", () => {
  it("stuck at one value while another moves is named", () => {
    const text = wide("Time (s),Top (°C),Bottom (°C)", (tempC, i) => [
      tempC,
      i >= 40 && i < 60 ? 500 : tempC - 8,
    ]);
    const stuck = reading(text).faults.filter((fault) => fault.kind === "stuck");
    expect(stuck.map(({ channel, count }) => [channel, count])).toEqual([["Bottom (°C)", 20]]);
  });

  it("stuck at one value with nothing beside it is named when it lets go with a jump", () => {
    const text = wide("Time (s),Kiln (°C)", (tempC, i) => [i >= 40 && i < 70 ? 300 : tempC]);
    const stuck = reading(text).faults.filter((fault) => fault.kind === "stuck");
    expect(stuck.map(({ count }) => count)).toEqual([30]);
    expect(stuck[0]?.what).toMatch(/stays at exactly 300 °C, then jumps by \d+ K/);
  });

  it("read every ten minutes is called coarse, every minute not", () => {
    const coarse = (stepSeconds: number) =>
      reading(writeLog(firing(60, stepSeconds))).faults.filter(({ kind }) => kind === "coarse");
    expect(coarse(600)[0]?.what).toContain("one reading in 10 min");
    expect(coarse(60)).toEqual([]);
  });

  it("that gives nothing for a while leaves a gap that nothing bridges", () => {
    const samples = firing(100, 60).filter((_, i) => i < 40 || i > 60);
    const log = reading(writeLog(samples));
    expect(log.gaps).toEqual([{ fromSeconds: 39 * 60, toSeconds: 61 * 60 }]);
    expect(log.channels[0]?.curve?.gaps).toEqual(log.gaps);
    expect(log.faults.map((fault) => fault.what)).toEqual([
      "Nothing was measured for 22 min; nothing is assumed about it.",
    ]);
  });
});
