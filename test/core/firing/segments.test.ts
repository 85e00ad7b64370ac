import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Curve, makeCurve, offsetBy, shifted } from "../../../src/core/curve/Curve.ts";
import { foundSegments } from "../../../src/core/firing/segments.ts";
import { seededEven } from "../../../src/core/math/distributions.ts";
import { corners, sampled } from "../../support/curves.ts";

/** A programme with eight inner corners, in 24 h. */
const PROGRAMME = corners(
  [0, 20],
  [2, 120],
  [3, 120],
  [7, 600],
  [9, 1133],
  [9.5, 1207],
  [9.75, 1207],
  [15.75, 583],
  [18, 538],
  [24, 10],
);

const LAG_SECONDS = 240;

/** The programme behind a thermocouple 4 min late, with noise, ripple, spikes and 0.1 °C steps. */
function simulatedFiring(seed: number): Curve {
  const random = seededEven(seed);
  const ideal = sampled(PROGRAMME, 1);
  let reading = 20;
  const temps = ideal.tempsC.map((temp, i) => {
    reading += (temp - reading) / LAG_SECONDS;
    const noise = (random() + random() + random() + random() - 2) * 1.2;
    const ripple = 1.5 * Math.sin((2 * Math.PI * i) / 180);
    const spike = random() < 0.002 ? (random() - 0.5) * 400 : 0;
    return Math.round((reading + noise + ripple + spike) * 10) / 10;
  });
  return makeCurve(ideal.timesSeconds, temps);
}

describe("found segments", () => {
  it("are the nine of a simulated firing, its eight corners within 1 min on average", () => {
    for (const seed of [1, 2, 3]) {
      const segments = foundSegments(simulatedFiring(seed));
      expect(segments).toHaveLength(9);
      const expected = [...PROGRAMME.timesSeconds].slice(1, 9).map((t) => t + LAG_SECONDS);
      const errors = expected.map((t, i) => Math.abs(t - (segments[i]?.endSeconds ?? Number.NaN)));
      const meanMinutes = errors.reduce((sum, error) => sum + error, 0) / errors.length / 60;
      expect(meanMinutes).toBeLessThanOrEqual(1);
    }
  });

  it("have the rates of the programme within 3 °C/h", () => {
    const rates = foundSegments(simulatedFiring(4))
      .filter((segment) => segment.kind === "ramp")
      .map((segment) => segment.rateCPerHour);
    const programmed = [50, 120, 266.5, 148, -104, -20, -88];
    expect(rates).toHaveLength(programmed.length);
    programmed.forEach((rate, i) => {
      expect(Math.abs((rates[i] ?? Number.NaN) - rate)).toBeLessThanOrEqual(3);
    });
  });

  it("tell holds from ramps", () => {
    const kinds = foundSegments(sampled(corners([0, 20], [2, 220], [4, 220], [5, 100]), 60)).map(
      (segment) => segment.kind,
    );
    expect(kinds).toEqual(["ramp", "hold", "ramp"]);
  });

  it("call a quiet hold stable and a wandering one not", () => {
    const quiet = foundSegments(sampled(corners([0, 20], [2, 220], [4, 220], [5, 100]), 60));
    expect(quiet[1]?.stable).toBe(true);
    const wandering = sampled(corners([0, 20], [2, 220], [4, 220], [5, 100]), 60);
    const temps = wandering.tempsC.map((temp, i) =>
      i > 130 && i < 230 && i % 10 === 0 ? temp + 14 : temp,
    );
    const found = foundSegments(makeCurve(wandering.timesSeconds, temps));
    expect(found.find((segment) => segment.kind === "hold")?.stable).toBe(false);
  });

  it("never span a gap", () => {
    const whole = sampled(corners([0, 20], [5, 520]), 60);
    const keep = [...whole.timesSeconds.keys()].filter((i) => i < 100 || i > 160);
    const curve = makeCurve(
      keep.map((i) => whole.timesSeconds[i] as number),
      keep.map((i) => whole.tempsC[i] as number),
      [{ fromSeconds: 99 * 60, toSeconds: 161 * 60 }],
    );
    const segments = foundSegments(curve);
    expect(segments.map((s) => [s.startSeconds, s.endSeconds])).toEqual([
      [0, 99 * 60],
      [161 * 60, 300 * 60],
    ]);
  });

  const anyFiring = fc
    .record({
      rates: fc.array(fc.integer({ min: 2, max: 12 }), { minLength: 1, maxLength: 5 }),
      hold: fc.integer({ min: 0, max: 3 }),
      seed: fc.integer({ min: 0, max: 1000 }),
    })
    .map(({ rates, hold, seed }) => {
      const random = seededEven(seed);
      const points: [number, number][] = [[0, 20]];
      for (const rate of rates) {
        const [hours, temp] = points.at(-1) as [number, number];
        points.push([hours + 1, temp + rate * 20]);
        if (hold > 0) points.push([hours + 1 + hold / 2, temp + rate * 20]);
      }
      const curve = sampled(corners(...points), 60);
      return makeCurve(
        curve.timesSeconds,
        curve.tempsC.map((temp) => temp + random()),
      );
    });

  it("are the same at another time of day, for any firing", () => {
    fc.assert(
      fc.property(anyFiring, fc.integer({ min: -1e6, max: 1e6 }), (curve, seconds) => {
        const here = foundSegments(curve);
        const there = foundSegments(shifted(curve, seconds));
        expect(there.map((s) => s.kind)).toEqual(here.map((s) => s.kind));
        there.forEach((s, i) => {
          expect(s.startSeconds - seconds).toBeCloseTo(here[i]?.startSeconds as number, 3);
          expect(s.rateCPerHour).toBeCloseTo(here[i]?.rateCPerHour as number, 3);
        });
      }),
      { numRuns: 30 },
    );
  });

  it("move with an offset of the thermocouple and nothing else, for any firing", () => {
    fc.assert(
      fc.property(anyFiring, fc.integer({ min: -40, max: 40 }), (curve, delta) => {
        const here = foundSegments(curve);
        const there = foundSegments(offsetBy(curve, delta));
        expect(there.map((s) => s.kind)).toEqual(here.map((s) => s.kind));
        there.forEach((s, i) => {
          expect(s.startSeconds).toBeCloseTo(here[i]?.startSeconds as number, 3);
          expect(s.fromC - delta).toBeCloseTo(here[i]?.fromC as number, 3);
        });
      }),
      { numRuns: 30 },
    );
  });

  it("follow one another without overlap and cover every stretch, for any firing", () => {
    fc.assert(
      fc.property(anyFiring, (curve) => {
        const segments = foundSegments(curve);
        expect(segments[0]?.startSeconds).toBe(curve.timesSeconds[0]);
        expect(segments.at(-1)?.endSeconds).toBe(curve.timesSeconds.at(-1));
        segments.slice(1).forEach((segment, i) => {
          expect(segment.startSeconds).toBe(segments[i]?.endSeconds);
          expect(segment.endSeconds).toBeGreaterThan(segment.startSeconds);
        });
      }),
      { numRuns: 30 },
    );
  });
});
