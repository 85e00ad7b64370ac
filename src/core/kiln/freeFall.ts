import { type Curve, lastAtOrBefore, temperatureAt } from "../curve/Curve.ts";
import { lossKPerSecond } from "./LearnedKiln.ts";
import {
  type FallSample,
  fitUpperCooling,
  SPEED_WINDOW_SECONDS,
  type Speed,
  speedsBetween,
} from "./naturalFall.ts";

/** Nearer to the room than this a fall says little [K]. */
export const ABOVE_ROOM_K = 40;
/** A fall that outgrows another by less than this share may be the same. */
export const GROWN = 1.3;
/** A reading this near its set point is led by it [K]. */
export const LED_K = 12;
/** Two falls are held against each other for their shape when so much time lies between them [s] … */
export const TELLING_SECONDS = [2700, 5400, 10_800] as const;
/** … and the height above the room has shrunk to this share or less. */
const TELLING_SHARE = 0.94;
/** Free moments count where so many follow each other, five minutes apart. */
const LEAST_RUN = 6;
/** A fit needs this much of a fall [K], and speaks for temperatures so little below it. */
const FIT_SPAN_K = 80;
const NEAR_K = 150;

/** A fall by itself [°C/h], and whether it was seen near the temperature that it is told for. */
export interface OwnFall {
  readonly cPerHour: number;
  readonly isNear: boolean;
}

/** Falls after a moment that neither a set point leads nor one rate holds: those that may be the kiln's own. */
export function freeFalls(
  curve: Curve,
  at: { readonly fromSeconds: number; readonly roomC: number; readonly setPoint: Curve | null },
): readonly Speed[] {
  const { fromSeconds, roomC, setPoint } = at;
  const falls = speedsBetween(curve, fromSeconds, curve.timesSeconds.at(-1)!).filter(
    ({ tempC, rateCPerHour }) => rateCPerHour < 0 && tempC > roomC + ABOVE_ROOM_K,
  );
  const isStraight = (a: Speed, b: Speed) => {
    const apart = b.seconds - a.seconds;
    if (apart < TELLING_SECONDS[0] || apart > TELLING_SECONDS[2]) return false;
    const slowed = (b.tempC - roomC) / (a.tempC - roomC);
    const kept = b.rateCPerHour / a.rateCPerHour;
    return slowed <= TELLING_SHARE && kept > (1 + slowed) / 2 && kept < GROWN;
  };
  const wasHeld = falls.map(
    (fall) =>
      isNearSet(setPoint, fall) ||
      falls.some((other) => isStraight(other, fall) || isStraight(fall, other)),
  );
  // Noise makes a few of the held ones look free, but seldom so many in a row.
  const isFree = (i: number) => wasHeld[i] === false;
  const runAt = falls.map((_, i) => {
    let [from, to] = [i, i];
    while (isFree(from - 1)) from--;
    while (isFree(to + 1)) to++;
    return to - from + 1;
  });
  return falls.filter((_, i) => isFree(i) && runAt[i]! >= LEAST_RUN);
}

/** Whether a reading is led by a set point. */
export function isNearSet(setPoint: Curve | null, at: { seconds: number; tempC: number }): boolean {
  const setC = setPoint === null ? null : temperatureAt(setPoint, at.seconds);
  return setC !== null && Math.abs(setC - at.tempC) < LED_K;
}

/** By the fastest of what was seen: a kiln never falls faster than by itself while it is shut. */
export function ownFall(
  falls: readonly Speed[],
  at: { readonly tempC: number; readonly roomC: number; readonly beforeSeconds: number },
): OwnFall | null {
  const { tempC, roomC } = at;
  const seen = falls.filter(({ seconds }) => seconds < at.beforeSeconds - SPEED_WINDOW_SECONDS);
  if (seen.length < 4) return null;
  const { constants, kept } = fitUpperCooling(
    seen.map((fall) => ({ tempC: fall.tempC, roomC, fallCPerHour: -fall.rateCPerHour })),
  );
  const temps = kept.map((sample) => sample.tempC);
  const lowest = Math.min(...temps);
  if (Math.max(...temps) - lowest < FIT_SPAN_K || !slowsDown(kept)) return null;
  return {
    cPerHour: 3600 * lossKPerSecond(constants, tempC, roomC),
    isNear: lowest - tempC < NEAR_K,
  };
}

/** Whether falls slow down as the kiln gets colder, halves held against each other; held ones do not. */
function slowsDown(falls: readonly FallSample[]): boolean {
  const hottestFirst = falls.toSorted((a, b) => b.tempC - a.tempC);
  const middle = Math.ceil(falls.length / 2);
  const [hot, cold] = [meanOf(hottestFirst.slice(0, middle)), meanOf(hottestFirst.slice(middle))];
  return cold.rate / hot.rate < (1 + cold.aboveK / hot.aboveK) / 2;
}

function meanOf(falls: readonly FallSample[]) {
  const sum = (of: (fall: FallSample) => number) =>
    falls.reduce((total, fall) => total + of(fall), 0) / falls.length;
  return { rate: sum((fall) => fall.fallCPerHour), aboveK: sum((f) => f.tempC - f.roomC) };
}

/** Where a falling Curve bends, and how well its readings tell. */
interface PlacedHinge {
  readonly seconds: number;
  readonly tempC: number;
  readonly plusMinusSeconds: number;
}

/** More readings than this tell no more. */
const MOST_READINGS = 240;
const TRIED = 120;
/** A thermocouple in its sheath follows by about this much [s]; our own estimate. */
const SHEATH_SECONDS = 60;

/**
 * The moment at which a fall bends downwards, near one that is known roughly: two straight lines in the
 * logarithm of the height above the room that meet there, by least squares over the place of the bend.
 * Its ± is where the fit is as good within its own scatter, at least half a step of the readings.
 */
export function placedHinge(
  curve: Curve,
  near: { readonly atSeconds: number; readonly window: number; readonly roomC: number },
): PlacedHinge {
  const { atSeconds, window, roomC } = near;
  const { times, heights, step } = readingsAbout(curve, near);
  const tries = Array.from({ length: TRIED + 1 }, (_, i) => {
    const seconds = atSeconds - window + (1.7 * window * i) / TRIED;
    return { seconds, ...fitted(times, heights, seconds) };
  });
  const best = tries.reduce((a, b) => (b.squares < a.squares ? b : a));
  const freedom = Math.max(1, times.length - 4);
  const asGood = tries.filter(({ squares }) => squares <= best.squares * (1 + 4 / freedom));
  const [low, high] = [asGood[0]?.seconds ?? best.seconds, asGood.at(-1)?.seconds ?? best.seconds];
  return {
    seconds: best.seconds,
    tempC: roomC + Math.exp(best.height),
    plusMinusSeconds: Math.max((high - low) / 2, step / 2) + SHEATH_SECONDS,
  };
}

function readingsAbout(
  curve: Curve,
  { atSeconds, window, roomC }: { atSeconds: number; window: number; roomC: number },
) {
  const [from, to] = [atSeconds - 2 * window, atSeconds + 1.5 * window];
  const { timesSeconds, tempsC } = curve;
  const begin = lastAtOrBefore(timesSeconds, from) + 1;
  const count = Math.max(0, lastAtOrBefore(timesSeconds, to) + 1 - begin);
  const inside = Array.from({ length: count }, (_, i) => begin + i).filter(
    (i) => tempsC[i]! > roomC + 1,
  );
  const every = Math.max(1, Math.floor(inside.length / MOST_READINGS));
  const kept = inside.filter((_, at) => at % every === 0);
  return {
    times: kept.map((i) => timesSeconds[i]!),
    heights: kept.map((i) => Math.log(tempsC[i]! - roomC)),
    step: (to - from) / Math.max(1, inside.length),
  };
}

/** Least squares of height = p + q·(t − c) + s·max(0, t − c): its squares, and p, the height at the bend. */
function fitted(times: readonly number[], heights: readonly number[], bend: number) {
  const sums = new Float64Array(9);
  for (const [i, time] of times.entries()) {
    const [x, y] = [(time - bend) / 3600, heights[i]!];
    const z = Math.max(0, x);
    const add = [1, x, z, x * x, x * z, z * z, y, x * y, z * y];
    for (let k = 0; k < 9; k++) sums[k] = sums[k]! + add[k]!;
  }
  const [n, x, z, xx, xz, zz, y, xy, zy] = sums as unknown as readonly [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const det = n * (xx * zz - xz * xz) - x * (x * zz - xz * z) + z * (x * xz - xx * z);
  if (!(Math.abs(det) > 1e-12)) return { squares: Number.POSITIVE_INFINITY, height: 0 };
  const p = (y * (xx * zz - xz * xz) - x * (xy * zz - xz * zy) + z * (xy * xz - xx * zy)) / det;
  const q = (n * (xy * zz - xz * zy) - y * (x * zz - xz * z) + z * (x * zy - xy * z)) / det;
  const s = (n * (xx * zy - xz * xy) - x * (x * zy - xy * z) + y * (x * xz - xx * z)) / det;
  let squares = 0;
  for (const [i, time] of times.entries()) {
    const at = (time - bend) / 3600;
    squares += (heights[i]! - p - q * at - s * Math.max(0, at)) ** 2;
  }
  return { squares, height: p };
}
