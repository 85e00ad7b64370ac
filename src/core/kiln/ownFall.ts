import type { Curve } from "../curve/Curve.ts";
import { temperatureAt } from "../curve/temperatureAt.ts";
import { type FallSample, fitUpperCooling } from "./fitCooling.ts";
import { lossKPerSecond } from "./heatBalance.ts";
import { SPEED_WINDOW_SECONDS, type Speed, speedsBetween } from "./speeds.ts";

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
