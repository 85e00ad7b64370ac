import type { CoolingLimit } from "../../../src/core/charts/coolingLimits.ts";
import { type Curve, type Gap, makeCurve, peakOf, shifted } from "../../../src/core/curve/Curve.ts";
import type { Band } from "../../../src/core/curve/edgeTimes.ts";

/** Invented bands, wide enough to see. */
export const SAMPLE_BANDS: readonly Band[] = [
  { name: "quartz inversion", lowC: 550, highC: 600 },
  { name: "cristobalite inversion", lowC: 200, highC: 270 },
];

/** Invented guides: the first is broken by the sample zones, the second is kept. */
export const SAMPLE_LIMITS: readonly CoolingLimit[] = SAMPLE_BANDS.map((band, i) => ({
  band,
  limitCPerHour: i === 0 ? 45 : 60,
  label: `guide, ${band.name}`,
  isBroken: i === 0,
}));

/** An invented schedule to cone 5: hours and °C at its corners. */
const CORNERS: readonly (readonly [number, number])[] = [
  [0, 20],
  [1.5, 110],
  [2, 110],
  [8.5, 1080],
  [10.25, 1186],
  [10.42, 1186],
  [13.4, 620],
  [15.4, 520],
  [18.4, 280],
  [21.2, 170],
];

/** The plan of the invented firing. */
export function samplePlan(): Curve {
  return makeCurve(
    CORNERS.map(([hours]) => hours * 3600),
    CORNERS.map(([, tempC]) => tempC),
  );
}

/** How an invented log differs from the plan. */
interface SampleZone {
  readonly hotterK: number;
  readonly laterSeconds: number;
  readonly seed: number;
  readonly stepSeconds?: number;
  readonly gapHours?: readonly [number, number];
}

/** A measured Curve: the plan smoothed, shifted and noisy, 24 h long, the same for the same seed. */
function sampleZone(zone: SampleZone): Curve {
  const random = seeded(zone.seed);
  const step = zone.stepSeconds ?? 60;
  const [gapFrom, gapTo] = zone.gapHours ?? [-1, -1];
  const times: number[] = [];
  const temps: number[] = [];
  let tempC = 20;
  for (let seconds = 0; seconds <= 24 * 3600; seconds += step) {
    const target =
      planAt((seconds - zone.laterSeconds) / 3600) + zone.hotterK * Math.min(1, tempC / 900);
    tempC += (target - tempC) * (1 - Math.exp(-step / 300));
    const hours = seconds / 3600;
    if (hours > gapFrom && hours < gapTo) continue;
    times.push(seconds);
    temps.push(Math.round((tempC + (random() + random() - 1) * 1.5) * 10) / 10);
  }
  return makeCurve(times, temps, gapsLongerThan(times, step * 1.5));
}

/** Two thermocouples of one invented firing, with a gap while the logger was unplugged. */
export function sampleZones() {
  return [
    {
      name: "top",
      curve: sampleZone({ hotterK: 6, laterSeconds: 240, seed: 7, gapHours: [5, 7] }),
    },
    {
      name: "bottom",
      curve: sampleZone({ hotterK: -14, laterSeconds: 700, seed: 11, gapHours: [5, 7] }),
    },
  ];
}

/** An invented firing moved so that its peak is at 0 s. */
export function alignedSample(name: string, hotterK: number) {
  const curve = sampleZone({ hotterK, laterSeconds: 300, seed: 5 });
  return { name, curve: shifted(curve, -peakOf(curve).seconds) };
}

/** Heatwork of an invented cone that goes down at `downHours`, every minute of the sample firing. */
export function sampleTrace(cone: string, downHours: number) {
  const timesSeconds = Float64Array.from({ length: 1441 }, (_, i) => i * 60);
  const heatwork = timesSeconds.map((seconds) => {
    const hours = Math.min(seconds / 3600, 10.5);
    return Math.exp((hours - downHours) * 2.6);
  });
  return { cone, timesSeconds, heatwork };
}

function planAt(hours: number): number {
  for (let i = 1; i < CORNERS.length; i++) {
    const [fromHours, fromC] = CORNERS[i - 1] as readonly [number, number];
    const [toHours, toC] = CORNERS[i] as readonly [number, number];
    if (hours <= toHours)
      return fromC + ((toC - fromC) * Math.max(0, hours - fromHours)) / (toHours - fromHours);
  }
  return 20 + 150 * Math.exp(-(hours - 21.2) / 5);
}

function gapsLongerThan(times: readonly number[], seconds: number): readonly Gap[] {
  return times.slice(1).flatMap((toSeconds, i) => {
    const fromSeconds = times[i] as number;
    return toSeconds - fromSeconds > seconds ? [{ fromSeconds, toSeconds }] : [];
  });
}

/** Numbers in 0–1 from a multiplicative generator (Lehmer, 48271 modulo 2³¹ − 1). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}
