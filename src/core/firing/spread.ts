import type { Curve } from "../curve/Curve.ts";
import { temperatureAt } from "../curve/temperatureAt.ts";
import type { ZoneReview, ZoneSpread } from "./foundZone.ts";
import { hottestZone } from "./hottestZone.ts";

/** Most moments at which the zones are compared. */
const MOST_MOMENTS = 4000;

/**
 * How far the zones were apart, at moments at which at least two of them were measured.
 * @returns null with one zone, or when no two were ever measured at one time.
 */
export function zoneSpread(zones: readonly ZoneReview[]): ZoneSpread | null {
  const [first] = zones;
  if (!first || zones.length < 2) return null;
  const curves = zones.map((zone) => zone.curve);
  let largest: { readonly apart: number; readonly seconds: number } | null = null;
  for (const seconds of moments(first.curve)) {
    const apart = apartAt(curves, seconds);
    if (apart !== null && (largest === null || apart > largest.apart)) largest = { apart, seconds };
  }
  const atPeak = apartAt(curves, hottestZone(zones).peakAtSeconds);
  if (largest === null || atPeak === null) return null;
  return {
    largestC: Math.max(largest.apart, atPeak),
    largestAtSeconds: atPeak > largest.apart ? hottestZone(zones).peakAtSeconds : largest.seconds,
    atPeakC: atPeak,
  };
}

function moments(curve: Curve): readonly number[] {
  const every = Math.ceil(curve.timesSeconds.length / MOST_MOMENTS);
  const found: number[] = [];
  for (let i = 0; i < curve.timesSeconds.length; i += every) found.push(curve.timesSeconds[i]!);
  return found;
}

function apartAt(curves: readonly Curve[], seconds: number): number | null {
  const temps = curves
    .map((curve) => temperatureAt(curve, seconds))
    .filter((temp) => temp !== null);
  return temps.length < 2 ? null : Math.max(...temps) - Math.min(...temps);
}
