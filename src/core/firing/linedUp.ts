import type { Curve } from "../curve/Curve.ts";
import { type CrossingTime, crossingTimes } from "../curve/crossingTimes.ts";
import { shifted } from "../curve/moved.ts";
import type { Alignment } from "./Alignment.ts";
import type { ComparedFiring } from "./compareFirings.ts";

/** A firing laid where others are laid over it. */
export interface LinedUp {
  /** Its hour 0, from its peak [s]; negative before the peak. */
  readonly secondsFromPeak: number;
  /** Its hour 0, from its first reading [s]. */
  readonly secondsFromStart: number;
  /** With time 0 there. */
  readonly curve: Curve;
}

/** A firing lined up; null when its log never passes that temperature on that way. */
export function linedUp({ aligned }: ComparedFiring, alignment: Alignment): LinedUp | null {
  const start = aligned.timesSeconds[0]!;
  const zero = zeroOf(aligned, alignment);
  if (zero === null) return null;
  return {
    secondsFromPeak: zero,
    secondsFromStart: zero - start,
    curve: zero === 0 ? aligned : shifted(aligned, -zero),
  };
}

/** On a Curve with its peak at 0. */
function zeroOf(curve: Curve, alignment: Alignment): number | null {
  switch (alignment.at) {
    case "peak":
      return 0;
    case "start":
      return curve.timesSeconds[0]!;
    case "rising":
      return firstOf(curve, alignment.tempC, ({ seconds, direction }) => {
        return direction === "heating" && seconds <= 0;
      });
    case "falling":
      return firstOf(curve, alignment.tempC, ({ seconds, direction }) => {
        return direction === "cooling" && seconds >= 0;
      });
  }
}

function firstOf(
  curve: Curve,
  tempC: number,
  isMeant: (crossing: CrossingTime) => boolean,
): number | null {
  return crossingTimes(curve, tempC).find(isMeant)?.seconds ?? null;
}
