import type { AssumedKiln } from "../kiln/LearnedKiln.ts";
import {
  celsiusDeltaFromFahrenheitDelta,
  celsiusFromFahrenheit,
  fahrenheitDeltaFromCelsiusDelta,
  fahrenheitFromCelsius,
  type TemperatureUnit,
} from "../units/temperature.ts";
import { peakSegment } from "./coneAim.ts";
import { freeSpeed } from "./expandSchedule.ts";
import type { Schedule, Segment } from "./Schedule.ts";

/** A stretch of the firing and the most that it may be travelled at. */
export interface Pace {
  /** Where it begins and ends, in the order of travel [°C]: rising before the peak, falling after it. */
  readonly fromC: number;
  readonly toC: number;
  /** Positive [°C/h]. */
  readonly mostCPerHour: number;
  /** Why, for the segments that are slowed. */
  readonly why: string;
  /** Written down over the whole stretch, also where the kiln is slower by itself: that costs nothing. */
  readonly isAsked?: boolean;
}

/** Rates within this share of the most are left alone. */
const SAME_RATE = 1.0005;

/** Travel shorter than this is not cut off [K]. */
const SLIVER_K = 2;

/** A `free` ramp is slowed for no less than this [K]. */
const SHORTEST_K = 10;

/** A remainder of a programmed ramp is slowed too when that costs no more than this [s]. */
const CHEAP_SECONDS = 360;

/**
 * A schedule in which no ramp travels a stretch faster than a pace; ramps are cut at its ends.
 * `free` ramps are slowed only as far as the kiln is too fast; where it is slow enough by itself it
 * is left to itself. Left-over pieces that would save less than 6 min are slowed with the rest.
 */
export function paced(schedule: Schedule, pace: Pace, kiln: AssumedKiln): Schedule {
  const rising = pace.toC > pace.fromC;
  const peakAt = peakSegment(schedule)?.index ?? -1;
  let fromC = schedule.startC;
  const segments = schedule.segments.flatMap((segment, index) => {
    const startC = fromC;
    fromC = segment.toC;
    const concerned = segment.toC > startC === rising && index <= peakAt === rising;
    return concerned ? pieces({ segment, startC, kiln, unit: schedule.unit }, pace) : [segment];
  });
  return { ...schedule, segments: merged(segments, pace.why) };
}

interface Ramp {
  readonly segment: Segment;
  readonly startC: number;
  readonly kiln: AssumedKiln;
  readonly unit: TemperatureUnit;
}

function pieces(ramp: Ramp, pace: Pace): readonly Segment[] {
  const { segment, startC } = ramp;
  const sign = segment.toC > startC ? 1 : -1;
  const enterC = sign * Math.max(sign * startC, sign * pace.fromC);
  const edgeC = sign * Math.min(sign * segment.toC, sign * pace.toC);
  if (sign * (edgeC - enterC) < SLIVER_K / 4) return [segment];
  const isFree = segment.rateCPerHour === "free";
  const leaveC =
    pace.isAsked && isFree ? edgeC : lastTooFastC(ramp, { enterC, edgeC }, pace.mostCPerHour);
  if (leaveC === null) return [segment];
  const keepsStart = isWorthKeeping(ramp, sign * (enterC - startC), pace.mostCPerHour);
  const keepsEnd = isWorthKeeping(ramp, sign * (segment.toC - leaveC), pace.mostCPerHour);
  const slow = { rateCPerHour: sign * pace.mostCPerHour, why: pace.why };
  return [
    ...(keepsStart ? [{ ...segment, toC: enterC, holdSeconds: 0 }] : []),
    keepsEnd ? { ...slow, toC: leaveC, holdSeconds: 0 } : { ...segment, ...slow },
    ...(keepsEnd ? [segment] : []),
  ];
}

/** Where travel stops being too fast, in whole degrees; null when it never is. */
function lastTooFastC(
  ramp: Ramp,
  stretch: { readonly enterC: number; readonly edgeC: number },
  most: number,
): number | null {
  const { segment, kiln, unit } = ramp;
  const { enterC, edgeC } = stretch;
  const tooFast = most * SAME_RATE;
  if (segment.rateCPerHour !== "free")
    return Math.abs(segment.rateCPerHour) > tooFast ? edgeC : null;
  const rising = edgeC > enterC;
  const steps = Math.ceil(Math.abs(edgeC - enterC));
  for (let k = steps; k >= 0; k--) {
    const atC = enterC + ((edgeC - enterC) * k) / steps;
    if (freeSpeed(kiln, atC, rising) <= tooFast) continue;
    if (k === steps) return edgeC;
    const nextC = enterC + ((edgeC - enterC) * (k + 1)) / steps;
    return rising
      ? Math.min(edgeC, temperatureUp(Math.max(nextC, enterC + SHORTEST_K), unit))
      : Math.max(edgeC, temperatureDown(Math.min(nextC, enterC - SHORTEST_K), unit));
  }
  return null;
}

function isWorthKeeping(ramp: Ramp, widthK: number, most: number): boolean {
  const { rateCPerHour } = ramp.segment;
  if (widthK < SLIVER_K) return false;
  if (rateCPerHour === "free") return true;
  return widthK * (1 / most - 1 / Math.abs(rateCPerHour)) * 3600 > CHEAP_SECONDS;
}

function merged(segments: readonly Segment[], why: string): readonly Segment[] {
  return segments.filter((segment, index) => {
    const next = segments[index + 1];
    return !(
      next &&
      segment.holdSeconds === 0 &&
      segment.rateCPerHour !== "free" &&
      segment.rateCPerHour === next.rateCPerHour &&
      segment.why === why &&
      next.why === why
    );
  });
}

/** Room for what floating point leaves behind a whole number. */
const WHOLE = 1e-6;

/** The next temperature at or above [°C] that is a whole number of steps in a unit's degrees. */
export function temperatureUp(tempC: number, unit: TemperatureUnit, step: number = 1): number {
  return stepped(tempC, { unit, step, round: (value) => Math.ceil(value - WHOLE) });
}

/** The next temperature at or below [°C] that is a whole number of steps in a unit's degrees. */
export function temperatureDown(tempC: number, unit: TemperatureUnit, step: number = 1): number {
  return stepped(tempC, { unit, step, round: (value) => Math.floor(value + WHOLE) });
}

/** The next slower rate [°C/h, positive] that is a whole number of steps a unit counts; at least 1 step. */
export function rateDown(rateCPerHour: number, unit: TemperatureUnit, step: number = 1): number {
  const rate = unit === "C" ? rateCPerHour : fahrenheitDeltaFromCelsiusDelta(rateCPerHour);
  const whole = Math.max(1, Math.floor(rate / step + WHOLE)) * step;
  return unit === "C" ? whole : celsiusDeltaFromFahrenheitDelta(whole);
}

function stepped(
  tempC: number,
  by: {
    readonly unit: TemperatureUnit;
    readonly step: number;
    readonly round: (value: number) => number;
  },
): number {
  const shown = by.unit === "C" ? tempC : fahrenheitFromCelsius(tempC);
  const whole = by.round(shown / by.step) * by.step;
  return by.unit === "C" ? whole : celsiusFromFahrenheit(whole);
}

/** The nearest temperature [°C] that is a whole number of degrees of a unit. */
function temperatureNear(tempC: number, unit: TemperatureUnit): number {
  return stepped(tempC, { unit, step: 1, round: Math.round });
}

/** Rates nearer than this are one [°C/h]; whole degrees of either unit are farther apart. */
const SAME_C_PER_HOUR = 1e-6;

/** Longest reason that a file takes. */
const LONGEST_WHY = 300;

/**
 * A schedule as a controller takes it: every target the nearest whole degree of its unit, every rate
 * the next slower whole degree an hour, one at least. A segment that then goes nowhere gives its hold
 * to the one before it. Idempotent.
 */
export function wholeSchedule(schedule: Schedule): Schedule {
  const { unit, startC } = schedule;
  let fromC = startC;
  const segments: Segment[] = [];
  let wasC = startC;
  for (const segment of schedule.segments) {
    const rising = segment.toC > wasC;
    wasC = segment.toC;
    const last = segments.at(-1);
    const toC = targetOf(segment.toC, { unit, rising, isFirst: last === undefined });
    if (last !== undefined && Math.abs(toC - fromC) < SAME_C_PER_HOUR) {
      segments[segments.length - 1] = {
        ...last,
        holdSeconds: last.holdSeconds + segment.holdSeconds,
        why: bothReasons(last, segment),
      };
      continue;
    }
    segments.push({ ...segment, toC, rateCPerHour: wholeRate(segment.rateCPerHour, unit) });
    fromC = toC;
  }
  return { ...schedule, segments };
}

/** The same with no more segments than it needs: neighbours of one rate and way are one. Idempotent. */
export function tidied(schedule: Schedule): Schedule {
  const joined: Segment[] = [];
  let fromC = schedule.startC;
  let wasRising = false;
  for (const segment of schedule.segments) {
    const rising = segment.toC > fromC;
    const last = joined.at(-1);
    fromC = segment.toC;
    if (last !== undefined && rising === wasRising && goOnAlike(last, segment))
      joined[joined.length - 1] = { ...segment, why: bothReasons(last, segment) };
    else joined.push(segment);
    wasRising = rising;
  }
  return joined.length === schedule.segments.length ? schedule : { ...schedule, segments: joined };
}

/** A first segment must leave the start, so it is rounded away from it. */
function targetOf(
  tempC: number,
  by: { readonly unit: TemperatureUnit; readonly rising: boolean; readonly isFirst: boolean },
): number {
  const { unit, rising, isFirst } = by;
  if (!isFirst) return temperatureNear(tempC, unit);
  return rising ? temperatureUp(tempC, unit) : temperatureDown(tempC, unit);
}

function wholeRate(rate: Segment["rateCPerHour"], unit: TemperatureUnit): Segment["rateCPerHour"] {
  return typeof rate === "string" ? rate : Math.sign(rate) * rateDown(Math.abs(rate), unit);
}

function goOnAlike(last: Segment, next: Segment): boolean {
  if (last.holdSeconds > 0) return false;
  const [a, b] = [last.rateCPerHour, next.rateCPerHour];
  if (typeof a === "string" || typeof b === "string") return a === b;
  return Math.abs(a - b) < SAME_C_PER_HOUR;
}

function bothReasons(first: Segment, second: Segment): string | null {
  const reasons = [...new Set([first.why, second.why].filter((why) => why !== null))];
  const both = reasons.join("; ");
  return reasons.length === 0 ? null : both.length <= LONGEST_WHY ? both : reasons[0]!;
}
