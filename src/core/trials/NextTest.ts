import type { Evidence, Finding } from "../findings/Finding.ts";
import type { AssumedKiln } from "../kiln/LearnedKiln.ts";
import { limitsFor } from "../schedule/coolingLimits.ts";
import { draftSchedule } from "../schedule/draftSchedule.ts";
import { MEND_REACH } from "../schedule/heatingMends.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import type { NotedFiring } from "./firingFacts.ts";

/** Tiles of one kind for the next firing. */
export interface NextTile {
  readonly clay: string;
  readonly glaze: string;
  /** Fired [mm]. */
  readonly coatMm: number;
  readonly glazedSides: "one" | "both";
  /** Null when the shape of the tiles so far is not noted. */
  readonly shape: "flat" | "closed" | null;
  readonly count: number;
}

/** One comparison that is wanted, and how well it is known before and after. */
export interface WantedContrast {
  readonly cause: string;
  /** `both against one`, `exponent`. */
  readonly contrast: string;
  /** One standard error of ln ratio, or of the exponent; null while nothing tells it. */
  readonly before: number | null;
  readonly after: number;
  /** What it has to come under. */
  readonly needed: number;
}

/** The next tiles. */
export interface NextTiles {
  readonly tiles: readonly NextTile[];
  readonly total: number;
  readonly wanted: readonly WantedContrast[];
  /** All wanted contrasts come under what is needed. */
  readonly isEnough: boolean;
  /** Smallest number with which each wanted contrast is told at all, however badly. */
  readonly fewest: number;
  /** Scatter of ln spacing to be expected from tile to tile, and whether it was measured here. */
  readonly scatter: number;
  readonly scatterIs: "measured" | "assumed";
  /** The ratio of spacings that is to be seen, with a chance of 8 in 10. */
  readonly ratio: number;
  /** Why these, in a sentence. */
  readonly reason: string;
}

/** The next firing. */
export interface NextFiring {
  /** The named schedule as it is, with one thing changed, or a new one because none is named. */
  readonly kind: "repeat" | "one change" | "new";
  /** Null when none can be drafted; then `change` says what to do. */
  readonly schedule: Schedule | null;
  /** Title of the firing that it follows. */
  readonly follows: string;
  /** In the imperative; `{name}` stands for the evidence of that name. */
  readonly change: string;
  readonly evidence: readonly Evidence[];
  readonly reason: string;
  /** How the kiln of the next firing takes the schedule; null without that kiln or a schedule. */
  readonly onKiln: Omit<OnThisKiln, "schedule"> | null;
}

/** Which test would tell apart what cannot be told apart yet. */
export interface NextTest {
  readonly tiles: NextTiles | null;
  readonly firing: NextFiring | null;
  /** What stays open after it, and what was not looked at. */
  readonly open: readonly string[];
}

/** The kiln that the next firing goes into. */
export interface KnownKiln {
  /** Learned from the user's own logs. */
  readonly kiln: AssumedKiln;
  /** What its thermocouple is to be corrected by before cones are judged, from witness cones; null for the usual [K]. */
  readonly offsetK: number | null;
}

/** A firing that was reviewed, with its record and the schedule that it names, where they are known. */
export interface PlannedFiring extends NotedFiring {
  readonly plan: Schedule | null;
}

/** A schedule as one kiln can fire it. */
interface OnThisKiln {
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
