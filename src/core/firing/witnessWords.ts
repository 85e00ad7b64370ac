import type { WitnessBend } from "../cones/witnessOffset.ts";

/** How the bend of a cone may be written. */
export const BEND_FORMS =
  'upright, down, a clock position from 12 (upright) to 6 such as "4 o\'clock", or degrees from upright such as "45 degrees"';

const CLOCK = /^(\d{1,2}(?:\.\d+)?)\s*o['’ ]?\s*clock$/i;
const DEGREES = /^(\d{1,3}(?:\.\d+)?)\s*(?:degrees?|deg|°)$/i;

/**
 * A bend from its words; null when it is written in none of the {@link BEND_FORMS}.
 * Clock positions go from 12 (upright) to 6 (tip level with the base); degrees
 * from 0 (upright) to 180.
 */
export function parseBend(text: string): WitnessBend | null {
  const said = text.trim().toLowerCase();
  if (said === "upright") return { kind: "upright" };
  if (said === "down") return { kind: "down" };
  const clock = CLOCK.exec(said);
  if (clock) {
    const oClock = Number(clock[1]);
    return oClock === 12 || (oClock >= 0 && oClock <= 6) ? { kind: "clock", oClock } : null;
  }
  const degrees = DEGREES.exec(said);
  if (degrees && Number(degrees[1]) <= 180) return { kind: "degrees", degrees: Number(degrees[1]) };
  return null;
}
