import { type AssumedKiln, REFERENCE_KILN } from "../kiln/AssumedKiln.ts";
import { ok, type Result } from "../problem.ts";
import { type Repair, repairSchedule } from "./repairSchedule.ts";
import type { Schedule } from "./Schedule.ts";
import { type Solvable, solveSchedule } from "./solveSchedule.ts";
import { tidied, wholeSchedule } from "./tidied.ts";
import { keptTo, type WishedPace } from "./wishedPace.ts";

/** What a schedule is to be changed for. */
export interface ScheduleChange {
  readonly paces: readonly WishedPace[];
  readonly repair: boolean;
  /** Solved last, so that what was slowed counts; with the cone to go down. */
  readonly solve: { readonly part: Solvable; readonly cone: string } | null;
}

/** A changed schedule. */
export interface ChangedSchedule {
  readonly after: Schedule;
  /** Null when nothing was to be mended. */
  readonly repair: Repair | null;
}

/**
 * A schedule changed as the command line and the advice of a review ask for it: first kept to the
 * paces, then mended, then solved; in whole degrees and rates of its unit.
 *
 * @returns the problems of `solveSchedule`.
 */
export function changedSchedule(
  schedule: Schedule,
  by: ScheduleChange & { readonly kiln?: AssumedKiln; readonly offsetK?: number | null },
): Result<ChangedSchedule> {
  const { paces, solve, repair: mends, ...known } = by;
  const kiln = by.kiln ?? REFERENCE_KILN;
  const kept = keptTo(paces.length > 0 ? wholeSchedule(schedule) : schedule, { paces, kiln });
  const repair = mends ? repairSchedule({ schedule: kept, ...known }) : null;
  const mended = repair?.after ?? (paces.length > 0 ? tidied(kept) : kept);
  if (solve === null) return ok({ after: mended, repair });
  const solved = solveSchedule({
    schedule: mended,
    cone: solve.cone,
    solve: solve.part,
    ...known,
  });
  return solved.ok ? ok({ after: solved.value, repair }) : solved;
}
