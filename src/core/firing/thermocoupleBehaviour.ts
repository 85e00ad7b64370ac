import type { Finding } from "../findings/Finding.ts";
import { basedOn } from "../sources/basedOn.ts";
import { type FiringFacts, zoneNamed } from "./FiringFacts.ts";
import type { FoundSegment, ZoneReview } from "./foundZone.ts";
import { hottestZone } from "./hottestZone.ts";
import { knownWire } from "./thermocoupleWire.ts";

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
