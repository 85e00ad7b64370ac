import { makeCurve } from "../curve/Curve.ts";
import { type AssumedKiln, REFERENCE_KILN } from "../kiln/AssumedKiln.ts";
import { type PredictedFiring, predictFiring } from "../kiln/predictFiring.ts";
import { freeRamp, freeSpeed, type RampPoint, SLOWEST_FREE_C_PER_HOUR } from "./freeRamp.ts";
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
    const rampSeconds = (points.at(-1) as RampPoint).seconds;
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
