import { type Evidence, type Finding, quoted, type Severity } from "../findings/Finding.ts";
import { CRISTOBALITE_BAND, type Crossing } from "../ware/inversions.ts";
import { type FiringFacts, type ZoneReview, zoneNamed } from "./FiringFacts.ts";

/** How each zone cooled through the inversions: judged by the stress in the ware, said by its guide. */
export function coolingFindings(facts: FiringFacts): readonly Finding[] {
  return facts.zones.flatMap((zone) =>
    zone.crossings
      .filter((crossing) => crossing.direction === "cooling")
      .flatMap((crossing) => passageFindings(crossing, zone, zoneNamed(facts, zone))),
  );
}

function passageFindings(
  crossing: Crossing,
  zone: ZoneReview,
  zoneName: string | null,
): readonly Finding[] {
  const { fastestCPerHour } = crossing;
  const isSeen = crossing.measured !== "no" && fastestCPerHour !== null;
  const common = {
    topic: topicOf(crossing),
    severity: crossing.severity ?? "note",
    zone: zoneName,
  } as const;
  if (!isSeen) return isPlain(crossing) ? [] : [{ ...common, ...unseen(crossing, zone) }];
  return [
    {
      ...common,
      ...(crossing.limitCPerHour === null
        ? plain(crossing)
        : crossing.severity === null
          ? unjudged(crossing)
          : judged(crossing, crossing.severity)),
      span: spanOf(crossing),
    },
  ];
}

/** Below the quartz inversion without cristobalite: nothing is judged there. */
function isPlain({ band, isCristobalitic }: Crossing): boolean {
  return band === CRISTOBALITE_BAND.name && !isCristobalitic;
}

type Said = Pick<Finding, "statement" | "evidence" | "basis" | "advice">;

function judged(crossing: Crossing, severity: Severity): Said {
  const { limitCPerHour, strainRatio, limitMeantFor } = crossing;
  const fastest = Math.abs(crossing.fastestCPerHour as number);
  const limit = limitCPerHour as number;
  const who = quoted(limitMeantFor ?? "");
  const range = "(anywhere from {stress low} to {stress high}, depending on the clay)";
  const verdict = {
    note: fastest > limit ? "it bears this as well" : "",
    caution: `this was hard on it: by our reckoning {stress} of its strength ${range}`,
    warning: `this was by our reckoning enough to break it: {stress} of its strength ${range}`,
  }[severity];
  return {
    statement: `${went(crossing)}. The guide for ${who} is {limit}${verdict === "" ? "" : `; ${verdict}`}.`,
    evidence: [
      ...ratesOf(crossing),
      { name: "limit", value: limit, kind: "rate" },
      { name: "times over", value: fastest / limit, kind: "cones" },
      ...stressOf(crossing),
      ...edges(crossing),
    ],
    basis: `rate measured on the log${strainRatio === null ? "" : ", stress computed from it"}${notesOf(crossing)}`,
    advice:
      severity === "note"
        ? ""
        : "Tap every piece: a dull ring means that it is cracked, often with one long line through the wall. Next time {limit} or slower from {guide from} to {guide to}.",
  };
}

/** Measured, but not the ware's, or only in part: there is a guide, and no verdict. */
function unjudged(crossing: Crossing): Said {
  const { openedC } = crossing;
  return {
    statement:
      openedC === null
        ? `${went(crossing)}, as far as it was seen. The guide for ${quoted(crossing.limitMeantFor ?? "")} is {limit}.`
        : `From {opened} on the kiln was open: what was measured of the ${crossing.band} after it is the draught, not the ware.`,
    evidence: [
      ...ratesOf(crossing),
      { name: "limit", value: crossing.limitCPerHour as number, kind: "rate" },
      ...(openedC === null
        ? []
        : [{ name: "opened", value: openedC, kind: "temperature" } as const]),
      ...edges(crossing),
    ],
    basis: `rate measured on the log${notesOf(crossing)}`,
    advice: "",
  };
}

/** Plain shrinkage: the rate is told, and nothing is made of it. */
function plain(crossing: Crossing): Said {
  const { openedC } = crossing;
  return {
    statement:
      openedC === null
        ? "From {from} to {to} it fell at up to {fastest}; without cristobalite there is little but plain shrinkage there."
        : "From {from} to {to} it fell at up to {fastest}, the kiln being open from {opened} on.",
    evidence: [
      ...ratesOf(crossing),
      ...(openedC === null
        ? []
        : [{ name: "opened", value: openedC, kind: "temperature" } as const]),
      ...stressOf(crossing),
      ...edges(crossing),
    ],
    basis: `rate measured on the log${notesOf(crossing)}; no rate is published for pots there, and the computed stress is too strict to judge by`,
    advice: "",
  };
}

function unseen(crossing: Crossing, zone: ZoneReview): Said & Pick<Finding, "span"> {
  const endedAbove = zone.lastReadingC > crossing.toC;
  return {
    statement: endedAbove
      ? `The readings end at {last reading}: how it cooled through the ${crossing.band} ({from} to {to}) was not measured.`
      : `How it cooled through the ${crossing.band} ({from} to {to}) was not measured.`,
    evidence: [
      { name: "last reading", value: zone.lastReadingC, kind: "temperature" },
      ...edges(crossing),
    ],
    basis: `measured on the log${notesOf(crossing)}`,
    advice: "Let the log run until the kiln is opened.",
    span: null,
  };
}

function went(crossing: Crossing): string {
  const mean = crossing.meanCPerHour === null ? "" : ", {mean} on average";
  return `It cooled through the ${crossing.band} at up to {fastest}${mean}`;
}

function ratesOf(crossing: Crossing): readonly Evidence[] {
  const { fastestCPerHour, meanCPerHour } = crossing;
  return [
    { name: "fastest", value: Math.abs(fastestCPerHour as number), kind: "rate" },
    { name: "window", value: (crossing.windowMinutes ?? 0) * 60, kind: "duration" },
    ...(meanCPerHour === null
      ? []
      : [{ name: "mean", value: Math.abs(meanCPerHour), kind: "rate" } as const]),
  ];
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

function edges(crossing: Crossing): readonly Evidence[] {
  const { limitFromC, limitToC } = crossing;
  return [
    { name: "from", value: crossing.fromC, kind: "temperature" },
    { name: "to", value: crossing.toC, kind: "temperature" },
    ...(limitFromC === null || limitToC === null
      ? []
      : ([
          { name: "guide from", value: limitFromC, kind: "temperature" },
          { name: "guide to", value: limitToC, kind: "temperature" },
        ] as const)),
  ];
}

/** What a cooling finding is about; JSON keeps these. */
function topicOf(crossing: Crossing): string {
  return isPlain(crossing)
    ? "cooling to the end"
    : `cooling through ${crossing.band.replace(/ inversion$/, "")}`;
}

function notesOf({ notes }: Crossing): string {
  return notes.map((note) => `; ${note}`).join("");
}

function spanOf(crossing: Crossing): Finding["span"] {
  const { startSeconds, endSeconds } = crossing;
  return startSeconds === null || endSeconds === null
    ? null
    : { fromSeconds: startSeconds, toSeconds: endSeconds };
}
