import { kilnHeatworkOf } from "../cones/usualOffset.ts";
import { REFERENCE_KILN } from "../kiln/LearnedKiln.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import { printDuration, printRate, printTemperature } from "../text/quantities.ts";
import { type AimedBy, aimMarginK, peakSegment, topHoldIndex } from "./coneAim.ts";
import { expandSchedule, freeSpeed } from "./expandSchedule.ts";
import { kilnReachC } from "./ownKilnFiring.ts";
import { rateDown, temperatureUp, tidied, wholeSchedule } from "./paced.ts";
import type { Schedule, Segment } from "./Schedule.ts";
import { HOTTEST_C } from "./segments.ts";

/** What may be changed to make the cone. */
export type Solvable = "peak" | "hold" | "rate";

/** What a solution leans on: the cone, and kiln and thermocouple as far as they are known. */
export interface SolveInput extends AimedBy {
  readonly schedule: Schedule;
}

/** Longest hold that is tried [s]. */
const LONGEST_HOLD_SECONDS = 6 * 3600;

/** Slowest and fastest last climb: what the cone charts cover, small cones' column included [°C/h]. */
const SLOWEST_C_PER_HOUR = 15;
const FASTEST_C_PER_HOUR = 300;

/** Holds are given in whole minutes [s]. */
const HOLD_STEP_SECONDS = 60;

/**
 * The same schedule with one thing changed so that a cone falls by the end of the top hold, as
 * `aimMarginK` has it: the peak, the hold at the peak, or the rate of the climb to it. Everything is
 * in whole degrees and degrees an hour of the schedule's unit, made whole before it is solved; the
 * answer is rounded to the hotter side, to the degree, the minute or the degree an hour. Neighbours
 * of one rate are joined.
 *
 * @returns the problems of `solvePeak`; `schedule/kiln-too-weak` for a peak out of the kiln's reach;
 * `schedule/no-such-hold` or `schedule/no-such-rate`, each with the nearest that is possible.
 */
export function solveSchedule(input: SolveInput & { readonly solve: Solvable }): Result<Schedule> {
  const whole = { ...input, schedule: wholeSchedule(input.schedule) };
  const solved = { peak: peakFor, hold: holdFor, rate: rateFor }[input.solve](whole);
  return solved.ok ? ok(tidied(solved.value)) : solved;
}

function peakFor(input: SolveInput): Result<Schedule> {
  const solved = solvePeak(input);
  if (!solved.ok) return solved;
  const peakC = temperatureUp(highestC(solved.value), solved.value.unit);
  const reachC = kilnReachC(input.kiln ?? REFERENCE_KILN);
  if (peakC > reachC) return failed(tooWeak(input, peakC, reachC));
  return ok(withPeakSegment(solved.value, (segment) => ({ ...segment, toC: peakC })));
}

function holdFor(input: SolveInput): Result<Schedule> {
  const { schedule, cone } = input;
  const held = (holdSeconds: number) =>
    withPeakSegment(schedule, (segment) => ({ ...segment, holdSeconds }));
  const margin = (seconds: number) => aimMarginK(held(seconds), input);
  const without = margin(0);
  const longest = margin(LONGEST_HOLD_SECONDS);
  if (without === null || longest === null || peakSegment(schedule) === null) return peakFor(input);
  if (without > 0 || longest < 0)
    return failed({
      code: "schedule/no-such-hold",
      what:
        without > 0
          ? `no hold makes cone ${cone}: without any the schedule reaches ${labelOf(held(0), input)}`
          : `no hold makes cone ${cone}: with ${printDuration(LONGEST_HOLD_SECONDS)} the schedule reaches ${labelOf(held(LONGEST_HOLD_SECONDS), input)}`,
      where: schedule.title,
      expected: `a hold up to ${printDuration(LONGEST_HOLD_SECONDS)}`,
      fix: nearestPeak(input),
    });
  const seconds = rootOf(
    (value) => margin(value) as number,
    { low: 0, high: LONGEST_HOLD_SECONDS },
    0.5,
  );
  const whole = Math.ceil(seconds / HOLD_STEP_SECONDS) * HOLD_STEP_SECONDS;
  return ok({ ...held(whole), cone });
}

function rateFor(input: SolveInput): Result<Schedule> {
  const { schedule, cone } = input;
  const peak = peakSegment(schedule);
  const climbing = (rateCPerHour: number) =>
    withPeakSegment(schedule, (segment) => ({ ...segment, rateCPerHour }));
  const margin = (rate: number) => aimMarginK(climbing(rate), input);
  const fastest = fastestClimb(input);
  const slow = margin(SLOWEST_C_PER_HOUR);
  const fast = margin(fastest);
  if (slow === null || fast === null || peak === null) return peakFor(input);
  if (slow < 0 || fast > 0) {
    const rate = slow < 0 ? SLOWEST_C_PER_HOUR : fastest;
    const at = printRate(rate, schedule.unit);
    return failed({
      code: "schedule/no-such-rate",
      what: `no rate of the last climb makes cone ${cone}: even at ${at} the schedule reaches ${labelOf(climbing(rate), input)}`,
      where: schedule.title,
      expected: `a climb to the peak at ${printRate(SLOWEST_C_PER_HOUR, schedule.unit)} to ${printRate(fastest, schedule.unit)}`,
      fix: nearestPeak(input),
    });
  }
  const slowness = rootOf(
    (value) => margin(1 / value) as number,
    { low: 1 / fastest, high: 1 / SLOWEST_C_PER_HOUR },
    1e-7,
  );
  return ok({ ...climbing(rateDown(1 / slowness, schedule.unit)), cone });
}

/** Where a rising function crosses 0, from the side where it is not below. */
function rootOf(
  rising: (value: number) => number,
  between: { readonly low: number; readonly high: number },
  closeEnough: number,
): number {
  let { low, high } = between;
  while (high - low > closeEnough) {
    const middle = (low + high) / 2;
    if (rising(middle) < 0) low = middle;
    else high = middle;
  }
  return high;
}

function fastestClimb(input: SolveInput): number {
  const speed = freeSpeed(input.kiln ?? REFERENCE_KILN, highestC(input.schedule), true);
  return Math.min(FASTEST_C_PER_HOUR, Math.max(SLOWEST_C_PER_HOUR + 1, speed));
}

function nearestPeak(input: SolveInput): string {
  const solved = peakFor(input);
  if (!solved.ok) return solved.problems[0]?.fix ?? "";
  return `--solve peak, which gives ${printTemperature(highestC(solved.value), input.schedule.unit)}`;
}

/** The problem of a peak that the kiln does not get to: how far it gets, and what would help. */
function tooWeak(input: SolveInput, peakC: number, reachC: number): Problem {
  const { schedule, cone } = input;
  const atReach = withPeakSegment(schedule, (segment) => ({ ...segment, toC: reachC }));
  const hotEnough = peakSegment(atReach)?.index === peakSegment(schedule)?.index;
  const gets = hotEnough ? `, which makes ${labelOf(atReach, input)} here` : "";
  return {
    code: "schedule/kiln-too-weak",
    what: `cone ${cone} needs ${printTemperature(peakC, schedule.unit)}, and the kiln still climbs at ${printRate(SLOWEST_C_PER_HOUR, schedule.unit)} up to ${printTemperature(reachC, schedule.unit)} only${gets}`,
    where: schedule.title,
    expected: "a peak that the kiln reaches with power to spare",
    fix: "ask for a softer cone, or a longer hold below; by common practice new elements, a lighter load and fewer shelves help the kiln",
  };
}

function labelOf(schedule: Schedule, input: SolveInput): string {
  const { curve } = expandSchedule(schedule, input.kiln === undefined ? {} : { kiln: input.kiln });
  return kilnHeatworkOf(curve, { ...input, series: schedule.series }).position.label;
}

function withPeakSegment(schedule: Schedule, change: (segment: Segment) => Segment): Schedule {
  const at = peakSegment(schedule)?.index;
  return {
    ...schedule,
    segments: schedule.segments.map((segment, index) => (index === at ? change(segment) : segment)),
  };
}

function highestC(schedule: Schedule): number {
  return Math.max(...schedule.segments.map((segment) => segment.toC));
}

/** How closely the peak is found [K]. */
const CLOSE_ENOUGH_K = 0.002;

/** A peak stays at least this far from the temperatures before and after it [K]. */
const APART_K = 1;

/**
 * The same schedule with the peak at which a cone falls by the end of the top hold, as `aimMarginK`
 * has it. The peak is the target of the last segment that heats to the schedule's highest
 * temperature; everything else stays as it is.
 *
 * @returns `schedule/no-peak` when no segment heats, `schedule/no-model` for a cone that its series
 * has no model of, `schedule/no-such-peak` when no peak between its neighbours and 1400 °C does it.
 */
export function solvePeak(input: AimedBy & { readonly schedule: Schedule }): Result<Schedule> {
  const { schedule, cone } = input;
  const peak = peakSegment(schedule);
  if (peak === null)
    return failed({
      code: "schedule/no-peak",
      what: "no segment heats",
      where: schedule.title,
      expected: "a segment that climbs to the peak",
      fix: "add a segment whose target is above the start",
    });
  const topIndex = topHoldIndex(schedule) ?? peak.index;
  const marginAt = (peakC: number): number | null =>
    aimMarginK(withPeak(schedule, peak.index, peakC), { ...input, topIndex });
  let low = peak.floorC + APART_K;
  let high = HOTTEST_C;
  const atLow = marginAt(low);
  const atHigh = marginAt(high);
  if (atLow === null || atHigh === null)
    return failed({
      code: "schedule/no-model",
      what: `there is no model of cone ${cone} among ${schedule.series} cones`,
      where: schedule.title,
      expected: "a cone whose end points are published for several rates",
      fix: "set the peak by hand and judge it by witness cones",
    });
  if (atLow > 0 || atHigh < 0) {
    const rest = atLow > 0 ? "the rest of the schedule is too hot" : "the ramp is too fast for it";
    return failed({
      code: "schedule/no-such-peak",
      what: `no peak makes cone ${cone}: ${rest}`,
      where: schedule.title,
      expected: `a peak between ${printTemperature(low, schedule.unit)} and ${printTemperature(high, schedule.unit)}`,
      fix: "change the neighbouring segments or the cone",
    });
  }
  while (high - low > CLOSE_ENOUGH_K) {
    const middle = (low + high) / 2;
    if ((marginAt(middle) as number) < 0) low = middle;
    else high = middle;
  }
  return ok({ ...withPeak(schedule, peak.index, high), cone });
}

function withPeak(schedule: Schedule, index: number, toC: number): Schedule {
  return {
    ...schedule,
    segments: schedule.segments.map((segment, i) => (i === index ? { ...segment, toC } : segment)),
  };
}
