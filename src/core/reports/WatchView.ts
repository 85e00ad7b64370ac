import type { WatchState } from "../watch/WatchState.ts";

/** What one look at a growing log has to show. */
export interface WatchView {
  /** File name without its folder. */
  readonly log: string;
  /** Null while there are no readings. */
  readonly state: WatchState | null;
  /** What is waited for, or why the log cannot be read now, as a sentence; null when all is well. */
  readonly why: string | null;
  /** The watch ends with this look. */
  readonly isLast: boolean;
  /** The file, as the look found it. */
  readonly file: {
    readonly change: "grown" | "same" | "anew" | "missing";
    /** How often it was replaced or cut, and so began anew. */
    readonly restarts: number;
    /** How long it has not changed [s]. */
    readonly stillSeconds: number;
    /** A last line without its end stands in it and is not read yet. */
    readonly hasHalfLine: boolean;
    /** Usual step between readings [s]; null while it is not known. */
    readonly intervalSeconds: number | null;
  };
  /** The watch ends when the file has been still for so long [s]. */
  readonly untilStillSeconds: number;
}
