import { rawWareFindings } from "../firing/firingFindings.ts";
import { CARBON, STEAM } from "../schedule/heatingChecks.ts";
import { rateDown } from "../schedule/paced.ts";
import type { NextContext, WantedChange } from "./NextFiring.ts";

/** Behind the plan by this at the peak is worth a change [s]; our own choice. */
const LATE_SECONDS = 1800;
/** Twice that and more is firm [s]. */
const VERY_LATE_SECONDS = 2 * LATE_SECONDS;
/** A hold that drifts by more than this from its start to its end [K]; our own choice. */
const DRIFTED_K = 5;
/** Holds this near the peak are what counts for the cone [K]. */
const NEAR_PEAK_K = 15;

/** Where the kiln fell behind the plan, lost power, or could not hold its peak still. */
export function climbChanges(context: NextContext): readonly WantedChange[] {
  return [
    ...outOfReach(context),
    ...behind(context),
    ...lostPower(context),
    ...rawWare(context),
    ...driftingHold(context),
  ];
}

/** The cone is out of the kiln's reach: nothing of a schedule helps, so this comes before the rest. */
function outOfReach({ facts, reachC, wantedCone, history }: NextContext): readonly WantedChange[] {
  if (reachC === null) return [];
  const below = facts.comparison?.peakDeviationC ?? 0;
  const weakerBy = history?.weakerBy ?? null;
  return [
    {
      about: "elements",
      change: `Have a licensed electrician see to elements, relays and mains, kiln isolated and cold, before the next hot firing: as it is, no schedule makes cone ${wantedCone}.`,
      because: `It stayed {below} below its planned peak, and by the log it hardly climbs beyond {reach}.${weakerBy === null ? "" : " At the same temperatures it gave {less} less than in the strongest earlier firing."} A softer cone, or a lighter load, is all that a schedule can do.`,
      evidence: [
        { name: "below", value: Math.abs(below), kind: "difference" },
        { name: "reach", value: reachC, kind: "temperature" },
        ...(weakerBy === null ? [] : [{ name: "less", value: weakerBy, kind: "percent" } as const]),
      ],
      standing: "firm",
      ask: null,
    },
  ];
}

function behind({ facts, reachC }: NextContext): readonly WantedChange[] {
  const { comparison } = facts;
  if (comparison === null || reachC !== null || comparison.peakDelaySeconds < LATE_SECONDS)
    return [];
  // Late, it may stand above a plan that is falling already: that says nothing of the climb.
  const isBelow = comparison.largestDeviationC < 0;
  return [
    {
      about: "climb",
      change:
        "Plan a climb that this kiln can follow: slower where it fell behind, or at full power with the time that takes.",
      because: `It came to its peak {late} after the plan${isBelow ? " and was {below} below it at {when} after the start" : ""}.`,
      evidence: [
        { name: "late", value: comparison.peakDelaySeconds, kind: "duration" },
        { name: "below", value: Math.abs(comparison.largestDeviationC), kind: "difference" },
        { name: "when", value: comparison.largestDeviationAtSeconds, kind: "elapsed" },
      ],
      standing: comparison.peakDelaySeconds >= VERY_LATE_SECONDS ? "firm" : "worth trying",
      ask: { kind: "climb" },
    },
  ];
}

/** Where steam or carbon leaves, and so where a pace is asked for; drying is held for instead. */
const LEAVES: Readonly<Record<string, { readonly fromC: number; readonly toC: number }>> = {
  "water, rate of the start": STEAM,
  "carbon burning out": CARBON,
};

/** Raw ware that was driven too fast while water or carbon left it. */
function rawWare({ facts }: NextContext): readonly WantedChange[] {
  const unit = facts.reading.unit === "F" ? "F" : "C";
  return rawWareFindings(facts)
    .filter(({ severity }) => severity !== "note")
    .map(({ topic, statement, advice, evidence, severity }): WantedChange => {
      const usual = evidence.find(({ name }) => name === "usual");
      const at = LEAVES[topic];
      return {
        about: "climb",
        change: advice,
        because: statement,
        evidence,
        standing: severity === "warning" ? "firm" : "worth trying",
        ask:
          at === undefined || typeof usual?.value !== "number"
            ? null
            : {
                kind: "pace",
                fromC: at.fromC,
                toC: at.toC,
                mostCPerHour: rateDown(usual.value, unit),
              },
      };
    });
}

function lostPower({ facts }: NextContext): readonly WantedChange[] {
  const [first] = facts.powerLosses;
  if (first === undefined) return [];
  return [
    {
      about: "power",
      change:
        "Have a licensed electrician find out why the heat failed before firing again: mains, relays, plugs, lid switch, under your local code.",
      because:
        "On the way up, at {when}, it fell from {from} to {lowest}; {count} such places in all.",
      evidence: [
        { name: "when", value: first.fromSeconds, kind: "elapsed" },
        { name: "from", value: first.fromC, kind: "temperature" },
        { name: "lowest", value: first.lowestC, kind: "temperature" },
        { name: "count", value: facts.powerLosses.length, kind: "count" },
      ],
      standing: "worth trying",
      ask: null,
    },
  ];
}

function driftingHold({ zone }: NextContext): readonly WantedChange[] {
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
        : "See why the hold sagged: the controller's tuning, or elements near their limit, which a licensed electrician measures with the kiln isolated and cold.",
      because: `The hold at the peak ${rising ? "rose" : "sagged"} from {from} to {to} in {span}.`,
      evidence: [
        { name: "from", value: hold.fromC, kind: "temperature" },
        { name: "to", value: hold.toC, kind: "temperature" },
        { name: "span", value: hold.endSeconds - hold.startSeconds, kind: "duration" },
      ],
      standing: "worth trying",
      ask: null,
    },
  ];
}
