import { failed, ok, type Result } from "../problem.ts";
import { printTemperature } from "../units/print.ts";
import { type AimedBy, aimMarginK, peakSegment, topHoldIndex } from "./coneAim.ts";
import { HOTTEST_C } from "./parseSegments.ts";
import type { Schedule } from "./Schedule.ts";

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
