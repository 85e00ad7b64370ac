import { failed, ok, type Problem, type Result } from "../problem.ts";
import { printRate, printTemperature } from "../text/quantities.ts";
import { shown } from "../units/quantity.ts";
import {
  parseDuration,
  parseRate,
  parseTemperature,
  type TemperatureUnit,
} from "../units/temperature.ts";
import { isFreeRate } from "./expandSchedule.ts";
import type { ScheduleFile, Segment } from "./Schedule.ts";

/** Coldest target that a schedule may name [°C]. */
const COLDEST_C = -20;
/** Hottest target that a schedule may name [°C]: above it few elements of a studio kiln live. */
export const HOTTEST_C = 1400;

/** Rates above this are slips of the pen [°C/h]. */
export const FASTEST_C_PER_HOUR = 3000;

/** Holds above this are slips of the pen [s]. */
const LONGEST_HOLD_SECONDS = 7 * 24 * 3600;

/** A ramp shorter than this goes nowhere [K]. */
const NOWHERE_K = 0.05;

type FileSegment = ScheduleFile["segments"][number];

/** What the segments of a file are read with. */
interface SegmentContext {
  readonly unit: TemperatureUnit;
  /** Where the kiln starts [°C], or null when that could not be read. */
  readonly startC: number | null;
  /** Name of a place in the file: `a.yaml: segments[2].rate, line 9`. */
  readonly placeOf: (path: readonly (string | number)[]) => string;
}

/**
 * The segments of a file in canonical units, directions worked out from the targets.
 * @returns every problem of every segment, together.
 */
export function parseSegments(
  segments: readonly FileSegment[],
  context: SegmentContext,
): Result<readonly Segment[]> {
  const problems: Problem[] = [];
  const parsed: Segment[] = [];
  let fromC = context.startC;
  segments.forEach((segment, index) => {
    const where = (key: string) => context.placeOf(["segments", index, key]);
    const to = targetOf(segment.to, { unit: context.unit, where: where("to") });
    const ramp = { fromC, toC: to.ok ? to.value : null };
    const rate = rateOf(segment.rate, { ...ramp, unit: context.unit, where: where("rate") });
    const hold = holdOf(segment.hold, where("hold"));
    const nowhere = goesNowhere(ramp, index, { unit: context.unit, where: where("to") });
    for (const part of [to, rate, hold, nowhere]) if (!part.ok) problems.push(...part.problems);
    if (to.ok && rate.ok && hold.ok)
      parsed.push({
        toC: to.value,
        rateCPerHour: rate.value,
        holdSeconds: hold.value,
        why: segment.why ?? null,
      });
    fromC = ramp.toC;
  });
  return problems.length > 0 ? failed(...problems) : ok(parsed);
}

interface Place {
  readonly unit: TemperatureUnit;
  readonly where: string;
}

/** A temperature [°C] inside the range that a schedule may name. */
export function targetOf(value: number | string, place: Place): Result<number> {
  const temperature = parseTemperature(value, place);
  if (!temperature.ok) return temperature;
  const tempC = temperature.value;
  if (tempC >= COLDEST_C && tempC <= HOTTEST_C) return temperature;
  const hot = tempC > HOTTEST_C;
  const asFahrenheit = hot && place.unit === "C" && (tempC - 32) / 1.8 <= HOTTEST_C;
  return failed({
    code: hot ? "schedule/too-hot" : "schedule/too-cold",
    what: `the temperature is ${printTemperature(tempC, place.unit)}`,
    where: place.where,
    expected: `between ${printTemperature(COLDEST_C, place.unit)} and ${printTemperature(HOTTEST_C, place.unit)}`,
    fix: asFahrenheit
      ? `write "${tempC} F" or unit: F, if it is in Fahrenheit`
      : "check the number and its unit",
  });
}

interface Ramp {
  readonly fromC: number | null;
  readonly toC: number | null;
}

function goesNowhere(ramp: Ramp, index: number, place: Place): Result<null> {
  if (ramp.fromC === null || ramp.toC === null || Math.abs(ramp.toC - ramp.fromC) >= NOWHERE_K)
    return ok(null);
  return failed({
    code: "schedule/goes-nowhere",
    what: `the segment stays at ${printTemperature(ramp.toC, place.unit)}, where it begins`,
    where: place.where,
    expected: "a target other than the temperature before it",
    fix:
      index === 0
        ? "give the first segment a target away from the start, and hold there"
        : `remove it and add its hold to segments[${index - 1}]`,
  });
}

function rateOf(value: number | string, ramp: Ramp & Place): Result<number | "free"> {
  if (typeof value === "string" && isFreeRate(value)) return ok("free");
  const parsed = parseRate(value, ramp);
  if (!parsed.ok) return failed(...parsed.problems.map(mentionFree));
  const rate = parsed.value;
  const { where, unit } = ramp;
  if (rate === 0)
    return failed({
      code: "schedule/zero-rate",
      what: `the rate is ${shown(value)}`,
      where,
      expected: `a rate above 0 °${unit}/h; the direction follows from the target`,
      fix: "use hold on the segment before, to stay at a temperature",
    });
  if (Math.abs(rate) > FASTEST_C_PER_HOUR)
    return failed({
      code: "schedule/rate-too-fast",
      what: `the rate is ${shown(value)}`,
      where,
      expected: `at most ${printRate(FASTEST_C_PER_HOUR, unit)}`,
      fix: "write rate: free for as fast as it goes",
    });
  if (ramp.fromC === null || ramp.toC === null) return ok(rate);
  const rising = ramp.toC > ramp.fromC;
  if (rate < 0 && rising)
    return failed({
      code: "schedule/direction",
      what: `the rate ${shown(value)} cools, but the target ${printTemperature(ramp.toC, unit)} is above ${printTemperature(ramp.fromC, unit)}`,
      where,
      expected: "a rate without a sign; the direction follows from the target",
      fix: "remove the minus sign, or lower the target",
    });
  return ok(rising ? rate : -Math.abs(rate));
}

function mentionFree(problem: Problem): Problem {
  return { ...problem, expected: `${problem.expected}, or free` };
}

function holdOf(value: number | string | undefined, where: string): Result<number> {
  if (value === undefined) return ok(0);
  const hold = parseDuration(value, { where });
  if (!hold.ok || hold.value <= LONGEST_HOLD_SECONDS) return hold;
  return failed({
    code: "schedule/hold-too-long",
    what: `the hold is ${shown(value)}${typeof value === "number" ? " minutes" : ""}`,
    where,
    expected: "at most 7 days (10080 min)",
    fix: "check the number; a bare number is minutes",
  });
}
