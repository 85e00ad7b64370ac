import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { crackPitch, lineIntercept } from "../../../src/core/crackle/lineIntercept.ts";
import { seededNormal, tQuantile } from "../../../src/core/math/distributions.ts";

const anyLines = fc.array(
  fc.record({ lengthMm: fc.double({ min: 1, max: 500, noNaN: true }), crossings: fc.nat(60) }),
  { minLength: 2, maxLength: 12 },
);

describe("lineIntercept", () => {
  it("is all the length over all the crossings, for any lines", () => {
    fc.assert(
      fc.property(anyLines, (lines) => {
        const { interceptMm, lengthMm, crossings } = lineIntercept(lines);
        expect(interceptMm).toBe(crossings === 0 ? null : lengthMm / crossings);
      }),
    );
  });

  it("never averages the lines' own intercepts to less than the pooled one, for equal lengths", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 2 }), (counts) => {
        const { interceptMm, ofLines } = lineIntercept(
          counts.map((crossings) => ({ lengthMm: 100, crossings })),
        );
        expect(ofLines?.meanMm).toBeGreaterThanOrEqual((interceptMm ?? 0) * (1 - 1e-12));
      }),
    );
  });

  it("holds the estimate inside its interval and scales with the unit of length, for any lines", () => {
    fc.assert(
      fc.property(anyLines, (lines) => {
        const one = lineIntercept(lines);
        const ten = lineIntercept(
          lines.map(({ lengthMm, crossings }) => ({ lengthMm: 10 * lengthMm, crossings })),
        );
        if (one.interceptMm === null || one.intervalMm === null || ten.intervalMm === null) return;
        expect(one.intervalMm.low).toBeLessThanOrEqual(one.interceptMm);
        expect(one.intervalMm.high).toBeGreaterThanOrEqual(one.interceptMm);
        expect(Math.abs(ten.intervalMm.high / one.intervalMm.high / 10 - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  it("covers the truth 95 times in 100 (± 2.5) when counts scatter as they do in random nets", () => {
    const normal = seededNormal(5);
    let held = 0;
    for (let run = 0; run < 1000; run++) {
      const lines = Array.from({ length: 5 }, () => ({
        lengthMm: 100,
        crossings: Math.max(0, Math.round(25 + 0.58 * Math.sqrt(25) * normal())),
      }));
      const { low, high } = lineIntercept(lines).intervalMm ?? { low: 0, high: 0 };
      if (low <= 4 && 4 <= high) held++;
    }
    expect(Math.abs(held / 1000 - 0.95)).toBeLessThan(0.025);
  });

  it("says how wide the spacing must be at least when nothing was crossed", () => {
    const result = lineIntercept([{ lengthMm: 300, crossings: 0 }]);
    expect(result).toMatchObject({ interceptMm: null, intervalMm: null, ofLines: null });
    expect(Math.exp(-300 / (result.atLeastMm ?? 0))).toBeCloseTo(0.05, 12);
  });

  it("gives no interval from one line", () => {
    expect(lineIntercept([{ lengthMm: 100, crossings: 20 }]).intervalMm).toBeNull();
  });

  it.each([[[]], [[{ lengthMm: 0, crossings: 1 }]], [[{ lengthMm: 1, crossings: -1 }]]])(
    "throws for %j",
    (lines) => {
      expect(() => lineIntercept(lines)).toThrow(RangeError);
    },
  );
});

describe("tQuantile", () => {
  it("is tan(π/2 · probability) with one degree of freedom, as Cauchy's law has it", () => {
    for (const within of [0.1, 0.5, 0.9, 0.99])
      expect(tQuantile(within, 1) / Math.tan((Math.PI / 2) * within)).toBeCloseTo(1, 8);
  });

  it("throws outside its range", () => {
    expect(() => tQuantile(1, 4)).toThrow(RangeError);
    expect(() => tQuantile(0.95, 0)).toThrow(RangeError);
  });
});

describe("crackPitch", () => {
  it("undoes π d/4 for a net and π p/2 for parallel cracks", () => {
    expect(crackPitch((Math.PI * 8) / 4, "net")).toBeCloseTo(8, 12);
    expect(crackPitch((Math.PI * 8) / 2, "parallel")).toBeCloseTo(8, 12);
  });
});
