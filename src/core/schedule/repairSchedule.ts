import { type Finding, type Severity, statementText } from "../findings/Finding.ts";
import { type AssumedKiln, REFERENCE_KILN } from "../kiln/LearnedKiln.ts";
import { ok, type Result } from "../problem.ts";
import { printRate } from "../text/quantities.ts";
import { COOLING_BANDS, type LimitFor, limitsFor } from "./coolingLimits.ts";
import { draftSchedule } from "./draftSchedule.ts";
import { energyKWh } from "./energy.ts";
import { expandSchedule, freeSpeed } from "./expandSchedule.ts";
import {
  MEND_CARBON,
  MEND_DRYING,
  MEND_QUARTZ_HEATING,
  MEND_REACH,
  MEND_START,
} from "./heatingMends.ts";
import { tidied, wholeSchedule } from "./paced.ts";
import { MEND_CONE, MEND_LAST_HUNDRED, MEND_PEAK_HOLD } from "./peakMends.ts";
import type { Schedule } from "./Schedule.ts";
import { type Solvable, solveSchedule } from "./solveSchedule.ts";
import {
  coolingTopic,
  keptTo,
  MEND_COOLING,
  type Mend,
  type MendContext,
  type WishedPace,
} from "./wishedPace.ts";

/** One thing that was mended. */
export interface RepairStep {
  /** Topic of the finding that it answers. */
  readonly topic: string;
  readonly severity: Severity;
  /** What was wrong, as the check said it. */
  readonly reason: string;
  /** What was done about it. */
  readonly did: string;
  /** Longer (+) or shorter (−) by this [s]. */
  readonly costSeconds: number;
  /** More (+) or less (−) electricity [kWh]; null when the kiln's heat capacity is not known. */
  readonly costKWh: number | null;
}

/** A schedule mended with the smallest change in time. */
export interface Repair {
  readonly before: Schedule;
  readonly after: Schedule;
  readonly steps: readonly RepairStep[];
  /** What no schedule can mend, and what the mended one asks of the kiln, as sentences. */
  readonly limits: readonly string[];
  readonly costSeconds: number;
  readonly costKWh: number | null;
}

/** What a repair may lean on. */
interface RepairInput {
  readonly schedule: Schedule;
  /** The user's own kiln; without it the reference kiln stands in. */
  readonly kiln?: AssumedKiln;
  /** What the ware stands; without it what is published. */
  readonly limitFor?: LimitFor;
  /** Added to the planned temperatures before cones are judged [K]; left out for the usual. */
  readonly offsetK?: number | null;
}

/** From the start of a firing to its end; the cone last, for all that heats or cools moves it. */
const MENDS: readonly Mend[] = [
  MEND_START,
  MEND_DRYING,
  MEND_QUARTZ_HEATING,
  MEND_CARBON,
  MEND_REACH,
  MEND_PEAK_HOLD,
  MEND_LAST_HUNDRED,
  ...MEND_COOLING,
  MEND_CONE,
];

/** All mends are gone through this often at most, since one may disturb another. */
const MOST_ROUNDS = 6;

/**
 * The smallest change in time that brings every finding of a schedule under its limit.
 * Each caution and warning is mended where it stands, and a cone that falls too late, and no more than it asks for; a mend that does
 * not silence its finding is taken back, and the finding is listed as one that cannot be mended.
 * It comes in whole degrees and rates of its unit, neighbours of one rate joined. Mending a mended
 * schedule changes nothing.
 */
export function repairSchedule(input: RepairInput): Repair {
  const before = input.schedule;
  const kiln = input.kiln ?? REFERENCE_KILN;
  const limitFor = input.limitFor ?? limitsFor(before.ware);
  const context = { kiln, limitFor, offsetK: input.offsetK ?? null };
  const judge = (schedule: Schedule) =>
    draftSchedule({ ...input, schedule, start: null, findingsOnly: true }).findings;
  const steps: RepairStep[] = [];
  const start = wholeSchedule(before);
  let round: Round = { after: start, findings: judge(start), steps, given: new Map() };
  for (let k = 0; k < MOST_ROUNDS; k++) {
    round = mendedOnce({ ...round, steps: [] }, { context, judge });
    if (round.steps.length === 0) break;
    steps.push(...round.steps);
  }
  const { findings, given } = round;
  const after = tidied(round.after);
  return {
    before,
    after,
    steps,
    limits: [
      ...findings.flatMap((finding) => {
        const why = isMended(finding) ? given.get(finding.topic) : undefined;
        return why === undefined ? [] : [`${statementText(finding, before.unit)} ${why}`];
      }),
      ...kilnLimits({ after, steps, findings, kiln, limitFor }),
    ],
    ...cost(before, after, kiln),
  };
}

/** A schedule on its way, with what was tried. */
interface Round {
  readonly after: Schedule;
  readonly findings: readonly Finding[];
  readonly steps: readonly RepairStep[];
  /** Topics given up, and why. */
  readonly given: ReadonlyMap<string, string>;
}

/** Every mend that helps, each tried anew. */
function mendedOnce(
  from: Round,
  by: {
    readonly context: MendContext;
    readonly judge: (schedule: Schedule) => readonly Finding[];
  },
): Round {
  const steps: RepairStep[] = [];
  const given = new Map<string, string>();
  let { after, findings } = from;
  for (const { topic, mend } of MENDS) {
    const [worst, ...others] = findings.filter((each) => each.topic === topic && isMended(each));
    if (worst === undefined) continue;
    const mended = mend(after, [worst, ...others], by.context);
    const later = mended.ok ? by.judge(mended.schedule) : findings;
    if (!mended.ok || isTrouble(later, topic)) {
      given.set(topic, mended.ok ? "No change of the schedule alone brings it under." : mended.why);
      continue;
    }
    steps.push({
      topic,
      severity: worst.severity,
      reason: statementText(worst, after.unit),
      did: mended.did,
      ...cost(after, mended.schedule, by.context.kiln),
    });
    after = mended.schedule;
    findings = later;
  }
  return { after, findings, steps, given };
}

function isTrouble(findings: readonly Finding[], topic: string): boolean {
  return findings.some((finding) => finding.topic === topic && isMended(finding));
}

/** Cautions and warnings are mended, and a cone that would fall too late: it costs nothing. */
function isMended({ topic, severity, advice }: Finding): boolean {
  return severity !== "note" || (topic === MEND_CONE.topic && advice !== "");
}

function cost(before: Schedule, after: Schedule, kiln: AssumedKiln) {
  const [old, mended] = [before, after].map((schedule) => {
    const expansion = expandSchedule(schedule, { kiln });
    return {
      seconds: expansion.timeline.at(-1)?.endSeconds ?? 0,
      kWh: energyKWh({ schedule, kiln }),
    };
  }) as [Cost, Cost];
  return {
    costSeconds: mended.seconds - old.seconds,
    costKWh: mended.kWh === null || old.kWh === null ? null : mended.kWh - old.kWh,
  };
}

interface Cost {
  readonly seconds: number;
  readonly kWh: number | null;
}

/** What depends on the kiln and not on the schedule. */
function kilnLimits(judged: {
  readonly after: Schedule;
  readonly steps: readonly RepairStep[];
  readonly findings: readonly Finding[];
  readonly kiln: AssumedKiln;
  readonly limitFor: LimitFor;
}): readonly string[] {
  const { after, steps, findings, kiln, limitFor } = judged;
  const { unit } = after;
  const powered = COOLING_BANDS.flatMap((band) => {
    const limit = limitFor(band)?.limitCPerHour ?? null;
    const natural = freeSpeed(kiln, band.highC, false);
    const isSlowed = steps.some((step) => step.topic === coolingTopic(band));
    if (!isSlowed || limit === null || natural <= limit) return [];
    return [
      `At the ${band.name} the kiln falls at ${printRate(natural, unit)} by itself, above the limit of ${printRate(limit, unit)}: it has to be held back with the elements on. A controller that cannot programme a fall cannot do this.`,
    ];
  });
  const slow = findings
    .filter((finding) => finding.topic === "reach while cooling")
    .map(
      (finding) =>
        `${statementText(finding, unit)} That cannot be hurried; an open lid or a fan would chill the ware unevenly.`,
    );
  return [...powered, ...slow];
}

/** What a schedule is to be changed for. */
export interface ScheduleChange {
  readonly paces: readonly WishedPace[];
  readonly repair: boolean;
  /** Solved last, so that what was slowed counts; with the cone to go down. */
  readonly solve: { readonly part: Solvable; readonly cone: string } | null;
}

/** A changed schedule. */
export interface ChangedSchedule {
  readonly after: Schedule;
  /** Null when nothing was to be mended. */
  readonly repair: Repair | null;
}

/**
 * A schedule changed as the command line and the advice of a review ask for it: first kept to the
 * paces, then mended, then solved; in whole degrees and rates of its unit.
 *
 * @returns the problems of `solveSchedule`.
 */
export function changedSchedule(
  schedule: Schedule,
  by: ScheduleChange & { readonly kiln?: AssumedKiln; readonly offsetK?: number | null },
): Result<ChangedSchedule> {
  const { paces, solve, repair: mends, ...known } = by;
  const kiln = by.kiln ?? REFERENCE_KILN;
  const kept = keptTo(paces.length > 0 ? wholeSchedule(schedule) : schedule, { paces, kiln });
  const repair = mends ? repairSchedule({ schedule: kept, ...known }) : null;
  const mended = repair?.after ?? (paces.length > 0 ? tidied(kept) : kept);
  if (solve === null) return ok({ after: mended, repair });
  const solved = solveSchedule({
    schedule: mended,
    cone: solve.cone,
    solve: solve.part,
    ...known,
  });
  return solved.ok ? ok({ after: solved.value, repair }) : solved;
}
