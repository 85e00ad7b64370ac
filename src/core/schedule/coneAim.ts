import { coneStateOf } from "../cones/heatwork.ts";
import { type KnownOffset, offsetFor } from "../cones/usualOffset.ts";
import type { WitnessOffset } from "../cones/witnessOffset.ts";
import type { AssumedKiln } from "../kiln/LearnedKiln.ts";
import { medianInPlace } from "../math/statistics.ts";
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

/** What the witness cones of past firings say of a thermocouple, taken together. */
export interface PastOffset {
  /** Add to the readings of the next firing [K]. */
  readonly offsetK: number;
  /** One sigma of it, for the next firing [K]. */
  readonly sigmaK: number;
  /** Lowest and highest of the firings, or what the cones of the only one allow [K]. */
  readonly lowK: number;
  readonly highK: number;
  readonly firings: number;
}

/** What one kiln differs by from firing to firing, load and place [K]; own estimate. */
const BETWEEN_FIRINGS_K = 5;
/** A firing this far from the middle of the others counts for less [K]. */
const ODD_ONE_OUT_K = 15;
/** Precision below which witness cones told nothing beyond the usual offset [1/K²]. */
const NOTHING_TOLD = 1e-5;

/**
 * The usual offset once, and what the witness cones of each firing add to it, each by its own
 * precision; of one firing it is that firing's offset. A firing far from the others counts for less.
 * Firings in which cones bound the offset on one side only are left out.
 *
 * @returns null when no firing bounds an offset on both sides.
 */
export function pastOffset(offsets: readonly WitnessOffset[]): PastOffset | null {
  const bounded = offsets.flatMap((each) => {
    const { lowK, highK } = each;
    return lowK === null || highK === null ? [] : [{ ...each, lowK, highK }];
  });
  const [first] = bounded;
  if (first === undefined) return null;
  const { usual } = first;
  const told = bounded.flatMap(({ offsetK, sigmaK, usual: before }) => {
    const precision = sigmaK ** -2 - before.sigmaK ** -2;
    if (precision < NOTHING_TOLD) return [];
    return [{ precision, aloneK: aloneOf({ offsetK, sigmaK }, before, precision) }];
  });
  const middleK = medianInPlace(told.map(({ aloneK }) => aloneK));
  let precision = usual.sigmaK ** -2;
  let sum = usual.offsetK * precision;
  for (const each of told) {
    const awayK = told.length > 2 ? Math.abs(each.aloneK - middleK) : 0;
    const weight = each.precision * Math.min(1, ODD_ONE_OUT_K / awayK) ** 2;
    precision += weight;
    sum += weight * each.aloneK;
  }
  const all = bounded.map(({ offsetK }) => offsetK);
  return {
    offsetK: sum / precision,
    sigmaK: Math.min(usual.sigmaK, Math.hypot(precision ** -0.5, BETWEEN_FIRINGS_K)),
    lowK: bounded.length === 1 ? first.lowK : Math.min(...all),
    highK: bounded.length === 1 ? first.highK : Math.max(...all),
    firings: bounded.length,
  };
}

/** What a firing's cones say by themselves, the usual offset taken out of what both say together. */
function aloneOf(
  both: { readonly offsetK: number; readonly sigmaK: number },
  usual: { readonly offsetK: number; readonly sigmaK: number },
  precision: number,
): number {
  return (both.offsetK * both.sigmaK ** -2 - usual.offsetK * usual.sigmaK ** -2) / precision;
}
