import { reviewCharts } from "../../core/charts/chartsOf.ts";
import { reviewPicture } from "../../core/charts/reviewPicture.ts";
import { hasWarning } from "../../core/findings/ordered.ts";
import type { FiringReview } from "../../core/firing/FiringReview.ts";
import { reviewFiring } from "../../core/firing/reviewFiring.ts";
import type { SoundSaid } from "../../core/firing/soundSaid.ts";
import type { LogOptions } from "../../core/log/LogReading.ts";
import type { Problem, Result } from "../../core/problem.ts";
import { reviewDocument } from "../../core/reports/documents/reviewDocument.ts";
import { reviewHtml } from "../../core/reports/reviewHtml.ts";
import { reviewText } from "../../core/reports/reviewText.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import { readFiring } from "../../node/readFiring.ts";
import { aroundFiring } from "../aroundFiring.ts";
import {
  answer,
  answerJson,
  type CommonOptions,
  EXIT,
  paintFor,
  refuse,
  say,
} from "../conversation.ts";
import { heardFrom } from "../heardFrom.ts";
import { type LogCommandOptions, logOptionsFrom } from "../options.ts";
import { drawn, writePictures } from "../pictures.ts";

interface ReviewOptions extends CommonOptions, LogCommandOptions {
  readonly record?: string;
  readonly against?: string;
  readonly heard?: readonly string[];
  readonly kiln?: readonly string[];
}

/** `undunted review LOG…`: what these firings did. One broken log does not stop the rest. */
export async function run(paths: readonly string[], options: ReviewOptions): Promise<number> {
  const logOptions = logOptionsFrom(options);
  const heard = heardFrom(options.heard ?? []);
  if (!logOptions.ok) return refuse(logOptions.problems, options);
  if (!heard.ok) return refuse(heard.problems, options);
  const alone = onlyForOne(paths, options);
  if (alone) return refuse([alone], options);
  let exit: number = EXIT.fine;
  for (const [index, path] of paths.entries()) {
    const review = await reviewed(path, logOptions.value, { options, heard: heard.value });
    if (index > 0 && !options.json) answer("");
    const code = review.ok ? await shown(review.value, options) : refuse(review.problems, options);
    exit = Math.max(exit, code);
  }
  return exit;
}

/** Reads and reviews one log with what lies beside it. */
async function reviewed(
  path: string,
  logOptions: Omit<LogOptions, "name">,
  { options, heard }: { readonly options: ReviewOptions; readonly heard: readonly SoundSaid[] },
): Promise<Result<FiringReview>> {
  const files = await readFiring(path, {
    options: logOptions,
    recordPath: options.record ?? null,
    schedulePath: options.against ?? null,
  });
  if (!files.ok) return files;
  for (const remark of files.value.remarks) say(remark, options);
  const around = await aroundFiring(path, files.value, {
    options,
    asWritten: Object.keys(logOptions).length === 0,
  });
  return reviewFiring({ ...files.value, heard, ...around });
}

async function shown(review: FiringReview, options: ReviewOptions): Promise<number> {
  const unit = options.unit ?? readersUnit(review);
  const charts = reviewCharts(review);
  const { strain } = charts;
  const written = await writePictures(options, {
    html: async () =>
      reviewHtml(review, {
        unit,
        charts: await drawn<string>({
          firing: (dark) => charts.firing({ unit, dark }),
          cooling: (dark) => charts.cooling({ unit, dark }),
          cones: (dark) => charts.cones({ unit, dark }),
          ...(strain && { strain: (dark: boolean) => strain({ unit, dark }) }),
        }),
      }),
    picture: () =>
      reviewPicture([
        charts.firing({ unit }),
        charts.cooling({ unit }),
        ...(strain ? [strain({ unit })] : []),
        charts.cones({ unit }),
      ]),
  });
  if (!written.ok) return refuse(written.problems, options);
  if (options.json) answerJson(reviewDocument(review));
  else answer(reviewText(review, { unit, paint: paintFor(options) }));
  return hasWarning(review.findings) ? EXIT.no : EXIT.fine;
}

/** What makes one answer can be asked of one log only. */
function onlyForOne(paths: readonly string[], options: ReviewOptions): Problem | null {
  const asked = (["json", "html", "chart", "record", "heard"] as const).find(
    (name) => options[name] !== undefined,
  );
  if (paths.length === 1 || asked === undefined) return null;
  return {
    code: "command/one-log",
    where: `--${asked}`,
    what: `${paths.length} logs are given`,
    expected: "one log, because this option speaks of one firing",
    fix: "one log at a time, or undunted compare for a table of several",
  };
}

/** A log in °F is read by someone who reads °F. */
function readersUnit(review: FiringReview): TemperatureUnit {
  return review.reading.unit === "F" ? "F" : "C";
}
