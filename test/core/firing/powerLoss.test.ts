import { describe, expect, it } from "vitest";
import { powerLosses } from "../../../src/core/firing/powerLoss.ts";
import { corners, sampled } from "../../support/curves.ts";

const LOST = sampled(corners([0, 20], [5, 770], [6, 600], [8, 900], [10, 1190]), 60);

describe("a loss of power", () => {
  it("runs from the highest so far until it is back there", () => {
    const [loss, ...others] = powerLosses(LOST, 36_000, null);
    expect(others).toEqual([]);
    expect(loss?.fromC).toBeCloseTo(770, 0);
    expect(loss?.lowestC).toBeCloseTo(600, 0);
    expect(loss?.fromSeconds).toBe(5 * 3600);
    // 600 °C and then 150 °C/h: back at 770 °C after 1 h 08 min more.
    expect(Math.abs((loss?.toSeconds ?? 0) - (6 + 170 / 150) * 3600)).toBeLessThanOrEqual(60);
  });

  it("is not what the plan asked for", () => {
    expect(powerLosses(LOST, 36_000, LOST)).toEqual([]);
  });

  it("is none after the peak", () => {
    const curve = sampled(corners([0, 20], [5, 1190], [6, 1000], [7, 1100], [9, 500]), 60);
    expect(powerLosses(curve, 5 * 3600, null)).toEqual([]);
  });

  it("is none for a short dip, or a shallow one", () => {
    const short = sampled(corners([0, 20], [5, 770], [5.05, 700], [5.1, 770], [8, 1190]), 60);
    const shallow = sampled(corners([0, 20], [5, 770], [5.5, 758], [8, 1190]), 60);
    expect(powerLosses(short, 8 * 3600, null)).toEqual([]);
    expect(powerLosses(shallow, 8 * 3600, null)).toEqual([]);
  });
});
