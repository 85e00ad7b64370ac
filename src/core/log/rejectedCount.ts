import type { LogRows } from "./LogReading.ts";

/** Number of rows that gave no reading, whether they are listed or only counted. */
export function rejectedCount({ rejected, unlisted = [] }: LogRows): number {
  return unlisted.reduce((sum, { count }) => sum + count, rejected.length);
}
