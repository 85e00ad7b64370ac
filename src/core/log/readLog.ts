import type { Result } from "../problem.ts";
import type { LogOptions, LogReading, SplitQuoted } from "./LogReading.ts";
import { logReader } from "./logReader.ts";

/**
 * A log whose bytes are all there, read as by `logReader`.
 *
 * @param bytes The file as it is; any bytes are allowed.
 * @param splitQuoted Splits a record that holds quotes.
 * @returns the reading, or problems `log/…` that a person can fix.
 */
export function readLog(
  bytes: Uint8Array,
  options: LogOptions,
  splitQuoted: SplitQuoted,
): Result<LogReading> {
  const reader = logReader(options, splitQuoted);
  reader.push(bytes);
  return reader.end();
}
