import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { problemText, type Result } from "../../../src/core/problem.ts";
import {
  notNought,
  printDifference,
  printDuration,
  printMm,
  printRate,
  printTemperature,
} from "../../../src/core/text/quantities.ts";
import { parseLength } from "../../../src/core/units/quantity.ts";
import { parseDuration, parseRate, parseTemperature } from "../../../src/core/units/temperature.ts";

const where = "a.yaml: here";
const celsius = { unit: "C", where } as const;
const fahrenheit = { unit: "F", where } as const;

function valued<T>(result: Result<T>): T | string {
  return result.ok ? result.value : result.problems.map(problemText).join("\n");
}

describe("parseTemperature", () => {
  it.each([
    ["2165 F", 1185],
    ["212F", 100],
    ["1186 °C", 1186],
    ["1186", 1186],
    ["-20 C", -20],
    ["−20 c", -20],
    ["68 fahrenheit", 20],
    ["2,165 F", 1185],
    ["373.15 K", 100],
    ["1,186", 1186],
    ["1,186.5 C", 1186.5],
    ["20,5 C", 20.5],
    ["0,125", 0.125],
    [573, 573],
  ])("reads %s as %f °C in a Celsius file", (text, tempC) => {
    expect(valued(parseTemperature(text, celsius))).toBeCloseTo(tempC, 9);
  });

  it("reads a bare number in the declared unit", () => {
    expect(valued(parseTemperature(212, fahrenheit))).toBe(100);
    expect(valued(parseTemperature("212", fahrenheit))).toBe(100);
  });

  it.each([
    "",
    "hot",
    "1,18,6 C",
    "1.186,5",
    "12,34,567",
    "12 furlongs",
    "1186 C/h",
    "1e3",
    Number.NaN,
  ])("refuses %s", (text) => {
    expect(valued(parseTemperature(text, celsius))).toContain("(units/not-a-temperature)");
  });

  it("takes a comma before three digits for thousands on a Fahrenheit page, never for a point", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1000, max: 9999 }), (tempF) => {
        const written = `${Math.floor(tempF / 1000)},${String(tempF % 1000).padStart(3, "0")}`;
        expect(valued(parseTemperature(written, fahrenheit))).toBeCloseTo((tempF - 32) / 1.8, 9);
      }),
    );
  });
});

describe("parseRate", () => {
  it.each([
    ["108 F/h", 60],
    ["60 C/h", 60],
    ["60 °C per hour", 60],
    ["2 C/min", 120],
    ["-60 C/hr", -60],
    ["60/h", 60],
    ["60", 60],
    [0.5, 0.5],
  ])("reads %s as %f °C/h in a Celsius file", (text, rate) => {
    expect(valued(parseRate(text, celsius))).toBeCloseTo(rate, 9);
  });

  it("scales a bare number of a Fahrenheit file without an offset", () => {
    expect(valued(parseRate(108, fahrenheit))).toBeCloseTo(60, 9);
  });

  it.each(["60 C", "60 °", "fast", "", "60 F/day"])("refuses %s", (text) => {
    expect(valued(parseRate(text, celsius))).toContain("(units/not-a-rate)");
  });
});

describe("a comma in a length", () => {
  it.each([
    ["2,5 mm", 2.5],
    ["0,125 in", 3.175],
    ["12,5", 12.5],
  ])("stands for the point in %s", (text, mm) => {
    expect(valued(parseLength(text, { where }))).toBeCloseTo(mm, 9);
  });

  it("is asked about where it may be either", () => {
    expect(valued(parseLength("1,250 mm", { where }))).toBe(
      [
        'a.yaml: here: "1,250 mm" is not a length',
        '  expected  "6 mm", "2.5 cm", "1/4 in", or a bare number of millimetres',
        "  try       write 1250 or 1.250: a comma may mean either     (units/not-a-length)",
      ].join("\n"),
    );
  });
});

describe("parseDuration", () => {
  it.each([
    ["45 min", 2700],
    ["1 h 30 min", 5400],
    ["1h30", 5400],
    ["1:30", 5400],
    ["0:00:30", 30],
    ["1.5 h", 5400],
    ["90 s", 90],
    ["1 min 30 s", 90],
    ["2 hours", 7200],
    ["45", 2700],
    [45, 2700],
    [0, 0],
  ])("reads %s as %f s", (text, seconds) => {
    expect(valued(parseDuration(text, { where }))).toBe(seconds);
  });

  it("reads a bare number in the unit asked for", () => {
    expect(valued(parseDuration("2", { where, bareUnit: "h" }))).toBe(7200);
  });

  it.each(["", "-5 min", -5, "1:75", "a while", "12 34 s", "5 days", Number.POSITIVE_INFINITY])(
    "refuses %s",
    (text) => {
      expect(valued(parseDuration(text, { where }))).toContain("(units/not-a-duration)");
    },
  );
});

describe("parseLength", () => {
  it.each([
    ["6 mm", 6],
    ["0.6 cm", 6],
    ["1/4 in", 6.35],
    ["1 1/2 in", 38.1],
    ['1/4"', 6.35],
    ["12 inches", 304.8],
    ["6", 6],
    [6, 6],
  ])("reads %s as %f mm", (text, lengthMm) => {
    expect(valued(parseLength(text, { where }))).toBeCloseTo(lengthMm, 9);
  });

  it.each(["0 mm", -3, "1/0 in", "thin", "", "6 miles"])("refuses %s", (text) => {
    expect(valued(parseLength(text, { where }))).toContain("(units/not-a-length)");
  });
});

describe("quantities", () => {
  it("never throw, for any text", () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        for (const result of [
          parseTemperature(text, celsius),
          parseRate(text, celsius),
          parseDuration(text, { where }),
          parseLength(text, { where }),
        ])
          expect(result.ok ? Number.isFinite(result.value) : result.problems.length).toBeTruthy();
      }),
    );
  });

  it("mean the same in °C and °F, for any temperature", () => {
    fc.assert(
      fc.property(fc.integer({ min: -20, max: 2500 }), (tempF) => {
        expect(parseTemperature(`${tempF} F`, celsius)).toEqual(
          parseTemperature(tempF, fahrenheit),
        );
      }),
    );
  });
});

describe("what is printed", () => {
  it("has one figure for one length, and never a bare 0 for how far it may be off", () => {
    expect([6, 9.525, 0.535, 304.8, 12.04].map(printMm)).toEqual([
      "6 mm",
      "9.5 mm",
      "0.54 mm",
      "305 mm",
      "12 mm",
    ]);
    expect(notNought(printRate(0.2, "C"))).toBe("under 1 °C/h");
    expect(notNought(printDuration(0))).toBe("under 1 s");
    expect(notNought(printRate(60, "F"))).toBe("108 °F/h");
    expect(printTemperature(-0.2, "C")).toBe("0 °C");
    expect(printDifference(-0.2, "F")).toBe("0 °F");
  });
});
