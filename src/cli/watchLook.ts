import { readLog } from "../core/log/readLog.ts";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";
import type { WatchView } from "../core/reports/watchWords.ts";
import type { TemperatureUnit } from "../core/units/temperature.ts";
import type { WatchState } from "../core/watch/WatchState.ts";
import { watched } from "../core/watch/watched.ts";
import type { FileLook } from "../node/followFile.ts";
import { splitQuoted } from "../node/splitQuoted.ts";
import type { WatchGiven } from "./watchInput.ts";

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
