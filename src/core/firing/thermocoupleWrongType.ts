import type { ConeSeries } from "../cones/cone.ts";
import { kilnHeatworkOf } from "../cones/usualOffset.ts";
import { peakOf, temperatureAt } from "../curve/Curve.ts";
import type { Finding } from "../findings/Finding.ts";
import { basedOn } from "../sources/bibliography.ts";
import { type ThermocoupleType, trueC, trueCurve, type WrongType } from "../thermocouple/emf.ts";
import {
  type FiringFacts,
  hottestZone,
  type PlanComparison,
  type ZoneReview,
  zoneNamed,
} from "./FiringFacts.ts";
import { knownWire } from "./thermocoupleBehaviour.ts";

/** Terminals of an instrument by a kiln [°C]: an assumption, which is said. */
const COLD_JUNCTION_C = 25;
/** Types that kilns and their instruments have. */
const KILN_TYPES: readonly ThermocoupleType[] = ["K", "N", "S", "R", "J"];
/** Wires that an instrument set to K or N shows far too cold. */
const FAR_PAIRS: readonly (readonly [wire: ThermocoupleType, setTo: ThermocoupleType])[] = [
  ["S", "K"],
  ["R", "K"],
  ["S", "N"],
  ["R", "N"],
];
/** Where such an instrument peaks when the kiln peaks at 920 to 1350 °C [°C]. */
const LOW_PEAK_C = { least: 220, most: 355 };
/** Peaks that a firing may have [°C]; common practice. */
const FIRING_PEAK_C = { least: 900, most: 1350 };
/** A whole firing starts below this [°C], and afterwards falls to this share of its peak. */
const COLD_START_C = 60;
const FALLEN_SHARE = 0.6;
/** A whole firing climbs for this long at least [s]; own choice. */
const LEAST_CLIMB_SECONDS = 3 * 3600;
/** A log this far off its plan at the peak, and throughout, may be of the wrong type [ratio]; own choice. */
const OFF_PLAN = 0.05;
const OFF_THROUGHOUT = 0.04;
const THROUGHOUT_SHARE = 0.9;
/** Another type explains it when it lies this near the plan [ratio]; own choice. */
const NEAR_PLAN = 0.02;
/** Step between the moments compared with the plan [s], and the least planned temperature [°C]. */
const STEP_SECONDS = 300;
const FROM_C = 500;
const FEWEST_MOMENTS = 12;
/** How many pairs are named. */
const MOST_NAMED = 3;

/** A pair of types that would make sense of a log, with what the firing would then have been. */
interface Explanation {
  readonly wrong: WrongType;
  readonly peakC: number;
  readonly coneLabel: string;
}

/**
 * Whether a log looks as one of the wrong thermocouple type does: a whole firing that peaks at a
 * few hundred degrees, or one that is off its plan throughout by what two types differ. Always a
 * question with the alternatives worked out, never a verdict.
 */
export function wrongTypeFindings(facts: FiringFacts): readonly Finding[] {
  const zone = hottestZone(facts.zones);
  const low = lowPeak(zone, facts);
  return low.length > 0 ? low : offThroughout(facts);
}

function lowPeak(zone: ZoneReview, facts: FiringFacts): readonly Finding[] {
  const { curve, peakC } = zone;
  const isLow = peakC >= LOW_PEAK_C.least && peakC <= LOW_PEAK_C.most;
  const isWhole =
    curve.tempsC[0]! < COLD_START_C &&
    zone.lastReadingC < FALLEN_SHARE * peakC &&
    zone.peakAtSeconds - curve.timesSeconds[0]! >= LEAST_CLIMB_SECONDS;
  const planned = facts.comparison === null ? null : peakOf(facts.comparison.planned).tempC;
  const isPlanned = planned !== null && planned <= LOW_PEAK_C.most;
  if (!isLow || !isWhole || isPlanned) return [];
  const found = explained(zone, facts, FAR_PAIRS).filter(
    (each) => each.peakC >= FIRING_PEAK_C.least && each.peakC <= FIRING_PEAK_C.most,
  );
  if (found.length === 0) return [];
  return [
    question(zone, facts, {
      found,
      statement: "It peaks at {peak} after the climb and the fall of a whole firing.",
      more: [],
    }),
  ];
}

function offThroughout(facts: FiringFacts): readonly Finding[] {
  const { comparison } = facts;
  const zone = facts.zones.find(({ name }) => name === comparison?.zone);
  if (comparison === null || zone === undefined) return [];
  const plannedPeakC = peakOf(comparison.planned).tempC;
  const offPeak = zone.peakC / plannedPeakC - 1;
  const moments = pairedMoments(zone, comparison);
  const sameWay = moments.filter(
    ({ measuredC, plannedC }) => (measuredC / plannedC - 1) * Math.sign(offPeak) > OFF_THROUGHOUT,
  );
  if (
    Math.abs(offPeak) < OFF_PLAN ||
    moments.length < FEWEST_MOMENTS ||
    sameWay.length < THROUGHOUT_SHARE * moments.length
  )
    return [];
  const pairs = KILN_TYPES.flatMap((wire) =>
    KILN_TYPES.filter((setTo) => setTo !== wire).map((setTo) => [wire, setTo] as const),
  );
  const found = explained(zone, facts, pairs).filter(
    ({ wrong, peakC }) =>
      Math.abs(peakC / plannedPeakC - 1) < NEAR_PLAN && meanOff(moments, wrong) < NEAR_PLAN,
  );
  if (found.length === 0) return [];
  return [
    question(zone, facts, {
      found,
      statement: `It reads {off} ${offPeak < 0 ? "below" : "above"} its plan throughout, with a peak of {peak} where {planned} was planned.`,
      more: [
        { name: "off", value: Math.abs(offPeak), kind: "percent" },
        { name: "planned", value: plannedPeakC, kind: "temperature" },
      ],
    }),
  ];
}

interface PairedMoment {
  readonly measuredC: number;
  readonly plannedC: number;
}

/** The log beside its plan on the way up, where the plan is hot. */
function pairedMoments(zone: ZoneReview, comparison: PlanComparison): readonly PairedMoment[] {
  const { planned } = comparison;
  const moments: PairedMoment[] = [];
  const until = peakOf(planned).seconds;
  for (let at = planned.timesSeconds[0]!; at <= until; at += STEP_SECONDS) {
    const measuredC = temperatureAt(zone.curve, at);
    const plannedC = temperatureAt(planned, at);
    if (measuredC !== null && plannedC !== null && plannedC >= FROM_C)
      moments.push({ measuredC, plannedC });
  }
  return moments;
}

/** Mean distance from the plan if the types were mixed up [ratio]; infinite where a moment has none. */
function meanOff(moments: readonly PairedMoment[], wrong: WrongType): number {
  const offs = moments.map(({ measuredC, plannedC }) => {
    const real = trueC(measuredC, wrong);
    return real === null ? Number.POSITIVE_INFINITY : Math.abs(real / plannedC - 1);
  });
  return offs.reduce((sum, off) => sum + off, 0) / offs.length;
}

/** What the firing would have been for each pair of types that the known type allows. */
function explained(
  zone: ZoneReview,
  facts: FiringFacts,
  pairs: readonly (readonly [wire: ThermocoupleType, setTo: ThermocoupleType])[],
): readonly Explanation[] {
  const known = knownWire(facts.record, facts.reading)?.type ?? null;
  const { series } = zone.heatwork;
  return pairs
    .filter((pair) => known === null || pair.includes(known))
    .flatMap(([wire, setTo]) =>
      explanation(zone, series, { wire, setTo, coldJunctionC: COLD_JUNCTION_C }),
    );
}

function explanation(
  zone: ZoneReview,
  series: ConeSeries,
  wrong: WrongType,
): readonly Explanation[] {
  const peakC = trueC(zone.peakC, wrong);
  if (peakC === null || peakC > FIRING_PEAK_C.most) return [];
  const curve = trueCurve(zone.curve, wrong);
  if (curve === null) return [];
  return [{ wrong, peakC, coneLabel: kilnHeatworkOf(curve, { series }).position.label }];
}

function question(
  zone: ZoneReview,
  facts: FiringFacts,
  said: {
    readonly found: readonly Explanation[];
    readonly statement: string;
    readonly more: Finding["evidence"];
  },
): Finding {
  const named = said.found.slice(0, MOST_NAMED);
  const ways = named
    .map(
      ({ wrong, coneLabel }) =>
        `type ${wrong.wire} wire at an instrument set to ${wrong.setTo} would mean a peak of {${nameOf(wrong)}}, ${coneLabel}`,
    )
    .join("; ");
  return {
    topic: "wrong thermocouple type?",
    severity: "caution",
    statement: `${said.statement} Is the instrument set to the type of its thermocouple? ${ways.charAt(0).toUpperCase()}${ways.slice(1)}; this takes the terminals to be at {terminals}.`,
    evidence: [
      { name: "peak", value: zone.peakC, kind: "temperature" },
      ...said.more,
      ...named.map(
        ({ wrong, peakC }) => ({ name: nameOf(wrong), value: peakC, kind: "temperature" }) as const,
      ),
      { name: "terminals", value: COLD_JUNCTION_C, kind: "temperature" },
    ],
    basis: basedOn(
      "each reading turned into the emf of the type that is set and read as the other; a possibility, not a finding about this kiln",
      "nist-monograph-175",
    ),
    advice:
      "Compare the letter on the plug or the lead with the setting of the instrument; a witness cone settles it.",
    zone: zoneNamed(facts, zone),
    span: null,
  };
}

function nameOf({ wire, setTo }: WrongType): string {
  return `${wire} read as ${setTo}`;
}
