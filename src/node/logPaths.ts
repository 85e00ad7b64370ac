import { readdir, stat } from "node:fs/promises";
import { extname, join } from "node:path";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";

/** Logs to read, with what was said of folders. */
export interface LogPaths {
  readonly paths: readonly string[];
  /** What each folder gave and what was left aside there, as sentences. */
  readonly remarks: readonly string[];
}

/** Endings of what lies beside logs and is none: records, schedules, pages, pictures, notes, archives. */
const NO_LOGS = new Set(
  ".yaml .yml .json .jsonl .html .htm .md .pdf .wav .flac .mp3 .png .jpg .jpeg .svg .gif .webp .heic .zip .sql .parquet".split(
    " ",
  ),
);
/** Names of texts that tell about a folder. */
const ABOUT_FOLDER = /^(?:readme|licen[cs]e|notes?|changelog)(?:\.\w+)?$/i;

/**
 * Files as they were given, and for a folder all logs in it by name: its files but hidden ones,
 * those whose ending is of something else (record, picture, page, …) and a README. Folders inside it
 * are not entered.
 * @returns the paths, or `file/folder` for a folder without logs.
 */
export async function logPaths(given: readonly string[]): Promise<Result<LogPaths>> {
  const paths: string[] = [];
  const remarks: string[] = [];
  const problems: Problem[] = [];
  for (const path of given) {
    const inside = (await isFolder(path)) ? await logsIn(path) : null;
    if (inside === null) paths.push(path);
    else if (inside.logs.length === 0) problems.push(noLogs(path));
    else {
      paths.push(...inside.logs);
      remarks.push(folderRemark(path, inside));
    }
  }
  return problems.length > 0 ? failed(...problems) : ok({ paths, remarks });
}

interface Inside {
  readonly logs: readonly string[];
  /** Files that are taken for something else. */
  readonly others: number;
  readonly folders: number;
}

async function isFolder(path: string): Promise<boolean> {
  if (path === "-") return false;
  return stat(path).then(
    (facts) => facts.isDirectory(),
    () => false,
  );
}

/** Null where the folder may not be looked into, which reading it as a file will tell. */
async function logsIn(folder: string): Promise<Inside | null> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => null);
  if (entries === null) return null;
  const seen = entries.filter(({ name }) => !name.startsWith("."));
  const folders = seen.filter((entry) => entry.isDirectory()).length;
  const names = seen.filter((entry) => !entry.isDirectory() && isLog(entry.name));
  return {
    logs: names
      .map(({ name }) => name)
      .sort()
      .map((name) => join(folder, name)),
    others: seen.length - folders - names.length,
    folders,
  };
}

function isLog(name: string): boolean {
  return !NO_LOGS.has(extname(name).toLowerCase()) && !ABOUT_FOLDER.test(name);
}

function folderRemark(path: string, { logs, others, folders }: Inside): string {
  const aside = [
    ...(others > 0 ? [`${counted(others, "file")} of another kind`] : []),
    ...(folders > 0 ? [`${counted(folders, "folder")} inside it`] : []),
  ];
  const left = aside.length === 0 ? "" : `; left aside: ${aside.join(", ")}`;
  return `${path}: ${counted(logs.length, "log")}${left}`;
}

function counted(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? "" : "s"}`;
}

function noLogs(path: string): Problem {
  return {
    code: "file/folder",
    where: path,
    what: "it is a folder, and there are no logs in it",
    expected: "a log, or a folder with logs in it (.csv, .txt, .tsv, .gz, …)",
    fix: "name a file, or the folder that holds the logs themselves",
  };
}
