import { peakOf, sliced } from "../curve/Curve.ts";
import { type Finding, quoted } from "../findings/Finding.ts";
import { basedOn } from "../sources/bibliography.ts";
import type { Crossing } from "../ware/inversions.ts";
import { wareStrain } from "../ware/wareStrain.ts";
import { limitedCrossings, pieceOf, withStrain } from "./coolingLimits.ts";
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

/** Unload at or below [°C]; and what an open lid risks above [°C]. */
export const UNLOAD_C = 100;

/** When the ware may come out. */
export function checkUnloading(judged: Judged): readonly Finding[] {
  const { curve } = judged.expansion;
  const endC = curve.tempsC.at(-1)!;
  if (endC <= UNLOAD_C + 0.5) return [];
  const coolAt = judged.untilCool.timesSeconds.at(-1)!;
  return [
    finding({
      topic: "unloading",
      severity: "note",
      statement:
        "The schedule ends at {end}; by itself the kiln falls to {unload} in about {wait}, {total} after the start.",
      evidence: [
        { name: "end", value: endC, kind: "temperature" },
        { name: "unload", value: UNLOAD_C, kind: "temperature" },
        { name: "wait", value: coolAt - judged.endSeconds, kind: "duration" },
        { name: "total", value: coolAt, kind: "duration" },
      ],
      basis: `${basedOn("unload at 100 to 120 °C (210 to 250 °F)", "opening-practice")}; natural cooling of ${judged.kiln.basis}`,
      advice: "Leave the lid shut until {unload}.",
      span: { fromSeconds: judged.endSeconds, toSeconds: coolAt },
    }),
  ];
}

/** What slow cooling does and does not do for a crackle glaze. */
export function checkCrackle(judged: Judged): readonly Finding[] {
  if (!judged.schedule.ware.crackle) return [];
  return [
    finding({
      topic: "crackle",
      severity: "note",
      statement:
        "A crackle glaze usually begins to crack below about {below}, and goes on for days; slow cooling through the inversions guards the clay, it neither makes nor prevents crackle.",
      evidence: [{ name: "below", value: 450, kind: "temperature" }],
      basis:
        "our own estimate: a 0.4 mm coat, stiff near 600 °C, whose expansion is above the body's by 0.75 to 2 millionths per kelvin first cracks 150 to 400 °C below that",
      advice: "Write down when you hear pinging, and look again after a day and after a week.",
    }),
  ];
}
