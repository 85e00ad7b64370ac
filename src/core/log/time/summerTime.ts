import { medianStep } from "../../math/statistics.ts";
import type { LogFault } from "../reading/LogReading.ts";
import type { ClockQuery } from "./clockDefects.ts";
import { isChangeHour } from "./dateOrder.ts";
import type { Moments } from "./duplicates.ts";
import { timeOfDay } from "./rowTimes.ts";

/** Rows after summer time was taken out, and what was found. */
export interface SummerTime {
  readonly moments: Moments;
  readonly faults: readonly LogFault[];
}

const HOUR = 3600;

/**
 * Makes the clock run on across the change to and from summer time. A jump back by one hour is
 * mended; a jump ahead only when the temperature shows that no hour passed.
 */
export function mendSummerTime(moments: Moments, query: ClockQuery): SummerTime {
  const { rows, times } = moments;
  const step = medianStep(times);
  if (!(step < HOUR / 2)) return { moments, faults: [] };
  const faults: LogFault[] = [];
  const shifts: Shift[] = [];
  let shift = 0;
  for (let i = 1; i < times.length; i++) {
    const here = times[i]!;
    const before = times[i - 1]!;
    // Nearly every step is one to the next row, and neither back nor ahead by an hour.
    const isNext = Math.abs(rows[i]! - rows[i - 1]!) === 1;
    if (isNext && here >= before && here - before < HOUR - 1) continue;
    if (isBackStep(moments, i, { step, isNight: isChangeHour(before, query.clock) })) {
      shift += HOUR;
      shifts.push({ from: i, seconds: shift });
      faults.push(fault(here + shift, backText(before, query)));
    } else if (isAhead(moments, i, step) && isNight(before)) {
      const passed = hourPassed(moments, i, { step, tempsC: query.tempsC });
      // On another day than those of the change it only counts when the temperature shows it.
      if (passed !== "no" && !isChangeHour(before, query.clock)) continue;
      if (passed === "no") shift -= HOUR;
      shifts.push({ from: i, seconds: shift });
      if (passed !== "yes") faults.push(fault(here + shift, AHEAD[passed]));
    }
  }
  return { moments: { rows, times: shifted(times, shifts) }, faults };
}

/** Whether the clock goes back by an hour, perhaps within rows without a reading. */
function isBackStep(
  { rows, times }: Moments,
  at: number,
  form: { readonly step: number; readonly isNight: boolean },
): boolean {
  const passed = times[at]! - times[at - 1]!;
  if (passed < 0 && isBackByAnHour(times, at, form)) return true;
  // Rows without a reading stand between the two, and the time is an hour less than so many steps.
  const apart = Math.abs(rows[at]! - rows[at - 1]!);
  const off = apart * form.step - HOUR - passed;
  return form.isNight && apart > 1 && Math.abs(off) <= 0.5 * form.step + 1;
}

/** Hours in which clocks are changed. */
function isNight(time: number): boolean {
  return timeOfDay(time) < 4 * HOUR;
}

/** From a place on, times are later by some seconds. */
interface Shift {
  readonly from: number;
  readonly seconds: number;
}

function shifted(times: Float64Array, shifts: readonly Shift[]): Float64Array {
  if (shifts.length === 0) return times;
  const moved = times.slice();
  shifts.forEach(({ from, seconds }, s) => {
    const to = shifts[s + 1]?.from ?? times.length;
    for (let i = from; i < to; i++) moved[i] = times[i]! + seconds;
  });
  return moved;
}

/** Rows without a reading beside the change by which the jump may be longer. */
const ROWS_LOST = 4;

function lost(step: number): number {
  // Two rows changed over go back by a step, which must not be taken for an hour less a few.
  return Math.max(0, Math.min(ROWS_LOST * step, HOUR - 3 * step));
}

/** Whether the clock goes ahead by an hour, perhaps within rows without a reading. */
function isAhead({ rows, times }: Moments, at: number, step: number): boolean {
  const passed = times[at]! - times[at - 1]!;
  if (isAheadByAnHour(passed, step)) return true;
  const apart = Math.abs(rows[at]! - rows[at - 1]!);
  return apart > 1 && Math.abs(passed - HOUR - apart * step) <= 0.5 * step + 1;
}

function isAheadByAnHour(jump: number, step: number): boolean {
  const off = jump - HOUR - step;
  return off >= -0.5 * step - 1 && off <= lost(step) + 0.5 * step + 1;
}

const AHEAD = {
  no: "The clock went ahead by one hour for summer time; the temperature shows that no hour passed, so it was taken out.",
  unknown:
    "The clock goes ahead by one hour in a night when summer time may begin; the temperature does not tell whether an hour passed, so a gap is left.",
} as const;

function fault(at: number, what: string): LogFault {
  return { kind: "clock", channel: null, fromSeconds: at, toSeconds: at, count: 1, what };
}

function backText(before: number, query: ClockQuery): string {
  return isChangeHour(before, query.clock)
    ? "The clock went back by one hour at the end of summer time; an hour was added after it."
    : "The clock was put back by one hour; an hour was added after it.";
}

/** A step back by an hour less one step that is not caught up by a step ahead. */
function isBackByAnHour(
  times: Float64Array,
  at: number,
  { step, isNight }: { readonly step: number; readonly isNight: boolean },
): boolean {
  const here = times[at]!;
  const off = here - times[at - 1]! + HOUR - step;
  const most = (isNight ? lost(step) : 0) + 0.5 * step + 1;
  if (off < -0.5 * step - 1 || off > most) return false;
  const next = times[at + 1];
  // Rows that lack a reading may follow; a row that only stood an hour behind is left by more than an hour.
  return next === undefined || next - here < HOUR / 2 + (isNight ? lost(step) : 0);
}

/** Readings and time to each side of a step that tell the rate there: enough to outweigh noise. */
const RATE_PLACES = 1800;
const RATE_SECONDS = 1800;
/** Change in an hour that is no hold, which may swing up and down by several kelvins [K]. Own choice. */
const LEAST_PER_HOUR_K = 40;
/** Share of an hour's change by which the step may be off what one of the two would give. */
const HOUR_SHARE = 0.3;

/** Whether the temperature moved on by an hour's worth across a step, judged by the rates on both sides of it. */
function hourPassed(
  moments: Moments,
  at: number,
  { step, tempsC }: { readonly step: number; readonly tempsC: Float64Array },
): "yes" | "no" | "unknown" {
  const before = lineThrough(moments, tempsC, { from: at - 1, by: -1 });
  const after = lineThrough(moments, tempsC, { from: at, by: 1 });
  if (before === null || after === null) return "unknown";
  const perHour = ((before.rate + after.rate) / 2) * HOUR;
  // A kiln whose rate changes about there, or that holds, tells nothing.
  const isSteady = Math.abs(after.rate - before.rate) * HOUR < 0.5 * Math.abs(perHour);
  const change = after.tempC - before.tempC;
  const noise = 4 * (before.noiseK + after.noiseK);
  const tolerance = HOUR_SHARE * Math.abs(perHour);
  // A rate that may well be none tells nothing, however steady it looks.
  const rateNoise = 2 * (before.rateNoise + after.rateNoise) * HOUR;
  if (rateNoise > tolerance) return "unknown";
  if (!(Math.abs(perHour) > LEAST_PER_HOUR_K) || !isSteady || noise > tolerance) return "unknown";
  if (Math.abs(change - (perHour * step) / HOUR) < tolerance) return "no";
  return Math.abs(change - perHour * (1 + step / HOUR)) < tolerance ? "yes" : "unknown";
}

interface Line {
  /** On the line at its first place [°C]. */
  readonly tempC: number;
  /** K per second. */
  readonly rate: number;
  /** Standard error of the temperature [K]. */
  readonly noiseK: number;
  /** Standard error of the rate [K per second]. */
  readonly rateNoise: number;
}

/** The least-squares line through the readings on one side of a step; null of too few. */
function lineThrough(
  { rows, times }: Moments,
  tempsC: Float64Array,
  { from, by }: { readonly from: number; readonly by: 1 | -1 },
): Line | null {
  const origin = times[from]!;
  const xs: number[] = [];
  const ys: number[] = [];
  for (let at = from; at >= 0 && at < times.length && xs.length < RATE_PLACES; at += by) {
    const x = times[at]! - origin;
    const tempC = tempsC[rows[at]!] as number;
    if (Math.abs(x) > RATE_SECONDS && xs.length > 4) break;
    if (tempC > -60 && tempC < 1450) {
      xs.push(x);
      ys.push(tempC);
    }
  }
  return xs.length < 4 ? null : fitted(xs, ys);
}

function fitted(xs: readonly number[], ys: readonly number[]): Line | null {
  const count = xs.length;
  const meanX = xs.reduce((sum, x) => sum + x, 0) / count;
  const meanY = ys.reduce((sum, y) => sum + y, 0) / count;
  const xx = xs.reduce((sum, x) => sum + (x - meanX) ** 2, 0);
  const xy = xs.reduce((sum, x, i) => sum + (x - meanX) * (ys[i]! - meanY), 0);
  if (xx === 0) return null;
  const rate = xy / xx;
  const tempC = meanY - rate * meanX;
  const offs = xs.reduce((sum, x, i) => sum + (ys[i]! - tempC - rate * x) ** 2, 0);
  const variance = offs / (count - 2);
  return {
    tempC,
    rate,
    noiseK: Math.sqrt(variance * (1 / count + meanX ** 2 / xx)),
    rateNoise: Math.sqrt(variance / xx),
  };
}
