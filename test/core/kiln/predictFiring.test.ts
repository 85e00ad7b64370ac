import { describe, expect, it } from "vitest";
import { peakOf } from "../../../src/core/curve/Curve.ts";
import { crossingTimes } from "../../../src/core/curve/edgeTimes.ts";
import type { KilnFiring, LearnedKiln } from "../../../src/core/kiln/LearnedKiln.ts";
import { learnKiln } from "../../../src/core/kiln/learnKiln.ts";
import { outputMean } from "../../../src/core/kiln/naturalFall.ts";
import { predictFiring } from "../../../src/core/kiln/predictFiring.ts";
import { stateAfter, twoNodeRates } from "../../../src/core/kiln/twoNode.ts";
import { demoFiring } from "../../support/kilns.ts";

function learned(firing: KilnFiring): LearnedKiln {
  const result = learnKiln([firing], { powerWatt: 10_500, tariffPerKWh: 0.3 });
  if (!result.ok) throw new RangeError(result.problems.map(({ what }) => what).join("; "));
  return result.value;
}

const KILN = learned(demoFiring("2026-02-07-a"));
const TIRED = learned(demoFiring("2026-06-06-a"));

/** A glaze firing that the kiln above was not learned from, and its programme. */
const HELD_OUT = demoFiring("2026-02-21-b");
const PROGRAMME = [
  { toC: 110, rateCPerHour: 66.7, holdSeconds: 1200 },
  { toC: 1071.1, rateCPerHour: 150, holdSeconds: 0 },
  { toC: 1175.6, rateCPerHour: 60, holdSeconds: 900 },
];
const fellTo = (tempC: number) =>
  crossingTimes(HELD_OUT.curve, tempC).findLast(({ direction }) => direction === "cooling")
    ?.seconds as number;

describe("a firing that was held out", () => {
  const predicted = predictFiring(KILN, { segments: PROGRAMME, startC: 16, roomC: 16 });

  it("has its peak within 18 °C when the logged output drives the learned kiln", () => {
    const rates = twoNodeRates(KILN.twoNode as NonNullable<LearnedKiln["twoNode"]>);
    let state = { hotC: 16, brickC: 16 };
    let peakC = 0;
    for (let seconds = 0; seconds < peakOf(HELD_OUT.curve).seconds + 3600; seconds += 60) {
      const output =
        outputMean(HELD_OUT.output as NonNullable<KilnFiring["output"]>, seconds, seconds + 60) ??
        0;
      state = stateAfter(rates, state, { output, roomC: 16 }, 60);
      peakC = Math.max(peakC, state.hotC);
    }
    expect(Math.abs(peakC - peakOf(HELD_OUT.curve).tempC)).toBeLessThan(18);
  });

  it.each([200, 100])("has fallen to %i °C within a 25th of the time", (tempC) => {
    const seconds = predicted.cooledTo.find((each) => each.tempC === tempC)?.seconds as number;
    expect(Math.abs(seconds / fellTo(tempC) - 1)).toBeLessThan(0.04);
  });

  it("ends its programme within a 25th of the time of the logged peak", () => {
    const { seconds } = peakOf(HELD_OUT.curve);
    expect(Math.abs((predicted.endSeconds as number) / seconds - 1)).toBeLessThan(0.04);
  });
});

describe("predicting a programme", () => {
  it("says where a kiln with worn elements falls behind", () => {
    const { segments } = predictFiring(TIRED, {
      segments: [{ toC: 1000, rateCPerHour: 190, holdSeconds: 0 }],
    });
    expect(segments[0]?.behindSeconds).toBeGreaterThan(1800);
    expect(segments[0]?.behindFromC).toBeLessThan(900);
  });

  it("says where a kiln with worn elements gets no further", () => {
    const { stalled, endSeconds } = predictFiring(TIRED, {
      segments: [...PROGRAMME, { toC: 1260, rateCPerHour: 60, holdSeconds: 0 }],
    });
    expect(endSeconds).toBeNull();
    expect(stalled?.segment).toBe(3);
    expect(stalled?.tempC).toBeGreaterThan(1100);
  });

  it("follows what the kiln can do to the minute", () => {
    const { segments } = predictFiring(KILN, {
      startC: 20,
      segments: [{ toC: 620, rateCPerHour: 100, holdSeconds: 1800 }],
    });
    expect(segments[0]).toMatchObject({ behindSeconds: 0, behindFromC: null });
    expect(Math.abs((segments[0]?.rampEndSeconds as number) - 6 * 3600)).toBeLessThan(60);
    expect((segments[0]?.endSeconds as number) - (segments[0]?.rampEndSeconds as number)).toBe(
      1800,
    );
  });

  it("cools no faster than the kiln falls by itself", () => {
    const { segments } = predictFiring(KILN, {
      segments: [
        { toC: 1000, rateCPerHour: 150, holdSeconds: 0 },
        { toC: 300, rateCPerHour: -500, holdSeconds: 0 },
      ],
    });
    expect(Math.abs(segments[1]?.meanCPerHour as number)).toBeLessThan(150);
    expect(segments[1]?.behindSeconds).toBeGreaterThan(3600);
  });

  it("costs what the energy costs", () => {
    const { energyKWh, cost } = predictFiring(KILN, { segments: PROGRAMME });
    expect(energyKWh).toBeGreaterThan(40);
    expect(cost).toBeCloseTo(0.3 * (energyKWh as number), 9);
  });

  it("refuses a ramp that points away from its goal", () => {
    expect(() =>
      predictFiring(KILN, { segments: [{ toC: 500, rateCPerHour: -50, holdSeconds: 0 }] }),
    ).toThrow(RangeError);
  });
});
