import type { Curve } from "../curve/Curve.ts";
import { crossingTimes } from "../curve/crossingTimes.ts";
import { peakOf } from "../curve/peakOf.ts";
import type { Expansion, TimelineRow } from "../schedule/Schedule.ts";
import { PAST_PEAK_K } from "./phaseOf.ts";
import type { Phase } from "./WatchState.ts";

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
