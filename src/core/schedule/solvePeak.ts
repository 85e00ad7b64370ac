import { coneStateOf } from "../cones/heatwork.ts";
import type { AssumedKiln } from "../kiln/AssumedKiln.ts";
import { failed, ok, type Result } from "../problem.ts";
import { printTemperature } from "../units/print.ts";
import { expandSchedule } from "./expandSchedule.ts";
import { HOTTEST_C } from "./parseSegments.ts";
import type { Schedule, Segment } from "./Schedule.ts";

/** How closely the peak is found [K]. */
const CLOSE_ENOUGH_K = 0.002;

/** A peak stays at least this far from the temperatures before and after it [K]. */
const APART_K = 1;

/**
 * The same schedule with the peak at which a cone is just down: anchored margin 0 K, with holds and
 * cooling counted. The peak is the target of the last segment that heats to the schedule's highest
 * temperature; everything else stays as it is.
 *
 * @returns `schedule/no-peak` when no segment heats, `schedule/no-model` for a cone that its series
 * has no model of, `schedule/no-such-peak` when no peak between its neighbours and 1400 °C does it.
 */
export function solvePeak(input: {
  readonly schedule: Schedule;
  /** As `parseCone` gives it. */
  readonly cone: string;
  readonly kiln?: AssumedKiln;
  /** Added to the planned temperatures, from witness cones [K]. */
  readonly offsetK?: number;
}): Result<Schedule> {
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
  const marginAt = (peakC: number): number | null =>
    coneMarginK(withPeak(schedule, peak.index, peakC), { ...input, cone });
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

/** The segment that makes the peak. */
interface Peak {
  readonly index: number;
  /** Highest neighbour, which the peak has to stay above [°C]. */
  readonly floorC: number;
}

/** The last segment that heats to the schedule's highest temperature; null when none heats. */
export function peakSegment(schedule: Schedule): Peak | null {
  const { segments, startC } = schedule;
  const before = (index: number) => (index === 0 ? startC : (segments[index - 1] as Segment).toC);
  let index = -1;
  segments.forEach((segment, i) => {
    const heats = segment.toC > before(i);
    if (heats && (index < 0 || segment.toC >= (segments[index] as Segment).toC)) index = i;
  });
  if (index < 0) return null;
  const after = segments[index + 1]?.toC ?? Number.NEGATIVE_INFINITY;
  return { index, floorC: Math.max(before(index), after) };
}

function withPeak(schedule: Schedule, index: number, toC: number): Schedule {
  return {
    ...schedule,
    segments: schedule.segments.map((segment, i) => (i === index ? { ...segment, toC } : segment)),
  };
}

/** How far a schedule is above (+) or below (−) the end of a cone [K]; null without a model of it. */
export function coneMarginK(
  schedule: Schedule,
  by: { readonly cone: string; readonly kiln?: AssumedKiln; readonly offsetK?: number },
): number | null {
  const { curve } = expandSchedule(schedule, by.kiln === undefined ? {} : { kiln: by.kiln });
  const of = { series: schedule.series, cone: by.cone, offsetK: by.offsetK ?? 0 };
  return coneStateOf(curve, of)?.marginK ?? null;
}
