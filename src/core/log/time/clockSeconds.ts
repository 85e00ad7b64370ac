import { median } from "../../math/statistics.ts";
import { DAY_SECONDS } from "../text/calendar.ts";

/** Times of day as one running count [s], with what was done to them. */
export interface RunningClock {
  readonly seconds: Float64Array;
  readonly midnights: number;
  /** A 12-hour clock without AM and PM was unrolled. */
  readonly isHalfDial: boolean;
}

const HALF_DAY = DAY_SECONDS / 2;

/** Whether the rows run from the newest to the oldest: nearly all steps go back. */
export function isNewestFirst(seconds: ArrayLike<number>): boolean {
  let back = 0;
  let moved = 0;
  for (let i = 1; i < seconds.length; i++) {
    const step = wrapped(seconds[i]! - seconds[i - 1]!);
    if (step < 0) back++;
    if (step !== 0 && !Number.isNaN(step)) moved++;
  }
  return moved > 0 && back > 0.9 * moved;
}

/** A step across midnight is a small one. */
function wrapped(step: number): number {
  if (Math.abs(step) > DAY_SECONDS) return step;
  return step > HALF_DAY ? step - DAY_SECONDS : step < -HALF_DAY ? step + DAY_SECONDS : step;
}

/**
 * Adds a day at each midnight of a clock without dates, or half a day on a 12-hour dial.
 * @param dial Hours on the dial; null to look at the times for it.
 */
export function runningClock(ofDay: Float64Array, dial: 12 | 24 | null): RunningClock {
  const isHalfDial = dial === null ? isOnHalfDial(ofDay) : dial === 12;
  const turn = isHalfDial ? HALF_DAY : DAY_SECONDS;
  const seconds = new Float64Array(ofDay.length);
  let previous = Number.NaN;
  let turns = 0;
  for (let i = 0; i < ofDay.length; i++) {
    const time = isHalfDial ? ofDay[i]! % HALF_DAY : ofDay[i]!;
    if (time - previous < -turn / 2) turns++;
    seconds[i] = time + turns * turn;
    if (!Number.isNaN(time)) previous = time;
  }
  return { seconds, midnights: isHalfDial ? Math.floor(turns / 2) : turns, isHalfDial };
}

/**
 * Hours run from 1 to 12 only, and at least once the time falls back by twelve hours less a step;
 * where rows are lacking it may fall by less.
 */
function isOnHalfDial(ofDay: Float64Array): boolean {
  let falls = 0;
  const steps: number[] = [];
  for (let i = 0; i < ofDay.length; i++) {
    const time = ofDay[i]!;
    if (time < 3600 || time >= 13 * 3600) return false;
    if (i === 0) continue;
    const step = time - ofDay[i - 1]!;
    if (step > 0) steps.push(step);
    if (step < 0 && step <= -HALF_DAY + 3600) falls++;
    if (step < 0 && (step < -HALF_DAY || step > -HALF_DAY / 2)) return false;
  }
  return falls > 0 && median(steps) < 3600;
}
