import type { Curve } from "../../curve/Curve.ts";
import { crossingTimes } from "../../curve/crossingTimes.ts";
import { peakOf } from "../../curve/peakOf.ts";

/** A stretch of the way up. */
export interface Stretch {
  readonly fromSeconds: number;
  readonly toSeconds: number;
  readonly seconds: number;
  readonly meanCPerHour: number;
}

/**
 * The way up between two temperatures [°C], first passage of each; holds between them count.
 * A Curve that starts above the lower one is taken from its start.
 *
 * @returns null when the upper temperature is not passed on the way to the peak.
 */
export function wayUp(curve: Curve, fromC: number, toC: number): Stretch | null {
  const startC = curve.tempsC[0]!;
  const lowC = Math.max(fromC, startC);
  const from = startC >= fromC ? curve.timesSeconds[0]! : firstUp(curve, fromC);
  const to = firstUp(curve, toC);
  if (from === null || to === null || to <= from || toC <= lowC) return null;
  return {
    fromSeconds: from,
    toSeconds: to,
    seconds: to - from,
    meanCPerHour: ((toC - lowC) * 3600) / (to - from),
  };
}

/** A passage of so many kelvin that a Curve climbs fastest, and where it begins [°C]. */
export interface FastestPassage extends Stretch {
  readonly fromC: number;
  readonly toC: number;
}

/** Steps in which a passage is looked for [K]. */
const STEP_K = 5;

/**
 * The fastest climb of so many kelvin on the way up between two temperatures [°C]: a hold before it
 * does not make it slower.
 *
 * @returns null when the Curve climbs through no such passage.
 */
export function fastestPassage(
  curve: Curve,
  within: { readonly fromC: number; readonly toC: number },
  spanK: number,
): FastestPassage | null {
  const lowestC = Math.max(within.fromC, curve.tempsC[0]!);
  let fastest: FastestPassage | null = null;
  for (let fromC = lowestC; fromC + spanK <= within.toC + 1e-6; fromC += STEP_K) {
    const toC = fromC + spanK;
    const to = firstUp(curve, toC);
    if (to === null) break;
    const from = lastUpBefore(curve, fromC, to);
    if (from === null || to <= from) continue;
    const meanCPerHour = (spanK * 3600) / (to - from);
    if (fastest === null || meanCPerHour > fastest.meanCPerHour)
      fastest = { fromSeconds: from, toSeconds: to, seconds: to - from, meanCPerHour, fromC, toC };
  }
  return fastest;
}

function firstUp(curve: Curve, tempC: number): number | null {
  const peak = peakOf(curve);
  return (
    crossingTimes(curve, tempC).find(
      (crossing) => crossing.direction === "heating" && crossing.seconds <= peak.seconds,
    )?.seconds ?? null
  );
}

function lastUpBefore(curve: Curve, tempC: number, before: number): number | null {
  if (curve.tempsC[0]! >= tempC) return curve.timesSeconds[0]!;
  return (
    crossingTimes(curve, tempC).findLast(
      ({ direction, seconds }) => direction === "heating" && seconds < before,
    )?.seconds ?? null
  );
}
