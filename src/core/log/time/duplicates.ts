import { median } from "../statistics.ts";
import { type Moments, momentsAt } from "./moments.ts";

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
    const kept = rows[start] as number;
    const next = starts[g + 1] ?? rows.length;
    for (let place = start + 1; place < next; place++) {
      const row = rows[place] as number;
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
  const timeOf = (group: number) => times[starts[group] as number] as number;
  const sizeOf = (group: number) => (starts[group + 1] ?? times.length) - (starts[group] as number);
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
      spreadOut[(starts[g] as number) + k] = here + (span * (skipped + k)) / places;
  }
  return {
    moments: { rows, times: spreadOut },
    rejected: [],
    mended: [
      `stamps repeat, so the ${usual} or so rows of each were spread evenly over ${quantum} s`,
    ],
  };
}
