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
    expect(result.witnesses.map((each) => each.impliedK)).toEqual([null, null]);
  });

  it("moves nothing by a bracket that holds the usual offset, and only narrows", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("03", "2", "3", "4", "5", "6"),
        fc.constantFrom("8", "9", "10", "11"),
        fc.double({ min: -10, max: 25, noNaN: true }),
        (below, above, usualK) => {
          const usual = { offsetK: usualK, sigmaK: 12 };
          const witnesses = [witness(below, { kind: "down" }), witness(above, { kind: "upright" })];
          const result = witnessOffset({ curve, series, witnesses, usual });
          const [lowK, highK] = [result.lowK as number, result.highK as number];
          expect(result.sigmaK).toBeLessThanOrEqual(12);
          if (usualK > lowK && usualK < highK) expect(result.offsetK).toBe(usualK);
          else expect([lowK, highK]).toContainEqual(expect.closeTo(result.offsetK, 0));
        },
      ),
      { numRuns: 60 },
    );
  });

  it("weighs a cone at 5 o'clock as ± 4 K against the usual 8 ± 12 K", () => {
    const { offsetK, sigmaK, witnesses } = witnessOffset({
      curve: firing(ramp(60, 1215), ramp(500, 600)),
      series,
      witnesses: [witness("6", { kind: "clock", oClock: 5 })],
      usual: { offsetK: 8, sigmaK: 12 },
    });
    const aloneK = witnesses[0]?.impliedK as number;
    const precision = 1 / 16 + 1 / 144;
    expect(offsetK).toBeCloseTo((aloneK / 16 + 8 / 144) / precision, 0);
    expect(sigmaK).toBeCloseTo(precision ** -0.5, 0);
  });

  it("is never wider than without witness cones, whatever they show", () => {
    const bend = fc.oneof(
      fc.constant<Witness["bend"]>({ kind: "down" }),
      fc.constant<Witness["bend"]>({ kind: "upright" }),
      fc
        .double({ min: 0, max: 6, noNaN: true })
        .map((oClock) => ({ kind: "clock", oClock }) as const),
      fc
        .double({ min: 0, max: 120, noNaN: true })
        .map((degrees) => ({ kind: "degrees", degrees }) as const),
    );
    const one = fc.tuple(fc.constantFrom("3", "4", "5", "6", "7", "8", "9"), bend);
    fc.assert(
      fc.property(fc.array(one, { maxLength: 4 }), (seen) => {
        const witnesses = seen.map(([cone, how]) => witness(cone, how));
        const { sigmaK, offsetK } = witnessOffset({ curve, series, witnesses });
        expect(sigmaK).toBeLessThanOrEqual(12);
        expect(sigmaK).toBeGreaterThanOrEqual(3);
        expect(Math.abs(offsetK)).toBeLessThanOrEqual(200);
      }),
      { numRuns: 60 },
    );
  });

  it("is the usual offset where no cone stood, or a bound allows it", () => {
    const down = witnessOffset({ curve, series, witnesses: [witness("2", { kind: "down" })] });
    expect(down).toMatchObject({ offsetK: 8, highK: null, agree: true });
    expect(witnessOffset({ curve, series, witnesses: [] })).toMatchObject({
      offsetK: 8,
      sigmaK: 12,
      lowK: null,
      highK: null,
    });
  });

  it("moves the readings up when a cone is flat that the model leaves standing", () => {
    const { offsetK, lowK, sigmaK } = witnessOffset({
      curve,
      series,
      witnesses: [witness("8", { kind: "down" })],
    });
    expect(offsetK).toBeGreaterThan(20);
    expect(offsetK).toBeCloseTo(lowK ?? 0, 0);
    expect(sigmaK).toBeLessThan(12);
  });

  it("goes by the other cones when one contradicts them, and names it", () => {
    const others = [
      witness("5", { kind: "down" }),
      witness("6", { kind: "clock", oClock: 3 }),
      witness("7", { kind: "upright" }),
    ];
    const without = witnessOffset({ curve, series, witnesses: others });
    const odd = witness("10", { kind: "down" });
    const result = witnessOffset({ curve, series, witnesses: [...others, odd] });
    expect(without.agree).toBe(true);
    expect(result.agree).toBe(false);
    expect(result.witnesses.map(({ leftOut }) => leftOut)).toEqual([false, false, false, true]);
    expect(result.offsetK).toBeCloseTo(without.offsetK, 1);
    expect(result.lowK ?? 0).toBeLessThan(result.highK ?? 0);
  });

  it("believes cones that agree on a thermocouple far out, and not the usual", () => {
    const shifted = { ...curve, tempsC: curve.tempsC.map((tempC) => tempC - 70) };
    const witnesses = [witness("6", { kind: "clock", oClock: 5 }), witness("5", { kind: "down" })];
    const right = witnessOffset({ curve, series, witnesses });
    const far = witnessOffset({ curve: shifted, series, witnesses });
    expect(far.agree).toBe(true);
    expect(far.offsetK - (right.witnesses[0]?.impliedK ?? 0)).toBeGreaterThan(60);
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
