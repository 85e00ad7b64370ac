import { type ConeState, coneIndex, type Heatwork } from "../cones/cone.ts";
import { totalSigmaK } from "../cones/heatwork.ts";
import { type Curve, temperatureAt } from "../curve/Curve.ts";
import type { Finding } from "../findings/Finding.ts";
import { kilnFiringOf } from "../firing/kilnFiring.ts";
import { runawayFindings } from "../firing/runawayFindings.ts";
import type { AssumedKiln } from "../kiln/LearnedKiln.ts";
import { outputMean } from "../kiln/naturalFall.ts";
import type { LogReading } from "../log/reading/LogReading.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import type { Crossing } from "../ware/inversions.ts";
import { HOLDING_C_PER_HOUR, PAST_PEAK_K, type PlanPlace, setPointOf } from "./planPlace.ts";
import { recentRate } from "./recentRate.ts";
import type { PlanStanding, WantedCone, WatchState } from "./WatchState.ts";
import { coolingFindings, sensorFindings } from "./watchCoolingFindings.ts";

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

/** Topic of the finding that a climb is stalled. */
const STALLED = "stalled climb";

/** A climb that has made nothing for so long is stalled [s]; our own estimate, like all below. */
const STALLED_SECONDS = 1200;
/** A slow planned ramp is slower than this and tells nothing [°C/h]. */
const TELLING_PLAN_C_PER_HOUR = 20;
/** Elements asked for as much as this are fully on. */
const FULLY_ON = 0.95;
/** So far below its set point a kiln is behind it [K]. */
const BEHIND_SET_POINT_K = 20;
/** A fall of this much before the cone is down needs a word [K]. */
const FALLEN_K = 15;
/** Below this a kiln that stands still has not begun [°C]. */
const BEGUN_C = 100;

const BASIS = "least squares over the last 20 min; the limits are our own estimates";

/** A kiln that should climb and does not, or lags behind its set point. */
function climbFindings(facts: WatchFacts): readonly Finding[] {
  const stalled = stalledFinding(facts);
  return stalled ? [stalled] : [...fallenFindings(facts), ...setPointFindings(facts)];
}

function stalledFinding({ state, reading, curve, place }: WatchFacts): Finding | null {
  const { tempC, peakC, nowSeconds, phase } = state;
  const line = lineOver(curve);
  if (line === null || phase === "climbing" || tempC < BEGUN_C || peakC - tempC > PAST_PEAK_K)
    return null;
  const evidence: Finding["evidence"] = [
    { name: "at", value: tempC, kind: "temperature" },
    { name: "for", value: STALLED_SECONDS, kind: "duration" },
  ];
  const isFlatOut = isFullyOn(reading, nowSeconds);
  const why = reasonToClimb({ reading, nowSeconds, tempC, place });
  if (why === null || line.rateCPerHour > HOLDING_C_PER_HOUR) return null;
  return {
    topic: STALLED,
    severity: "warning",
    statement: `It has not climbed for {for}, at {at}, ${why}.`,
    evidence,
    basis: BASIS,
    advice: isFlatOut
      ? "Go and look, and do not trust the reading: the thermocouple may have slipped out, and the kiln may be far hotter. If its colour says so, switch it off by hand. Mains, relays and elements are for a licensed electrician under your local code."
      : "Go and look: the lid, the breaker, the thermocouple. Mains, relays and elements are for a licensed electrician under your local code.",
    zone: null,
    span: { fromSeconds: nowSeconds - STALLED_SECONDS, toSeconds: nowSeconds },
  };
}

/** Why the kiln should be climbing, as a clause; null when nothing says that it should. */
function reasonToClimb(at: {
  readonly reading: LogReading;
  readonly nowSeconds: number;
  readonly tempC: number;
  readonly place: WatchFacts["place"];
}): string | null {
  const { reading, nowSeconds, tempC, place } = at;
  if (isFullyOn(reading, nowSeconds)) return "with the elements fully on";
  const wanted = setPointAt(reading, nowSeconds);
  if (wanted !== null && wanted.nowC - tempC > BEHIND_SET_POINT_K && wanted.nowC >= wanted.beforeC)
    return "while its set point stands higher";
  const isRamp = place?.row.kind === "ramp" && place.row.rateCPerHour > TELLING_PLAN_C_PER_HOUR;
  return isRamp && place.lateSeconds > STALLED_SECONDS / 2 ? "where the plan climbs" : null;
}

/** Whether the elements were asked for everything over the last minutes. */
function isFullyOn(reading: LogReading, nowSeconds: number): boolean {
  const output = kilnFiringOf(reading, null)?.output ?? null;
  const on = output && outputMean(output, nowSeconds - STALLED_SECONDS, nowSeconds);
  return on !== null && on >= FULLY_ON;
}

/** A fall before the cone is down that nothing asks for. */
function fallenFindings({ state, place, reading }: WatchFacts): readonly Finding[] {
  const { wanted, heatwork, peakC, tempC, phase, nowSeconds, peakAtSeconds } = state;
  if (phase !== "falling" || wanted === null || wanted.downAtSeconds !== null) return [];
  const isAsked = place !== null && place.row.toC < place.row.fromC;
  if (peakC - tempC < FALLEN_K) return [];
  const reached = heatwork.cones.find((each) => each.cone === wanted.cone);
  const shortK = -(reached?.marginK ?? 0);
  const sigmaK = totalSigmaK(heatwork.offsetSigmaK, reached?.marginSigmaK ?? 0);
  const point = setPointAt(reading, nowSeconds);
  const isLed = isAsked || (point !== null && point.nowC <= tempC + FALLEN_K);
  return [
    {
      topic: "falling before the cone is down",
      severity: shortK > sigmaK ? "warning" : "caution",
      statement: `It has fallen by {fallen} from its highest, {peak}, and cone ${wanted.cone} is not down.`,
      evidence: [
        { name: "fallen", value: peakC - tempC, kind: "difference" },
        { name: "peak", value: peakC, kind: "temperature" },
      ],
      basis:
        "cone kinetics on the readings so far; a warning when the cone is short by more than one sigma of cone and thermocouple",
      advice: isLed
        ? "See by the witness cones what was reached."
        : "Go and look: did the kiln switch off, was it stopped, or did the power fail?",
      zone: null,
      span: { fromSeconds: peakAtSeconds, toSeconds: nowSeconds },
    },
  ];
}

function setPointFindings({ reading, state }: WatchFacts): readonly Finding[] {
  const point = setPointAt(reading, state.nowSeconds);
  const behindK = point === null ? 0 : point.nowC - state.tempC;
  if (point === null || behindK < BEHIND_SET_POINT_K || point.nowC < point.beforeC) return [];
  return [
    {
      topic: "behind the set point",
      severity: "caution",
      statement: "It is {behind} below its set point of {set}.",
      evidence: [
        { name: "behind", value: behindK, kind: "difference" },
        { name: "set", value: point.nowC, kind: "temperature" },
      ],
      basis: "the set point in the log; the limit is our own estimate",
      advice: "The kiln cannot keep up: the cone comes later than programmed.",
      zone: null,
      span: null,
    },
  ];
}

/** Set point at a moment and 20 min before; null when the log has none. */
function setPointAt(
  reading: LogReading,
  seconds: number,
): { readonly nowC: number; readonly beforeC: number } | null {
  const curve = setPointOf(reading);
  const nowC = curve ? temperatureAt(curve, seconds) : null;
  const beforeC = curve ? temperatureAt(curve, seconds - STALLED_SECONDS) : null;
  return nowC === null || beforeC === null ? null : { nowC, beforeC };
}

function lineOver(curve: Curve) {
  return recentRate(curve, STALLED_SECONDS / 3);
}

/** Topic of the finding that the cone comes before the peak of the plan. */
const OVERSHOOT = "overshoot ahead";

/** Later than this against its plan a firing is behind [s], and than this share of the time so far; our own estimate. */
const BEHIND_SECONDS = 900;
const BEHIND_SHARE = 0.03;

/** What is to come: a cone down too early or not at all, and a plan that is slipping. */
function aheadFindings(facts: WatchFacts): readonly Finding[] {
  const { wanted, plan, phase, peakC, tempC } = facts.state;
  if (phase !== "climbing" && peakC - tempC > PAST_PEAK_K) return [];
  const late = plan === null ? [] : behindPlan(plan, facts);
  if (wanted === null || phase === null || phase === "falling") return late;
  return [...late, ...overshoot(wanted, facts), ...(plan === null ? [] : shortOf(wanted, plan))];
}

function behindPlan(plan: PlanStanding, { state }: WatchFacts): readonly Finding[] {
  const least = Math.max(BEHIND_SECONDS, BEHIND_SHARE * state.nowSeconds);
  if (state.phase === "falling" || plan.lateSeconds < least) return [];
  return [
    {
      topic: "behind the plan",
      severity: "caution",
      statement: "The firing is {late} behind its plan.",
      evidence: [{ name: "late", value: plan.lateSeconds, kind: "duration" }],
      basis:
        "when the plan, lined up at the beginning, passes this place; 15 min or 3 % of the time are allowed, our own estimate",
      advice:
        "Expect the peak later. If the kiln cannot keep up, have a licensed electrician check elements and mains under your local code once it is cold.",
      zone: null,
      span: null,
    },
  ];
}

/** The cone is down, or will be, while the kiln is still to go on. */
function overshoot(wanted: WantedCone, { state }: WatchFacts): readonly Finding[] {
  const { plan } = state;
  if (wanted.downAtSeconds !== null)
    return state.peakC - state.tempC > PAST_PEAK_K ? [] : [goingOnAfter(wanted, state)];
  const peakAt = plan?.peakAtSeconds ?? null;
  if (plan === null || peakAt === null || wanted.expected === null) return [];
  const early = peakAt - wanted.expected.atSeconds;
  if (early <= 0) return [];
  const latest = wanted.expected.latestSeconds;
  return [
    {
      topic: OVERSHOOT,
      severity: latest !== null && latest < peakAt ? "warning" : "caution",
      statement: `Cone ${wanted.cone} is expected down {early} before the plan reaches its highest, {peak}; the whole plan would leave ${plan.finalCone}.`,
      evidence: [
        { name: "early", value: early, kind: "duration" },
        { name: "peak", value: plan.peakC, kind: "temperature" },
      ],
      basis:
        "cone kinetics along the rest of the plan; a warning when even the late end of the span comes before",
      advice:
        "Watch the witness cones, through infrared-rated glasses, and be ready to end the climb by hand.",
      zone: null,
      span: null,
    },
  ];
}

function goingOnAfter(wanted: WantedCone, { heatwork, nowSeconds }: WatchState): Finding {
  const next = nextWhole(wanted.cone, heatwork);
  const since = nowSeconds - (wanted.downAtSeconds as number);
  return {
    topic: "still hot after the cone",
    severity: next !== null && next.downAtSeconds !== null ? "warning" : "caution",
    statement: `Cone ${wanted.cone} has been down for {since} by the readings, and the kiln is not falling.`,
    evidence: [{ name: "since", value: since, kind: "duration" }],
    basis: "cone kinetics on the readings; a warning when the next cone is down as well",
    advice:
      "Look at the witness cones, through infrared-rated glasses: switch the kiln off if they are down.",
    zone: null,
    span: { fromSeconds: wanted.downAtSeconds as number, toSeconds: nowSeconds },
  };
}

/** The next whole cone above; null when there is none. */
function nextWhole(cone: string, { cones }: Heatwork): ConeState | null {
  const above = cones.slice(cones.findIndex((each) => each.cone === cone) + 1);
  return above.find((each) => !each.cone.includes(".")) ?? null;
}

/** The plan will be over before the cone is down. */
function shortOf(wanted: WantedCone, plan: PlanStanding): readonly Finding[] {
  if (wanted.by !== "plan" || wanted.expected !== null || wanted.downAtSeconds !== null) return [];
  return [
    {
      topic: "cone not reached ahead",
      severity: isWithinSpread(wanted, plan) ? "note" : "caution",
      statement: `The plan, as it is going, leaves ${plan.finalCone}, good to ${(plan.finalSigmaCones ?? 0.5).toFixed(1)} cones: cone ${wanted.cone} would not be down.`,
      evidence: [],
      basis: "cone kinetics along the rest of the plan; a note when the spread reaches the cone",
      advice:
        "Watch the witness cones at the peak, through infrared-rated glasses, and hold longer if they are not down.",
      zone: null,
      span: null,
    },
  ];
}

function isWithinSpread(wanted: WantedCone, plan: PlanStanding): boolean {
  const { finalIndex, finalSigmaCones } = plan;
  if (finalIndex === null || finalSigmaCones === null) return false;
  return coneIndex(wanted.cone) - finalIndex < finalSigmaCones;
}
