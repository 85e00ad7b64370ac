import { coneStateOf } from "../cones/heatwork.ts";
import { type KnownOffset, offsetFor } from "../cones/usualOffset.ts";
import type { AssumedKiln } from "../kiln/AssumedKiln.ts";
import { expandSchedule } from "./expandSchedule.ts";
import type { Expansion, Schedule } from "./Schedule.ts";

/**
 * How far past just falling a cone is to be at the end of the top hold [K]: at 60 °C/h it then falls
 * about two minutes before the kiln begins to cool. Small beside the usual ± 12 K; own choice.
 */
export const AIM_MARGIN_K = 2;

/** Holds this near the top belong to it: a soak that is let down a few degrees [K]. */
const NEAR_TOP_K = 5;

/** A fall this near to the end of the top hold is at its end [s]. */
export const AT_TOP_END_SECONDS = 90;

/** What a schedule is aimed by. */
export interface AimedBy extends KnownOffset {
  /** As `parseCone` gives it. */
  readonly cone: string;
  readonly kiln?: AssumedKiln;
}

/**
 * How far a cone stands past (+) or before (−) the aim [K]: {@link AIM_MARGIN_K} past its end point
 * at the end of the top hold, the usual or the known offset of the thermocouple added. What cooling
 * adds afterwards is not counted: a potter looks while the kiln is at its top.
 *
 * @param by.topIndex Last segment of the top hold; that of {@link topHoldIndex} unless said.
 * @returns null without a climb, or without a model of the cone in its series.
 */
export function aimMarginK(
  schedule: Schedule,
  by: AimedBy & { readonly topIndex?: number },
): number | null {
  const topIndex = by.topIndex ?? topHoldIndex(schedule);
  if (topIndex === null) return null;
  const untilTop = { ...schedule, segments: schedule.segments.slice(0, topIndex + 1) };
  const { curve } = expandSchedule(untilTop, by.kiln === undefined ? {} : { kiln: by.kiln });
  const { offsetK } = offsetFor(curve, by);
  const state = coneStateOf(curve, { series: schedule.series, cone: by.cone, offsetK });
  return state === null ? null : state.marginK - AIM_MARGIN_K;
}

/** When the top hold of a schedule that was laid out ends [s]; null when none of it heats. */
export function topEndSeconds(schedule: Schedule, { timeline }: Expansion): number | null {
  const index = topHoldIndex(schedule);
  if (index === null) return null;
  return timeline.findLast(({ segment }) => segment === index)?.endSeconds ?? null;
}

/** The segment at whose end the top hold ends: the peak's own, and those let down by 5 K at most. */
export function topHoldIndex(schedule: Schedule): number | null {
  const peak = peakSegment(schedule);
  if (peak === null) return null;
  const peakC = schedule.segments[peak.index]!.toC;
  let index = peak.index;
  while ((schedule.segments[index + 1]?.toC ?? Number.NEGATIVE_INFINITY) >= peakC - NEAR_TOP_K)
    index++;
  return index;
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
  const before = (index: number) => (index === 0 ? startC : segments[index - 1]!.toC);
  let index = -1;
  segments.forEach((segment, i) => {
    const heats = segment.toC > before(i);
    if (heats && (index < 0 || segment.toC >= segments[index]!.toC)) index = i;
  });
  if (index < 0) return null;
  const after = segments[index + 1]?.toC ?? Number.NEGATIVE_INFINITY;
  return { index, floorC: Math.max(before(index), after) };
}
