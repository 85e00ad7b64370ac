import { sliced } from "../../curve/moved.ts";
import { peakOf } from "../../curve/peakOf.ts";
import type { Finding } from "../../findings/Finding.ts";
import { quoted } from "../../findings/findingText.ts";
import type { Crossing } from "../../ware/crossingsOf.ts";
import { wareStrain } from "../../ware/wareStrain.ts";
import { limitedCrossings, withStrain } from "../coolingLimits.ts";
import { pieceOf } from "../pieceOf.ts";
import { finding, type Judged } from "./Judged.ts";

/**
 * Cooling through the inversions, the fall by itself after the schedule included: judged by the stress
 * in the ware, said by its guide. Nothing is said of a band that has no guide.
 */
export function checkCooling(judged: Judged): readonly Finding[] {
  const crossings = limitedCrossings(judged.untilCool, {
    limitFor: judged.limitFor,
    directions: ["cooling"],
  });
  const strained = crossings.some(isOverGuide) ? strainedCrossings(judged, crossings) : crossings;
  return strained.flatMap((crossing) => {
    const { limitCPerHour, fastestCPerHour } = crossing;
    return limitCPerHour === null || fastestCPerHour === null
      ? []
      : [judgedCrossing(judged, crossing, { guide: limitCPerHour, fastest: -fastestCPerHour })];
  });
}

/** Only then the stress can be too much: it rises with the rate, and is half the strength at the guide. */
function isOverGuide({ limitCPerHour, fastestCPerHour }: Crossing): boolean {
  return limitCPerHour !== null && fastestCPerHour !== null && -fastestCPerHour > limitCPerHour;
}

function strainedCrossings(
  { untilCool, schedule }: Judged,
  crossings: readonly Crossing[],
): readonly Crossing[] {
  const { ware } = pieceOf(schedule.ware);
  const fall = sliced(untilCool, peakOf(untilCool).seconds, untilCool.timesSeconds.at(-1)!);
  const worst = fall === null ? [] : wareStrain(fall, ware).worst;
  return crossings.map((crossing) => {
    const ratio = worst.find(({ band }) => band === crossing.band)?.ratio;
    return withStrain(
      crossing,
      ratio === undefined ? null : { ratio, low: ratio, high: ratio },
      ware.body,
    );
  });
}

function judgedCrossing(
  judged: Judged,
  crossing: Crossing,
  { guide, fastest }: { readonly guide: number; readonly fastest: number },
): Finding {
  const severity = crossing.severity ?? "note";
  const start = crossing.startSeconds ?? judged.endSeconds;
  const end = crossing.endSeconds ?? judged.endSeconds;
  const byItself = start >= judged.endSeconds - 1 ? ", falling by itself after the schedule" : "";
  const mean = crossing.meanCPerHour === null ? "" : ", {mean} on average";
  const who = quoted(crossing.limitMeantFor ?? "");
  return finding({
    topic: `cooling through ${crossing.band.replace(" inversion", "")}`,
    severity,
    statement: `The kiln cools through the ${crossing.band} at up to {fastest}${mean}${byItself}: ${
      severity === "warning"
        ? "by our reckoning enough to break the ware"
        : severity === "caution"
          ? "hard on the ware"
          : "the ware bears it"
    }. The guide is {limit}, for ${who}.`,
    evidence: [
      { name: "fastest", value: fastest, kind: "rate" },
      ...(crossing.meanCPerHour === null
        ? []
        : ([{ name: "mean", value: Math.abs(crossing.meanCPerHour), kind: "rate" }] as const)),
      { name: "limit", value: guide, kind: "rate" },
      { name: "high", value: crossing.limitFromC ?? crossing.fromC, kind: "temperature" },
      { name: "low", value: crossing.limitToC ?? crossing.toC, kind: "temperature" },
      ...(crossing.strainRatio === null
        ? []
        : ([{ name: "stress", value: crossing.strainRatio, kind: "ratio" }] as const)),
    ],
    basis: crossing.limitBasis ?? "",
    advice: severity === "note" ? "" : "Programme {limit} or less from {high} to {low}.",
    span: end > start ? { fromSeconds: start, toSeconds: end } : null,
  });
}
