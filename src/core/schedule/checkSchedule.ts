import type { Heatwork } from "../cones/cone.ts";
import { type Curve, makeCurve } from "../curve/Curve.ts";
import { peakOf } from "../curve/peakOf.ts";
import type { Finding } from "../findings/Finding.ts";
import { ordered } from "../findings/ordered.ts";
import { type AssumedKiln, REFERENCE_KILN } from "../kiln/AssumedKiln.ts";
import { checkAfterwards } from "./checks/afterwards.ts";
import { checkCarbon } from "./checks/carbon.ts";
import { checkCone } from "./checks/coneWanted.ts";
import { checkCooling } from "./checks/cooling.ts";
import { checkLastHundred, checkQuartzHeating } from "./checks/heating.ts";
import type { Judged } from "./checks/Judged.ts";
import { checkPeakHold } from "./checks/peak.ts";
import { checkRatings } from "./checks/ratings.ts";
import { checkReach } from "./checks/reach.ts";
import { checkCrackle, checkUnloading, UNLOAD_C } from "./checks/unloading.ts";
import { checkWater } from "./checks/water.ts";
import type { LimitFor } from "./coolingLimits.ts";
import { freeRamp } from "./freeRamp.ts";
import type { OwnKilnFiring } from "./ownKilnFiring.ts";
import { limitsFor } from "./pieceOf.ts";
import type { Expansion, Schedule } from "./Schedule.ts";

const CHECKS: readonly ((judged: Judged) => readonly Finding[])[] = [
  checkWater,
  checkCarbon,
  checkQuartzHeating,
  checkLastHundred,
  checkPeakHold,
  checkCone,
  checkAfterwards,
  checkCooling,
  checkReach,
  checkRatings,
  checkUnloading,
  checkCrackle,
];

/** What a schedule is judged by. */
interface CheckInput {
  readonly schedule: Schedule;
  readonly expansion: Expansion;
  readonly heatwork: Heatwork;
  /** The user's own kiln; without it the reference kiln stands in. */
  readonly kiln?: AssumedKiln;
  /** As that kiln would fire it; it takes the place of the check of each ramp. */
  readonly own?: OwnKilnFiring | null;
  /** The guides for the ware; without them they are worked out. */
  readonly limitFor?: LimitFor;
}

/** What there is to say about a schedule, in the trade's order of concerns, worst first. */
export function checkSchedule(input: CheckInput): readonly Finding[] {
  const { schedule, expansion, heatwork } = input;
  const kiln = input.kiln ?? REFERENCE_KILN;
  const judged: Judged = {
    schedule,
    expansion,
    heatwork,
    kiln,
    limitFor: input.limitFor ?? limitsFor(schedule.ware),
    kilnIsKnown: input.kiln !== undefined,
    own: input.own ?? null,
    untilCool: untilCool(expansion.curve, kiln),
    endSeconds: expansion.curve.timesSeconds.at(-1) as number,
    raw: isRaw(schedule.ware.state),
    peakC: peakOf(expansion.curve).tempC,
  };
  return ordered(CHECKS.flatMap((check) => check(judged)));
}

function isRaw(state: Schedule["ware"]["state"]): boolean | null {
  if (state === null) return null;
  return state === "bone dry" || state === "damp" || state === "glazed raw";
}

function untilCool(curve: Curve, kiln: AssumedKiln): Curve {
  const endC = curve.tempsC.at(-1) as number;
  const endSeconds = curve.timesSeconds.at(-1) as number;
  if (endC <= UNLOAD_C) return curve;
  const fall = freeRamp({ fromC: endC, toC: UNLOAD_C, kiln });
  return makeCurve(
    [...curve.timesSeconds, ...fall.map((point) => endSeconds + point.seconds)],
    [...curve.tempsC, ...fall.map((point) => point.tempC)],
    curve.gaps,
  );
}
