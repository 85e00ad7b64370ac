import type { Schedule, Segment } from "../schedule/Schedule.ts";
import type { PlanPlace } from "./planPlace.ts";
import type { Phase, RecentRate } from "./WatchState.ts";

/** A kiln that climbs by less than this share of what is asked cannot keep up; our own estimate. */
const KEEPS_UP = 0.95;
/** Whether it does is seen from a steady rate of this length on [s]: a corner of the plan takes a while. */
const TELLING_SECONDS = 1000;

/** What is known of how the kiln is going. */
export interface GoingNow {
  readonly tempC: number;
  readonly phase: Phase;
  readonly steady: RecentRate;
  /** The kiln's own fastest climb is known. */
  readonly knowsClimb: boolean;
}

/**
 * What a schedule still asks from a place on. The ramp that the kiln is on goes on as the plan has
 * it, or as the kiln goes where it cannot keep up, and where the plan says "free" to an unknown kiln.
 *
 * @param moreCPerHour Added to that ramp's rate, to see what its scatter does.
 */
export function segmentsLeft(
  schedule: Schedule,
  place: PlanPlace,
  given: { readonly now: GoingNow; readonly moreCPerHour: number },
): readonly Segment[] {
  const { row } = place;
  const segment = schedule.segments[row.segment] as Segment;
  const later = schedule.segments.slice(row.segment + 1);
  const { now } = given;
  if (row.kind === "hold")
    return [
      {
        ...segment,
        toC: now.phase === "holding" ? now.tempC : row.toC,
        holdSeconds: row.endSeconds - place.planSeconds,
      },
      ...later,
    ];
  if (row.toC <= now.tempC) return [segment, ...later];
  return [{ ...segment, rateCPerHour: climbLeft(segment, given) }, ...later];
}

/** The climb of the ramp that the kiln is on. */
function climbLeft(
  { rateCPerHour }: Segment,
  { now, moreCPerHour }: { readonly now: GoingNow; readonly moreCPerHour: number },
): number | "free" {
  const { rateCPerHour: present, sigmaCPerHour, overSeconds } = now.steady;
  if (rateCPerHour === "free" && now.knowsClimb) return "free";
  const keepsUp =
    rateCPerHour !== "free" &&
    (overSeconds < TELLING_SECONDS || present + 2 * sigmaCPerHour >= KEEPS_UP * rateCPerHour);
  return Math.max(0, (keepsUp ? rateCPerHour : present) + moreCPerHour);
}
