import type { NextContext } from "./NextContext.ts";
import type { NextChange } from "./NextTime.ts";

/** Behind the plan by this at the peak is worth a change [s]; our own choice. */
const LATE_SECONDS = 1800;
/** Twice that and more is firm [s]. */
const VERY_LATE_SECONDS = 2 * LATE_SECONDS;
/** A hold that drifts by more than this from its start to its end [K]; our own choice. */
const DRIFTED_K = 5;
/** Holds this near the peak are what counts for the cone [K]. */
const NEAR_PEAK_K = 15;

/** Where the kiln fell behind the plan, lost power, or could not hold its peak still. */
export function climbChanges(context: NextContext): readonly NextChange[] {
  return [...behind(context), ...lostPower(context), ...driftingHold(context)];
}

function behind({ facts, reachC, wantedCone }: NextContext): readonly NextChange[] {
  const { comparison } = facts;
  if (comparison === null || comparison.peakDelaySeconds < LATE_SECONDS) return [];
  // Late, it may stand above a plan that is falling already: that says nothing of the climb.
  const isBelow = comparison.largestDeviationC < 0;
  return [
    {
      about: reachC === null ? "climb" : "elements",
      change:
        reachC === null
          ? "Plan a climb that this kiln can follow: slower where it fell behind, or at full power with the time that takes."
          : `Have the elements, relays and mains seen to before the next hot firing: no schedule makes cone ${wantedCone} with the kiln as it was.`,
      because: `It came to its peak {late} after the plan${isBelow ? " and was {below} below it at {when} after the start" : ""}.${reachC === null ? "" : ` By the log it hardly climbs beyond {reach}.`}`,
      evidence: [
        { name: "late", value: comparison.peakDelaySeconds, kind: "duration" },
        { name: "below", value: Math.abs(comparison.largestDeviationC), kind: "difference" },
        { name: "when", value: comparison.largestDeviationAtSeconds, kind: "elapsed" },
        ...(reachC === null
          ? []
          : [{ name: "reach", value: reachC, kind: "temperature" } as const]),
      ],
      standing: comparison.peakDelaySeconds >= VERY_LATE_SECONDS ? "firm" : "worth trying",
      inSchedule: reachC === null,
    },
  ];
}

function lostPower({ facts }: NextContext): readonly NextChange[] {
  const [first] = facts.powerLosses;
  if (first === undefined) return [];
  return [
    {
      about: "power",
      change: "Find out why the heat failed before firing again: mains, relays, plugs, lid switch.",
      because:
        "On the way up, at {when}, it fell from {from} to {lowest}; {count} such places in all.",
      evidence: [
        { name: "when", value: first.fromSeconds, kind: "elapsed" },
        { name: "from", value: first.fromC, kind: "temperature" },
        { name: "lowest", value: first.lowestC, kind: "temperature" },
        { name: "count", value: facts.powerLosses.length, kind: "count" },
      ],
      standing: "worth trying",
      inSchedule: false,
    },
  ];
}

function driftingHold({ zone }: NextContext): readonly NextChange[] {
  const hold = zone.segments
    .filter(
      ({ kind, toC, fromC, startSeconds, endSeconds }) =>
        kind === "hold" &&
        Math.min(fromC, toC) > zone.peakC - NEAR_PEAK_K &&
        endSeconds > startSeconds,
    )
    .toSorted((a, b) => Math.abs(b.toC - b.fromC) - Math.abs(a.toC - a.fromC))[0];
  if (hold === undefined || Math.abs(hold.toC - hold.fromC) <= DRIFTED_K) return [];
  const rising = hold.toC > hold.fromC;
  return [
    {
      about: "hold",
      change: rising
        ? "Let the controller settle before the hold: a slower last climb, or its tuning run anew."
        : "See why the hold sagged: elements near their limit, or the controller's tuning.",
      because: `The hold at the peak ${rising ? "rose" : "sagged"} from {from} to {to} in {span}.`,
      evidence: [
        { name: "from", value: hold.fromC, kind: "temperature" },
        { name: "to", value: hold.toC, kind: "temperature" },
        { name: "span", value: hold.endSeconds - hold.startSeconds, kind: "duration" },
      ],
      standing: "worth trying",
      inSchedule: false,
    },
  ];
}
