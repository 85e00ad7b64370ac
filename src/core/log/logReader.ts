import { failed, type Result } from "../problem.ts";
import { withoutMillivolts } from "./channels/millivolts.ts";
import { decideRoles } from "./channels/roles.ts";
import { checkOptions } from "./checkOptions.ts";
import type { LogOptions, LogReading, ReadingSteps, SplitQuoted } from "./LogReading.ts";
import { type LogOpener, logOpener, type OpenedLog } from "./openLog.ts";
import { readColumns } from "./readColumns.ts";
import { timeColumnDecision } from "./time/rowTimes.ts";
import { pickTime } from "./time/timeColumn.ts";
import { timedTable } from "./time/timedTable.ts";

/** Reads a log that comes in parts: from a file, a stream, or one that is still growing. */
export interface LogReader {
  /**
   * The next bytes; they are not kept.
   * @returns false when no more are needed, since the log cannot be read.
   */
  readonly push: (bytes: Uint8Array) => boolean;
  /** The reading, once all bytes were given; asked for once. */
  readonly end: () => Result<LogReading>;
  /** How far it came, also where it ended in a problem; asked for after `end`. */
  readonly steps: () => ReadingSteps;
}

/**
 * A log of any make, read as it comes: text → table → time and columns → clean Curves in °C.
 * Whatever is decided on the way is told with its reason; what two readings are possible for is
 * asked, never assumed. Memory goes with the readings, not with the text.
 *
 * @param splitQuoted Splits a record that holds quotes.
 * @returns by `end`: the reading, or problems `log/…` that a person can fix.
 */
export function logReader(options: LogOptions, splitQuoted: SplitQuoted): LogReader {
  const problems = checkOptions(options);
  let steps: ReadingSteps = { decisions: [], columns: [] };
  const note: NoteSteps = (known) => {
    steps = { ...steps, ...known };
  };
  if (problems.length > 0)
    return { push: () => false, end: () => failed(...problems), steps: () => steps };
  const opener: LogOpener = logOpener(options, splitQuoted, (decisions) =>
    note({ decisions: [...steps.decisions, ...decisions] }),
  );
  return {
    push: opener.push,
    end: () => interpreted(opener.end(), options, note),
    steps: () => steps,
  };
}

/** Takes what is known by now in place of what was known before. */
type NoteSteps = (known: Partial<ReadingSteps>) => void;

function interpreted(
  opened: Result<OpenedLog>,
  given: LogOptions,
  note: NoteSteps,
): Result<LogReading> {
  if (!opened.ok) return opened;
  note({ decisions: opened.value.decisions });
  const inDegrees = withoutMillivolts(opened.value, given);
  if (!inDegrees.ok) return inDegrees;
  const { log, options } = inDegrees.value;
  const choice = pickTime(log.table, {
    name: options.name,
    told: options.timeColumn,
    intervalSeconds: log.preamble.intervalSeconds,
  });
  if (!choice.ok) return choice;
  const table = timedTable(log.table, choice.value.place);
  const onTime = timeColumnDecision(choice.value);
  note({ decisions: [...log.decisions, onTime] });
  const roles = decideRoles(table, choice.value.place, options);
  if (!roles.ok) return roles;
  const columns = roles.value.columns.map(({ column: { name }, role, because }) => ({
    name,
    role,
    because,
  }));
  note({ decisions: [...log.decisions, onTime, roles.value.decision], columns });
  const known = { choice: choice.value, roles: roles.value };
  const reading = readColumns({ ...log, table }, known, options);
  if (reading.ok) note({ decisions: reading.value.decisions });
  return reading;
}
