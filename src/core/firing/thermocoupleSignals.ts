import type { Finding } from "../findings/Finding.ts";
import { scatterK } from "../kiln/scatterK.ts";
import { type FiringFacts, zoneNamed } from "./FiringFacts.ts";
import type { ZoneReview } from "./foundZone.ts";

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
export function signalFindings(facts: FiringFacts): readonly Finding[] {
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
