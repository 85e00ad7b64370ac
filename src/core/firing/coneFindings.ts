import { CONE_TABLES, coneIndex } from "../cones/cone.ts";
import type { SolvedWitnessOffset } from "../cones/witnessOffset.ts";
import { type Finding, quoted, type Severity } from "../findings/Finding.ts";
import { type FiringFacts, hottestZone, type ZoneReview, zoneNamed } from "./FiringFacts.ts";

/** An offset so many sigmas from the usual one wants looking at. */
const FAR_SIGMAS = 2.5;

/** Cones above the one wanted that are worth a word. */
const TOO_FAR_CONES = 1;

const MODEL_BASIS =
  "heatwork model anchored to the published cone table; one sigma in it covers model, thermocouple and place in the kiln";

/** What cone was reached, whether it was the one wanted, and how far the answer can be trusted. */
export function coneFindings(facts: FiringFacts): readonly Finding[] {
  const zone = hottestZone(facts.zones);
  const wanted = facts.plan?.cone ?? facts.record?.cone ?? null;
  return [
    ...(wanted === null ? [reached(zone, facts)] : [wantedCone(wanted, zone, facts)]),
    ...extrapolated(zone, facts),
    ...(facts.witness ? [offsetApplied(facts.witness, zoneNamed(facts, zone))] : []),
  ];
}

function reached(zone: ZoneReview, facts: FiringFacts): Finding {
  return {
    topic: "cone reached",
    severity: "note",
    statement: `It reached ${zone.heatwork.position.label}, peaking at {peak}.`,
    evidence: peakEvidence(zone),
    basis: MODEL_BASIS,
    advice: "",
    zone: zoneNamed(facts, zone),
    span: null,
  };
}

function wantedCone(cone: string, zone: ZoneReview, facts: FiringFacts): Finding {
  const { position, cones } = zone.heatwork;
  const state = cones.find((each) => each.cone === cone);
  if (!state) return notModelled(cone, zone, facts);
  const sigma = zone.heatwork.sigmaCones ?? 0;
  const over = position.index === null ? null : position.index - coneIndex(cone);
  const [severity, words] = judgement({ isDown: state.marginK >= 0, over, sigma });
  return {
    topic: "cone reached",
    severity,
    statement: `It reached ${position.label}, peaking at {peak}; cone ${cone} was wanted: ${words}.`,
    evidence: [
      ...peakEvidence(zone),
      { name: "margin", value: Math.abs(state.marginK), kind: "difference" },
      ...(over === null ? [] : [{ name: "off by", value: Math.abs(over), kind: "cones" } as const]),
      { name: "one sigma", value: sigma, kind: "cones" },
    ],
    basis: MODEL_BASIS,
    advice:
      severity === "note"
        ? ""
        : state.marginK < 0
          ? "Look at the witness cones; if they agree, hold longer or peak higher by about {margin}."
          : "Look at the witness cones; if they agree, peak lower by about {margin} or shorten the hold.",
    zone: zoneNamed(facts, zone),
    span: null,
  };
}

function judgement(given: {
  readonly isDown: boolean;
  readonly over: number | null;
  readonly sigma: number;
}): readonly [Severity, string] {
  const { isDown, over, sigma } = given;
  if (isDown && over !== null && over > TOO_FAR_CONES)
    return ["caution", "{off by} cones more than that"];
  if (isDown) return ["note", "it is down"];
  if (over !== null && -over <= sigma)
    return ["note", "{margin} short of it, too close to tell within {one sigma} cones"];
  return ["warning", over === null ? "not reached" : "{off by} cones short"];
}

function notModelled(cone: string, zone: ZoneReview, facts: FiringFacts): Finding {
  return {
    ...reached(zone, facts),
    statement: `It reached ${zone.heatwork.position.label}, peaking at {peak}; cone ${cone} was wanted, which has no model in the ${zone.heatwork.series} series.`,
  };
}

function extrapolated(zone: ZoneReview, facts: FiringFacts): readonly Finding[] {
  const { extrapolations, lastHundredCPerHour: rate, series } = zone.heatwork;
  const base = { zone: zoneNamed(facts, zone), span: null } as const;
  const reasons: readonly Finding[] = extrapolations.map((reason) => ({
    ...base,
    topic: "cone reached, how far to trust it",
    severity: "caution",
    statement: `The cone is a guess beyond what was published: ${reason}.`,
    evidence: [],
    basis: MODEL_BASIS,
    advice: "Trust the witness cones in the kiln, not this number.",
  }));
  const printed = CONE_TABLES[series].ratesCPerHour.filter((each) => each !== null);
  const [slowest, fastest] = [Math.min(...printed), Math.max(...printed)];
  if (rate === null || (rate >= slowest && rate <= fastest)) return reasons;
  return [
    ...reasons,
    {
      ...base,
      topic: "rate to the peak",
      severity: "note",
      statement:
        "The last 100 °C (180 °F) below the peak went at {rate}, off the published cone table, which goes from {slowest} to {fastest}.",
      evidence: [
        { name: "rate", value: rate, kind: "rate" },
        { name: "slowest", value: slowest, kind: "rate" },
        { name: "fastest", value: fastest, kind: "rate" },
      ],
      basis:
        "columns of the published cone table; the cone above is computed for the rate as it was",
      advice: "",
    },
  ];
}

function offsetApplied(
  { offset, labelAsRead }: NonNullable<FiringFacts["witness"]>,
  zone: string | null,
): Finding {
  const { usual, offsetK, agree } = offset;
  const isFar = Math.abs(offsetK - usual.offsetK) > FAR_SIGMAS * usual.sigmaK;
  return {
    topic: "witness cones",
    severity: agree && !isFar ? "note" : "caution",
    statement: offsetWords(offset, labelAsRead),
    evidence: [
      { name: "offset", value: Math.abs(offsetK), kind: "difference" },
      { name: "give or take", value: offset.sigmaK, kind: "difference" },
      { name: "usual offset", value: usual.offsetK, kind: "difference" },
      ...bound("lowest offset", offset.lowK),
      ...bound("highest offset", offset.highK),
    ],
    basis: `the offset with which the cone model gives what the cones showed: ${offset.witnesses
      .map((witness) => `cone ${witness.cone} ${quoted(witness.said)}`)
      .join(", ")}`,
    advice: !agree
      ? "Check the cones' numbers and where each of them stood."
      : isFar
        ? "That is far more than thermocouples are usually out: check the cones' numbers, the type that the instrument is set to, and how deep the tip sits."
        : "",
    zone,
    span: null,
  };
}

function bound(name: string, value: number | null): Finding["evidence"] {
  return value === null ? [] : [{ name, value, kind: "difference" }];
}

function offsetWords(offset: SolvedWitnessOffset, labelAsRead: string): string {
  const { offsetK, agree, usual } = offset;
  const direction = offsetK > 0 ? "low" : "high";
  const applied = `${offsetK > 0 ? "added to" : "taken from"} the readings for the cone, and for nothing else. As read it was ${labelAsRead}.`;
  if (!agree)
    return `The witness cones contradict one another: ${leftOutWords(offset)} cannot be right if the others are. Without that the thermocouple read {offset} too ${direction}, which was ${applied}`;
  if (Math.abs(offsetK) < 0.5)
    return "The witness cones fit the thermocouple as it read; nothing was added for the cone.";
  if (Math.abs(offsetK - usual.offsetK) < 0.5)
    return `The witness cones fit a kiln that runs {offset} hotter for the cone than it reads, as kilns usually do, give or take {give or take}: that much was ${applied}`;
  return `By the witness cones the thermocouple read about {offset} too ${direction}, give or take {give or take}: that much was ${applied}`;
}

function leftOutWords({ witnesses }: SolvedWitnessOffset): string {
  return witnesses
    .flatMap(({ cone, said, leftOut }) => (leftOut ? [`cone ${cone} ${quoted(said)}`] : []))
    .join(" and ");
}

function peakEvidence(zone: ZoneReview): Finding["evidence"] {
  return [
    { name: "peak", value: zone.peakC, kind: "temperature" },
    { name: "time within 5 °C of it", value: zone.secondsWithinFiveOfPeak, kind: "duration" },
  ];
}
