import { ok, type Result } from "../../core/problem.ts";
import { type Repair, repairSchedule } from "../../core/schedule/repairSchedule.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import { type KilnAsked, knownKiln } from "./KilnAsked.ts";

/** Mends every finding of a schedule with the smallest change in time. */
export function repairJob(asked: {
  readonly schedule: Schedule;
  readonly kiln: KilnAsked;
}): Result<Repair> {
  return ok(repairSchedule({ schedule: asked.schedule, ...knownKiln(asked.kiln) }));
}
