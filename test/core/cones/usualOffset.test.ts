import { describe, expect, it } from "vitest";
import { kilnHeatworkOf, offsetFor, usualOffset } from "../../../src/core/cones/usualOffset.ts";
import { firing, ramp } from "./rampsAndHolds.ts";

const series = "self-supporting";

describe("usualOffset", () => {
  it("is nothing for cone 04 and 8 °C from cone 1 up, at every rate of the chart", () => {
    // Cone 04: 1046 to 1077 °C; cone 1: 1109 to 1154 °C, 8 °C less by the thermocouple.
    for (const peakC of [900, 1046, 1063, 1075])
      expect(usualOffset(peakC)).toEqual({ offsetK: 0, sigmaK: 14 });
    expect(usualOffset(1101).offsetK).toBeGreaterThan(7.5);
    for (const peakC of [1129, 1146, 1222, 1300])
      expect(usualOffset(peakC)).toEqual({ offsetK: 8, sigmaK: 12 });
  });

  it("goes from one to the other without a jump, and hotter never means a lower cone", () => {
    let before = usualOffset(1060).offsetK;
    for (let peakC = 1060; peakC <= 1120; peakC += 0.5) {
      const { offsetK } = usualOffset(peakC);
      expect(offsetK).toBeGreaterThanOrEqual(before);
      expect(offsetK - before).toBeLessThan(0.25);
      before = offsetK;
    }
  });
});

describe("kilnHeatworkOf", () => {
  it("adds it once, and says that it is the usual one", () => {
    const { cones, offsetIs, offsetK } = kilnHeatworkOf(firing(ramp(60, 1214)), { series });
    expect({ offsetIs, offsetK }).toEqual({ offsetIs: "usual", offsetK: 8 });
    // Cone 6 falls at 1222 °C at 60 °C/h by the chart.
    expect(Math.abs(cones.find(({ cone }) => cone === "6")?.marginK ?? 99)).toBeLessThan(0.5);
  });

  it("takes an offset that is known instead, with less doubt", () => {
    const curve = firing(ramp(60, 1214));
    const known = kilnHeatworkOf(curve, { series, offsetK: -3 });
    expect(known).toMatchObject({ offsetIs: "known", offsetK: -3, offsetSigmaK: 6 });
    expect(known.sigmaCones ?? 9).toBeLessThan(kilnHeatworkOf(curve, { series }).sigmaCones ?? 0);
    expect(offsetFor(curve, { offsetK: 0 }).offsetK).toBe(0);
  });
});
