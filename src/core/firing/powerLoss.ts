import type { Curve } from "../curve/Curve.ts";
import { temperatureAt } from "../curve/temperatureAt.ts";
import { timeBins } from "./timeBins.ts";

/** A fall below the highest so far that counts [K]. */
const FALL_K = 15;

/** How long it must last [s]. */
const LONG_SECONDS = 10 * 60;

/** How far the plan may fall while the kiln does, for the fall to be the plan's [K]. */
const PLANNED_FALL_K = 5;

/** A stretch before the peak in which a kiln that should rise fell. */
export interface PowerLoss {
  /** When it left its highest temperature so far, and when it was back there [s]. */
  readonly fromSeconds: number;
  readonly toSeconds: number;
  readonly fromC: number;
  readonly lowestC: number;
  /** A gap in the readings hides part of it. */
  readonly hasGap: boolean;
}

/**
 * Falls before the peak that no plan explains: more than 15 °C below the highest so far, for at
 * least 10 min. Works on medians of half-minute bins. What the plan itself lets fall is left out.
 *
 * @param planned The plan, shifted to the log; null when there is none.
 */
export function powerLosses(
  curve: Curve,
  peakAtSeconds: number,
  planned: Curve | null,
): readonly PowerLoss[] {
  return fallsBefore(curve, peakAtSeconds).filter(
    (loss) =>
      loss.fromC - loss.lowestC > FALL_K &&
      loss.toSeconds - loss.fromSeconds >= LONG_SECONDS &&
      !isPlanned(loss, planned),
  );
}

/** Every stretch below the highest so far that ends back there, up to the peak. */
function fallsBefore(curve: Curve, peakAtSeconds: number): readonly PowerLoss[] {
  const found: PowerLoss[] = [];
  let top = { seconds: Number.NaN, tempC: Number.NEGATIVE_INFINITY };
  let lowestC = Number.POSITIVE_INFINITY;
  for (const bins of timeBins(curve))
    for (let i = 0; i < bins.timesSeconds.length; i++) {
      const seconds = bins.timesSeconds[i]!;
      const tempC = bins.tempsC[i]!;
      if (seconds > peakAtSeconds) return found;
      if (tempC < top.tempC) {
        lowestC = Math.min(lowestC, tempC);
        continue;
      }
      if (lowestC < top.tempC)
        found.push({
          fromSeconds: top.seconds,
          toSeconds: seconds,
          fromC: top.tempC,
          lowestC,
          hasGap: curve.gaps.some(
            (gap) => gap.fromSeconds < seconds && gap.toSeconds > top.seconds,
          ),
        });
      top = { seconds, tempC };
      lowestC = Number.POSITIVE_INFINITY;
    }
  return found;
}

function isPlanned(loss: PowerLoss, planned: Curve | null): boolean {
  if (planned === null) return false;
  let top = Number.NEGATIVE_INFINITY;
  let fall = 0;
  const moments = [
    loss.fromSeconds,
    ...[...planned.timesSeconds].filter((t) => t > loss.fromSeconds && t < loss.toSeconds),
    loss.toSeconds,
  ];
  for (const seconds of moments) {
    const tempC = temperatureAt(planned, seconds);
    if (tempC === null) continue;
    top = Math.max(top, tempC);
    fall = Math.max(fall, top - tempC);
  }
  return fall > PLANNED_FALL_K;
}
