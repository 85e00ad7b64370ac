import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cumulateBudget, levelsOf } from "../../../src/core/cones/budget.ts";
import { coneModel } from "../../../src/core/cones/coneModel.ts";
import { makeCurve } from "../../../src/core/curve/Curve.ts";

/** A firing to 1230 °C with coarse readings, one a minute. */
const temps = Float64Array.from({ length: 8000 }, (_, i) => {
  const tempC = i < 4000 ? 20 + 0.3025 * i : 1230 - 0.15 * (i - 4000);
  return 2 * Math.round(tempC / 2) + (i % 2) / 10;
});

describe("the levels of readings", () => {
  it("give back every reading", () => {
    const levels = levelsOf(temps);
    if (levels === null) throw new Error("no levels");
    expect(levels.tempsC.length).toBe(new Set(temps).size);
    expect(Float64Array.from(levels.levelOf, (level) => levels.tempsC[level] as number)).toEqual(
      temps,
    );
  });

  it("are not looked for where every reading is another", () => {
    expect(levelsOf(Float64Array.from({ length: 4000 }, (_, i) => i / 7))).toBeNull();
  });

  it("change no budget of a cone by a bit, with any gap and offset", () => {
    const times = Float64Array.from(temps, (_, i) => 60 * i);
    fc.assert(
      fc.property(
        fc.constantFrom("022", "010", "04", "5", "6", "10"),
        fc.integer({ min: -60, max: 60 }),
        fc.nat(temps.length - 2),
        (cone, offsetK, at) => {
          const gap = { fromSeconds: times[at] as number, toSeconds: times[at + 1] as number };
          const heat = {
            curve: makeCurve(times, temps, [gap]),
            offsetK,
            peakC: Math.max(...temps),
          };
          const model = coneModel("self-supporting", cone);
          const [plain, known] = [new Float64Array(temps.length), new Float64Array(temps.length)];
          cumulateBudget(model, heat, plain);
          cumulateBudget(model, { ...heat, levels: levelsOf(temps) }, known);
          expect(known).toEqual(plain);
          expect(plain.at(-1)).toBeGreaterThan(0);
        },
      ),
      { numRuns: 60 },
    );
  });
});
