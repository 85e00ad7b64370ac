import { medianInPlace } from "../curve/median.ts";
import { temperatureAt } from "../curve/temperatureAt.ts";
import type { Finding } from "../findings/Finding.ts";
import { quoted } from "../findings/findingText.ts";
import type { FiringFacts } from "./FiringFacts.ts";
import type { ZoneReview } from "./FiringReview.ts";
import { hottestZone } from "./hottestZone.ts";

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
export function partingFindings(facts: FiringFacts): readonly Finding[] {
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
  const from = start < 0 ? untilSeconds : (a.curve.timesSeconds[start] as number);
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
