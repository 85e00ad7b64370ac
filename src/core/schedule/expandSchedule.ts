import { makeCurve } from "../curve/Curve.ts";
import { type AssumedKiln, REFERENCE_KILN } from "../kiln/LearnedKiln.ts";
import { type PredictedFiring, predictFiring } from "../kiln/predictFiring.ts";
import type { Expansion, Schedule, Segment, TimelineRow } from "./Schedule.ts";

/**
 * What is assumed of a kiln must not make a fast fall look gentle: falls that are programmed faster
 * than this count as written, gentler ones as slow as that kiln falls [°C/h]; our own choice.
 */
const GENTLE_C_PER_HOUR = 60;

/** What to take instead of the usual assumptions. */
interface ExpandOptions {
  /** The user's own kiln; without it the reference kiln stands in. */
  readonly kiln?: AssumedKiln;
}

/**
 * A schedule laid out in time.
 * Programmed climbs are followed as written, even where the kiln may not manage (`checkSchedule` says
 * so); a programmed fall is no faster than the kiln falls by itself, where that is known or the fall gentle; `free` ramps go as the kiln goes, with points at most 10 minutes apart, and for a learned
 * kiln as the whole firing is predicted; holds are flat.
 *
 * @throws RangeError when the schedule has no segment, or one that goes nowhere.
 */
export function expandSchedule(schedule: Schedule, options: ExpandOptions = {}): Expansion {
  const kiln = options.kiln ?? REFERENCE_KILN;
  const firing = freeFiring(schedule, kiln);
  const times = [0];
  const temps = [schedule.startC];
  const timeline: TimelineRow[] = [];
  let now = 0;
  let hereC = schedule.startC;
  schedule.segments.forEach((segment, index) => {
    const predicted =
      firing !== null && segment.rateCPerHour === "free"
        ? predictedRamp(firing, index, segment.toC)
        : null;
    const points = predicted ?? rampPoints(segment, hereC, kiln);
    for (const point of points) {
      times.push(now + point.seconds);
      temps.push(point.tempC);
    }
    const rampSeconds = points.at(-1)!.seconds;
    const base = { segment: index, toC: segment.toC };
    timeline.push({
      ...base,
      kind: "ramp",
      fromC: hereC,
      rateCPerHour:
        segment.rateCPerHour === "free"
          ? ((segment.toC - hereC) * 3600) / rampSeconds
          : segment.rateCPerHour,
      assumedRate: segment.rateCPerHour === "free",
      startSeconds: now,
      endSeconds: now + rampSeconds,
    });
    now += rampSeconds;
    hereC = segment.toC;
    if (segment.holdSeconds === 0) return;
    timeline.push({
      ...base,
      kind: "hold",
      fromC: hereC,
      rateCPerHour: 0,
      assumedRate: false,
      startSeconds: now,
      endSeconds: now + segment.holdSeconds,
    });
    now += segment.holdSeconds;
    times.push(now);
    temps.push(hereC);
  });
  return {
    curve: makeCurve(times, temps),
    timeline,
    assumptions: assumptionsOf(timeline, kiln),
  };
}

/** The whole firing of a learned kiln, from which its `free` ramps are taken; null when there is nothing to take. */
function freeFiring(schedule: Schedule, { learned }: AssumedKiln): PredictedFiring | null {
  const hasFree = schedule.segments.some(({ rateCPerHour }) => rateCPerHour === "free");
  if (learned === undefined || !hasFree) return null;
  return predictFiring(learned, { segments: schedule.segments, startC: schedule.startC });
}

function rampPoints(segment: Segment, fromC: number, kiln: AssumedKiln): readonly RampPoint[] {
  const { toC, rateCPerHour } = segment;
  if (toC === fromC) throw new RangeError(`expandSchedule: a segment stays at ${toC} °C`);
  if (rateCPerHour === "free") return freeRamp({ fromC, toC, kiln });
  const seconds = ((toC - fromC) * 3600) / rateCPerHour;
  if (!(seconds > 0))
    throw new RangeError(
      `expandSchedule: ${rateCPerHour} °C/h does not lead from ${fromC} to ${toC} °C`,
    );
  const isCounted = kiln !== REFERENCE_KILN || -rateCPerHour <= GENTLE_C_PER_HOUR;
  return isCounted && toC < fromC && freeSpeed(kiln, toC, false) < -rateCPerHour
    ? freeRamp({ fromC, toC, kiln, mostCPerHour: -rateCPerHour })
    : [{ seconds, tempC: toC }];
}

function assumptionsOf(timeline: readonly TimelineRow[], kiln: AssumedKiln): readonly string[] {
  const assumed = timeline.filter((row) => row.assumedRate);
  const heats = assumed.some((row) => row.toC > row.fromC);
  const cools = assumed.filter((row) => row.toC < row.fromC);
  const sentences: string[] = [];
  if (heats) sentences.push(`Full heating is that of ${kiln.basis}.`);
  if (cools.length > 0)
    sentences.push(`Falling by itself is the natural cooling, lid shut, of ${kiln.basis}.`);
  const crawls = cools.some((row) => freeSpeed(kiln, row.toC, false) === SLOWEST_FREE_C_PER_HOUR);
  if (crawls)
    sentences.push(
      "Close to room temperature the fall all but stops; the last of it is counted at 1 °C an hour, or 1.8 °F.",
    );
  if (timeline.some((row) => !row.assumedRate && row.kind === "ramp"))
    sentences.push("Programmed ramps are taken to be followed exactly.");
  return sentences;
}

/** Least time between points of a ramp [s]. */
const APART_SECONDS = 300;

/**
 * A ramp at `free` as a predicted firing goes through it, without its first point.
 * @returns null when the kiln does not get through that segment.
 */
function predictedRamp(
  firing: PredictedFiring,
  segment: number,
  toC: number,
): readonly RampPoint[] | null {
  const went = firing.segments[segment];
  if (went === undefined || went.rampEndSeconds <= went.startSeconds) return null;
  const { timesSeconds, tempsC } = firing.curve;
  const points: RampPoint[] = [];
  let lastSeconds = went.startSeconds;
  for (const [i, seconds] of timesSeconds.entries()) {
    if (seconds >= went.rampEndSeconds) break;
    if (seconds < lastSeconds + APART_SECONDS) continue;
    points.push({ seconds: seconds - went.startSeconds, tempC: tempsC[i]! });
    lastSeconds = seconds;
  }
  return [...points, { seconds: went.rampEndSeconds - went.startSeconds, tempC: toC }];
}

/** Slowest that a `free` ramp is counted [°C/h]: near room temperature a kiln never quite arrives. */
const SLOWEST_FREE_C_PER_HOUR = 1;

/** Longest step between points of a `free` ramp [s]. */
const STEP_SECONDS = 300;

/** Whether a rate as somebody wrote it leaves the ramp to the kiln; `full` is what older files say. */
export function isFreeRate(written: string): boolean {
  return /^\s*(free|full)\s*$/i.test(written);
}

/** A point of a ramp: time from the ramp's start [s] and temperature [°C]. */
interface RampPoint {
  readonly seconds: number;
  readonly tempC: number;
}

/** Speed [°C/h, positive] of a kiln in the direction of a ramp, never under the slowest counted. */
export function freeSpeed(kiln: AssumedKiln, tempC: number, rising: boolean): number {
  const speed = rising ? kiln.fullHeatingCPerHour(tempC) : kiln.naturalCoolingCPerHour(tempC);
  if (!Number.isFinite(speed)) throw new RangeError(`freeSpeed: ${speed} °C/h at ${tempC} °C`);
  return Math.max(SLOWEST_FREE_C_PER_HOUR, speed);
}

/**
 * A ramp at `free`, from one temperature to another, without its first point; with a most, the ramp of
 * a controller that asks for so much and gets what the kiln does.
 * Time = ∫ dT / speed(T), by Simpson's rule on steps of about 5 minutes.
 */
export function freeRamp(ramp: {
  readonly fromC: number;
  readonly toC: number;
  readonly kiln: AssumedKiln;
  /** Positive [°C/h]. */
  readonly mostCPerHour?: number;
}): readonly RampPoint[] {
  const { fromC, toC, kiln, mostCPerHour = Number.POSITIVE_INFINITY } = ramp;
  const rising = toC > fromC;
  const sign = rising ? 1 : -1;
  const slowness = (tempC: number) => 3600 / Math.min(mostCPerHour, freeSpeed(kiln, tempC, rising));
  const points: RampPoint[] = [];
  let tempC = fromC;
  let seconds = 0;
  while (tempC !== toC) {
    const reach = (STEP_SECONDS / slowness(tempC)) * sign;
    const left = toC - tempC;
    // The last two steps share what is left, so that no sliver of a step remains.
    const step =
      Math.abs(left) <= Math.abs(reach)
        ? left
        : Math.abs(left) < 2 * Math.abs(reach)
          ? left / 2
          : reach;
    const next = step === left ? toC : tempC + step;
    const mean = (slowness(tempC) + 4 * slowness((tempC + next) / 2) + slowness(next)) / 6;
    seconds += Math.abs(next - tempC) * mean;
    tempC = next;
    points.push({ seconds, tempC });
  }
  return points;
}
