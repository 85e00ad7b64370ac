import type { SolvedWitnessOffset } from "../cones/witnessOffset.ts";
import type { LogReading } from "../log/LogReading.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import type { PieceStrain } from "../ware/pieceStrain.ts";
import type { FiringRecord } from "./FiringRecord.ts";
import type { PlanComparison, ZoneReview, ZoneSpread } from "./foundZone.ts";
import type { KnownOpening } from "./knownOpening.ts";
import type { LoggedOpening } from "./openingInLog.ts";
import type { PlacedSound, PlacedUnloading } from "./placedMoments.ts";
import type { PowerLoss } from "./powerLoss.ts";

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
