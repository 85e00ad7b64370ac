import type { LogOptions, LogReading } from "../../../src/core/log/reading/LogReading.ts";
import { readLog } from "../../../src/core/log/readLog.ts";
import type { Result } from "../../../src/core/problem.ts";
import { splitQuoted } from "../../../src/node/readLogChunks.ts";
import { dateOrderOpen } from "./dateOrderOpen.ts";
import type { GridLog } from "./gridLog.ts";
import type { OpenQuestions } from "./openQuestions.ts";
import { readingFaults } from "./readingFaults.ts";

/** How a log was read. */
export type Verdict =
  | "right"
  | "asked"
  | "asked needlessly"
  | "wrong with a word"
  | "silently wrong";

/** A verdict with what it rests on. */
export interface Judged {
  readonly verdict: Verdict;
  readonly what: string;
}

const CODES: Readonly<Record<string, keyof OpenQuestions>> = {
  "log/unit-unknown": "unit",
  "log/time-unit-unknown": "timeUnit",
  "log/no-interval": "interval",
  "log/no-time": "interval",
  "log/clock-reset": "reset",
  "log/decimal-unknown": "decimal",
  "log/no-temperature": "columns",
};

/** Reads a log and compares it with its truth; what is asked is answered, and read again. */
export function judgedLog(log: GridLog): Judged {
  const result = read(log, {});
  if (result.ok) return judgedReading(log, result.value, true);
  const codes = result.problems.map(({ code }) => code);
  const what = codes.join(", ");
  const isOpen = codes.every((code) => {
    const question = CODES[code];
    return question !== undefined && log.truth.open[question] !== "settled";
  });
  if (!isOpen) return { verdict: "asked needlessly", what: `${what}: ${result.problems[0]?.what}` };
  const isFinal =
    log.truth.open.reset === "must" || /clock-reset|no-temperature|decimal/.test(what);
  if (isFinal) return { verdict: "asked", what };
  const told = read(log, log.truth.answers);
  if (!told.ok) return { verdict: "asked needlessly", what: `${what}, and again when answered` };
  const again = judgedReading(log, told.value, false);
  return again.verdict === "right" ? { verdict: "asked", what } : again;
}

function read(log: GridLog, options: Partial<LogOptions>): Result<LogReading> {
  return readLog(log.bytes, { name: log.name, ...options }, splitQuoted);
}

function judgedReading(log: GridLog, reading: LogReading, mustAsk: boolean): Judged {
  const faults = readingFaults(log, reading);
  const [assumed] = mustAsk ? assumptions(log, reading) : [];
  const silent = faults.filter(({ isSaid }) => !isSaid);
  if (assumed !== undefined)
    return { verdict: "silently wrong", what: `assumed the ${assumed} without asking` };
  if (silent.length > 0)
    return { verdict: "silently wrong", what: silent.map(({ what }) => what).join("; ") };
  const open = isGuessedOpenly(log, reading);
  if (faults.every(({ isOpen }) => isOpen))
    return { verdict: open || faults.length > 0 ? "asked" : "right", what: "" };
  return { verdict: "wrong with a word", what: faults.map(({ what }) => what).join("; ") };
}

/** A guess that is marked as one, names its option, and stands where the data decide nothing. */
function isGuessedOpenly(log: GridLog, reading: LogReading): boolean {
  return dateOrderOpen(log) && isGuessed(reading, "day order");
}

function isGuessed(reading: LogReading, about: string): boolean {
  return reading.decisions.some(
    (each) => each.about === about && each.confidence === "guessed" && each.option !== null,
  );
}

/** Questions that the data leave open and the reader settled by itself. */
function assumptions(log: GridLog, reading: LogReading): readonly string[] {
  const { open } = log.truth;
  const guesses: Readonly<Record<keyof OpenQuestions, string>> = {
    unit: "unit",
    timeUnit: "time format",
    interval: "time format",
    reset: "time format",
    decimal: "decimal mark",
    columns: "columns",
  };
  return (Object.keys(guesses) as (keyof OpenQuestions)[]).filter(
    (question) =>
      open[question] === "must" &&
      !isGuessed(reading, guesses[question]) &&
      !(question === "reset" && saysStray(reading)),
  );
}

/** Whether the reading says that a few rows before or after a reset are left out. */
function saysStray({ faults }: LogReading): boolean {
  return faults.some(({ kind, what }) => kind === "clock" && what.includes("clock was set"));
}
