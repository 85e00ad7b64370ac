import { describe, expect, it } from "vitest";
import { seededEven } from "../../../src/core/math/distributions.ts";
import {
  FEWEST_FOR_LAW,
  fitOmori,
  omoriArea,
  omoriShare,
  omoriTime,
  omoriTimes,
  pingLaw,
} from "../../../src/core/pings/omoriLaw.ts";
import { pingSpans } from "../../../src/core/pings/PingReview.ts";
import { pingBurst } from "../../../src/core/pings/pingKinds.ts";

const DAY = 86_400;

describe("the modified Omori law", () => {
  it("has the integral that arithmetic gives", () => {
    expect(omoriArea({ p: 0, c: 5 }, 60)).toBeCloseTo(60, 9);
    expect(omoriArea({ p: 1, c: 1 }, Math.E - 1)).toBeCloseTo(1, 9);
    expect(omoriArea({ p: 2, c: 1 }, 1)).toBeCloseTo(0.5, 9);
  });

  it("is smooth through p = 1", () => {
    const near = omoriArea({ p: 1 + 1e-7, c: 10 }, 1000);
    expect(near / omoriArea({ p: 1, c: 10 }, 1000)).toBeCloseTo(1, 5);
  });

  it.each([0, 0.5, 0.75, 1, 1.8])("gives the time back for its share, p %d", (p) => {
    const law = { p, c: 120 };
    for (const at of [3, 600, 40_000])
      expect(omoriTime(law, omoriShare(law, at, DAY), DAY)).toBeCloseTo(at, 5);
  });
});

const done = new Map<string, ReturnType<typeof tried>>();

/** The same once only, since it takes seconds. */
function recovered(p: number, count: number) {
  const key = `${p} ${count}`;
  const result = done.get(key) ?? tried(p, count);
  done.set(key, result);
  return result;
}

/** Two hundred seeded catalogues: share whose interval holds the truth, mean and sigma of p. */
function tried(p: number, count: number) {
  const even = seededEven(5);
  const fits = Array.from({ length: 200 }, () =>
    fitOmori(omoriTimes({ p, c: 120 }, { count, seconds: DAY, even }), DAY),
  );
  const sorted = fits.map((fit) => fit.p).sort((a, b) => a - b);
  return {
    covered: fits.filter((fit) => fit.pLow - 0.005 <= p && p <= fit.pHigh + 0.005).length / 200,
    median: sorted[100] as number,
    sigma: ((sorted[168] as number) - (sorted[31] as number)) / 2,
  };
}

describe("the exponent of two hundred made-up catalogues", () => {
  it.each([
    [0.75, 100],
    [0.75, 300],
    [1, 100],
    [0, 100],
  ])(
    "p %d of %i pings is found, its interval of 95 in 100 holding it 90 to 99 times of 100",
    (p, count) => {
      const { covered, median } = recovered(p, count);
      expect(covered).toBeGreaterThanOrEqual(0.9);
      expect(covered).toBeLessThanOrEqual(0.99);
      expect(Math.abs(median - p)).toBeLessThan(0.05);
    },
  );

  it("scatters by about 0.09 with 100 pings and less with 300", () => {
    const few = recovered(0.75, 100).sigma;
    expect(few).toBeGreaterThan(0.06);
    expect(few).toBeLessThan(0.12);
    expect(recovered(0.75, 300).sigma).toBeLessThan(few);
  });

  it("is three quarters where every equal step of the fourth root of time gives one ping", () => {
    const count = 200;
    // From two minutes after the growth began, where the recording starts.
    const [from, to] = [120 ** 0.25, (DAY + 120) ** 0.25];
    const times = Array.from(
      { length: count },
      (_, i) => (from + ((i + 0.5) / count) * (to - from)) ** 4 - 120,
    );
    const { p, pLow, pHigh } = fitOmori(times, DAY);
    expect(p).toBeGreaterThan(0.7);
    expect(p).toBeLessThan(0.8);
    expect(pLow).toBeLessThan(0.75);
    expect(pHigh).toBeGreaterThan(0.75);
  });
});

describe("the law of a recording", () => {
  const times = (count: number) =>
    omoriTimes({ p: 0.75, c: 120 }, { count, seconds: DAY, even: seededEven(8) });

  it("is not told up to 50 pings", () => {
    expect(pingLaw(times(FEWEST_FOR_LAW), DAY)).toBeNull();
    expect(pingLaw(times(FEWEST_FOR_LAW + 1), DAY)).not.toBeNull();
  });

  it("says how far made-up recordings scatter, and draws a line from none to all", () => {
    const law = pingLaw(times(100), DAY);
    expect(law?.pSigma).toBeGreaterThan(0.05);
    expect(law?.pSigma).toBeLessThan(0.2);
    expect(law?.line[0]).toMatchObject({ seconds: 0, count: 0 });
    expect(law?.line.at(-1)?.count).toBeCloseTo(100, 6);
  });

  it("is the same every time", () => {
    expect(pingLaw(times(60), DAY)).toEqual(pingLaw(times(60), DAY));
  });
});

describe("a second burst", () => {
  it("is found where thirty pings fall into ten minutes of a day that thins out", () => {
    const even = seededEven(3);
    const base = omoriTimes({ p: 0.75, c: 120 }, { count: 80, seconds: DAY, even });
    const extra = Array.from({ length: 30 }, () => 50_000 + 600 * even());
    const burst = pingBurst(
      [...base, ...extra].sort((a, b) => a - b),
      DAY,
    );
    expect(burst?.fromSeconds).toBeGreaterThan(49_000);
    expect(burst?.toSeconds).toBeLessThan(51_600);
    expect(burst?.count).toBeGreaterThanOrEqual(28);
    expect(burst?.expected).toBeLessThan(8);
  });

  it("is made up of chance in at most 2 of 60 recordings that only thin out", () => {
    const even = seededEven(12);
    const found = Array.from({ length: 60 }, () =>
      pingBurst(omoriTimes({ p: 0.75, c: 120 }, { count: 80, seconds: DAY, even }), DAY),
    );
    expect(found.filter((burst) => burst !== null).length).toBeLessThanOrEqual(2);
  });
});

describe("pings by time", () => {
  it("are counted in the first 10 min, to 1 h, and as far as the recording goes", () => {
    const spans = pingSpans([10, 599, 600, 3000, 5000], 7200);
    expect(spans.map(({ count }) => count)).toEqual([2, 2, 1]);
    expect(spans.map(({ toSeconds }) => toSeconds)).toEqual([600, 3600, 7200]);
    expect(spans[0]?.perHour).toBeCloseTo(12, 9);
    expect(spans[2]?.perHour).toBeCloseTo(1, 9);
    expect(spans[0]?.share).toBeCloseTo(0.4, 9);
  });

  it("go on day by day", () => {
    expect(pingSpans([], 3 * DAY).map(({ toSeconds }) => toSeconds)).toEqual([
      600,
      3600,
      14_400,
      DAY,
      2 * DAY,
      3 * DAY,
    ]);
  });
});
