import type { Heatwork } from "../cones/cone.ts";
import { type KnownOffset, kilnHeatworkOf } from "../cones/usualOffset.ts";
import type { AssumedKiln, LearnedKiln } from "../kiln/LearnedKiln.ts";
import {
  type PredictedFiring,
  type PredictedSegment,
  predictFiring,
} from "../kiln/predictFiring.ts";
import type { Schedule } from "./Schedule.ts";
import { HOTTEST_C } from "./segments.ts";

/** One segment as the user's own kiln goes through it. */
export interface OwnSegment extends PredictedSegment {
  /** Signed [°C/h], or as fast as the kiln goes. */
  readonly askedCPerHour: number | "free";
}

/** Where the kiln gets no further, and what it was on its way to. */
export interface OwnStall {
  /** Index of the segment, from 0. */
  readonly segment: number;
  readonly tempC: number;
  readonly toC: number;
  /** Climbing, not falling. */
  readonly rising: boolean;
  /** The highest temperature of the schedule still lay ahead. */
  readonly beforePeak: boolean;
}

/** A schedule as the user's own kiln would fire it, by simulation. */
export interface OwnKilnFiring {
  readonly firing: PredictedFiring;
  readonly segments: readonly OwnSegment[];
  readonly stall: OwnStall | null;
  /** Cones by the predicted curve, the thermocouple's offset added. */
  readonly heatwork: Heatwork;
  /** `fastest climb` means the least that the kiln can do. */
  readonly powerFrom: LearnedKiln["power"]["from"];
  /** Bricks and ware are simulated apart; else the climb above 1000 °C is counted at 85 %. */
  readonly bricksApart: boolean;
  /** Null when nobody said it [W]. */
  readonly powerWatt: number | null;
  readonly tariffPerKWh: number | null;
}

/** Predicts a schedule for a learned kiln, with what is known of its thermocouple. */
export function ownKilnFiring(
  learned: LearnedKiln,
  schedule: Schedule,
  known: KnownOffset,
): OwnKilnFiring {
  const firing = predictFiring(learned, { segments: schedule.segments, startC: schedule.startC });
  return {
    firing,
    segments: firing.segments.map((went) => ({
      ...went,
      askedCPerHour: asked(schedule, went.segment).rateCPerHour,
    })),
    stall: stallOf(firing, schedule),
    heatwork: kilnHeatworkOf(firing.curve, { ...known, series: schedule.series }),
    powerFrom: learned.power.from,
    bricksApart: learned.twoNode !== null,
    powerWatt: learned.powerWatt,
    tariffPerKWh: learned.tariffPerKWh,
  };
}

function stallOf({ stalled }: PredictedFiring, schedule: Schedule): OwnStall | null {
  if (stalled === null) return null;
  const { toC } = asked(schedule, stalled.segment);
  const hottest = Math.max(...schedule.segments.map((segment) => segment.toC));
  const peakAt = schedule.segments.findIndex((segment) => segment.toC === hottest);
  return {
    ...stalled,
    toC,
    rising: toC > stalled.tempC,
    beforePeak: stalled.segment <= peakAt && toC > stalled.tempC,
  };
}

function asked(schedule: Schedule, index: number): Schedule["segments"][number] {
  const segment = schedule.segments[index];
  if (segment === undefined) throw new RangeError(`ownKilnFiring: there is no segment ${index}`);
  return segment;
}

/** Slowest climb that the cone charts cover [°C/h]. */
const SLOWEST_C_PER_HOUR = 15;

const STEP_C = 5;

/** What a simulation may lie below its goal [K]. */
const HAIR_K = 0.02;

/**
 * Hottest that a kiln climbs to at a rate that the cone charts still cover, in steps of 5 °C; 1400 at
 * most. A learned kiln is simulated at full power from cold.
 */
export function kilnReachC(kiln: AssumedKiln): number {
  if (kiln.learned !== undefined) return simulatedReachC(kiln.learned);
  let reachC = 0;
  while (reachC < HOTTEST_C && kiln.fullHeatingCPerHour(reachC + STEP_C) >= SLOWEST_C_PER_HOUR)
    reachC += STEP_C;
  return reachC;
}

function simulatedReachC(learned: LearnedKiln): number {
  const { curve } = predictFiring(learned, {
    segments: [{ toC: HOTTEST_C, rateCPerHour: "free", holdSeconds: 0 }],
  });
  const { timesSeconds, tempsC } = curve;
  let reachC = tempsC[0]!;
  for (let i = 1; i < tempsC.length; i++) {
    const climbedC = tempsC[i]! - tempsC[i - 1]!;
    const hours = (timesSeconds[i]! - timesSeconds[i - 1]!) / 3600;
    if (climbedC / hours < SLOWEST_C_PER_HOUR) break;
    reachC = tempsC[i]!;
  }
  return Math.floor((reachC + HAIR_K) / STEP_C) * STEP_C;
}
