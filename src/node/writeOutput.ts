import { access, rename, rm, writeFile } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { failed, ok, type Result } from "../core/problem.ts";
import { systemProblem } from "./systemProblem.ts";

/**
 * Writes a file whole or not at all: beside the target first, then renamed.
 * An existing file is kept unless `force` is set.
 */
export async function writeOutput(
  path: string,
  content: string | Uint8Array,
  options: { readonly force: boolean },
): Promise<Result<string>> {
  if (!options.force && (await exists(path)))
    return failed({
      code: "file/exists",
      where: path,
      what: "the file is there already",
      expected: "a new name",
      fix: "another name, or --force to replace it",
    });
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.tmp`);
  try {
    await writeFile(beside, content);
    await rename(beside, path);
    return ok(path);
  } catch (error) {
    await rm(beside, { force: true });
    return failed(systemProblem(error, path, "write"));
  }
}

async function exists(path: string): Promise<boolean> {
  try {
    await access(path);
    return true;
  } catch {
    return false;
  }
}
