import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeCurve } from "../../../src/core/curve/Curve.ts";
import { bodyStrain } from "../../../src/core/ware/bodyExpansion.ts";
import { strainSteps, wareStrain } from "../../../src/core/ware/wareStrain.ts";
import { listedBody, sampleWare, straightFall, withBody } from "./sampleWare.ts";

const rate = fc.integer({ min: 20, max: 600 });
const wallMm = fc.integer({ min: 3, max: 20 });
const MUG = sampleWare("stoneware", 6, { baseMm: 9 });

/** Worst ratio of all passages of a straight fall. */
const worstOf = (ware: typeof MUG, rateCPerHour: number) =>
  Math.max(...wareStrain(straightFall(rateCPerHour, 100), ware).worst.map(({ ratio }) => ratio));

/** Sampling a sharp peak every 20 s misses it by up to this share. */
const MISSED = 0.985;

describe("wareStrain", () => {
  it("does not lower the worst ratio when the base gets thicker, for any wall, base and rate", () => {
    fc.assert(
      fc.property(
        wallMm,
        fc.integer({ min: 0, max: 10 }),
        fc.integer({ min: 1, max: 10 }),
        rate,
        (wall, over, more, fall) => {
          const thin = sampleWare("stoneware", wall, { baseMm: wall + over });
          const thick = sampleWare("stoneware", wall, { baseMm: wall + over + more });
          expect(worstOf(thick, fall)).toBeGreaterThanOrEqual(worstOf(thin, fall) * MISSED);
        },
      ),
      { numRuns: 15 },
    );
  });

  it("does not lower the worst ratio when it cools faster, for any piece and rate", () => {
    fc.assert(
      fc.property(wallMm, rate, fc.integer({ min: 1, max: 300 }), (wall, fall, faster) => {
        const ware = sampleWare("stoneware", wall);
        expect(worstOf(ware, fall + faster)).toBeGreaterThanOrEqual(worstOf(ware, fall) * MISSED);
      }),
      { numRuns: 15 },
    );
  });

  it("does not lower the worst ratio when there is more quartz, for any shares and rate", () => {
    const share = fc.double({ min: 0, max: 0.4, noNaN: true });
    fc.assert(
      fc.property(share, share, rate, (quartz, more, fall) => {
        const little = withBody(MUG, { quartzFraction: quartz });
        const much = withBody(MUG, { quartzFraction: quartz + more });
        expect(worstOf(much, fall)).toBeGreaterThanOrEqual(worstOf(little, fall) * MISSED);
      }),
      { numRuns: 15 },
    );
  });

  it("comes to rest: the ratio tends to 0 in a long hold, for any temperature of it", () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 700 }), (holdC) => {
        const curve = makeCurve([0, 3600, 12 * 3600], [800, holdC, holdC]);
        const { ratio } = wareStrain(curve, MUG);
        expect(Math.max(...ratio)).toBeGreaterThan(0.02);
        expect(ratio.at(-1)).toBeLessThan(0.002);
      }),
      { numRuns: 10 },
    );
  });

  it("does not care what the clock said, for any shift", () => {
    const plain = wareStrain(straightFall(120, 100), MUG).worst;
    fc.assert(
      fc.property(fc.integer({ min: -1e6, max: 1e6 }), (shift) => {
        const moved = wareStrain(straightFall(120, 100, shift), MUG).worst;
        for (const [i, worst] of moved.entries()) {
          expect(worst.ratio).toBeCloseTo(plain[i]?.ratio as number, 6);
          expect(worst.atSeconds - shift).toBeCloseTo(plain[i]?.atSeconds as number, 3);
        }
      }),
      { numRuns: 10 },
    );
  });

  it("hardly changes when the same fall is read every second instead of every five minutes", () => {
    const seconds = (700 / 100) * 3600;
    const readEvery = (step: number) => {
      const times = Array.from({ length: seconds / step + 1 }, (_, i) => i * step);
      return makeCurve(
        times,
        times.map((time) => 800 - (100 * time) / 3600),
      );
    };
    const often = wareStrain(readEvery(1), MUG).worst;
    const seldom = wareStrain(readEvery(300), MUG).worst;
    for (const [i, { ratio }] of often.entries())
      expect(Math.abs(ratio / (seldom[i]?.ratio as number) - 1)).toBeLessThan(0.01);
  });

  it("names each inversion and direction that the kiln went into, in the order of a firing", () => {
    const firing = makeCurve([0, 5 * 3600, 15 * 3600], [20, 1000, 100]);
    expect(
      wareStrain(firing, MUG).worst.map(({ band, direction }) => `${direction} ${band}`),
    ).toEqual([
      "heating cristobalite inversion",
      "heating quartz inversion",
      "cooling quartz inversion",
      "cooling cristobalite inversion",
    ]);
    const warm = makeCurve([0, 3600], [20, 150]);
    expect(wareStrain(warm, MUG).worst).toEqual([]);
  });

  it("puts the worst at quartz about 573 °C, a little late because the base follows", () => {
    const [quartz] = wareStrain(straightFall(100, 100), sampleWare("stoneware", 6)).worst;
    expect(quartz?.tempC).toBeGreaterThan(540);
    expect(quartz?.tempC).toBeLessThan(580);
  });

  it("blames the band for a thick base that is still in it when the kiln is past it", () => {
    const hot = makeCurve([0, 3600, 4200, 9000], [800, 700, 400, 400]);
    const [quartz] = wareStrain(hot, sampleWare("stoneware", 8, { baseMm: 25 })).worst;
    expect(quartz?.band).toBe("quartz inversion");
    expect(quartz?.tempC).toBeLessThan(520);
  });

  it("starts at rest again after a gap", () => {
    const curve = makeCurve(
      [0, 3600, 7200, 10800],
      [800, 600, 400, 300],
      [{ fromSeconds: 3600, toSeconds: 7200 }],
    );
    const { timesSeconds, ratio } = wareStrain(curve, MUG);
    expect(ratio[timesSeconds.indexOf(3600)]).toBeGreaterThan(0.03);
    expect(ratio[timesSeconds.indexOf(7200)]).toBe(0);
    expect([...timesSeconds].some((time) => time > 3600 && time < 7200)).toBe(false);
  });
});

describe("strainSteps", () => {
  it("places short steps on the straight line, for any reading interval and rate", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), rate, (every, fall) => {
        const times = Array.from({ length: 12 }, (_, i) => i * every);
        const line = (time: number) => 690 - (fall * time) / 3600;
        const { timesSeconds, tempsC } = strainSteps(makeCurve(times, times.map(line)));
        expect(timesSeconds.at(-1)).toBe(11 * every);
        for (const [i, time] of timesSeconds.entries()) {
          expect(tempsC[i]).toBeCloseTo(line(time), 6);
          if (i === 0) continue;
          expect(time).toBeGreaterThan(timesSeconds[i - 1] as number);
          expect(time - (timesSeconds[i - 1] as number)).toBeLessThanOrEqual(20.001);
        }
      }),
    );
  });
});

describe("bodyStrain", () => {
  it("grows with temperature up to 600 °C, for any listed body and two temperatures", () => {
    const tempC = fc.integer({ min: 0, max: 600 });
    fc.assert(
      fc.property(
        tempC,
        tempC,
        fc.constantFrom("earthenware", "stoneware", "porcelain 10"),
        (a, b, words) => {
          const body = listedBody(words);
          const [low, high] = [Math.min(a, b), Math.max(a, b)];
          expect(bodyStrain(body, high)).toBeGreaterThanOrEqual(bodyStrain(body, low));
        },
      ),
    );
  });

  it("is 0 at 20 °C, and to 600 °C about what the whole body is said to expand", () => {
    for (const [words, perK] of [
      ["earthenware", 8e-6],
      ["stoneware", 6.8e-6],
      ["porcelain 10", 5.6e-6],
    ] as const) {
      expect(Math.abs(bodyStrain(listedBody(words), 20))).toBeLessThan(1e-7);
      const mean = bodyStrain(listedBody(words), 600) / 580;
      expect(Math.abs(mean / perK - 1)).toBeLessThan(0.12);
    }
  });
});
