import { type Curve, makeCurve } from "../curve/Curve.ts";
import type { AssumedKiln } from "../kiln/LearnedKiln.ts";
import type { Segment } from "../schedule/Schedule.ts";

/** What a kiln is still asked to do, and what it can. */
export interface Course {
  readonly segments: readonly Segment[];
  readonly kiln: AssumedKiln;
  /** The kiln is the user's own, so that its fastest climb holds; a stand-in's would not. */
  readonly knowsClimb: boolean;
}

/** A course with its times. */
export interface CourseAhead {
  /** From now to the end of the course; null when nothing is left of it. */
  readonly curve: Curve | null;
  readonly endSeconds: number;
  readonly endC: number;
  /** How long, up to a moment, the kiln falls as it does by itself rather than as programmed [s]. */
  readonly aloneUntil: (seconds: number) => number;
}

/** Length of the steps in which a kiln's own speed is followed [K]. */
const STEP_K = 5;

/** A kiln that goes slower than this gets no further [°C/h]. */
const STALLED_C_PER_HOUR = 1;

/** The course as it goes. */
interface Run {
  seconds: number;
  tempC: number;
  /** Falling by itself so far [s]. */
  alone: number;
  readonly alones: number[];
  readonly times: number[];
  readonly temps: number[];
}

/**
 * The Curve that a kiln will draw if it does what it is asked, no faster than it can: it falls no
 * faster than by itself, and a known one climbs no faster than with everything on. It ends early
 * where the kiln gets no further.
 */
export function courseAhead(
  now: { readonly nowSeconds: number; readonly tempC: number },
  course: Course,
): CourseAhead {
  const run: Run = {
    seconds: now.nowSeconds,
    tempC: now.tempC,
    alone: 0,
    alones: [0],
    times: [now.nowSeconds],
    temps: [now.tempC],
  };
  for (const segment of course.segments) {
    if (!ramped(run, segment, course)) break;
    if (segment.holdSeconds > 0)
      add(run, { seconds: segment.holdSeconds, tempC: run.tempC, isAlone: false });
  }
  return {
    curve: run.times.length < 2 ? null : makeCurve(run.times, run.temps),
    endSeconds: run.seconds,
    endC: run.tempC,
    aloneUntil: (seconds) => aloneUntil(run, seconds),
  };
}

/** Time of a fall by itself [s], lid shut; null where the kiln never quite gets there. */
export function secondsToFall(
  kiln: AssumedKiln,
  fall: { readonly fromC: number; readonly toC: number },
): number | null {
  let seconds = 0;
  let tempC = fall.fromC;
  while (tempC > fall.toC) {
    const step = Math.min(STEP_K, tempC - fall.toC);
    const speed = kiln.naturalCoolingCPerHour(tempC - step / 2);
    if (speed < STALLED_C_PER_HOUR) return null;
    seconds += (3600 * step) / speed;
    tempC -= step;
  }
  return seconds;
}

/** Goes along a ramp; false when the kiln gets no further on it. */
function ramped(run: Run, segment: Segment, course: Course): boolean {
  const { toC } = segment;
  while (run.tempC !== toC) {
    const left = toC - run.tempC;
    const step = Math.sign(left) * Math.min(Math.abs(left), STEP_K);
    const speed = speedOf(segment, course, { tempC: run.tempC + step / 2, rising: left > 0 });
    if (speed < STALLED_C_PER_HOUR) return false;
    add(run, {
      seconds: (3600 * Math.abs(step)) / speed,
      tempC: Math.abs(left) <= STEP_K ? toC : run.tempC + step,
      isAlone: left < 0 && speed !== Math.abs(segment.rateCPerHour as number),
    });
  }
  return true;
}

function speedOf(
  { rateCPerHour }: Segment,
  { kiln, knowsClimb }: Course,
  at: { readonly tempC: number; readonly rising: boolean },
): number {
  const asked = rateCPerHour === "free" ? Number.POSITIVE_INFINITY : Math.abs(rateCPerHour);
  if (!at.rising) return Math.min(asked, kiln.naturalCoolingCPerHour(at.tempC));
  const most = kiln.fullHeatingCPerHour(at.tempC);
  return knowsClimb || rateCPerHour === "free" ? Math.min(asked, most) : asked;
}

function add(
  run: Run,
  step: { readonly seconds: number; readonly tempC: number; readonly isAlone: boolean },
): void {
  run.seconds += step.seconds;
  run.tempC = step.tempC;
  if (step.isAlone) run.alone += step.seconds;
  run.times.push(run.seconds);
  run.temps.push(step.tempC);
  run.alones.push(run.alone);
}

function aloneUntil({ times, alones, alone }: Run, seconds: number): number {
  const next = times.findIndex((time) => time > seconds);
  return next < 0 ? alone : alones[Math.max(0, next - 1)]!;
}
