import type { NextTime } from "../advice/NextFiring.ts";
import type { Caution } from "../cautions/cautions.ts";
import type { WitnessOffset } from "../cones/witnessOffset.ts";
import type { DiagnosedCause, DiagnosedPiece } from "../diagnosis/Diagnosis.ts";
import type { Finding } from "../findings/Finding.ts";
import type { PlanComparison, ZoneReview, ZoneSpread } from "../firing/FiringFacts.ts";
import type { FiredPiece } from "../firing/firedPieces.ts";
import type { OpeningInLog } from "../firing/knownOpening.ts";
import type { LogReading } from "../log/reading/LogReading.ts";
import type { PieceStrain } from "../ware/pieceStrain.ts";

/** A firing that happened, reviewed. */
export interface FiringReview {
  readonly title: string;
  readonly reading: LogReading;
  readonly zones: readonly ZoneReview[];
  /** Where the log shows cold air coming in, whatever the record says; null when it does not. */
  readonly openingInLog: OpeningInLog | null;
  /** Largest difference between zones, and that at the peak of the hottest; null with one zone. */
  readonly spread: ZoneSpread | null;
  /** The ware whose stress can be computed; empty when the record names no body. */
  readonly pieces: readonly FiredPiece[];
  /** What the hottest zone's Curve did to each of them, the piece that stands the least first. */
  readonly strains: readonly PieceStrain[];
  readonly offset: WitnessOffset | null;
  readonly comparison: PlanComparison | null;
  /** When something was heard, placed on the log. */
  readonly heard: readonly {
    readonly what: string;
    readonly atSeconds: number | null;
    readonly tempC: number | null;
    readonly note: string | null;
  }[];
  /** From the record, as lines to show; empty without a record. */
  readonly recordLines: readonly {
    readonly label: string;
    readonly text: string;
  }[];
  /** Of the worst pieces together, most probable first; empty when nothing was heard or found. */
  readonly diagnosis: readonly DiagnosedCause[];
  /** The same for each piece, or kind of piece, by itself. */
  readonly diagnosedPieces: readonly DiagnosedPiece[];
  /** What to change in the next firing; null where it was not asked for. */
  readonly nextTime: NextTime | null;
  readonly findings: readonly Finding[];
  readonly cautions: readonly Caution[];
}
