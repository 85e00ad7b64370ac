import { temperatureAt } from "../curve/Curve.ts";
import { type Finding, quoted } from "../findings/Finding.ts";
import { scatterK } from "../kiln/naturalFall.ts";
import { medianInPlace } from "../math/statistics.ts";
import { ratingFindings } from "../schedule/kilnChecks.ts";
import { basedOn, type SourceId } from "../sources/bibliography.ts";
import { newWireLimit } from "../thermocouple/wireLimits.ts";
import { type FiringFacts, hottestZone, type ZoneReview, zoneNamed } from "./FiringFacts.ts";
import { behaviourFindings, type KnownWire, knownWire } from "./thermocoupleBehaviour.ts";
import { wrongTypeFindings } from "./thermocoupleWrongType.ts";

/** What log and record say of the thermocouples themselves: type, limits, leads, scatter, sheath. */
export function thermocoupleFindings(facts: FiringFacts): readonly Finding[] {
  return [
    ...wrongTypeFindings(facts),
    ...limitFindings(facts),
    ...ratedFindings(facts),
    ...behaviourFindings(facts),
    ...signalFindings(facts),
    ...partingFindings(facts),
  ];
}

/** A top above what the record, the plan or an option say that kiln and thermocouple are made for. */
function ratedFindings(facts: FiringFacts): readonly Finding[] {
  const { record, reading, plan } = facts;
  const zone = hottestZone(facts.zones);
  return ratingFindings({
    peakC: zone.peakC,
    type: record?.thermocouple?.type ?? reading.thermocouple ?? plan?.thermocouple?.type ?? null,
    wireMm: record?.thermocouple?.wireMm ?? plan?.thermocouple?.wireMm ?? null,
    kilnRatingC: record?.kilnRatingC ?? plan?.kilnRatingC ?? null,
    tense: "past",
  }).map((each) => ({ ...each, zone: zoneNamed(facts, zone) }));
}

/** How far new wire may be off at the peak, or that no standard says so; empty without a type. */
function limitFindings(facts: FiringFacts): readonly Finding[] {
  const wire = knownWire(facts.record, facts.reading);
  if (wire === null) return [];
  const zone = hottestZone(facts.zones);
  const { limitK, range } = newWireLimit(wire.type, wire.wireClass, zone.peakC);
  const zoneName = zoneNamed(facts, zone);
  if (limitK !== null) return [withinRange(wire, zone, { limitK, zoneName })];
  return [
    range === null ? noSuchClass(wire, zoneName) : beyondRange(wire, zone, { range, zoneName }),
  ];
}

function withinRange(
  wire: KnownWire,
  zone: ZoneReview,
  { limitK, zoneName }: { readonly limitK: number; readonly zoneName: string | null },
): Finding {
  const other = newWireLimit(wire.type, "class 2", zone.peakC);
  const isPastIec = wire.wireClass === "standard" && other.limitK === null && other.range !== null;
  const iec = isPastIec ? " The limits of IEC 60584-1 end at {IEC end} already." : "";
  return {
    topic: "new-wire limits",
    severity: "note",
    statement: `New wire of type ${wire.type}, ${wire.wireClass}, may be off by up to {limit} either way at the peak of {peak}${wire.assumed === "" ? "" : `; ${wire.assumed}`}.${iec}`,
    evidence: [
      { name: "limit", value: limitK, kind: "difference" },
      { name: "peak", value: zone.peakC, kind: "temperature" },
      ...(isPastIec
        ? [{ name: "IEC end", value: other.range?.toC ?? 0, kind: "temperature" } as const]
        : []),
    ],
    basis: basedOn(
      "new-wire limits: they bind the maker of unused wire and are not the accuracy of this log, since wire in use may be off by more",
      standardOf(wire),
      "webster-2021",
    ),
    advice: "",
    zone: zoneName,
    span: null,
  };
}

function beyondRange(
  wire: KnownWire,
  zone: ZoneReview,
  given: {
    readonly range: { readonly fromC: number; readonly toC: number };
    readonly zoneName: string | null;
  },
): Finding {
  const isOver = zone.peakC > given.range.toC;
  return {
    topic: "wire out of its range",
    severity: isOver ? "caution" : "note",
    statement: `The peak of {peak} lies ${isOver ? "above" : "below"} {end}, where the new-wire limits of type ${wire.type}, ${wire.wireClass}, ${isOver ? "end" : "begin"}: no standard says how far even new wire may be off there${wire.assumed === "" ? "" : `; ${wire.assumed}`}.`,
    evidence: [
      { name: "peak", value: zone.peakC, kind: "temperature" },
      { name: "end", value: isOver ? given.range.toC : given.range.fromC, kind: "temperature" },
    ],
    basis: basedOn("the range for which limits of new wire are given", standardOf(wire)),
    advice: isOver ? "Go by witness cones there, and renew the thermocouple more often." : "",
    zone: given.zoneName,
    span: null,
  };
}

function noSuchClass(wire: KnownWire, zoneName: string | null): Finding {
  return {
    topic: "new-wire limits",
    severity: "note",
    statement: `There is no ${wire.wireClass} of type ${wire.type}, so that nothing is known of the limits of its wire.`,
    evidence: [],
    basis: basedOn("the classes of wire", standardOf(wire)),
    advice: "Look at the order or the label of the thermocouple.",
    zone: zoneName,
    span: null,
  };
}

function standardOf({ wireClass }: KnownWire): SourceId {
  return wireClass === "standard" || wireClass === "special" ? "astm-e230" : "iec-60584-tolerances";
}

/** Moments on the way up at which two zones are compared, and the fewest that will do. */
const MOMENTS = 90;
const FEWEST = 30;
/** Below this both still follow the room and the start [°C]; own choice. */
const FROM_C = 200;
/** Growth of the difference that is worth a word [K], and by how much it has begun; own choice. */
const PARTED_K = 20;
const BEGUN_K = 8;

interface Parting {
  readonly a: ZoneReview;
  readonly b: ZoneReview;
  readonly beforeK: number;
  readonly afterK: number;
  readonly sinceSeconds: number;
  readonly sinceC: number;
}

/** Two zones that drift apart on the way up, the pair that does so most; empty when none does. */
function partingFindings(facts: FiringFacts): readonly Finding[] {
  const { zones } = facts;
  const pairs = zones.flatMap((a, i) => zones.slice(i + 1).map((b) => [a, b] as const));
  const untilSeconds = zones.length > 1 ? hottestZone(zones).peakAtSeconds : 0;
  const [most] = pairs
    .flatMap(([a, b]) => parting(a, b, untilSeconds) ?? [])
    .toSorted((x, y) => growth(y) - growth(x));
  return most === undefined ? [] : [parted(most, untilSeconds)];
}

function growth({ afterK, beforeK }: Parting): number {
  return Math.abs(afterK - beforeK);
}

/** How two zones part; null when they do not, or too little of both was read. */
function parting(a: ZoneReview, b: ZoneReview, untilSeconds: number): Parting | null {
  const moments = differences(a, b, untilSeconds);
  if (moments.length < FEWEST) return null;
  const third = Math.floor(moments.length / 3);
  const beforeK = medianInPlace(moments.slice(0, third).map(({ apartK }) => apartK));
  const afterK = medianInPlace(moments.slice(-Math.floor(third / 2)).map(({ apartK }) => apartK));
  if (Math.abs(afterK) - Math.abs(beforeK) < PARTED_K) return null;
  const last = moments.findLastIndex(({ apartK }) => Math.abs(apartK - beforeK) < BEGUN_K);
  const since = moments[last + 1];
  if (last < 0 || since === undefined) return null;
  return { a, b, beforeK, afterK, sinceSeconds: since.seconds, sinceC: since.tempC };
}

interface Apart {
  readonly seconds: number;
  readonly apartK: number;
  /** The warmer of the two [°C]. */
  readonly tempC: number;
}

function differences(a: ZoneReview, b: ZoneReview, untilSeconds: number): readonly Apart[] {
  const start = a.curve.tempsC.findIndex((tempC) => tempC > FROM_C);
  const from = start < 0 ? untilSeconds : a.curve.timesSeconds[start]!;
  const step = (untilSeconds - from) / MOMENTS;
  if (!(step > 0)) return [];
  return Array.from({ length: MOMENTS + 1 }, (_, i) => from + i * step).flatMap((seconds) => {
    const inA = temperatureAt(a.curve, seconds);
    const inB = temperatureAt(b.curve, seconds);
    return inA === null || inB === null
      ? []
      : [{ seconds, apartK: inA - inB, tempC: Math.max(inA, inB) }];
  });
}

function parted(
  { a, b, beforeK, afterK, sinceSeconds, sinceC }: Parting,
  untilSeconds: number,
): Finding {
  const [higher, lower] = afterK > 0 ? [a, b] : [b, a];
  return {
    topic: "zones that part",
    severity: "note",
    statement: `${quoted(higher.name)} and ${quoted(lower.name)} were {before} apart early on the way up and {after} near the peak, ${quoted(higher.name)} higher; they part from {since} on, at about {at}. Uneven heat and a failing thermocouple look the same in a log.`,
    evidence: [
      { name: "before", value: Math.abs(beforeK), kind: "difference" },
      { name: "after", value: Math.abs(afterK), kind: "difference" },
      { name: "since", value: sinceSeconds, kind: "elapsed" },
      { name: "at", value: sinceC, kind: "temperature" },
    ],
    basis: "zones at the same moments of the way up; 20 °C more than at first is our own mark",
    advice:
      "Swap the two thermocouples before the next firing: if the difference goes with one of them, it is that one.",
    zone: null,
    span: { fromSeconds: sinceSeconds, toSeconds: untilSeconds },
  };
}

/** Nothing in a studio gets this cold [°C], nor falls this far below where it began [K]; own choice. */
const REVERSED = { belowC: -20, fallK: 30 };
/** Scatter worth a word [K], one sigma; own choice. */
const NOISY_K = 2;
/** Scatter must also be this many times the smallest step of the log; own choice. */
const NOISY_STEPS = 2;
/** Above this step between readings [s] corners of the curve pass for scatter; own choice. */
const CLOSE_SECONDS = 120;
const FEWEST_READINGS = 100;

/** What the readings alone say of a thermocouple: leads swapped, readings that jump about. */
function signalFindings(facts: FiringFacts): readonly Finding[] {
  return facts.zones.flatMap((zone) => [...reversed(zone, facts), ...noisy(zone, facts)]);
}

function reversed(zone: ZoneReview, facts: FiringFacts): readonly Finding[] {
  const { tempsC, timesSeconds } = zone.curve;
  const first = tempsC[0]!;
  const least = tempsC.reduce((low, tempC) => Math.min(low, tempC), first);
  if (least > REVERSED.belowC || first - least < REVERSED.fallK) return [];
  const from = tempsC.findIndex((tempC) => tempC < first - REVERSED.fallK);
  return [
    {
      topic: "thermocouple reversed",
      severity: "caution",
      statement:
        "It falls from {first} to {least}, colder than any kiln: the two leads of the thermocouple may be swapped, so that it falls when the kiln climbs.",
      evidence: [
        { name: "first", value: first, kind: "temperature" },
        { name: "least", value: least, kind: "temperature" },
      ],
      basis: "the sign of the emf; below −20 °C and 30 °C under the start is our own mark",
      advice: "Swap the two leads at one place, at the block or at the instrument.",
      zone: zoneNamed(facts, zone),
      span: {
        fromSeconds: timesSeconds[from]!,
        toSeconds: timesSeconds[tempsC.indexOf(least)]!,
      },
    },
  ];
}

function noisy(zone: ZoneReview, facts: FiringFacts): readonly Finding[] {
  const { tempsC } = zone.curve;
  if (tempsC.length < FEWEST_READINGS || facts.reading.intervalSeconds > CLOSE_SECONDS) return [];
  const scatter = scatterK(zone.curve);
  const times = scatter / smallestStep(tempsC);
  if (scatter < NOISY_K || times < NOISY_STEPS) return [];
  return [
    {
      topic: "readings that jump about",
      severity: "note",
      statement:
        "Readings jump about by {scatter} either way from one to the next, {times} times the smallest step of the log: a loose terminal, a lead beside the elements' wires, or elements that switch.",
      evidence: [
        { name: "scatter", value: scatter, kind: "difference" },
        { name: "times", value: times, kind: "count" },
      ],
      basis:
        "one standard deviation, from the second differences of neighbouring readings; above 2 °C is our own mark",
      advice: "Look at the tip, the terminals and how the lead runs.",
      zone: zoneNamed(facts, zone),
      span: null,
    },
  ];
}

/** Smallest change between neighbours that is one [K]. */
function smallestStep(tempsC: Float64Array): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < tempsC.length; i++) {
    const step = Math.abs(tempsC[i]! - tempsC[i - 1]!);
    if (step > 1e-6 && step < least) least = step;
  }
  return least;
}
