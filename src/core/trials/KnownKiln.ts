import type { AssumedKiln } from "../kiln/AssumedKiln.ts";

/** The kiln that the next firing goes into. */
export interface KnownKiln {
  /** Learned from the user's own logs. */
  readonly kiln: AssumedKiln;
  /** What its thermocouple is to be corrected by before cones are judged, from witness cones; null for the usual [K]. */
  readonly offsetK: number | null;
}
