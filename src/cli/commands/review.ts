import { answerHtml } from "../../core/answers/answerHtml.ts";
import { type FleetRow, fleetAnswer } from "../../core/answers/fleetAnswer.ts";
import { reviewAnswer } from "../../core/answers/reviewAnswer.ts";
import { reviewCharts } from "../../core/charts/chartsOf.ts";
import { reviewPicture } from "../../core/charts/reviewPicture.ts";
import { hasWarning } from "../../core/findings/Finding.ts";
import { failed, ok, type Problem, type Result } from "../../core/problem.ts";
import { MOMENT_FORMS, parseMoment, type SoundSaid, soundSaid } from "../../core/record/moment.ts";
import type { FiringReview } from "../../core/review/FiringReview.ts";
import { readEarlierLogs } from "../../node/filesBeside.ts";
import { logPaths } from "../../node/logPaths.ts";
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
import { type LogTask, readersUnit } from "../logWork.ts";
import { manyLogs, workersFrom } from "../manyLogs.ts";
import { type LogCommandOptions, logOptionsFrom } from "../options.ts";
import { drawn, writePictures } from "../pictures.ts";
import { type ReviewWays, reviewedLog } from "../reviewedLog.ts";
import { textOfAnswer } from "../showAnswer.ts";
import { tellLogs } from "../tellLogs.ts";

interface ReviewOptions extends CommonOptions, LogCommandOptions {
  readonly record?: string;
  readonly against?: string;
  readonly heard?: readonly string[];
  readonly kiln?: readonly string[];
  readonly explain?: boolean;
  readonly workers?: string;
  readonly all?: boolean;
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
  const task = taskOf(ways, options, paths.length);
  const rows: FleetRow[] = [];
  const exit = await tellLogs(manyLogs(paths, task, workers), {
    total: paths.length,
    options,
    textOf: ({ text, row }) => {
      if (row !== null) rows.push(row);
      return text;
    },
  });
  return rows.length === 0 ? exit : Math.max(exit, summed(rows, options));
}

/** More firings than this are summed up, unless each is asked for. */
const MOST_TOLD = 3;

/** Many firings on one screen. */
function summed(rows: readonly FleetRow[], options: ReviewOptions): number {
  const unit = options.unit ?? (rows.every((row) => row.unit === "F") ? "F" : "C");
  const text = textOfAnswer(fleetAnswer(rows, unit), options, paintFor(options));
  if (!text.ok) return refuse(text.problems, options);
  answer(text.value);
  if (options.more === undefined)
    say("--all prints the screen of each; --json-lines is for a program", options);
  return EXIT.fine;
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

function taskOf(ways: Asked["ways"], options: ReviewOptions, logs: number): LogTask {
  const shown = { ways, unit: options.unit ?? null, coloured: coloured(options) };
  if (options.explain) return { kind: "explain", ...shown };
  const kilnLogs = options.kiln ?? null;
  const more = options.more ?? null;
  const asLine = options.jsonLines === true;
  const isSummed = logs > MOST_TOLD && !asLine && !options.all;
  return { kind: "review", ...shown, kilnLogs, more, asLine, isSummed };
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
      answerHtml(
        reviewAnswer(review, {
          unit,
          charts: await drawn<string>({
            firing: (dark) => charts.firing({ unit, dark }),
            cooling: (dark) => charts.cooling({ unit, dark }),
            cones: (dark) => charts.cones({ unit, dark }),
            ...(strain && { strain: (dark: boolean) => strain({ unit, dark }) }),
          }),
        }),
      ),
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
  } else {
    const text = textOfAnswer(reviewAnswer(review, { unit }), options, paintFor(options));
    if (!text.ok) return refuse(text.problems, options);
    answer(text.value);
  }
  return hasWarning(review.findings) ? EXIT.no : EXIT.fine;
}

/** What was heard, from `--heard "a crack 14:05" +11:30`; a `command/heard` for each without a time. */
function heardFrom(given: readonly string[]): Result<readonly SoundSaid[]> {
  const sounds = given.map(soundSaid);
  const understood = sounds.filter((sound) => sound !== null);
  if (understood.length === given.length) return ok(understood);
  const together = given.join(" ");
  if (given.length > 1 && soundSaid(together) !== null && understood.length < 2)
    return failed({
      ...problem(together, `"${given.find((_, i) => sounds[i] === null)}" has no time`),
      fix: `put what was heard in quotes, together with its time: --heard "${together}"`,
    });
  return failed(...given.filter((_, i) => sounds[i] === null).map((text) => timeless(text)));
}

/** The end of a line that looks like a moment. */
const LIKE_A_MOMENT = /(?:\+\s*)?\d[\d:.T -]*(?:\s*[ap]\.?m\.?|h)?$/i;

function timeless(text: string): Problem {
  const misread = LIKE_A_MOMENT.exec(text)?.[0];
  if (misread === undefined)
    return problem(text, `"${text}" has no time, so it cannot be placed in the log`);
  if (parseMoment(misread) !== null)
    return {
      ...problem("", `"${text}" names more than one time`),
      fix: 'one pair of quotes for each sound: --heard "a crack 14:05" "a crack 15:10"',
    };
  const words = text.slice(0, -misread.length);
  return problem(words, `"${misread}" is not a moment that can be read`);
}

function problem(words: string, what: string): Problem {
  const before = words.trim() === "" ? "" : `${words.trim()} `;
  return {
    code: "command/heard",
    where: "--heard",
    what,
    expected: `words, then when it was heard: ${MOMENT_FORMS}`,
    fix: `--heard "${before}14:05", with a 24-hour clock`,
  };
}

/** Options of `review` that may not stand beside each other. */
interface Given extends CommonOptions {
  readonly record?: string;
  readonly heard?: readonly string[];
  readonly explain?: boolean;
}

/** Makes one answer, so it can be asked of one log only; the first that is given is told. */
const OF_ONE_LOG = ["json", "html", "chart", "record", "heard"] as const;
/** Other forms of the answer than lines of JSON, and than the text of --explain. */
const BESIDE_LINES = ["json", "html", "chart", "explain"] as const;
const BESIDE_EXPLAIN = ["json", "html", "chart", "heard", "against"] as const;

/** What contradicts itself in a command line of `review`; null when nothing does. */
function reviewContradiction(logs: number, options: Given): Problem | null {
  const given = (names: readonly string[]) =>
    names.find((name) => options[name as keyof Given] !== undefined);
  const beside = options.jsonLines ? given(BESIDE_LINES) : undefined;
  if (beside !== undefined)
    return two("--json-lines", beside, "lines of JSON are the whole answer");
  const explained = options.explain ? given(BESIDE_EXPLAIN) : undefined;
  if (explained !== undefined)
    return two(
      "--explain",
      explained,
      "it tells in text how a log was read, and nothing of the firing",
    );
  const ofOne = given(OF_ONE_LOG);
  if (logs === 1 || ofOne === undefined) return null;
  return {
    code: "command/one-log",
    where: `--${ofOne}`,
    what: `${logs} logs are given`,
    expected: "one log, because this option speaks of one firing",
    fix: "one log at a time; or --json-lines for one JSON document a line, or undunted compare for a table of several",
  };
}

function two(one: string, other: string, because: string): Problem {
  return {
    code: "command/contradiction",
    where: "command line",
    what: `both ${one} and --${other} are given`,
    expected: `one of them: ${because}`,
    fix: "drop one",
  };
}
