import { isScaleEnd, median } from "../../math/statistics.ts";
import type { LogFault } from "../reading/LogReading.ts";

/** Readings to each side whose bends are looked at together. */
const REACH = 3;
/** Least usual bend of a wild stretch, in the unit of the log: no kiln turns so from reading to reading. Own choice. */
const LEAST_BEND = 40;
/** Times the bends of the calmest other column meanwhile. */
const TIMES_CALM = 8;
/** Fewest wild rows that make a stretch; fewer are spikes. */
const LEAST_WILD = 5;

/** Numbers that any thermocouple may give in any unit; 9999 and its like are no jumps. */
const POSSIBLE = { least: -460, most: 3300 };

/** A stretch of rows in which a column jumps wildly. */
interface WildStretch {
  /** First and last row, by index into the column. */
  readonly from: number;
  readonly to: number;
  /** How far a reading in it usually is off the line of the two before, in the unit of the column. */
  readonly usualJump: number;
}

/**
 * The stretch in which a thermocouple jumps wildly up and down while another one beside it runs
 * smoothly, as a failing one does; from its first wild row to its last. Null when there is none, or
 * when there is no other column to tell by: then the kiln itself may have done it.
 * @param values Readings of the column in the order of time, NaN where there is none.
 * @param others Readings of the other temperature columns in the same rows.
 */
export function wildStretch(
  values: Float64Array,
  others: readonly Float64Array[],
): WildStretch | null {
  if (others.length === 0 || !jumpsOften(values)) return null;
  const bends = bendsOf(values);
  const suspects = suspectRows(bends);
  if (suspects.length < LEAST_WILD) return null;
  const calm = others.map(bendsOf);
  const wild = suspects.filter(
    (at) =>
      usualBend(bends, at) > TIMES_CALM * Math.min(...calm.map((other) => usualBend(other, at))),
  );
  const first = wild[0];
  const last = wild.at(-1);
  if (first === undefined || last === undefined || wild.length < LEAST_WILD) return null;
  const { from, to } = widened(bends, calm, [first, last]);
  const usual = median(bends.subarray(from + 1, to + 1));
  return usual > LEAST_BEND ? { from, to, usualJump: usual } : null;
}

/**
 * Whether steps are large often enough for a wild stretch, which a quick look tells of most columns:
 * a large bend has a step of half its size at least before or after it, and a step is in two bends.
 */
function jumpsOften(values: Float64Array): boolean {
  let jumps = 0;
  let last = Number.NaN;
  for (let i = 0; i < values.length; i++) {
    const value = values[i]!;
    if (!isReading(value)) continue;
    if (Math.abs(value - last) > LEAST_BEND / 3) jumps++;
    last = value;
  }
  return jumps >= LEAST_WILD / 2;
}

function isReading(value: number): boolean {
  return value > POSSIBLE.least && value < POSSIBLE.most && !isScaleEnd(value);
}

/** How far each reading is off the line through the two before it; NaN where there is no such. */
function bendsOf(values: Float64Array): Float64Array {
  const bends = new Float64Array(values.length).fill(Number.NaN);
  let last = Number.NaN;
  let before = Number.NaN;
  for (let i = 0; i < values.length; i++) {
    const value = values[i]!;
    if (!isReading(value)) continue;
    bends[i] = Math.abs(value - 2 * last + before);
    before = last;
    last = value;
  }
  return bends;
}

/** Rows with a large bend of their own, about which most bends are large. */
function suspectRows(bends: Float64Array): readonly number[] {
  const rows: number[] = [];
  for (let i = 0; i < bends.length; i++)
    if (bends[i]! > LEAST_BEND && usualBend(bends, i) > LEAST_BEND) rows.push(i);
  return rows;
}

function usualBend(bends: Float64Array, at: number): number {
  return median(bends.subarray(Math.max(0, at - REACH), at + REACH + 1));
}

/** The stretch with the rows about its ends that jump as well, or stand between such rows. */
function widened(
  bends: Float64Array,
  calm: readonly Float64Array[],
  [first, last]: readonly [number, number],
): { readonly from: number; readonly to: number } {
  // Where readings are lacking all columns bend, and only the row itself shows how calm another one is.
  const bendOf = (other: Float64Array, at: number) => {
    const here = other[at]!;
    return Number.isNaN(here) ? usualBend(other, at) : Math.min(here, usualBend(other, at));
  };
  const isJump = (at: number) =>
    bends[at]! > LEAST_BEND + 2 * Math.min(...calm.map((other) => bendOf(other, at)));
  let from = first;
  let to = last;
  for (let at = first - 1; at >= Math.max(0, from - REACH); at--) if (isJump(at)) from = at;
  for (let at = last + 1; at <= Math.min(bends.length - 1, to + REACH); at++)
    if (isJump(at)) to = at;
  return { from, to: to + REACH >= bends.length ? bends.length - 1 : to };
}

/** A temperature column in °C beside the times of a log. */
export interface MeasuredColumn {
  readonly name: string;
  /** NaN where there is no reading [°C]. */
  readonly tempsC: Float64Array;
}

/** A column without its wild stretch, and what is said about that; null without one. */
export interface CalmedColumn {
  readonly tempsC: Float64Array;
  readonly fault: LogFault | null;
}

/**
 * Columns without the stretches in which one jumps wildly while another runs smoothly: a failing
 * thermocouple must not count as the hottest zone.
 * @param seconds Times of the readings [s].
 */
export function withoutWild(
  columns: readonly MeasuredColumn[],
  seconds: Float64Array,
): readonly CalmedColumn[] {
  return columns.map((column) => {
    const others = columns.filter((other) => other !== column);
    const stretch = wildStretch(
      column.tempsC,
      others.map(({ tempsC }) => tempsC),
    );
    if (stretch === null) return { tempsC: column.tempsC, fault: null };
    return {
      tempsC: column.tempsC.map((tempC, i) =>
        i >= stretch.from && i <= stretch.to ? Number.NaN : tempC,
      ),
      fault: faultOf(column, stretch, seconds),
    };
  });
}

function faultOf(column: MeasuredColumn, stretch: WildStretch, seconds: Float64Array): LogFault {
  const { from, to, usualJump } = stretch;
  const count = column.tempsC.subarray(from, to + 1).filter((tempC) => !Number.isNaN(tempC)).length;
  return {
    kind: "spike",
    channel: column.name,
    fromSeconds: seconds[from]!,
    toSeconds: seconds[to]!,
    count,
    what: `${column.name} jumps up and down by ${Math.round(usualJump / 2)} K from reading to reading while another thermocouple runs smoothly, as a failing one does; its ${count} readings there are left out.`,
  };
}
