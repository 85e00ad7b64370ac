import { type Curve, lastAtOrBefore, peakOf, temperatureAt } from "../curve/Curve.ts";
import { slopeMeter } from "../curve/slopes.ts";
import { selected } from "../math/statistics.ts";
import {
  type CoolingConstants,
  lossKPerSecond,
  type OutputSeries,
  radiatedWattPerM2,
} from "./LearnedKiln.ts";

/** Falling by itself, as far as one log shows it. */
export interface NaturalFall {
  /** Moments at which the kiln fell by itself, lid shut. */
  readonly samples: readonly Speed[];
  readonly from: "output" | "shape";
  readonly openedAtSeconds: number | null;
}

/** Mean output that still counts as off. */
const OFF = 0.005;
/** After the power goes off the hot face first runs ahead of the brick [s]. */
const SETTLING_SECONDS = 1200;
/** Two moments that are compared lie so far apart, so that their windows do not overlap [s]. */
const APART_SECONDS = 2700;
/** A fall that grows by this much while the kiln gets colder is not the kiln's own. */
const OPENED_GROWTH = 1.2;
const OPENED_MORE_CPERHOUR = 12;
/** Nearer to the room than this a fall says little [K]. */
const ABOVE_ROOM_K = 40;
const SLOWEST_FALL_CPERHOUR = 2;
/** Controlled and natural falls differ in shape only over a drop of this size [K]. */
const TELLING_DROP_K = 40;
/** … and within this time, lest two different falls are compared [s]. */
const TELLING_WITHIN_SECONDS = 10_800;

/**
 * Where a kiln fell by itself after its peak, and where it was held back or opened.
 * With an output column: where the elements were off. Without: a controlled fall goes at one rate,
 * while a natural one slows down at least as the temperature above the room does.
 */
export function naturalFall(curve: Curve, output: OutputSeries | null, roomC: number): NaturalFall {
  const end = curve.timesSeconds.at(-1)!;
  const falling = speedsBetween(curve, peakOf(curve).seconds + SETTLING_SECONDS, end).filter(
    ({ tempC, rateCPerHour }) =>
      rateCPerHour < -SLOWEST_FALL_CPERHOUR && tempC > roomC + ABOVE_ROOM_K,
  );
  const wasHeld = output === null ? straightUntil(falling, roomC) : heldByOutput(output);
  const isHeld = output === null ? straightAbout(falling, roomC) : wasHeld;
  const opened = falling.find((speed) => isOpened(speed, falling, wasHeld));
  const openedAtSeconds = opened ? opened.seconds - SPEED_WINDOW_SECONDS / 2 : null;
  const samples = falling.filter(
    (speed) =>
      !isHeld(speed) &&
      (openedAtSeconds === null || speed.seconds + SPEED_WINDOW_SECONDS / 2 < openedAtSeconds),
  );
  return { samples, from: output === null ? "shape" : "output", openedAtSeconds };
}

type IsHeld = (speed: Speed) => boolean;

function heldByOutput(output: OutputSeries): IsHeld {
  return ({ seconds }) => {
    const half = SPEED_WINDOW_SECONDS / 2;
    const mean = outputMean(output, seconds - half - SETTLING_SECONDS, seconds + half);
    return mean === null || mean > OFF;
  };
}

/** Whether the fall had gone at one rate until a moment. */
function straightUntil(falling: readonly Speed[], roomC: number): IsHeld {
  return (speed) => {
    const earlier = falling.findLast((each) => isTelling(each, speed));
    return earlier !== undefined && isStraight(earlier, speed, roomC);
  };
}

/** Whether the fall had gone, or went on, at one rate. */
function straightAbout(falling: readonly Speed[], roomC: number): IsHeld {
  const wasStraight = straightUntil(falling, roomC);
  return (speed) => {
    const later = falling.find((each) => isTelling(speed, each));
    return wasStraight(speed) || (later !== undefined && isStraight(speed, later, roomC));
  };
}

/** Whether two moments are far enough apart for their rates to tell one shape from the other. */
function isTelling(before: Speed, after: Speed): boolean {
  const apart = after.seconds - before.seconds;
  return (
    apart >= APART_SECONDS &&
    apart <= TELLING_WITHIN_SECONDS &&
    before.tempC - after.tempC >= TELLING_DROP_K
  );
}

/** Whether a fall kept its rate where a natural one would have slowed down. */
function isStraight(before: Speed, after: Speed, roomC: number): boolean {
  const kept = after.rateCPerHour / before.rateCPerHour;
  const linear = (after.tempC - roomC) / (before.tempC - roomC);
  return kept > (1 + linear) / 2 && kept < OPENED_GROWTH;
}

/** Whether the fall has grown with nothing but a draught to explain it: no power was taken away. */
function isOpened(speed: Speed, falling: readonly Speed[], wasHeld: IsHeld): boolean {
  const before = near(falling, speed.seconds - APART_SECONDS);
  if (
    !before ||
    speed.rateCPerHour > OPENED_GROWTH * before.rateCPerHour ||
    speed.rateCPerHour > before.rateCPerHour - OPENED_MORE_CPERHOUR
  )
    return false;
  const leadingUp = falling.filter(
    ({ seconds }) => seconds <= before.seconds && seconds >= before.seconds - APART_SECONDS,
  );
  return 2 * leadingUp.filter(wasHeld).length < leadingUp.length;
}

function near(speeds: readonly Speed[], seconds: number): Speed | undefined {
  return speeds.find((speed) => Math.abs(speed.seconds - seconds) < 1);
}

/** Speed of a Curve at one moment. */
export interface Speed {
  readonly seconds: number;
  readonly tempC: number;
  /** Signed; falling is negative. */
  readonly rateCPerHour: number;
}

/** Window over which every speed is measured [s]. */
export const SPEED_WINDOW_SECONDS = 1800;

/** Step between the moments at which speed is measured [s]. */
const EVERY_SECONDS = 300;

/** Speeds of a Curve every five minutes between two moments, each over half an hour; none in gaps. */
export function speedsBetween(
  curve: Curve,
  fromSeconds: number,
  toSeconds: number,
): readonly Speed[] {
  const meter = slopeMeter(curve);
  const speeds: Speed[] = [];
  for (let seconds = fromSeconds; seconds <= toSeconds; seconds += EVERY_SECONDS) {
    const rateCPerHour = meter.slopeAt(seconds, SPEED_WINDOW_SECONDS);
    const tempC = temperatureAt(curve, seconds);
    if (rateCPerHour !== null && tempC !== null) speeds.push({ seconds, tempC, rateCPerHour });
  }
  return speeds;
}

/** Longest pause between readings of the output that is still counted as known [s]. */
const LONGEST_PAUSE_SECONDS = 900;

/**
 * Mean output between two moments [s]: share of full power, 0–1, straight between readings.
 * @returns null where the log does not say.
 */
export function outputMean(
  output: OutputSeries,
  fromSeconds: number,
  toSeconds: number,
): number | null {
  const { timesSeconds, fraction } = output;
  const first = lastAtOrBefore(timesSeconds, fromSeconds);
  if (first < 0 || !(toSeconds > fromSeconds)) return null;
  let sum = 0;
  let now = fromSeconds;
  for (let i = first; now < toSeconds; i++) {
    const from = timesSeconds[i]!;
    const next = timesSeconds[i + 1];
    if (next === undefined || next - from > LONGEST_PAUSE_SECONDS) return null;
    const until = Math.min(toSeconds, next);
    const share = ((now + until) / 2 - from) / (next - from);
    sum += (fraction[i]! * (1 - share) + fraction[i + 1]! * share) * (until - now);
    now = until;
  }
  return sum / (toSeconds - fromSeconds);
}

/** Share of second differences that is looked at: the rest are corners and leftovers of spikes. */
const QUIET_SHARE = 0.95;
/** Mean size of the lowest 95 % of a normal scatter, over its sigma: 2(φ(0) − φ(1.96))/0.95. */
const QUIET_MEAN = 0.7168;

/**
 * Scatter of a thermocouple [K], one sigma, from how much neighbouring readings jump about:
 * the second difference of three readings scatters √6 times as much as one.
 */
export function scatterK({ tempsC }: Curve): number {
  const sizes = new Float64Array(Math.max(0, tempsC.length - 2));
  for (let i = 0; i < sizes.length; i++)
    sizes[i] = Math.abs(tempsC[i]! - 2 * tempsC[i + 1]! + tempsC[i + 2]!);
  const quiet = Math.ceil(sizes.length * QUIET_SHARE);
  if (quiet === 0) return 0;
  selected(sizes, quiet - 1);
  let sum = 0;
  for (let i = 0; i < quiet; i++) sum += sizes[i]!;
  return sum / quiet / (QUIET_MEAN * Math.sqrt(6));
}

/** One moment of a natural fall. */
export interface FallSample {
  readonly tempC: number;
  readonly roomC: number;
  /** Positive. */
  readonly fallCPerHour: number;
}

/** A sample that falls this much short of the fit was held back by the elements. */
const HELD_BELOW = 0.9;
const ROUNDS = 12;

/**
 * The two cooling constants by linear least squares of the fall on (T − Ta) and σ(T⁴ − Ta⁴);
 * neither comes out negative.
 * @throws RangeError without samples.
 */
export function fitCooling(samples: readonly FallSample[]): CoolingConstants {
  if (samples.length === 0) throw new RangeError("fitCooling: no samples");
  let xx = 0;
  let xy = 0;
  let yy = 0;
  let xr = 0;
  let yr = 0;
  for (const { tempC, roomC, fallCPerHour } of samples) {
    const x = tempC - roomC;
    const y = radiatedWattPerM2(tempC, roomC);
    const r = fallCPerHour / 3600;
    xx += x * x;
    xy += x * y;
    yy += y * y;
    xr += x * r;
    yr += y * r;
  }
  const determinant = xx * yy - xy * xy;
  const conduction = (xr * yy - yr * xy) / determinant;
  const radiation = (yr * xx - xr * xy) / determinant;
  if (!(determinant > 1e-9 * xx * yy) || radiation < 0)
    return { conductionPerSecond: xr / xx, radiationM2KPerJ: 0 };
  if (conduction < 0) return { conductionPerSecond: 0, radiationM2KPerJ: yr / yy };
  return { conductionPerSecond: conduction, radiationM2KPerJ: radiation };
}

/**
 * The same for samples among which the elements may have held back some: a kiln never falls faster
 * than by itself, so what lies well below the fit is left out until nothing more does.
 */
export function fitUpperCooling(samples: readonly FallSample[]): {
  readonly constants: CoolingConstants;
  readonly kept: readonly FallSample[];
} {
  let kept = samples;
  let constants = fitCooling(kept);
  for (let round = 0; round < ROUNDS; round++) {
    const fit = constants;
    const next = samples.filter(
      ({ tempC, roomC, fallCPerHour }) =>
        fallCPerHour > HELD_BELOW * 3600 * lossKPerSecond(fit, tempC, roomC),
    );
    if (next.length === kept.length || next.length === 0) break;
    kept = next;
    constants = fitCooling(kept);
  }
  return { constants, kept };
}
