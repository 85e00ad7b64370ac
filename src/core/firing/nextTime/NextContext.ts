import type { DiagnosedCause } from "../diagnosis/DiagnosedCause.ts";
import type { FiringFacts } from "../FiringFacts.ts";
import type { FiringHistory } from "../FiringHistory.ts";
import type { ZoneReview } from "../foundZone.ts";
import type { NextKiln } from "./nextKiln.ts";
import type { NextWare } from "./nextWare.ts";

/** All that the changes of one firing are made from. */
export interface NextContext {
  readonly facts: FiringFacts;
  /** The hottest zone. */
  readonly zone: ZoneReview;
  readonly wantedCone: string | null;
  readonly diagnosis: readonly DiagnosedCause[];
  readonly history: FiringHistory | null;
  readonly kiln: NextKiln;
  /** Where this kiln ends [°C], when it makes the cone with no schedule; else null. */
  readonly reachC: number | null;
  readonly ware: NextWare;
}
