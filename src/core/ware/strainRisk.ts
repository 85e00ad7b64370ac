import type { Direction } from "../curve/Band.ts";

/** What a ratio of stress over strength is called. */
export type StrainRisk = "low" | "watch" | "high";

/** Up to here a ratio is low, and from there on to be watched; our own estimate. */
const WATCH_FROM = 0.3;

/** Above this a ratio is high; our own estimate. */
const HIGH_ABOVE = 0.6;

/** The words and where they come from, as a sentence. */
export const STRAIN_RISK_WORDS =
  "Low is below 0.3, watch from 0.3 to 0.6, high above 0.6: our own estimate, since the computed ratio is good to a factor of two either way";

/** The word for a ratio: below 0.3 low, to 0.6 watch, above it high. Never a promise. */
export function strainRisk(ratio: number): StrainRisk {
  return ratio > HIGH_ABOVE ? "high" : ratio >= WATCH_FROM ? "watch" : "low";
}

/** The word for the ratio of a passage; null on the way up, where porous ware bears more than its strength says. */
export function passageRisk(direction: Direction, ratio: number): StrainRisk | null {
  return direction === "heating" ? null : strainRisk(ratio);
}
