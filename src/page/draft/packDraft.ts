import { z } from "zod";
import { ok, type Result } from "../../core/problem.ts";
import { parseSchedule } from "../../core/schedule/scheduleFile.ts";
import { scheduleYaml } from "../../core/schedule/scheduleYaml.ts";
import { keptFileShape } from "../bench/KeptFile.ts";
import type { DraftWork } from "./draftState.ts";

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
