import { readdir } from "node:fs/promises";
import { extname, join } from "node:path";
import type { Problem, Result } from "../core/problem.ts";
import { nameKey } from "../core/trials/nameKey.ts";

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
