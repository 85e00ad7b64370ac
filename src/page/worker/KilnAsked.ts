import type { AssumedKiln } from "../../core/kiln/AssumedKiln.ts";
import { asAssumedKiln } from "../../core/kiln/asAssumedKiln.ts";
import type { LearnedKiln } from "../../core/kiln/LearnedKiln.ts";

/** What is known of kiln and thermocouple, as it can be sent to a worker. */
export interface KilnAsked {
  /** Null for the kiln that is assumed. */
  readonly learned: LearnedKiln | null;
  /** Added to thermocouple readings before cones are judged [K]; null for the usual. */
  readonly offsetK: number | null;
  readonly offsetSigmaK?: number;
}

/** The same, as schedules are worked out with it. */
export function knownKiln({ learned, ...known }: KilnAsked): {
  readonly kiln?: AssumedKiln;
  readonly offsetK: number | null;
  readonly offsetSigmaK?: number;
} {
  return learned === null ? known : { ...known, kiln: asAssumedKiln(learned) };
}
