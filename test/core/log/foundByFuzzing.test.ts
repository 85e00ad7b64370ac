import { describe, expect, it } from "vitest";
import { parseTemperature } from "../../../src/core/units/temperature.ts";
import { bodyNamed } from "../../../src/core/ware/bodies.ts";
import { problemsOf, reading } from "./logBuilder.ts";

/** Rows of a firing of an hour and more, one a minute. */
function rows(row: (minute: number, tempC: number) => string): string {
  return Array.from({ length: 90 }, (_, i) => row(i, 20 + 5 * i)).join("\n");
}

const clock = (minute: number) =>
  `${12 + Math.floor(minute / 60)}:${String(minute % 60).padStart(2, "0")}:00`;

describe("defects that fuzzing has found", () => {
  it("a clock that is written in half of the rows or fewer is no time, and no crash", () => {
    for (const every of [2, 3]) {
      const log = rows((i, t) => `${i % every === 0 ? clock(i) : ""},${t}`);
      expect(problemsOf(`Clock,Temp (°C)\n${log}\n`)).toContain("(log/no-time)");
    }
  });

  it("a row of 20 000 cells does not take a block of memory for each", () => {
    const before = process.memoryUsage().rss;
    const problem = problemsOf(`${"1,".repeat(20_000)}1\n`.repeat(5));
    expect(problem).toContain("holds more than 256 columns");
    // Twenty thousand blocks of 65 536 numbers of 8 bytes would be 10 GB.
    expect(process.memoryUsage().rss - before).toBeLessThan(500 * 2 ** 20);
  });

  it("a line of two million cells is not looked at in full", () => {
    const began = process.cpuUsage();
    problemsOf("1,".repeat(2_000_000));
    const { user, system } = process.cpuUsage(began);
    // Seconds of the processor, so that what else the machine does counts for nothing.
    expect((user + system) / 1e6).toBeLessThan(10);
  });

  it("a name of thousands of characters keeps its ends, and its unit", () => {
    const name = `Top ${"x".repeat(5000)} (°F)`;
    const log = reading(`Time (min),${name}\n${rows((i, t) => `${i},${t}`)}\n`);
    const channel = log.channels.find(({ role }) => role === "temperature");
    expect(channel?.name).toMatch(/^Top x+…x+ \(°F\)$/);
    expect(channel?.name.length).toBe(100);
    expect(log.unit).toBe("F");
  });
});

describe("words that every object knows", () => {
  it.each(["constructor", "toString", "__proto__", "valueOf"])(
    "%s is no unit, body or mark",
    (word) => {
      expect(parseTemperature(`900 ${word}`, { unit: "C", where: "here" }).ok).toBe(false);
      expect(bodyNamed(word, "here").ok).toBe(false);
      const log = `Time (min),Temp (°C)\n${rows((i, t) => `${i},${t}`)}\n`;
      expect(problemsOf(log, { delimiter: word })).toContain(`"${word}"`);
    },
  );
});
