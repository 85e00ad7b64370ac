import type { ConeState, Heatwork } from "../cones/cone.ts";
import { coneIndex } from "../cones/coneName.ts";
import type { Finding } from "../findings/Finding.ts";
import { PAST_PEAK_K } from "./phaseOf.ts";
import type { PlanStanding, WantedCone, WatchState } from "./WatchState.ts";
import type { WatchFacts } from "./watchFindings.ts";

/** Topic of the finding that the cone comes before the peak of the plan. */
export const OVERSHOOT = "overshoot ahead";

/** Later than this against its plan a firing is behind [s], and than this share of the time so far; our own estimate. */
const BEHIND_SECONDS = 900;
const BEHIND_SHARE = 0.03;

/** What is to come: a cone down too early or not at all, and a plan that is slipping. */
export function aheadFindings(facts: WatchFacts): readonly Finding[] {
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
