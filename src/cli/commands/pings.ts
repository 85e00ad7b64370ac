import { pingsCharts } from "../../core/charts/pingsCharts.ts";
import { reviewPicture } from "../../core/charts/reviewPicture.ts";
import { hasWarning } from "../../core/findings/ordered.ts";
import { clippedProblem } from "../../core/pings/clippedProblem.ts";
import { type PingSettings, USUAL_SETTINGS } from "../../core/pings/Ping.ts";
import { reviewPings } from "../../core/pings/reviewPings.ts";
import { failed, ok, type Problem, type Result } from "../../core/problem.ts";
import { pingsDocument } from "../../core/reports/documents/pingsDocument.ts";
import { pingsHtml, pingsText } from "../../core/reports/pingsBlocks.ts";
import { writtenQuantity } from "../../core/units/parseQuantity.ts";
import { printDuration } from "../../core/units/print.ts";
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
import { drawn, writePictures } from "../pictures.ts";
import { type RecordingStartOptions, recordingStart } from "../recordingStart.ts";

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
    html: async () => pingsHtml(review, { unit, charts: await drawn(charts) }),
    picture: () => reviewPicture(Object.values(charts).map((chart) => chart(false))),
  });
  if (!written.ok) return refuse(written.problems, options);
  if (options.json) answerJson(pingsDocument(review));
  else answer(pingsText(review, { unit, paint: paintFor(options) }));
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
