import type { Finding } from "../findings/Finding.ts";
import { draftSchedule } from "../schedule/draftSchedule.ts";
import { MEND_REACH } from "../schedule/mends/heating.ts";
import { limitsFor } from "../schedule/pieceOf.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import type { KnownKiln } from "./KnownKiln.ts";

/** A schedule as one kiln can fire it. */
export interface OnThisKiln {
  /** Left to the kiln's full power where it cannot keep the rate; the same object where it can. */
  readonly schedule: Schedule;
  /** What kiln that is and where its numbers come from; a clause to put in a sentence. */
  readonly basis: string;
  /** Ramps were left to full power. */
  readonly isEased: boolean;
  /** Where the kiln does not do what the schedule asks even so: stalls, slow falls, the cone missed. */
  readonly findings: readonly Finding[];
}

/** Topics of what a simulated firing of one's own kiln shows. */
const OF_THE_KILN = ["reach while heating", "reach while cooling", "cone on your kiln"];

/**
 * A schedule fitted to a learned kiln: no ramp on the way up asks for more than it gives. Nothing
 * else is changed, so that the firing stays the one that the test needs; what the kiln cannot do
 * even so is told.
 */
export function onThisKiln(schedule: Schedule, { kiln, offsetK }: KnownKiln): OnThisKiln {
  const judged = (each: Schedule) =>
    draftSchedule({
      schedule: each,
      start: null,
      kiln,
      offsetK,
      findingsOnly: true,
    }).findings.filter(({ topic }) => OF_THE_KILN.includes(topic));
  const before = judged(schedule);
  const isLate = before.some(
    ({ topic, severity }) => topic === MEND_REACH.topic && severity !== "note",
  );
  const asIs = { schedule, basis: kiln.basis, isEased: false, findings: before };
  if (!isLate) return asIs;
  const limitFor = limitsFor(schedule.ware);
  const mended = MEND_REACH.mend(schedule, before, { kiln, limitFor, offsetK });
  if (!mended.ok || JSON.stringify(mended.schedule) === JSON.stringify(schedule)) return asIs;
  return {
    schedule: mended.schedule,
    basis: kiln.basis,
    isEased: true,
    findings: judged(mended.schedule),
  };
}
