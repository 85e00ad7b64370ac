import { coneIndex } from "../../cones/coneName.ts";
import type { NextContext } from "./NextContext.ts";
import type { NextChange, Standing } from "./NextTime.ts";

/** Cones above the one wanted from which on it is worth a change, as in the finding. */
const TOO_FAR_CONES = 1;
/** A peak this far below the planned one was not the schedule's doing [K]. */
const FELL_SHORT_K = 10;

/** The cone short or over, by what the witness cones and the log say together. */
export function coneChanges(context: NextContext): readonly NextChange[] {
  const { zone, wantedCone: cone } = context;
  if (cone === null) return [];
  const { position, cones, sigmaCones } = zone.heatwork;
  const state = cones.find((each) => each.cone === cone);
  if (state === undefined) return [];
  const off = position.index === null ? null : position.index - coneIndex(cone);
  const isShort = state.marginK < 0;
  if (!isShort && (off === null || off <= TOO_FAR_CONES)) return [];
  const sigma = sigmaCones ?? 0;
  const standing = standingOf(off, sigma);
  const size = off !== null && Math.abs(off) < 0.05 ? "less than 0.1 cones" : "{off} cones";
  return [
    {
      about: "cone",
      change: changeWords(cone, { isShort, standing }),
      because: `It reached ${position.label}, ${size} ${isShort ? "short of" : "over"} cone ${cone}; two firings in three lie within {sigma} cones of what is computed.${cause(context, isShort)}`,
      evidence: [
        { name: "margin", value: Math.abs(state.marginK), kind: "difference" },
        { name: "off", value: Math.abs(off ?? coneIndex(cone)), kind: "cones" },
        { name: "sigma", value: sigma, kind: "cones" },
        { name: "below plan", value: Math.abs(belowPlan(context)), kind: "difference" },
      ],
      standing,
      inSchedule: standing !== "too close to tell",
    },
  ];
}

function standingOf(off: number | null, sigma: number): Standing {
  if (off === null || Math.abs(off) > 2 * sigma) return "firm";
  return Math.abs(off) > sigma ? "worth trying" : "too close to tell";
}

function changeWords(
  cone: string,
  { isShort, standing }: { readonly isShort: boolean; readonly standing: Standing },
): string {
  if (standing === "too close to tell")
    return `Leave the peak as it is and look at cone ${cone} again: {margin} ${isShort ? "short" : "over"} is within the uncertainty.`;
  return isShort
    ? `Give more heat for cone ${cone}: about {margin} more at the peak, or a longer hold.`
    : `Give less heat for cone ${cone}: about {margin} less at the peak, or a shorter hold.`;
}

/** Whether the kiln, not the schedule, made it short. */
function cause(context: NextContext, isShort: boolean): string {
  if (!isShort || belowPlan(context) > -FELL_SHORT_K) return "";
  return " The kiln itself stayed {below plan} below the planned peak, so a hotter schedule alone will not help.";
}

/** Peak minus the planned peak [K]; 0 without a plan. */
function belowPlan({ facts }: NextContext): number {
  return facts.comparison?.peakDeviationC ?? 0;
}
