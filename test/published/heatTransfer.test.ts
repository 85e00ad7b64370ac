import { describe, expect, it } from "vitest";
import { makeCurve } from "../../src/core/curve/Curve.ts";
import {
  airConductivity,
  CONVECTION_W_PER_M2K,
  capacityFactor,
  EMISSIVITY,
  fourthPowerK,
  radiationWPerM2K,
} from "../../src/core/ware/heatExchange.ts";
import {
  advanceWare,
  BASE,
  meanC,
  SHELF,
  STATE_SIZE,
  WALL,
} from "../../src/core/ware/wareState.ts";
import {
  type AirFilm,
  blackWPerM2K,
  givenUpWPerM2,
  lumpedRampLagK,
  lumpedSeconds,
  radiatingSeconds,
  rungeKuttaK,
  standingWall,
} from "../support/heatTransfer.ts";
import {
  aroundAt,
  CORE_FACE,
  faceWPerM2K,
  lumpedWall,
  off,
  traced,
  wallHeatFor,
  ZERO_K,
} from "../support/wareParts.ts";

// Every published case is met twice: by the closed form in test/support, which shows that the form
// is the printed one, and by the core in a limit where it has to give the same.

const INCROPERA = "Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, from memory";

/** Air from table A.4 of the same book, from memory. */
const AIR: Readonly<Record<400 | 500 | 850, AirFilm>> = {
  400: {
    tempK: 400,
    viscosityM2PerS: 26.4e-6,
    diffusivityM2PerS: 38.3e-6,
    conductivityWPerMK: 0.0338,
  },
  500: {
    tempK: 500,
    viscosityM2PerS: 38.79e-6,
    diffusivityM2PerS: 56.7e-6,
    conductivityWPerMK: 0.0407,
  },
  850: {
    tempK: 850,
    viscosityM2PerS: 93.8e-6,
    diffusivityM2PerS: 131e-6,
    conductivityWPerMK: 0.0596,
  },
};

/** Time in which the wall of the core comes a share of the way to a kiln a hundredth of a kelvin off. */
function secondsToCome(share: number, timeConstant: number): number {
  const [kilnC, startK, seconds] = [573, 0.01, timeConstant / 1000];
  const numbers = lumpedWall(wallHeatFor(timeConstant, kilnC));
  const state = new Float64Array(STATE_SIZE).fill(kilnC + startK);
  const around = aroundAt(kilnC);
  let steps = 0;
  for (; (state[WALL] as number) - kilnC > (1 - share) * startK; steps++)
    advanceWare(state, numbers, { around, seconds });
  return steps * seconds;
}

const BEAD = {
  densityKgPerM3: 8500,
  heatCapacityJPerKgK: 320,
  volumeOverSurfaceM: 0.001 / 6,
  transferWPerM2K: 210,
};
const JUNCTION = {
  densityKgPerM3: 8500,
  heatCapacityJPerKgK: 400,
  volumeOverSurfaceM: 0.000706 / 6,
  transferWPerM2K: 400,
};

describe("a body of one temperature", () => {
  it("Çengel, example 4-1 (read): a bead of 1 mm comes 99 % of the way in 10 s within 0.1 s (printed rounded), Biot 0.001", () => {
    const seconds = lumpedSeconds(BEAD) * Math.log(100);
    expect(Math.abs(seconds - 10)).toBeLessThan(0.1);
    expect((BEAD.transferWPerM2K * BEAD.volumeOverSurfaceM) / 35).toBeCloseTo(0.001, 6);
    // thousand steps to a time constant, first order
    expect(off(secondsToCome(0.99, lumpedSeconds(BEAD)), seconds)).toBeLessThan(1e-3);
  });

  it(`${INCROPERA}, example 5.1: a junction of 0.706 mm has 1 s and comes from 25 to 199 °C in gas of 200 °C in 5.2 s (printed digits)`, () => {
    expect(lumpedSeconds(JUNCTION)).toBeCloseTo(1, 2);
    expect(secondsToCome(174 / 175, lumpedSeconds(JUNCTION))).toBeCloseTo(5.2, 1);
  });

  it("behind 100 °C/h with 600 s, after 900 s: 12.95 K (arithmetic, 100/6 × (1 − e^−1.5)), the core within 1 % by its own steps of 20 s", () => {
    const lagK = lumpedRampLagK({ rateCPerHour: 100, lumpedSeconds: 600, seconds: 900 });
    expect(lagK).toBeCloseTo(12.95, 2);
    // A hundredth of the rate, for radiation to stay as at 573 °C, counted a hundredfold.
    const { wallC, tempsC } = traced(
      lumpedWall(wallHeatFor(600, 573)),
      makeCurve([0, 900], [573, 573 - 0.25]),
    );
    expect(off(100 * ((wallC.at(-1) as number) - (tempsC.at(-1) as number)), lagK)).toBeLessThan(
      0.01,
    );
  });
});

describe("radiation", () => {
  it.each([
    [300, 6.12],
    [500, 28.35],
    [846, 137.3],
    [1000, 226.8],
    [1273, 467.9],
    [1473, 724.9],
  ])(
    "4σT³ at %d K is %d W/m²K (Stefan's law, to printed digits), the core's times its emissivity within 0.01 % (σ to 5.67)",
    (tempK, printed) => {
      expect(off(blackWPerM2K(tempK), printed)).toBeLessThan(1e-3);
      expect(off(radiationWPerM2K(tempK - ZERO_K), EMISSIVITY * blackWPerM2K(tempK))).toBeLessThan(
        1e-4,
      );
    },
  );

  it(`${INCROPERA}, example 1.2: a steam pipe of 200 °C gives up 998 W/m of 70 mm, emits 2270 and receives 447 W/m² (printed digits; room of 25 °C)`, () => {
    const [pipeK, roomK] = [473, 298];
    const black = { emissivity: 1, airWPerM2K: 0 };
    expect(0.8 * givenUpWPerM2(black, pipeK, 0)).toBeCloseTo(2270, -1);
    expect(givenUpWPerM2(black, roomK, 0)).toBeCloseTo(447, 0);
    const pipe = { emissivity: 0.8, airWPerM2K: 15 };
    expect(off(Math.PI * 0.07 * givenUpWPerM2(pipe, pipeK, roomK), 998)).toBeLessThan(1e-3);
  });

  it.each([
    [200, 25],
    [573, 560],
    [1200, 20],
  ])(
    "a wall of %d °C in a kiln of %d °C gives up what a grey face does, by the core within 0.01 % (σ to 5.67)",
    (wallC, kilnC) => {
      const wallHeat = 1e9;
      const state = new Float64Array(STATE_SIZE).fill(wallC);
      advanceWare(state, lumpedWall(wallHeat), { around: aroundAt(kilnC), seconds: 1 });
      const fellK = wallC - meanC(state, WALL);
      const perFace = fellK * wallHeat * capacityFactor(wallC);
      expect(off(perFace, givenUpWPerM2(CORE_FACE, wallC + ZERO_K, kilnC + ZERO_K))).toBeLessThan(
        1e-4,
      );
    },
  );

  it("base and shelf exchange as two grey plates, σ(T₁⁴ − T₂⁴)/(2/ε − 1) and the air between (textbook form; air of 850 K by table A.4 above), by the core within 0.2 %", () => {
    const [baseC, shelfC, gapM, heat] = [626.85, 526.85, 0.003, 1e9];
    // An inside that takes no part leaves the base nothing but the shelf.
    const numbers = {
      ...lumpedWall(1),
      baseM: 0.001,
      heatPerM3: heat * 1000,
      shelfHeat: heat,
      footGapM: gapM,
      baseSeesOut: 0,
    };
    const state = new Float64Array(STATE_SIZE).fill(baseC);
    state[SHELF] = shelfC;
    advanceWare(state, numbers, { around: aroundAt(shelfC), seconds: 1 });
    const fellK = baseC - meanC(state, BASE);
    const plates = {
      emissivity: 1 / (2 / EMISSIVITY - 1),
      airWPerM2K: AIR[850].conductivityWPerMK / gapM,
    };
    const expected = givenUpWPerM2(plates, baseC + ZERO_K, shelfC + ZERO_K);
    expect(off(fellK * heat * capacityFactor(baseC), expected)).toBeLessThan(2e-3);
  });

  const fall = { fromK: 1400 + ZERO_K, toK: 1010 + ZERO_K, aroundK: 20 + ZERO_K };

  it("Bejan & Kraus, equation 3.283 (read): a body that only radiates takes what Runge–Kutta takes, within 1e-6", () => {
    const seconds = radiatingSeconds(1.2e-4, fall);
    const whole = Math.floor(seconds);
    const rate = (tempK: number) =>
      -1.2e-4 * givenUpWPerM2({ emissivity: 1, airWPerM2K: 0 }, tempK, fall.aroundK);
    const tempK = rungeKuttaK(rate, { tempK: fall.fromK, seconds: whole });
    expect(off(radiatingSeconds(1.2e-4, { ...fall, toK: tempK }), whole)).toBeLessThan(1e-6);
  });

  it("the wall of the core, with air as hot as itself, takes the same from 1400 to 1010 °C within 0.2 % (steps of 0.01 s; its heat capacity is level there)", () => {
    const numbers = lumpedWall(14_000);
    const heat = 14_000 * capacityFactor(1200);
    const state = new Float64Array(STATE_SIZE).fill(1400);
    let steps = 0;
    for (; (state[WALL] as number) > 1010; steps++) {
      const around = aroundAt(state[WALL] as number, { radiantK4: fourthPowerK(20) });
      advanceWare(state, numbers, { around, seconds: 0.01 });
    }
    const printed = radiatingSeconds(EMISSIVITY / heat, fall);
    expect(off(steps * 0.01, printed)).toBeLessThan(2e-3);
  });

  it.each([
    [60, 3],
    [200, 6],
    [600, 12],
  ])(
    "in a kiln falling from 700 °C at %d °C/h, a wall of %d mm runs as by Runge–Kutta within 0.6 K in the first 20 minutes and a hundredth of its lag from then on (steps of 20 s)",
    (rateCPerHour, wallMm) => {
      const wallHeat = 2200 * 1080 * (wallMm / 1000);
      const numbers = lumpedWall(wallHeat);
      const hours = 600 / rateCPerHour;
      const curve = makeCurve([0, hours * 3600], [700, 100]);
      const { wallC, tempsC, timesSeconds } = traced(numbers, curve);
      const rate = (tempK: number, seconds: number) => {
        const kilnK = 700 + ZERO_K - (rateCPerHour / 3600) * seconds;
        const heat = wallHeat * capacityFactor(tempK - ZERO_K);
        return -givenUpWPerM2(CORE_FACE, tempK, kilnK) / heat;
      };
      let [tempK, at] = [700 + ZERO_K, 0];
      for (const [i, seconds] of timesSeconds.entries()) {
        const from = at;
        tempK = rungeKuttaK((t, later) => rate(t, from + later), {
          tempK,
          seconds: seconds - from,
        });
        at = seconds;
        const lagK = tempK - ZERO_K - (tempsC[i] as number);
        const within = seconds < 1200 ? 0.6 : 0.01 * lagK;
        expect(Math.abs(tempK - ZERO_K - (wallC[i] as number))).toBeLessThan(within);
      }
    },
  );
});

describe("air", () => {
  it(`${INCROPERA}, example 9.2: a fire screen of 0.71 by 1.02 m, 232 °C in a room of 23 °C: Ra 1.813 × 10⁹, Nu 147, 7.0 W/m²K, 1060 W within 1 % (printed digits)`, () => {
    const found = standingWall(AIR[400], { heightM: 0.71, excessK: 209 });
    expect(off(found.rayleigh, 1.813e9)).toBeLessThan(0.01);
    expect(off(found.nusselt, 147)).toBeLessThan(0.01);
    expect(off(found.wPerM2K, 7)).toBeLessThan(0.01);
    expect(off(found.wPerM2K * 0.71 * 1.02 * 209, 1060)).toBeLessThan(0.01);
  });

  it.each([
    [850, 573, 5, 0.05],
    [500, 226, 20, 0.2],
  ] as const)(
    "the core's constant for air is right to a factor of two for a pot of 100 mm at %d K and %d °C, %d K behind (Churchill & Chu), and the rest is less than %d of all heat",
    (tempK, tempC, excessK, share) => {
      const { wPerM2K } = standingWall(AIR[tempK], { heightM: 0.1, excessK });
      const factor = CONVECTION_W_PER_M2K / wPerM2K;
      expect(factor).toBeGreaterThan(0.5);
      expect(factor).toBeLessThan(2);
      const wrong = Math.abs(CONVECTION_W_PER_M2K - wPerM2K) / faceWPerM2K(tempC);
      expect(wrong).toBeLessThan(share);
    },
  );

  it.each([
    [300, 0.0263],
    [400, 0.0338],
    [500, 0.0407],
    [850, 0.0596],
    [1000, 0.0667],
    [1200, 0.0763],
    [1400, 0.091],
  ])(
    `${INCROPERA}, table A.4: air of %d K conducts %d W/mK, the core's straight line within 7 % of it`,
    (tempK, printed) => {
      expect(off(airConductivity(tempK - ZERO_K), printed)).toBeLessThan(0.07);
    },
  );
});
