import type { Result } from "../../core/problem.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import { type Solvable, solveSchedule } from "../../core/schedule/solveSchedule.ts";
import { type KilnAsked, knownKiln } from "./KilnAsked.ts";

/** Changes one thing in a schedule so that its cone is just down. */
export function solveJob(asked: {
  readonly schedule: Schedule;
  readonly cone: string;
  readonly solve: Solvable;
  readonly kiln: KilnAsked;
}): Result<Schedule> {
  const { kiln, ...rest } = asked;
  return solveSchedule({ ...rest, ...knownKiln(kiln) });
}
