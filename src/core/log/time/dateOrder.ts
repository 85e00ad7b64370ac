import { median } from "../../math/statistics.ts";
import { failed, ok, type Result } from "../../problem.ts";
import { type Decision, decision, type LogOptions, type LogSaid } from "../reading/LogReading.ts";
import { DAY_SECONDS, dateOf, dayNumber, weekday } from "../text/calendar.ts";
import type { StampForm, Stamps } from "../text/columnStores.ts";
import type { RowTimes } from "./rowTimes.ts";

/** Orders in which the three fields of a date may stand. */
type Order = "day-first" | "month-first" | "year-first";

/** Dates of a log's rows, and their clock times. */
export interface Dates {
  readonly stamps: Stamps;
  /** Seconds after midnight, row by row. */
  readonly ofDay: Float64Array;
}

/** Turns a stamp's date into a day number, and says how that was decided. */
export interface DateOrder {
  readonly dayOf: (stamp: StampForm) => number;
  readonly decision: Decision;
}

interface Trial {
  readonly order: Order;
  /** Dates that exist under this order, of all. */
  readonly fit: number;
  /** Changes of date by more than a day; the wrong order jumps by a month at midnight. */
  readonly jumps: number;
}

const ORDERS: readonly Order[] = ["day-first", "month-first", "year-first"];
const OPTION = "--day-first, --month-first or --year-first";
const SAYS: Readonly<Record<Order, LogSaid>> = {
  "day-first": { dayFirst: true },
  "month-first": { dayFirst: false },
  "year-first": { yearFirst: true },
};
const NAMES: Readonly<Record<Order, string>> = {
  "day-first": "day first",
  "month-first": "month first",
  "year-first": "year first",
};

/**
 * The order of day, month and year, decided over all dates of the log together.
 * Never fails for an ambiguous date, since only the calendar label depends on it.
 * @returns the order, or `log/day-order` when the order told does not fit the dates.
 */
export function decideDateOrder(
  { stamps, ofDay }: Dates,
  preambleText: string,
  options: LogOptions,
): Result<DateOrder> {
  const dates = distinctDates(stamps);
  const open = dates.filter((stamp) => stamp.order === "open");
  if (open.length === 0) return ok(settled(dates));
  const trials = ORDERS.map((order) => tryOrder(open, order));
  if (options.dayFirst !== undefined || options.yearFirst === true)
    return toldOrder(open, trials, options);
  const best = bestTrials(trials);
  const [only] = best;
  if (best.length === 1 && only !== undefined)
    return ok(ordered(only.order, settledBecause(trials, only), "certain"));
  const change = summerTimeOrder({ stamps, ofDay }, best);
  return ok(weighed(open, best, change ?? hintOf(open[0]!, preambleText, stamps)));
}

/** Dates where they change, in file order. */
function distinctDates({ formOf, forms }: Stamps): readonly StampForm[] {
  const dates: StampForm[] = [];
  let last: StampForm | undefined;
  for (let row = 0; row < formOf.length; row++) {
    if (formOf[row] === formOf[row - 1]) continue;
    const form = forms[formOf[row]!];
    if (form === undefined || form.order === "none") continue;
    const isSame =
      last !== undefined &&
      last.first === form.first &&
      last.second === form.second &&
      last.third === form.third;
    if (!isSame) dates.push(form);
    last = form;
  }
  return dates;
}

function settled(dates: readonly StampForm[]): DateOrder {
  const isNamed = dates.some((stamp) => stamp.order === "day-first");
  return {
    dayOf: (stamp) => dayUnder(stamp, "day-first"),
    decision: decision("day order", isNamed ? "by the month's name" : "year first", {
      confidence: "certain",
      because: isNamed ? "months are written as words" : "dates begin with a four-digit year",
    }),
  };
}

function toldOrder(
  open: readonly StampForm[],
  trials: readonly Trial[],
  options: LogOptions,
): Result<DateOrder> {
  const order: Order = options.yearFirst
    ? "year-first"
    : options.dayFirst
      ? "day-first"
      : "month-first";
  const trial = trials.find((each) => each.order === order);
  if (trial !== undefined && trial.fit >= 0.99)
    return ok(ordered(order, "it was given as an option", "told"));
  const odd = open.find((stamp) => Number.isNaN(dayUnder(stamp, order)));
  return failed({
    code: "log/day-order",
    what: `the date ${odd === undefined ? "" : written(odd)} cannot be read ${NAMES[order]}`,
    where: options.name,
    expected: "an order of day and month under which the dates exist",
    fix: "leave out the option about the day, or turn it round",
  });
}

function tryOrder(open: readonly StampForm[], order: Order): Trial {
  let fit = 0;
  let jumps = 0;
  let previous = Number.NaN;
  for (const stamp of open) {
    const day = dayUnder(stamp, order);
    if (Number.isNaN(day)) continue;
    fit++;
    if (Math.abs(day - previous) > 1) jumps++;
    previous = day;
  }
  return { order, fit: fit / open.length, jumps };
}

function bestTrials(trials: readonly Trial[]): readonly Trial[] {
  const fitting = trials.filter((trial) => trial.fit >= 0.99);
  const pool = fitting.length > 0 ? fitting : trials;
  const bestFit = Math.max(...pool.map((trial) => trial.fit));
  const fewest = Math.min(...pool.map((trial) => trial.jumps));
  return fitting.length > 0
    ? pool.filter((trial) => trial.jumps === fewest)
    : pool.filter((trial) => trial.fit === bestFit).slice(0, 1);
}

function settledBecause(trials: readonly Trial[], best: Trial): string {
  const others = trials.filter((trial) => trial !== best && trial.order !== "year-first");
  return others.some((trial) => trial.fit >= 0.99)
    ? "only so does the date move on by one day at midnight"
    : "a field above 12 can only be the day";
}

/** Chooses among orders that fit equally well; what is left open is only the calendar label. */
function weighed(open: readonly StampForm[], best: readonly Trial[], hint: Hint): DateOrder {
  const first = open[0]!;
  const orders = best.map((trial) => trial.order).filter((order) => isModern(first, order));
  const usable = orders.length > 0 ? orders : best.map((trial) => trial.order);
  const days = new Set(usable.map((order) => dayUnder(first, order)));
  const [lone] = usable;
  if (days.size === 1 && lone !== undefined)
    return ordered(
      lone,
      "day and month are the same number, or only one order gives a likely year",
      "certain",
    );
  const order = usable.includes(hint.order) ? hint.order : (lone as Order);
  const runner = usable.find((other) => other !== order) as Order;
  const label = (each: Order) => `${NAMES[each]}: ${dayText(dayUnder(first, each))}`;
  return {
    dayOf: (stamp) => dayUnder(stamp, order),
    decision: decision("day order", label(order), {
      confidence: "guessed",
      because: `${hint.because}; ${written(first)} fits both, and only the calendar date depends on it`,
      runnerUp: label(runner),
      option: OPTION,
      says: SAYS[order],
    }),
  };
}

/** What speaks for an order, though it does not settle it. */
interface Hint {
  readonly order: Order;
  readonly because: string;
}

/** The one order under which an hour's jump of the clock falls into a night when summer time changes; null of none or several. */
function summerTimeOrder({ stamps, ofDay }: Dates, trials: readonly Trial[]): Hint | null {
  const row = hourJumpRow(ofDay);
  const form = stamps.forms[stamps.formOf[row] ?? -1];
  if (form === undefined || form.order !== "open") return null;
  const fitting = trials.filter(({ order }) => isChangeDay(dayUnder(form, order)));
  const [only] = fitting;
  if (fitting.length !== 1 || only === undefined) return null;
  return {
    order: only.order,
    because: "the clock jumps by an hour, and only so in a night when summer time changes",
  };
}

function hintOf(first: StampForm, preambleText: string, stamps: Stamps): Hint {
  for (const match of preambleText.matchAll(/(?<!\d)(\d{1,2})([-/.])(\d{1,2})\2\d{2,4}(?!\d)/g)) {
    if (Number(match[1]) > 12)
      return { order: "day-first", because: "a date above the table is written day first" };
    if (Number(match[3]) > 12)
      return { order: "month-first", because: "a date above the table is written month first" };
  }
  if (first.separator === ".")
    return { order: "day-first", because: "dates with dots are mostly written day first" };
  if (stamps.forms.some((form) => form.half !== null))
    return { order: "month-first", because: "clocks with AM and PM mostly go with month first" };
  return { order: "day-first", because: "nothing in the log settles it" };
}

/** A two-digit year read in the wrong place gives a year that no log has. */
function isModern(stamp: StampForm, order: Order): boolean {
  const { year } = dateOf(dayUnder(stamp, order));
  return year >= 1995 && year <= 2060;
}

function ordered(order: Order, because: string, confidence: Decision["confidence"]): DateOrder {
  return {
    dayOf: (stamp) => dayUnder(stamp, order),
    decision: decision("day order", NAMES[order], {
      confidence,
      because,
      option: OPTION,
      says: SAYS[order],
    }),
  };
}

function dayUnder(stamp: StampForm, order: Order): number {
  const { first, second, third } = stamp;
  if (stamp.order === "year-first") return dayNumber(first, second, third);
  if (stamp.order === "day-first") return dayNumber(fullYear(third), second, first);
  if (order === "day-first") return dayNumber(fullYear(third), second, first);
  if (order === "month-first") return dayNumber(fullYear(third), first, second);
  return third > 31 ? Number.NaN : dayNumber(fullYear(first), second, third);
}

function fullYear(year: number): number {
  if (year >= 100) return year;
  return year < 70 ? 2000 + year : 1900 + year;
}

function written(stamp: StampForm): string {
  return [stamp.first, stamp.second, stamp.third].join(stamp.separator);
}

function dayText(day: number): string {
  const { year, month, day: dayOfMonth } = dateOf(day);
  return `${year}-${String(month).padStart(2, "0")}-${String(dayOfMonth).padStart(2, "0")}`;
}

/** Hours after midnight in which clocks are changed in Europe and America: from memory. */
const LATEST_CHANGE_HOUR = 4;

/** Whether a moment falls in the small hours of a Sunday, when summer time begins and ends. */
export function isChangeHour(time: number, clock: RowTimes["clock"]): boolean {
  const ofDay = ((time % DAY_SECONDS) + DAY_SECONDS) % DAY_SECONDS;
  const isSmallHour = ofDay <= LATEST_CHANGE_HOUR * 3600;
  return isSmallHour && (clock !== "date" || weekday(Math.floor(time / DAY_SECONDS)) === 0);
}

/**
 * Whether a day is one on which clocks change: the last Sunday of March or October in Europe, the
 * second of March or the first of November in North America. From memory.
 */
function isChangeDay(day: number): boolean {
  if (Number.isNaN(day) || weekday(day) !== 0) return false;
  const { month, day: ofMonth } = dateOf(day);
  const isLast = ofMonth > 24;
  if (month === 3) return isLast || (ofMonth > 7 && ofMonth < 15);
  return (month === 10 && isLast) || (month === 11 && ofMonth < 8);
}

/**
 * The row before which clock times jump by an hour in the small hours, to within a step and a half; −1
 * when none does, and of steps of half an hour or more.
 * @param ofDay Seconds after midnight, row by row, from the oldest or from the newest on.
 */
function hourJumpRow(ofDay: Float64Array): number {
  const jumps = ofDay.map((time, i) => Math.abs(time - (ofDay[i - 1] ?? time)));
  const step = median([...jumps.filter((jump) => jump > 0)]);
  if (!(step < 1800)) return -1;
  return jumps.findIndex(
    (jump, i) =>
      Math.abs(jump - 3600) <= 1.5 * step + 1 &&
      jump > 2 * step &&
      ofDay[i]! <= LATEST_CHANGE_HOUR * 3600,
  );
}
