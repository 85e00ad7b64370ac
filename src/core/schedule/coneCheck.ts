import type { ConeState } from "../cones/cone.ts";
import { totalSigmaK } from "../cones/heatwork.ts";
import type { Evidence, Finding } from "../findings/Finding.ts";
import { basedOn } from "../sources/bibliography.ts";
import { AT_TOP_END_SECONDS, aimMarginK, topEndSeconds } from "./coneAim.ts";
import { finding, type Judged } from "./Judged.ts";

const BASIS =
  "cone model anchored to the published chart, holds and cooling counted, and what the thermocouple is known to be out by, or what kilns usually are";

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
  return [finding({ ...common, ...verdict(state, judged) })];
}

function verdict(
  state: ConeState,
  judged: Judged,
): Pick<Finding, "severity" | "statement" | "evidence" | "advice"> & Partial<Finding> {
  const { heatwork } = judged;
  const { cone, marginK, downAtSeconds } = state;
  const sigmaK = totalSigmaK(heatwork.offsetSigmaK, state.marginSigmaK);
  const reaches = `the schedule reaches ${heatwork.position.label}`;
  const topEnd = topEndSeconds(judged.schedule, judged.expansion);
  const fromTop = topEnd === null || downAtSeconds === null ? 0 : downAtSeconds - topEnd;
  const evidence: readonly Evidence[] = [
    { name: "margin", value: Math.abs(marginK), kind: "difference" },
    { name: "uncertainty", value: sigmaK, kind: "difference" },
  ];
  const next = nextWholeCone(cone, heatwork.cones);
  if (downAtSeconds === null || topEnd === null)
    return {
      severity: marginK < -sigmaK ? "warning" : "note",
      statement: `Cone ${cone} is not reached, short by {margin}: ${reaches}.`,
      evidence,
      advice: "Raise the peak by {margin}, or hold longer, and look at the cone before it cools.",
    };
  const timed: readonly Evidence[] = [
    ...evidence,
    { name: "from the end of the hold", value: Math.abs(fromTop), kind: "duration" },
  ];
  const span = { fromSeconds: downAtSeconds, toSeconds: downAtSeconds };
  if (next !== null && next.marginK >= 0 && marginK > sigmaK)
    return {
      severity: "warning",
      statement: `Cone ${cone} is overshot by a whole cone, {margin} above its end point: ${reaches}.`,
      evidence: timed,
      advice: "Lower the peak by {margin}, or hold for less.",
      span,
    };
  if (fromTop > AT_TOP_END_SECONDS)
    return {
      severity: "note",
      statement: `Cone ${cone} falls only {from the end of the hold} after the top hold ends, while the kiln is already cooling: ${reaches}. Whoever looks at the end of the hold still sees it bending.`,
      evidence: [...timed, shortAtTop(judged, cone)],
      advice: "Raise the peak by {short at the top}, or hold longer; --repair and --solve do it.",
      span,
    };
  return {
    severity: "note",
    statement: `Cone ${cone} falls ${fromTop < -AT_TOP_END_SECONDS ? "{from the end of the hold} before" : "at"} the end of the top hold: ${reaches}.`,
    evidence: timed,
    advice: "",
    span,
  };
}

/** What the peak lacks for the cone to fall by the end of the top hold, with the aim's margin. */
function shortAtTop({ schedule, heatwork, kiln }: Judged, cone: string): Evidence {
  const { offsetK } = heatwork;
  const marginK = aimMarginK(schedule, { cone, kiln, offsetK }) ?? 0;
  return { name: "short at the top", value: Math.max(1, -marginK), kind: "difference" };
}

function nextWholeCone(cone: string, cones: readonly ConeState[]): ConeState | null {
  const at = cones.findIndex((state) => state.cone === cone);
  return cones.find((state, index) => index > at && !state.cone.includes(".")) ?? null;
}

/** Published top holds are up to an hour; runs appear beyond it [s]. */
export const LONG_HOLD_SECONDS = 3600;

/** What adding up times may leave over [s]. */
const ROUNDING_SECONDS = 0.5;

/** The hold at the peak. */
export function checkPeakHold(judged: Judged): readonly Finding[] {
  const holds = judged.expansion.timeline.filter(
    (row) => row.kind === "hold" && row.toC >= judged.peakC - 5,
  );
  const seconds = holds.reduce((sum, row) => sum + row.endSeconds - row.startSeconds, 0);
  const first = holds[0];
  const last = holds.at(-1);
  if (!(first && last)) return [];
  const long = seconds > LONG_HOLD_SECONDS + ROUNDING_SECONDS;
  return [
    finding({
      topic: "hold at the peak",
      severity: long ? "caution" : "note",
      statement: long
        ? "The peak is held for {hold}; glazes run and cones go on bending."
        : "The peak is held for {hold}, inside what is published.",
      evidence: [{ name: "hold", value: seconds, kind: "duration" }],
      basis: basedOn("15 to 20 min is enough for gloss, runs appear beyond 1 h", "soak-length"),
      advice: long ? "Go a little hotter and hold for less." : "",
      span: { fromSeconds: first.startSeconds, toSeconds: last.endSeconds },
    }),
  ];
}
