import type { TemperatureUnit } from "../units/temperature.ts";
import type { Schedule, Segment } from "./Schedule.ts";
import { rateDown, temperatureDown, temperatureNear, temperatureUp } from "./wholeUnits.ts";

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
