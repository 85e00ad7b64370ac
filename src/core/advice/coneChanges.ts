import { coneIndex } from "../cones/cone.ts";
import { toldWare } from "../schedule/coolingLimits.ts";
import { draftSchedule } from "../schedule/draftSchedule.ts";
import type { Schedule, Segment } from "../schedule/Schedule.ts";
import { solveSchedule } from "../schedule/solveSchedule.ts";
import type { NextContext, Standing, WantedChange } from "./NextFiring.ts";

/** Cones above the one wanted from which on it is worth a change, as in the finding. */
const TOO_FAR_CONES = 1;
/** A peak this far from the planned one was not the schedule's doing [K]. */
const OFF_PLAN_K = 10;

/** The cone short or over, by what the witness cones and the log say together. */
export function coneChanges(context: NextContext): readonly WantedChange[] {
  const { zone, wantedCone: cone, reachC } = context;
  if (cone === null || reachC !== null) return [];
  const { position, cones, sigmaCones } = zone.heatwork;
  const state = cones.find((each) => each.cone === cone);
  if (state === undefined) return [];
  const off = position.index === null ? null : position.index - coneIndex(cone);
  const isShort = state.marginK < 0;
  if (!isShort && (off === null || off <= TOO_FAR_CONES)) return missedByPlan(context, cone);
  const sigma = sigmaCones ?? 0;
  const standing = standingOf(off, sigma);
  const size = off !== null && Math.abs(off) < 0.05 ? "less than 0.1 cones" : "{off} cones";
  const kilnDidIt = standing !== "too close to tell" && planLeadsThere(context, cone, isShort);
  return [
    {
      about: "cone",
      change: kilnDidIt
        ? kilnWords(cone, isShort)
        : plainWords(cone, { isShort, isClose: standing === "too close to tell" }),
      because: `It reached ${position.label}, ${size} ${isShort ? "short of" : "over"} cone ${cone}; two firings in three lie within {sigma} cones of what is computed.${kilnDidIt ? "" : cause(context, isShort)}`,
      evidence: [
        { name: "margin", value: Math.abs(state.marginK), kind: "difference" },
        { name: "off", value: Math.abs(off ?? coneIndex(cone)), kind: "cones" },
        { name: "sigma", value: sigma, kind: "cones" },
        { name: "below plan", value: Math.abs(belowPlan(context)), kind: "difference" },
        ...(context.facts.plan === null
          ? []
          : [
              {
                name: "planned",
                value: topOf(context.facts.plan).toC,
                kind: "temperature",
              } as const,
            ]),
      ],
      standing,
      ask: kilnDidIt || standing === "too close to tell" ? null : { kind: "cone", cone },
    },
  ];
}

/**
 * The firing came out, but its schedule does not: laid out for this kiln and this
 * thermocouple it misses the cone, so the next one would.
 */
function missedByPlan(context: NextContext, cone: string): readonly WantedChange[] {
  const { plan } = context.facts;
  if (plan === null) return [];
  const { schedule, known } = plannedFor(context, plan);
  const { findings, heatwork } = draftSchedule({
    schedule: { ...schedule, cone },
    start: null,
    findingsOnly: true,
    ...known,
  });
  const isMissed = findings.some(
    ({ topic, severity }) => topic === "cone wanted" && severity === "warning",
  );
  const state = heatwork.cones.find((each) => each.cone === cone);
  if (!isMissed || state === undefined) return [];
  const isShort = state.marginK < 0;
  return [
    {
      about: "cone",
      change: plainWords(cone, { isShort, isClose: false }),
      because: `Its schedule, laid out for this kiln and thermocouple, leads to ${heatwork.position.label}.`,
      evidence: [
        { name: "margin", value: Math.abs(state.marginK), kind: "difference" },
        { name: "planned", value: topOf(plan).toC, kind: "temperature" },
      ],
      standing: "worth trying",
      ask: { kind: "cone", cone },
    },
  ];
}

/** The plan for the ware as it is told, and what is known of kiln and thermocouple. */
function plannedFor({ kiln, ware }: NextContext, plan: Schedule) {
  return {
    schedule: { ...plan, ware: toldWare(plan.ware, ware) },
    known: { offsetK: kiln.offsetK, ...(kiln.own && { kiln: kiln.own }) },
  };
}

function standingOf(off: number | null, sigma: number): Standing {
  if (off === null || Math.abs(off) > 2 * sigma) return "firm";
  return Math.abs(off) > sigma ? "worth trying" : "too close to tell";
}

/** Whether the plan, for this kiln and thermocouple, needs no more (or no less) than it has. */
function planLeadsThere(context: NextContext, cone: string, isShort: boolean): boolean {
  const { plan } = context.facts;
  const offK = belowPlan(context);
  if (plan === null || (isShort ? offK > -OFF_PLAN_K : offK < OFF_PLAN_K)) return false;
  const { schedule, known } = plannedFor(context, plan);
  const solved = solveSchedule({ schedule, cone, solve: "peak", ...known });
  if (!solved.ok) return false;
  const moreK = topOf(solved.value).toC - topOf(schedule).toC;
  return isShort ? moreK < 1 : moreK > -1;
}

function kilnWords(cone: string, isShort: boolean): string {
  return isShort
    ? `Leave the schedule as it is, which leads to cone ${cone} at {planned}, and find out why the kiln stopped {below plan} short of that: switched off early, a limit in the controller, or weak elements.`
    : `Leave the schedule as it is, which leads to cone ${cone} at {planned}, and find out why the kiln went {below plan} beyond that: a relay that sticks, or the controller's tuning.`;
}

function plainWords(
  cone: string,
  { isShort, isClose }: { readonly isShort: boolean; readonly isClose: boolean },
): string {
  if (isClose)
    return `Leave the peak as it is and look at cone ${cone} again: {margin} ${isShort ? "short" : "over"} is within the uncertainty.`;
  return `Give ${isShort ? "more" : "less"} heat for cone ${cone}: about {margin} ${isShort ? "more" : "less"} at the peak, or a ${isShort ? "longer" : "shorter"} hold.`;
}

/** The same change with peak and hold of the schedule that carries it out. */
export function withPeakSaid(change: WantedChange, schedule: Schedule): WantedChange {
  if (change.ask?.kind !== "cone") return change;
  const { toC, holdSeconds } = topOf(schedule);
  const isMore = change.change.startsWith("Give more");
  const hold = holdSeconds > 0 ? " with {hold} there" : "";
  const instead = change.evidence.some(({ name }) => name === "planned")
    ? ", where {planned} was planned"
    : "";
  return {
    ...change,
    change: `Give ${isMore ? "more" : "less"} heat for cone ${change.ask.cone}: peak at {peak}${hold}${instead}.`,
    evidence: [
      ...change.evidence,
      { name: "peak", value: toC, kind: "temperature" },
      { name: "hold", value: holdSeconds, kind: "duration" },
    ],
  };
}

/** The hottest segment, the last of equals. */
function topOf({ segments }: Schedule): Segment {
  return segments.reduce((top, each) => (each.toC >= top.toC ? each : top));
}

/** Whether the kiln made it shorter than the schedule did. */
function cause(context: NextContext, isShort: boolean): string {
  if (!isShort || belowPlan(context) > -OFF_PLAN_K) return "";
  return " The kiln itself stayed {below plan} below the planned peak.";
}

/** Peak minus the planned peak [K]; 0 without a plan. */
function belowPlan({ facts }: NextContext): number {
  return facts.comparison?.peakDeviationC ?? 0;
}
