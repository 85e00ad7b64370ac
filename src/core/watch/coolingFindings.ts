import type { Finding } from "../findings/Finding.ts";
import { quoted } from "../findings/findingText.ts";
import type { Crossing } from "../ware/crossingsOf.ts";
import { rateSeverity } from "../ware/strainRisk.ts";
import type { RecentRate } from "./WatchState.ts";
import type { WatchFacts } from "./watchFindings.ts";

/** An inversion that comes within this time is spoken of [s]. */
const SOON_SECONDS = 30 * 60;

/** Before it has been inside for so long, there is no sustained rate before now [s]. */
const SUSTAINED_SECONDS = 900;

const GUIDANCE = "good to a factor of two, never checked on cracked pots";

/** Opened above this, a kiln is opened hot [°C]. */
const HOT_C = 110;

/** A kiln that falls as an opened one does, and how the ware goes through the inversions. */
export function coolingFindings(facts: WatchFacts): readonly Finding[] {
  return [...openedFindings(facts), ...crossingFindings(facts)];
}

function openedFindings({ state }: WatchFacts): readonly Finding[] {
  const openedAt = state.cooling?.openedAtSeconds ?? null;
  if (openedAt === null || state.phase !== "falling" || state.tempC < HOT_C) return [];
  return [
    {
      topic: "opened hot",
      severity: "caution",
      statement: "It falls faster than it did, as a kiln does whose lid or vent was opened.",
      evidence: [],
      basis: "a fall that grows by a fifth and more while the kiln gets colder",
      advice:
        "If the lid or a vent stands open and can be shut without reaching over the heat, stand aside and shut it, with gloves and eye protection; never reach in. If it has been open for long, leave it: the ware has had its shock. The draught cools it far faster than the kiln does.",
      zone: null,
      span: { fromSeconds: openedAt, toSeconds: state.nowSeconds },
    },
  ];
}

/** Cooling through the inversions: faster than its limit now, soon, or on the way behind it. */
function crossingFindings(facts: WatchFacts): readonly Finding[] {
  return facts.crossings.flatMap((crossing) => {
    const { direction, limitCPerHour } = crossing;
    if (direction === "heating" || limitCPerHour === null) return [];
    return passageFindings({ crossing, limitCPerHour }, facts);
  });
}

function passageFindings(passage: Passage, facts: WatchFacts): readonly Finding[] {
  const { phase, rate, tempC } = facts.state;
  const { fromC, toC } = passage.crossing;
  if (phase !== "falling" || rate === null || tempC < toC) return goneThrough(passage);
  return tempC <= fromC ? [goingThrough(passage, rate, facts)] : aheadOf(passage, rate, facts);
}

interface Passage {
  readonly crossing: Crossing;
  readonly limitCPerHour: number;
}

function goingThrough(passage: Passage, rate: RecentRate, facts: WatchFacts): Finding {
  const { crossing, limitCPerHour } = passage;
  const nowFast = -rate.rateCPerHour;
  const inside = facts.state.nowSeconds - (crossing.startSeconds ?? facts.state.nowSeconds);
  const soFar = inside < SUSTAINED_SECONDS ? 0 : Math.abs(crossing.fastestCPerHour ?? 0);
  const fastest = Math.max(nowFast, soFar);
  const severity = rateSeverity(fastest, limitCPerHour);
  const isFastNow = rateSeverity(nowFast, limitCPerHour) !== "note";
  const before = soFar > 1.05 * nowFast ? ", {fastest} before" : "";
  return {
    topic: topicOf(crossing),
    severity,
    statement: `It is going through the ${crossing.band} at {now}${before}: ${verdict(severity)} of {limit} for ${quoted(crossing.limitMeantFor ?? "")}.`,
    evidence: [
      { name: "now", value: nowFast, kind: "rate" },
      { name: "fastest", value: fastest, kind: "rate" },
      ...limits(passage),
    ],
    basis: basisOf(crossing),
    advice: isFastNow ? "Keep the lid shut and slow it to {limit} or less down to {to}." : "",
    zone: null,
    span: {
      fromSeconds: crossing.startSeconds ?? facts.state.nowSeconds,
      toSeconds: facts.state.nowSeconds,
    },
  };
}

function aheadOf(passage: Passage, rate: RecentRate, facts: WatchFacts): readonly Finding[] {
  const { crossing, limitCPerHour } = passage;
  const nowFast = -rate.rateCPerHour;
  const inSeconds = (3600 * (facts.state.tempC - crossing.fromC)) / nowFast;
  const thenFast = rateAtEntry(crossing, nowFast, facts);
  if (inSeconds > SOON_SECONDS || rateSeverity(thenFast, limitCPerHour) === "note") return [];
  return [
    {
      topic: topicOf(crossing),
      severity: "caution",
      statement: `The ${crossing.band} begins in {in}, at {from}. It is falling at {now}, and by itself would still at {then} there; the guide is {limit} for ${quoted(crossing.limitMeantFor ?? "")}.`,
      evidence: [
        { name: "in", value: inSeconds, kind: "duration" },
        { name: "now", value: nowFast, kind: "rate" },
        { name: "then", value: thenFast, kind: "rate" },
        ...limits(passage),
      ],
      basis: basisOf(crossing),
      advice: "Slow it to {limit} or less before {from}.",
      zone: null,
      span: null,
    },
  ];
}

/** How fast it will enter a band: as its plan programmes it, or slowing down as kilns do. */
function rateAtEntry({ fromC }: Crossing, nowFast: number, facts: WatchFacts): number {
  const { place, plan, kiln, state } = facts;
  const segments = place === null ? [] : (plan?.segments.slice(place.row.segment) ?? []);
  const programmed = segments.find(({ toC }) => toC < fromC)?.rateCPerHour;
  if (programmed !== undefined && programmed !== "free") return Math.min(nowFast, -programmed);
  const slowing = kiln.naturalCoolingCPerHour(fromC) / kiln.naturalCoolingCPerHour(state.tempC);
  return nowFast * Math.min(1, slowing);
}

/** What is behind the kiln stands only where it went too fast. */
function goneThrough(passage: Passage): readonly Finding[] {
  const { crossing, limitCPerHour } = passage;
  const { fastestCPerHour, startSeconds, endSeconds } = crossing;
  if (fastestCPerHour === null || crossing.measured === "no") return [];
  const fastest = Math.abs(fastestCPerHour);
  const severity = rateSeverity(fastest, limitCPerHour);
  if (severity === "note") return [];
  return [
    {
      topic: topicOf(crossing),
      severity,
      statement: `It went through the ${crossing.band} at up to {fastest}: ${verdict(severity)} of {limit} for ${quoted(crossing.limitMeantFor ?? "")}.`,
      evidence: [{ name: "fastest", value: fastest, kind: "rate" }, ...limits(passage)],
      basis: basisOf(crossing),
      advice: "Look over every piece for one long crack when the kiln is cold.",
      zone: null,
      span:
        startSeconds === null || endSeconds === null
          ? null
          : { fromSeconds: startSeconds, toSeconds: endSeconds },
    },
  ];
}

function verdict(severity: Finding["severity"]): string {
  if (severity === "note") return "borne, beside the guide";
  return severity === "caution" ? "well over the guide" : "more than twice the guide";
}

function limits({ crossing, limitCPerHour }: Passage): Finding["evidence"] {
  return [
    { name: "limit", value: limitCPerHour, kind: "rate" },
    { name: "from", value: crossing.fromC, kind: "temperature" },
    { name: "to", value: crossing.toC, kind: "temperature" },
  ];
}

function topicOf({ band }: Crossing): string {
  return `cooling through ${band.replace(/ inversion$/, "")}`;
}

function basisOf({ limitBasis }: Crossing): string {
  return [
    `rate of the last minutes; ${GUIDANCE}`,
    ...(limitBasis === null ? [] : [limitBasis]),
  ].join("; ");
}
