import { CONE_MODELS } from "../cones/coneModel.ts";
import { witnessOffset } from "../cones/witnessOffset.ts";
import { type Curve, peakOf } from "../curve/Curve.ts";
import type { KilnFiring } from "../kiln/LearnedKiln.ts";
import type { Channel, LogReading } from "../log/reading/LogReading.ts";
import type { FiringRecord } from "../record/FiringRecord.ts";

/**
 * A log as a kiln is learned from it: its hottest thermocouple, and its output when there is one.
 * @returns null when no temperature column has a Curve.
 */
export function kilnFiringOf(reading: LogReading, record: FiringRecord | null): KilnFiring | null {
  const [hottest] = reading.channels
    .flatMap(({ role, curve }) => (role === "temperature" && curve !== null ? [curve] : []))
    .toSorted((a, b) => peakOf(b).tempC - peakOf(a).tempC);
  if (hottest === undefined) return null;
  return {
    name: reading.name,
    curve: hottest,
    output: reading.channels.map(outputOf).find((output) => output !== null) ?? null,
    start: reading.start,
    kiln: record?.kiln ?? null,
    ...offsetOf(hottest, record),
  };
}

/** What the witness cones of the record allow the thermocouple to be out by; nothing without any. */
function offsetOf(curve: Curve, record: FiringRecord | null): Pick<KilnFiring, "offset"> {
  const witnesses = record?.witnesses ?? [];
  const series = record?.series ?? "self-supporting";
  const isKnown = witnesses.every(({ cone }) =>
    CONE_MODELS[series].some((model) => model.cone === cone),
  );
  if (witnesses.length === 0 || !isKnown) return {};
  const { lowK, highK } = witnessOffset({ curve, series, witnesses });
  return { offset: { lowK, highK } };
}

function outputOf({ outputFraction }: Channel): KilnFiring["output"] {
  return outputFraction ?? null;
}
