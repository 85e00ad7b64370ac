import { describe, expect, it } from "vitest";
import { cited } from "../../src/core/sources/bibliography.ts";
import { capacityFactor, radiationWPerM2K } from "../../src/core/ware/heatExchange.ts";
import { atRest } from "../../src/core/ware/strainRunner.ts";
import { advanceWare, STATE_SIZE, WALL } from "../../src/core/ware/wareState.ts";
import { planeWall, slabRampShare } from "../support/heatTransfer.ts";
import { aroundAt, fallen, openWall } from "../support/wareParts.ts";

// Every published case is met twice: by the closed form in test/support, which shows that the form
// is the printed one, and by the core in a limit where it has to give the same.

const INCROPERA = "Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, from memory";

/** Faces that are as hot as the air along them. */
const HELD = { airWPerM2K: 1e7 };

describe(`slab under a ramp (${cited("carslaw-jaeger-1959")}, §3.5)`, () => {
  // 25 mm at 0.505 mm²/s, so that L²/α with half the thickness is 309.4 s.
  const slab = (tempC: number) =>
    openWall({ wallM: 0.025, conductivity: 1.01, heatPerM3: 2e6 / capacityFactor(tempC) });
  const behindK = (state: Float64Array) => state[WALL + 2]! - state[WALL]!;

  it.each([
    [0.05, 0.0999],
    [0.2, 0.3704],
    [0.5, 0.6994],
  ])(
    "at Fo %d the middle has %d of its final lag (printed digits), the core within 0.02 (five places through it)",
    (fourier, printed) => {
      expect(Math.abs(slabRampShare(fourier) - printed)).toBeLessThan(6e-5);
      const seconds = (fourier * 0.0125 ** 2) / 0.505e-6;
      const state = fallen(slab(1200), {
        fromC: 1200,
        rateCPerHour: 100,
        seconds,
        steps: 2000,
        around: HELD,
      });
      expect(Math.abs(behindK(state) / 4.297 - printed)).toBeLessThan(0.02);
    },
  );

  it("in the end the middle of 25 mm at 0.505 mm²/s is 4.297 K behind 100 °C/h within 0.01 K (printed digits)", () => {
    const state = fallen(slab(1200), {
      fromC: 1200,
      rateCPerHour: 100,
      seconds: 3600,
      steps: 400,
      around: HELD,
    });
    expect(Math.abs(behindK(state) - 4.297)).toBeLessThan(0.01);
  });
});

describe("plane wall", () => {
  it.each([
    [0.01, 0.0998, 1.0017],
    [0.1, 0.3111, 1.016],
    [0.5, 0.6533, 1.0701],
    [1, 0.8603, 1.1191],
    [5, 1.3138, 1.2402],
    [10, 1.4289, 1.262],
    [100, 1.5552, 1.2731],
  ])(
    `${INCROPERA}, table 5.1, Biot %d: ζ %d, C₁ %d within one of the last printed digit`,
    (biot, zeta, c1) => {
      const found = planeWall(biot);
      expect(Math.abs(found.zeta - zeta)).toBeLessThan(1e-4);
      expect(Math.abs(found.c1 - c1)).toBeLessThan(1e-4);
    },
  );

  it.each([0.1, 0.5, 1, 5])(
    "with Biot %d a wall of the core comes to rest as fast as the one-term wall, within 3 % (five places through it)",
    (biot) => {
      const tempC = 1200;
      const [wallM, conductivity, heatPerM3] = [0.025, 1.2, 2.4e6];
      const perFace = (biot * conductivity) / (wallM / 2);
      const numbers = openWall({
        wallM,
        conductivity,
        heatPerM3: heatPerM3 / capacityFactor(tempC),
      });
      // Radiation is taken off what the air is to carry.
      const around = aroundAt(tempC, { airWPerM2K: perFace - radiationWPerM2K(tempC) });
      const state = new Float64Array(STATE_SIZE);
      atRest(state, tempC + 0.01);
      const oneTerm = (planeWall(biot).zeta ** 2 * (conductivity / heatPerM3)) / (wallM / 2) ** 2;
      const seconds = 0.002 / oneTerm;
      const left = () => {
        for (let i = 0; i < 400; i++) advanceWare(state, numbers, { around, seconds });
        return state[WALL + 2]! - tempC;
      };
      const [early, late] = [left(), left()];
      const perSecond = Math.log(early / late) / (400 * seconds);
      expect(Math.abs(perSecond / oneTerm - 1)).toBeLessThan(0.03);
    },
  );
});
