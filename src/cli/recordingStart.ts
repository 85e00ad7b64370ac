import { peakOf } from "../core/curve/peakOf.ts";
import { MOMENT_FORMS, type Moment, parseMoment, placeMoment } from "../core/firing/moment.ts";
import { placedUnloading } from "../core/firing/placedMoments.ts";
import type { RecordingStart } from "../core/pings/PingReview.ts";
import type { LogBeside } from "../core/pings/pingTemperatures.ts";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";
import { type FiringFiles, readFiring } from "../node/readFiring.ts";
import { type LogCommandOptions, logOptionsFrom } from "./options.ts";

/** What the command line says about when a recording began and about the log beside it. */
export interface RecordingStartOptions extends LogCommandOptions {
  readonly log?: string;
  readonly started?: string;
}

/** When a recording began, and the log that runs beside it. */
export interface PlacedRecording {
  readonly started: RecordingStart;
  readonly log: LogBeside | null;
  /** What was chosen in placing it, as sentences. */
  readonly notes: readonly string[];
  readonly isFahrenheit: boolean;
}

const DAY_SECONDS = 86_400;

const UNKNOWN: PlacedRecording = {
  started: { secondsOfDay: null, elapsedSeconds: null },
  log: null,
  notes: [],
  isFahrenheit: false,
};

/**
 * Places a recording on the clock and on a log.
 *
 * @returns `pings/not-a-moment`, `pings/no-start`, `pings/no-clock` or `pings/no-temperatures`, or
 * what the reader of logs has to say.
 */
export async function recordingStart(
  options: RecordingStartOptions,
): Promise<Result<PlacedRecording>> {
  const { log, started } = options;
  const moment = started === undefined ? null : parseMoment(started);
  if (started !== undefined && moment === null) return failed(notAMoment(started));
  if (log === undefined) return ok(moment === null ? UNKNOWN : withoutLog(moment));
  if (moment === null) return failed(noStart(log));
  const logOptions = logOptionsFrom(options);
  if (!logOptions.ok) return logOptions;
  const files = await readFiring(log, {
    options: logOptions.value,
    recordPath: null,
    schedulePath: null,
  });
  return files.ok ? onLog(files.value, moment, started ?? "") : files;
}

function withoutLog(moment: Moment): PlacedRecording {
  return {
    ...UNKNOWN,
    started:
      moment.kind === "clock"
        ? { secondsOfDay: moment.secondsOfDay, elapsedSeconds: null }
        : { secondsOfDay: null, elapsedSeconds: moment.seconds },
  };
}

function onLog(
  { reading, record }: FiringFiles,
  moment: Moment,
  said: string,
): Result<PlacedRecording> {
  const curves = reading.channels.flatMap(({ name, role, curve }) =>
    role === "temperature" && curve !== null ? [{ name, curve }] : [],
  );
  const [first, ...others] = curves;
  if (!first) return failed(noTemperatures(reading.name));
  const placed = placeMoment(moment, reading);
  if (placed === null) return failed(noClock(reading.name, said));
  const hottest = others.reduce(
    (best, each) => (peakOf(each.curve).tempC > peakOf(best.curve).tempC ? each : best),
    first,
  );
  const peakAtSeconds = peakOf(hottest.curve).seconds;
  const unloading = placedUnloading(reading, { curve: hottest.curve, peakAtSeconds }, record);
  if (!unloading.ok) return unloading;
  const unloaded = unloading.value;
  const { startedSeconds, notes } = onTheWayDown(placed, moment, {
    peakAtSeconds,
    lastSeconds: Math.max(hottest.curve.timesSeconds.at(-1) ?? 0, unloaded?.atSeconds ?? 0),
  });
  const ofDay = reading.startOfDaySeconds;
  return ok({
    started: {
      secondsOfDay: ofDay === null ? null : (ofDay + startedSeconds) % 86_400,
      elapsedSeconds: startedSeconds,
    },
    log: {
      logName: reading.name,
      channel: hottest.name,
      curve: hottest.curve,
      startedSeconds,
      unloaded:
        unloaded === null || unloaded.atSeconds === null
          ? null
          : { seconds: unloaded.atSeconds, tempC: unloaded.tempC },
    },
    notes,
    isFahrenheit: reading.unit === "F",
  });
}

/** Glaze pings on the way down: a time of day that comes before the peak and again after it is the later one. */
function onTheWayDown(
  placed: number,
  moment: Moment,
  { peakAtSeconds, lastSeconds }: { readonly peakAtSeconds: number; readonly lastSeconds: number },
): { readonly startedSeconds: number; readonly notes: readonly string[] } {
  const isFree = moment.kind === "clock" && moment.date === null;
  const days = Math.max(0, Math.ceil((peakAtSeconds - placed) / DAY_SECONDS));
  const later = placed + days * DAY_SECONDS;
  if (!isFree || days === 0 || later > lastSeconds) return { startedSeconds: placed, notes: [] };
  return {
    startedSeconds: later,
    notes: [
      "its time of day comes more than once in the log and was taken on the way down; put the date into --started to be sure",
    ],
  };
}

function notAMoment(said: string): Problem {
  return {
    code: "pings/not-a-moment",
    where: "--started",
    what: `"${said}" is not a moment`,
    expected: MOMENT_FORMS,
    fix: '--started "21:05"',
  };
}

function noStart(log: string): Problem {
  return {
    code: "pings/no-start",
    where: "--log",
    what: `nothing says when the recording began, so ${log} cannot be laid beside it`,
    expected: `--started with ${MOMENT_FORMS}`,
    fix: '--started "21:05"',
  };
}

function noClock(log: string, said: string): Problem {
  return {
    code: "pings/no-clock",
    where: "--started",
    what: `"${said}" is a clock time, and ${log} has no clock or no date to place it on`,
    expected: "a time since the start of the log (h:mm)",
    fix: '--started "+14:05"',
  };
}

function noTemperatures(log: string): Problem {
  return {
    code: "pings/no-temperatures",
    where: log,
    what: "no temperature column has two readings or more",
    expected: "a column of temperatures",
    fix: "name the column with --column",
  };
}
