import type { Result } from "../../core/problem.ts";
import type { Schedule, Segment } from "../../core/schedule/Schedule.ts";
import { parseSchedule } from "../../core/schedule/scheduleFile.ts";
import { scheduleYaml } from "../../core/schedule/scheduleYaml.ts";

/** What may be changed in one segment. */
export type SegmentChange = Partial<Pick<Segment, "toC" | "rateCPerHour" | "holdSeconds" | "why">>;

/** The schedule with one segment changed; each rate takes the direction that its target asks for. */
export function withSegment(schedule: Schedule, index: number, change: SegmentChange): Schedule {
  const segments = schedule.segments.map((segment, at) =>
    at === index ? { ...segment, ...change } : segment,
  );
  return withDirections({ ...schedule, segments });
}

/** The schedule with one more segment, halfway to the next target, or a fall to 100 °C at the end. */
export function withSegmentAfter(schedule: Schedule, index: number): Schedule {
  const { segments } = schedule;
  const here = segments[index]?.toC ?? schedule.startC;
  const next = segments[index + 1];
  const toC = next === undefined ? lastTarget(here) : Math.round((here + next.toC) / 2);
  const added: Segment = {
    toC,
    rateCPerHour: next?.rateCPerHour ?? 60,
    holdSeconds: 0,
    why: null,
  };
  return withDirections({ ...schedule, segments: segments.toSpliced(index + 1, 0, added) });
}

/** The schedule without one of its segments. */
export function withoutSegment(schedule: Schedule, index: number): Schedule {
  return withDirections({ ...schedule, segments: schedule.segments.toSpliced(index, 1) });
}

/**
 * The same schedule when a file may hold it, in the words that the command has for it otherwise:
 * what is typed on the page is held to what a file is held to.
 */
export function allowed(schedule: Schedule): Result<Schedule> {
  const read = parseSchedule(scheduleYaml(schedule), "the schedule");
  return read.ok ? { ok: true, value: schedule } : read;
}

/** Where a new last segment ends [°C]: cool enough to open, or warm where it is cool already. */
function lastTarget(hereC: number): number {
  return hereC > 150 ? 100 : Math.round(hereC + 200);
}

function withDirections(schedule: Schedule): Schedule {
  let fromC = schedule.startC;
  const segments = schedule.segments.map((segment) => {
    const falls = segment.toC < fromC;
    fromC = segment.toC;
    if (segment.rateCPerHour === "free") return segment;
    const rate = Math.abs(segment.rateCPerHour);
    return { ...segment, rateCPerHour: falls ? -rate : rate };
  });
  return { ...schedule, segments };
}
