import { medianStep } from "../../math/statistics.ts";
import { failed, ok, type Result } from "../../problem.ts";
import type { LogFault } from "../reading/LogReading.ts";
import { DAY_SECONDS, wallTime } from "../text/calendar.ts";
import { isNewestFirst } from "./clockSeconds.ts";
import { type Moments, momentsAt, momentsBetween, spreadDuplicates } from "./duplicates.ts";
import type { RowTimes } from "./rowTimes.ts";
import { mendSummerTime } from "./summerTime.ts";

/** Rows in the order of time, each later than the one before. */
export interface OrderedRows {
  /** Row of the table, by rank. */
  readonly rows: Int32Array;
  /** Strictly rising [s]. */
  readonly seconds: Float64Array;
  readonly rejected: readonly { readonly row: number; readonly reason: string }[];
  /** Sentences about what was mended. */
  readonly mended: readonly string[];
  /** In times of the log, not yet counted from its start. */
  readonly faults: readonly LogFault[];
}

/** What mending a clock needs to see of the rows. */
export interface ClockQuery {
  readonly name: string;
  readonly clock: RowTimes["clock"];
  /** Temperature of a table row [°C], NaN when none. */
  readonly tempsC: Float64Array;
  readonly lineOf: (row: number) => number;
  /** Whether two rows are written alike. */
  readonly isSameRow: (a: number, b: number) => boolean;
}

/** Share of rows that may stand out of order, or in a stray part, without stopping. */
const FEW = 0.01;
const STRAY = 0.05;
/** A jump ahead of this many days in a log with steps under an hour is a clock that was set. */
const LONG_JUMP_DAYS = 14;

/**
 * Puts rows in the order of time and mends what can be mended: newest first, summer time, a few
 * rows out of order, several rows with one stamp. A clock that was reset is never stitched.
 * @returns the rows, or `log/clock-reset` when two large parts do not follow each other.
 */
export function orderRows(moments: Moments, query: ClockQuery): Result<OrderedRows> {
  const mended: string[] = [];
  const faults: LogFault[] = [];
  let ordered = moments;
  if (isNewestFirst(moments.times)) {
    ordered = { rows: moments.rows.toReversed(), times: moments.times.toReversed() };
    mended.push("rows ran from the newest to the oldest and were turned round");
  }
  const wild = wildPlaces(ordered);
  const rejected = wild.map((place) => ({
    row: ordered.rows[place] as number,
    reason: "its time jumps far ahead and back",
  }));
  ordered = withoutPlaces(ordered, wild);
  if (query.clock !== "none") {
    const summer = mendSummerTime(ordered, query);
    ordered = summer.moments;
    faults.push(...summer.faults);
  }
  const blocks = blocksOf(ordered);
  const largest = blocks.reduce((a, b) => (b.rows.length > a.rows.length ? b : a));
  if (blocks.length > 1) {
    if (largest.rows.length < (1 - STRAY) * ordered.rows.length) return reset(blocks, query);
    const stray = blocks.filter((block) => block !== largest).flatMap(({ rows }) => [...rows]);
    faults.push(strayFault(largest, stray.length));
    const reason = "the clock was set between it and the rest";
    for (const row of stray) rejected.push({ row, reason });
  }
  const sorted = inOrder(largest);
  if (sorted.moved > 0) {
    mended.push(`${sorted.moved} ${sorted.moved === 1 ? "row" : "rows"} out of order put in place`);
    faults.push({
      ...clockFault(largest),
      count: sorted.moved,
      what:
        sorted.moved === 1
          ? "1 row stood out of order and was put in place."
          : `${sorted.moved} rows stood out of order and were put in place.`,
    });
  }
  const spread = spreadDuplicates(sorted.moments, query.isSameRow);
  return ok({
    rows: spread.moments.rows,
    seconds: spread.moments.times,
    rejected: [...rejected, ...spread.rejected],
    mended: [...mended, ...spread.mended],
    faults,
  });
}

function clockFault({ times }: Moments): Omit<LogFault, "what"> {
  const first = times[0] ?? 0;
  return {
    kind: "clock",
    channel: null,
    fromSeconds: first,
    toSeconds: times[times.length - 1] ?? first,
    count: 1,
  };
}

function strayFault(largest: Moments, count: number): LogFault {
  return {
    ...clockFault(largest),
    count,
    what: `The clock was set during the log; ${count} ${count === 1 ? "row" : "rows"} before or after the main part are left out.`,
  };
}

/** Single rows whose time is far ahead of both neighbours, which follow each other. */
function wildPlaces({ times }: Moments): readonly number[] {
  const far = 10 * medianStep(times);
  const wild: number[] = [];
  for (let i = 1; i + 1 < times.length; i++) {
    const before = times[i - 1] as number;
    const here = times[i] as number;
    const after = times[i + 1] as number;
    if (after >= before && here - before > far && here > after && after - before < far)
      wild.push(i);
  }
  return wild;
}

/** The moments but those at places that rise. */
function withoutPlaces(moments: Moments, places: readonly number[]): Moments {
  if (places.length === 0) return moments;
  const left = new Set(places);
  return momentsAt(
    moments,
    moments.rows.map((_, place) => place).filter((place) => !left.has(place)),
  );
}

/** Cuts where the clock was reset: a step back that is not soon caught up, or a very long step ahead. */
function blocksOf(moments: Moments): readonly Moments[] {
  const { times } = moments;
  const few = Math.max(3, Math.floor(FEW * times.length));
  const step = medianStep(times);
  const longJump = step < 3600 ? LONG_JUMP_DAYS * DAY_SECONDS : Number.POSITIVE_INFINITY;
  const catchUp = nextAtLeast(times);
  const blocks: Moments[] = [];
  let from = 0;
  let latest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < times.length; i++) {
    const time = times[i] as number;
    const isBack = time < latest && !catchUp(i, latest, few);
    const isAhead = time - latest > longJump && i > from;
    if (isBack || isAhead) {
      blocks.push(momentsBetween(moments, from, i));
      from = i;
      latest = Number.NEGATIVE_INFINITY;
    }
    if (time > latest) latest = time;
  }
  blocks.push(momentsBetween(moments, from, times.length));
  return blocks;
}

/**
 * Tells whether one of the next few times is at or after a moment. The place found last is kept, so
 * that rows that all lag behind the same moment are gone through once.
 */
function nextAtLeast(times: Float64Array) {
  let known = { latest: Number.NaN, from: 0, at: 0 };
  return (from: number, latest: number, few: number): boolean => {
    const isKnown = known.latest === latest && from >= known.from && from < known.at;
    let at = isKnown ? known.at : from + 1;
    while (at < times.length && at <= from + few && (times[at] as number) < latest) at++;
    known = { latest, from: isKnown ? known.from : from, at };
    return at < times.length && at <= from + few;
  };
}

function inOrder(block: Moments): { readonly moments: Moments; readonly moved: number } {
  const { times } = block;
  let moved = 0;
  let latest = Number.NEGATIVE_INFINITY;
  for (const time of times) {
    if (time < latest) moved++;
    else latest = time;
  }
  if (moved === 0) return { moments: block, moved };
  const places = Int32Array.from(times, (_, place) => place);
  places.sort((a, b) => (times[a] as number) - (times[b] as number) || a - b);
  return { moments: momentsAt(block, places), moved };
}

function reset(blocks: readonly Moments[], query: ClockQuery): Result<OrderedRows> {
  const before = blocks[0]?.times.at(-1) as number;
  const after = blocks[1]?.times[0] as number;
  const line = query.lineOf(blocks[1]?.rows[0] as number);
  return failed({
    code: "log/clock-reset",
    what: `the clock jumps from ${momentText(before, query)} to ${momentText(after, query)}; the log falls into ${blocks.length} parts`,
    where: `${query.name}: line ${line}`,
    expected: "one firing whose clock runs on",
    fix: `cut the file before line ${line}, and review each part by itself`,
  });
}

function momentText(time: number, query: ClockQuery): string {
  if (query.clock === "date") return wallTime(time).replace("T", " ");
  return query.clock === "none" ? `${time} s` : wallTime(time).slice(11);
}
