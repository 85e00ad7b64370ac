import fc from "fast-check";
import { type Curve, makeCurve } from "../../src/core/curve/Curve.ts";

/** A Curve from `[hours, °C]` corners. */
export function corners(...points: readonly (readonly [hours: number, tempC: number])[]): Curve {
  return makeCurve(
    points.map(([hours]) => hours * 3600),
    points.map(([, tempC]) => tempC),
  );
}

/** The same Curve, read every so many seconds. */
export function sampled(curve: Curve, stepSeconds: number): Curve {
  const times: number[] = [];
  const temps: number[] = [];
  const last = curve.timesSeconds.at(-1) as number;
  let piece = 0;
  for (let t = curve.timesSeconds[0] as number; t <= last; t += stepSeconds) {
    while ((curve.timesSeconds[piece + 1] as number) < t) piece++;
    const from = curve.timesSeconds[piece] as number;
    const to = curve.timesSeconds[piece + 1] as number;
    const share = (t - from) / (to - from);
    times.push(t);
    temps.push(
      (curve.tempsC[piece] as number) * (1 - share) + (curve.tempsC[piece + 1] as number) * share,
    );
  }
  return makeCurve(times, temps);
}

/** Any Curve of 2 to 60 points with whole-second steps. */
export const anyCurve: fc.Arbitrary<Curve> = fc
  .array(
    fc.tuple(fc.integer({ min: 1, max: 7200 }), fc.double({ min: 0, max: 1300, noNaN: true })),
    {
      minLength: 2,
      maxLength: 60,
    },
  )
  .map((steps) => {
    let time = 0;
    const times = steps.map(([step]) => {
      time += step;
      return time;
    });
    return makeCurve(
      times,
      steps.map(([, temp]) => temp),
    );
  });
