import type { RejectedRow } from "../LogReading.ts";

/** Rows that are listed one by one; more are counted by reason. Own choice: far more than anyone reads. */
const MOST_LISTED = 10_000;

/** Characters of a row that are shown. */
const SHOWN_CHARACTERS = 60;

/** Rows that gave no reading: the first ones listed, all of them counted. */
export interface Rejections {
  readonly listed: readonly RejectedRow[];
  /** Number of rows by reason that are not listed. */
  readonly unlisted: ReadonlyMap<string, number>;
}

/** Gathers rejected rows in bounded memory. */
export interface RejectionList extends Rejections {
  readonly add: (reason: string, where: () => Omit<RejectedRow, "reason">) => void;
}

/** An empty list of rejected rows. */
export function rejectionList(): RejectionList {
  const listed: RejectedRow[] = [];
  const unlisted = new Map<string, number>();
  return {
    listed,
    unlisted,
    add: (reason, where) => {
      if (listed.length >= MOST_LISTED) return count(unlisted, reason, 1);
      const { line, text } = where();
      listed.push({ line, reason, text: text.slice(0, SHOWN_CHARACTERS) });
    },
  };
}

/** Several lists as one, by line; what is then too much is counted. */
export function mergedRejections(lists: readonly Rejections[]): Rejections {
  const all = lists.flatMap(({ listed }) => listed).sort((a, b) => a.line - b.line);
  const unlisted = new Map<string, number>();
  for (const list of lists)
    for (const [reason, rows] of list.unlisted) count(unlisted, reason, rows);
  for (const { reason } of all.slice(MOST_LISTED)) count(unlisted, reason, 1);
  return { listed: all.slice(0, MOST_LISTED), unlisted };
}

function count(counts: Map<string, number>, reason: string, rows: number): void {
  counts.set(reason, (counts.get(reason) ?? 0) + rows);
}
