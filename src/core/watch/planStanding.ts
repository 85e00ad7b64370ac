import type { ConeSeries } from "../cones/cone.ts";
import { kilnHeatworkOf } from "../cones/usualOffset.ts";
import type { Curve } from "../curve/Curve.ts";
import { crossingTimes } from "../curve/crossingTimes.ts";
import { peakOf } from "../curve/peakOf.ts";
import type { Expansion, Schedule } from "../schedule/Schedule.ts";
import { joined } from "./coneExpectation.ts";
import type { CourseAhead } from "./courseAhead.ts";
import type { PlanPlace } from "./planPlace.ts";
import type { Phase, PlanStanding } from "./WatchState.ts";

/** So near to the plan's highest temperature its peak is reached [K]. */
const AT_PEAK_K = 0.5;

/** Where a firing stands on its plan, and what the rest of it will leave as it is going. */
export function planStanding(
  plan: { readonly schedule: Schedule; readonly expansion: Expansion; readonly place: PlanPlace },
  going: {
    readonly curve: Curve;
    readonly course: CourseAhead;
    readonly series: ConeSeries;
    /** Null for the usual one. */
    readonly offsetK: number | null;
  },
): PlanStanding {
  const { schedule, expansion, place } = plan;
  const { curve, course, series, offsetK } = going;
  const peak = peakOf(expansion.curve);
  const isAhead = place.planSeconds < peak.seconds && course.curve !== null;
  const reached = isAhead
    ? crossingTimes(course.curve as Curve, peak.tempC - AT_PEAK_K)[0]?.seconds
    : undefined;
  const left = kilnHeatworkOf(joined(curve, course), { series, offsetK });
  return {
    title: schedule.title,
    lateSeconds: place.lateSeconds,
    doing: doingOf(place),
    toC: place.row.toC,
    asked: place.row.assumedRate ? "free" : place.row.rateCPerHour,
    leftSeconds: place.row.endSeconds - place.planSeconds,
    peakAtSeconds: reached ?? null,
    peakC: peak.tempC,
    endSeconds: course.endSeconds,
    finalCone: left.position.label,
    finalIndex: left.position.index,
    finalSigmaCones: left.sigmaCones,
  };
}

function doingOf({ row }: PlanPlace): Phase {
  if (row.kind === "hold") return "holding";
  return row.toC > row.fromC ? "climbing" : "falling";
}
