import type { LogOptions, LogReading } from "../../../src/core/log/reading/LogReading.ts";
import { readLog } from "../../../src/core/log/readLog.ts";
import { problemText, type Result } from "../../../src/core/problem.ts";
import { splitQuoted } from "../../../src/node/readLogChunks.ts";

/** Reads a log that is given as text or bytes. */
export function readText(
  log: string | Uint8Array,
  options: Partial<LogOptions> = {},
): Result<LogReading> {
  const bytes = typeof log === "string" ? new TextEncoder().encode(log) : log;
  return readLog(bytes, { name: "log.csv", ...options }, splitQuoted);
}

/** The reading of a log that must be readable; the problems are shown when it is not. */
export function reading(log: string | Uint8Array, options: Partial<LogOptions> = {}): LogReading {
  const result = readText(log, options);
  if (!result.ok) throw new Error(result.problems.map(problemText).join("\n"));
  return result.value;
}

/** The whole text of the problems of a log that must not be readable. */
export function problemsOf(log: string | Uint8Array, options: Partial<LogOptions> = {}): string {
  const result = readText(log, options);
  if (result.ok) throw new Error(`read as ${JSON.stringify(result.value.decisions, null, 1)}`);
  return result.problems.map(problemText).join("\n");
}

/** The choice that was made about something. */
export function choiceOf(log: LogReading, about: string): string | undefined {
  return log.decisions.find((each) => each.about === about)?.choice;
}

/** The first measured temperature as pairs of seconds and °C. */
export function pairs(log: LogReading, name?: string): readonly (readonly [number, number])[] {
  const channel = log.channels.find(
    (each) => each.role === "temperature" && (name === undefined || each.name === name),
  );
  const curve = channel?.curve;
  if (curve === undefined || curve === null) return [];
  return Array.from(curve.timesSeconds, (time, i) => [time, curve.tempsC[i] as number] as const);
}

/** One reading of a made-up firing. */
export interface Sample {
  readonly seconds: number;
  readonly tempC: number;
}

/** A firing that rises at 150 °C/h to 1000 °C, holds half an hour, and falls; one reading a step. */
export function firing(count: number, stepSeconds = 300, startC = 20): readonly Sample[] {
  return Array.from({ length: count }, (_, i) => {
    const hours = (i * stepSeconds) / 3600;
    const rise = startC + 150 * hours;
    const top = (1000 - startC) / 150;
    const tempC = hours < top ? rise : Math.max(40, 1000 - 90 * Math.max(0, hours - top - 0.5));
    return { seconds: i * stepSeconds, tempC: Math.round(tempC * 10) / 10 };
  });
}

/** How to write a log. */
export interface Style {
  readonly header?: string;
  readonly delimiter?: string;
  readonly lineEnd?: string;
  readonly time?: (seconds: number) => string;
  readonly temp?: (tempC: number) => string;
  readonly preamble?: readonly string[];
}

/** A log written in a style; by default elapsed seconds and °C with commas. */
export function writeLog(samples: readonly Sample[], style: Style = {}): string {
  const delimiter = style.delimiter ?? ",";
  const time = style.time ?? String;
  const temp = style.temp ?? ((tempC: number) => tempC.toFixed(1));
  return [
    ...(style.preamble ?? []),
    ...(style.header === "" ? [] : [style.header ?? `Time (s)${delimiter}Temp (°C)`]),
    ...samples.map(({ seconds, tempC }) => `${time(seconds)}${delimiter}${temp(tempC)}`),
    "",
  ].join(style.lineEnd ?? "\n");
}

const TWO = (value: number) => String(value).padStart(2, "0");

/** Wall time of seconds after 2026-03-14 17:05:00. */
export function wall(seconds: number): {
  readonly day: number;
  readonly h: number;
  readonly date: string;
  readonly clock: string;
} {
  const all = 17 * 3600 + 5 * 60 + seconds;
  const day = 14 + Math.floor(all / 86_400);
  const rest = all % 86_400;
  const h = Math.floor(rest / 3600);
  return {
    day,
    h,
    date: `2026-03-${TWO(day)}`,
    clock: `${TWO(h)}:${TWO(Math.floor((rest % 3600) / 60))}:${TWO(rest % 60)}`,
  };
}
