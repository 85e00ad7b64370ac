import type { Result } from "../../core/problem.ts";
import { type NewScheduleInput, newSchedule } from "../../core/schedule/newSchedule.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import { type KilnAsked, knownKiln } from "./KilnAsked.ts";

/** Works out a new schedule for a cone, a piece of ware and a kiln. */
export function newJob(asked: {
  readonly wanted: Omit<NewScheduleInput, "kiln" | "offsetK" | "limitFor">;
  readonly kiln: KilnAsked;
}): Result<Schedule> {
  return newSchedule({ ...asked.wanted, ...knownKiln(asked.kiln) });
}
