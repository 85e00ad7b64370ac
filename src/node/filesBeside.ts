import { open, readdir, stat } from "node:fs/promises";
import { basename, dirname, extname, join } from "node:path";
import type { EarlierLog } from "../core/history/history.ts";
import { readLog } from "../core/log/readLog.ts";
import type { Problem, Result } from "../core/problem.ts";
import type { FiringRecord } from "../core/record/FiringRecord.ts";
import { pastFiringOf } from "../core/review/reviewFiring.ts";
import { nameKey } from "../core/trials/tileFits.ts";
import { readFiring } from "./readFiring.ts";
import { readText } from "./readInput.ts";
import { splitQuoted } from "./readLogChunks.ts";

const RECORDS = [".yaml", ".yml", ".json"];
/** Logs that are looked into at most, nearest by name first, so that a full folder costs no time. */
const MOST_LOGS = 8;
/** What is read of each, to see when it began [bytes]. */
const HEAD_BYTES = 32_768;

/**
 * Logs in the folder of a log whose records name the same kiln and that began before it.
 * Only their records and first lines are read, and nothing is learned from them.
 */
export async function earlierBeside(
  path: string,
  now: { readonly kiln: string; readonly start: string },
): Promise<readonly string[]> {
  const folder = dirname(path);
  const names: readonly string[] = await readdir(folder).catch(() => []);
  const own = basename(path);
  const logs = names
    .filter((name) => name !== own && !RECORDS.includes(extname(name)))
    .flatMap((name) => {
      const stem = name.replace(/(\.[^.]+)?(\.gz)?$/, "");
      const record = RECORDS.map((ending) => stem + ending).find((each) => names.includes(each));
      return record === undefined || name.endsWith(".gz") ? [] : [{ name, record }];
    })
    .toSorted((a, b) => nearness(a.name, own) - nearness(b.name, own) || compare(b.name, a.name));
  const found: { readonly path: string; readonly start: string }[] = [];
  for (const { name, record } of logs.slice(0, MOST_LOGS)) {
    const start = await startOf({ folder, name, record, kiln: now.kiln });
    if (start !== null && start < now.start) found.push({ path: beside(path, name), start });
  }
  return found.toSorted((a, b) => compare(a.start, b.start)).map((each) => each.path);
}

/** Names before this log's come first: most logs are named by their day. */
function nearness(name: string, own: string): number {
  return name < own ? 0 : 1;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** In the manner in which the log's own path was given. */
function beside(path: string, name: string): string {
  return path === basename(path) ? name : join(dirname(path), name);
}

/** When a log began, if its record names the kiln; else null. */
async function startOf(log: {
  readonly folder: string;
  readonly name: string;
  readonly record: string;
  readonly kiln: string;
}): Promise<string | null> {
  const record = await recordIn(join(log.folder, log.record), log.record);
  if (record === null || record.kiln !== log.kiln) return null;
  const head = await headOf(join(log.folder, log.name));
  if (head === null) return null;
  const reading = readLog(head, { ...record.log, name: log.name }, splitQuoted);
  return reading.ok ? reading.value.start : null;
}

async function recordIn(path: string, name: string): Promise<FiringRecord | null> {
  const facts = await stat(path).catch(() => null);
  const text = facts?.isFile() ? await readText(path) : null;
  if (!text?.ok) return null;
  const { parseRecord } = await import("../core/record/parseRecord.ts");
  const record = parseRecord(text.value, name);
  return record.ok ? record.value : null;
}

async function headOf(path: string): Promise<Uint8Array | null> {
  const facts = await stat(path).catch(() => null);
  const file = facts?.isFile() ? await open(path).catch(() => null) : null;
  if (file === null) return null;
  try {
    const { buffer, bytesRead } = await file.read(new Uint8Array(HEAD_BYTES), 0, HEAD_BYTES, 0);
    return buffer.subarray(0, bytesRead);
  } catch {
    return null;
  } finally {
    await file.close();
  }
}

/** Earlier logs of a kiln, each with the record beside it. One that cannot be read says why. */
export async function readEarlierLogs(paths: readonly string[]): Promise<readonly EarlierLog[]> {
  const logs: EarlierLog[] = [];
  for (const path of paths) {
    const files = await readFiring(path, { options: {}, recordPath: null, schedulePath: null });
    logs.push(
      files.ok
        ? pastFiringOf(path, files.value)
        : { name: path, broken: files.problems.map(({ what }) => what).join("; ") },
    );
  }
  return logs;
}

/** Kinds of ware files that records name by the words of a person. */
type WareKind = "glaze" | "body";

/** Folders beside the one of the logs in which files of a kind may lie. */
const BESIDE: Readonly<Record<WareKind, string>> = {
  glaze: join("..", "glazes"),
  body: join("..", "bodies"),
};

const ENDINGS = new Set([".yaml", ".yml", ".json"]);

/** What was read of named files, by {@link nameKey} of the name. */
export interface FoundWare<T> {
  readonly found: ReadonlyMap<string, T>;
  /** Files that are there and could not be read, with why. */
  readonly unread: readonly { readonly path: string; readonly problems: readonly Problem[] }[];
}

/**
 * Files of glazes or bodies that lie beside logs, by name: `glaze-pond-ice.yaml` or `pond-ice.yaml`
 * for pond ice, in the folder of a log or in `glazes` (for bodies `bodies`) beside that folder.
 * The first folder that has one counts. No name is ever made into a path: folders are looked through.
 */
export async function wareBeside<T>(
  kind: WareKind,
  given: { readonly names: readonly string[]; readonly folders: readonly string[] },
  read: (path: string) => Promise<Result<T>>,
): Promise<FoundWare<T>> {
  const folders = given.folders.flatMap((folder) => [folder, join(folder, BESIDE[kind])]);
  const paths = (await Promise.all([...new Set(folders)].map(filesIn))).flat();
  const found = new Map<string, T>();
  const unread: FoundWare<T>["unread"][number][] = [];
  for (const key of new Set(given.names.map(nameKey))) {
    const path = fileFor(kind, key, paths);
    if (path === undefined) continue;
    const ware = await read(path);
    if (ware.ok) found.set(key, ware.value);
    else unread.push({ path, problems: ware.problems });
  }
  return { found, unread };
}

interface NamedFile {
  readonly path: string;
  readonly key: string;
}

/** The file with the kind in its name goes before one that has the name alone, which may be a record. */
function fileFor(kind: WareKind, key: string, files: readonly NamedFile[]): string | undefined {
  const named = (wanted: string) => files.find((file) => file.key === wanted)?.path;
  return named(`${kind}-${key}`) ?? named(key);
}

async function filesIn(folder: string): Promise<readonly NamedFile[]> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => []);
  return entries
    .filter((entry) => entry.isFile() && ENDINGS.has(extname(entry.name).toLowerCase()))
    .map(({ name }) => name)
    .sort()
    .map((name) => ({
      path: join(folder, name),
      key: nameKey(name.slice(0, -extname(name).length)),
    }));
}
