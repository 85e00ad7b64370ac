import type { Result } from "../problem.ts";
import {
  bareNumber,
  notThatQuantity,
  type QuantityForm,
  writtenQuantity,
} from "./parseQuantity.ts";

const FORM: QuantityForm = {
  code: "units/not-a-duration",
  kind: "a span of time",
  expected: '"45 min", "1 h 30 min", "1:30" (hours and minutes), or a bare number of minutes',
};

const CLOCK = /^(\d{1,4}):([0-5]\d)(?::([0-5]\d))?$/;
const PARTS =
  /^(?:(\d+(?:\.\d+)?) ?(?:h|hr|hrs|hour|hours))? ?(?:(\d+(?:\.\d+)?)(?![\d.]) ?(m|min|mins|minute|minutes)?)? ?(?:(\d+(?:\.\d+)?) ?(?:s|sec|secs|second|seconds))?$/;

const SECONDS = { s: 1, min: 60, h: 3600 } as const;

/**
 * A span of time [s], 0 or more, from what a person wrote: `45`, `"45 min"`, `"1 h 30 min"`,
 * `"1h30"`, `"1:30"`. With a colon it is hours and minutes, then seconds if there is a third part.
 * A bare number is in minutes unless told otherwise.
 *
 * @returns `units/not-a-duration` for anything else, a negative number included.
 */
export function parseDuration(
  value: number | string,
  context: { readonly bareUnit?: "s" | "min" | "h"; readonly where: string },
): Result<number> {
  const bareSeconds = SECONDS[context.bareUnit ?? "min"];
  const seconds =
    typeof value === "number" ? value * bareSeconds : secondsWritten(value, bareSeconds);
  if (seconds === null || seconds < 0) return notThatQuantity(value, FORM, context.where);
  return bareNumber(seconds, FORM, context.where);
}

function secondsWritten(text: string, bareSeconds: number): number | null {
  const flat = text.trim().toLowerCase().replaceAll(/\s+/g, " ");
  const clock = CLOCK.exec(flat);
  if (clock) return Number(clock[1]) * 3600 + Number(clock[2]) * 60 + Number(clock[3] ?? 0);
  const bare = writtenQuantity(flat);
  if (bare?.unit === "") return bare.value * bareSeconds;
  const parts = flat === "" ? null : PARTS.exec(flat);
  if (!parts) return null;
  const [, hours, minutes, minuteUnit, seconds] = parts;
  const minutesAreNamed =
    minuteUnit !== undefined || (hours !== undefined && seconds === undefined);
  if (minutes !== undefined && !minutesAreNamed) return null;
  return Number(hours ?? 0) * 3600 + Number(minutes ?? 0) * 60 + Number(seconds ?? 0);
}
