import type { Heatwork } from "../cones/cone.ts";
import type { SolvedWitnessOffset } from "../cones/witnessOffset.ts";
import { type Curve, sliced, temperatureAt } from "../curve/Curve.ts";
import type { LogReading } from "../log/reading/LogReading.ts";
import type { FiringRecord } from "../record/FiringRecord.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import { type Crossing, QUARTZ_BAND } from "../ware/inversions.ts";
import type { PieceStrain } from "../ware/pieceStrain.ts";
import type { KnownOpening, LoggedOpening } from "./knownOpening.ts";
import type { PlacedSound, PlacedUnloading } from "./placedMoments.ts";
import type { PowerLoss } from "./powerLoss.ts";

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

/** All that the findings of one firing are made from. */
export interface FiringFacts {
  readonly reading: LogReading;
  readonly record: FiringRecord | null;
  readonly plan: Schedule | null;
  readonly zones: readonly ZoneReview[];
  readonly spread: ZoneSpread | null;
  /** From witness cones, solved for the hottest zone, and the cone as read without it. */
  readonly witness: {
    readonly offset: SolvedWitnessOffset;
    readonly labelAsRead: string;
  } | null;
  readonly comparison: PlanComparison | null;
  /** Of the hottest zone. */
  readonly powerLosses: readonly PowerLoss[];
  readonly heard: readonly PlacedSound[];
  readonly unloading: PlacedUnloading | null;
  /** What the log itself says of the opening. */
  readonly logged: LoggedOpening;
  /** When and how hot the kiln was opened, by record and log together. */
  readonly opening: KnownOpening;
  readonly strains: readonly PieceStrain[];
}

/** The zone to name in a finding: none when there is only one. */
export function zoneNamed(facts: FiringFacts, zone: ZoneReview): string | null {
  return facts.zones.length > 1 ? zone.name : null;
}

/**
 * The zone with the highest peak; the first of them when several are equal.
 * @throws RangeError without any zone.
 */
export function hottestZone(zones: readonly ZoneReview[]): ZoneReview {
  const [first, ...others] = zones;
  if (!first) throw new RangeError("hottestZone: no zone");
  return others.reduce((best, zone) => (zone.peakC > best.peakC ? zone : best), first);
}

/** From when on the air of a kiln was no longer the ware's, and how hot it was. */
export interface KilnOpened {
  readonly seconds: number;
  readonly tempC: number;
}

/**
 * When the lid was taken off within the readings, by record and log; null where it was not. Air that
 * is let into a hot kiln, by a vent or a propped lid, still passes the ware: what is measured of it
 * down to the end of the quartz inversion counts.
 */
export function kilnOpened(
  curve: Curve,
  { opening, logged }: Pick<FiringFacts, "opening" | "logged">,
): KilnOpened | null {
  const { atSeconds, from } = opening;
  if (atSeconds === null || (from === "log" && logged.main?.how !== "opened")) return null;
  const tempC = temperatureAt(curve, atSeconds);
  return tempC === null || tempC > QUARTZ_BAND.lowC ? null : { seconds: atSeconds, tempC };
}

/** The Curve as long as the kiln was shut: what the ware in it went through. */
export function whileShut(curve: Curve, opened: KilnOpened | null): Curve {
  if (opened === null) return curve;
  return sliced(curve, curve.timesSeconds[0]!, opened.seconds) ?? curve;
}
