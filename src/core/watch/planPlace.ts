import type { ConeSeries } from "../cones/cone.ts";
import { kilnHeatworkOf } from "../cones/usualOffset.ts";
import { type Curve, peakOf } from "../curve/Curve.ts";
import { crossingTimes } from "../curve/edgeTimes.ts";
import type { LogReading } from "../log/reading/LogReading.ts";
import type { Expansion, Schedule, TimelineRow } from "../schedule/Schedule.ts";
import type { CourseAhead } from "./courseAhead.ts";
import { joined } from "./expectations.ts";
import type { Phase, PlanStanding, RecentRate } from "./WatchState.ts";

/** So near to a hold's temperature a kiln is at that hold [K]; our own estimate. */
const AT_HOLD_K = 8;
/** So near a hold has begun [K]; our own estimate. */
const ARRIVED_K = 2;
/** A kiln that has shot past every ramp of the plan is at the nearest hold within this [K]; our own estimate. */
const SHOT_PAST_K = 30;

/** Where a firing stands on its plan. */
export interface PlanPlace {
  readonly row: TimelineRow;
  /** On the plan's own clock [s from its start]. */
  readonly planSeconds: number;
  /** Behind the plan [s], both lined up at the beginning; negative when ahead. */
  readonly lateSeconds: number;
}

/** What is known of the firing at its last reading. */
export interface StandingNow {
  readonly curve: Curve;
  readonly nowSeconds: number;
  readonly tempC: number;
  readonly phase: Phase;
}

/**
 * Where on its plan a firing is: at a hold of this temperature, or where the plan passes this
 * temperature the same way; of several places the one nearest by the clock.
 *
 * @param shiftSeconds By how much the plan is later than the log, lined up at the beginning.
 * @returns null when the plan has no such place.
 */
export function planPlace(
  expansion: Expansion,
  shiftSeconds: number,
  now: StandingNow,
): PlanPlace | null {
  const clock = now.nowSeconds - shiftSeconds;
  const holds = now.phase === "falling" ? [] : holdPlaces(expansion, now, AT_HOLD_K);
  const places = holds.length > 0 ? holds : passingPlaces(expansion, now);
  const found = places.length > 0 ? places : holdPlaces(expansion, now, SHOT_PAST_K);
  const [nearest] = found.toSorted(
    (a, b) => Math.abs(a.planSeconds - clock) - Math.abs(b.planSeconds - clock),
  );
  return nearest ? { ...nearest, lateSeconds: clock - nearest.planSeconds } : null;
}

type Place = Omit<PlanPlace, "lateSeconds">;

/** Holds at this temperature, as far in as the kiln has been there. */
function holdPlaces({ timeline }: Expansion, now: StandingNow, withinK: number): readonly Place[] {
  return timeline.flatMap((row) => {
    if (row.kind !== "hold" || Math.abs(row.toC - now.tempC) > withinK) return [];
    const held = now.nowSeconds - arrivedAt(now, row.toC, withinK);
    const isClimbingTo = now.phase === "climbing" && held < row.endSeconds - row.startSeconds;
    if (isClimbingTo && now.tempC < row.toC - AT_HOLD_K / 2) return [];
    return [{ row, planSeconds: Math.min(row.endSeconds, row.startSeconds + held) }];
  });
}

/** Since when the kiln has been at a hold without a break [s]; its last moment when it is still on its way. */
function arrivedAt({ curve, nowSeconds }: StandingNow, tempC: number, withinK: number): number {
  const { timesSeconds, tempsC } = curve;
  const away = tempsC.findLastIndex((temp) => Math.abs(temp - tempC) > withinK);
  const isBelow = away >= 0 && tempsC[away]! < tempC;
  const there = tempsC.findIndex(
    (temp, i) => i > away && (isBelow ? temp >= tempC - ARRIVED_K : temp <= tempC + ARRIVED_K),
  );
  return timesSeconds[there] ?? nowSeconds;
}

function passingPlaces({ curve, timeline }: Expansion, now: StandingNow): readonly Place[] {
  const isOver = peakOf(now.curve).tempC - now.tempC > PAST_PEAK_K && now.phase !== "climbing";
  const way = now.phase === "falling" || isOver ? "cooling" : "heating";
  return crossingTimes(curve, now.tempC)
    .filter(({ direction }) => direction === way)
    .flatMap(({ seconds }) => {
      const row = timeline.find(
        (each) => seconds >= each.startSeconds && seconds <= each.endSeconds,
      );
      return row ? [{ row, planSeconds: seconds }] : [];
    });
}

/** So near to the plan's highest temperature its peak is reached [K]. */
const AT_PEAK_K = 0.5;

/** Where a firing stands on its plan, and what the rest of it will leave as it is going. */
export function planStanding(
  plan: { readonly schedule: Schedule; readonly expansion: Expansion; readonly place: PlanPlace },
  going: {
    readonly curve: Curve;
    readonly course: CourseAhead;
    readonly series: ConeSeries;
    /** Null for the usual one. */
    readonly offsetK: number | null;
  },
): PlanStanding {
  const { schedule, expansion, place } = plan;
  const { curve, course, series, offsetK } = going;
  const peak = peakOf(expansion.curve);
  const isAhead = place.planSeconds < peak.seconds && course.curve !== null;
  const reached = isAhead
    ? crossingTimes(course.curve as Curve, peak.tempC - AT_PEAK_K)[0]?.seconds
    : undefined;
  const left = kilnHeatworkOf(joined(curve, course), { series, offsetK });
  return {
    title: schedule.title,
    lateSeconds: place.lateSeconds,
    doing: doingOf(place),
    toC: place.row.toC,
    asked: place.row.assumedRate ? "free" : place.row.rateCPerHour,
    leftSeconds: place.row.endSeconds - place.planSeconds,
    peakAtSeconds: reached ?? null,
    peakC: peak.tempC,
    endSeconds: course.endSeconds,
    finalCone: left.position.label,
    finalIndex: left.position.index,
    finalSigmaCones: left.sigmaCones,
  };
}

function doingOf({ row }: PlanPlace): Phase {
  if (row.kind === "hold") return "holding";
  return row.toC > row.fromC ? "climbing" : "falling";
}

/** Slower than this either way a kiln is holding [°C/h]; our own estimate. */
export const HOLDING_C_PER_HOUR = 5;

/** A controller that holds swings by so much [K]; our own estimate. */
const SWING_K = 4;

/** So far below its peak a firing is over it, whatever the kiln is doing [K]; our own estimate. */
export const PAST_PEAK_K = 50;

/** A kiln that is past its peak falls from this rate on, for it slows down towards the room [°C/h]. */
const CRAWLING_C_PER_HOUR = 1;

/**
 * Which way a kiln is going, by its rate of the last minutes.
 * A rate counts from 5 °C/h on and from two of its own sigmas; a kiln within 4 °C of its peak is not
 * yet falling, and one 50 °C below it falls from 1 °C/h on.
 */
export function phaseOf(
  rate: RecentRate,
  now: { readonly tempC: number; readonly peakC: number },
): Phase {
  const below = now.peakC - now.tempC;
  const sure = 2 * rate.sigmaCPerHour;
  const telling = Math.max(HOLDING_C_PER_HOUR, sure);
  if (rate.rateCPerHour > telling) return "climbing";
  const least = below > PAST_PEAK_K ? Math.max(CRAWLING_C_PER_HOUR, sure) : telling;
  return rate.rateCPerHour < -least && below > SWING_K ? "falling" : "holding";
}

/** The set point that a log tells, as a Curve; null when it tells none. */
export function setPointOf({ channels }: LogReading): Curve | null {
  return channels.find(({ role, curve }) => role === "set-point" && curve !== null)?.curve ?? null;
}
