import { failed, ok, type Result } from "../../problem.ts";
import { decision } from "../decision.ts";
import type { Decision } from "../LogReading.ts";
import type { Column } from "../text/table.ts";
import { DAY_SECONDS } from "./calendar.ts";
import { isNewestFirst, runningClock } from "./clockSeconds.ts";
import { decideDateOrder } from "./dateOrder.ts";
import type { RowTimes, TimeQuery } from "./rowTimes.ts";
import type { Stamp } from "./stamp.ts";
import type { TimePlace } from "./timeColumn.ts";
import { plausibleScales, type TimeScale } from "./timeUnit.ts";

type WrittenPlace = Extract<TimePlace, { kind: "written" }>;

/** Times from columns of written dates and clock times. */
export function writtenTimes(place: WrittenPlace, query: TimeQuery): Result<RowTimes> {
  if (place.date !== null) return datedTimes(place.date, place.clock, query);
  const clock = place.clock as Column;
  const elapsed = elapsedBecause(clock);
  return elapsed === null ? ok(dayTimes(clock)) : spanTimes(clock, elapsed, query);
}

function datedTimes(date: Column, clock: Column | null, query: TimeQuery): Result<RowTimes> {
  const order = decideDateOrder(date.stamps, query.preamble.text, query.options);
  if (!order.ok) return order;
  const days = dayNumbers(date, order.value.dayOf, clock !== date);
  const ofDay = Float64Array.from({ length: query.rowCount }, (_, i) =>
    clock === null ? 0 : (clock.stamps[i]?.seconds ?? Number.NaN),
  );
  const seconds = days.map((day, i) => day * DAY_SECONDS + (ofDay[i] as number));
  const zoned = clock === null ? null : applyOffsets(clock.stamps, seconds);
  const half = clock === null ? null : halfDialTimes(clock, ofDay, seconds);
  return ok({
    seconds: half ?? seconds,
    clock: "date",
    doubt: null,
    decisions: [
      decision("time format", clock === null ? "dates, one a row" : formatOf(clock, true), {
        confidence: half === null ? "certain" : "likely",
        because: half === null ? (zoned ?? "every row is written so") : HALF_DIAL,
      }),
      order.value.decision,
    ],
  });
}

/** Day number of each row; a date in a column of its own may be written only where it changes. */
function dayNumbers(
  date: Column,
  dayOf: (stamp: Stamp) => number,
  fillsDown: boolean,
): Float64Array {
  const days = new Float64Array(date.stamps.length);
  let last: Stamp | null = null;
  let day = Number.NaN;
  for (let i = 0; i < days.length; i++) {
    const stamp = date.stamps[i] ?? null;
    const isDated = stamp !== null && stamp.order !== "none";
    if (isDated && !isSameDate(stamp, last)) {
      day = dayOf(stamp);
      last = stamp;
    }
    days[i] = isDated || fillsDown ? day : Number.NaN;
  }
  return days;
}

const HALF_DIAL =
  "hours run from 1 to 12 and fall back by twelve, so twelve hours were added each time";

function isSameDate(a: Stamp, b: Stamp | null): boolean {
  return b !== null && a.first === b.first && a.second === b.second && a.third === b.third;
}

/** Brings rows to the first row's offset from universal time, so that a change of it makes no jump. */
function applyOffsets(stamps: readonly (Stamp | null)[], seconds: Float64Array): string | null {
  const first = stamps.find((stamp) => stamp !== null)?.offsetMinutes ?? Number.NaN;
  if (Number.isNaN(first)) return null;
  for (let i = 0; i < seconds.length; i++) {
    const offset = stamps[i]?.offsetMinutes ?? first;
    if (offset !== first && !Number.isNaN(offset))
      seconds[i] = (seconds[i] as number) + (first - offset) * 60;
  }
  return "every row is written so; all are kept at the offset of the first";
}

/** Dates with a 12-hour clock without AM and PM, unrolled; null when the clock is no such one. */
function halfDialTimes(
  clock: Column,
  ofDay: Float64Array,
  seconds: Float64Array,
): Float64Array | null {
  if (clock.stamps.some((stamp) => stamp !== null && stamp.half !== null)) return null;
  if (ofDay.some(Number.isNaN) || isNewestFirst(seconds)) return null;
  const running = runningClock(ofDay, false);
  if (!running.isHalfDial) return null;
  const start = (seconds[0] as number) - ((ofDay[0] as number) % (DAY_SECONDS / 2));
  return running.seconds.map((each) => start + each);
}

function formatOf(clock: Column, isDated: boolean): string {
  const first = clock.stamps.find((stamp) => stamp !== null);
  const halves = first?.half !== null && first?.half !== undefined ? " with AM and PM" : "";
  const fields = first?.clockFields === 2 ? "hours and minutes" : "hours, minutes and seconds";
  return `${isDated ? "date, " : ""}${fields}${halves}`;
}

/** Why a column of clock times is elapsed time, or null when it is the time of day. */
function elapsedBecause(clock: Column): string | null {
  const stamps = clock.stamps.filter((stamp) => stamp !== null);
  const first = stamps[0];
  if (first === undefined || stamps.some((stamp) => stamp.half !== null)) return null;
  if (stamps.some((stamp) => stamp.isSpan)) return "it counts days as well";
  if (stamps.some((stamp) => stamp.seconds >= DAY_SECONDS)) return "it counts beyond 24 hours";
  if (
    /elaps|durat|run ?time|since|lapse|mm:ss|hh+:mm elapsed/i.test(
      `${clock.name} ${clock.unitText}`,
    )
  )
    return "its name says so";
  const fields = first.clockFields;
  const isFromZero = first.seconds <= (fields === 2 ? 60 : 5);
  const falls = stamps.some(
    (stamp, i) => i > 0 && stamp.seconds < (stamps[i - 1] as Stamp).seconds,
  );
  return isFromZero && !falls ? "it starts at zero and never falls" : null;
}

function dayTimes(clock: Column): RowTimes {
  const ofDay = Float64Array.from(clock.stamps, (stamp) => stamp?.seconds ?? Number.NaN);
  const hasMarker = clock.stamps.some((stamp) => stamp !== null && stamp.half !== null);
  const isBackwards = isNewestFirst(ofDay);
  if (isBackwards) ofDay.reverse();
  const running = runningClock(ofDay, hasMarker);
  if (isBackwards) running.seconds.reverse();
  const midnights =
    running.midnights === 0 ? "" : `; midnight was passed ${times(running.midnights)}`;
  const because = running.isHalfDial ? HALF_DIAL : `the hours stay below 24${midnights}`;
  return {
    seconds: running.seconds,
    clock: "time of day",
    doubt: null,
    decisions: [
      decision("time format", `time of day: ${formatOf(clock, false)}`, {
        confidence: running.isHalfDial ? "guessed" : "likely",
        because,
      }),
    ],
  };
}

function times(count: number): string {
  return count === 1 ? "once" : `${count} times`;
}

const TWO_FIELDS: readonly TimeScale[] = [
  { name: "hours and minutes", seconds: 1 },
  { name: "minutes and seconds", seconds: 1 / 60 },
];

function spanTimes(clock: Column, because: string, query: TimeQuery): Result<RowTimes> {
  const seconds = Float64Array.from(clock.stamps, (stamp) => stamp?.seconds ?? Number.NaN);
  const isTwo = clock.stamps.find((stamp) => stamp !== null)?.clockFields === 2;
  if (!isTwo)
    return ok(spans(seconds, { name: "hours, minutes and seconds", seconds: 1 }, because));
  const label = `${clock.name} ${clock.unitText}`;
  const [asHours, asMinutes] = TWO_FIELDS as readonly [TimeScale, TimeScale];
  const told = query.options.timeUnit;
  if (told !== undefined)
    return ok(
      spans(seconds, told === "s" ? asMinutes : asHours, "it was given as an option", "told"),
    );
  if (/mm?:ss/i.test(label) && !/hh?:mm/i.test(label))
    return ok(spans(seconds, asMinutes, "its name says so"));
  if (/hh?:mm/i.test(label)) return ok(spans(seconds, asHours, "its name says so"));
  const plausible = plausibleScales(seconds, query.tempsC, TWO_FIELDS);
  const [only] = plausible;
  if (plausible.length === 1 && only !== undefined)
    return ok(spans(seconds, only, "only so are its length and heating rate likely"));
  return failed({
    code: "log/time-unit-unknown",
    what: `the elapsed times in "${clock.name}" have two fields, and could be hours and minutes or minutes and seconds`,
    where: query.options.name,
    expected: "hh:mm or mm:ss, said in the header or plain from the heating rate",
    fix: "say what the last field is: --time-unit min or --time-unit s",
  });
}

function spans(
  seconds: Float64Array,
  scale: TimeScale,
  because: string,
  confidence: Decision["confidence"] = "likely",
): RowTimes {
  return {
    seconds: seconds.map((each) => each * scale.seconds),
    clock: "none",
    doubt: null,
    decisions: [
      decision("time format", `elapsed: ${scale.name}`, {
        confidence,
        because,
        option: "--time-unit s or min",
      }),
    ],
  };
}
