import { describe, expect, it } from "vitest";
import { makeCurve } from "../../../src/core/curve/Curve.ts";
import { fellByItself } from "../../../src/core/firing/powerLoss.ts";
import { foundSegments } from "../../../src/core/firing/segments.ts";
import { seeded } from "../../support/demo/seeded.ts";

/** A climb in 8 h, a hold, and a fall: by heat lost in each of so many steps, or as it is told to. */
function fired(
  fallCPerHour: (tempC: number) => number,
  noiseK = 0,
): ReturnType<typeof foundSegments> {
  const random = seeded(3);
  const [times, temps]: [number[], number[]] = [[], []];
  const put = (seconds: number, tempC: number) => {
    times.push(seconds);
    temps.push(tempC + noiseK * random.normal());
  };
  for (let minute = 0; minute < 480; minute++) put(60 * minute, 20 + (1160 * minute) / 480);
  for (let minute = 480; minute < 500; minute++) put(60 * minute, 1180);
  let tempC = 1180;
  for (let minute = 500; tempC > 60 && minute < 4000; minute++) {
    put(60 * minute, tempC);
    tempC -= fallCPerHour(tempC) / 60;
  }
  return foundSegments(makeCurve(times, temps));
}

/** Heat lost by conduction and radiation, as a kiln of brick does [°C/h]. */
const natural = (times: number) => (tempC: number) =>
  times * 3600 * (3.7e-5 * (tempC - 20) + 4.2e-8 * 5.67e-8 * ((tempC + 273) ** 4 - 293 ** 4));

const falls = (segments: ReturnType<typeof foundSegments>) =>
  fellByItself(segments).filter(({ kind }) => kind === "fell by itself");

describe("a kiln that falls by itself", () => {
  it.each([
    [0.5, 0],
    [1, 0],
    [1, 1],
    [2, 0.5],
    [4, 0.5],
  ])(
    "%d times as fast as a large one, noise %d K: one line instead of many ramps",
    (times, noise) => {
      const segments = fired(natural(times), noise);
      const down = segments.filter(({ rateCPerHour, kind }) => kind === "ramp" && rateCPerHour < 0);
      expect(down.length).toBeGreaterThan(4);
      const [fall, ...more] = falls(segments);
      expect(more.length).toBeLessThanOrEqual(1);
      expect((fall?.fromC ?? 0) - (fall?.toC ?? 0)).toBeGreaterThan(500);
    },
  );

  it("is told apart from a slow ramp in the middle of its fall", () => {
    const slow = (tempC: number) => (tempC < 640 && tempC > 500 ? 40 : natural(1)(tempC));
    const lines = fellByItself(fired(slow));
    const ramp = lines.find(({ kind, fromC }) => kind === "ramp" && fromC > 600 && fromC < 660);
    expect(ramp).toMatchObject({ kind: "ramp" });
  });

  it("is no steady ramp, however long", () => {
    expect(falls(fired(() => 60))).toEqual([]);
  });

  it("ends where the fall quickens: what the lid does is shown as it was found", () => {
    const opened = (tempC: number) => natural(tempC > 280 ? 1 : 5)(tempC);
    const lines = fellByItself(fired(opened));
    const own = lines.filter(({ kind }) => kind === "fell by itself");
    expect(own.every(({ toC }) => toC > 240)).toBe(true);
    expect(lines.filter(({ kind, toC }) => kind === "ramp" && toC < 250).length).toBeGreaterThan(0);
  });
});
