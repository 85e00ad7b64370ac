import type { Curve } from "../curve/Curve.ts";
import { crossingTimes } from "../curve/crossingTimes.ts";
import { peakOf } from "../curve/peakOf.ts";
import { type CoolingConstants, lossKPerSecond } from "./heatBalance.ts";
import type { CooledTo } from "./LearnedKiln.ts";

/** Temperatures to which one waits before opening and unloading [°C]. */
const WAITED_FOR_C = [200, 100, 50] as const;

/** Nearer to the room than this a fall never quite arrives [K]. */
const NEVER_WITHIN_K = 8;
const STEPS = 200;

/**
 * Time of a fall by itself, lid shut, between two temperatures [s]: ∫ dT / loss, by Simpson's rule.
 * @returns null when the lower one is the room's, or nearly.
 */
export function secondsToFall(
  cooling: CoolingConstants,
  fall: { readonly fromC: number; readonly toC: number; readonly roomC: number },
): number | null {
  const { fromC, toC, roomC } = fall;
  if (toC < roomC + NEVER_WITHIN_K) return null;
  if (fromC <= toC) return 0;
  // Steps even in ln(T − Ta), for the fall slows down towards the room.
  const low = Math.log(toC - roomC);
  const step = (Math.log(fromC - roomC) - low) / STEPS;
  let sum = 0;
  for (let k = 0; k <= STEPS; k++) {
    const aboveK = Math.exp(low + k * step);
    const weight = k === 0 || k === STEPS ? 1 : k % 2 === 1 ? 4 : 2;
    sum += (weight * aboveK) / lossKPerSecond(cooling, roomC + aboveK, roomC);
  }
  return (sum * step) / 3;
}

/**
 * When a firing had fallen to 200, 100 and 50 °C after its peak: as read, or, where the log ends
 * before, as it would fall by itself from the last reading. An opened kiln is not reckoned on.
 */
export function fallTimes(
  curve: Curve,
  cooling: CoolingConstants,
  situation: { readonly roomC: number; readonly opened: boolean },
): readonly CooledTo[] {
  const peak = peakOf(curve);
  const lastSeconds = curve.timesSeconds.at(-1) as number;
  const lastC = curve.tempsC.at(-1) as number;
  return WAITED_FOR_C.flatMap((tempC): readonly CooledTo[] => {
    const read = crossingTimes(curve, tempC).find(
      ({ seconds, direction }) => seconds > peak.seconds && direction === "cooling",
    );
    if (read) return [{ tempC, secondsFromPeak: read.seconds - peak.seconds, how: "measured" }];
    if (situation.opened || lastC < tempC) return [];
    const left = secondsToFall(cooling, { fromC: lastC, toC: tempC, roomC: situation.roomC });
    return left === null
      ? []
      : [{ tempC, secondsFromPeak: lastSeconds - peak.seconds + left, how: "worked out" }];
  });
}
