import type { Heatwork } from "../cones/cone.ts";
import type { Curve } from "../curve/Curve.ts";
import type { Crossing } from "../ware/crossingsOf.ts";

/** A ramp or a hold that was found in a measured Curve. */
export interface FoundSegment {
  readonly kind: "ramp" | "hold";
  readonly startSeconds: number;
  readonly endSeconds: number;
  readonly fromC: number;
  readonly toC: number;
  /** Signed; the drift on a hold. */
  readonly rateCPerHour: number;
  /** The hold meets the published definition of a stable furnace (EN ISO 1182). */
  readonly stable: boolean;
}

/** One thermocouple's firing. */
export interface ZoneReview {
  readonly name: string;
  /** As measured, no offset applied. */
  readonly curve: Curve;
  readonly peakC: number;
  readonly peakAtSeconds: number;
  readonly secondsWithinFiveOfPeak: number;
  readonly lastReadingC: number;
  readonly lastReadingAtSeconds: number;
  readonly heatwork: Heatwork;
  readonly segments: readonly FoundSegment[];
  readonly crossings: readonly Crossing[];
}

/** How far the measured Curve went from the planned one. */
export interface PlanComparison {
  readonly title: string;
  readonly planned: Curve;
  /** Shift of the plan that lines it up with the log [s]. */
  readonly shiftSeconds: number;
  readonly zone: string;
  readonly largestDeviationC: number;
  readonly largestDeviationAtSeconds: number;
  /** Area between over the planned area, signed [ratio]; the measure of furnace-curve conformity. */
  readonly areaDeviation: number;
  readonly peakDeviationC: number;
  /** When the log first came within 5 °C of its peak, minus the same on the plan lined up [s]. */
  readonly peakDelaySeconds: number;
}

/** How far the zones of a firing were apart. */
export interface ZoneSpread {
  readonly largestC: number;
  readonly largestAtSeconds: number;
  /** At the peak of the hottest. */
  readonly atPeakC: number;
}
