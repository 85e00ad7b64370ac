import { basename } from "node:path";
import { type FleetRow, fleetRow } from "../core/answers/fleetAnswer.ts";
import { reviewAnswer } from "../core/answers/reviewAnswer.ts";
import { hasWarning } from "../core/findings/Finding.ts";
import type { LogOptions, LogSaid } from "../core/log/reading/LogReading.ts";
import { ok, type Problem, type Result } from "../core/problem.ts";
import type { Paint } from "../core/reports/Block.ts";
import { explainText } from "../core/reports/explainText.ts";
import { type ComparisonPart, comparisonPart } from "../core/review/compareFirings.ts";
import type { FiringReview } from "../core/review/FiringReview.ts";
import { reviewFiring } from "../core/review/reviewFiring.ts";
import { hiddenEscaped } from "../core/text/escape.ts";
import type { PlannedFiring } from "../core/trials/NextTest.ts";
import type { TemperatureUnit } from "../core/units/temperature.ts";
import { readEarlierLogs } from "../node/filesBeside.ts";
import { readFiring, readRecordedLog } from "../node/readFiring.ts";
import { EXIT, paintWith } from "./conversation.ts";
import { type ReviewWays, reviewedLog } from "./reviewedLog.ts";
import { textOfAnswer } from "./showAnswer.ts";

/** What is done with every log of a command, in words that can be sent to a worker. */
export type LogTask = ReviewTask | CompareTask | ExplainTask;

interface TextWays {
  readonly unit: TemperatureUnit | null;
  readonly coloured: boolean;
}

/** Each log reviewed, as text or as one line of JSON. */
interface ReviewTask extends TextWays {
  readonly kind: "review";
  readonly ways: Omit<ReviewWays, "earlier">;
  /** Paths of earlier logs; null when none were given. */
  readonly kilnLogs: readonly string[] | null;
  /** Parts that are asked for by name; null for the screen alone. */
  readonly more: readonly string[] | null;
  /** Only what a summary of many needs, and no text of each. */
  readonly isSummed: boolean;
  readonly asLine: boolean;
}

/** Each log's part of a comparison. */
interface CompareTask {
  readonly kind: "compare";
  readonly logOptions: Omit<LogOptions, "name">;
  /** Whether the trials of the firings are studied as well. */
  readonly isStudied: boolean;
}

/** How each log was read, as text. */
interface ExplainTask extends TextWays {
  readonly kind: "explain";
  readonly ways: Omit<ReviewWays, "earlier">;
}

/** One log of a command. */
export interface LogItem {
  readonly path: string;
  /** First or last of all, whose thermocouples are compared. */
  readonly isEnd: boolean;
}

/** What one log came to. */
export interface LogOutcome {
  readonly path: string;
  /** For standard output; empty when there is nothing to say. */
  readonly text: string;
  /** For standard error, unless quiet. */
  readonly remarks: readonly string[];
  readonly problems: readonly Problem[];
  readonly exit: number;
  /** Only of a summary of many. */
  readonly row: FleetRow | null;
  /** Only of a comparison. */
  readonly part: ComparisonPart | null;
  /** Only of a comparison whose trials are studied. */
  readonly planned: PlannedFiring | null;
}

/** The work on one log: a map from its files to what it came to, whatever was worked on before. */
export type LogWork = (item: LogItem) => Promise<LogOutcome>;

/** Prepares a task; a fault of our own on one log is told as its problem, and stops no other. */
export async function logWork(task: LogTask): Promise<LogWork> {
  const work = await taskWork(task);
  return async (item) => {
    try {
      return await work(item);
    } catch (error) {
      return faultOutcome(item, error instanceof Error ? error.message : String(error));
    }
  };
}

/** What stands for a log on which undunted itself failed. */
export function faultOutcome({ path }: LogItem, why: string): LogOutcome {
  return {
    ...NOTHING,
    path,
    exit: EXIT.ourBug,
    problems: [
      {
        code: "undunted/fault",
        where: path,
        what: `undunted failed on it (${why})`,
        expected: "no such thing",
        fix: "review it alone, and report what is said then",
      },
    ],
  };
}

const NOTHING: LogOutcome = {
  path: "",
  text: "",
  remarks: [],
  problems: [],
  exit: EXIT.fine,
  row: null,
  part: null,
  planned: null,
};

async function taskWork(task: LogTask): Promise<LogWork> {
  if (task.kind === "compare") return (item) => compared(item, task);
  if (task.kind === "explain")
    return async ({ path }) => ({
      ...NOTHING,
      path,
      ...(await explainedLog(path, task.ways, paintWith(task.coloured))),
    });
  const earlier = task.kilnLogs === null ? null : await readEarlierLogs(task.kilnLogs);
  return async ({ path }) => {
    const { review, remarks } = await reviewedLog(path, { ...task.ways, earlier });
    if (!review.ok) return unread(path, review.problems);
    if (task.isSummed) {
      const row = fleetRow(review.value, task.unit ?? readersUnit(review.value));
      const isNo = hasWarning(review.value.findings);
      return { ...NOTHING, path, row, remarks, exit: isNo ? EXIT.no : EXIT.fine };
    }
    const text = task.asLine ? ok(await line(review.value)) : inText(review.value, task);
    if (!text.ok) return unread(path, text.problems);
    const exit = hasWarning(review.value.findings) ? EXIT.no : EXIT.fine;
    return { ...NOTHING, path, text: text.value, remarks, exit };
  };
}

function unread(path: string, problems: readonly Problem[]): LogOutcome {
  return { ...NOTHING, path, problems, exit: EXIT.wrongUse };
}

async function line(review: FiringReview): Promise<string> {
  const { reviewDocument } = await import("../core/reports/documents/reviewDocument.ts");
  return hiddenEscaped(JSON.stringify(reviewDocument(review)));
}

function inText(review: FiringReview, { unit, coloured, more }: ReviewTask): Result<string> {
  const answer = reviewAnswer(review, { unit: unit ?? readersUnit(review) });
  return textOfAnswer(answer, more === null ? {} : { more }, paintWith(coloured));
}

/** The unit in which a review is shown unless another is asked for: a log in °F is read by someone who reads °F. */
export function readersUnit(review: FiringReview): TemperatureUnit {
  return review.reading.unit === "F" ? "F" : "C";
}

async function compared({ path, isEnd }: LogItem, task: CompareTask): Promise<LogOutcome> {
  const files = await readFiring(path, {
    options: task.logOptions,
    recordPath: null,
    schedulePath: null,
  });
  const review = files.ok ? reviewFiring({ ...files.value, heard: [] }) : files;
  if (!files.ok || !review.ok) return unread(path, review.ok ? [] : review.problems);
  const part = comparisonPart(review.value);
  const { record, plan } = files.value;
  return {
    ...NOTHING,
    path,
    planned: task.isStudied ? { review: review.value, record, plan } : null,
    part: {
      ...part,
      zones: isEnd ? part.zones : [],
    },
  };
}

/** The line that stands for a log that could not be read. */
export async function unreadLine({ path, problems }: LogOutcome): Promise<string> {
  const { unreadLogLine } = await import("../core/reports/documents/comparisonDocument.ts");
  return hiddenEscaped(JSON.stringify(unreadLogLine({ name: basename(path), path }, problems)));
}

/** How a log was read, in text; where it could not be read, how far, with its problems. */
async function explainedLog(
  path: string,
  ways: { readonly logOptions: LogSaid; readonly recordPath: string | null },
  paint: Paint,
): Promise<{
  readonly text: string;
  readonly problems: readonly Problem[];
  readonly exit: number;
}> {
  const { logOptions, recordPath } = ways;
  const log = await readRecordedLog(path, { options: logOptions, recordPath });
  if (!log.ok) return { text: "", problems: log.problems, exit: EXIT.wrongUse };
  const { reading, steps } = log.value;
  const name = path === "-" ? "standard input" : basename(path);
  const text = explainText({ name, steps, reading: reading.ok ? reading.value : null }, paint);
  return reading.ok
    ? { text, problems: [], exit: EXIT.fine }
    : { text, problems: reading.problems, exit: EXIT.wrongUse };
}
