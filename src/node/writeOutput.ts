import { randomUUID } from "node:crypto";
import { access, link, lstat, rename, rm, stat, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";
import { systemProblem } from "./systemProblem.ts";

/**
 * Writes a file whole or not at all: beside the target first, then put in its place at once.
 * What is there already is kept unless `force` is set, also when it appears in the meantime or is
 * a link that leads nowhere. With `force` a link itself is replaced, never what it leads to; a
 * folder or a device is never replaced.
 */
export async function writeOutput(
  path: string,
  content: string | Uint8Array,
  options: { readonly force: boolean },
): Promise<Result<string>> {
  const there = await kindOf(path);
  if (there === "other") return failed(notAFile(path));
  if (there === "file" && !options.force) return failed(exists(path));
  const beside = join(dirname(path), `.undunted-${randomUUID()}.tmp`);
  try {
    await writeFile(beside, content, { flag: "wx" });
    if (options.force) await rename(beside, path);
    else await placeNew(beside, path);
    return ok(path);
  } catch (error) {
    return failed(codeOf(error) === "EEXIST" ? exists(path) : systemProblem(error, path, "write"));
  } finally {
    await rm(beside, { force: true }).catch(() => undefined);
  }
}

/** Gives a file its name, unless that is taken; on disks without links, as nearly as they allow. */
async function placeNew(beside: string, path: string): Promise<void> {
  try {
    await link(beside, path);
  } catch (error) {
    if (codeOf(error) === "EEXIST") throw error;
    await rename(beside, path);
  }
}

/** What stands at a path; a link counts as a file unless it leads to something else. */
async function kindOf(path: string): Promise<"nothing" | "file" | "other"> {
  const own = await lstat(path).catch(() => null);
  if (own === null) return "nothing";
  const facts = own.isSymbolicLink() ? await stat(path).catch(() => null) : own;
  return facts === null || facts.isFile() ? "file" : "other";
}

function codeOf(error: unknown): string {
  return error instanceof Error && "code" in error ? String(error.code) : "";
}

function exists(path: string): Problem {
  return {
    code: "file/exists",
    where: path,
    what: "the file is there already",
    expected: "a new name",
    fix: "another name, or --force to replace it",
  };
}

function notAFile(path: string): Problem {
  return {
    code: "file/not-a-file",
    where: path,
    what: "a folder, a pipe or a device is there",
    expected: "a new name, or that of a file",
    fix: "name a file in a folder of your own",
  };
}

/** A file name like `next.yaml` that is not there yet: else `next-2.yaml`, `next-3.yaml`, … */
export async function freeName(stem: string, ending: string): Promise<string> {
  for (let count = 1; ; count++) {
    const name = count === 1 ? `${stem}${ending}` : `${stem}-${count}${ending}`;
    if (!(await isThere(name))) return name;
  }
}

async function isThere(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  );
}
