import { type Curve, lastAtOrBefore, temperatureAt } from "../curve/Curve.ts";
import type { AssumedKiln, OutputSeries } from "../kiln/LearnedKiln.ts";
import { naturalFall, type Speed } from "../kiln/naturalFall.ts";
import { medianInPlace } from "../math/statistics.ts";
import type { RecentRate } from "./WatchState.ts";

/** The rate that is shown goes over this long [s]. */
const RATE_WINDOW_SECONDS = 600;

/** Windows that are tried for a rate to go on with, shortest first [s]. */
const STEADY_WINDOWS_SECONDS = [600, 1200, 1800, 2700, 3600];

/** A longer window is as good as a shorter one while it scatters no more than so much more … */
const STILL_STRAIGHT = 1.25;
/** … or by less than this [K]: the steps of a coarse logger, the cycling of a controller. */
const STILL_STRAIGHT_K = 0.3;

const LEAST_READINGS = 3;

/** Windows hold at least this many usual steps between readings. */
const LEAST_STEPS = 3;

/** A line through the last readings. */
interface Line extends RecentRate {
  /** Scatter of the readings about it [K]. */
  readonly scatterK: number;
}

/**
 * Rate at the end of a Curve: least squares on its last readings, over 10 min or three usual steps.
 * Nothing is taken from before a gap.
 * @param stepSeconds The usual step between readings.
 * @returns null when fewer than three readings, or less than half of the window, are there.
 */
export function recentRate(curve: Curve, stepSeconds: number): RecentRate | null {
  const line = lineOver(curve, Math.max(RATE_WINDOW_SECONDS, LEAST_STEPS * stepSeconds));
  return line && rateOf(line);
}

/**
 * The rate at the end of a Curve that may be thought to go on: over the longest of 10, 20, 30, 45
 * and 60 min in which the readings lie as well on one line as in the last ten.
 */
export function steadyRate(curve: Curve, stepSeconds: number): RecentRate | null {
  let best: Line | null = null;
  for (const window of STEADY_WINDOWS_SECONDS) {
    const line = lineOver(curve, Math.max(window, LEAST_STEPS * stepSeconds));
    if (line === null) continue;
    if (best !== null && !goesOn(best, line)) break;
    best = line;
  }
  return best && rateOf(best);
}

function goesOn(shorter: Line, longer: Line): boolean {
  const apart = Math.abs(longer.rateCPerHour - shorter.rateCPerHour);
  const isStraight =
    longer.scatterK <= STILL_STRAIGHT * shorter.scatterK ||
    longer.scatterK <= shorter.scatterK + STILL_STRAIGHT_K;
  return isStraight && apart <= 2 * Math.hypot(longer.sigmaCPerHour, shorter.sigmaCPerHour) + 1;
}

function rateOf({ rateCPerHour, sigmaCPerHour, overSeconds, readings }: Line): RecentRate {
  return { rateCPerHour, sigmaCPerHour, overSeconds, readings };
}

function lineOver(curve: Curve, windowSeconds: number): Line | null {
  const { timesSeconds, tempsC, gaps } = curve;
  const end = timesSeconds.length - 1;
  const now = timesSeconds[end]!;
  const from = Math.max(now - windowSeconds, gaps.at(-1)?.toSeconds ?? Number.NEGATIVE_INFINITY);
  const first = lastAtOrBefore(timesSeconds, from - 1e-6) + 1;
  const readings = end - first + 1;
  const overSeconds = now - timesSeconds[first]!;
  if (readings < LEAST_READINGS || overSeconds < windowSeconds / 2) return null;
  const times = timesSeconds.subarray(first).map((time) => (time - now) / 3600);
  const temps = tempsC.subarray(first);
  const meanTime = mean(times);
  const meanC = mean(temps);
  let tt = 0;
  let ty = 0;
  for (let i = 0; i < readings; i++) {
    const t = times[i]! - meanTime;
    tt += t * t;
    ty += t * (temps[i]! - meanC);
  }
  const rateCPerHour = ty / tt;
  let left = 0;
  for (let i = 0; i < readings; i++)
    left += (temps[i]! - meanC - rateCPerHour * (times[i]! - meanTime)) ** 2;
  const scatterK = Math.sqrt(left / (readings - 2));
  return { rateCPerHour, sigmaCPerHour: scatterK / Math.sqrt(tt), overSeconds, readings, scatterK };
}

function mean(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Only the last hours speak for what comes [s]. */
const LAST_SECONDS = 3 * 3600;

const LEAST_MOMENTS = 3;

/** A first reading below this is taken for the room's, otherwise the room for so warm [°C]. */
const ROOM_BELOW_C = 45;
const USUAL_ROOM_C = 20;

/** How a log's own fall stands to that of a kiln. */
export interface OwnFall {
  /** Speed of this log's fall by itself over that kiln's, at the same temperatures. */
  readonly share: number;
  /** First and last moment used [s]. */
  readonly fromSeconds: number;
  readonly toSeconds: number;
  /** So slow that the elements may be holding it back, with nothing in the log or the plan to say so. */
  readonly isDoubtful: boolean;
  /** First sign that the lid or a vent was opened [s]; the share is then that of the last minutes. */
  readonly openedAtSeconds: number | null;
}

/** A fall slower than this share of the kiln's own may be held back; our own estimate. */
const HELD_BACK = 0.8;

/** A set point that the kiln follows this closely leads it [K]; our own estimate. */
const LED_WITHIN_K = 8;

/** What says that a fall is held back. */
export interface HeldBack {
  /** Stretches of temperature in which the plan programmes the fall [°C]. */
  readonly planned: readonly { readonly highC: number; readonly lowC: number }[];
  readonly setPoint: Curve | null;
}

/**
 * How fast a log fell by itself in its last three hours, over what a kiln does at the same
 * temperatures: the middle of the ratios, moment by moment.
 * Once the kiln was opened, only how it falls now counts.
 * @returns null when no such fall was seen for long enough.
 */
export function ownFall(
  log: {
    readonly curve: Curve;
    readonly output: OutputSeries | null;
    readonly held: HeldBack;
    /** Of the last minutes, signed; null where it is not known. */ readonly rateCPerHour:
      | number
      | null;
  },
  kiln: AssumedKiln,
): OwnFall | null {
  const { curve, output, held, rateCPerHour } = log;
  const firstC = curve.tempsC[0]!;
  const roomC = firstC < ROOM_BELOW_C ? firstC : USUAL_ROOM_C;
  const since = curve.timesSeconds.at(-1)! - LAST_SECONDS;
  const fall = naturalFall(curve, output, roomC);
  const nowC = curve.tempsC.at(-1)!;
  if (fall.openedAtSeconds !== null && rateCPerHour !== null && rateCPerHour < 0)
    return {
      share: -rateCPerHour / Math.max(1, kiln.naturalCoolingCPerHour(nowC)),
      fromSeconds: fall.openedAtSeconds,
      toSeconds: curve.timesSeconds.at(-1)!,
      isDoubtful: true,
      openedAtSeconds: fall.openedAtSeconds,
    };
  const moments = fall.samples.filter(
    (moment) => moment.seconds > since && !isHeld(moment, output === null ? held : NOTHING_HOLDS),
  );
  const ratios = moments.flatMap(({ tempC, rateCPerHour }) => {
    const speed = kiln.naturalCoolingCPerHour(tempC);
    return speed > 0 ? [-rateCPerHour / speed] : [];
  });
  const [first, last] = [moments[0], moments.at(-1)];
  if (first === undefined || last === undefined || ratios.length < LEAST_MOMENTS) return null;
  const share = medianInPlace(ratios);
  return {
    share,
    fromSeconds: first.seconds,
    toSeconds: last.seconds,
    isDoubtful: output === null && share < HELD_BACK,
    openedAtSeconds: null,
  };
}

/** With an output column the log itself says where the elements were off. */
const NOTHING_HOLDS: HeldBack = { planned: [], setPoint: null };

function isHeld({ seconds, tempC }: Speed, { planned, setPoint }: HeldBack): boolean {
  if (planned.some(({ highC, lowC }) => tempC <= highC && tempC >= lowC)) return true;
  const setC = setPoint && temperatureAt(setPoint, seconds);
  return setC !== null && Math.abs(setC - tempC) < LED_WITHIN_K;
}
