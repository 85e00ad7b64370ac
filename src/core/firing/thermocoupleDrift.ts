import type { WitnessOffset } from "../cones/witnessOffset.ts";
import { medianInPlace } from "../curve/median.ts";
import { pastOffset } from "../schedule/pastOffset.ts";
import type { ThermocoupleDrift } from "./FiringHistory.ts";

/**
 * How the middle of what witness cones allow moved from the median of earlier firings to this one.
 * The interval holds whatever the cones allow: the median of numbers that each lie in an interval
 * lies between the medians of the lower and of the upper ends.
 *
 * @returns null when this firing's cones, or those of all earlier ones, bound it on one side only.
 */
export function thermocoupleDrift(
  now: WitnessOffset | null,
  earlier: readonly WitnessOffset[],
): ThermocoupleDrift | null {
  if (now === null || now.lowK === null || now.highK === null) return null;
  const past = pastOffset(earlier);
  if (past === null) return null;
  const pinned = earlier.flatMap(({ lowK, highK }) =>
    lowK === null || highK === null ? [] : [{ lowK, highK }],
  );
  const nowK = 0.5 * (now.lowK + now.highK);
  const beforeK = medianInPlace(pinned.map(({ lowK, highK }) => 0.5 * (lowK + highK)));
  return {
    earlier: past,
    nowK,
    beforeK,
    driftK: nowK - beforeK,
    lowK: now.lowK - medianInPlace(pinned.map(({ highK }) => highK)),
    highK: now.highK - medianInPlace(pinned.map(({ lowK }) => lowK)),
  };
}
