import { failed, ok, type Result } from "../problem.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import type { FiringStudy } from "./FiringStudy.ts";

/**
 * The schedule of the next test, to be written as a file.
 * @returns `trials/no-next-firing` when there is none to write.
 */
export function nextSchedule({ tiles, next }: FiringStudy): Result<Schedule> {
  const schedule = next?.firing?.schedule;
  if (schedule) return ok(schedule);
  return failed({
    code: "trials/no-next-firing",
    what:
      tiles.tiles.length === 0
        ? "no record of these firings names trial tiles, so there is no next test"
        : "no schedule could be made for the next test",
    where: "--next",
    expected:
      "trial tiles in the records, and a record that names its schedule or a cone that was reached",
    fix: "note trials and schedule in the records beside the logs, or leave --next out",
  });
}
