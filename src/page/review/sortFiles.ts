import { parseRecordFile } from "../../core/firing/record.ts";
import { failed, ok, type Problem, type Result } from "../../core/problem.ts";
import { parseSchedule } from "../../core/schedule/scheduleFile.ts";
import type { KeptFile } from "../bench/KeptFile.ts";
import { textOf } from "../worker/readGroup.ts";

/** Files of one firing, told apart by what is in them. */
export interface SortedFiles {
  readonly log: KeptFile | null;
  readonly record: KeptFile | null;
  readonly schedule: KeptFile | null;
}

type Kind = keyof SortedFiles;

/** Longest text that can be a record or a schedule [bytes]. */
const LONGEST_DOCUMENT = 500_000;

/**
 * Files that were dropped together as log, record and schedule; all that is wrong with them.
 * Whether a log is one is for its reader to say.
 */
export function sortFiles(files: readonly KeptFile[]): Result<SortedFiles> {
  const problems: Problem[] = [];
  const sorted: Record<Kind, KeptFile | null> = { log: null, record: null, schedule: null };
  for (const file of files) {
    const kind = kindOf(file);
    const wrong = kind === "bench" ? [isBench(file)] : wrongWith(file, kind);
    problems.push(...wrong);
    if (kind === "bench") continue;
    const other = sorted[kind];
    if (other !== null) problems.push(twice(kind, [other, file]));
    sorted[kind] = file;
  }
  return problems.length > 0 ? failed(...problems) : ok(sorted);
}

function kindOf(file: KeptFile): Kind | "bench" {
  if (file.bytes.length > LONGEST_DOCUMENT * 2) return "log";
  const text = textOf(file);
  if (!text.ok) return "log";
  const has = (key: string) => new RegExp(`^\\s*[{,]?\\s*"?${key}"?\\s*:`, "m").test(text.value);
  if (has("undunted") && has("formatVersion")) return "bench";
  if (has("segments")) return "schedule";
  return has("formatVersion") || /\.(?:ya?ml|json)$/i.test(file.name) ? "record" : "log";
}

function wrongWith(file: KeptFile, kind: Kind): readonly Problem[] {
  if (kind === "log") return [];
  const text = textOf(file);
  if (!text.ok) return text.problems;
  const read =
    kind === "record"
      ? parseRecordFile(text.value, file.name)
      : parseSchedule(text.value, file.name);
  return read.ok ? [] : read.problems;
}

function isBench(file: KeptFile): Problem {
  return {
    code: "page/whole-bench",
    where: file.name,
    what: "it is a whole bench, saved from this page",
    expected: "a log, its record or its schedule",
    fix: "open it with “Whole bench”, above",
  };
}

function twice(kind: Kind, files: readonly KeptFile[]): Problem {
  return {
    code: "page/two-of-a-kind",
    where: files.map(({ name }) => name).join(" and "),
    what: `each is a ${kind}`,
    expected: `one ${kind}: this table holds one firing`,
    fix:
      kind === "log"
        ? "drop one here; several firings go side by side on the Compare table, and earlier ones of this kiln on their own place below"
        : "drop one of them",
  };
}
