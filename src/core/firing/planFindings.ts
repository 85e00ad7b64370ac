import type { Finding } from "../findings/Finding.ts";
import { quoted } from "../findings/findingText.ts";
import { basedOn } from "../sources/basedOn.ts";
import { type FiringFacts, zoneNamed } from "./FiringFacts.ts";
import type { PlanComparison } from "./FiringReview.ts";
import { hottestZone } from "./hottestZone.ts";
import type { PowerLoss } from "./powerLoss.ts";

/** Peak off the planned one by more than this is worth a caution [K]. */
const PEAK_OFF_K = 10;

/** Area off by more than this is worth a caution: the conformity limit after the first hour. */
const AREA_OFF = 0.025;

/** How the firing went against its plan, and whether the kiln lost power on the way up. */
export function planFindings(facts: FiringFacts): readonly Finding[] {
  const { comparison } = facts;
  return [
    ...(facts.plan && !comparison ? [notComparable(facts.plan.title)] : []),
    ...(comparison ? againstPlan(comparison, facts) : []),
    ...facts.powerLosses.map((loss) => powerLost(loss, facts)),
  ];
}

function againstPlan(comparison: PlanComparison, facts: FiringFacts): readonly Finding[] {
  const zone = facts.zones.length > 1 ? comparison.zone : null;
  const isOff =
    Math.abs(comparison.peakDeviationC) > PEAK_OFF_K ||
    Math.abs(comparison.areaDeviation) > AREA_OFF;
  return [
    {
      topic: "against the schedule",
      severity: isOff ? "caution" : "note",
      statement: `The peak was {peak off} ${comparison.peakDeviationC < 0 ? "below" : "above"} the planned one and came {peak delay} ${comparison.peakDelaySeconds < 0 ? "early" : "late"}; at most it was {largest} ${comparison.largestDeviationC < 0 ? "below" : "above"}, at {largest at}, and the area under its curve was ${areaWords(comparison.areaDeviation)}.`,
      evidence: [
        { name: "peak off", value: Math.abs(comparison.peakDeviationC), kind: "difference" },
        { name: "peak delay", value: Math.abs(comparison.peakDelaySeconds), kind: "duration" },
        { name: "largest", value: Math.abs(comparison.largestDeviationC), kind: "difference" },
        { name: "largest at", value: comparison.largestDeviationAtSeconds, kind: "elapsed" },
        { name: "area", value: Math.abs(comparison.areaDeviation), kind: "percent" },
      ],
      basis: basedOn(
        "lined up where both pass the same low temperature on the way up, compared until the plan leaves the cooling to the kiln; area as the Fire Test Procedures Code judges furnace curves, where 2.5 % is allowed after the first hour",
        "imo-ftp-2010",
      ),
      advice: isOff
        ? "If the kiln fell behind, have a licensed electrician check elements, relays and mains under your local code, kiln isolated and cold."
        : "",
      zone,
      span: null,
    },
  ];
}

/** Area off by less than half of one in a hundred is no difference. */
function areaWords(deviation: number): string {
  if (Math.abs(deviation) < 0.005) return "the same within 1 %";
  return `{area} ${deviation < 0 ? "smaller" : "larger"}`;
}

function notComparable(title: string): Finding {
  return {
    topic: "against the schedule",
    severity: "note",
    statement: `The log and the schedule "${quoted(title)}" share no rise by which they could be lined up.`,
    evidence: [],
    basis: "the first temperature that both should pass on the way up",
    advice: "Check that this is the schedule that was fired.",
    zone: null,
    span: null,
  };
}

function powerLost(loss: PowerLoss, facts: FiringFacts): Finding {
  const gap = loss.hasGap ? " Part of it was not measured." : "";
  return {
    topic: "power loss",
    severity: "caution",
    statement: `On the way up, at {when}, it fell from {from} to {lowest} and took {away} to come back: the power may have failed, or the kiln was stopped or opened.${gap}`,
    evidence: [
      { name: "when", value: loss.fromSeconds, kind: "elapsed" },
      { name: "from", value: loss.fromC, kind: "temperature" },
      { name: "lowest", value: loss.lowestC, kind: "temperature" },
      { name: "away", value: loss.toSeconds - loss.fromSeconds, kind: "duration" },
    ],
    basis: `a fall of more than 15 °C (27 °F) for 10 min or more before the peak${facts.plan ? " that the schedule does not ask for" : "; there is no schedule to compare it with"}`,
    advice:
      "Look at the record of that hour; have a licensed electrician check mains and relays under your local code.",
    zone: zoneNamed(facts, hottestZone(facts.zones)),
    span: { fromSeconds: loss.fromSeconds, toSeconds: loss.toSeconds },
  };
}
