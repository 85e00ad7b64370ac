import { answerHtml } from "../../core/answers/answerHtml.ts";
import { pingsAnswer } from "../../core/answers/sideAnswers.ts";
import { pingsCharts } from "../../core/charts/pingsCharts.ts";
import { reviewPicture } from "../../core/charts/reviewPicture.ts";
import { peakOf } from "../../core/curve/Curve.ts";
import { hasWarning } from "../../core/findings/Finding.ts";
import { placedUnloading } from "../../core/firing/placedMoments.ts";
import { type PingSettings, USUAL_SETTINGS } from "../../core/pings/Ping.ts";
import { type RecordingStart, reviewPings } from "../../core/pings/PingReview.ts";
import type { LogBeside } from "../../core/pings/pingTemperatures.ts";
import { clippedProblem } from "../../core/pings/soundProblems.ts";
import { failed, ok, type Problem, type Result } from "../../core/problem.ts";
import { MOMENT_FORMS, type Moment, parseMoment, placeMoment } from "../../core/record/moment.ts";
import { pingsDocument } from "../../core/reports/documents/pingsDocument.ts";
import { printDuration } from "../../core/text/quantities.ts";
import { writtenQuantity } from "../../core/units/quantity.ts";
import { type FiringFiles, readFiring } from "../../node/readFiring.ts";
import { readSound } from "../../node/readSound.ts";
import {
  answer,
  answerJson,
  type CommonOptions,
  EXIT,
  paintFor,
  refuse,
  say,
} from "../conversation.ts";
import { type LogCommandOptions, logOptionsFrom } from "../options.ts";
import { drawn, writePictures } from "../pictures.ts";
import { textOfAnswer } from "../showAnswer.ts";

interface PingsOptions extends CommonOptions, PingSettingOptions, RecordingStartOptions {
  readonly channel?: "left" | "right" | "mix";
  readonly clipped?: boolean;
}

/** `undunted pings RECORDING`: clicks in a recording made beside cooling ware or through the kiln wall. */
export async function run(path: string, options: PingsOptions): Promise<number> {
  const settings = pingSettingsFrom(options);
  const start = await recordingStart(options);
  if (!settings.ok || !start.ok)
    return refuse(
      [settings, start].flatMap((result) => (result.ok ? [] : result.problems)),
      options,
    );
  const read = await readSound(path, {
    channel: options.channel ?? null,
    settings: settings.value,
    progress: (seconds, whole) =>
      say(`heard ${printDuration(seconds)} of ${printDuration(whole)}`, options),
  });
  if (!read.ok) return refuse(read.problems, options);
  const { sound, heard } = read.value;
  const clipped = options.clipped ? null : clippedProblem(heard.pings, path);
  if (clipped !== null) return refuse([clipped], options);
  const { started, log, notes } = start.value;
  const review = reviewPings({
    sound: { ...sound, notes: [...sound.notes, ...notes] },
    heard,
    started,
    log,
  });
  const unit = options.unit ?? (start.value.isFahrenheit ? "F" : "C");
  const charts = pingsCharts(review, unit);
  const written = await writePictures(options, {
    html: async () => answerHtml(pingsAnswer(review, { unit, charts: await drawn(charts) })),
    picture: () => reviewPicture(Object.values(charts).map((chart) => chart(false))),
  });
  if (!written.ok) return refuse(written.problems, options);
  if (options.json) answerJson(pingsDocument(review));
  else {
    const text = textOfAnswer(pingsAnswer(review, { unit }), options, paintFor(options));
    if (!text.ok) return refuse(text.problems, options);
    answer(text.value);
  }
  return hasWarning(review.findings) ? EXIT.no : EXIT.fine;
}

/** What the command line says about how clicks are told from the rest. */
interface PingSettingOptions {
  readonly threshold?: string;
  readonly attack?: string;
  readonly apart?: string;
  readonly floor?: string;
}

interface Asked {
  readonly option: string;
  readonly units: Readonly<Record<string, number>>;
  readonly least: number;
  readonly most: number;
  readonly example: string;
}

const DECIBELS = { db: 1, "": 1 };
const TIMES = { ms: 0.001, s: 1 };

const ASKED: Readonly<Record<keyof PingSettingOptions, Asked>> = {
  threshold: { option: "--threshold", units: DECIBELS, least: 3, most: 80, example: "12dB" },
  attack: { option: "--attack", units: DECIBELS, least: 1, most: 60, example: "7dB" },
  apart: { option: "--apart", units: TIMES, least: 0.01, most: 5, example: "60ms" },
  floor: { option: "--floor", units: TIMES, least: 2, most: 60, example: "10s" },
};

/** How clicks are told from the rest, what was not given being the usual; all problems at once. */
function pingSettingsFrom(given: PingSettingOptions): Result<PingSettings> {
  const values: Partial<Record<keyof PingSettingOptions, number>> = {};
  const problems: Problem[] = [];
  for (const name of Object.keys(ASKED) as (keyof PingSettingOptions)[]) {
    const text = given[name];
    if (text === undefined) continue;
    const value = settingOf(text, ASKED[name]);
    if (value.ok) values[name] = value.value;
    else problems.push(...value.problems);
  }
  if (problems.length > 0) return failed(...problems);
  return ok({
    thresholdDb: values.threshold ?? USUAL_SETTINGS.thresholdDb,
    attackDb: values.attack ?? USUAL_SETTINGS.attackDb,
    apartSeconds: values.apart ?? USUAL_SETTINGS.apartSeconds,
    floorSeconds: values.floor ?? USUAL_SETTINGS.floorSeconds,
  });
}

function settingOf(text: string, { option, units, least, most, example }: Asked): Result<number> {
  const written = writtenQuantity(text);
  const value = written ? written.value * (units[written.unit] ?? Number.NaN) : Number.NaN;
  if (value >= least && value <= most) return ok(value);
  const [unit] = Object.keys(units) as [string];
  const factor = units[unit]!;
  const bounds = `${least / factor} to ${most / factor} ${unit === "db" ? "dB" : unit}`;
  return failed({
    code: "command/ping-setting",
    where: option,
    what: `"${text}" cannot be used`,
    expected: `${bounds}, with its unit`,
    fix: `${option} ${example}`,
  });
}

/** What the command line says about when a recording began and about the log beside it. */
interface RecordingStartOptions extends LogCommandOptions {
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
async function recordingStart(options: RecordingStartOptions): Promise<Result<PlacedRecording>> {
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
