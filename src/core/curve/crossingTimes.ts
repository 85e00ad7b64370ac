import type { Direction } from "./Band.ts";
import type { Curve } from "./Curve.ts";

/** A moment at which a Curve passes a temperature. */
export interface CrossingTime {
  readonly seconds: number;
  readonly direction: Direction;
}

/**
 * Every time a Curve passes a temperature [°C], in order, each on its straight piece.
 * A point exactly on the temperature counts as above it. Nothing is found inside gaps.
 */
export function crossingTimes(curve: Curve, tempC: number): readonly CrossingTime[] {
  const { timesSeconds, tempsC } = curve;
  const gapStarts = new Set(curve.gaps.map((gap) => gap.fromSeconds));
  const found: CrossingTime[] = [];
  for (let i = 0; i + 1 < tempsC.length; i++) {
    const here = tempsC[i]!;
    const there = tempsC[i + 1]!;
    if (here >= tempC === there >= tempC || gapStarts.has(timesSeconds[i]!)) continue;
    const from = timesSeconds[i]!;
    const to = timesSeconds[i + 1]!;
    found.push({
      seconds: from + ((tempC - here) / (there - here)) * (to - from),
      direction: there > here ? "heating" : "cooling",
    });
  }
  return found;
}
