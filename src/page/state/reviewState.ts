import { z } from "zod";
import type { Problem } from "../../core/problem.ts";
import { type KeptFile, keptFileShape } from "../parts/KeptFile.ts";
import type { ReviewAnswer } from "../worker/answers.ts";

/** What a person said of how the log is to be read; null where the log itself is believed. */
const toldShape = z.strictObject({
  unit: z.enum(["C", "F", "K"]).nullable(),
  columns: z.array(z.string()).readonly().nullable(),
  timeColumn: z.string().nullable(),
  timeUnit: z.enum(["s", "min", "h"]).nullable(),
  dayFirst: z.boolean().nullable(),
  delimiter: z.string().nullable(),
  decimal: z.enum([".", ","]).nullable(),
  encoding: z.string().nullable(),
  /** Step between rows of a log without times [s]. */
  intervalSeconds: z.number().positive().nullable(),
});

/** What a person said of how the log is to be read; null where the log itself is believed. */
export type ToldOfLog = z.infer<typeof toldShape>;

/** How the work of the Review table is stored. */
export const reviewWorkShape = z.strictObject({
  log: keptFileShape.nullable(),
  record: keptFileShape.nullable(),
  schedule: keptFileShape.nullable(),
  /** Logs of the same kiln from before, each with the record of the same name. */
  earlier: z.array(keptFileShape).readonly(),
  told: toldShape,
});

/** What lies on the Review table: files as they are, and what was said of the log. */
export type ReviewWork = z.infer<typeof reviewWorkShape>;

/** What the Review table works out from it, and what is only on the way. */
export interface ReviewDesk {
  /** The firing as last read; null until then, and when it cannot be read. */
  readonly answer: ReviewAnswer | null;
  /** Columns of the log in order, for choosing among them; empty until it was looked at. */
  readonly columns: readonly string[];
  /** How far the reading is; null when nothing is being read. */
  readonly busy: { readonly fraction: number; readonly at: string } | null;
  /** The reading was stopped by hand. */
  readonly isStopped: boolean;
  /** Why the firing cannot be read. */
  readonly problems: readonly Problem[];
  /** Why a drop changed nothing, or something else could not be done. */
  readonly refused: readonly Problem[];
  /** The page took up °F from a log, which is said until somebody picks a unit. */
  readonly isFollowed: boolean;
  /** How many parts of the report are laid out; they come one a frame. */
  readonly parts: number;
  /** The finding that is marked in the charts, by its place in the list. */
  readonly marked: number | null;
  /** The piece that the questions are about, by its place among those found. */
  readonly piece: number;
}

/** Nothing said of a log. */
export const NOTHING_TOLD: ToldOfLog = {
  unit: null,
  columns: null,
  timeColumn: null,
  timeUnit: null,
  dayFirst: null,
  delimiter: null,
  decimal: null,
  encoding: null,
  intervalSeconds: null,
};

/** The table with nothing on it. */
export const EMPTY_REVIEW: { readonly work: ReviewWork; readonly desk: ReviewDesk } = {
  work: { log: null, record: null, schedule: null, earlier: [], told: NOTHING_TOLD },
  desk: {
    answer: null,
    columns: [],
    busy: null,
    isStopped: false,
    problems: [],
    refused: [],
    isFollowed: false,
    parts: 0,
    marked: null,
    piece: 0,
  },
};

/** Whether nothing lies on the table. */
export function isEmpty({ log, record, schedule, earlier }: ReviewWork): boolean {
  const files: readonly (KeptFile | null)[] = [log, record, schedule];
  return files.every((file) => file === null) && earlier.length === 0;
}
