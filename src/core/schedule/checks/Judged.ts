import type { Heatwork } from "../../cones/cone.ts";
import type { Curve } from "../../curve/Curve.ts";
import type { Finding } from "../../findings/Finding.ts";
import type { AssumedKiln } from "../../kiln/AssumedKiln.ts";
import type { LimitFor } from "../coolingLimits.ts";
import type { OwnKilnFiring } from "../ownKilnFiring.ts";
import type { Expansion, Schedule } from "../Schedule.ts";

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
