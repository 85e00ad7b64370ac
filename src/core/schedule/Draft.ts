import type { Caution } from "../cautions/Caution.ts";
import type { Heatwork } from "../cones/cone.ts";
import type { Finding } from "../findings/Finding.ts";
import type { Crossing } from "../ware/Crossing.ts";
import type { PieceStrain } from "../ware/pieceStrain.ts";
import type { OwnKilnFiring } from "./ownKilnFiring.ts";
import type { Expansion, Schedule } from "./Schedule.ts";

/** A drafted firing: the schedule laid out and judged. */
export interface Draft {
  readonly schedule: Schedule;
  readonly expansion: Expansion;
  /** Wall time of the start, `2026-12-01T18:00:00`, or null for elapsed times only. */
  readonly start: string | null;
  readonly heatwork: Heatwork;
  /** As the user's own kiln would fire it; null when none was learned from logs. */
  readonly own: OwnKilnFiring | null;
  /** Electricity of the whole [kWh]; null while the power of the kiln is not known, or where it stalls. */
  readonly energyKWh: number | null;
  /** Heating and cooling, each with the published limit that applies. */
  readonly crossings: readonly Crossing[];
  /** What the schedule does to its ware; empty when no body is named. */
  readonly strains: readonly PieceStrain[];
  readonly findings: readonly Finding[];
  readonly cautions: readonly Caution[];
}
