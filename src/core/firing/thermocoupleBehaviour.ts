import { type KilnOffset, usualOffset } from "../cones/usualOffset.ts";
import type { Finding } from "../findings/Finding.ts";
import type { LogReading } from "../log/reading/LogReading.ts";
import type { FiringRecord } from "../record/FiringRecord.ts";
import { basedOn } from "../sources/bibliography.ts";
import type { ThermocoupleType } from "../thermocouple/emf.ts";
import { sensorSigmaK, type WireClass, wireClassOf } from "../thermocouple/wireLimits.ts";
import {
  type FiringFacts,
  type FoundSegment,
  hottestZone,
  type ZoneReview,
  zoneNamed,
} from "./FiringFacts.ts";

/** Band in which the wire of type K orders itself [°C], and the greatest error that was seen [ratio]. */
const ORDERING = { lowC: 200, highC: 600, error: 0.017 };
/** A hold from here on is long enough to matter [s]: a maker's figures reach 1.9 °C after 45 min. Own choice. */
const LONG_HOLD_SECONDS = 1800;
/** A ramp from here on is long enough for the reading to trail steadily [s]; own choice. */
const LONG_RAMP_SECONDS = 1800;
/** A reading that trails by less than this is not worth a word [K]; own choice. */
const BEHIND_K = 1;
/** Diameter of a sheath [mm] and time to 90 % of a step in air at 2 m/s [s], thinnest first. */
const RESPONSE: readonly (readonly [mm: number, seconds: number])[] = [
  [0.5, 5.5],
  [1, 10],
  [1.5, 25],
  [3, 80],
];

/** What type and sheath do to the readings: ordering of type K in long holds, lag of a sheath. */
export function behaviourFindings(facts: FiringFacts): readonly Finding[] {
  const zone = hottestZone(facts.zones);
  return [...ordering(zone, facts), ...sheathLag(zone, facts)];
}

function ordering(zone: ZoneReview, facts: FiringFacts): readonly Finding[] {
  if (knownWire(facts.record, facts.reading)?.type !== "K") return [];
  const [longest] = zone.segments
    .filter((segment) => segment.kind === "hold" && isInBand(segment))
    .filter((segment) => lasted(segment) >= LONG_HOLD_SECONDS)
    .toSorted((a, b) => lasted(b) - lasted(a));
  if (longest === undefined) return [];
  const heldC = (longest.fromC + longest.toC) / 2;
  return [
    {
      topic: "type K in a long hold",
      severity: "note",
      statement:
        "In the {held} at {at} type K may have come to read up to {off} off: between {low} and {high} its wire changes with time, and changes back above {high}.",
      evidence: [
        { name: "held", value: lasted(longest), kind: "duration" },
        { name: "at", value: heldC, kind: "temperature" },
        { name: "off", value: ORDERING.error * heldC, kind: "difference" },
        { name: "low", value: ORDERING.lowC, kind: "temperature" },
        { name: "high", value: ORDERING.highC, kind: "temperature" },
      ],
      basis: basedOn(
        "the largest error seen, 1.7 %, in wire that had been annealed",
        "kollie-1975",
      ),
      advice: "",
      zone: zoneNamed(facts, zone),
      span: { fromSeconds: longest.startSeconds, toSeconds: longest.endSeconds },
    },
  ];
}

function isInBand({ fromC, toC }: FoundSegment): boolean {
  return Math.min(fromC, toC) >= ORDERING.lowC && Math.max(fromC, toC) <= ORDERING.highC;
}

function lasted({ startSeconds, endSeconds }: FoundSegment): number {
  return endSeconds - startSeconds;
}

function sheathLag(zone: ZoneReview, facts: FiringFacts): readonly Finding[] {
  const sheathMm = facts.record?.thermocouple?.sheathMm ?? null;
  const [steepest] = zone.segments
    .filter((segment) => segment.kind === "ramp" && lasted(segment) >= LONG_RAMP_SECONDS)
    .toSorted((a, b) => Math.abs(b.rateCPerHour) - Math.abs(a.rateCPerHour));
  if (sheathMm === null || steepest === undefined) return [];
  const lag = lagSeconds(sheathMm);
  const behindK = (lag.seconds * Math.abs(steepest.rateCPerHour)) / 3600;
  if (behindK < BEHIND_K) return [];
  const least = lag.isLeast ? "more than " : "about ";
  return [
    {
      topic: "sheath",
      severity: "note",
      statement: `A metal sheath of ${sheathMm} mm follows moving air ${least}{lag} late, less where it glows: where the kiln ${steepest.rateCPerHour < 0 ? "fell" : "climbed"} at {rate} the reading was ${least}{behind} behind. Steady rates stay true; times and corners come late.`,
      evidence: [
        { name: "lag", value: lag.seconds, kind: "duration" },
        { name: "rate", value: steepest.rateCPerHour, kind: "rate" },
        { name: "behind", value: behindK, kind: "difference" },
      ],
      basis: basedOn(
        "time to 90 % of a step in air at 2 m/s, over 2.3; between the diameters printed by a straight line",
        "sheath-response",
      ),
      advice: "",
      zone: zoneNamed(facts, zone),
      span: null,
    },
  ];
}

/** Lag of a sheath [s]; for one outside the table that of its nearest end. */
function lagSeconds(mm: number): { readonly seconds: number; readonly isLeast: boolean } {
  const thinnest = RESPONSE[0] as readonly [number, number];
  const thickest = RESPONSE.at(-1) as readonly [number, number];
  const above = RESPONSE.findIndex(([each]) => each >= mm);
  if (above < 0) return { seconds: firstOrder(thickest[1]), isLeast: true };
  const [highMm, highSeconds] = RESPONSE[above] as readonly [number, number];
  const [lowMm, lowSeconds] = RESPONSE[above - 1] ?? thinnest;
  const share = highMm === lowMm ? 1 : (mm - lowMm) / (highMm - lowMm);
  return { seconds: firstOrder(lowSeconds + share * (highSeconds - lowSeconds)), isLeast: false };
}

/** Time constant from the time to 90 % of a step. */
function firstOrder(to90Seconds: number): number {
  return to90Seconds / Math.log(10);
}

/** The wire of a firing's thermocouples, as far as it was said. */
export interface KnownWire {
  readonly type: ThermocoupleType;
  readonly wireClass: WireClass;
  /** Why the class is taken as standard; empty when it was said. */
  readonly assumed: string;
}

/** The wire that the record or an option names; null when neither names its type. */
export function knownWire(record: FiringRecord | null, reading: LogReading): KnownWire | null {
  const type = record?.thermocouple?.type ?? reading.thermocouple ?? null;
  if (type === null) return null;
  const written = record?.thermocouple?.class ?? null;
  const wireClass = written === null ? null : wireClassOf(written);
  if (wireClass !== null) return { type, wireClass, assumed: "" };
  const assumed =
    written === null
      ? "the record names no class, and standard is assumed"
      : "the class in the record is not one that is known here, and standard is assumed";
  return { type, wireClass: "standard", assumed };
}

/** What a thermocouple is usually out by at a peak [°C], with the wire's own sigma where it is known. */
export function usualOffsetOf(wire: KnownWire | null, peakC: number): KilnOffset {
  const usual = usualOffset(peakC);
  const sigmaK = wire === null ? null : sensorSigmaK(wire, peakC, usual.sigmaK);
  return sigmaK === null ? usual : { ...usual, sigmaK };
}
