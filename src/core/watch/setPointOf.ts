import type { Curve } from "../curve/Curve.ts";
import type { LogReading } from "../log/LogReading.ts";

/** The set point that a log tells, as a Curve; null when it tells none. */
export function setPointOf({ channels }: LogReading): Curve | null {
  return channels.find(({ role, curve }) => role === "set-point" && curve !== null)?.curve ?? null;
}
