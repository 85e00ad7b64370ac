import { type Curve, temperatureAt } from "../curve/Curve.ts";
import { slopeMeter } from "../curve/slopes.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../ware/inversions.ts";
import type { PingBand, PingTemperatures, PlacedPing } from "./PingReview.ts";

/** A log beside a recording. */
export interface LogBeside {
  readonly logName: string;
  readonly channel: string;
  readonly curve: Curve;
  /** Start of the recording in the log [s]. */
  readonly startedSeconds: number;
  /** When the ware was taken out, and how hot it was [°C]; null when nobody noted it. */
  readonly unloaded: { readonly seconds: number; readonly tempC: number | null } | null;
}

/**
 * Temperature of the ware at a moment of the recording [°C].
 * Null outside the readings of the log, in its gaps, and from unloading on: what lies on a shelf is
 * no longer as hot as the kiln.
 */
export function wareTemperature(beside: LogBeside, atSeconds: number): number | null {
  return isTakenOut(beside, atSeconds)
    ? null
    : temperatureAt(beside.curve, beside.startedSeconds + atSeconds);
}

function isTakenOut({ unloaded, startedSeconds }: LogBeside, atSeconds: number): boolean {
  return unloaded !== null && startedSeconds + atSeconds >= unloaded.seconds;
}

/** Steps in which the rate against temperature is told [°C]: the finer ones up to a range of 150. */
const STEP_C = 50;
const FINE_STEP_C = 20;
const FINE_UP_TO_K = 150;

/** The recording is walked through in even steps of about this [s]. */
const WALK_SECONDS = 10;

/** Slower than this is steady [°C/h], over this time [s]; our own choice. */
const STEADY_C_PER_HOUR = 5;
const STEADY_WINDOW_SECONDS = 1800;

/** What the log says of the pings. */
export function pingTemperatures(
  pings: readonly PlacedPing[],
  seconds: number,
  beside: LogBeside,
): PingTemperatures {
  const { logName, channel, startedSeconds } = beside;
  const steps = Math.max(1, Math.round(seconds / WALK_SECONDS));
  const stepSeconds = seconds / steps;
  const moments = Array.from({ length: steps }, (_, i) => (i + 0.5) * stepSeconds);
  const walked = moments.map((at) => wareTemperature(beside, at));
  const known = walked.filter((tempC) => tempC !== null);
  const bandOf = (name: string | null, lowC: number, highC: number): PingBand => {
    const within = (tempC: number | null) => tempC !== null && tempC >= lowC && tempC < highC;
    const listened = walked.filter(within).length * stepSeconds;
    const count = pings.filter(({ tempC }) => within(tempC)).length;
    return {
      name,
      lowC,
      highC,
      count,
      seconds: listened,
      perHour: listened === 0 ? 0 : (count * 3600) / listened,
    };
  };
  const rangeK = known.length === 0 ? 0 : greatest(known) - least(known);
  const stepC = rangeK > FINE_UP_TO_K ? STEP_C : FINE_STEP_C;
  const hot = pings.filter(({ tempC }) => tempC !== null);
  return {
    logName,
    channel,
    startedSeconds,
    knownShare: known.length / walked.length,
    coldestC: known.length === 0 ? null : least(known),
    unloading: unloadingPart(pings, seconds, beside),
    rangeK,
    steps: stepsOver(known, stepC).map((lowC) => bandOf(null, lowC, lowC + stepC)),
    inversions: [QUARTZ_BAND, CRISTOBALITE_BAND]
      .map(({ name, lowC, highC }) => bandOf(name, lowC, highC))
      .filter((band) => band.seconds > 0),
    firstC: hot[0]?.tempC ?? null,
    thirdC: hot[2]?.tempC ?? null,
    steady: steadyPart(pings, { moments, stepSeconds }, beside),
  };
}

function unloadingPart(
  pings: readonly PlacedPing[],
  seconds: number,
  beside: LogBeside,
): PingTemperatures["unloading"] {
  const { unloaded, startedSeconds } = beside;
  if (unloaded === null) return null;
  const atSeconds = unloaded.seconds - startedSeconds;
  return {
    atSeconds,
    tempC: unloaded.tempC,
    count: pings.filter((ping) => isTakenOut(beside, ping.atSeconds)).length,
    seconds: Math.min(seconds, Math.max(0, seconds - atSeconds)),
  };
}

function greatest(values: readonly number[]): number {
  return values.reduce((a, b) => Math.max(a, b));
}

function least(values: readonly number[]): number {
  return values.reduce((a, b) => Math.min(a, b));
}

/** Lower edges of the steps that were heard, hottest first. */
function stepsOver(known: readonly number[], stepC: number): readonly number[] {
  const edges = new Set(known.map((tempC) => stepC * Math.floor(tempC / stepC)));
  return [...edges].sort((a, b) => b - a);
}

function steadyPart(
  pings: readonly PlacedPing[],
  walk: { readonly moments: readonly number[]; readonly stepSeconds: number },
  beside: LogBeside,
): PingTemperatures["steady"] {
  const meter = slopeMeter(beside.curve);
  const isSteady = (at: number) => {
    if (isTakenOut(beside, at)) return false;
    const slope = meter.slopeAt(beside.startedSeconds + at, STEADY_WINDOW_SECONDS);
    return slope !== null && Math.abs(slope) < STEADY_C_PER_HOUR;
  };
  return {
    count: pings.filter(({ atSeconds }) => isSteady(atSeconds)).length,
    seconds: walk.moments.filter(isSteady).length * walk.stepSeconds,
  };
}
