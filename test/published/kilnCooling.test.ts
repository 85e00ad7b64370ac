import { describe, expect, it } from "vitest";
import { radiatedWattPerM2, STEFAN_BOLTZMANN } from "../../src/core/kiln/LearnedKiln.ts";
import { secondsToFall } from "../../src/core/kiln/learnKiln.ts";
import { stateAfter, twoNodeRates } from "../../src/core/kiln/twoNode.ts";
import { kelvinFromCelsius } from "../../src/core/units/temperature.ts";

/**
 * Time for a body to cool by radiation alone [s], as printed: Bejan & Kraus, Heat Transfer Handbook,
 * equation 3.283, solved for the time.
 */
function printedSeconds(radiationM2KPerJ: number, fromK: number, toK: number, roomK: number) {
  const left = (tempK: number) =>
    Math.log(Math.abs((roomK + tempK) / (roomK - tempK))) + 2 * Math.atan(tempK / roomK);
  return (left(toK) - left(fromK)) / (4 * STEFAN_BOLTZMANN * radiationM2KPerJ * roomK ** 3);
}

describe("cooling by radiation alone (Bejan & Kraus, equation 3.283)", () => {
  const radiationM2KPerJ = 4.2e-8;

  it.each([
    [1200, 573],
    [573, 226],
    [226, 100],
  ])(
    "takes the printed time from %i to %i °C, within 1e-6 (Simpson's rule on 200 steps)",
    (fromC, toC) => {
      const seconds = secondsToFall(
        { conductionPerSecond: 0, radiationM2KPerJ },
        { fromC, toC, roomC: 25 },
      ) as number;
      const printed = printedSeconds(
        radiationM2KPerJ,
        kelvinFromCelsius(fromC),
        kelvinFromCelsius(toC),
        kelvinFromCelsius(25),
      );
      expect(Math.abs(seconds / printed - 1)).toBeLessThan(1e-6);
    },
  );

  it("is what Runge–Kutta steps of a minute come to, within 0.01 K (their step)", () => {
    const rates = twoNodeRates({
      pullKPerSecond: 0,
      inwardPerSecond: 0,
      soakPerSecond: 0,
      outwardPerSecond: 0,
      radiationM2KPerJ,
    });
    let state = { hotC: 1200, brickC: 25 };
    for (let minute = 0; minute < 600; minute++)
      state = stateAfter(rates, state, { output: 0, roomC: 25 }, 60);
    const printed = printedSeconds(
      radiationM2KPerJ,
      kelvinFromCelsius(1200),
      kelvinFromCelsius(state.hotC),
      kelvinFromCelsius(25),
    );
    const fallsKPerSecond = radiationM2KPerJ * radiatedWattPerM2(state.hotC, 25);
    expect(Math.abs(printed - 36_000) * fallsKPerSecond).toBeLessThan(0.01);
  });
});
