import { reviewCharts } from "../../core/charts/chartsOf.ts";
import { reviewPicture } from "../../core/charts/reviewPicture.ts";
import { hasWarning } from "../../core/findings/ordered.ts";
import type { FiringReview } from "../../core/firing/FiringReview.ts";
import { failed, ok, type Result } from "../../core/problem.ts";
import { reviewHtml, reviewText } from "../../core/reports/reviewBlocks.ts";
import { logPaths } from "../../node/logPaths.ts";
import { readEarlierLogs } from "../../node/readEarlierLogs.ts";
import {
  answer,
  answerJson,
  type CommonOptions,
  coloured,
  EXIT,
  paintFor,
  refuse,
  say,
} from "../conversation.ts";
import { heardFrom } from "../heardFrom.ts";
import { type LogTask, readersUnit } from "../logWork.ts";
import { manyLogs, workersFrom } from "../manyLogs.ts";
import { type LogCommandOptions, logOptionsFrom } from "../options.ts";
import { drawn, writePictures } from "../pictures.ts";
import { reviewContradiction } from "../reviewContradiction.ts";
import { type ReviewWays, reviewedLog } from "../reviewedLog.ts";
import { tellLogs } from "../tellLogs.ts";

interface ReviewOptions extends CommonOptions, LogCommandOptions {
  readonly record?: string;
  readonly against?: string;
  readonly heard?: readonly string[];
  readonly kiln?: readonly string[];
  readonly explain?: boolean;
  readonly workers?: string;
}

/** What a command line asks, checked. */
interface Asked {
  readonly paths: readonly string[];
  readonly ways: Omit<ReviewWays, "earlier">;
  readonly workers: number | null;
}

/** `undunted review LOG…`: what these firings did. One broken log does not stop the rest. */
export async function run(given: readonly string[], options: ReviewOptions): Promise<number> {
  const asked = await askedOf(given, options);
  if (!asked.ok) return refuse(asked.problems, options);
  const { paths, ways, workers } = asked.value;
  const [alone, another] = paths;
  if (alone !== undefined && another === undefined && !options.jsonLines && !options.explain)
    return one(alone, ways, options);
  return tellLogs(manyLogs(paths, taskOf(ways, options), workers), {
    total: paths.length,
    options,
    textOf: ({ text }) => text,
  });
}

async function askedOf(given: readonly string[], options: ReviewOptions): Promise<Result<Asked>> {
  const logOptions = logOptionsFrom(options);
  const heard = heardFrom(options.heard ?? []);
  const workers = workersFrom(options.workers);
  const files = await logPaths(given);
  if (!logOptions.ok || !heard.ok || !workers.ok || !files.ok)
    return failed(
      ...[logOptions, heard, workers, files].flatMap((part) => (part.ok ? [] : part.problems)),
    );
  const { paths, remarks } = files.value;
  const contradiction = reviewContradiction(paths.length, options);
  if (contradiction !== null) return failed(contradiction);
  for (const remark of remarks) say(remark, options);
  return ok({
    paths,
    workers: workers.value,
    ways: {
      logOptions: logOptions.value,
      heard: heard.value,
      recordPath: options.record ?? null,
      schedulePath: options.against ?? null,
      offers: paths.length === 1 && !options.quiet,
    },
  });
}

function taskOf(ways: Asked["ways"], options: ReviewOptions): LogTask {
  const shown = { ways, unit: options.unit ?? null, coloured: coloured(options) };
  if (options.explain) return { kind: "explain", ...shown };
  const kilnLogs = options.kiln ?? null;
  return { kind: "review", ...shown, kilnLogs, asLine: options.jsonLines === true };
}

/** One firing, with its pictures where they are asked for. */
async function one(path: string, ways: Asked["ways"], options: ReviewOptions): Promise<number> {
  const earlier = options.kiln === undefined ? null : await readEarlierLogs(options.kiln);
  const { review, remarks } = await reviewedLog(path, { ...ways, earlier });
  for (const remark of remarks) say(remark, options);
  return review.ok ? shown(review.value, options) : refuse(review.problems, options);
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
  if (options.json) {
    const { reviewDocument } = await import("../../core/reports/documents/reviewDocument.ts");
    answerJson(reviewDocument(review));
  } else answer(reviewText(review, { unit, paint: paintFor(options) }));
  return hasWarning(review.findings) ? EXIT.no : EXIT.fine;
}
