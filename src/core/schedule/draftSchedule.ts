import { type Caution, cautionsFor } from "../cautions/cautions.ts";
import type { Heatwork } from "../cones/cone.ts";
import { heatworkOf } from "../cones/heatwork.ts";
import { kilnHeatworkOf } from "../cones/usualOffset.ts";
import { type Curve, makeCurve, peakOf } from "../curve/Curve.ts";
import { type Finding, ordered } from "../findings/Finding.ts";
import { type AssumedKiln, REFERENCE_KILN } from "../kiln/LearnedKiln.ts";
import type { Crossing } from "../ware/inversions.ts";
import { type PieceStrain, pieceStrain } from "../ware/pieceStrain.ts";
import { checkCone, checkPeakHold } from "./coneCheck.ts";
import { checkCooling, checkCrackle, checkUnloading, UNLOAD_C } from "./coolingChecks.ts";
import {
  type LimitFor,
  limitedCrossings,
  limitsFor,
  passageOf,
  pieceOf,
  withStrain,
} from "./coolingLimits.ts";
import { energyKWh } from "./energy.ts";
import { expandSchedule, freeRamp, freeSpeed } from "./expandSchedule.ts";
import { checkCarbon, checkLastHundred, checkQuartzHeating, checkWater } from "./heatingChecks.ts";
import { hoursFindings } from "./hours.ts";
import { finding, type Judged } from "./Judged.ts";
import { checkRatings, ownReach } from "./kilnChecks.ts";
import { type OwnKilnFiring, ownKilnFiring } from "./ownKilnFiring.ts";
import type { Expansion, Schedule, TimelineRow } from "./Schedule.ts";

/** A drafted firing: the schedule laid out and judged. */
export interface Draft {
  readonly schedule: Schedule;
  readonly expansion: Expansion;
  /** Wall time of the start, `2026-12-01T18:00:00`, or null for elapsed times only. */
  readonly start: string | null;
  readonly heatwork: Heatwork;
  /** As the user's own kiln would fire it; null when none was learned from logs. */
  readonly own: OwnKilnFiring | null;
  /** Electricity of the whole [kWh]; null while the power of the kiln is not known, or where it stalls. */
  readonly energyKWh: number | null;
  /** Heating and cooling, each with the published limit that applies. */
  readonly crossings: readonly Crossing[];
  /** What the schedule does to its ware; empty when no body is named. */
  readonly strains: readonly PieceStrain[];
  readonly findings: readonly Finding[];
  readonly cautions: readonly Caution[];
}

/** What a draft is made from. */
interface DraftInput {
  readonly schedule: Schedule;
  /** Wall time of the start, as `parseStart` gives it, or null. */
  readonly start: string | null;
  /** Added to the planned temperatures before the cones are judged, from witness cones [K]; left out for the usual. */
  readonly offsetK?: number | null;
  /** One sigma of it [K]. */
  readonly offsetSigmaK?: number;
  /** The user's own kiln; without it the reference kiln stands in for `free`. */
  readonly kiln?: AssumedKiln;
  /** The guides for the ware; without them they are worked out. */
  readonly limitFor?: LimitFor;
  /** Leaves the stress in the ware out, where only the findings are wanted: a repair asks many times. */
  readonly findingsOnly?: boolean;
}

/** A schedule laid out in time and judged: the cone it makes, its way through the inversions, what to mind. */
export function draftSchedule(input: DraftInput): Draft {
  const { schedule, start } = input;
  const kiln = input.kiln === undefined ? {} : { kiln: input.kiln };
  const limitFor = input.limitFor ?? limitsFor(schedule.ware);
  const expansion = expandSchedule(schedule, kiln);
  const strained = input.findingsOnly ? null : strainedPiece(schedule.ware, expansion.curve);
  const heatwork = kilnHeatworkOf(expansion.curve, {
    series: schedule.series,
    offsetK: input.offsetK ?? null,
    ...(input.offsetSigmaK !== undefined && { offsetSigmaK: input.offsetSigmaK }),
  });
  const learned = input.kiln?.learned;
  const own = learned === undefined ? null : ownKilnFiring(learned, schedule, input);
  return {
    schedule,
    expansion,
    start,
    heatwork,
    own,
    energyKWh: input.kiln === undefined ? null : energyKWh({ schedule, kiln: input.kiln, own }),
    crossings: limitedCrossings(expansion.curve, { limitFor }).map((crossing) =>
      withStrain(
        crossing,
        strained === null ? null : passageOf(strained, crossing),
        pieceOf(schedule.ware).ware.body,
      ),
    ),
    strains: strained === null ? [] : [strained],
    findings: ordered([
      ...checkSchedule({ schedule, expansion, heatwork, limitFor, own, ...kiln }),
      ...hoursFindings(start, expansion, own),
    ]),
    cautions: cautionsFor({
      kiln: true,
      opening: true,
      crackle: schedule.ware.crackle,
      dampWare: schedule.ware.state === "damp",
      estimate: true,
    }),
  };
}

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
function checkSchedule(input: CheckInput): readonly Finding[] {
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
    endSeconds: expansion.curve.timesSeconds.at(-1)!,
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
  const endC = curve.tempsC.at(-1)!;
  const endSeconds = curve.timesSeconds.at(-1)!;
  if (endC <= UNLOAD_C) return curve;
  const fall = freeRamp({ fromC: endC, toC: UNLOAD_C, kiln });
  return makeCurve(
    [...curve.timesSeconds, ...fall.map((point) => endSeconds + point.seconds)],
    [...curve.tempsC, ...fall.map((point) => point.tempC)],
    curve.gaps,
  );
}

/** Further below the peak than this, cones no longer notice [K]. */
const NOTICED_K = 150;

/** What the fall by itself adds to the cone, when the schedule stops near its peak. */
function checkAfterwards(judged: Judged): readonly Finding[] {
  const { heatwork } = judged;
  const endC = judged.expansion.curve.tempsC.at(-1)!;
  if (endC < judged.peakC - NOTICED_K) return [];
  const withFall = heatworkOf(judged.untilCool, {
    series: heatwork.series,
    offsetK: heatwork.offsetK,
  });
  return [
    finding({
      topic: "heat after the end",
      severity: "note",
      statement: `The schedule stops at {end}, hot enough for cones to go on bending: with the fall by itself it reaches ${withFall.position.label}.`,
      evidence: [{ name: "end", value: endC, kind: "temperature" }],
      basis: `the same cone model, with the natural cooling of ${judged.kiln.basis}`,
      advice: "Add a last segment that cools, so that the fall is counted.",
      span: { fromSeconds: judged.endSeconds, toSeconds: judged.endSeconds },
    }),
  ];
}

/** How far over the kiln's speed a ramp may be before it is said. */
const SLACK = 1.05;

/** Programmed ramps that the kiln is not able to follow, up or down; simulated where it was learned. */
function checkReach(judged: Judged): readonly Finding[] {
  if (judged.own !== null) return ownReach(judged, judged.own);
  return judged.expansion.timeline.flatMap((row) => {
    if (row.kind !== "ramp" || row.assumedRate) return [];
    const limit = slowestOnTheWay(row, judged);
    const wanted = Math.abs(row.rateCPerHour);
    return wanted <= limit.speed * SLACK ? [] : [cannotFollow(row, limit, judged)];
  });
}

interface Limit {
  readonly speed: number;
  readonly atC: number;
}

function slowestOnTheWay(row: TimelineRow, judged: Judged): Limit {
  let slowest: Limit = { speed: Number.POSITIVE_INFINITY, atC: row.fromC };
  const steps = Math.max(1, Math.ceil(Math.abs(row.toC - row.fromC) / 20));
  for (let k = 0; k <= steps; k++) {
    const atC = row.fromC + ((row.toC - row.fromC) * k) / steps;
    const speed = freeSpeed(judged.kiln, atC, row.toC > row.fromC);
    if (speed < slowest.speed) slowest = { speed, atC };
  }
  return slowest;
}

function cannotFollow(row: TimelineRow, limit: Limit, judged: Judged): Finding {
  const rising = row.toC > row.fromC;
  const own = judged.kilnIsKnown;
  const subject = own ? "The kiln" : "A typical loaded kiln";
  return finding({
    topic: rising ? "reach while heating" : "reach while cooling",
    severity: own && rising ? "caution" : "note",
    statement: rising
      ? `${subject} may not keep up with {wanted} from {from} to {to}: at {worst} it manages {able}.`
      : `${subject} falls more slowly than {wanted} from {from} to {to}: at {worst} it falls at {able}, so the controller waits and the firing takes longer.`,
    evidence: [
      { name: "wanted", value: Math.abs(row.rateCPerHour), kind: "rate" },
      { name: "from", value: row.fromC, kind: "temperature" },
      { name: "to", value: row.toC, kind: "temperature" },
      { name: "worst", value: limit.atC, kind: "temperature" },
      { name: "able", value: limit.speed, kind: "rate" },
    ],
    basis: `speed of ${judged.kiln.basis}`,
    advice: rising ? "Look in your own logs for how fast the kiln climbs there." : "",
    span: { fromSeconds: row.startSeconds, toSeconds: row.endSeconds },
  });
}

/** Temperatures at which a drafted kiln may come to be opened, that its stress is told for [°C]. */
const MAY_OPEN_C = [200, 150, 100] as const;

/**
 * What a planned Curve does to the ware of a schedule, opening included.
 * A schedule has one piece and no name for it.
 */
function strainedPiece(ware: Schedule["ware"], curve: Curve): PieceStrain {
  const { ware: piece } = pieceOf(ware);
  return pieceStrain(curve, { name: "the ware", ware: piece, state: ware.state }, MAY_OPEN_C);
}
