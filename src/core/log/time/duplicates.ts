import { median } from "../statistics.ts";
import type { Moment } from "./moment.ts";

/** Rows with times that strictly rise. */
export interface SpreadRows {
  readonly moments: readonly Moment[];
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
  moments: readonly Moment[],
  textOf: (row: number) => string,
): SpreadRows {
  let repeats = 0;
  for (let i = 1; i < moments.length; i++)
    if ((moments[i] as Moment).time === (moments[i - 1] as Moment).time) repeats++;
  if (repeats === 0) return { moments, rejected: [], mended: [] };
  if (repeats > COARSE_SHARE * moments.length) return spread(moments);
  return withoutRepeats(moments, textOf);
}

function withoutRepeats(moments: readonly Moment[], textOf: (row: number) => string): SpreadRows {
  const kept: Moment[] = [];
  const rejected: { row: number; reason: string }[] = [];
  for (const moment of moments) {
    const last = kept.at(-1);
    if (last === undefined || last.time !== moment.time) kept.push(moment);
    else
      rejected.push({
        row: moment.row,
        reason:
          textOf(last.row) === textOf(moment.row)
            ? "the same row again"
            : "the same time as the row before",
      });
  }
  return { moments: kept, rejected, mended: [] };
}

function spread(moments: readonly Moment[]): SpreadRows {
  const groups = groupsOf(moments);
  const starts = groups.map((group) => (group[0] as Moment).time);
  const quantum = median(starts.slice(1).map((time, i) => time - (starts[i] as number)));
  const usual = median(groups.map((group) => group.length));
  if (groups.length < 2) return withoutRepeats(moments, () => "");
  const spreadOut = groups.flatMap((group, g) => {
    const next = starts[g + 1];
    const here = starts[g] as number;
    const span = next === undefined ? quantum : Math.min(quantum, next - here);
    const places = Math.max(group.length, g === 0 || next === undefined ? usual : 1);
    // The log began somewhere inside its first stamp: its rows belong to the end of that span.
    const skipped = g === 0 ? places - group.length : 0;
    return group.map(({ row }, k) => ({ row, time: here + (span * (skipped + k)) / places }));
  });
  return {
    moments: spreadOut,
    rejected: [],
    mended: [
      `stamps repeat, so the ${usual} or so rows of each were spread evenly over ${quantum} s`,
    ],
  };
}

function groupsOf(moments: readonly Moment[]): readonly (readonly Moment[])[] {
  const groups: Moment[][] = [];
  for (const moment of moments) {
    const group = groups.at(-1);
    if (group?.[0] !== undefined && group[0].time === moment.time) group.push(moment);
    else groups.push([moment]);
  }
  return groups;
}
