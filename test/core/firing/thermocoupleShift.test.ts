import { describe, expect, it } from "vitest";
import { offsetBy } from "../../../src/core/curve/Curve.ts";
import { thermocoupleShifts } from "../../../src/core/review/compareFirings.ts";
import { corners, sampled } from "../../support/curves.ts";

const kiln = sampled(corners([0, 20], [8, 1220], [20, 100]), 60);
const quick = sampled(corners([0, 20], [4, 1220], [12, 100]), 60);
const zones = (top: number, middle: number, bottom: number, curve = kiln) => [
  { name: "top", curve: offsetBy(curve, top) },
  { name: "middle", curve: offsetBy(curve, middle) },
  { name: "bottom", curve: offsetBy(curve, bottom) },
];

describe("thermocouples of two firings", () => {
  it("a zone that reads 12 °C less than before stands 12 °C lower, each other 6 °C higher", () => {
    const shifts = thermocoupleShifts(zones(5, 0, -3), zones(5, 0, -15));
    expect(shifts.map(({ zone }) => zone)).toEqual(["top", "middle", "bottom"]);
    for (const [i, shiftK] of [6, 6, -12].entries())
      expect(shifts[i]?.shiftK).toBeCloseTo(shiftK, 6);
  });

  it("a faster firing with the same differences is no change", () => {
    for (const { shiftK } of thermocoupleShifts(zones(5, 0, -3), zones(5, 0, -3, quick)))
      expect(shiftK).toBeCloseTo(0, 6);
  });

  it("all zones warmer alike is no change: only differences can be seen", () => {
    for (const { shiftK } of thermocoupleShifts(zones(0, 0, 0), zones(20, 20, 20)))
      expect(shiftK).toBeCloseTo(0, 6);
  });

  it("of two zones only the first is told, and the levels that both firings reached", () => {
    const low = sampled(corners([0, 20], [8, 950], [20, 100]), 60);
    const pair = (apart: number, curve: typeof kiln) => zones(apart, 0, 0, curve).slice(0, 2);
    expect(thermocoupleShifts(pair(0, kiln), pair(10, low))).toEqual([
      { zone: "top", shiftK: expect.closeTo(10, 6), fromC: 400, toC: 900 },
    ]);
  });

  it("one zone, or zones of other names, or too little heat give nothing", () => {
    const cool = sampled(corners([0, 20], [8, 550], [20, 100]), 60);
    expect(thermocoupleShifts(zones(0, 0, 0).slice(0, 1), zones(0, 0, 0))).toEqual([]);
    expect(thermocoupleShifts(zones(0, 0, 0), zones(0, 0, 0, cool))).toEqual([]);
  });
});
