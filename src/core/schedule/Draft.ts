import type { Caution } from "../cautions/Caution.ts";
import type { Heatwork } from "../cones/cone.ts";
import type { Finding } from "../findings/Finding.ts";
import type { Crossing } from "../ware/Crossing.ts";
import type { Expansion, Schedule } from "./Schedule.ts";

/** A drafted firing: the schedule laid out and judged. */
export interface Draft {
  readonly schedule: Schedule;
  readonly expansion: Expansion;
  /** Wall time of the start, `2026-12-01T18:00:00`, or null for elapsed times only. */
  readonly start: string | null;
  readonly heatwork: Heatwork;
  /** Electricity of the whole [kWh]; null while the power of the kiln is not known. */
  readonly energyKWh: number | null;
  /** Heating and cooling, each with the published limit that applies. */
  readonly crossings: readonly Crossing[];
  readonly findings: readonly Finding[];
  readonly cautions: readonly Caution[];
}
