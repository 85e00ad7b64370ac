import { describe, expect, it } from "vitest";
import { printSetRate } from "../../../src/core/text/quantities.ts";

describe("printSetRate", () => {
  // 33.3 °C/h is 59.94 °F/h, and 72.5 °F/h is 40.278 °C/h.
  it.each([
    [33.3, "C", "C", "33.3 °C/h"],
    [33.3, "F", "C", "60 °F/h"],
    [72.5 / 1.8, "F", "F", "72.5 °F/h"],
    [72.5 / 1.8, "C", "F", "40 °C/h"],
    [-60, "C", "C", "60 °C/h"],
    [60, "F", "F", "108 °F/h"],
  ] as const)("prints %d °C/h in °%s, set in °%s, as %s", (rate, unit, own, text) => {
    expect(printSetRate(rate, { unit, own })).toBe(text);
  });
});
