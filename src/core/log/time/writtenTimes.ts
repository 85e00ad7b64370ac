import { shapeOf } from "../../math/statistics.ts";
import { failed, ok, type Result } from "../../problem.ts";
import { type Decision, decision, type TimeKind } from "../reading/LogReading.ts";
import { DAY_SECONDS, wallTime } from "../text/calendar.ts";
import { firstStamp, type StampForm, type Stamps } from "../text/columnStores.ts";
import type { Column } from "../text/logTable.ts";
import { isNewestFirst, runningClock } from "./clockSeconds.ts";
import { decideDateOrder } from "./dateOrder.ts";
import type { RowTimes, TimeQuery } from "./rowTimes.ts";
import type { TimePlace } from "./timeColumn.ts";
import { plausibleScales, TIME_KIND_OPTION, type TimeScale } from "./timeUnit.ts";

type WrittenPlace = Extract<TimePlace, { kind: "written" }>;

const TOLD = "it was given as an option";

/** Times from columns of written dates and clock times. */
export function writtenTimes(place: WrittenPlace, query: TimeQuery): Result<RowTimes> {
  if (place.date !== null) return datedTimes(place.date, place.clock, query);
  const clock = place.clock as Column;
  const { timeKind } = query.options;
  const told = timeKind === undefined ? null : TOLD;
  const elapsed = told === null ? elapsedBecause(clock) : timeKind === "elapsed" ? told : null;
  return elapsed === null ? ok(dayTimes(clock, timeKind)) : spanTimes(clock, elapsed, query);
}

function datedTimes(date: Column, clock: Column | null, query: TimeQuery): Result<RowTimes> {
  const ofDay = clock === null ? new Float64Array(query.rowCount) : clock.stamps.seconds;
  const { preamble, options } = query;
  const order = decideDateOrder({ stamps: date.stamps, ofDay }, preamble.text, options);
  if (!order.ok) return order;
  const days = dayNumbers(date, order.value.dayOf, clock !== date);
  const seconds = days;
  for (let i = 0; i < seconds.length; i++) seconds[i] = days[i]! * DAY_SECONDS + ofDay[i]!;
  const { timeKind } = query.options;
  const zoned = clock === null ? null : applyOffsets(clock.stamps, seconds);
  const half = clock === null ? null : halfDialTimes(clock, { ofDay, seconds, told: timeKind });
  return ok({
    seconds: half ?? seconds,
    clock: "date",
    doubt: null,
    decisions: [
      decision("time format", clock === null ? "dates, one a row" : formatOf(clock, true), {
        ...dialSure(timeKind, half !== null, clock !== null && mayBeDial(clock.stamps, seconds)),
        because: half === null ? (zoned ?? "every row is written so") : HALF_DIAL,
        ...(clock !== null && kindSays(half === null ? "clock-24h" : "clock-12h")),
      }),
      order.value.decision,
    ],
  });
}

/** Day number of each row; a date in a column of its own may be written only where it changes. */
function dayNumbers(
  date: Column,
  dayOf: (form: StampForm) => number,
  fillsDown: boolean,
): Float64Array {
  const { formOf, forms } = date.stamps;
  const dayOfForm = forms.map((form) => (form.order === "none" ? null : dayOf(form)));
  const days = new Float64Array(formOf.length);
  let day = Number.NaN;
  for (let i = 0; i < days.length; i++) {
    const here = dayOfForm[formOf[i]!] ?? null;
    if (here !== null) day = here;
    days[i] = here !== null || fillsDown ? day : Number.NaN;
  }
  return days;
}

const HALF_DIAL =
  "hours run from 1 to 12 and begin anew after twelve, so twelve hours were added each time";

/** Brings rows to the first row's offset from universal time, so that a change of it makes no jump. */
function applyOffsets(stamps: Stamps, seconds: Float64Array): string | null {
  const first = firstStamp(stamps)?.offsetMinutes ?? Number.NaN;
  if (Number.isNaN(first)) return null;
  const shifts = stamps.forms.map(({ offsetMinutes }) =>
    Number.isNaN(offsetMinutes) ? 0 : (first - offsetMinutes) * 60,
  );
  for (let i = 0; i < seconds.length; i++) {
    const shift = shifts[stamps.formOf[i]!] ?? 0;
    if (shift !== 0) seconds[i] = seconds[i]! + shift;
  }
  return "every row is written so; all are kept at the offset of the first";
}

/** Dates with a 12-hour clock without AM and PM, unrolled; null when the clock is no such one. */
function halfDialTimes(
  clock: Column,
  {
    ofDay,
    seconds,
    told,
  }: {
    readonly ofDay: Float64Array;
    readonly seconds: Float64Array;
    readonly told: TimeKind | undefined;
  },
): Float64Array | null {
  if (hasHalves(clock.stamps)) return null;
  if (Number.isNaN(seconds[0]) || isNewestFirst(seconds)) return null;
  const running = runningClock(
    ofDay,
    dialOf(told) ?? (isTwelveAtMidnight(ofDay, seconds) ? 12 : null),
  );
  if (!running.isHalfDial) return null;
  const start = seconds[0]! - (ofDay[0]! % (DAY_SECONDS / 2));
  const unrolled = running.seconds.map((each) => start + each);
  // Dates that do not go along with the dial are those of a clock that was set.
  const isApart = unrolled.some((each, i) => Math.abs(each - seconds[i]!) > DAY_SECONDS);
  return isApart ? null : unrolled;
}

/** How sure it is whether the dial has twelve hours, and the other way to take it. */
function dialSure(
  told: TimeKind | undefined,
  isHalf: boolean,
  isOpen: boolean,
): Pick<Decision, "confidence" | "runnerUp"> {
  if (told !== undefined) return { confidence: "told", runnerUp: null };
  if (isHalf) return { confidence: "likely", runnerUp: "hours from 0 to 24, with gaps" };
  return isOpen
    ? { confidence: "likely", runnerUp: "a dial of 12 hours without AM and PM" }
    : { confidence: "certain", runnerUp: null };
}

/**
 * Whether clock times are all of the hours 1 to 12, as on a dial without AM and PM, though more than
 * eight different ones are seen, or the log goes on for more than half a day.
 */
function mayBeDial({ seconds: ofDay, forms }: Stamps, seconds: Float64Array): boolean {
  if (forms.some((form) => form.half !== null)) return false;
  const hours = new Set<number>();
  for (const each of ofDay) if (!Number.isNaN(each)) hours.add(Math.floor(each / 3600));
  if (hours.has(0) || [...hours].some((hour) => hour > 12)) return false;
  const { least, greatest } = shapeOf(seconds);
  return hours.size > DIAL_HOURS || greatest - least > DAY_SECONDS / 2;
}

/** Different hours from which it is strange that none is 0 or beyond 12. Own choice. */
const DIAL_HOURS = 8;

/** Whether a date turns while the clock goes on from eleven to twelve, and no hour is 0 or beyond 12: so a dial shows midnight. */
function isTwelveAtMidnight(ofDay: Float64Array, seconds: Float64Array): boolean {
  const noon = DAY_SECONDS / 2;
  let turns = 0;
  for (let i = 0; i < ofDay.length; i++) {
    const here = ofDay[i]!;
    if (here < 3600 || here >= noon + 3600) return false;
    const before = ofDay[i - 1] ?? here;
    const days = (seconds[i]! - here - (seconds[i - 1] ?? 0) + before) / DAY_SECONDS;
    if (i > 0 && days === 1 && before < noon && before >= noon - 3600 && here >= noon) turns++;
  }
  return turns > 0;
}

function formatOf(clock: Column, isDated: boolean): string {
  const first = firstStamp(clock.stamps);
  const halves = first?.half !== null && first?.half !== undefined ? " with AM and PM" : "";
  const fields = first?.clockFields === 2 ? "hours and minutes" : "hours, minutes and seconds";
  return `${isDated ? "date, " : ""}${fields}${halves}`;
}

function hasHalves({ forms }: Stamps): boolean {
  return forms.some((form) => form.half !== null);
}

/** Why a column of clock times is elapsed time, or null when it is the time of day. */
function elapsedBecause(clock: Column): string | null {
  const { forms, seconds } = clock.stamps;
  const first = firstStamp(clock.stamps);
  if (first === null || hasHalves(clock.stamps)) return null;
  if (forms.some((form) => form.isSpan)) return "it is written as a span, not as a time of day";
  if (seconds.some((each) => each >= DAY_SECONDS)) return "it counts beyond 24 hours";
  if (
    /elaps|durat|run ?time|since|lapse|mm:ss|hh+:mm elapsed/i.test(
      `${clock.name} ${clock.unitText}`,
    )
  )
    return "its name says so";
  const known = seconds.filter((_, row) => clock.stamps.formOf[row]! >= 0);
  if (isNewestFirst(known)) known.reverse();
  const isFromZero = known[0]! <= (first.clockFields === 2 ? 60 : 5);
  return isFromZero && !falls(known) ? "it starts at zero and never falls" : null;
}

/** Whether times go back by more than a row out of order does. */
function falls(seconds: Float64Array): boolean {
  return seconds.some((each, i) => each < (seconds[i - 1] ?? each) - DAY_SECONDS / 2);
}

/** What the option about the kind of time says of a decision. */
function kindSays(timeKind: TimeKind): Pick<Decision, "says"> & { readonly option: string } {
  return { option: TIME_KIND_OPTION, says: { timeKind } };
}

function dialOf(told: TimeKind | undefined): 12 | 24 | null {
  return told === "clock-24h" ? 24 : told === "clock-12h" ? 12 : null;
}

function dayTimes(clock: Column, told: TimeKind | undefined): RowTimes {
  const ofDay = clock.stamps.seconds.slice();
  const hasMarker = hasHalves(clock.stamps);
  const isBackwards = isNewestFirst(ofDay);
  if (isBackwards) ofDay.reverse();
  const running = runningClock(ofDay, hasMarker ? 24 : dialOf(told));
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
        confidence: told !== undefined ? "told" : running.isHalfDial ? "guessed" : "likely",
        because,
        ...(running.isHalfDial && told === undefined && { runnerUp: otherHalf(ofDay) }),
        ...kindSays(running.isHalfDial ? "clock-12h" : "clock-24h"),
      }),
    ],
  };
}

/** When a log on a dial of twelve hours began, if it was in the other half of the day. */
function otherHalf(ofDay: Float64Array): string {
  const first = ofDay.find((each) => !Number.isNaN(each)) ?? 0;
  return `the other half of the day, from ${wallTime((first + DAY_SECONDS / 2) % DAY_SECONDS).slice(11, 16)} on`;
}

function times(count: number): string {
  return count === 1 ? "once" : `${count} times`;
}

const TWO_FIELDS: readonly TimeScale[] = [
  { name: "hours and minutes", seconds: 1 },
  { name: "minutes and seconds", seconds: 1 / 60 },
];

function spanTimes(clock: Column, because: string, query: TimeQuery): Result<RowTimes> {
  const { seconds } = clock.stamps;
  const isTwo = firstStamp(clock.stamps)?.clockFields === 2;
  const how = because === TOLD ? "told" : "likely";
  if (!isTwo)
    return ok(spans(seconds, { name: "hours, minutes and seconds", seconds: 1 }, because, how));
  const label = `${clock.name} ${clock.unitText}`;
  const [asHours, asMinutes] = TWO_FIELDS as readonly [TimeScale, TimeScale];
  const told = query.options.timeUnit;
  if (told !== undefined)
    return ok(spans(seconds, told === "s" ? asMinutes : asHours, TOLD, "told"));
  if (clock.stamps.forms.some((form) => form.isSpan))
    return ok(spans(seconds, asHours, "a count of days stands before the hours"));
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
        option: `--time-unit s or min; ${TIME_KIND_OPTION}`,
        says: {
          timeKind: "elapsed",
          ...(TWO_FIELDS.includes(scale) && { timeUnit: scale.seconds === 1 ? "min" : "s" }),
        },
      }),
    ],
  };
}
