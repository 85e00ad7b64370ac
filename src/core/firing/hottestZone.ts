import type { ZoneReview } from "./foundZone.ts";

/**
 * The zone with the highest peak; the first of them when several are equal.
 * @throws RangeError without any zone.
 */
export function hottestZone(zones: readonly ZoneReview[]): ZoneReview {
  const [first, ...others] = zones;
  if (!first) throw new RangeError("hottestZone: no zone");
  return others.reduce((best, zone) => (zone.peakC > best.peakC ? zone : best), first);
}
