import { ok, type Result } from "../../core/problem.ts";
import type { Draft } from "../../core/schedule/draftSchedule.ts";
import { draftSchedule } from "../../core/schedule/draftSchedule.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import { type KilnAsked, knownKiln } from "./KilnAsked.ts";

/** Drafts a schedule whole, with the stress in its ware and the spread of that. */
export function draftJob(asked: {
  readonly schedule: Schedule;
  readonly start: string | null;
  readonly kiln: KilnAsked;
}): Result<Draft> {
  const { schedule, start, kiln } = asked;
  return ok(draftSchedule({ schedule, start, ...knownKiln(kiln) }));
}
