import type { Finding } from "../../findings/Finding.ts";
import { quoted } from "../../findings/findingText.ts";
import type { Crossing } from "../../ware/Crossing.ts";
import { limitSeverity } from "../../ware/limitSeverity.ts";
import { limitedCrossings } from "../coolingLimits.ts";
import { finding, type Judged } from "./Judged.ts";

/** Cooling through both inversions, the fall by itself after the schedule included. */
export function checkCooling(judged: Judged): readonly Finding[] {
  return limitedCrossings(judged.untilCool, {
    ware: judged.schedule.ware,
    limitFor: judged.limitFor,
    directions: ["cooling"],
  }).flatMap((crossing) =>
    crossing.fastestCPerHour === null || crossing.limitCPerHour === null
      ? []
      : [judgedCrossing(judged, crossing, crossing.limitCPerHour)],
  );
}

function judgedCrossing(judged: Judged, crossing: Crossing, limit: number): Finding {
  const fastest = Math.abs(crossing.fastestCPerHour as number);
  const severity = limitSeverity(fastest, limit);
  const start = crossing.startSeconds ?? judged.endSeconds;
  const end = crossing.endSeconds ?? judged.endSeconds;
  const byItself = start >= judged.endSeconds - 1 ? ", falling by itself after the schedule" : "";
  const mean = crossing.meanCPerHour === null ? "" : ", {mean} on average";
  return finding({
    topic: `cooling through ${crossing.band.replace(" inversion", "")}`,
    severity,
    statement: `The kiln cools through the ${crossing.band} at up to {fastest}${mean}${byItself}; that is ${
      severity === "note" ? "within" : "above"
    } the {limit} that can be argued for with ${quoted(crossing.limitMeantFor ?? "")}.`,
    evidence: [
      { name: "fastest", value: fastest, kind: "rate" },
      ...(crossing.meanCPerHour === null
        ? []
        : ([{ name: "mean", value: Math.abs(crossing.meanCPerHour), kind: "rate" }] as const)),
      { name: "limit", value: limit, kind: "rate" },
      { name: "high", value: crossing.fromC, kind: "temperature" },
      { name: "low", value: crossing.toC, kind: "temperature" },
    ],
    basis: crossing.limitBasis ?? "",
    advice: severity === "note" ? "" : "Programme {limit} or less from {high} to {low}.",
    span: end > start ? { fromSeconds: start, toSeconds: end } : null,
  });
}
