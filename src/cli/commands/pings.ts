import { pingsCharts } from "../../core/charts/pingsCharts.ts";
import { reviewPicture } from "../../core/charts/reviewPicture.ts";
import { hasWarning } from "../../core/findings/ordered.ts";
import { clippedProblem } from "../../core/pings/clippedProblem.ts";
import { reviewPings } from "../../core/pings/reviewPings.ts";
import { pingsDocument } from "../../core/reports/documents/pingsDocument.ts";
import { pingsHtml } from "../../core/reports/pingsHtml.ts";
import { pingsText } from "../../core/reports/pingsText.ts";
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
import { type PingSettingOptions, pingSettingsFrom } from "../pingSettings.ts";
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
