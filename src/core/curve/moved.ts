import { type Curve, type Gap, makeCurve } from "./Curve.ts";
import { lastAtOrBefore, temperatureAt } from "./temperatureAt.ts";

/** The same Curve, later by some seconds. */
export function shifted(curve: Curve, seconds: number): Curve {
  const move = (gap: Gap): Gap => ({
    fromSeconds: gap.fromSeconds + seconds,
    toSeconds: gap.toSeconds + seconds,
  });
  return makeCurve(
    curve.timesSeconds.map((time) => time + seconds),
    curve.tempsC,
    curve.gaps.map(move),
  );
}

/** The same Curve, warmer by a difference [K]: a thermocouple's offset applied. */
export function offsetBy(curve: Curve, deltaK: number): Curve {
  return makeCurve(
    curve.timesSeconds,
    curve.tempsC.map((temp) => temp + deltaK),
    curve.gaps,
  );
}

/**
 * The part of a Curve between two times [s], with interpolated ends; ends inside a gap move inward.
 * @returns null when fewer than two points are left.
 */
export function sliced(curve: Curve, fromSeconds: number, toSeconds: number): Curve | null {
  const times: number[] = [];
  const temps: number[] = [];
  const start = temperatureAt(curve, fromSeconds);
  if (start !== null) {
    times.push(fromSeconds);
    temps.push(start);
  }
  for (
    let i = lastAtOrBefore(curve.timesSeconds, fromSeconds) + 1;
    i < curve.timesSeconds.length && curve.timesSeconds[i]! <= toSeconds;
    i++
  ) {
    times.push(curve.timesSeconds[i]!);
    temps.push(curve.tempsC[i]!);
  }
  const end = temperatureAt(curve, toSeconds);
  if (end !== null && toSeconds > (times.at(-1) ?? Number.POSITIVE_INFINITY)) {
    times.push(toSeconds);
    temps.push(end);
  }
  if (times.length < 2) return null;
  const first = times[0]!;
  const last = times.at(-1)!;
  return makeCurve(
    times,
    temps,
    curve.gaps.filter((gap) => gap.fromSeconds >= first && gap.toSeconds <= last),
  );
}
