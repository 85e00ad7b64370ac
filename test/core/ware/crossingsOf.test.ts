import { describe, expect, it } from "vitest";
import { makeCurve } from "../../../src/core/curve/Curve.ts";
import { crossingsOf } from "../../../src/core/ware/inversions.ts";

/** 20 → 700 → 20 °C, each leg at its own rate, a point a minute. */
function upAndDown(upCPerHour: number, downCPerHour: number) {
  const times: number[] = [0];
  const temps: number[] = [20];
  const go = (toC: number, rateCPerHour: number) => {
    const fromC = temps.at(-1) as number;
    const from = times.at(-1) as number;
    const minutes = Math.ceil((Math.abs(toC - fromC) / rateCPerHour) * 60);
    for (let minute = 1; minute <= minutes; minute++) {
      times.push(from + minute * 60);
      temps.push(fromC + ((toC - fromC) * minute) / minutes);
    }
  };
  go(700, upCPerHour);
  go(20, downCPerHour);
  return makeCurve(times, temps);
}

describe("crossingsOf", () => {
  it("lists both inversions both ways, in the order in which they are met", () => {
    const met = crossingsOf(upAndDown(100, 50)).map(
      ({ band, direction }) => `${direction} ${band}`,
    );
    expect(met).toEqual([
      "heating cristobalite inversion",
      "heating quartz inversion",
      "cooling quartz inversion",
      "cooling cristobalite inversion",
    ]);
  });

  it("lists only the directions that were asked for", () => {
    const met = crossingsOf(upAndDown(100, 50), { directions: ["cooling"] });
    expect(met.map(({ direction }) => direction)).toEqual(["cooling", "cooling"]);
  });

  it("gives a passage at 50 °C/h two hours for 620 to 520 °C, not judged yet", () => {
    const [quartz] = crossingsOf(upAndDown(100, 50), { directions: ["cooling"] });
    expect(quartz?.measured).toBe("whole");
    expect(quartz?.seconds).toBeCloseTo(7200, -1);
    expect(quartz?.meanCPerHour).toBeCloseTo(-50, 0);
    expect(quartz?.limitCPerHour).toBeNull();
    expect(quartz?.severity).toBeNull();
  });

  it("lists an inversion that was never reached, unmeasured", () => {
    const cold = makeCurve([0, 3600], [20, 100]);
    for (const crossing of crossingsOf(cold)) expect(crossing.measured).toBe("no");
  });
});
