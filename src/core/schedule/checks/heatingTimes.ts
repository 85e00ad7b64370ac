import { crossingTimes } from "../../curve/crossingTimes.ts";
import { peakOf } from "../../curve/peakOf.ts";
import type { Judged } from "./Judged.ts";

/** A stretch of the way up. */
export interface Stretch {
  readonly fromSeconds: number;
  readonly toSeconds: number;
  readonly seconds: number;
  readonly meanCPerHour: number;
}

/**
 * The way up between two temperatures [°C], first passage of each; holds between them count.
 * A schedule that starts above the lower one is taken from its start.
 *
 * @returns null when the upper temperature is not passed on the way to the peak.
 */
export function wayUp(
  judged: Pick<Judged, "expansion">,
  fromC: number,
  toC: number,
): Stretch | null {
  const { curve } = judged.expansion;
  const peak = peakOf(curve);
  const firstUp = (tempC: number): number | null =>
    crossingTimes(curve, tempC).find(
      (crossing) => crossing.direction === "heating" && crossing.seconds <= peak.seconds,
    )?.seconds ?? null;
  const startC = curve.tempsC[0] as number;
  const lowC = Math.max(fromC, startC);
  const from = startC >= fromC ? (curve.timesSeconds[0] as number) : firstUp(fromC);
  const to = firstUp(toC);
  if (from === null || to === null || to <= from || toC <= lowC) return null;
  return {
    fromSeconds: from,
    toSeconds: to,
    seconds: to - from,
    meanCPerHour: ((toC - lowC) * 3600) / (to - from),
  };
}
