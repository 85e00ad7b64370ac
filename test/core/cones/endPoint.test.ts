import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { endPointC } from "../../../src/core/cones/endPoint.ts";
import { heatworkOf } from "../../../src/core/cones/heatwork.ts";
import { problemText } from "../../../src/core/problem.ts";
import { firing, ramp } from "./rampsAndHolds.ts";

function value(query: Parameters<typeof endPointC>[0]) {
  const result = endPointC(query);
  if (!result.ok) throw new Error(result.problems.map(problemText).join("\n"));
  return result.value;
}

const series = "self-supporting";

describe("endPointC", () => {
  it("returns the printed cell where the rate is a column", () => {
    expect(value({ series, cone: "6", rateCPerHour: 60 })).toEqual({
      tempC: 1222,
      sigmaK: 2,
      basis: "printed",
      confidence: "two-copies",
      extrapolated: false,
    });
  });

  it("is where heatworkOf finds the cone just down, for any rate and cone", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("018", "010", "04", "1", "5.5", "6", "10"),
        fc.double({ min: 5, max: 400, noNaN: true }),
        (cone, rateCPerHour) => {
          const { tempC } = value({ series, cone, rateCPerHour });
          const state = heatworkOf(firing(ramp(rateCPerHour, tempC))).cones.find(
            (each) => each.cone === cone,
          );
          expect(Math.abs(state?.marginK ?? 99)).toBeLessThan(1e-5);
        },
      ),
      { numRuns: 60 },
    );
  });

  it("rises with the rate, for any two rates", () => {
    const rate = fc.double({ min: 1, max: 1000, noNaN: true });
    fc.assert(
      fc.property(rate, rate, (a, b) => {
        const [slow, fast] = [Math.min(a, b), Math.max(a, b)];
        if (fast < slow * 1.1) return;
        const low = value({ series, cone: "5", rateCPerHour: slow }).tempC;
        expect(value({ series, cone: "5", rateCPerHour: fast }).tempC).toBeGreaterThan(low);
      }),
    );
  });

  it("marks rates that no chart reaches", () => {
    const far = (rateCPerHour: number) => value({ series, cone: "6", rateCPerHour }).extrapolated;
    expect([4, 8, 200, 300, 500].map(far)).toEqual([true, false, false, false, true]);
  });

  it.each([0, 0.5, -60, 1001, Number.NaN])("refuses a rate of %d °C/h", (rateCPerHour) => {
    const result = endPointC({ series, cone: "6", rateCPerHour });
    expect(result.ok ? "" : result.problems[0]?.code).toBe("cones/rate-out-of-range");
  });

  it("answers from the table alone where there is no model", () => {
    expect(value({ series: "pce", cone: "20", rateCPerHour: 150 }).basis).toBe("printed");
    const result = endPointC({ series: "pce", cone: "32.5", rateCPerHour: 60 });
    expect(result.ok ? "" : result.problems.map(problemText).join("\n")).toBe(
      [
        "rate: the pce table has no end point of cone 32.5 at 60 °C/h",
        "  expected  a printed value; for cone 32.5 the table has 1724 °C at 150 °C/h",
        "  try       use the printed value, or choose a series with a model, such as self-supporting     (cones/rate-not-printed)",
      ].join("\n"),
    );
  });

  it("says that a Seger cone was printed without a rate", () => {
    const result = endPointC({ series: "seger-european", cone: "6a", rateCPerHour: 60 });
    expect(result.ok ? "" : result.problems[0]?.expected).toContain("1240 °C without a rate");
  });

  it("is less sure of small cones and of cones known at two rates", () => {
    expect(value({ series: "small", cone: "6", rateCPerHour: 60 }).sigmaK).toBe(10);
    expect(value({ series, cone: "020", rateCPerHour: 100 }).sigmaK).toBe(5);
    expect(value({ series, cone: "020", rateCPerHour: 15 }).sigmaK).toBeCloseTo(9.7, 0);
  });
});
