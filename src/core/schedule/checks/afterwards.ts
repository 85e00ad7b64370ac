import { heatworkOf } from "../../cones/heatwork.ts";
import type { Finding } from "../../findings/Finding.ts";
import { finding, type Judged } from "./Judged.ts";

/** Further below the peak than this, cones no longer notice [K]. */
const NOTICED_K = 150;

/** What the fall by itself adds to the cone, when the schedule stops near its peak. */
export function checkAfterwards(judged: Judged): readonly Finding[] {
  const { heatwork } = judged;
  const endC = judged.expansion.curve.tempsC.at(-1) as number;
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
