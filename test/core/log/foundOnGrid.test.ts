import { describe, expect, it } from "vitest";
import { wallTime } from "../../../src/core/log/text/calendar.ts";
import { choiceOf, pairs, problemsOf, reading } from "./logBuilder.ts";

/** Rows of a log, written by their number. */
function rows(count: number, row: (i: number) => string): string {
  return `${Array.from({ length: count }, (_, i) => row(i)).join("\n")}\n`;
}

/** 100 °C and 5 K more each row. */
const tempC = (i: number) => (100 + 5 * i).toFixed(1);

describe("what made-up logs of known truth have shown", () => {
  it("the name above one column is found where a delimiter follows every number", () => {
    const log = reading(`Interval: 60 s\nTemperature|\n${rows(40, (i) => `${tempC(i)} °C|`)}`);
    expect(log.channels[0]?.name).toBe("Temperature");
  });

  it("a line that says the sampling step is no row of names", () => {
    const log = reading(`Period 5 min\n${rows(40, (i) => `${tempC(i)}K ${tempC(i)}K ${i % 2}`)}`);
    expect(choiceOf(log, "header")).toContain("none");
    expect(log.intervalSeconds).toBe(300);
  });

  it("one blank or several between cells are one delimiter", () => {
    const gap = (i: number) => " ".repeat(1 + (i % 3));
    const text = rows(30, (i) => `PT0H${i}M0S${gap(i)}${tempC(i)}°C${gap(i)}1`);
    expect(reading(`Elapsed Temp Relay\n${text}`).rows.accepted).toBe(30);
  });

  it("a comma that comes with the thousands in a log of spans is no decimal mark", () => {
    const text = rows(80, (i) => {
      const value = 700 + 10 * i;
      return `PT${Math.floor(i / 6)}H${(i % 6) * 10}M0S;${value < 1000 ? value : value.toLocaleString("en-GB")}`;
    });
    // 700 °F and 10 °F more each row is 371.1 °C at first, and 1490 °F or 810 °C in the last of 80 rows.
    const last = pairs(reading(`Elapsed;Kiln (°F)\n${text}`)).at(-1);
    expect(last?.[1]).toBeCloseTo(810, 6);
  });

  it("a dial that shows midnight as twelve is a dial of twelve hours", () => {
    const text = rows(57, (i) => {
      // From 13:12 on, each 12 minutes: the 54th row is 48 minutes short of midnight and its 12:00 follows.
      const minutes = 13 * 60 + 12 + 12 * i;
      const hour = Math.floor(minutes / 60) % 12;
      const day = minutes < 24 * 60 ? "30" : "31";
      const clock = [hour === 0 ? 12 : hour, minutes % 60].map((n) => String(n).padStart(2, "0"));
      return `2020-01-${day} ${clock.join(":")}:11,${tempC(i)}`;
    });
    const log = reading(`Date,Kiln (°C)\n${text}`);
    expect(log.gaps).toEqual([]);
    const format = log.decisions.find(({ about }) => about === "time format");
    expect(format?.confidence).toBe("likely");
    expect(format?.runnerUp).not.toBeNull();
  });

  it("hours of 1 to 12 only leave open which dial it is, and the reading says so", () => {
    const text = rows(
      100,
      (i) => `${wallTime(1.6e9 - (1.6e9 % 86_400) + 3600 + 360 * i)},${tempC(i)}`,
    );
    const format = reading(`Time,Kiln (°C)\n${text}`).decisions.find(
      ({ about }) => about === "time format",
    );
    expect(format?.confidence).toBe("likely");
    expect(format?.runnerUp).toContain("12 hours");
  });

  it("a time that was cut off in the last line is no time", () => {
    const text = rows(
      60,
      (i) => `${7 - Math.floor(i / 30)}:${String(59 - 2 * (i % 30)).padStart(2, "0")},${tempC(i)}`,
    );
    expect(reading(`Time,Kiln (°C)\n${text}6:0`).rows.accepted).toBe(60);
  });

  it("a blank line in a log of one column is a reading that is lacking, and is said", () => {
    const text = rows(40, (i) => (i === 20 ? "" : tempC(i)));
    const log = reading(`Interval: 60 s\nKiln (°C)\n${text}`);
    expect(pairs(log).at(-1)?.[0]).toBe(39 * 60);
    expect(log.faults.map(({ what }) => what).join()).toContain("1 blank line stands");
  });

  it("blank lines between all rows only space them", () => {
    const log = reading(`Interval: 60 s\nKiln (°C)\n${rows(40, (i) => `${tempC(i)}\n`)}`);
    expect(pairs(log).at(-1)?.[0]).toBe(39 * 60);
  });

  it("a nameless column that rises from about one step on is a kiln, not a time", () => {
    const text = rows(
      30,
      (i) => `${25.5 + 24 * i + ([0, 3, 1, 5, 2][i % 5] ?? 0)};${25.5 + 24 * i}`,
    );
    expect(problemsOf(text)).toContain("(log/no-time)");
  });

  it("a nameless column that counts the rows down is no temperature", () => {
    const text = rows(
      60,
      (i) => `${wallTime(1.6e9 - 600 * i).replace("T", " ")};${tempC(60 - i)};${60 - i}`,
    );
    const roles = reading(text, { unit: "C" }).channels.map(({ role }) => role);
    expect(roles).toEqual(["temperature", "other"]);
  });

  it("a clock that goes back an hour is mended where readings are lacking after it", () => {
    const stamp = (i: number) => {
      // 2019-10-26T16:00 is 1 572 105 600 s after 1970; the clock goes back at 3:00 of the next day.
      const minutes = 12 * i;
      return wallTime(1_572_105_600 + 60 * (minutes < 11 * 60 ? minutes : minutes - 60));
    };
    const text = rows(100, (i) => `${stamp(i)},${i === 56 || i === 57 ? "---" : tempC(i)}`);
    expect(pairs(reading(`Time,Kiln (°C)\n${text}`)).at(-1)?.[0]).toBe(99 * 720);
  });

  it("a month with an accent is read in code page 850", () => {
    const text = `Time;Kiln (C)\n${rows(20, (i) => `27. März. 2019 14:${10 + i}:00;${tempC(i)}`)}`;
    // ä is byte 0x84 there.
    const bytes = Uint8Array.from(text, (letter) => (letter === "ä" ? 0x84 : letter.charCodeAt(0)));
    expect(reading(bytes, { unit: "C" }).start).toBe("2019-03-27T14:10:00");
  });

  it("months are read in Polish and Finnish", () => {
    const names: readonly (readonly [string, string])[] = [
      ["5 stycznia 2026", "2026-01-05"],
      ["5 lut 2026", "2026-02-05"],
      ["5 kwietnia 2026", "2026-04-05"],
      ["5 czerwca 2026", "2026-06-05"],
      ["5 lipca 2026", "2026-07-05"],
      ["5 sierpnia 2026", "2026-08-05"],
      ["5 września 2026", "2026-09-05"],
      ["5 października 2026", "2026-10-05"],
      ["5 listopada 2026", "2026-11-05"],
      ["5 grudnia 2026", "2026-12-05"],
      ["5. tammikuuta 2026", "2026-01-05"],
      ["5. helmikuuta 2026", "2026-02-05"],
      ["5. maaliskuuta 2026", "2026-03-05"],
      ["5. huhtikuuta 2026", "2026-04-05"],
      ["5. toukokuuta 2026", "2026-05-05"],
      ["5. kesäkuuta 2026", "2026-06-05"],
      ["5. heinäkuuta 2026", "2026-07-05"],
      ["5. elokuuta 2026", "2026-08-05"],
      ["5. syyskuuta 2026", "2026-09-05"],
      ["5. lokakuuta 2026", "2026-10-05"],
      ["5. marraskuuta 2026", "2026-11-05"],
      ["5. joulukuuta 2026", "2026-12-05"],
    ];
    for (const [date, iso] of names) {
      const text = rows(20, (i) => `${date} 14:${String(i).padStart(2, "0")}:00;${tempC(i)}`);
      expect(reading(`Time;Kiln (°C)\n${text}`).start, date).toBe(`${iso}T14:00:00`);
    }
  });
});
