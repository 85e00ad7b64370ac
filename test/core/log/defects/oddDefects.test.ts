import { describe, expect, it } from "vitest";
import { pairs, readText } from "../logBuilder.ts";
import { bytesOf, decidedText, expectAsMade, readFixture } from "./defectLog.ts";

describe("a log", () => {
  it("with 48 zero bytes in place of a row says so (nul-bytes.csv)", () => {
    const log = readFixture("nul-bytes.csv");
    expect(log.rows.accepted).toBe(23);
    const said = [
      ...log.faults.map(({ what }) => what),
      ...log.decisions.map(({ because }) => because),
      ...log.rows.rejected.map(({ reason }) => reason),
    ];
    expect(said.join("\n")).toMatch(/48 (zero|empty) bytes/);
  });

  it("with zero bytes within a number does not read what is left of it (nul-bytes-in-a-row.csv)", () => {
    const log = readFixture("nul-bytes-in-a-row.csv");
    // Row 12 had 170.0 °C, of which "1" is left.
    expect(log.rows.rejected.map(({ line }) => line)).toEqual([14]);
    expect(pairs(log).map(([seconds]) => seconds)).not.toContain(3600);
    expect(log.faults.filter(({ kind }) => kind === "spike")).toEqual([]);
  });

  it("with comments after ; ! and % has no open thermocouple for that (comment-marks-others.csv)", () => {
    expectAsMade({
      file: "comment-marks-others.csv",
      is: "",
      rejected: [8, 15, 22].map((line) => [line, /a comment/]),
    });
  });

  it.each(["last-line-cut-in-number.csv", "last-line-cut-in-time.csv"])(
    "cut off in its last line says so (%s)",
    (file) => {
      expect(readFixture(file).rows.rejected[0]?.reason).toMatch(/cut off/);
    },
  );

  it("with one row out of order says it of one row (rows-out-of-order.csv)", () => {
    expect(readFixture("rows-out-of-order.csv").faults[0]?.what).toBe(
      "1 row stood out of order and was put in place.",
    );
  });

  it("on a dial of twelve hours may have begun in the other half of the day (clock-12-hours-no-marker.csv)", () => {
    const log = readFixture("clock-12-hours-no-marker.csv");
    expect(decidedText(log, "time format")).toMatch(/or .*23:05/);
  });

  it("of spans below a day is not said to count days (elapsed-iso-durations.csv)", () => {
    const log = readFixture("elapsed-iso-durations.csv");
    expect(pairs(log).at(-1)).toEqual([6900, 307.5]);
    expect(decidedText(log, "time format")).not.toContain("days");
  });

  it.each(["spreadsheet-error.csv", "sentinel-word.csv"])(
    "with words in two cells says when (%s)",
    (file) => {
      const [fault] = readFixture(file).faults;
      expect([fault?.fromSeconds, fault?.toSeconds]).toEqual([3000, 3300]);
    },
  );

  it.each([
    ["its cells change", "units-mixed-in-cells.csv"],
    ["the header repeated in mid-file changes", "unit-changes-in-mid-file.csv"],
  ])("in which the unit of %s is never read in one of them (%s)", (_, file) => {
    const result = readText(bytesOf(file), { name: file });
    if (result.ok) expect(pairs(result.value).at(-1)?.[1]).toBeCloseTo(307.5, 6);
    else expect(result.problems[0]?.code).toMatch(/^log\/unit/);
  });

  it("in tenths of a degree is never read as ten times as hot (tenths-of-a-degree.csv)", () => {
    const file = "tenths-of-a-degree.csv";
    const result = readText(bytesOf(file), { name: file });
    if (result.ok) expect(pairs(result.value).at(-1)).toEqual([6900, 307.5]);
    else expect(result.problems[0]?.code).toMatch(/^log\/unit/);
  });

  it("of a hot kiln that begins with noughts does not begin at 0 °C (noughts-at-start.csv)", () => {
    expectAsMade({
      file: "noughts-at-start.csv",
      is: "",
      from: 900,
      tempsC: [337.5, 587.5],
      faults: [["open", 3, /3 values that no thermocouple gives/]],
    });
  });

  it("with a slow column at room temperature and no names is still in °C (cold-junction-unnamed.csv)", () => {
    const file = "cold-junction-unnamed.csv";
    const result = readText(bytesOf(file), { name: file });
    // 20 °C to 457.5 °C: as kelvins or °F the kiln would begin below freezing.
    expect(result.ok && pairs(result.value, "Ch 1").at(-1)).toEqual([10_500, 457.5]);
  });

  it("with two times beyond all reason is read without them, or refused (times-beyond-reason.csv)", () => {
    const file = "times-beyond-reason.csv";
    const result = readText(bytesOf(file), { name: file });
    if (result.ok) expect(result.value.rows.rejected.map(({ line }) => line)).toEqual([6, 16]);
    else expect(result.problems[0]?.code).toMatch(/^log\//);
  });
});
