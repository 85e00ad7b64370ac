import { bandPassage } from "../curve/bandPassage.ts";
import type { Band } from "../curve/edgeTimes.ts";
import { type Evidence, quoted } from "../findings/Finding.ts";
import { hottestZone } from "../firing/FiringFacts.ts";
import { REFERENCE_KILN } from "../kiln/LearnedKiln.ts";
import { peakSegment } from "../schedule/coneAim.ts";
import { expandSchedule } from "../schedule/expandSchedule.ts";
import { paced, rateDown, temperatureDown, temperatureUp } from "../schedule/paced.ts";
import type { Schedule, Segment } from "../schedule/Schedule.ts";
import { solveSchedule } from "../schedule/solveSchedule.ts";
import { untilCool, WINDOW_REACH_HOURS } from "../schedule/wishedPace.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../ware/inversions.ts";
import type { FactName, FiringCause } from "./FiringStudy.ts";
import type { NotedFiring } from "./firingFacts.ts";
import type { KnownKiln } from "./NextTest.ts";

/** A plan has to be faster by this than what it is slowed to; our own choice. */
const MATERIAL = 1.25;

/** The hottest at which unloading is advised [°C]. */
const UNLOAD_C = 100;

/** Heats that differ by less are solved to the same peak [K]. */
const SAME_PEAK_K = 3;

/** A schedule with one thing changed. */
interface ChangedSchedule {
  readonly schedule: Schedule;
  /** In the imperative; `{name}` stands for the evidence of that name. */
  readonly change: string;
  readonly evidence: readonly Evidence[];
}

/** What a part is changed to, and the kiln that is to do it. */
interface ChangedTo {
  readonly value: number;
  /** The firing that had it so. */
  readonly other: NotedFiring;
  /** Where it is known; else the reference kiln stands in. */
  readonly known?: KnownKiln | undefined;
}

/** How one part of a schedule is changed to what it was in another firing. */
export interface ChangeOf {
  /** The fact that the change goes by. */
  readonly fact: FactName;
  /** Which end of it the change goes to. */
  readonly towards: "low" | "high";
  /** Null when the schedule cannot be changed so. */
  readonly make: (plan: Schedule, to: ChangedTo) => ChangedSchedule | null;
}

/** For each part of a firing how to change that part alone. */
export const CHANGES: Readonly<Record<FiringCause, ChangeOf>> = {
  quartz: { fact: "quartzMean", towards: "low", make: slowerThrough(QUARTZ_BAND) },
  cristobalite: {
    fact: "cristobaliteMean",
    towards: "low",
    make: slowerThrough(CRISTOBALITE_BAND),
  },
  opening: { fact: "openedAt", towards: "low", make: openedCooler },
  coolingHold: { fact: "coolingHold", towards: "high", make: heldOnTheWayDown },
  heat: { fact: "cone", towards: "high", make: hotter },
};

function slowerThrough(band: Band): ChangeOf["make"] {
  return (plan, { value, other, known }) => {
    const { unit } = plan;
    const kiln = known?.kiln ?? REFERENCE_KILN;
    const mostCPerHour = rateDown(value, unit);
    // A firing may have gone otherwise than planned; the plan itself has to be the faster one.
    // On a kiln that falls slower by itself there is nothing to slow.
    const { meanCPerHour } = bandPassage(expandSchedule(plan, { kiln }).curve, band, "cooling");
    if (meanCPerHour === null || Math.abs(meanCPerHour) < MATERIAL * mostCPerHour) return null;
    const padK = mostCPerHour * WINDOW_REACH_HOURS;
    const name = band.name.replace(" inversion", "");
    const schedule = paced(
      untilCool(plan),
      {
        fromC: temperatureUp(band.highC + padK, unit),
        toC: temperatureDown(band.lowC - padK, unit),
        mostCPerHour,
        why: `${band.name}: as slow as in “${other.review.title}”, the one thing that changes`,
      },
      kiln,
    );
    return {
      schedule: titled(schedule, `slower through ${name}`),
      change: `Fire “${quoted(plan.title)}” with one change: {rate} through ${name}, as in “${quoted(other.review.title)}”; the heat stays as it is.`,
      evidence: [{ name: "rate", value: mostCPerHour, kind: "rate" }],
    };
  };
}

function openedCooler(plan: Schedule, { value, other }: ChangedTo): ChangedSchedule {
  const tempC = Math.min(value, UNLOAD_C);
  return {
    schedule: plan,
    change: `Fire “${quoted(plan.title)}” exactly as it is, with one change outside it: open at {opening} or cooler, as in “${quoted(other.review.title)}”.`,
    evidence: [{ name: "opening", value: tempC, kind: "temperature" }],
  };
}

function heldOnTheWayDown(plan: Schedule, { other }: ChangedTo): ChangedSchedule | null {
  const zone = hottestZone(other.review.zones);
  const hold = zone.segments
    .filter(({ kind, startSeconds }) => kind === "hold" && startSeconds > zone.peakAtSeconds)
    .toSorted((a, b) => b.endSeconds - b.startSeconds - (a.endSeconds - a.startSeconds))[0];
  if (hold === undefined) return null;
  const atC = temperatureUp((hold.fromC + hold.toC) / 2, plan.unit, 5);
  const holdSeconds = Math.round((hold.endSeconds - hold.startSeconds) / 300) * 300;
  const at = fallThrough(plan, atC);
  if (at === null || holdSeconds === 0) return null;
  const segment: Segment = {
    toC: atC,
    rateCPerHour: plan.segments[at]?.rateCPerHour ?? "free",
    holdSeconds,
    why: `held as in “${other.review.title}”, the one thing that changes`,
  };
  return {
    schedule: titled(
      { ...plan, segments: plan.segments.toSpliced(at, 0, segment) },
      "held on the way down",
    ),
    change: `Fire “${quoted(plan.title)}” with one change: held {hold} at {at} on the way down, as in “${quoted(other.review.title)}”.`,
    evidence: [
      { name: "hold", value: holdSeconds, kind: "duration" },
      { name: "at", value: atC, kind: "temperature" },
    ],
  };
}

/** The segment that falls through a temperature after the peak. */
function fallThrough(plan: Schedule, atC: number): number | null {
  const peakAt = peakSegment(plan)?.index ?? -1;
  const at = plan.segments.findIndex(
    ({ toC }, index) => index > peakAt && toC < atC && (plan.segments[index - 1]?.toC ?? 0) > atC,
  );
  return at < 0 ? null : at;
}

function hotter(plan: Schedule, { other, known }: ChangedTo): ChangedSchedule | null {
  const { cone } = hottestZone(other.review.zones).heatwork.position;
  if (cone === null) return null;
  const solved = solveSchedule({ schedule: plan, cone, solve: "peak", ...known });
  const before = Math.max(...plan.segments.map(({ toC }) => toC));
  if (!solved.ok) return null;
  const peakC = Math.max(...solved.value.segments.map(({ toC }) => toC));
  if (Math.abs(peakC - before) < SAME_PEAK_K) return null;
  return {
    schedule: titled({ ...solved.value, cone }, `to cone ${cone}`),
    change: `Fire “${quoted(plan.title)}” with one change: the peak at {peak}, for cone ${cone} as in “${quoted(other.review.title)}”; the cooling stays as it is.`,
    evidence: [{ name: "peak", value: peakC, kind: "temperature" }],
  };
}

function titled(schedule: Schedule, what: string): Schedule {
  return { ...schedule, title: `${schedule.title}, ${what}` };
}
