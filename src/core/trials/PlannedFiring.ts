import type { Schedule } from "../schedule/Schedule.ts";
import type { NotedFiring } from "./firingFacts.ts";

/** A firing that was reviewed, with its record and the schedule that it names, where they are known. */
export interface PlannedFiring extends NotedFiring {
  readonly plan: Schedule | null;
}
