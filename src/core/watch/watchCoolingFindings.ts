import { type Finding, quoted } from "../findings/Finding.ts";
import type { LogFault, LogReading } from "../log/reading/LogReading.ts";
import type { Crossing } from "../ware/inversions.ts";
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

/** A thermocouple is silent when it misses as many usual steps, and so long [s]. */
const SILENT_STEPS = 3;
const SILENT_SECONDS = 120;

/** Rows at the end of the log without a reading from which on something is wrong. */
const ROWS_WITHOUT = 2;

/** What is wrong with the thermocouples and the log, rather than with the firing. */
export function sensorFindings(facts: WatchFacts): readonly Finding[] {
  return [...brokenFindings(facts), ...silentFindings(facts), ...rowFindings(facts)];
}

/** Open circuits and frozen readings that the reader of the log found. */
function brokenFindings(facts: WatchFacts): readonly Finding[] {
  const { reading, state } = facts;
  const faults = reading.faults.filter(({ kind }) => kind === "open" || kind === "stuck");
  const newest = newestSeconds(reading);
  return faults.map((fault) => {
    const isNow = newest - fault.toSeconds <= reading.intervalSeconds && isOut(fault, facts);
    const past = fault.kind === "open" && !isNow ? " It reads again." : "";
    return {
      topic: fault.kind === "open" ? "open thermocouple" : "frozen readings",
      severity: isNow ? "warning" : "caution",
      statement: `${sentence(fault)}${past}`,
      evidence: [{ name: "readings", value: fault.count, kind: "count" }],
      basis: "values that no thermocouple gives, or one value while all else moves",
      advice: isNow
        ? "Go and look: the controller may be blind. Check the thermocouple and its plug."
        : "Check the thermocouple and its plug.",
      zone: state.zones.length > 1 ? fault.channel : null,
      span: { fromSeconds: fault.fromSeconds, toSeconds: fault.toSeconds },
    };
  });
}

/** Whether a thermocouple is at fault for more than one reading by now. */
function isOut({ kind, channel, toSeconds }: LogFault, { reading, state }: WatchFacts): boolean {
  const zone = state.zones.find(({ name }) => name === channel);
  return (
    kind === "stuck" ||
    zone === undefined ||
    toSeconds - zone.atSeconds > 1.5 * reading.intervalSeconds
  );
}

/** Thermocouples that say nothing while the log goes on. */
function silentFindings({ reading, state }: WatchFacts): readonly Finding[] {
  const newest = newestSeconds(reading);
  const most = Math.max(SILENT_STEPS * reading.intervalSeconds, SILENT_SECONDS);
  return state.zones
    .filter(({ atSeconds }) => newest - atSeconds > most)
    .filter(
      ({ name }) =>
        !reading.faults.some(
          ({ kind, channel, toSeconds }) =>
            kind === "open" && channel === name && toSeconds >= newest - most,
        ),
    )
    .map(({ name, atSeconds, tempC }) => ({
      topic: "silent thermocouple",
      severity: "warning" as const,
      statement: `${quoted(name)} has given no reading for {silent}; its last was {last}.`,
      evidence: [
        { name: "silent", value: newest - atSeconds, kind: "duration" },
        { name: "last", value: tempC, kind: "temperature" },
      ],
      basis: "the other columns of the log go on",
      advice: "Go and look: check the thermocouple and its plug.",
      zone: null,
      span: { fromSeconds: atSeconds, toSeconds: newest },
    }));
}

/** Rows at the end of the log that gave no reading at all. */
function rowFindings({ reading, state, lines }: WatchFacts): readonly Finding[] {
  const { rejected } = reading.rows;
  let line = lines;
  let count = 0;
  for (let i = rejected.length - 1; i >= 0 && (rejected[i]?.line as number) >= line; i--) {
    line = (rejected[i]?.line as number) - 1;
    count++;
  }
  if (count < ROWS_WITHOUT) return [];
  const reason = quoted(rejected.at(-1)?.reason ?? "");
  return [
    {
      topic: "rows without a reading",
      severity: "warning",
      statement: `The last {rows} rows of the log gave no reading (${reason}); what is shown is older.`,
      evidence: [{ name: "rows", value: count, kind: "count" }],
      basis: "the end of the log",
      advice: "Go and look: an open thermocouple or a stopped logger may be the cause.",
      zone: null,
      span: { fromSeconds: state.nowSeconds, toSeconds: state.nowSeconds },
    },
  ];
}

/** Last moment at which any column of the log, or a fault in one, says something [s]. */
function newestSeconds({ channels, faults }: LogReading): number {
  const ends = channels.flatMap(({ curve, outputFraction }) => [
    ...(curve ? [curve.timesSeconds.at(-1)!] : []),
    ...(outputFraction ? [outputFraction.timesSeconds.at(-1) ?? 0] : []),
  ]);
  return Math.max(0, ...ends, ...faults.map(({ toSeconds }) => toSeconds));
}

function sentence({ what }: LogFault): string {
  const flat = quoted(what);
  return flat.charAt(0).toUpperCase() + flat.slice(1);
}
