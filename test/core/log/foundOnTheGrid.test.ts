import { describe, expect, it } from "vitest";
import { pairs, reading, readText } from "./logBuilder.ts";

/** Lines of a log from its times and temperatures. */
function lines(count: number, line: (i: number) => string): readonly string[] {
  return Array.from({ length: count }, (_, i) => line(i));
}

const two = (value: number) => String(value).padStart(2, "0");
const clock = (minutes: number) => `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}:00`;

describe("a log", () => {
  it("without names says of each column that it may be something else", () => {
    const text = lines(30, (i) => `2024-05-01 ${clock(600 + i)};${20 + 4 * i};${21 + 4 * i}`);
    const columns = reading(text.join("\n"), { unit: "C" }).decisions.find(
      ({ about }) => about === "columns",
    );
    expect(columns?.confidence).not.toBe("certain");
    expect(columns?.runnerUp).toMatch(/column 2.*column 3/);
  });

  it("whose clock leaps an hour takes the order of its date under which summer time begins then", () => {
    // 27 March 2022 was the last Sunday of that month; 22 March 2027 is a Monday.
    const text = lines(60, (i) => {
      const minutes = 95 + i + (95 + i >= 120 ? 60 : 0);
      return `22-03-27 ${clock(minutes)};${(900 - 4 * i).toFixed(1)}`;
    });
    const log = reading(["Date;Kiln (°C)", ...text].join("\n"));
    expect(log.start).toBe("2022-03-27T01:35:00");
    expect(log.gaps).toEqual([]);
    expect(pairs(log).at(-1)?.[0]).toBe(59 * 60);
  });

  it("that ends just after midnight, newest first, has times of day and not spans", () => {
    const text = lines(
      40,
      (i) => `${clock((1441 - 12 * i + 1440) % 1440).slice(0, 5)}\t${900 - i}`,
    );
    const log = reading(["Time\tKiln (°C)", ...text].join("\n"));
    expect(log.startOfDaySeconds).toBe((1441 - 12 * 39) * 60);
    expect(log.rows.accepted).toBe(40);
  });

  it("that is counted keeps its pace over rows that cannot be read", () => {
    const text = lines(30, (i) => (i === 12 ? '"4?8"' : `"${400 + 4 * i}"`));
    const log = reading(['"Kiln (°C)"', ...text].join("\n"), { intervalSeconds: 300 });
    expect(pairs(log).at(-1)).toEqual([29 * 300, 516]);
    expect(log.rows.rejected).toHaveLength(1);
  });

  it("with minutes as 0.000, 5.000, 10.000 has no thousands in them", () => {
    const text = lines(30, (i) => `${(5 * i).toFixed(3)};${77 + 18 * i}`);
    const log = reading(["Time;Kiln (°F)", ...text].join("\n"), { timeUnit: "min" });
    expect(pairs(log).at(-1)?.[0]).toBe(29 * 300);
  });

  it.each([
    ["under a header with fewer names", ["Time,Kiln (°C),Relay"], 12],
    ["without any names and times", [], 40],
  ])("with commas between cells and in numbers is refused %s", (_, head, count) => {
    const text = lines(count, (i) =>
      head.length > 0
        ? `2024-05-01 ${clock(600 + 10 * i)},${200 + 7 * i},${(3 * i) % 10},${i % 2}`
        : `${1300 - 3 * i},${i % 2 === 0 ? 0 : 5},27,${i % 3 === 0 ? 0 : 5}`,
    );
    const result = readText([...head, ...text].join("\n"), { unit: "C", intervalSeconds: 60 });
    expect(result.ok ? [] : result.problems.map(({ code }) => code)).toEqual([
      "log/decimal-unknown",
    ]);
  });

  it("between blanks of uneven width keeps its narrow rows and its names", () => {
    const text = lines(30, (i) => {
      const cells = [`2024-05-01 ${clock(600 + i)} AM`, (20 + 5 * i).toFixed(1), `${i % 2}`];
      return cells.join(i === 0 || i === 17 ? " " : i % 2 === 0 ? "  " : "   ");
    });
    const log = reading(["Date/Time Kiln_(degC) Relay", ...text].join("\n"));
    expect(log.rows.accepted).toBe(30);
    expect(pairs(log, "Kiln_(degC)").at(0)).toEqual([0, 20]);
  });

  it.each(["Lid closed 16:50", "Alarm low,10,Alarm high,1300"])(
    "does not take the remark %s for its names",
    (remark) => {
      const text = lines(30, (i) => `2024-05-01  ${clock(600 + i)}  ${20 + 6 * i}`);
      const log = reading([remark, ...text].join("\n"), { unit: "C" });
      expect(log.channels.map(({ name }) => name)).toEqual(["column 3"]);
      expect(log.rows.accepted).toBe(30);
    },
  );

  it("with its date in the first row only begins on that day", () => {
    const remarks = ["Power 7.2 kW | 230 V||", "Weight | 12.5||", "Load | 3 shelves||"];
    const text = lines(
      25,
      (i) => `${i === 0 ? "23.03.2020" : ""}|${clock(360 + 12 * i)}|${27 + 9 * i}|1`,
    );
    const log = reading([...remarks, "Date|Time|TC1 (°C)|Relay", ...text].join("\n"));
    expect(log.start).toBe("2020-03-23T06:00:00");
  });

  it("that lacks readings where the clock goes back still runs on", () => {
    const text = lines(40, (i) => {
      const minutes = 60 + 12 * i - (60 + 12 * i >= 180 ? 60 : 0);
      const isLost = i >= 8 && i <= 10;
      return `2023-10-29 ${clock(minutes)};${isLost ? "" : (500 - 4 * i).toFixed(1)}`;
    });
    const log = reading(["Date;Kiln (°C)", ...text].join("\n"));
    expect(pairs(log).at(-1)?.[0]).toBe(39 * 720);
    expect(log.rows.accepted).toBe(37);
  });

  it("keeps readings before and after a gap that no line goes across", () => {
    const tempsC = [40, 61, 82, 103, 124, 145, 166, 187, 208, 229, 970, 939, 911, 880];
    const text = tempsC.map((tempC, i) => `${i * 720 + (i > 9 ? 15_000 : 0)};${tempC}`);
    const log = reading(["Time (s);Kiln (°C)", ...text].join("\n"));
    expect(pairs(log)).toHaveLength(tempsC.length);
  });
});
