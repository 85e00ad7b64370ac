import type { ConeSeries } from "../cones/cone.ts";
import { kilnHeatworkOf } from "../cones/usualOffset.ts";
import type { WitnessOffset } from "../cones/witnessOffset.ts";
import type { Curve } from "../curve/Curve.ts";
import { peakOf } from "../curve/peakOf.ts";
import { crossingsOf } from "../ware/crossingsOf.ts";
import type { ZoneReview } from "./foundZone.ts";
import { foundSegments } from "./segments.ts";
import { type KnownWire, usualOffsetOf } from "./thermocoupleWire.ts";

/** How near the peak counts as being there [K]. */
export const NEAR_PEAK_K = 5;

/** How far one reading may stand above what both its sides lead to before it is no peak [K]. */
const LONE_READING_K = 5;

/** One thermocouple's firing: peak, heatwork, ramps and holds, and both inversions, both ways, not judged yet. */
export function zoneReview(
  name: string,
  curve: Curve,
  options: {
    readonly series: ConeSeries;
    /** From witness cones; null where none stood by this thermocouple. */
    readonly witnessed: Pick<WitnessOffset, "offsetK" | "sigmaK"> | null;
    /** By which the uncertainty of the cone is reckoned; the usual one when it is not known. */
    readonly wire?: KnownWire | null;
  },
): ZoneReview {
  const peak = firmPeak(curve);
  const last = curve.tempsC.length - 1;
  return {
    name,
    curve,
    peakC: peak.tempC,
    peakAtSeconds: peak.seconds,
    secondsWithinFiveOfPeak: secondsAbove(curve, peak.tempC - NEAR_PEAK_K),
    lastReadingC: curve.tempsC[last]!,
    lastReadingAtSeconds: curve.timesSeconds[last]!,
    heatwork: kilnHeatworkOf(curve, {
      series: options.series,
      offsetK: options.witnessed?.offsetK ?? null,
      offsetSigmaK:
        options.witnessed?.sigmaK ?? usualOffsetOf(options.wire ?? null, peak.tempC).sigmaK,
    }),
    segments: foundSegments(curve),
    crossings: crossingsOf(curve),
  };
}

/**
 * The peak, unless it is a lone reading that neither side leads to; then the middle one of three.
 * The lone reading must stand more than 5 °C above the straight continuation from both sides.
 */
export function firmPeak(curve: Curve): { readonly tempC: number; readonly seconds: number } {
  const { index, tempC, seconds } = peakOf(curve);
  const temp = (i: number): number | undefined => curve.tempsC[i];
  const before = temp(index - 1);
  const after = temp(index + 1);
  if (before === undefined || after === undefined) return { tempC, seconds };
  const fromBefore = before + Math.max(0, before - (temp(index - 2) ?? before));
  const fromAfter = after + Math.max(0, after - (temp(index + 2) ?? after));
  const isLone = tempC - Math.max(fromBefore, fromAfter) > LONE_READING_K;
  return isLone ? highestOfMedians(curve) : { tempC, seconds };
}

function highestOfMedians(curve: Curve): { readonly tempC: number; readonly seconds: number } {
  const { timesSeconds, tempsC } = curve;
  let best = { tempC: Number.NEGATIVE_INFINITY, seconds: 0 };
  for (let i = 1; i + 1 < tempsC.length; i++) {
    const a = tempsC[i - 1]!;
    const b = tempsC[i]!;
    const c = tempsC[i + 1]!;
    const middle = Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    if (middle > best.tempC) best = { tempC: middle, seconds: timesSeconds[i]! };
  }
  return best;
}

/** Time spent at or above a temperature [s]; gaps do not count. */
export function secondsAbove(curve: Curve, tempC: number): number {
  const { timesSeconds, tempsC } = curve;
  const gapStarts = new Set(curve.gaps.map((gap) => gap.fromSeconds));
  let total = 0;
  for (let i = 0; i + 1 < tempsC.length; i++) {
    const here = tempsC[i]! - tempC;
    const there = tempsC[i + 1]! - tempC;
    if (!(here >= 0 || there >= 0)) continue;
    const from = timesSeconds[i]!;
    if (gapStarts.has(from)) continue;
    const span = timesSeconds[i + 1]! - from;
    if (here >= 0 && there >= 0) total += span;
    else total += (span * Math.max(here, there)) / Math.abs(here - there);
  }
  return total;
}
