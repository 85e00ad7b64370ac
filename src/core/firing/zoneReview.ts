import type { ConeSeries } from "../cones/cone.ts";
import { kilnHeatworkOf } from "../cones/usualOffset.ts";
import type { WitnessOffset } from "../cones/witnessOffset.ts";
import { type Curve, peakOf, shifted, temperatureAt } from "../curve/Curve.ts";
import { crossingTimes } from "../curve/edgeTimes.ts";
import { expandSchedule } from "../schedule/expandSchedule.ts";
import type { Expansion, Schedule } from "../schedule/Schedule.ts";
import { crossingsOf } from "../ware/inversions.ts";
import {
  hottestZone,
  type PlanComparison,
  type ZoneReview,
  type ZoneSpread,
} from "./FiringFacts.ts";
import { foundSegments } from "./segments.ts";
import { type KnownWire, usualOffsetOf } from "./thermocoupleBehaviour.ts";

/** How near the peak counts as being there [K]. */
const NEAR_PEAK_K = 5;

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

/** How far above the warmer of the two starts both are lined up [K]. */
const ABOVE_START_K = 30;

/** Step between the moments at which both are compared [s]; the area rule asks for 1 to 5 min. */
const STEP_SECONDS = 60;

/**
 * How far a zone went from its plan.
 * Both are lined up where they pass the same low temperature on the way up. Compared minute by
 * minute over the time that both have, up to the first fall that the plan leaves to the kiln: from
 * there on the plan's clock is only assumed. Area as in furnace-curve conformity,
 * (measured − planned) / planned, in °C · time.
 *
 * @returns null when they share no rise, or less than a minute of it.
 * @see SOURCES["imo-ftp-2010"], 8.3.1.3
 */
export function comparedWithPlan(zone: ZoneReview, plan: Schedule): PlanComparison | null {
  const expansion = expandSchedule(plan);
  const shiftSeconds = planShiftSeconds(zone.curve, expansion);
  if (shiftSeconds === null) return null;
  const planned = shifted(expansion.curve, shiftSeconds);
  const differences = differencesOf(zone.curve, planned, comparedSpan(expansion, shiftSeconds));
  if (differences === null) return null;
  return {
    title: plan.title,
    planned,
    shiftSeconds,
    zone: zone.name,
    ...differences,
    peakDeviationC: zone.peakC - peakOf(planned).tempC,
    peakDelaySeconds: firstNear(zone.curve, zone.peakC) - firstNear(planned, peakOf(planned).tempC),
  };
}

/** Seconds by which a plan is moved so that it passes a low temperature when the kiln did; null when they share no rise. */
export function planShiftSeconds(curve: Curve, expansion: Expansion): number | null {
  const startsC = [curve.tempsC[0]!, expansion.curve.tempsC[0]!];
  const assumed: number[] = [];
  for (const row of expansion.timeline) {
    if (!row.assumedRate) break;
    assumed.push(row.toC);
  }
  const lowC = Math.max(...startsC.map((tempC) => tempC + ABOVE_START_K), ...assumed);
  const rise = (of: Curve): number | undefined =>
    crossingTimes(of, lowC).find((crossing) => crossing.direction === "heating")?.seconds;
  const measured = rise(curve);
  const planned = rise(expansion.curve);
  return measured === undefined || planned === undefined ? null : measured - planned;
}

/** The part of the plan, on the log's clock, whose times are the plan's own. */
function comparedSpan(
  expansion: Expansion,
  shiftSeconds: number,
): { readonly fromSeconds: number; readonly toSeconds: number } {
  const firstOwn = expansion.timeline.find((row) => !row.assumedRate);
  const from = firstOwn?.startSeconds ?? 0;
  const firstFall = expansion.timeline.find(
    (row) => row.assumedRate && row.startSeconds > from && row.toC < row.fromC,
  );
  const end = firstFall?.startSeconds ?? expansion.curve.timesSeconds.at(-1)!;
  return { fromSeconds: from + shiftSeconds, toSeconds: end + shiftSeconds };
}

function differencesOf(
  curve: Curve,
  planned: Curve,
  span: { readonly fromSeconds: number; readonly toSeconds: number },
): Pick<
  PlanComparison,
  "largestDeviationC" | "largestDeviationAtSeconds" | "areaDeviation"
> | null {
  const from = Math.max(span.fromSeconds, curve.timesSeconds[0]!);
  let largest = { deviation: 0, seconds: from };
  let between = 0;
  let under = 0;
  for (let seconds = from; seconds <= span.toSeconds; seconds += STEP_SECONDS) {
    const measuredC = temperatureAt(curve, seconds);
    const plannedC = temperatureAt(planned, seconds);
    if (measuredC === null || plannedC === null) continue;
    const deviation = measuredC - plannedC;
    between += deviation;
    under += plannedC;
    if (Math.abs(deviation) > Math.abs(largest.deviation)) largest = { deviation, seconds };
  }
  if (!(under > 0)) return null;
  return {
    largestDeviationC: largest.deviation,
    largestDeviationAtSeconds: largest.seconds,
    areaDeviation: between / under,
  };
}

/** When a Curve first comes within 5 °C of a peak [s]. */
function firstNear(curve: Curve, peakC: number): number {
  return crossingTimes(curve, peakC - NEAR_PEAK_K)[0]?.seconds ?? peakOf(curve).seconds;
}

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
