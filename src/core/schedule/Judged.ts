import type { Heatwork } from "../cones/cone.ts";
import { type Curve, peakOf } from "../curve/Curve.ts";
import { crossingTimes } from "../curve/edgeTimes.ts";
import type { Finding } from "../findings/Finding.ts";
import type { AssumedKiln } from "../kiln/LearnedKiln.ts";
import type { LimitFor } from "./coolingLimits.ts";
import type { OwnKilnFiring } from "./ownKilnFiring.ts";
import type { Expansion, Schedule } from "./Schedule.ts";

/** A schedule with all that the checks look at. */
export interface Judged {
  readonly schedule: Schedule;
  readonly expansion: Expansion;
  readonly heatwork: Heatwork;
  readonly kiln: AssumedKiln;
  readonly limitFor: LimitFor;
  /** The kiln is the user's own, not the reference kiln. */
  readonly kilnIsKnown: boolean;
  /** As that kiln would fire it; null when none was learned. */
  readonly own: OwnKilnFiring | null;
  /** The schedule's Curve, and after it the fall by itself to 100 °C when it ends hotter. */
  readonly untilCool: Curve;
  /** Time at which the schedule itself ends [s]. */
  readonly endSeconds: number;
  /** Whether clay goes in raw: null when the file does not say. */
  readonly raw: boolean | null;
  /** Highest temperature [°C]. */
  readonly peakC: number;
}

/** The ware of a schedule as raw clay on its way up. */
export function rawWareOf({ schedule, expansion, raw, peakC }: Judged): RawWare {
  const { thickestMm, state } = schedule.ware;
  const { curve } = expansion;
  return { curve, isRaw: raw, isDamp: state === "damp", thickestMm, peakC, tense: "plan" };
}

/** A finding with the parts that most checks leave alone already filled in. */
export function finding(
  parts: Omit<Finding, "zone" | "span" | "advice"> & Partial<Finding>,
): Finding {
  return { zone: null, span: null, advice: "", ...parts };
}

/** Raw clay on its way up, in a plan or in a firing that was. */
export interface RawWare {
  readonly curve: Curve;
  /** Null when nobody says whether the ware was raw. */
  readonly isRaw: boolean | null;
  readonly isDamp: boolean;
  /** Null when not known. */
  readonly thickestMm: number | null;
  readonly peakC: number;
  readonly tense: "plan" | "past";
}

/** From this peak on ware of which nothing is said is taken for glazed [°C]. */
const GLAZE_FROM_C = 1100;

/** A log of which nothing is said is a bisque from this peak on; cooler firings are decals and lustres [°C]. */
const BISQUE_FROM_C = 850;

/** Whether the ware may be raw at all. */
export function mayBeRaw({ isRaw, peakC, tense }: RawWare): boolean {
  if (isRaw !== null) return isRaw;
  return peakC < GLAZE_FROM_C && (tense === "plan" || peakC >= BISQUE_FROM_C);
}

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
