import type { ConeState, Heatwork } from "../../cones/cone.ts";
import type { Evidence, Finding } from "../../findings/Finding.ts";
import { finding, type Judged } from "./Judged.ts";

const BASIS =
  "cone model anchored to the published chart; holds and cooling count; a real kiln adds about half a cone either way";

/** The cone that the file wants against the cone that the Curve makes. */
export function checkCone(judged: Judged): readonly Finding[] {
  const { cone } = judged.schedule;
  const { heatwork } = judged;
  const common = { topic: "cone wanted", basis: BASIS };
  if (cone === null)
    return [
      finding({
        ...common,
        topic: "cone reached",
        severity: "note",
        statement: `The schedule names no cone; it reaches ${heatwork.position.label}.`,
        evidence: [{ name: "peak", value: judged.peakC, kind: "temperature" }],
      }),
    ];
  const state = heatwork.cones.find((candidate) => candidate.cone === cone);
  if (!state)
    return [
      finding({
        ...common,
        severity: "caution",
        statement: `There is no model of cone ${cone} in this series; the schedule reaches ${heatwork.position.label}.`,
        evidence: [{ name: "peak", value: judged.peakC, kind: "temperature" }],
        advice: "Judge it by witness cones.",
      }),
    ];
  return [finding({ ...common, ...verdict(state, heatwork) })];
}

function verdict(
  state: ConeState,
  heatwork: Heatwork,
): Pick<Finding, "severity" | "statement" | "evidence" | "advice"> {
  const { cone, marginK, marginSigmaK } = state;
  const evidence: readonly Evidence[] = [
    { name: "margin", value: Math.abs(marginK), kind: "difference" },
    { name: "uncertainty", value: marginSigmaK, kind: "difference" },
  ];
  const reaches = `the schedule reaches ${heatwork.position.label}`;
  const next = nextWholeCone(cone, heatwork.cones);
  if (marginK < -marginSigmaK)
    return {
      severity: "warning",
      statement: `Cone ${cone} is not reached, short by {margin}: ${reaches}.`,
      evidence,
      advice: "Raise the peak by {margin}, or hold longer.",
    };
  if (next !== null && next.marginK >= 0)
    return {
      severity: "warning",
      statement: `Cone ${cone} is overshot by a whole cone, {margin} above its end point: ${reaches}.`,
      evidence,
      advice: "Lower the peak by {margin}, or hold for less.",
    };
  if (marginK < 0)
    return {
      severity: "caution",
      statement: `Cone ${cone} is only just reached or just missed, short by {margin}, which the model cannot tell: ${reaches}.`,
      evidence,
      advice: "Raise the peak by {margin}, and trust the witness cones.",
    };
  return {
    severity: "note",
    statement: `Cone ${cone} is reached, {margin} past its end point: ${reaches}.`,
    evidence,
    advice: "",
  };
}

function nextWholeCone(cone: string, cones: readonly ConeState[]): ConeState | null {
  const at = cones.findIndex((state) => state.cone === cone);
  return cones.find((state, index) => index > at && !state.cone.includes(".")) ?? null;
}
