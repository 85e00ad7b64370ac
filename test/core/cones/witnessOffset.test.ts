import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { heatworkOf } from "../../../src/core/cones/heatwork.ts";
import { type Witness, witnessOffset } from "../../../src/core/cones/witnessOffset.ts";
import { firing, hold, ramp } from "./rampsAndHolds.ts";

const series = "self-supporting";
const curve = firing(ramp(150, 1080), ramp(60, 1200), hold(0.25), ramp(150, 600));

function witness(cone: string, bend: Witness["bend"]): Witness {
  return { cone, said: JSON.stringify(bend), bend };
}

function heatworkWith(offsetK: number, cone: string): number {
  return heatworkOf(curve, { offsetK }).cones.find((each) => each.cone === cone)?.heatwork ?? 0;
}

describe("witnessOffset", () => {
  it("makes a half-bent cone half bent, for any firing error", () => {
    fc.assert(
      fc.property(fc.double({ min: -60, max: 60, noNaN: true }), (errorK) => {
        const shifted = { ...curve, tempsC: curve.tempsC.map((tempC) => tempC - errorK) };
        const here = witness("6", { kind: "clock", oClock: 3 });
        const one = witnessOffset({ curve, series, witnesses: [here] });
        const other = witnessOffset({ curve: shifted, series, witnesses: [here] });
        expect((other.witnesses[0]?.impliedK ?? 0) - (one.witnesses[0]?.impliedK ?? 0)).toBeCloseTo(
          errorK,
          2,
        );
      }),
      { numRuns: 30 },
    );
  });

  it("finds the offset at which the model gives 3 o'clock its heatwork of 0.8", () => {
    const { witnesses } = witnessOffset({
      curve,
      series,
      witnesses: [witness("6", { kind: "clock", oClock: 3 })],
    });
    expect(heatworkWith(witnesses[0]?.impliedK ?? 0, "6")).toBeCloseTo(0.8, 4);
  });

  it("reads 45 angular degrees as 3 o'clock, and 90 as level with the base", () => {
    const offset = (bend: Witness["bend"]) =>
      witnessOffset({ curve, series, witnesses: [witness("6", bend)] }).offsetK;
    expect(offset({ kind: "degrees", degrees: 45 })).toBe(offset({ kind: "clock", oClock: 3 }));
    expect(offset({ kind: "degrees", degrees: 90 })).toBe(offset({ kind: "clock", oClock: 6 }));
    expect(offset({ kind: "upright" })).toBe(offset({ kind: "clock", oClock: 12 }));
  });

  it("is bounded below by a flat cone and above by an upright one", () => {
    const result = witnessOffset({
      curve,
      series,
      witnesses: [witness("5", { kind: "down" }), witness("8", { kind: "upright" })],
    });
    expect(heatworkWith(result.lowK ?? 0, "5")).toBeCloseTo(1, 4);
    expect(heatworkWith(result.highK ?? 0, "8")).toBeCloseTo(0.5, 4);
    expect(result.offsetK).toBeCloseTo(0.5 * ((result.lowK ?? 0) + (result.highK ?? 0)), 9);
    expect(result.witnesses.map((each) => each.impliedK)).toEqual([null, null]);
  });

  it("leaves the readings alone when one-sided bounds allow it", () => {
    const down = witnessOffset({ curve, series, witnesses: [witness("2", { kind: "down" })] });
    expect(down).toMatchObject({ offsetK: 0, highK: null, agree: true });
    expect(witnessOffset({ curve, series, witnesses: [] })).toMatchObject({
      offsetK: 0,
      lowK: null,
      highK: null,
    });
  });

  it("moves the readings up when a cone is flat that the model leaves standing", () => {
    const { offsetK, lowK } = witnessOffset({
      curve,
      series,
      witnesses: [witness("7", { kind: "down" })],
    });
    expect(offsetK).toBeGreaterThan(0);
    expect(offsetK).toBe(lowK);
  });

  it("says when the cones contradict each other, and spans the contradiction", () => {
    const result = witnessOffset({
      curve,
      series,
      witnesses: [witness("7", { kind: "down" }), witness("5", { kind: "upright" })],
    });
    expect(result.agree).toBe(false);
    expect(result.lowK ?? 0).toBeLessThan(result.highK ?? 0);
  });

  it("implies nothing from a cone that no thermocouple error explains", () => {
    const { witnesses } = witnessOffset({
      curve: firing(ramp(100, 800)),
      series,
      witnesses: [witness("6", { kind: "clock", oClock: 4 })],
    });
    expect(witnesses[0]?.impliedK).toBeNull();
  });
});
