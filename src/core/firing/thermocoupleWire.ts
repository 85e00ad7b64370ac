import { type KilnOffset, usualOffset } from "../cones/usualOffset.ts";
import type { LogReading } from "../log/LogReading.ts";
import { type WireClass, wireClassOf } from "../thermocouple/newWireLimits.ts";
import { sensorSigmaK } from "../thermocouple/sensorSigma.ts";
import type { ThermocoupleType } from "../thermocouple/ThermocoupleType.ts";
import type { FiringRecord } from "./FiringRecord.ts";

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
