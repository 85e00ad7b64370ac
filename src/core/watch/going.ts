import type { ConeSeries } from "../cones/cone.ts";
import type { Curve } from "../curve/Curve.ts";
import { kilnFiringOf } from "../firing/kilnFiring.ts";
import { firmPeak, planShiftSeconds } from "../firing/zoneReview.ts";
import { type AssumedKiln, REFERENCE_KILN } from "../kiln/LearnedKiln.ts";
import type { LogReading } from "../log/reading/LogReading.ts";
import { expandSchedule } from "../schedule/expandSchedule.ts";
import type { Expansion, Schedule, Segment } from "../schedule/Schedule.ts";
import { type CourseAhead, courseAhead } from "./courseAhead.ts";
import { type PlanPlace, phaseOf, planPlace, setPointOf } from "./planPlace.ts";
import { type HeldBack, type OwnFall, ownFall, recentRate, steadyRate } from "./recentRate.ts";
import type { Phase, RecentRate } from "./WatchState.ts";

/** Hottest that a climb is followed to [°C]. */
const HOTTEST_C = 1400;
/** A hold is thought to go on for longer than anything is said of [s]. */
const LONG_HOLD_SECONDS = 24 * 3600;

/** What is given of a firing beside the Curve of its hottest thermocouple. */
interface GivenFiring {
  readonly reading: LogReading;
  readonly plan: Schedule | null;
  readonly kiln: AssumedKiln | null;
  readonly offsetK: number | null;
}

/** How the kiln is going, with all that a look ahead needs. */
export interface Going {
  readonly curve: Curve;
  readonly nowSeconds: number;
  readonly tempC: number;
  readonly peakC: number;
  readonly peakAtSeconds: number;
  readonly rate: RecentRate | null;
  readonly steady: RecentRate | null;
  readonly phase: Phase | null;
  /** The kiln's own speed, or the stand-in's, at the share that this log shows. */
  readonly kiln: AssumedKiln;
  readonly own: OwnFall | null;
  readonly isLearned: boolean;
  readonly offsetK: number | null;
  readonly plan: { readonly schedule: Schedule; readonly expansion: Expansion } | null;
}

/** The same with its place on the plan. */
export interface Ahead extends Going {
  readonly place: PlanPlace | null;
  readonly series: ConeSeries;
}

/** How a kiln is going at the last reading of its hottest thermocouple. */
export function goingOf(curve: Curve, given: GivenFiring): Going {
  const tempC = curve.tempsC.at(-1)!;
  const peak = firmPeak(curve);
  const { reading, plan } = given;
  const rate = recentRate(curve, reading.intervalSeconds);
  const base = given.kiln ?? REFERENCE_KILN;
  const output = kilnFiringOf(reading, null)?.output ?? null;
  const held = { planned: plannedFalls(plan), setPoint: setPointOf(reading) };
  const own =
    tempC < peak.tempC
      ? ownFall({ curve, output, held, rateCPerHour: rate?.rateCPerHour ?? null }, base)
      : null;
  const kiln = own === null ? base : atShare(base, own.share);
  const expansion = plan && expandSchedule(plan, { kiln });
  return {
    curve,
    nowSeconds: curve.timesSeconds.at(-1)!,
    tempC,
    peakC: peak.tempC,
    peakAtSeconds: peak.seconds,
    rate,
    steady: steadyRate(curve, reading.intervalSeconds),
    phase: rate && phaseOf(rate, { tempC, peakC: peak.tempC }),
    kiln,
    own,
    isLearned: given.kiln !== null,
    offsetK: given.offsetK,
    plan: plan && expansion && { schedule: plan, expansion },
  };
}

/** Stretches of temperature in which a plan programmes the fall. */
function plannedFalls(plan: Schedule | null): HeldBack["planned"] {
  return (plan?.segments ?? []).flatMap(({ toC, rateCPerHour }, i) => {
    const highC = plan?.segments[i - 1]?.toC ?? toC;
    return rateCPerHour === "free" || highC <= toC ? [] : [{ highC, lowC: toC }];
  });
}

/** A kiln that falls at a share of another's speed. */
function atShare(kiln: AssumedKiln, share: number): AssumedKiln {
  return { ...kiln, naturalCoolingCPerHour: (tempC) => share * kiln.naturalCoolingCPerHour(tempC) };
}

/** Where on its plan a firing is; null without a plan or such a place. */
export function placeOnPlan(going: Going): PlanPlace | null {
  const { plan, phase, curve } = going;
  if (plan === null || phase === null) return null;
  const shift = planShiftSeconds(curve, plan.expansion);
  return shift === null ? null : planPlace(plan.expansion, shift, { ...going, phase });
}

/** What the kiln will do, with so much added to the rate that it climbs at. */
export function courseOf(going: Ahead, moreCPerHour: number): CourseAhead {
  const { place, plan, phase, steady, tempC, kiln, isLearned } = going;
  const course = (segments: readonly Segment[]) =>
    courseAhead(going, { segments, kiln, knowsClimb: isLearned });
  if (phase === null || steady === null) return course([]);
  if (place !== null && plan !== null) {
    const now = { tempC, phase, steady, knowsClimb: isLearned };
    return course(segmentsLeft(plan.schedule, place, { now, moreCPerHour }));
  }
  const onward = { rateCPerHour: Math.max(0, steady.rateCPerHour + moreCPerHour), why: null };
  if (phase === "climbing") return course([{ ...onward, toC: HOTTEST_C, holdSeconds: 0 }]);
  return phase === "holding"
    ? course([{ ...onward, toC: tempC, holdSeconds: LONG_HOLD_SECONDS }])
    : course([]);
}

/** A kiln that climbs by less than this share of what is asked cannot keep up; our own estimate. */
const KEEPS_UP = 0.95;
/** Whether it does is seen from a steady rate of this length on [s]: a corner of the plan takes a while. */
const TELLING_SECONDS = 1000;

/** What is known of how the kiln is going. */
interface GoingNow {
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
function segmentsLeft(
  schedule: Schedule,
  place: PlanPlace,
  given: { readonly now: GoingNow; readonly moreCPerHour: number },
): readonly Segment[] {
  const { row } = place;
  const segment = schedule.segments[row.segment]!;
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
