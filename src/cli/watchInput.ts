import { basename } from "node:path";
import { parseCone } from "../core/cones/cone.ts";
import { type LogOptions, saidTogether } from "../core/log/reading/LogReading.ts";
import { readLog } from "../core/log/readLog.ts";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";
import type { FiringRecord } from "../core/record/FiringRecord.ts";
import type { WatchView } from "../core/reports/watchWords.ts";
import type { Schedule } from "../core/schedule/Schedule.ts";
import { parseDuration, type TemperatureUnit } from "../core/units/temperature.ts";
import type { WatchState } from "../core/watch/WatchState.ts";
import { type WatchInput, watched } from "../core/watch/watched.ts";
import type { FileLook } from "../node/followFile.ts";
import { readBeside } from "../node/readFiring.ts";
import { splitQuoted } from "../node/readLogChunks.ts";
import { type LogCommandOptions, logOptionsFrom, ownKiln } from "./options.ts";

/** What the command line says of a firing to watch. */
export interface WatchOptions extends LogCommandOptions {
  readonly cone?: string;
  readonly record?: string;
  readonly against?: string;
  readonly kiln?: readonly string[];
  readonly every: string;
  readonly untilStill: string;
}

/** All that is known before the first look. */
export interface WatchGiven {
  readonly known: Omit<WatchInput, "reading" | "lines">;
  readonly logOptions: LogOptions;
  readonly everySeconds: number;
  readonly untilStillSeconds: number;
  /** What was looked for and not found, as sentences. */
  readonly remarks: readonly string[];
}

/** Shortest time between looks [s]: more often only heats the room. */
const SHORTEST_SECONDS = 0.02;

/** What the command line names, read; or every problem with it. */
export async function watchGiven(path: string, options: WatchOptions): Promise<Result<WatchGiven>> {
  if (path === "-") return failed(needsFile());
  const times = timesFrom(options);
  const logOptions = logOptionsFrom(options);
  const beside = await readBeside(path, {
    recordPath: options.record ?? null,
    schedulePath: options.against ?? null,
  });
  const own =
    options.kiln === undefined
      ? ok(null)
      : await ownKiln(options.kiln, { powerWatt: null, tariffPerKWh: null });
  if (!times.ok || !logOptions.ok || !beside.ok || !own.ok)
    return failed(
      ...[times, logOptions, beside, own].flatMap((part) => (part.ok ? [] : part.problems)),
    );
  const { record, plan, remarks } = beside.value;
  const cone = coneFrom(options.cone, record, plan);
  if (!cone.ok) return cone;
  return ok({
    known: {
      record,
      plan,
      cone: cone.value,
      kiln: own.value?.kiln ?? null,
      offsetK: own.value?.offset?.offsetK ?? null,
    },
    logOptions: { ...saidTogether(record?.log ?? {}, logOptions.value), name: basename(path) },
    ...times.value,
    remarks,
  });
}

function timesFrom(
  options: WatchOptions,
): Result<Pick<WatchGiven, "everySeconds" | "untilStillSeconds">> {
  const every = parseDuration(options.every, { bareUnit: "s", where: "--every" });
  const still = parseDuration(options.untilStill, { bareUnit: "min", where: "--until-still" });
  if (!every.ok || !still.ok)
    return failed(...[every, still].flatMap((part) => (part.ok ? [] : part.problems)));
  if (every.value >= SHORTEST_SECONDS && still.value > 0)
    return ok({ everySeconds: every.value, untilStillSeconds: still.value });
  return failed({
    code: "command/watch-times",
    where: "--every, --until-still",
    what: `"${options.every}" between looks, "${options.untilStill}" without a change`,
    expected: `times above nothing: at least ${SHORTEST_SECONDS} s between looks`,
    fix: "--every 10s --until-still 30min",
  });
}

function coneFrom(
  text: string | undefined,
  record: FiringRecord | null,
  plan: Schedule | null,
): Result<string | null> {
  if (text === undefined) return ok(null);
  const series = record?.series ?? plan?.series ?? "self-supporting";
  return parseCone(text, { series, where: "--cone" });
}

function needsFile() {
  return {
    code: "command/needs-file",
    where: "command line",
    what: "standard input cannot be watched",
    expected: "the file that the logger writes",
    fix: "undunted watch firing.csv",
  } as const;
}

/** A log with so many lines can be told; before, any trouble may be that there are too few. */
const ENOUGH_LINES = 20;

/** What a look showed, kept for the looks at which nothing is new. */
export interface Looked {
  readonly state: WatchState | null;
  readonly why: string | null;
  /** Why the log could not be read when it last changed; stands until it can be read again. */
  readonly unread: string | null;
  readonly intervalSeconds: number | null;
  /** Unit of the log. */
  readonly unit: TemperatureUnit;
  readonly restarts: number;
}

/** Before the first look. */
export const NOTHING_LOOKED: Looked = {
  state: null,
  why: null,
  unread: null,
  intervalSeconds: null,
  unit: "C",
  restarts: 0,
};

/**
 * What a look at the log shows. Too few readings are waited for; so is a log that could be read
 * before.
 * @returns the problems of a log that has enough lines and never could be read.
 */
export function lookedAt(look: FileLook, before: Looked, given: WatchGiven): Result<Looked> {
  if (look.change === "missing")
    return ok({ ...before, why: "The file is not there; the watch looks for it again and again." });
  const isAnew = look.restarts !== before.restarts;
  if (look.change === "same" && before.state !== null && !isAnew)
    return ok({ ...before, why: before.unread });
  const last = isAnew ? { ...NOTHING_LOOKED, restarts: look.restarts } : before;
  const reading = readLog(look.bytes, given.logOptions, splitQuoted);
  if (!reading.ok) return notRead(reading.problems, look, last);
  const state = watched({ ...given.known, reading: reading.value, lines: look.lines });
  if (!state.ok) return notRead(state.problems, look, last);
  const { unit, intervalSeconds } = reading.value;
  return ok({
    state: state.value,
    why: null,
    unread: null,
    intervalSeconds,
    unit: unit === "F" ? "F" : "C",
    restarts: look.restarts,
  });
}

function notRead(problems: readonly Problem[], look: FileLook, last: Looked): Result<Looked> {
  const [{ what }] = problems as readonly [Problem];
  if (last.state !== null) {
    const unread = `The log cannot be read now: ${what}. What is shown is older.`;
    return ok({ ...last, why: unread, unread });
  }
  if (look.lines >= ENOUGH_LINES) return failed(...problems);
  const lines = look.lines === 1 ? "one whole line" : `${look.lines} whole lines`;
  return ok({ ...last, why: `For readings. So far the log has ${lines}: ${what}.` });
}

/** A look with all that is to be shown of it. */
export function viewOf(look: FileLook, looked: Looked, given: WatchGiven): WatchView {
  return {
    log: given.logOptions.name,
    state: looked.state,
    why: looked.why,
    isLast: look.stillSeconds >= given.untilStillSeconds,
    file: {
      change: look.change,
      restarts: look.restarts,
      stillSeconds: look.stillSeconds,
      hasHalfLine: look.hasHalfLine,
      intervalSeconds: looked.intervalSeconds,
    },
    untilStillSeconds: given.untilStillSeconds,
  };
}
