import { basename } from "node:path";
import { type Alignment, AT_PEAK } from "../core/firing/Alignment.ts";
import { parseAlignment } from "../core/firing/parseAlignment.ts";
import { failed, ok, type Result } from "../core/problem.ts";
import { logPaths } from "../node/logPaths.ts";
import { type CommonOptions, say } from "./conversation.ts";
import type { LogTask } from "./logWork.ts";
import { workersFrom } from "./manyLogs.ts";
import { type LogCommandOptions, logOptionsFrom } from "./options.ts";

/** Options of `undunted compare`. */
export interface CompareOptions extends CommonOptions, LogCommandOptions {
  readonly workers?: string;
  readonly next?: string;
  readonly kiln?: readonly string[];
  readonly glaze?: readonly string[];
  readonly align?: string;
  readonly base?: string;
}

/** Most firings whose trials and differences are studied together. */
export const MOST_STUDIED = 200;

/** What a comparison is asked for. */
interface CompareAsked {
  readonly paths: readonly string[];
  readonly task: LogTask;
  readonly workers: number | null;
  readonly shown: Shown;
}

/** How the firings are laid beside each other. */
interface Shown {
  readonly alignment: Alignment;
  /** Path of the log that the others are held against; null for the first. */
  readonly base: string | null;
}

/** What the arguments and options ask for, or all that is wrong with them. */
export async function compareAsked(
  given: readonly string[],
  options: CompareOptions,
): Promise<Result<CompareAsked>> {
  const logOptions = logOptionsFrom(options);
  const workers = workersFrom(options.workers);
  const files = await logPaths(given);
  const lines = linesAlone(options);
  const alignment = alignmentFrom(options);
  if (!logOptions.ok || !workers.ok || !files.ok || !lines.ok || !alignment.ok)
    return failed(
      ...[logOptions, workers, files, lines, alignment].flatMap((part) =>
        part.ok ? [] : part.problems,
      ),
    );
  for (const remark of files.value.remarks) say(remark, options);
  const { paths } = files.value;
  const isStudied = !options.jsonLines && paths.length <= MOST_STUDIED;
  if (!options.jsonLines && !isStudied)
    say(
      `trial tiles and what differed are studied for at most ${MOST_STUDIED} logs; of these ${paths.length} only the table is shown`,
      options,
    );
  return ok({
    paths,
    task: { kind: "compare", logOptions: logOptions.value, isStudied },
    workers: workers.value,
    shown: { alignment: alignment.value, base: options.base ?? null },
  });
}

function linesAlone(options: CompareOptions): Result<null> {
  const beside = (["json", "html", "chart", "align", "base", "glaze", "kiln"] as const).find(
    (name) => options[name] !== undefined,
  );
  if (!options.jsonLines || beside === undefined) return ok(null);
  return failed({
    code: "command/contradiction",
    where: "command line",
    what: `both --json-lines and --${beside} are given`,
    expected: "one of them: lines of JSON are the whole answer",
    fix: "drop one",
  });
}

function alignmentFrom({ align, unit = "C" }: CompareOptions): Result<Alignment> {
  return align === undefined ? ok(AT_PEAK) : parseAlignment(align, { unit, where: "--align" });
}

/** Place of the log that was named, by its path or its file name. */
export function baseOf(named: string | null, paths: readonly string[]): Result<number> {
  if (named === null) return ok(0);
  const path = paths.indexOf(named);
  const at = path >= 0 ? path : paths.findIndex((each) => basename(each) === basename(named));
  if (at >= 0) return ok(at);
  return failed({
    code: "command/no-such-base",
    where: "--base",
    what: `${named} is not among the logs that were read`,
    expected: "one of the logs that are compared",
    fix: `name one of them: ${paths.slice(0, 5).join(", ")}`,
  });
}
