import { failed, ok, type Result } from "../../problem.ts";
import type { LogFault } from "../LogReading.ts";
import { medianStep } from "../statistics.ts";
import { DAY_SECONDS, wallTime } from "./calendar.ts";
import { isNewestFirst } from "./clockSeconds.ts";
import { spreadDuplicates } from "./duplicates.ts";
import { type Moment, timesOf } from "./moment.ts";
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
  readonly textOf: (row: number) => string;
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
export function orderRows(moments: readonly Moment[], query: ClockQuery): Result<OrderedRows> {
  const mended: string[] = [];
  const faults: LogFault[] = [];
  let ordered = moments;
  if (isNewestFirst(timesOf(moments))) {
    ordered = moments.toReversed();
    mended.push("rows ran from the newest to the oldest and were turned round");
  }
  const wild = wildRows(ordered);
  ordered = ordered.filter((_, at) => !wild.has(at));
  const rejected = [...wild.values()].map((row) => ({
    row,
    reason: "its time jumps far ahead and back",
  }));
  if (query.clock !== "none") {
    const summer = mendSummerTime(ordered, query);
    ordered = summer.moments;
    faults.push(...summer.faults);
  }
  const blocks = blocksOf(ordered);
  const largest = blocks.reduce((a, b) => (b.length > a.length ? b : a), []);
  if (blocks.length > 1) {
    if (largest.length < (1 - STRAY) * ordered.length) return reset(blocks, query);
    const stray = blocks.filter((block) => block !== largest).flat();
    faults.push(strayFault(largest, stray.length));
    rejected.push(
      ...stray.map(({ row }) => ({ row, reason: "the clock was set between it and the rest" })),
    );
  }
  const sorted = inOrder(largest);
  if (sorted.moved > 0) {
    mended.push(`${sorted.moved} ${sorted.moved === 1 ? "row" : "rows"} out of order put in place`);
    faults.push({
      ...clockFault(largest),
      count: sorted.moved,
      what: `${sorted.moved} rows stood out of order and were put in place.`,
    });
  }
  const spread = spreadDuplicates(sorted.moments, query.textOf);
  return ok({
    rows: Int32Array.from(spread.moments, ({ row }) => row),
    seconds: Float64Array.from(spread.moments, ({ time }) => time),
    rejected: [...rejected, ...spread.rejected],
    mended: [...mended, ...spread.mended],
    faults,
  });
}

function clockFault(block: readonly Moment[]): Omit<LogFault, "what"> {
  const first = block[0]?.time ?? 0;
  return {
    kind: "clock",
    channel: null,
    fromSeconds: first,
    toSeconds: block[block.length - 1]?.time ?? first,
    count: 1,
  };
}

function strayFault(largest: readonly Moment[], count: number): LogFault {
  return {
    ...clockFault(largest),
    count,
    what: `The clock was set during the log; ${count} ${count === 1 ? "row" : "rows"} before or after the main part are left out.`,
  };
}

/** Single rows whose time is far ahead of both neighbours, which follow each other. */
function wildRows(moments: readonly Moment[]): ReadonlyMap<number, number> {
  const far = 10 * medianStep(timesOf(moments));
  const wild = new Map<number, number>();
  for (let i = 1; i + 1 < moments.length; i++) {
    const before = (moments[i - 1] as Moment).time;
    const here = moments[i] as Moment;
    const after = (moments[i + 1] as Moment).time;
    if (after >= before && here.time - before > far && here.time > after && after - before < far)
      wild.set(i, here.row);
  }
  return wild;
}

/** Cuts where the clock was reset: a step back that is not soon caught up, or a very long step ahead. */
function blocksOf(moments: readonly Moment[]): readonly (readonly Moment[])[] {
  const few = Math.max(3, Math.floor(FEW * moments.length));
  const step = medianStep(timesOf(moments));
  const longJump = step < 3600 ? LONG_JUMP_DAYS * DAY_SECONDS : Number.POSITIVE_INFINITY;
  const blocks: Moment[][] = [];
  let block: Moment[] = [];
  let latest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < moments.length; i++) {
    const moment = moments[i] as Moment;
    const isBack = moment.time < latest && !caughtUp(moments, i, { latest, few });
    const isAhead = moment.time - latest > longJump && block.length > 0;
    if (isBack || isAhead) {
      blocks.push(block);
      block = [];
      latest = Number.NEGATIVE_INFINITY;
    }
    block.push(moment);
    latest = Math.max(latest, moment.time);
  }
  blocks.push(block);
  return blocks;
}

function caughtUp(
  moments: readonly Moment[],
  from: number,
  { latest, few }: { readonly latest: number; readonly few: number },
): boolean {
  for (let i = from + 1; i < Math.min(moments.length, from + few + 1); i++)
    if ((moments[i] as Moment).time >= latest) return true;
  return false;
}

function inOrder(block: readonly Moment[]): { moments: readonly Moment[]; moved: number } {
  let moved = 0;
  let latest = Number.NEGATIVE_INFINITY;
  for (const { time } of block) {
    if (time < latest) moved++;
    else latest = time;
  }
  return moved === 0
    ? { moments: block, moved }
    : { moments: block.toSorted((a, b) => a.time - b.time), moved };
}

function reset(blocks: readonly (readonly Moment[])[], query: ClockQuery): Result<OrderedRows> {
  const before = blocks[0]?.at(-1) as Moment;
  const after = blocks[1]?.[0] as Moment;
  const line = query.lineOf(after.row);
  return failed({
    code: "log/clock-reset",
    what: `the clock jumps from ${momentText(before, query)} to ${momentText(after, query)}; the log falls into ${blocks.length} parts`,
    where: `${query.name}: line ${line}`,
    expected: "one firing whose clock runs on",
    fix: `cut the file before line ${line}, and review each part by itself`,
  });
}

function momentText({ time }: Moment, query: ClockQuery): string {
  if (query.clock === "date") return wallTime(time).replace("T", " ");
  return query.clock === "none" ? `${time} s` : wallTime(time).slice(11);
}
