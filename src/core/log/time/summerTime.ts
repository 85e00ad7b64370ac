import type { LogFault } from "../LogReading.ts";
import { medianStep } from "../statistics.ts";
import { isChangeHour } from "./changeHour.ts";
import type { ClockQuery } from "./clockDefects.ts";
import { type Moment, timesOf } from "./moment.ts";

/** Rows after summer time was taken out, and what was found. */
export interface SummerTime {
  readonly moments: readonly Moment[];
  readonly faults: readonly LogFault[];
}

const HOUR = 3600;

/**
 * Makes the clock run on across the change to and from summer time. A jump back by one hour is
 * mended; a jump ahead only when the temperature shows that no hour passed.
 */
export function mendSummerTime(moments: readonly Moment[], query: ClockQuery): SummerTime {
  const step = medianStep(timesOf(moments));
  if (!(step < HOUR / 2)) return { moments, faults: [] };
  const faults: LogFault[] = [];
  const mended: Moment[] = [];
  let shift = 0;
  for (let i = 0; i < moments.length; i++) {
    const moment = moments[i] as Moment;
    const before = moments[i - 1];
    const jump = before === undefined ? step : moment.time - before.time;
    if (before !== undefined && isBackByAnHour(moments, i, step)) {
      shift += HOUR;
      faults.push(fault(moment.time + shift, backText(before, query)));
    } else if (
      before !== undefined &&
      Math.abs(jump - HOUR - step) <= 0.5 * step + 1 &&
      isChangeHour(before.time, query.clock)
    ) {
      const passed = hourPassed(moments, i, { step, tempsC: query.tempsC });
      if (passed === "no") shift -= HOUR;
      if (passed !== "yes") faults.push(fault(moment.time + shift, AHEAD[passed]));
    }
    mended.push(shift === 0 ? moment : { row: moment.row, time: moment.time + shift });
  }
  return { moments: mended, faults };
}

const AHEAD = {
  no: "The clock went ahead by one hour for summer time; the temperature shows that no hour passed, so it was taken out.",
  unknown:
    "The clock goes ahead by one hour in a night when summer time may begin; the temperature does not tell whether an hour passed, so a gap is left.",
} as const;

function fault(at: number, what: string): LogFault {
  return { kind: "clock", channel: null, fromSeconds: at, toSeconds: at, count: 1, what };
}

function backText(before: Moment, query: ClockQuery): string {
  return isChangeHour(before.time, query.clock)
    ? "The clock went back by one hour at the end of summer time; an hour was added after it."
    : "The clock was put back by one hour; an hour was added after it.";
}

/** A step back by an hour less one step that is not caught up by a step ahead. */
function isBackByAnHour(moments: readonly Moment[], at: number, step: number): boolean {
  const here = moments[at] as Moment;
  const before = moments[at - 1] as Moment;
  if (Math.abs(here.time - before.time + HOUR - step) > 0.5 * step + 1) return false;
  const next = moments[at + 1];
  return next === undefined || next.time - here.time < HOUR / 2;
}

/** Whether the temperature moved on by an hour's worth across a step, judged by the rate before it. */
function hourPassed(
  moments: readonly Moment[],
  at: number,
  { step, tempsC }: { readonly step: number; readonly tempsC: Float64Array },
): "yes" | "no" | "unknown" {
  const span = Math.max(3, Math.min(10, at - 1));
  const first = moments[at - 1 - span];
  const last = moments[at - 1] as Moment;
  if (first === undefined) return "unknown";
  const tempOf = (moment: Moment) => tempsC[moment.row] as number;
  const rate = (tempOf(last) - tempOf(first)) / (last.time - first.time);
  const change = tempOf(moments[at] as Moment) - tempOf(last);
  const perHour = rate * HOUR;
  if (!(Math.abs(perHour) > 10)) return "unknown";
  const tolerance = 0.3 * Math.abs(perHour);
  if (Math.abs(change - rate * step) < tolerance) return "no";
  return Math.abs(change - rate * (HOUR + step)) < tolerance ? "yes" : "unknown";
}
