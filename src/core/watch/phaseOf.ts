import type { Curve } from "../curve/Curve.ts";
import type { LogReading } from "../log/LogReading.ts";
import type { Phase, RecentRate } from "./WatchState.ts";

/** Slower than this either way a kiln is holding [°C/h]; our own estimate. */
export const HOLDING_C_PER_HOUR = 5;

/** A controller that holds swings by so much [K]; our own estimate. */
const SWING_K = 4;

/** So far below its peak a firing is over it, whatever the kiln is doing [K]; our own estimate. */
export const PAST_PEAK_K = 50;

/** A kiln that is past its peak falls from this rate on, for it slows down towards the room [°C/h]. */
const CRAWLING_C_PER_HOUR = 1;

/**
 * Which way a kiln is going, by its rate of the last minutes.
 * A rate counts from 5 °C/h on and from two of its own sigmas; a kiln within 4 °C of its peak is not
 * yet falling, and one 50 °C below it falls from 1 °C/h on.
 */
export function phaseOf(
  rate: RecentRate,
  now: { readonly tempC: number; readonly peakC: number },
): Phase {
  const below = now.peakC - now.tempC;
  const sure = 2 * rate.sigmaCPerHour;
  const telling = Math.max(HOLDING_C_PER_HOUR, sure);
  if (rate.rateCPerHour > telling) return "climbing";
  const least = below > PAST_PEAK_K ? Math.max(CRAWLING_C_PER_HOUR, sure) : telling;
  return rate.rateCPerHour < -least && below > SWING_K ? "falling" : "holding";
}

/** The set point that a log tells, as a Curve; null when it tells none. */
export function setPointOf({ channels }: LogReading): Curve | null {
  return channels.find(({ role, curve }) => role === "set-point" && curve !== null)?.curve ?? null;
}
