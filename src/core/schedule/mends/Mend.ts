import type { Finding } from "../../findings/Finding.ts";
import type { AssumedKiln } from "../../kiln/AssumedKiln.ts";
import type { LimitFor } from "../coolingLimits.ts";
import type { Schedule } from "../Schedule.ts";

/** What a schedule is mended for. */
export interface MendContext {
  readonly kiln: AssumedKiln;
  readonly limitFor: LimitFor;
  /** Added to the planned temperatures before cones are judged [K]; null for the usual. */
  readonly offsetK: number | null;
}

/** What a mend makes of a schedule. */
export type Mended =
  | { readonly ok: true; readonly schedule: Schedule; readonly did: string }
  /** It cannot be mended; why, as a sentence. */
  | { readonly ok: false; readonly why: string };

/** Mends what one topic of findings complains of. */
export interface Mend {
  /** Topic of the findings, as the checks name it. */
  readonly topic: string;
  readonly mend: (schedule: Schedule, findings: readonly Finding[], context: MendContext) => Mended;
}
