import { median } from "../../math/statistics.ts";

/** Rows with times that strictly rise. */
export interface SpreadRows {
  readonly moments: Moments;
  readonly rejected: readonly { readonly row: number; readonly reason: string }[];
  readonly mended: readonly string[];
}

/** Share of rows with the time of the row before, from which the stamps are merely coarse. */
const COARSE_SHARE = 0.2;

/**
 * Rows in order made strictly rising. When stamps are coarser than the samples, the rows of one
 * stamp are spread evenly up to the next; otherwise the later row of one time is left out.
 */
export function spreadDuplicates(
  moments: Moments,
  isSameRow: (a: number, b: number) => boolean,
): SpreadRows {
  const { times } = moments;
  const starts = groupStarts(times);
  const repeats = times.length - starts.length;
  if (repeats === 0) return { moments, rejected: [], mended: [] };
  if (repeats > COARSE_SHARE * times.length && starts.length > 1) return spread(moments, starts);
  return withoutRepeats(moments, starts, isSameRow);
}

/** Whether so many rows have the time of the row before that the stamps are merely coarse. */
export function isCoarse(times: Float64Array): boolean {
  const repeats = times.length - groupStarts(times).length;
  return repeats > COARSE_SHARE * times.length;
}

/** Places at which a time is another than the one before. */
function groupStarts(times: Float64Array): Int32Array {
  const starts = new Int32Array(times.length);
  let count = 0;
  for (let i = 0; i < times.length; i++)
    if (i === 0 || times[i] !== times[i - 1]) starts[count++] = i;
  return starts.subarray(0, count);
}

function withoutRepeats(
  moments: Moments,
  starts: Int32Array,
  isSameRow: (a: number, b: number) => boolean,
): SpreadRows {
  const { rows } = moments;
  const rejected: { row: number; reason: string }[] = [];
  starts.forEach((start, g) => {
    const kept = rows[start]!;
    const next = starts[g + 1] ?? rows.length;
    for (let place = start + 1; place < next; place++) {
      const row = rows[place]!;
      const reason = isSameRow(kept, row)
        ? "the same row again"
        : "the same time as the row before";
      rejected.push({ row, reason });
    }
  });
  return { moments: momentsAt(moments, starts), rejected, mended: [] };
}

function spread({ rows, times }: Moments, starts: Int32Array): SpreadRows {
  const last = starts.length - 1;
  const timeOf = (group: number) => times[starts[group]!] as number;
  const sizeOf = (group: number) => (starts[group + 1] ?? times.length) - starts[group]!;
  const quantum = median(Float64Array.from({ length: last }, (_, g) => timeOf(g + 1) - timeOf(g)));
  const usual = median(Float64Array.from(starts, (_, g) => sizeOf(g)));
  const spreadOut = new Float64Array(times.length);
  for (let g = 0; g <= last; g++) {
    const here = timeOf(g);
    const size = sizeOf(g);
    const span = g === last ? quantum : Math.min(quantum, timeOf(g + 1) - here);
    const places = Math.max(size, g === 0 || g === last ? usual : 1);
    // The log began somewhere inside its first stamp: its rows belong to the end of that span.
    const skipped = g === 0 ? places - size : 0;
    for (let k = 0; k < size; k++)
      spreadOut[starts[g]! + k] = here + (span * (skipped + k)) / places;
  }
  return {
    moments: { rows, times: spreadOut },
    rejected: [],
    mended: [
      `stamps repeat, so the ${usual} or so rows of each were spread evenly over ${quantum} s`,
    ],
  };
}

/** Rows that stand in time: two arrays of one length. */
export interface Moments {
  /** Where each is in the table. */
  readonly rows: Int32Array;
  /** [s]. */
  readonly times: Float64Array;
}

/** The moments from one place to before another, sharing their memory. */
export function momentsBetween({ rows, times }: Moments, from: number, to: number): Moments {
  return { rows: rows.subarray(from, to), times: times.subarray(from, to) };
}

/** The moments at some places, in their order. */
export function momentsAt({ rows, times }: Moments, places: Int32Array): Moments {
  return {
    rows: places.map((place) => rows[place]!),
    times: Float64Array.from(places, (place) => times[place]!),
  };
}

/** Whether numbers count in steps that are mostly alike, as a time does and a temperature hardly ever. */
export function isEven(numbers: Float64Array): boolean {
  const known = numbers.filter((value) => !Number.isNaN(value));
  const steps = known.slice(1).map((value, i) => Math.abs(value - known[i]!));
  const usual = median(steps);
  return steps.filter((step) => Math.abs(step - usual) <= 0.02 * usual).length > steps.length / 2;
}

/**
 * Whether numbers begin, or end, at zero, as elapsed time does and no thermocouple. A step from zero is
 * not near enough: so begins a kiln that heats fast in a coarse log, and so does its set point.
 */
export function isFromZero(numbers: Float64Array): boolean {
  const known = numbers.filter((value) => !Number.isNaN(value)).sort();
  const steps = known.slice(1).map((value, i) => value - known[i]!);
  return Math.abs(known[0] ?? Number.NaN) <= NEAR_ZERO * median(steps);
}

/** Share of a step within which a number is near zero. */
const NEAR_ZERO = 0.1;

/** Share of rows that may stand out of order in a column that counts evenly; one at least. */
const FEW_FALLS = 0.03;

/** Numbers that are not more than the one before, and all of them. */
function fallsIn(numbers: Float64Array): { readonly falls: number; readonly count: number } {
  let falls = 0;
  let count = 0;
  let before = Number.NEGATIVE_INFINITY;
  for (const value of numbers) {
    if (Number.isNaN(value)) continue;
    count++;
    if (value <= before) falls++;
    before = value;
  }
  return { falls, count };
}

/** The numbers sorted, each once, when they then count evenly and few rows stood out of order or twice; else as they are. */
export function inOrder(numbers: Float64Array): Float64Array {
  const { falls, count } = fallsIn(numbers);
  if (falls === 0 || falls > Math.max(1, FEW_FALLS * count)) return numbers;
  const known = numbers.filter((value) => !Number.isNaN(value));
  const sorted = Float64Array.from(new Set(known)).sort();
  return isEven(sorted) ? sorted : numbers;
}
