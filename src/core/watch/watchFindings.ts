import type { Curve } from "../curve/Curve.ts";
import type { Finding } from "../findings/Finding.ts";
import { runawayFindings } from "../firing/runawayFindings.ts";
import type { AssumedKiln } from "../kiln/AssumedKiln.ts";
import type { LogReading } from "../log/LogReading.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import type { Crossing } from "../ware/crossingsOf.ts";
import { aheadFindings, OVERSHOOT } from "./aheadFindings.ts";
import { climbFindings, STALLED } from "./climbFindings.ts";
import { coolingFindings } from "./coolingFindings.ts";
import type { PlanPlace } from "./planPlace.ts";
import { sensorFindings } from "./sensorFindings.ts";
import type { WatchState } from "./WatchState.ts";

/** All that the findings of a firing that is still going are made from. */
export interface WatchFacts {
  /** Without its findings. */
  readonly state: WatchState;
  readonly reading: LogReading;
  /** Of the hottest thermocouple. */
  readonly curve: Curve;
  /** Of the same, against the limit for the ware. */
  readonly crossings: readonly Crossing[];
  readonly place: PlanPlace | null;
  readonly plan: Schedule | null;
  /** As this log shows it, for how it falls by itself. */
  readonly kiln: AssumedKiln;
  /** Whole lines of the log so far. */
  readonly lines: number;
}

/** What is wrong with a firing at its last reading, or has gone wrong before. */
export function watchFindings(facts: WatchFacts): readonly Finding[] {
  const climb = climbFindings(facts);
  const isStalled = climb.some(({ topic }) => topic === STALLED);
  const ahead = aheadFindings(facts).filter(({ topic }) => !isStalled || topic !== OVERSHOOT);
  const runaway = runawayFindings(facts.reading, facts.plan);
  return [...runaway, ...sensorFindings(facts), ...coolingFindings(facts), ...climb, ...ahead];
}
