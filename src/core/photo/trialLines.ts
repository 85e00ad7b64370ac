import type { PhotoMeasurement } from "./PhotoMeasurement.ts";
import { trialEntry } from "./trialEntry.ts";

/** Lines of YAML for the trial of a tile in a firing record, without indent. */
export function trialLines(measured: PhotoMeasurement): readonly string[] {
  return Object.entries(trialEntry(measured)).map(
    ([key, value]) => `${key}: ${written(key, value)}`,
  );
}

/** Free words stand in quotes, whatever they hold; lists on their line. */
function written(key: string, value: string | readonly string[]): string {
  if (typeof value !== "string") return `[${value.join(", ")}]`;
  return key === "note" ? JSON.stringify(value) : value;
}
