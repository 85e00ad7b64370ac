import type { Curve } from "../curve/Curve.ts";
import { peakOf } from "../curve/peakOf.ts";
import type { OutputSeries } from "./LearnedKiln.ts";
import { outputMean } from "./outputMean.ts";
import { SPEED_WINDOW_SECONDS, type Speed, speedsBetween } from "./speeds.ts";

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
