import type { Evidence, Finding } from "../findings/Finding.ts";
import { quoted } from "../findings/findingText.ts";
import type { Crossing } from "../ware/Crossing.ts";
import { limitSeverity } from "../ware/limitSeverity.ts";
import { type FiringFacts, zoneNamed } from "./FiringFacts.ts";
import type { ZoneReview } from "./FiringReview.ts";

/** How fast each zone cooled through the inversions, against the limit for its ware. */
export function coolingFindings(facts: FiringFacts): readonly Finding[] {
  return facts.zones.flatMap((zone) =>
    zone.crossings
      .filter((crossing) => crossing.direction === "cooling")
      .map((crossing) => passageFinding(crossing, zone, zoneNamed(facts, zone))),
  );
}

function passageFinding(crossing: Crossing, zone: ZoneReview, zoneName: string | null): Finding {
  const { fastestCPerHour, limitCPerHour } = crossing;
  if (crossing.measured === "no" || fastestCPerHour === null)
    return unseen(crossing, zone, zoneName);
  if (limitCPerHour === null) return unjudged(crossing, fastestCPerHour, zoneName);
  return judged({ crossing, fastest: Math.abs(fastestCPerHour), limitCPerHour }, zoneName);
}

function judged(
  passage: {
    readonly crossing: Crossing;
    readonly fastest: number;
    readonly limitCPerHour: number;
  },
  zoneName: string | null,
): Finding {
  const { crossing, fastest, limitCPerHour } = passage;
  const ratio = fastest / limitCPerHour;
  const severity = limitSeverity(fastest, limitCPerHour);
  const verdict =
    severity === "note"
      ? `within the limit of {limit} for ${quoted(crossing.limitMeantFor ?? "")}`
      : severity === "caution"
        ? `faster than the limit of {limit} for ${quoted(crossing.limitMeantFor ?? "")}`
        : `{times over} times the limit of {limit} for ${quoted(crossing.limitMeantFor ?? "")}`;
  const mean = crossing.meanCPerHour === null ? "" : ", {mean} on average";
  const stress = stressOf(crossing);
  const stressed =
    stress.length === 0
      ? ""
      : " The computed stress reached {stress} of the strength of the ware, good to a factor of two either way (8 times in 10 between {stress low} and {stress high}, by what the body may be).";
  return {
    topic: topicOf(crossing),
    severity,
    statement: `It cooled through the ${crossing.band} at up to {fastest} for {window} or more${mean}: ${verdict}.${stressed}`,
    evidence: [
      { name: "fastest", value: fastest, kind: "rate" },
      { name: "window", value: (crossing.windowMinutes ?? 0) * 60, kind: "duration" },
      ...(crossing.meanCPerHour === null
        ? []
        : [{ name: "mean", value: Math.abs(crossing.meanCPerHour), kind: "rate" } as const]),
      { name: "limit", value: limitCPerHour, kind: "rate" },
      { name: "times over", value: ratio, kind: "cones" },
      ...stress,
      ...edges(crossing),
    ],
    basis: basisOf(crossing),
    advice:
      severity === "note"
        ? ""
        : "Look over every piece for one long crack through the wall, and next time cool from {from} to {to} at {limit} or slower.",
    zone: zoneName,
    span: spanOf(crossing),
  };
}

/** Computed stress over strength and its range as evidence; empty where it is not known. */
function stressOf({ strainRatio, strainRatioLow, strainRatioHigh }: Crossing): readonly Evidence[] {
  if (strainRatio === null || strainRatioLow === null || strainRatioHigh === null) return [];
  return [
    { name: "stress", value: strainRatio, kind: "ratio" },
    { name: "stress low", value: strainRatioLow, kind: "ratio" },
    { name: "stress high", value: strainRatioHigh, kind: "ratio" },
  ];
}

function unseen(crossing: Crossing, zone: ZoneReview, zoneName: string | null): Finding {
  const endedAbove = zone.lastReadingC > crossing.toC;
  return {
    topic: topicOf(crossing),
    severity: "note",
    statement: endedAbove
      ? `The readings end at {last reading}: how it cooled through the ${crossing.band} ({from} to {to}) was not measured.`
      : `How it cooled through the ${crossing.band} ({from} to {to}) was not measured.`,
    evidence: [
      { name: "last reading", value: zone.lastReadingC, kind: "temperature" },
      ...edges(crossing),
    ],
    basis: ["measured on the log", ...crossing.notes].join("; "),
    advice: "Let the log run until the kiln is opened.",
    zone: zoneName,
    span: null,
  };
}

function unjudged(crossing: Crossing, fastest: number, zoneName: string | null): Finding {
  return {
    topic: topicOf(crossing),
    severity: "note",
    statement: `It cooled through the ${crossing.band} at up to {fastest}; no limit is known for it.`,
    evidence: [{ name: "fastest", value: Math.abs(fastest), kind: "rate" }, ...edges(crossing)],
    basis: basisOf(crossing),
    advice: "",
    zone: zoneName,
    span: spanOf(crossing),
  };
}

function topicOf(crossing: Crossing): string {
  return `cooling through ${crossing.band.replace(/ inversion$/, "")}`;
}

function edges(crossing: Crossing) {
  return [
    { name: "from", value: crossing.fromC, kind: "temperature" },
    { name: "to", value: crossing.toC, kind: "temperature" },
  ] as const;
}

function basisOf(crossing: Crossing): string {
  const limit =
    crossing.limitBasis === null
      ? []
      : [
          `${crossing.strainRatio === null ? "limit not computed for this ware" : "limit computed for this ware"}: ${crossing.limitBasis}`,
        ];
  return ["rate measured on the log", ...crossing.notes, ...limit].join("; ");
}

function spanOf(crossing: Crossing): Finding["span"] {
  const { startSeconds, endSeconds } = crossing;
  return startSeconds === null || endSeconds === null
    ? null
    : { fromSeconds: startSeconds, toSeconds: endSeconds };
}
