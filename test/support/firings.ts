import type { Curve } from "../../src/core/curve/Curve.ts";
import type { LogFault, LogReading } from "../../src/core/log/reading/LogReading.ts";
import { corners, sampled } from "./curves.ts";

/** A log as read, with one channel for each Curve, begun on 14 March 2026 at 17:00. */
export function readingOf(
  curves: Readonly<Record<string, Curve>>,
  faults: readonly LogFault[] = [],
): LogReading {
  const count = Math.max(...Object.values(curves).map((curve) => curve.tempsC.length));
  return {
    name: "firing.csv",
    decisions: [],
    rows: { total: count, accepted: count, rejected: [] },
    unit: "C",
    channels: Object.entries(curves).map(([name, curve]) => ({
      name,
      role: "temperature",
      curve,
      readings: curve.tempsC.length,
      dropped: 0,
    })),
    start: "2026-03-14T17:00:00",
    startOfDaySeconds: 17 * 3600,
    intervalSeconds: 60,
    gaps: Object.values(curves)[0]?.gaps ?? [],
    faults,
  };
}

/** Up in 8 h to a peak, then down at steady rates through both inversions, read every minute. */
export function firing(given: {
  readonly peakC?: number;
  readonly quartzCPerHour?: number;
  readonly cristobaliteCPerHour?: number;
  readonly lastC?: number;
}): Curve {
  const { peakC = 1190, quartzCPerHour = 40, cristobaliteCPerHour = 40, lastC = 60 } = given;
  const points: [number, number][] = [
    [0, 20],
    [6, peakC - 110],
    [8, peakC],
    [8 + (peakC - 640) / 200, 640],
  ];
  for (const [toC, rate] of [
    [500, quartzCPerHour],
    [300, 100],
    [150, cristobaliteCPerHour],
    [lastC, 30],
  ] as const) {
    const [hours, fromC] = points.at(-1) as [number, number];
    if (fromC > Math.max(toC, lastC))
      points.push([hours + (fromC - Math.max(toC, lastC)) / rate, Math.max(toC, lastC)]);
  }
  return sampled(corners(...points), 60);
}
