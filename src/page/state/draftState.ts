import { z } from "zod";
import type { LearnedKiln } from "../../core/kiln/LearnedKiln.ts";
import { ok, type Problem, type Result } from "../../core/problem.ts";
import type { Mending } from "../../core/reports/mendingBlocks.ts";
import type { PastOffset } from "../../core/schedule/coneAim.ts";
import type { Draft } from "../../core/schedule/draftSchedule.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import { parseSchedule, scheduleYaml } from "../../core/schedule/scheduleFile.ts";
import { type KeptFile, keptFileShape } from "../parts/KeptFile.ts";
import type { EditorFrame } from "./editorFrame.ts";

/** What lies on the Draft table. */
export interface DraftWork {
  /** Null on an empty table. */
  readonly schedule: Schedule | null;
  /** Wall time of the start, as `parseStart` gives it, or null. */
  readonly start: string | null;
  /** Logs, and records beside them, that the kiln is learned from; empty for the assumed kiln. */
  readonly kilnFiles: readonly KeptFile[];
  /** What the plate of the kiln says [W], and the price of a kilowatt-hour; null when not told. */
  readonly powerWatt: number | null;
  readonly tariffPerKWh: number | null;
  /** What a review told of the thermocouple; goes before what logs of the kiln say. Null when nothing was told. */
  readonly offset: {
    /** Added to its readings [K]. */
    readonly offsetK: number;
    /** The log beside whose witness cones it was found. */
    readonly from: string;
  } | null;
}

/** The kiln that schedules are laid out for, learned from logs. */
export interface DeskKiln {
  readonly learned: LearnedKiln;
  /** Null when no record pins an offset by its witness cones. */
  readonly offset: PastOffset | null;
}

/** What the Draft table works out, and what is only on the way. */
export interface DraftDesk {
  /** The draft with stress and its spread, of the schedule as it last rested; null until then. */
  readonly full: {
    readonly draft: Draft;
    readonly kiln: DeskKiln | null;
    readonly offset: DraftWork["offset"];
  } | null;
  /** The ground of the curve while a corner is dragged, so that it does not move under it. */
  readonly heldFrame: EditorFrame | null;
  readonly kiln: DeskKiln | null;
  /** What is being read of the kiln's logs; null when nothing is. */
  readonly kilnBusy: string | null;
  readonly kilnProblems: readonly Problem[];
  /** What is being worked out, in words; null when nothing is. */
  readonly busy: string | null;
  readonly problems: readonly Problem[];
  /** A change that is offered; null when none is. */
  readonly offer: { readonly title: string; readonly mending: Mending } | null;
}

/** The table with nothing on it. */
export const EMPTY_DRAFT: { readonly work: DraftWork; readonly desk: DraftDesk } = {
  work: {
    schedule: null,
    start: null,
    kilnFiles: [],
    powerWatt: null,
    tariffPerKWh: null,
    offset: null,
  },
  desk: {
    full: null,
    heldFrame: null,
    kiln: null,
    kilnBusy: null,
    kilnProblems: [],
    busy: null,
    problems: [],
    offer: null,
  },
};

/** How the work of the Draft table is stored: the schedule as the text of its file. */
export const draftWorkShape = z.strictObject({
  schedule: z.string().nullable(),
  start: z
    .string()
    .regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}$/)
    .nullable(),
  kilnFiles: z.array(keptFileShape),
  powerWatt: z.number().positive().nullable(),
  tariffPerKWh: z.number().positive().nullable(),
  offset: z
    .strictObject({ offsetK: z.number().min(-100).max(100), from: z.string().max(400) })
    .nullable()
    .default(null),
});

/** The work of the Draft table to store. */
export function packDraft(work: DraftWork): z.infer<typeof draftWorkShape> {
  return {
    ...work,
    schedule: work.schedule && scheduleYaml(work.schedule),
    kilnFiles: [...work.kilnFiles],
  };
}

/** The work of the Draft table from storage; the problems of its schedule. */
export function unpackDraft(stored: z.infer<typeof draftWorkShape>): Result<DraftWork> {
  const schedule =
    stored.schedule === null ? ok(null) : parseSchedule(stored.schedule, "the stored schedule");
  return schedule.ok ? ok({ ...stored, schedule: schedule.value }) : schedule;
}
