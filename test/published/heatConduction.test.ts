import { describe, expect, it } from "vitest";
import { makeCurve } from "../../src/core/curve/Curve.ts";
import { cited } from "../../src/core/sources/basedOn.ts";
import {
  capacityFactor,
  fourthPowerK,
  INSIDE_SHARE,
  loadLagSeconds,
  UNDERSIDE_SHARE,
} from "../../src/core/ware/heatExchange.ts";
import { steadyLags } from "../../src/core/ware/steadyLags.ts";
import { wareNumbers } from "../../src/core/ware/strainNumbers.ts";
import {
  advanceWare,
  BASE,
  baseWithLoadC,
  STATE_SIZE,
  strainRatio,
  WALL,
} from "../../src/core/ware/wareState.ts";
import { sampleWare, withBody } from "../core/ware/sampleWare.ts";
import {
  blackWPerM2K,
  cylinderRampShare,
  givenUpWPerM2,
  planeWall,
  slabRampShare,
} from "../support/heatTransfer.ts";
import {
  CORE_FACE,
  FACES,
  faceWPerM2K,
  fallen,
  middleOnly,
  numbersWith,
  off,
  traced,
  ZERO_K,
} from "../support/wareParts.ts";

// Every published case is met twice: by the closed form in test/support, which shows that the form
// is the printed one, and by the core in a limit where it has to give the same.

const INCROPERA = "Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, from memory";

describe(`slab under a ramp (${cited("carslaw-jaeger-1959")}, §3.5)`, () => {
  // The core lets the middle follow with one time constant, L²/2α, so that it is right in the end and
  // 1 − e^(−2Fo) on the way. It is short of the series by up to 0.07 of the final lag, for as long as
  // a slab takes to settle: 10 s for a wall of 6 mm, 10 min for a base of 25 mm. That moves only the
  // tension through the wall, a minor part, and by less than the factor of two that is promised.
  it.each([
    [0.05, 0.0999],
    [0.2, 0.3704],
    [0.5, 0.6994],
  ])(
    "at Fo %d the middle has %d of its final lag (printed digits), the core 1 − e^(−2Fo), below that by 0.07 at most",
    (fourier, printed) => {
      expect(Math.abs(slabRampShare(fourier) - printed)).toBeLessThan(6e-5);
      const finalK = (100 / 3600) * 600;
      const state = fallen(middleOnly(600 / capacityFactor(1200)), {
        fromC: 1200,
        rateCPerHour: 100,
        seconds: fourier * 1200,
        steps: 4000,
      });
      const numbers = middleOnly(600);
      const share = strainRatio(state, numbers, state[BASE] as number) / finalK;
      expect(share).toBeCloseTo(1 - Math.exp(-2 * fourier), 3);
      expect(share).toBeLessThan(printed);
      expect(printed - share).toBeLessThan(0.07);
    },
  );

  it("in the end the middle of 25 mm at 0.505 mm²/s is 4.297 K behind 100 °C/h within 0.01 K (printed digits; an hour of the core's own steps)", () => {
    const slab = wareNumbers(
      withBody(sampleWare("stoneware", 25), {
        densityKgPerM3: 2000,
        heatCapacityJPerKgK: 1000,
        conductivityWPerMK: 1.01,
      }),
    );
    const { ratio } = traced(
      { ...middleOnly(slab.wallCoreSeconds / capacityFactor(1100)) },
      makeCurve([0, 3600], [1200, 1100]),
    );
    expect(Math.abs((ratio.at(-1) as number) - 4.297)).toBeLessThan(0.01);
  });
});

describe("load under a ramp, as a cylinder (§7 of the same book, from memory)", () => {
  it.each([0.1, 0.2, 0.5])(
    "at Fo %d the core's middle is behind by 1 − e^(−4Fo) of its final lag, short of the series by 0.11 at most (one time constant, right in the end)",
    (fourier) => {
      const numbers = numbersWith({ wallHeat: 1e-9, footprintRadiusM: 0.2 });
      const lagSeconds = loadLagSeconds(0.2, 573);
      // A small rate, so that the cube of kelvin stays as it is.
      const state = fallen(numbers, {
        fromC: 573,
        rateCPerHour: 1,
        seconds: fourier * 4 * lagSeconds,
        steps: 2000,
      });
      const lagK = baseWithLoadC(state) - (state[BASE] as number);
      const share = lagK / (lagSeconds / 3600);
      expect(share).toBeCloseTo(1 - Math.exp(-4 * fourier), 2);
      expect(share).toBeLessThan(cylinderRampShare(fourier));
      expect(cylinderRampShare(fourier) - share).toBeLessThan(0.11);
    },
  );

  it("400 mm of load at 100 °C/h, 0.1 m between shelves, 0.39 MJ/m³K: 9.3 K at 573 °C and 45 K at 226 °C (rR²/4α by hand, printed digits)", () => {
    const byHand = (tempC: number) => {
      const diffusivity = (0.85 * blackWPerM2K(tempC + ZERO_K) * 0.1) / 0.39e6;
      return ((100 / 3600) * 0.2 ** 2) / (4 * diffusivity);
    };
    for (const [tempC, printed, digits] of [
      [573, 9.3, 1],
      [226, 45, 0],
    ] as const) {
      expect(byHand(tempC)).toBeCloseTo(printed, digits);
      expect(off((loadLagSeconds(0.2, tempC) * 100) / 3600, byHand(tempC))).toBeLessThan(1e-3);
    }
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

  // One temperature for a wall lets it come to rest too fast by 1 + Bi/3; a steady lag is not touched.
  it.each([
    [3, 573, 0.05],
    [6, 573, 0.08],
    [12, 573, 0.16],
    [25, 573, 0.34],
    [6, 226, 0.02],
    [25, 226, 0.09],
  ])(
    "a wall of %d mm at %d °C comes to rest in the core faster than the one-term wall by a share of %d at most, and that share is Bi/3 within 0.03",
    (wallMm, tempC, most) => {
      const ware = sampleWare("stoneware", wallMm);
      const halfM = wallMm / 2000;
      const biot = ((FACES / 2) * faceWPerM2K(tempC) * halfM) / ware.body.conductivityWPerMK.value;
      const { wallHeat } = wareNumbers(ware);
      const state = new Float64Array(STATE_SIZE).fill(tempC + 0.01);
      const around = { airC: tempC, radiantK4: fourthPowerK(tempC), insideShare: INSIDE_SHARE };
      advanceWare(state, numbersWith({ wallHeat }), { around, seconds: 0.01 });
      const perSecond = -Math.log(((state[WALL] as number) - tempC) / 0.01) / 0.01;
      const diffusivity =
        ware.body.conductivityWPerMK.value /
        (ware.body.densityKgPerM3.value *
          ware.body.heatCapacityJPerKgK.value *
          capacityFactor(tempC));
      const oneTerm = (planeWall(biot).zeta ** 2 * diffusivity) / halfM ** 2;
      expect(perSecond / oneTerm - 1).toBeGreaterThan(0);
      expect(perSecond / oneTerm - 1).toBeLessThan(most);
      expect(Math.abs(perSecond / oneTerm - (1 + biot / 3))).toBeLessThan(0.03);
    },
  );
});

describe("steady fall", () => {
  it.each([
    [573, 60],
    [573, 200],
    [226, 30],
  ])(
    "at %d °C and %d °C/h wall, and base with shelf, each give up just the heat that they lose by the steady lags (conservation of energy, exact)",
    (tempC, rateCPerHour) => {
      const numbers = wareNumbers(sampleWare("stoneware", 6));
      const lags = steadyLags(numbers, tempC);
      const rate = (rateCPerHour / 3600) * capacityFactor(tempC);
      const given = (lagPerRate: number) => faceWPerM2K(tempC) * lagPerRate * rateCPerHour;
      expect(off(FACES * given(lags.wall), numbers.wallHeat * rate)).toBeLessThan(1e-9);
      const below = INSIDE_SHARE * given(lags.base) + UNDERSIDE_SHARE * given(lags.shelf);
      expect(off(below, (numbers.baseHeat + numbers.shelfHeat) * rate)).toBeLessThan(1e-9);
    },
  );

  it("integrated through 573 °C at 30 °C/h, base and shelf together lose heat as by T⁴ within 2 % (lags still grow on the way down)", () => {
    const numbers = wareNumbers(sampleWare("stoneware", 6));
    const { baseC, shelfC, tempsC, timesSeconds } = traced(
      numbers,
      makeCurve([0, 6 * 3600], [700, 520]),
    );
    const i = tempsC.findIndex((kilnC) => kilnC <= 573);
    const kilnK = (tempsC[i] as number) + ZERO_K;
    const given = (share: number, partC: number) =>
      share * givenUpWPerM2(CORE_FACE, partC + ZERO_K, kilnK);
    const lost = (heat: number, part: Float64Array) => {
      const fellK = (part[i - 1] as number) - (part[i + 1] as number);
      const seconds = (timesSeconds[i + 1] as number) - (timesSeconds[i - 1] as number);
      return (heat * capacityFactor(part[i] as number) * fellK) / seconds;
    };
    const out =
      given(INSIDE_SHARE, baseC[i] as number) + given(UNDERSIDE_SHARE, shelfC[i] as number);
    expect(off(lost(numbers.baseHeat, baseC) + lost(numbers.shelfHeat, shelfC), out)).toBeLessThan(
      0.02,
    );
  });
});
