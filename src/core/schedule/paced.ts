import type { AssumedKiln } from "../kiln/AssumedKiln.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { peakSegment } from "./coneAim.ts";
import { freeSpeed } from "./freeRamp.ts";
import type { Schedule, Segment } from "./Schedule.ts";
import { temperatureDown, temperatureUp } from "./wholeUnits.ts";

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
